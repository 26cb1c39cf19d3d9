// Invented from end to end: the dues of the invented club.
import type { Content } from '../build';

const date = (iso: string): Content => ({ date: iso });

/** Member, joined, left, share, hours, brought forward. */
export const demoClub: readonly (readonly Content[])[] = [
  ['Ada', undefined, undefined, 40, 14.2, undefined],
  ['Bo', undefined, undefined, 30, 22.5, 120],
  ['Cleo', undefined, undefined, 30, 17.4, undefined],
  ['Dag', date('2026-04-20'), undefined, undefined, 28.6, undefined],
  ['Eve', undefined, date('2026-09-30'), 40, 12.6, -35.5],
  ['Finn', undefined, undefined, undefined, 19.3, undefined],
];

/** Cost, amount, currency, from, every so many months, to, shared by. */
export const demoCosts: readonly (readonly Content[])[] = [
  ['hangar', 240, 'EUR', undefined, 1, undefined, 'equal'],
  ['insurance', 1860, 'EUR', date('2026-03-01'), undefined, undefined, 'share'],
  ['navigation data', 620, 'CHF', date('2026-06-30'), undefined, undefined, 'equal'],
  ['wear and fuel', 96, 'EUR', undefined, undefined, undefined, 'per hour'],
];

/** Day, member, amount, currency, remark. */
export const demoPayments: readonly (readonly Content[])[] = [
  [date('2026-02-10'), 'Ada', 900, 'EUR', 'transfer'],
  [date('2026-03-12'), 'Bo', 1500, 'EUR', 'transfer'],
  [date('2026-07-05'), 'Cleo', 1000, 'CHF', 'cash'],
  [date('2026-08-15'), 'Dag', 2200, 'EUR', 'transfer'],
];

/** Currency, rate, day, source. */
export const demoRates: readonly (readonly Content[])[] = [['CHF', 1.05, date('2026-02-01'), 'typed, invented']];
