// Entries carried onto sheets that a later version has changed: each arrives in its own cell, or the update is refused.
import { describe, expect, it } from 'vitest';
import { migrateEntries, type MigratedEntries } from '../../../addon/workbook/migrateEntries';
import type { CellValue } from '../../../addon/workbook/snapshot';
import { sheetTemplates } from '../../../sheets-templates';
import { isEntry, type SheetKey, type SheetTemplate } from '../../../sheets-templates/template';
import { defaultRoom, placesFor } from '../../../sheets-templates/ledger/places';
import { tripRows } from '../../../sheets-templates/trip/rows';
import { withCells, withoutKeysOf, withRowsAt } from '../../support/movedTemplates';
import { carried, uniqueBook } from '../../support/uniqueBook';

const { cards, fleet, licences, renewals } = placesFor(defaultRoom);

describe('onto a later version', () => {
  const { book, filled } = uniqueBook();
  const onto = (templates: readonly SheetTemplate[]): MigratedEntries => migrateEntries(book, 'one', templates);
  /** Where each entry is expected, by the row that its template row has now. */
  const expected = (key: SheetKey, rowNow: (row: number) => number): Map<string, CellValue> =>
    new Map(
      [...filled].map(([place, content]) =>
        place.startsWith(`${key} `) ? [place.replace(/\d+$/, (row) => String(rowNow(Number(row)))), content] : [place, content],
      ),
    );

  it.each([
    ['rows moved down', 'card', (row: number) => (row >= 8 ? row + 3 : row)],
    ['sections swapped', 'card', (row: number) => (row >= 6 && row < 22 ? row + 30 : row >= 22 && row < 52 ? row - 16 : row)],
    [
      'sections of the ledger swapped',
      'ledger',
      (row: number) =>
        row > fleet.last && row <= licences.last
          ? row + renewals.last - licences.last
          : row > licences.last && row <= renewals.last
            ? row - (licences.last - fleet.last)
            : row,
    ],
    ['a list lengthened', 'ledger', (row: number) => (row >= cards.last ? row + 10 : row)],
    [
      'entries in another order',
      'trip',
      (row: number) => (row === tripRows.passengers ? tripRows.instrument : row === tripRows.instrument ? tripRows.passengers : row),
    ],
  ] as const)('finds every entry with %s', (_what, key, rowNow) => {
    const result = onto(withRowsAt(sheetTemplates, key, rowNow));
    expect(result.refusals).toEqual([]);
    expect(carried(result)).toEqual(expected(key, rowNow));
  });

  it('finds every entry where headings have other numbers, and where one reads otherwise', () => {
    const renumbered = withCells(sheetTemplates, 'card', (cell) =>
      cell.style === 'heading' && typeof cell.value === 'string' && /^\d/.test(cell.value)
        ? { ...cell, value: cell.value.replace(/^\d/, (digit) => String(Number(digit) + 4)) }
        : cell,
    );
    expect(onto(renumbered)).toMatchObject({ refusals: [] });
    expect(carried(onto(renumbered))).toEqual(filled);
    const renamed = withCells(sheetTemplates, 'trip', (cell) => (cell.value === '3  En route and fuel' ? { ...cell, value: '4  Fuel' } : cell));
    expect(onto(renamed).refusals).toEqual([]);
    expect(carried(onto(renamed))).toEqual(filled);
  });

  it('finds every entry whatever the words beside it', () => {
    const reworded = onto(
      withCells(sheetTemplates, 'card', (cell) =>
        typeof cell.value === 'string' && !isEntry(cell) ? { ...cell, value: `${cell.value}, in other words` } : cell,
      ),
    );
    expect(reworded.refusals).toEqual([]);
    expect(carried(reworded)).toEqual(filled);
    expect(reworded.notes.join()).toContain('A7 "altitude now"');
  });

  it('refuses what has lost its key or its room', () => {
    const gone = onto(
      withoutKeysOf(
        withCells(sheetTemplates, 'card', (cell) => (cell.row >= 52 ? undefined : cell)),
        'card',
        (key) => key.startsWith('hold.'),
      ),
    );
    expect(gone.refusals.join()).toMatch(/B53 \d+, B54/);
    const head = onto(withoutKeysOf(sheetTemplates, 'card', (key) => key === 'crossings.altitude'));
    expect(head.refusals.join()).toContain(`D12 ${filled.get('card D12')}, D13`);
    const kept = cards.first + 3;
    const fewerCards = withCells(sheetTemplates, 'ledger', (cell) => (cell.row > kept && cell.row <= cards.last ? undefined : cell));
    const room = onto(withRowsAt(fewerCards, 'ledger', (row) => (row <= kept ? row : row <= cards.last ? kept : row - (cards.last - kept))));
    expect(room.refusals).toEqual([
      '"Data ledger": the list under "Cards, and how they stand by the history of their loads" has 30 rows, and today\'s sheet has room for 4. Shorten it, then ask again.',
    ]);
    for (const one of [head, gone, room]) expect(one.entries).toEqual([]);
  });

  it('finds an entry that has another key today, or stands on another sheet', () => {
    const renamed = withoutKeysOf(sheetTemplates, 'card', (key) => (key === 'altitudeNow' ? 'level' : key === 'hold.fuel'));
    const moved = renamed.map((template) =>
      template.key === 'start'
        ? {
            ...template,
            cells: template.cells.map((cell) =>
              cell.formula === undefined ? cell : { ...cell, formula: cell.formula.replace('"asOf",A6', '"asOf",A6,"fuel",B9') },
            ),
          }
        : template,
    );
    const result = migrateEntries(book, 'one', moved, { 'card.level': 'card.altitudeNow', 'start.fuel': 'card.hold.fuel' });
    expect(result.refusals).toEqual([]);
    const all = carried(result);
    expect([all.get('card B7'), all.get('start B9'), all.has('card B66')]).toEqual([filled.get('card B7'), filled.get('card B66'), false]);
  });

  it('leaves a new entry blank', () => {
    const added = withCells(sheetTemplates, 'card', (cell) => cell).map((template) =>
      template.key === 'card'
        ? {
            ...template,
            cells: [
              ...template.cells,
              { row: 10, column: 1, value: 'new entry', style: 'label' as const },
              { row: 10, column: 2, value: 5, style: 'input' as const },
            ],
          }
        : template,
    );
    expect(onto(added).refusals).toEqual([]);
    expect(carried(onto(added)).has('card B10')).toBe(false);
  });
});
