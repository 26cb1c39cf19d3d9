// Invented from end to end: a club of four aircraft with its cards, licences and members, for the Data ledger.
import type { Content } from './build';

const date = (iso: string): Content => ({ date: iso });

/** Aircraft, box or card, database, series, effective date, loaded on, by, changes at, verified. */
export const demoCards: readonly (readonly Content[])[] = [
  ['DEMO-1', 'panel, box 1', 'navigation', '28-day', date('2026-10-29'), date('2026-10-28'), 'Ada', '0901Z', 'yes'],
  ['DEMO-1', 'panel, box 2', 'navigation', '28-day', date('2026-10-29'), date('2026-10-28'), 'Ada', '0901Z', 'yes'],
  ['DEMO-1', 'panel, box 1', 'obstacles', '56-day', date('2026-10-29'), date('2026-10-28'), 'Ada', '0901Z', 'yes'],
  ['DEMO-1', 'tablet', 'charts', '28-day', date('2026-11-26'), date('2026-11-24'), 'Bo', '0901Z', 'yes'],
  ['DEMO-2', 'panel, left', 'navigation', '28-day', date('2026-10-29'), date('2026-10-30'), 'Cleo', '0000Z', 'yes'],
  ['DEMO-2', 'panel, right', 'navigation', '28-day', date('2026-10-01'), date('2026-09-30'), 'Dag', '0000Z', 'yes'],
  ['DEMO-3', 'panel', 'navigation', '14-day', date('2026-11-12'), date('2026-11-12'), 'Eve', '0000Z', 'yes'],
  ['DEMO-3', 'tablet', 'charts', '56-day', date('2026-10-29'), date('2026-11-02'), 'Eve', '0000Z', 'no'],
  ['DEMO-4', 'panel', 'navigation', '28-day', date('2026-10-28'), date('2026-10-28'), 'Finn', '0000Z', 'yes'],
  ['DEMO-4', 'panel', 'terrain', '56-day', date('2026-10-29'), date('2026-10-28'), 'Finn', '0000Z', 'yes'],
];

/** Aircraft, database, licence end, every so many months, cost, currency, shared by. */
export const demoLicences: readonly (readonly Content[])[] = [
  ['DEMO-1', 'navigation', date('2027-03-31'), 12, 480, 'EUR', 'equal'],
  ['DEMO-1', 'obstacles', date('2027-03-31'), 12, 95, 'EUR', 'equal'],
  ['DEMO-1', 'charts', date('2026-12-15'), 12, 149, 'EUR', 'hours'],
  ['DEMO-2', 'navigation', date('2026-10-31'), 12, 480, 'EUR', 'equal'],
  ['DEMO-3', 'navigation', date('2027-06-30'), 12, 620, 'CHF', 'share'],
  ['DEMO-3', 'charts', date('2026-12-10'), 1, 24.9, 'CHF', 'share'],
  ['DEMO-4', 'navigation', date('2027-01-31'), 12, 455, 'EUR', 'hours'],
  ['all', 'weather', date('2027-02-28'), 12, 200, 'EUR', 'equal'],
];

/** Member, aircraft, hours, share. */
export const demoMembers: readonly (readonly Content[])[] = [
  ['Ada', 'DEMO-1', 14.2, 40],
  ['Ada', 'DEMO-4', 3.1, undefined],
  ['Bo', 'DEMO-1', 22.5, 30],
  ['Cleo', 'DEMO-1', 6, 30],
  ['Cleo', 'DEMO-2', 11.4, undefined],
  ['Dag', 'DEMO-2', 8.7, undefined],
  ['Dag', 'DEMO-3', 19.9, 60],
  ['Eve', 'DEMO-3', 12.6, 40],
  ['Finn', 'DEMO-2', 2, undefined],
  ['Finn', 'DEMO-4', 17.3, undefined],
];
