// What tests of the Google host look at in the double's document, to see what has changed and what has not.
import { insertSheets, type InsertReport } from '../../addon/google/insertSheets';
import type { SheetKey } from '../../sheets-templates/template';
import type { Double } from './double/services';
import type { FakeSheet } from './double/sheet';
import { smallTemplates } from './smallTemplates';

const everySmall: readonly SheetKey[] = smallTemplates.map(({ key }) => key);
export const insertSmall = (keys: readonly SheetKey[] = everySmall): InsertReport => insertSheets(keys, smallTemplates);

export const sheetNamesOf = ({ document }: Double): string[] => document.sheets.map(({ name }) => name);
export const rangesOf = ({ document }: Double): string[] =>
  document.names.map(({ name, range }) => `${name}=${range.sheet.name}!${range.getA1Notation()}`);
export const formulasOf = (sheet: FakeSheet): string[] => [...sheet.cells.values()].map(({ formula }) => formula).filter((formula) => formula !== '');

/** Everything that a sheet holds, to see that nothing of it has changed; cells that were only looked at are left out. */
export function contentOf(sheet: FakeSheet): string {
  const cells = [...sheet.cells]
    .filter(([, { value, formula, validation, background }]) => value !== '' || formula !== '' || validation !== null || background !== null)
    .sort();
  const marks = sheet.metadata.map((one) => [one.key, one.getValue()]);
  const facts = [
    sheet.name,
    sheet.rows,
    sheet.columns,
    sheet.frozen,
    cells,
    [...sheet.widths],
    sheet.merges,
    sheet.charts.length,
    sheet.rules.length,
    sheet.protections.length,
    marks,
  ];
  return JSON.stringify(facts, (key, value: unknown) => (key === 'sheet' ? undefined : value));
}

/** The whole document: its sheets in their order, the names of ranges, the sheet in sight. */
export const documentOf = (double: Double): string[] => [
  ...double.document.sheets.map(contentOf),
  ...rangesOf(double).sort(),
  `in sight: ${double.document.active.name}`,
];
