// Where the Sun stands: declination and equation of time, by the low-accuracy series that NOAA's solar calculator uses too.
import { degreesFromRadians, radiansFromDegrees, turnDegrees } from '../basics/units';

const minutesPerDay = 1440;
/** Day number (since 1 January 1970) of noon of 1 January 2000, the epoch of the series. @source meeus-1998, chapter 22. */
const epochDay = 10957.5;
const daysPerCentury = 36525;

export interface SunPlace {
  readonly declinationRadians: number;
  /** Apparent less mean solar time. */
  readonly equationMinutes: number;
}

const sine = (degrees: number): number => Math.sin(radiansFromDegrees(degrees));

/** Dynamical time is ahead of UTC by 69 seconds, within a few of them over the years of these sheets. @source common-practice: bulletins of the Earth's rotation, from memory */
const dynamicalDays = 69 / 86_400;

/**
 * What Venus, Jupiter, the Moon and a slow term add to the longitude: 0.007 degree at most, which counts where the Sun grazes the horizon.
 * @source meeus-1979, chapter 18, corrections of the longitude, from memory; each is proved by the tables of test/published/route.
 */
function perturbationDegrees(t: number): number {
  const cosine = (degrees: number): number => sine(degrees + 90);
  return (
    0.00134 * cosine(351.98 + 22518.7541 * t) +
    0.00154 * cosine(254.08 + 45037.5082 * t) +
    0.002 * cosine(157.05 + 32964.3577 * t) +
    0.00179 * sine(297.85 + 445267.1142 * t) +
    0.00178 * sine(251.39 + 20.2 * t)
  );
}

/**
 * The Sun at a moment, in days of UTC since 1970. The apparent longitude is within 0.01 degree, which is 3 seconds of a sunrise in
 * middle latitudes; the minute between UTC and dynamical time moves it by less than 0.001 degree and is left out.
 * @source meeus-1998, chapter 25 (longitude), chapter 22 (obliquity), equation 28.1 (equation of time).
 */
export function sunAt(day: number): SunPlace {
  const t = (day + dynamicalDays - epochDay) / daysPerCentury;
  const meanLongitude = 280.46646 + t * (36000.76983 + 0.0003032 * t);
  const anomaly = 357.52911 + t * (35999.05029 - 0.0001537 * t);
  const centre =
    (1.914602 - t * (0.004817 + 0.000014 * t)) * sine(anomaly) + (0.019993 - 0.000101 * t) * sine(2 * anomaly) + 0.000289 * sine(3 * anomaly);
  const node = 125.04 - 1934.136 * t;
  const nutationDegrees = -0.00478 * sine(node);
  const longitude = radiansFromDegrees(meanLongitude + centre + perturbationDegrees(t) - 0.00569 + nutationDegrees);
  const obliquity = radiansFromDegrees(23.439291 - t * (0.013004 + t * (0.00000016 - 0.0000005 * t)) + 0.00256 * Math.cos(radiansFromDegrees(node)));
  const rightAscension = degreesFromRadians(Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude)));
  const equation = meanLongitude - 0.0057183 - rightAscension + nutationDegrees * Math.cos(obliquity);
  return { declinationRadians: Math.asin(Math.sin(obliquity) * Math.sin(longitude)), equationMinutes: 4 * turnDegrees(0, equation) };
}

/** The Sun over a day and half a day on either side of it, by minutes of UTC after the day's 0000. */
export type SunCourse = (utcMinutes: number) => SunPlace;

/** Quadratic through three moments a day apart: within 0.00001 degree, and a column of places asks for few days. */
function courseOf(day: number): SunCourse {
  const [before, noon, after] = [sunAt(day - 0.5), sunAt(day + 0.5), sunAt(day + 1.5)] as const;
  const through = (low: number, middle: number, high: number) => (x: number) =>
    middle + (x * (high - low)) / 2 + (x * x * (high - 2 * middle + low)) / 2;
  const declination = through(before.declinationRadians, noon.declinationRadians, after.declinationRadians);
  const equation = through(before.equationMinutes, noon.equationMinutes, after.equationMinutes);
  return (utcMinutes) => {
    const x = utcMinutes / minutesPerDay - 0.5;
    return { declinationRadians: declination(x), equationMinutes: equation(x) };
  };
}

const known = new Map<number, SunCourse>();
const mostKept = 1000;

export function sunCourse(day: number): SunCourse {
  const found = known.get(day);
  if (found !== undefined) return found;
  if (known.size >= mostKept) known.clear();
  const made = courseOf(day);
  known.set(day, made);
  return made;
}

export interface SunHeight {
  /** Sine of the Sun's geometric altitude. @source meeus-1998, equation 13.6. */
  readonly sine: number;
  /** How fast it rises, a minute, but for the Sun's own way over the sky. */
  readonly rise: number;
}

const radiansPerMinute = radiansFromDegrees(0.25);

/** The Sun's height at one place, by minutes of UTC after 0000 of the day. */
export function sunHeight(course: SunCourse, latitudeDegrees: number, longitudeDegrees: number): (utcMinutes: number) => SunHeight {
  const latitude = radiansFromDegrees(latitudeDegrees);
  const [sineOfLatitude, cosineOfLatitude] = [Math.sin(latitude), Math.cos(latitude)];
  const atMidnight = radiansFromDegrees(longitudeDegrees - 180);
  return (utcMinutes) => {
    const { declinationRadians, equationMinutes } = course(utcMinutes);
    const hourAngle = (utcMinutes + equationMinutes) * radiansPerMinute + atMidnight;
    const across = cosineOfLatitude * Math.cos(declinationRadians);
    return {
      sine: sineOfLatitude * Math.sin(declinationRadians) + across * Math.cos(hourAngle),
      rise: -across * Math.sin(hourAngle) * radiansPerMinute,
    };
  };
}
