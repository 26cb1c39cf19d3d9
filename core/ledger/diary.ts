// What comes up in the ledger: the moments at which cards must be loaded, and the days on which licences end.
import { dayMonthsLater } from '../basics/calendarMonths';
import { instantOf, type Instant } from '../basics/civilDate';
import { changesWithin, identifierOf, inOrder, type DataSeries } from './series';
import type { Licence } from './licences';
import { byName, type Named } from '../basics/named';

export interface DiaryCard {
  readonly aircraft: Named;
  readonly database: Named;
  readonly series: DataSeries;
  readonly changesAtMinutes: number;
}

export interface DiaryLicence extends Licence {
  /** Undefined where it is not renewed by a fixed term. */
  readonly everyMonths: number | undefined;
  readonly cost: number | undefined;
  readonly currency: string | undefined;
}

export interface ChangingDatabase {
  readonly database: Named;
  readonly aircraft: readonly Named[];
}

export interface DiaryLoad {
  readonly kind: 'load';
  /** The effective date, a date of UTC. */
  readonly day: number;
  readonly changesAtMinutes: number;
  readonly instant: Instant;
  readonly changes: readonly { readonly series: string; readonly identifier: string; readonly databases: readonly ChangingDatabase[] }[];
}

export interface DiaryRenewal {
  readonly kind: 'renew';
  readonly day: number;
  readonly licence: DiaryLicence;
}

function changesOf(cards: readonly DiaryCard[], day: number): DiaryLoad['changes'] {
  return inOrder(cards.map(({ series }) => series)).map((entry) => ({
    series: entry.name,
    identifier: identifierOf(day, entry),
    databases: byName(
      cards.filter((card) => card.series.name === entry.name),
      ({ database }) => database,
    ).map(({ named, things }) => ({
      database: named,
      aircraft: byName(things, ({ aircraft }) => aircraft).map((group) => group.named),
    })),
  }));
}

/** Effective dates from one day up to, not including, another; cards that change at the same moment come together. */
export function coming(cards: readonly DiaryCard[], fromDay: number, endDay: number): DiaryLoad[] {
  const moments = new Map<string, { readonly day: number; readonly minutes: number; readonly cards: DiaryCard[] }>();
  for (const card of cards) {
    for (const day of changesWithin(card.series, fromDay, endDay)) {
      const key = `${day} ${card.changesAtMinutes}`;
      const moment = moments.get(key) ?? { day, minutes: card.changesAtMinutes, cards: [] };
      moment.cards.push(card);
      moments.set(key, moment);
    }
  }
  return [...moments.values()].map(({ day, minutes, cards: changing }) => ({
    kind: 'load',
    day,
    changesAtMinutes: minutes,
    instant: instantOf(day, minutes),
    changes: changesOf(changing, day),
  }));
}

/** The ends of licences before a day, each again after every term; one that ended before `fromDay` is still listed, once. */
export function renewals(licences: readonly DiaryLicence[], fromDay: number, endDay: number): DiaryRenewal[] {
  return licences.flatMap((licence) => {
    const { endDay: first, everyMonths } = licence;
    if (first === undefined || first === Infinity) return [];
    const days = first < endDay ? [first] : [];
    if (everyMonths !== undefined) {
      for (let term = 1; dayMonthsLater(first, term * everyMonths) < endDay; term += 1) {
        const day = dayMonthsLater(first, term * everyMonths);
        if (day >= fromDay) days.push(day);
      }
    }
    return days.map((day) => ({ kind: 'renew', day, licence }) as const);
  });
}

/** Loads and renewals in the order of their days, loads first. */
export function diary(cards: readonly DiaryCard[], licences: readonly DiaryLicence[], fromDay: number, endDay: number): (DiaryLoad | DiaryRenewal)[] {
  const minutesOf = (entry: DiaryLoad | DiaryRenewal): number => (entry.kind === 'load' ? entry.changesAtMinutes : 1440);
  return [...coming(cards, fromDay, endDay), ...renewals(licences, fromDay, endDay)].sort(
    (one, other) => one.day - other.day || minutesOf(one) - minutesOf(other),
  );
}
