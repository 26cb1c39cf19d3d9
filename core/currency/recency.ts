// Recent experience: enough landings, approaches or hours in a window of days or of calendar months, and the last day
// on which that still holds without another flight. Log rows may come in any order.
import { lastDayOfItsMonth } from '../basics/calendarMonths';
import { dayNumber, type CivilDate } from '../basics/civilDate';
import type { Verdict } from '../basics/verdict';

export interface LogEntry {
  readonly date: CivilDate;
  readonly count: number;
}

export interface Recency {
  /** What was done in the window. */
  readonly count: number;
  readonly verdict: Verdict;
  /** Last day on which enough was done; in the past where it has lapsed, undefined where it never was enough. */
  readonly goodThroughDay: number | undefined;
}

/** Hours add up in binary fractions: twelve hours in tenths are not to be lost to the last bit. */
const slack = 1e-6;
const enough = (sum: number, needed: number): boolean => sum >= needed - slack;
const rounded = (sum: number): number => Math.round(sum / slack) / Math.round(1 / slack);

/** Counts added up by period (a day or a month), nothing later than `latest`. */
function totalsByPeriod(entries: readonly LogEntry[], latestDay: number, periodOf: (date: CivilDate, day: number) => number): Map<number, number> {
  const totals = new Map<number, number>();
  for (const { date, count } of entries) {
    const day = dayNumber(date);
    if (day > latestDay || count === 0) continue;
    const period = periodOf(date, day);
    totals.set(period, (totals.get(period) ?? 0) + count);
  }
  return totals;
}

function sumBetween(totals: ReadonlyMap<number, number>, first: number, last: number): number {
  let sum = 0;
  for (const [period, count] of totals) if (period >= first && period <= last) sum += count;
  return sum;
}

/**
 * The latest period from which on enough was done within the next `reach` periods. Experience reckoned from there holds
 * longest. For each first period the window's end moves back as far as it can, so one pass is enough. `needed` is more
 * than the slack.
 */
function latestStart(totals: ReadonlyMap<number, number>, reach: number, needed: number): number | undefined {
  const newestFirst = [...totals].sort(([one], [other]) => other - one);
  const periodAt = (index: number): number => newestFirst[index]?.[0] ?? 0;
  const countAt = (index: number): number => newestFirst[index]?.[1] ?? 0;
  let sum = 0;
  let end = 0;
  for (const [period, count] of newestFirst) {
    sum += count;
    while (enough(sum - countAt(end), needed)) {
      sum -= countAt(end);
      end += 1;
    }
    if (enough(sum, needed) && periodAt(end) - period <= reach) return period;
  }
  return undefined;
}

/**
 * Experience within so many days, the day of the flight counted as one of them (the stricter reading of "the preceding
 * 90 days"): done on day 1 it is good through day 90. @source cfr-61-57, paragraphs (a) and (b); part-fcl, FCL.060(b).
 */
export function recencyInDays(entries: readonly LogEntry[], asOf: CivilDate, days: number, needed: number): Recency {
  const asOfDay = dayNumber(asOf);
  const totals = totalsByPeriod(entries, asOfDay, (_, day) => day);
  const start = latestStart(totals, days - 1, needed);
  const goodThroughDay = start === undefined ? undefined : start + days - 1;
  const count = rounded(sumBetween(totals, asOfDay - days + 1, asOfDay));
  if (entries.length === 0) return { count, verdict: 'UNKNOWN', goodThroughDay };
  return { count, verdict: goodThroughDay !== undefined && goodThroughDay >= asOfDay ? 'OK' : 'NO', goodThroughDay };
}

const monthOf = ({ year, month }: CivilDate): number => year * 12 + month - 1;
const lastDayOfMonthNumber = (month: number): number =>
  lastDayOfItsMonth(dayNumber({ year: Math.floor(month / 12), month: (month % 12) + 1, day: 1 }));

/**
 * Experience within so many calendar months preceding the month of the flight. The words leave out that month itself,
 * practice counts it to date: what is enough only with it is CHECK, and `count` never holds it.
 * @source cfr-61-57, paragraph (c)(1).
 */
export function recencyInMonths(entries: readonly LogEntry[], asOf: CivilDate, months: number, needed: number): Recency {
  const asOfMonth = monthOf(asOf);
  const totals = totalsByPeriod(entries, dayNumber(asOf), monthOf);
  const start = latestStart(totals, months, needed);
  const goodThroughDay = start === undefined ? undefined : lastDayOfMonthNumber(start + months);
  const count = rounded(sumBetween(totals, asOfMonth - months, asOfMonth - 1));
  if (entries.length === 0) return { count, verdict: 'UNKNOWN', goodThroughDay };
  if (enough(count, needed)) return { count, verdict: 'OK', goodThroughDay };
  return { count, verdict: start !== undefined && start + months >= asOfMonth ? 'CHECK' : 'NO', goodThroughDay };
}
