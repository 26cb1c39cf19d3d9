// Where the cells of a template stand after rows, columns or cells were put in, taken out or moved, whatever the words beside them.
import { describe, expect, it } from 'vitest';
import { keysOf } from '../../addon/workbook/keys';
import { placesNow } from '../../addon/workbook/placesNow';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
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
const typed = (sheet: SheetSnapshot, row: number, column: number, content: CellValue): SheetSnapshot =>
  typedOver(inBook(sheet), sheet.name, [{ row, column, content }]).sheets[0] ?? sheet;
const card = templateOf('card');

describe('a sheet as it was written', () => {
  it.each(sheetTemplates.map((template) => [template.name, template] as const))('%s', (_name, template) => {
    const now = placesNow(template, writtenSheet(template));
    for (const { row, column } of template.cells) expect(now?.range(address(row, column))).toBe(address(row, column));
  });
});

describe('a sheet that was changed', () => {
  const at = (sheet: SheetSnapshot, range: string, template = card): string | undefined => placesNow(template, sheet)?.range(range);

  it('has moved down below an inserted row, and stayed above it', () => {
    const sheet = rowsInserted(writtenSheet(card), 8, 3);
    expect([at(sheet, 'B7'), at(sheet, 'A12:E19'), at(sheet, 'B27'), at(sheet, 'A40:H49'), at(sheet, 'E54:G74')]).toEqual([
      'B7',
      'A15:E22',
      'B30',
      'A43:H52',
      'E57:G77',
    ]);
  });

  it('has a list that grew', () => {
    const sheet = rowsInserted(writtenSheet(card), 14, 2);
    expect([at(sheet, 'A12:E20'), at(sheet, 'B27'), at(sheet, 'A13')]).toEqual(['A12:E22', 'B29', undefined]);
  });

  it('has a list that did not grow where the rows were inserted beyond its end', () => {
    const sheet = rowsInserted(writtenSheet(card), 21, 2);
    // The list of restrictions is read to the blank row below its last.
    expect([at(sheet, 'A12:E20'), at(sheet, 'B27')]).toEqual(['A12:E20', 'B29']);
    expect(at(rowsInserted(writtenSheet(card), 12, 2), 'A12:E20')).toBe('A14:E22');
  });

  it('has a list that shrank', () => expect(at(rowsRemoved(writtenSheet(card), 14, 2), 'A12:E20')).toBe('A12:E18'));

  it('does not have what was removed, nor takes another row for it', () => {
    const sheet = rowsRemoved(writtenSheet(card), 8);
    expect([at(sheet, 'B7'), at(sheet, 'B8'), at(sheet, 'B9'), at(sheet, 'A12:E19')]).toEqual(['B7', undefined, 'B8', 'A11:E18']);
  });

  it('is found again whatever the labels read, and where no other formula is left', () => {
    const sheet = typed(rowsInserted(writtenSheet(card), 6), 10, 1, 'my speed');
    const keys = keysOf(card)?.cell.column;
    const bare = { ...sheet, values: [], formulas: sheet.formulas.filter(({ column }) => column === keys) };
    for (const one of [sheet, bare]) expect([at(one, 'B8'), at(one, 'B9'), at(one, 'A12:E19')]).toEqual(['B9', 'B10', 'A13:E20']);
  });

  it('is found behind an inserted column', () => {
    const sheet = changed(writtenSheet(card), { lines: 'column', at: 3, inserted: 1 });
    expect([at(sheet, 'B7'), at(sheet, 'A12:E19'), at(sheet, 'A40:H49'), at(sheet, 'E54:G74')]).toEqual(['B7', 'A12:F19', 'A40:I49', 'F54:H74']);
  });

  it('is found where cells of one half of the sheet alone were pushed down, or an entry was moved', () => {
    const trip = templateOf('trip');
    const written = writtenSheet(trip);
    // As a spreadsheet rewrites every formula when cells of columns A to D are pushed down, and B42 is cut and pasted into B90.
    const pushed = (text: string): string =>
      text.replace(/(?<![A-Z!'$])([A-D])(\d+)/g, (whole: string, letter: string, row: string) =>
        whole === 'B42' ? 'B90' : Number(row) >= 15 ? `${letter}${Number(row) + 1}` : whole,
      );
    const formulas = written.formulas.map((cell) => ({
      ...cell,
      text: pushed(cell.text),
      row: cell.column < 5 && cell.row >= 15 ? cell.row + 1 : cell.row,
    }));
    const sheet = { ...written, formulas };
    expect([at(sheet, 'B14', trip), at(sheet, 'B18', trip), at(sheet, 'B42', trip), at(sheet, 'B43', trip), at(sheet, 'F24', trip)]).toEqual([
      'B14',
      'B19',
      'B90',
      'B44',
      'F24',
    ]);
  });

  it('is not known where its keys are gone, or stand twice', () => {
    const written = writtenSheet(card);
    const keys = keysOf(card)?.cell;
    if (keys === undefined) throw new Error('no keys');
    expect(placesNow(card, typed(written, keys.row, keys.column, ''))).toBeUndefined();
    expect(placesNow(card, typed(written, 2, keys.column, keys.text))).toBeUndefined();
  });

  it('of another version has the places of what has a key, and no others', () => {
    const written = writtenSheet(card);
    const older = { ...written, mark: { key: 'card', version: card.version - 1, set: 'one', names: {} } } as const;
    expect([at(older, 'B7'), at(older, 'A12:E20'), at(older, 'A7'), at(older, 'B25')]).toEqual(['B7', 'A12:E20', undefined, 'B25']);
  });
});
