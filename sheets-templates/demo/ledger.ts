// Invented from end to end: a club of four aircraft with its cards, licences and members, for the Data ledger.
import type { Content } from '../build';
import { effective, loadedOn } from './day';

const date = (iso: string): Content => ({ date: iso });

/** Aircraft, box or card, database, series, changes at, who loads it. */
export const demoCards: readonly (readonly Content[])[] = [
  ['Quillon Four', 'panel, box 1', 'navigation', '28-day', '0000Z', 'Ada'],
  ['Quillon Four', 'panel, box 2', 'navigation', '28-day', '0000Z', 'Ada'],
  ['Quillon Four', 'panel, box 1', 'obstacles', '56-day', '0000Z', 'Ada'],
  ['Quillon Four', 'tablet', 'charts', '28-day', '0000Z', 'Bo'],
  ['Brindle Two', 'panel, left', 'navigation', '28-day', '0000Z', 'Cleo'],
  ['Brindle Two', 'panel, right', 'navigation', '28-day', '0000Z', 'Dag'],
  ['Sable Twin', 'panel', 'navigation', '14-day', '0000Z', 'Eve'],
  ['Sable Twin', 'tablet', 'charts', '56-day', '0000Z', 'Eve'],
  ['Merle Tug', 'panel', 'navigation', '28-day', '0000Z', 'Finn'],
  ['Merle Tug', 'panel', 'terrain', '56-day', '0000Z', 'Finn'],
];

/** Card by its place above; effective, loaded on, verified on, by, failed, remark. The dates follow the series of the card. */
const loads: readonly (readonly [card: number, effective: string, loaded: string, verified: string | undefined, by: string, ...more: string[]])[] = [
  [1, '2026-10-01', '2026-09-30', '2026-09-30', 'Ada'],
  [2, '2026-10-01', '2026-09-30', '2026-09-30', 'Ada'],
  [6, '2026-10-01', '2026-09-30', '2026-09-30', 'Dag'],
  [4, '2026-10-29', '2026-10-27', '2026-10-27', 'Bo'],
  [1, '2026-10-29', '2026-10-28', '2026-10-28', 'Ada'],
  [2, '2026-10-29', '2026-10-28', '2026-10-28', 'Ada'],
  [3, '2026-10-29', '2026-10-28', '2026-10-28', 'Ada'],
  [9, '2026-10-28', '2026-10-28', '2026-10-28', 'Finn'],
  [10, '2026-10-29', '2026-10-28', '2026-10-28', 'Finn'],
  [5, '2026-10-29', '2026-10-30', '2026-10-30', 'Cleo'],
  [6, '2026-10-29', '2026-10-30', undefined, 'Dag', 'yes', 'card not accepted'],
  [8, '2026-10-29', '2026-11-02', undefined, 'Eve'],
  [7, '2026-11-12', '2026-11-12', '2026-11-12', 'Eve'],
];

/** Aircraft, box or card, database, effective, loaded on, verified on, by, failed, remark. */
export const demoLoads: readonly (readonly Content[])[] = loads.map(([card, effectiveOn, loaded, verified, by, failed, remark]) => {
  const [aircraft, box, database, series] = demoCards[card - 1] ?? [];
  const ofSeries = String(series);
  const seen = verified === undefined ? undefined : loadedOn(verified, ofSeries);
  return [aircraft, box, database, effective(effectiveOn, ofSeries), loadedOn(loaded, ofSeries), seen, by, failed, remark];
});

/** Aircraft, database, licence end, every so many months, cost, currency, shared by, starts, box or card, series. */
export const demoLicences: readonly (readonly Content[])[] = [
  ['Quillon Four', 'navigation', date('2027-03-31'), 12, 480, 'EUR', 'equal'],
  ['Quillon Four', 'obstacles', date('2027-03-31'), 12, 95, 'EUR', 'equal'],
  ['Quillon Four', 'charts', date('2026-12-15'), 12, 149, 'EUR', 'hours', undefined, 'tablet'],
  ['Brindle Two', 'navigation', date('2026-10-31'), 12, 480, 'EUR', 'equal'],
  ['Sable Twin', 'navigation', date('2027-06-30'), 12, 620, 'CHF', 'share'],
  ['Sable Twin', 'charts', date('2026-12-10'), 1, 24.9, 'CHF', 'share'],
  ['Merle Tug', 'navigation', date('2027-01-31'), 12, 455, 'EUR', 'hours'],
  ['Merle Tug', 'terrain', 'no end', undefined, 0, 'EUR', 'equal'],
  ['all', 'weather', date('2027-02-28'), 12, 200, 'EUR', 'equal'],
];

/** Member, aircraft, hours, share. */
export const demoMembers: readonly (readonly Content[])[] = [
  ['Ada', 'Quillon Four', 14.2, 40],
  ['Ada', 'Merle Tug', 3.1, undefined],
  ['Bo', 'Quillon Four', 22.5, 30],
  ['Cleo', 'Quillon Four', 6, 30],
  ['Cleo', 'Brindle Two', 11.4, undefined],
  ['Dag', 'Brindle Two', 8.7, undefined],
  ['Dag', 'Sable Twin', 19.9, 60],
  ['Eve', 'Sable Twin', 12.6, 40],
  ['Finn', 'Brindle Two', 2, undefined],
  ['Finn', 'Merle Tug', 17.3, undefined],
];
