// What the calendar of cycles says about cards: whether one is current, whether it covers a trip, whether two agree,
// and the days on which somebody must go to the aircraft. Days are whole day numbers; nothing recorded is undefined.
import { effectiveAfter, effectiveOnOrAfter, isEffectiveDate, type CycleSeries } from './cycles';
import { CoreError } from '../basics/errors';
import type { Verdict } from '../basics/verdict';

export interface CardStatus {
  readonly verdict: Verdict;
  /** First day on which the loaded data is out of date; unknown where the loaded date is. */
  readonly lapsesOnDay: number | undefined;
}

const notKnown: CardStatus = { verdict: 'UNKNOWN', lapsesOnDay: undefined };

/**
 * The state of one card on a day. A loaded date that is no effective date of its series is a typing error, so
 * nothing is known; a card loaded ahead of its time says nothing of what serves until then. Common practice, no source.
 */
export function cardStatus(loadedDay: number | undefined, series: CycleSeries, asOfDay: number, warnDays: number): CardStatus {
  if (loadedDay === undefined || !isEffectiveDate(loadedDay, series)) return notKnown;
  const lapsesOnDay = effectiveAfter(loadedDay, series);
  const daysLeft = lapsesOnDay - asOfDay;
  if (loadedDay > asOfDay) return { verdict: 'UNKNOWN', lapsesOnDay };
  if (daysLeft <= 0) return { verdict: 'NO', lapsesOnDay };
  return { verdict: daysLeft <= warnDays ? 'CHECK' : 'OK', lapsesOnDay };
}

/** Whether one card is current on every day of a trip, the first and the last included. */
export function cardCovers(loadedDay: number | undefined, series: CycleSeries, firstDay: number, lastDay: number): CardStatus {
  if (lastDay < firstDay)
    throw new CoreError('days-out-of-order', { earlier: 'firstDay', later: 'lastDay', earlierDay: firstDay, laterDay: lastDay });
  if (loadedDay === undefined || !isEffectiveDate(loadedDay, series)) return notKnown;
  const lapsesOnDay = effectiveAfter(loadedDay, series);
  return { verdict: loadedDay <= firstDay && lastDay < lapsesOnDay ? 'OK' : 'NO', lapsesOnDay };
}

export interface Visit {
  readonly day: number;
  readonly series: readonly CycleSeries[];
}

/** The days from one day up to, not including, another on which any of the series changes, each with those that do. */
export function visits(series: readonly CycleSeries[], fromDay: number, endDay: number): Visit[] {
  const distinct = [...new Map(series.map((entry) => [entry.name, entry])).values()];
  const changing = new Map<number, CycleSeries[]>();
  for (const entry of distinct) {
    for (let day = effectiveOnOrAfter(fromDay, entry); day < endDay; day += entry.days) {
      changing.set(day, [...(changing.get(day) ?? []), entry]);
    }
  }
  return [...changing].sort(([one], [other]) => one - other).map(([day, entries]) => ({ day, series: entries }));
}

export interface Card {
  /** Blank where nothing readable is recorded. */
  readonly aircraft: string | undefined;
  readonly database: string | undefined;
  readonly loadedDay: number | undefined;
}

function agreement(loadedDays: readonly (number | undefined)[]): Verdict {
  const known = new Set(loadedDays.filter((day) => day !== undefined));
  if (known.size > 1) return 'NO';
  return loadedDays.includes(undefined) ? 'UNKNOWN' : 'OK';
}

/**
 * For each card, whether all cards of the same database in the same aircraft hold the same cycle. A card without
 * aircraft, database or date is compared with nobody: UNKNOWN. Common practice, no source.
 */
export function cardAgreement(cards: readonly Card[]): Verdict[] {
  const groups = new Map<string, (number | undefined)[]>();
  const keys = cards.map(({ aircraft, database }) =>
    aircraft === undefined || database === undefined ? undefined : JSON.stringify([aircraft, database]),
  );
  keys.forEach((key, index) => {
    if (key === undefined) return;
    const days = groups.get(key) ?? [];
    days.push(cards[index]?.loadedDay);
    groups.set(key, days);
  });
  const verdictOf = new Map([...groups].map(([key, days]) => [key, agreement(days)]));
  return keys.map((key) => (key === undefined ? 'UNKNOWN' : (verdictOf.get(key) ?? 'UNKNOWN')));
}
