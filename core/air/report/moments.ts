// A day of the month and a time, as reports give them, set on the calendar. Moments are minutes of UTC since the beginning of 1970.
import { civilDateFromDayNumber, dayNumber } from '../../basics/civilDate';
import { minutesPerDay } from '../../basics/units';
import type { Change, DayTime } from './changes';
import type { Metar } from './metar';
import type { Taf } from './taf';

export const momentOf = (day: number, minutes: number): number => day * minutesPerDay + minutes;

/** The last moment at which anybody can have had a report who has not lived past this day, in whatever zone. */
export const endOfDayAnywhere = (day: number): number => momentOf(day + 1, 12 * 60);

/**
 * The date nearest to a moment on which that day of the month falls, no later than `latest`. With no latest a report without a month
 * is taken for the nearest there can be.
 */
export function nearestMoment({ day, minutes }: DayTime, to: number, latest = Infinity): number {
  const today = Math.floor(Math.min(to, latest) / minutesPerDay);
  const { year, month, day: dayOfMonth } = civilDateFromDayNumber(today);
  // Nothing can be nearer than a day of the same month less than half a month away.
  const near = momentOf(today + day - dayOfMonth, minutes);
  if (day <= 28 && Math.abs(day - dayOfMonth) < 14 && near <= latest && to <= latest) return near;
  // The beginnings of four months and of the one behind them: of four in a row two or more have any day, the earlier ones before any latest.
  const firsts = [-2, -1, 0, 1, 2].map((months) => dayNumber({ year, month: month + months, day: 1 }));
  const found = firsts.slice(0, -1).flatMap((first, index) => (first + day <= (firsts[index + 1] ?? 0) ? [momentOf(first + day - 1, minutes)] : []));
  return found
    .filter((moment) => moment <= latest)
    .reduce((best, moment) => (Math.abs(moment - to) < Math.abs(best - to) ? moment : best), -Infinity);
}

/** Days of the month around a day, with the numbers of their days: a forecast reaches no further. */
function daysAround(day: number): ReadonlyMap<number, number> {
  return new Map([-1, 0, 1, 2].map((days) => [civilDateFromDayNumber(day + days).day, day + days]));
}

/** How long a trend looks ahead. @source icao-annex-3, chapter 6, 6.3.2. */
export const trendMinutes = 120;

/** The trend of a report of this moment, as changes. A BECMG of a trend is taken to hold from its beginning. */
export function trendChanges({ trends = [] }: Metar, reported: number): Change[] {
  const clockOfReport = ((reported % minutesPerDay) + minutesPerDay) % minutesPerDay;
  return trends.map(({ kind, written, fromClock, conditions }) => {
    const ahead = fromClock === undefined ? 0 : (fromClock - clockOfReport + minutesPerDay) % minutesPerDay;
    return { kind, written, from: reported + (ahead > trendMinutes ? 0 : ahead), to: reported + trendMinutes, conditions };
  });
}

export interface PlacedTaf {
  readonly issued: number | undefined;
  readonly from: number;
  readonly to: number;
  readonly changes: readonly Change[];
  /** Beginnings of groups whose times lie outside the validity. */
  readonly outside: readonly string[];
}

/** No forecast is longer. @source icao-annex-3, chapter 6, 6.2.6: 6 to 30 hours. */
const maxMinutes = 30 * 60;

/** Undefined where the validity ends before it begins, or is longer than forecasts are. */
export function placeTaf(taf: Taf, near: number, latest = Infinity): PlacedTaf | undefined {
  const issued = taf.issued === undefined ? undefined : nearestMoment(taf.issued, near, latest);
  const from = nearestMoment(taf.from, issued ?? near, issued === undefined ? latest + minutesPerDay : Infinity);
  const days = daysAround(Math.floor(from / minutesPerDay));
  // A day of no such date lies outside, as nothing does that is no number.
  const moment = ({ day, minutes }: DayTime): number => momentOf(days.get(day) ?? Number.NaN, minutes);
  const to = moment(taf.to);
  const isValid = to > from && to - from <= maxMinutes && (issued === undefined || Math.abs(from - issued) <= minutesPerDay);
  if (!isValid) return undefined;
  const placed = taf.groups.map(({ kind, written, conditions, ...times }) => ({
    kind,
    written,
    conditions,
    from: moment(times.from),
    to: moment(times.to),
  }));
  const inside = (change: Change): boolean => change.from >= from && change.to <= to && change.to > change.from;
  return { issued, from, to, changes: placed.filter(inside), outside: placed.filter((change) => !inside(change)).map(({ written }) => written) };
}
