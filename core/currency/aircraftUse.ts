// What a log knows of an aircraft: its hours since they were read, its landings since a day, and how fast hours add up.
import type { Named } from '../basics/named';
import type { FlightLog } from './flightLog';

export interface AircraftUse {
  readonly hoursNow: number | undefined;
  /** Hours a day of late; undefined without a log, or where nothing was flown. */
  readonly hoursPerDay?: number;
  /** Landings by the log after a day; undefined where no log says. */
  readonly landingsAfter?: (day: number) => number;
}

/** Days over which the rate is taken, and the fewest where the log is shorter. Common practice, no source. */
const rateDays = 180;
const fewestDays = 30;

/**
 * `readOn` is the day on which the hours were read; the hours of the log after it are added. A log is one pilot's: what others flew is not in it.
 */
export function useOf(
  { key }: Named,
  hoursRead: number | undefined,
  readOn: number | undefined,
  log: FlightLog | 'unreadable' | undefined,
  asOfDay: number,
): AircraftUse {
  if (log === undefined) return { hoursNow: hoursRead };
  // Hours read on a day, with nobody knowing what was flown since.
  if (log === 'unreadable') return { hoursNow: readOn === undefined ? hoursRead : undefined };
  const flown = log.flights.filter(({ aircraft, day }) => aircraft.key === key && day <= asOfDay);
  const hoursAfter = (day: number): number => flown.reduce((sum, flight) => sum + (flight.day > day ? flight.done.hours : 0), 0);
  const isUnknown = readOn !== undefined && !log.columns.has('hours') && flown.some(({ day }) => day > readOn);
  const hoursNow = hoursRead === undefined || readOn === undefined ? hoursRead : isUnknown ? undefined : hoursRead + hoursAfter(readOn);
  // Over a log that has just begun, 180 days would make the rate too slow, and the day too late.
  const span = Math.min(rateDays, Math.max(fewestDays, asOfDay + 1 - Math.min(asOfDay, ...flown.map(({ day }) => day))));
  const rate = hoursAfter(asOfDay - span) / span;
  return {
    hoursNow,
    ...(rate > 0 ? { hoursPerDay: rate } : {}),
    ...(log.columns.has('dayLandings') || log.columns.has('nightLandings')
      ? {
          landingsAfter: (day) =>
            flown.reduce((sum, flight) => sum + (flight.day > day ? flight.done.dayLandings + flight.done.nightLandings : 0), 0),
        }
      : {}),
  };
}
