// Which of a flight's landings were by night, by each definition of it, from the Sun at the places and times of the flight.
import type { Position } from '../navigation/geodesy';
import { dayOrNight, type DayOrNight } from '../route/sunTimes';

/** @source cfr-1-1 and part-fcl, FCL.010 (civilNight, also that of cfr-61-51); cfr-61-57, paragraph (b) (hourAfterSunset). */
export type NightRule = keyof DayOrNight;

export interface FlownFrom {
  readonly from: Position;
  readonly to: Position;
  readonly day: number;
  /** After 0000 UTC of the day; over 1440 on the next. */
  readonly takeOffMinutes: number;
  readonly landingMinutes: number;
}

export interface NightOfFlight {
  readonly takeOff: DayOrNight;
  readonly landing: DayOrNight;
  /** Whether all of the flight was on one side of it, at either place: landings in between then were too. */
  readonly throughout: Readonly<Record<NightRule, boolean>>;
}

/** Day or night of a landing in between is looked for this often. No night and no day is shorter but near the polar circles. */
const everyMinutes = 15;

export function nightOfFlight({ from, to, day, takeOffMinutes, landingMinutes }: FlownFrom): NightOfFlight {
  const [takeOff, landing] = [dayOrNight(from, day, takeOffMinutes), dayOrNight(to, day, landingMinutes)];
  const steps = Math.ceil((landingMinutes - takeOffMinutes) / everyMinutes);
  const moments = Array.from({ length: steps + 1 }, (_, step) => Math.min(takeOffMinutes + step * everyMinutes, landingMinutes));
  const seen = moments.flatMap((minutes) => [dayOrNight(from, day, minutes), dayOrNight(to, day, minutes)]);
  const alike = (rule: NightRule): boolean => seen.every((one) => one[rule] === takeOff[rule]);
  return { takeOff, landing, throughout: { civilNight: alike('civilNight'), hourAfterSunset: alike('hourAfterSunset') } };
}

/** Of so many landings, or of so many take-offs, those by night; undefined where nobody can tell which of them were. */
export function timesByNight(night: NightOfFlight, of: 'landing' | 'takeOff', rule: NightRule, times: number): number | undefined {
  if (times === 0) return 0;
  if (times > 1 && !night.throughout[rule]) return undefined;
  return night[of][rule] ? times : 0;
}

/** Of landings by night, those to a full stop; undefined where nobody can tell which they were. */
export function stopsByNight(byNight: number, landings: number, fullStops: number): number | undefined {
  if (byNight === landings) return fullStops;
  if (byNight === 0 || fullStops === 0) return 0;
  return fullStops === landings ? byNight : undefined;
}
