// Sunrise, sunset and civil twilight of a place on a day, and whether a moment is day or night.
import type { Position } from '../navigation/geodesy';
import { minutesPerDay, radiansFromDegrees } from '../basics/units';
import { sunCourse, sunHeight, type SunHeight } from './sun';

/**
 * Altitudes of the Sun's centre. Rise and set: the upper edge on a level horizon, 34 minutes of refraction and 16 of the Sun's
 * radius. @source usno-definitions: zenith distance 90 degrees 50 minutes; civil twilight 6 degrees below the horizon.
 */
const horizons = { sun: Math.sin(radiansFromDegrees(-50 / 60)), twilight: Math.sin(radiansFromDegrees(-6)) } as const;

const halfDay = 720;
/** Seconds: the times are told to a minute. */
const solvedMinutes = 0.005;

/** Minutes of UTC after 0000 of the day, below 0 or above 1440 where they fall on its neighbours; undefined where it does not happen. */
export interface Crossing {
  readonly rising: number | undefined;
  readonly setting: number | undefined;
  /** Above it at noon; where neither happens, all day or never. */
  readonly aboveAtNoon: boolean;
}

export interface SunTimes {
  readonly noon: number;
  readonly sun: Crossing;
  readonly twilight: Crossing;
}

interface Sky {
  readonly height: (utcMinutes: number) => SunHeight;
  readonly noon: number;
}

function skyOf({ latitudeDegrees, longitudeDegrees }: Position, day: number): Sky {
  const course = sunCourse(day);
  const meanNoon = halfDay - 4 * longitudeDegrees;
  return { height: sunHeight(course, latitudeDegrees, longitudeDegrees), noon: meanNoon - course(meanNoon).equationMinutes };
}

const mostTries = 60;

/** Between two moments on either side of it: Newton's steps, and halving where a step leads out of what is left. @source common-practice */
function solved({ height }: Sky, horizon: number, fromMinutes: number, toMinutes: number, rising: boolean): number {
  let [from, to] = [fromMinutes, toMinutes];
  let at = (from + to) / 2;
  for (let tries = 0; tries < mostTries; tries += 1) {
    const { sine, rise } = height(at);
    if (sine > horizon === rising) to = at;
    else from = at;
    const next = at - (sine - horizon) / rise;
    const before = at;
    at = next > from && next < to ? next : (from + to) / 2;
    if (Math.abs(at - before) < solvedMinutes) return at;
  }
  return at;
}

/** From midnight before to midnight after the local noon of the date. */
export function sunTimes(place: Position, day: number): SunTimes {
  const sky = skyOf(place, day);
  const { noon } = sky;
  const [before, middle, after] = [noon - halfDay, noon, noon + halfDay].map((minutes) => sky.height(minutes).sine) as [number, number, number];
  const crossing = (horizon: number): Crossing => {
    const aboveAtNoon = middle > horizon;
    return {
      rising: before > horizon === aboveAtNoon ? undefined : solved(sky, horizon, noon - halfDay, noon, aboveAtNoon),
      setting: after > horizon === aboveAtNoon ? undefined : solved(sky, horizon, noon, noon + halfDay, !aboveAtNoon),
      aboveAtNoon,
    };
  };
  return { noon, sun: crossing(horizons.sun), twilight: crossing(horizons.twilight) };
}

export interface DayOrNight {
  /** Between the end of evening and the beginning of morning civil twilight. @source cfr-1-1, "night"; part-fcl, FCL.010. */
  readonly civilNight: boolean;
  /** Between one hour after sunset and one hour before sunrise. @source cfr-61-57, paragraph (b). */
  readonly hourAfterSunset: boolean;
}

const hour = 60;

/** The Sun stays down for an hour on either side. Of a short polar day within that time its noon is above the horizon. */
function downForAnHour({ height, noon }: Sky, utcMinutes: number): boolean {
  const moments = [
    utcMinutes - hour,
    utcMinutes,
    utcMinutes + hour,
    ...[-1440, 0, 1440].map((days) => noon + days).filter((one) => Math.abs(one - utcMinutes) < hour),
  ];
  return moments.every((one) => height(one).sine <= horizons.sun);
}

/** `minutes` after 0000 UTC of `day`; of a later day where they are more than one has. */
export function dayOrNight(place: Position, day: number, minutes: number): DayOrNight {
  const days = Math.floor(minutes / minutesPerDay);
  const [sky, utcMinutes] = [skyOf(place, day + days), minutes - days * minutesPerDay];
  return { civilNight: sky.height(utcMinutes).sine < horizons.twilight, hourAfterSunset: downForAnHour(sky, utcMinutes) };
}
