// Where the cells of a template stand after rows or columns were inserted or removed, or a label was changed.
import { describe, expect, it } from 'vitest';
import { laidOut } from '../../addon/workbook/laidOut';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { edited, typedOver, type LineEdit } from '../support/editedWorkbook';
import { writtenSheet } from '../support/writtenSheet';

function templateOf(key: SheetKey): SheetTemplate {
  const found = sheetTemplates.find((one) => one.key === key);
  if (found === undefined) throw new Error(key);
  return found;
}

const inBook = (sheet: SheetSnapshot): WorkbookSnapshot => ({ sheets: [sheet], names: [], selected: { sheet: sheet.name, row: 1, column: 1 } });
function changed(sheet: SheetSnapshot, edit: Omit<LineEdit, 'sheet'>): SheetSnapshot {
  const [made] = edited(inBook(sheet), { ...edit, sheet: sheet.name }).sheets;
  if (made === undefined) throw new Error('no sheet');
  return made;
}
const rowsInserted = (sheet: SheetSnapshot, at: number, inserted = 1): SheetSnapshot => changed(sheet, { lines: 'row', at, inserted });
const rowsRemoved = (sheet: SheetSnapshot, at: number, removed = 1): SheetSnapshot => changed(sheet, { lines: 'row', at, removed });
const typed = (sheet: SheetSnapshot, row: number, column: number, content: CellValue): SheetSnapshot => typedOver(inBook(sheet), sheet.name, [{ row, column, content }]).sheets[0] ?? sheet;
const withValues = (sheet: SheetSnapshot, change: (values: CellValue[][]) => CellValue[][]): SheetSnapshot => ({ ...sheet, values: change(sheet.values.map((line) => [...line])) });

const card = templateOf('card');

describe('a sheet as it was written', () => {
  it.each(sheetTemplates.map((template) => [template.name, template] as const))('%s', (_name, template) => {
    const { range } = laidOut(template, writtenSheet(template));
    expect(range('B12:C14')).toBe('B12:C14');
  });
});

describe('a sheet that was changed', () => {
  const at = (sheet: SheetSnapshot, range: string, template = card): string | undefined => laidOut(template, sheet).range(range);

  it('has moved down below an inserted row, and stayed above it', () => {
    const sheet = rowsInserted(writtenSheet(card), 8, 3);
    expect([at(sheet, 'B7'), at(sheet, 'A12:E19'), at(sheet, 'B27'), at(sheet, 'A40:H49'), at(sheet, 'E54:G74')]).toEqual(['B7', 'A15:E22', 'B30', 'A43:H52', 'E57:G77']);
  });

  it('has a list that grew', () => {
    const sheet = rowsInserted(writtenSheet(card), 14, 2);
    expect([at(sheet, 'A12:E19'), at(sheet, 'B27'), at(sheet, 'A13')]).toEqual(['A12:E21', 'B29', undefined]);
  });

  it('has a list that did not grow where the rows were inserted beyond its end', () => {
    const sheet = rowsInserted(writtenSheet(card), 21, 2);
    // The list of restrictions is read to the blank row below its last.
    expect([at(sheet, 'A12:E20'), at(sheet, 'B27')]).toEqual(['A12:E20', 'B29']);
    expect(at(rowsInserted(writtenSheet(card), 12, 2), 'A12:E20')).toBe('A14:E22');
  });

  it('does not believe one formula alone against the texts', () => {
    const ledger = templateOf('ledger');
    // Members: read by COST_STATEMENT, and by a line of help, which is left out here.
    const range = ledger.cells.map(({ formula }) => /COST_STATEMENT\(.*,(\$A\$\d+:\$D\$\d+)\)/.exec(formula ?? '')?.[1]).find((one) => one !== undefined) ?? '';
    const [first = 0, last = 0] = range.split(':').map((corner) => Number(/\d+/.exec(corner)?.[0]));
    const grown = rowsInserted(writtenSheet(ledger), first + 5, 2);
    expect(at(grown, range, ledger)).toBe(`A${first}:D${last + 2}`);
    const shortened = { ...grown, formulas: grown.formulas.filter(({ text }) => text.includes('COST_STATEMENT')).map((cell) => ({ ...cell, text: cell.text.replace(`$D$${last + 2}`, `$D$${last - 3}`) })) };
    expect(at(shortened, range, ledger)).toBeUndefined();
  });

  it('has a list that shrank', () => expect(at(rowsRemoved(writtenSheet(card), 14, 2), 'A12:E19')).toBe('A12:E17'));

  it('does not have what was removed, nor takes another row for it', () => {
    const sheet = rowsRemoved(writtenSheet(card), 8);
    expect([at(sheet, 'B7'), at(sheet, 'B8'), at(sheet, 'B9'), at(sheet, 'A12:E19')]).toEqual(['B7', undefined, 'B8', 'A11:E18']);
  });

  it('is found again when one label reads otherwise, and the cell beside it by the formulas that read it', () => {
    const sheet = typed(rowsInserted(writtenSheet(card), 6), 10, 1, 'my speed');
    expect([at(sheet, 'B8'), at(sheet, 'B9'), at(sheet, 'A12:E19')]).toEqual(['B9', 'B10', 'A13:E20']);
    expect(at({ ...sheet, formulas: [] }, 'B9')).toBeUndefined();
  });

  it('is found behind an inserted column', () => {
    const sheet = changed(writtenSheet(card), { lines: 'column', at: 3, inserted: 1 });
    expect([at(sheet, 'B7'), at(sheet, 'A12:E19'), at(sheet, 'A40:H49'), at(sheet, 'E54:G74')]).toEqual(['B7', 'A12:F19', 'A40:I49', 'F54:H74']);
  });

  it('is not guessed where one half of the sheet was pushed down', () => {
    const trip = templateOf('trip');
    const sheet = withValues(writtenSheet(trip), (values) => values.map((line, index) => line.map((value, column) => (column < 4 && index >= 14 ? values[index - 1]?.[column] ?? '' : value))));
    const pushed = (text: string): string => text.replace(/(?<![A-Z!'$])([A-D])(\d+)/g, (whole: string, letter: string, row: string) => (Number(row) >= 15 ? `${letter}${Number(row) + 1}` : whole));
    const formulas = sheet.formulas.map((cell) => ({ ...cell, text: pushed(cell.text), row: cell.column < 5 && cell.row >= 15 ? cell.row + 1 : cell.row }));
    for (const one of [{ ...sheet, formulas }, { ...sheet, formulas: [] }]) expect(at(one, 'B18', trip)).not.toBe('B18');
    expect(at(sheet, 'F14:H14', trip)).toBe('F14:H14');
  });

  it('is not known where a section stands twice', () => {
    const written = writtenSheet(card);
    const sheet = withValues(written, (values) => [...values, ...values.slice(51).map((line) => [...line])]);
    expect(at(rowsInserted(sheet, 6), 'B7')).toBe('B8');
    expect(at({ ...rowsInserted(sheet, 6), formulas: [] }, 'B56')).toBeUndefined();
    // The formulas read the first of the two.
    expect(at(rowsInserted(sheet, 6), 'B56')).toBe('B57');
  });
});
