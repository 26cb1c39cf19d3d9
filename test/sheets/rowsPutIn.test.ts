// Rows put into a list as a user puts them in, at its top, in its middle and below its last row, and an entry typed there:
// it must count, or the verdict must say that it does not.
import { describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import type { SheetKey, TemplateValue } from '../../sheets-templates/template';
import { withRowsAt } from '../support/movedTemplates';

type Entries = Readonly<Record<string, TemplateValue>>;

interface List {
  readonly what: string;
  readonly key: SheetKey;
  readonly first: number;
  readonly last: number;
  /** An entry that must be seen: far too heavy, out of date, in the way. */
  readonly entry: (row: number) => Entries;
  /** Items of the trip that are no longer OK where the row counts. */
  readonly item: string;
  /** What is said where a row put in at that end cannot be read. */
  readonly unread?: { readonly top?: RegExp; readonly end?: RegExp };
}

const filled = (row: number, cells: Readonly<Record<string, TemplateValue>>): Entries => Object.fromEntries(Object.entries(cells).map(([column, value]) => [`${column}${row}`, value]));
const correction = (row: number): Entries => filled(row, { A: 'mud', B: 300, C: 1, D: 1 });
const moveDown = /right below the heads of its list, where it is not read: move it down/;
const outside = /stands outside its list: insert rows between/;

const lists: readonly List[] = [
  { what: 'a station', key: 'balance', first: 8, last: 23, entry: (row) => filled(row, { A: 'Quillon Four', B: 'anvil', C: 900, D: 142 }), item: 'Loading, take-off' },
  { what: 'a tank', key: 'balance', first: 28, last: 33, entry: (row) => filled(row, { A: 'Quillon Four', B: 'tip', C: 40, D: 2 }), item: 'Fuel', unread: { end: /an entry of fuel is missing/ } },
  { what: 'a corner', key: 'balance', first: 68, last: 97, entry: (row) => filled(row, { A: 'Quillon Four', B: 'normal', C: '', D: 1700 }), item: 'Loading, take-off' },
  { what: 'a correction of the take-off', key: 'trip', first: 25, last: 28, entry: correction, item: 'Take-off runway', unread: { top: moveDown } },
  { what: 'a correction of the landing', key: 'trip', first: 49, last: 52, entry: correction, item: 'Landing runway', unread: { top: moveDown } },
  { what: 'a database', key: 'trip', first: 73, last: 76, entry: (row) => filled(row, { A: 'old', B: '28-day', C: { date: '2026-01-22' } }), item: 'Navigation data', unread: { top: outside, end: outside } },
  { what: 'a restriction', key: 'card', first: 12, last: 19, entry: (row) => filled(row, { A: 'Zed', B: 5, D: 3000, E: 'at' }), item: 'Descent', unread: { top: moveDown } },
  { what: 'a row of the schedule', key: 'card', first: 24, last: 28, entry: (row) => filled(row, { E: 10000, F: 60, G: 100 }), item: 'Descent', unread: { top: moveDown } },
  { what: 'a wind', key: 'card', first: 31, last: 36, entry: (row) => filled(row, { E: 8000, F: 90, G: 290 }), item: 'Descent', unread: { top: moveDown } },
];

const places = lists.flatMap(({ first, last, unread, ...list }) => [
  { ...list, end: 'at the top', row: first, says: unread?.top },
  { ...list, end: 'in the middle', row: first + 2, says: undefined },
  { ...list, end: 'below the last', row: last + 1, says: unread?.end },
]);

const itemsOf: Readonly<Record<string, string>> = { 'a correction of the take-off': 'Entries', 'a correction of the landing': 'Entries' };

describe('a row put into a list', () => {
  it.each(places)('$what $end', async ({ what, key, row, entry, item, says }) => {
    const workbook = await openHeadless(withRowsAt(sheetTemplates, key, (one) => (one >= row ? one + 1 : one)));
    const sheet = sheetTemplates.find((one) => one.key === key)?.name ?? '';
    try {
      expect(workbook.named('trip_verdict')).toEqual([['OK']]);
      await workbook.set(sheet, entry(row));
      const told = workbook.named('trip_reasons').find(([name]) => name === (says === undefined ? item : (itemsOf[what] ?? item)));
      expect(['NO', 'UNKNOWN']).toContain(workbook.named('trip_verdict')[0]?.[0]);
      expect(told?.[1]).not.toBe('OK');
      if (says !== undefined) expect(told?.slice(1)).toEqual(['UNKNOWN', expect.stringMatching(says)]);
    } finally {
      workbook.dispose();
    }
  });

  it('adds its own to the sums', async () => {
    const workbook = await openHeadless(withRowsAt(sheetTemplates, 'balance', (one) => (one >= 8 ? one + 1 : one)));
    const before = Number(workbook.value('Weight and balance', 'C39'));
    await workbook.set('Weight and balance', filled(8, { A: 'Quillon Four', B: 'bag', C: 7, D: 100 }));
    expect(workbook.value('Weight and balance', 'C39')).toBe(before + 7);
    workbook.dispose();
  });
});
