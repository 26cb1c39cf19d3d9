// Lists that are full: a paste beyond the last row is refused whole, rows are offered, and with them in it is read, judged and looks as the rows
// above it, with nothing below the list touched.
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { FullList } from '../../addon/local/engine/fullLists';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { defaultRoom, placesFor } from '../../sheets-templates/ledger/places';
import { tripRows } from '../../sheets-templates/trip/rows';

const { cards, fleet, licences, members } = placesFor(defaultRoom);
const ledger = 'Data ledger';

describe('a list that is full', () => {
  let workbook: HeadlessWorkbook;
  let told: readonly FullList[];
  beforeEach(async () => {
    workbook = await openHeadless(sheetTemplates.filter(({ key }) => ['start', 'trip', 'ledger'].includes(key)));
    told = workbook.guardLists();
  });
  afterEach(() => workbook.dispose());
  const styleOf = (row: number): unknown => Object.values(workbook.saved().sheets).find(({ name }) => name === ledger)?.cellData?.[row - 1]?.[0]?.s;

  it('refuses 200 cards that are pasted at once, and takes them with the rows that it offers', async () => {
    const pasted = Object.fromEntries(
      Array.from({ length: 200 }, (_, index) =>
        [`AC ${index % 50}`, `box ${index}`, 'charts', '28-day'].map((text, at) => [`${'ABCD'[at] ?? ''}${cards.first + index}`, text] as const),
      ).flat(),
    );
    const all = `A1:M${members.head}`;
    const before = workbook.values(ledger, all);
    await workbook.set(ledger, { ...pasted, [`A${cards.last}`]: 'AC' });
    expect(workbook.values(ledger, all)).toEqual(before);
    const missing = 200 - (cards.last - cards.first + 1);
    expect(told.map(({ above, rows, isRefused }) => [above + 1, rows, isRefused])).toEqual([[cards.last, missing + 10, true]]);
    await workbook.insertRows(ledger, cards.last, missing + 10);
    await workbook.set(ledger, pasted);
    expect(told.length).toBe(1);
    expect(workbook.values(ledger, `J${cards.first}:J${cards.first + 199}`).flat()).toEqual(Array(200).fill('UNKNOWN'));
    expect(workbook.value(ledger, `A${fleet.head + missing + 10 + 50}`)).toBe('AC 49');
    expect(styleOf(cards.first + 199)).toBe(styleOf(cards.first + 5));
    expect(workbook.value(ledger, `A${licences.head + missing + 10}`)).toBe('aircraft');
  }, 90_000);

  it('lets the last row be typed into, and offers rows', async () => {
    await workbook.set(ledger, { [`A${licences.last}`]: 'all', [`B${licences.last}`]: 'terrain', [`C${licences.last}`]: 'lifetime' });
    expect(workbook.value(ledger, `L${licences.last}`)).toMatch(/^licence end must be a date/);
    expect(told.map(({ above, rows, isRefused }) => [above + 1, rows, isRefused])).toEqual([[licences.last, 10, false]]);
  }, 60_000);

  it('takes entries of several lists in one step, and says nothing of lists whose rows have meanings of their own', async () => {
    const { metars, tafs } = tripRows;
    const rows = [metars, tafs].flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, index) => first + index));
    await workbook.set('Trip sheet', Object.fromEntries(rows.map((row) => [`A${row}`, `report ${row}`])));
    expect(rows.map((row) => workbook.value('Trip sheet', `A${row}`))).toEqual(rows.map((row) => `report ${row}`));
    expect(told.map(({ above }) => above)).toEqual([]);
  }, 60_000);

  it('leaves alone what the grid rewrites itself where rows are put in, taken out and brought back', async () => {
    const verdicts = (): unknown[] => workbook.values(ledger, `J${cards.first}:J${cards.last}`).flat();
    const before = verdicts();
    await workbook.insertRows(ledger, 20, 10);
    await workbook.removeRows(ledger, 34, 3);
    expect(verdicts().filter((word) => word !== '')).toEqual(before.filter((word) => word !== ''));
    await workbook.undo();
    await workbook.undo();
    expect(verdicts()).toEqual(before);
    expect(told.map(({ above }) => above)).toEqual([]);
  }, 60_000);
});
