// A list sorted by a column: whole rows, nothing lost, no formula and no other cell touched; and rows found by a text.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { address } from '../../sheets-templates/addresses';
import { sheetTemplates } from '../../sheets-templates';
import { sheetNames } from '../../sheets-templates/places';
import { rowsWith } from '../../addon/workbook/foundText';
import { sortableLists, sortedList, type SortableList } from '../../addon/workbook/sortedList';
import type { CellsChanged } from '../../addon/workbook/cellChanges';
import type { CellValue, SheetSnapshot } from '../../addon/workbook/snapshot';

const seconds = 120_000;

describe('a sorted list', () => {
  let workbook: HeadlessWorkbook;
  const sheetNamed = (name: string): SheetSnapshot => {
    const found = workbook.snapshot().sheets.find((sheet) => sheet.name === name);
    if (found === undefined) throw new Error(`no sheet ${name}`);
    return found;
  };
  const listOf = (name: string): SortableList => {
    const [only] = sortableLists(sheetNamed(name));
    if (only === undefined) throw new Error(`no list on ${name}`);
    return only;
  };
  const placeOf = ({ columns }: SortableList, heading: string): number => columns.find((one) => one.heading === heading)?.place ?? -1;
  async function write(changes: readonly CellsChanged[]): Promise<void> {
    for (const { sheet, row, column, after } of changes) {
      const cells = after.flatMap((line, down) => line.map((content, across) => [address(row + down, column + across), content as string] as const));
      await workbook.set(sheet, Object.fromEntries(cells));
    }
  }
  const column = (sortable: SortableList, place: number): CellValue[] => {
    const { sheet, first, last, column: from } = sortable.list;
    return Array.from({ length: last - first + 1 }, (_, index) => sheet.values[first + index - 1]?.[from - 1 + place] ?? '');
  };

  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  }, seconds);
  afterAll(() => workbook.dispose());

  it('are the flights, the payments and the licences, and no list in which the order counts', () => {
    expect(workbook.snapshot().sheets.flatMap((sheet) => sortableLists(sheet).map(({ name }) => [sheet.name, name]))).toEqual([
      [sheetNames.ledger, 'Licences'],
      [sheetNames.dues, 'Payments'],
      [sheetNames.currency, 'Flights'],
    ]);
  });

  it.each([
    [sheetNames.currency, 'aircraft'],
    [sheetNames.dues, 'amount'],
    [sheetNames.ledger, 'licence end'],
  ])(
    'of %s by "%s" keeps every row whole, and every answer elsewhere',
    async (name, heading) => {
      const rowsBefore = listOf(name);
      const place = placeOf(rowsBefore, heading);
      expect(place).toBeGreaterThanOrEqual(0);
      const formulasBefore = sheetNamed(name).formulas;
      const judged = (): unknown[] => ['trip_verdict'].map((one) => workbook.named(one));
      const verdicts = judged();
      const rowTexts = (sortable: SortableList): string[] => {
        const { sheet, first, last, column: from, width } = sortable.list;
        return Array.from({ length: last - first + 1 }, (_, index) =>
          JSON.stringify(sheet.values[first + index - 1]?.slice(from - 1, from - 1 + width) ?? []),
        ).sort();
      };
      for (const direction of ['down', 'up'] as const) {
        const { changes, rows } = sortedList(listOf(name), place, direction);
        await write(changes);
        const after = listOf(name);
        const filled = column(after, place).filter((value) => value !== '');
        expect(rows).toBeGreaterThan(1);
        const numbers = filled.filter((value) => typeof value === 'number');
        expect(numbers).toEqual([...numbers].sort((one, other) => (direction === 'up' ? 1 : -1) * (Number(one) - Number(other))));
        expect(rowTexts(after)).toEqual(rowTexts(rowsBefore));
        expect(sheetNamed(name).formulas).toEqual(formulasBefore);
        expect(judged()).toEqual(verdicts);
        expect(sortedList(after, place, direction).changes).toEqual([]);
      }
    },
    seconds,
  );

  it(
    'puts blank rows last whichever way, and is refused where a cell of it holds a formula',
    async () => {
      const before = listOf(sheetNames.dues);
      const { first, column: from } = before.list;
      await workbook.set(sheetNames.dues, { [address(first + 8, from + 1)]: 'Late', [address(first + 8, from + 2)]: 1 });
      for (const direction of ['up', 'down'] as const) {
        await write(sortedList(listOf(sheetNames.dues), placeOf(before, 'amount'), direction).changes);
        const amounts = column(listOf(sheetNames.dues), placeOf(before, 'amount'));
        const firstBlank = amounts.indexOf('');
        expect(amounts.slice(firstBlank).every((value) => value === '')).toBe(true);
      }
      await workbook.set(sheetNames.dues, { [address(first, from + 2)]: '=1+1' });
      expect(() => sortedList(listOf(sheetNames.dues), 0, 'up')).toThrow(`Row ${first} of the list "Payments" on "Dues" holds a formula`);
    },
    seconds,
  );

  it('leaves a sheet alone whose keys are gone', () => {
    const sheet = sheetNamed(sheetNames.dues);
    expect(sortableLists({ ...sheet, formulas: [] })).toEqual([]);
    expect(sortableLists({ name: sheet.name, values: sheet.values, formulas: sheet.formulas })).toEqual([]);
  });
});

describe('rows with a text', () => {
  const sheet = (values: SheetSnapshot['values']): SheetSnapshot => ({ name: 'S', values, formulas: [] });

  it('are told with all that stands in them, days by their day', () => {
    const found = rowsWith(
      [
        sheet([
          ['head', ''],
          ['', 'Quillon Four', 46_351],
          ['other', 'x', 3],
        ]),
      ],
      'quillon',
    );
    expect(found).toEqual([{ sheet: 'S', row: 2, column: 2, words: 'Quillon Four, 2026-11-25' }]);
    expect(rowsWith([sheet([['a', 46_351]])], '2026-11')).toHaveLength(1);
    expect(rowsWith([sheet([['a', 46_351]])], '46351')).toHaveLength(1);
  });

  it('are none for nothing', () => {
    for (const text of ['', '  ', 'zzz']) expect(rowsWith([sheet([['a', '']])], text)).toEqual([]);
  });
});
