// The whole way on the double: every sheet inserted, every entry cell typed into, read, carried into a later version whose
// rows stand elsewhere, brought up to date, and read again.
import { afterEach, expect, it } from 'vitest';
import { insertSheets } from '../../addon/google/insertSheets';
import { readWorkbook } from '../../addon/google/readWorkbook';
import { updateSheets } from '../../addon/google/updateSheets';
import { migrateEntries, setsOf } from '../../addon/workbook/migrateEntries';
import type { CellValue, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { withCells, withRowsAt } from '../support/movedTemplates';
import type { Double } from './double/services';
import { formulasOf } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

const isEntry = ({ style }: { readonly style: string }): boolean => style === 'input' || style === 'inputText';

/** Each entry of today's templates gets a number, a text or a day of its own; those that come with a formula keep it. */
function typeEverywhere(double: Double): Map<string, CellValue> {
  const typed = new Map<string, CellValue>();
  sheetTemplates.forEach(({ key, name, cells }, sheet) =>
    cells.filter(isEntry).forEach(({ row, column, value, formula, style, format }, index) => {
      if (formula !== undefined || value === undefined) return;
      const content = style === 'inputText' ? `own ${sheet}-${index}` : format === 'date' ? 46_200 + index : 1000 * (sheet + 1) + index + 0.25;
      double.sheet(name).cell(row, column).value = content;
      typed.set(`${key} ${row} ${column}`, content);
    }),
  );
  return typed;
}

const later = (): { readonly templates: SheetTemplate[]; readonly rowNow: Readonly<Partial<Record<SheetKey, (row: number) => number>>> } => {
  const rowNow = { trip: (row: number) => (row < 10 ? row : row + 3), tables: (row: number) => (row < 5 ? row : row + 1) };
  const moved = withRowsAt(withRowsAt(sheetTemplates, 'trip', rowNow.trip), 'tables', rowNow.tables);
  // One label reads otherwise, and one sheet has a text more.
  const reworded = withCells(moved, 'start', (cell) => (cell.style === 'subtitle' ? { ...cell, value: 'Other words, invented.' } : cell));
  return { templates: reworded, rowNow };
};

const valueIn = (snapshot: WorkbookSnapshot, name: string, row: number, column: number): CellValue =>
  snapshot.sheets.find((sheet) => sheet.name === name)?.values[row - 1]?.[column - 1] ?? '';

afterEach(withoutPlatform);

it.each(['America/New_York', 'Pacific/Auckland'])('everything typed is there afterwards, in %s', (zone) => {
  const double = withDouble(zone);
  const first = insertSheets(
    sheetTemplates.map(({ key }) => key),
    sheetTemplates,
  );
  const typed = typeEverywhere(double);
  const { templates, rowNow } = later();
  const snapshot = readWorkbook({ sheets: 'all' });
  const [found] = setsOf(snapshot, templates);
  expect(found?.outOfDate).toBe(true);
  const { entries, refusals } = migrateEntries(snapshot, found?.set ?? '', templates);
  expect(refusals).toEqual([]);
  const { updated } = updateSheets({ set: found?.set ?? '', entries }, templates);
  expect(updated).toEqual(first.inserted);
  const after = readWorkbook({ sheets: 'all' });
  const missing = [...typed].filter(([place, content]) => {
    const [key = '', row, column] = place.split(' ');
    const name = sheetTemplates.find((one) => one.key === key)?.name ?? '';
    return valueIn(after, name, (rowNow[key as SheetKey] ?? ((same: number) => same))(Number(row)), Number(column)) !== content;
  });
  expect(missing).toEqual([]);
  expect(typed.size).toBeGreaterThan(2000);
  expect(setsOf(after, templates).map(({ outOfDate }) => outOfDate)).toEqual([false]);
  // The sheets read one another, and none of them an older one.
  for (const name of updated) expect(formulasOf(double.sheet(name)).join('\n')).not.toContain('(before)');
});

it("formulas of entries that are still the template's own read the new rows", () => {
  const double = withDouble();
  insertSheets(
    sheetTemplates.map(({ key }) => key),
    sheetTemplates,
  );
  const { templates } = later();
  const snapshot = readWorkbook({ sheets: 'all' });
  const set = setsOf(snapshot, templates)[0]?.set ?? '';
  updateSheets({ set, entries: migrateEntries(snapshot, set, templates).entries }, templates);
  const own = templates.flatMap(({ name, cells }) =>
    cells.filter((cell) => isEntry(cell) && cell.formula !== undefined).map(({ row, column, formula = '' }) => ({ name, row, column, formula })),
  );
  expect(own.length).toBeGreaterThan(1);
  /** A comma within a text is none between arguments. */
  const written = (formula: string): string => formula.replace(/"(?:[^"]|"")*"|,/g, (part) => (part === ',' ? ';' : part));
  for (const { name, row, column, formula } of own) expect(double.sheet(name).cell(row, column).formula).toBe(written(formula));
});
