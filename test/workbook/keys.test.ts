// The keys of the sheets: one for every entry, none twice, as far as the formulas read; and whether a sheet stands where its
// template put it, whatever its words.
import { describe, expect, it } from 'vitest';
import { listsOf, singlesOf } from '../../addon/workbook/carry/oldEntries';
import type { Area } from '../../addon/workbook/areas';
import { readFormula, tokensOf } from '../../addon/workbook/formulaReading';
import { isUnmoved, keysOf, type Keys } from '../../addon/workbook/keys';
import type { CellPlace, CellValue, SheetSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { headMark } from '../../sheets-templates/keys';
import { isEntry, type SheetTemplate } from '../../sheets-templates/template';
import { edited, typedOver, type LineEdit } from '../support/editedWorkbook';
import { writtenSheet } from '../support/writtenSheet';

const inBook = (sheet: SheetSnapshot) => ({ sheets: [sheet], names: [], selected: { sheet: sheet.name, row: 1, column: 1 } });
const changed = (sheet: SheetSnapshot, edit: Omit<LineEdit, 'sheet'>): SheetSnapshot =>
  edited(inBook(sheet), { ...edit, sheet: sheet.name }).sheets[0] ?? sheet;
const typed = (sheet: SheetSnapshot, { row, column }: CellPlace, content: CellValue): SheetSnapshot =>
  typedOver(inBook(sheet), sheet.name, [{ row, column, content }]).sheets[0] ?? sheet;

function keys(template: SheetTemplate): Keys {
  const found = keysOf(template);
  if (found === undefined) throw new Error('no keys');
  return found;
}

/** Ranges that the formulas of all sheets read, with the sheet that they lie on. */
const allRead = sheetTemplates.flatMap((home) =>
  home.cells.flatMap(({ formula }) =>
    formula === undefined || formula === keys(home).cell.text
      ? []
      : readFormula(formula).references.flatMap(({ sheet = home.name, area }) =>
          area !== undefined && area.lastRow > area.row ? [{ sheet, area }] : [],
        ),
  ),
);

describe.each(sheetTemplates.map((template) => [template.name, template] as const))('%s', (_name, template) => {
  const sheet = writtenSheet(template);
  const { cell, ranges } = keys(template);

  it('has no key twice, and none that another begins with', () => {
    const texts = tokensOf(cell.text).flatMap((token) => (token.kind === 'text' ? [token.text] : []));
    expect(texts.filter((text, index) => texts.indexOf(text) !== index)).toEqual([]);
    expect([...singlesOf(keys(template)).keys()].filter((key) => ranges.has(`${key}${headMark}`))).toEqual([]);
  });

  it('has a key for every entry, and one only', () => {
    const places = [...singlesOf(keys(template)).values()].map(({ row, column }) => `${row} ${column}`);
    for (const { first, last, columns } of listsOf(keys(template)).values())
      for (const column of columns.values()) for (let row = first; row <= last; row += 1) places.push(`${row} ${column}`);
    expect(places.filter((place, index) => places.indexOf(place) !== index)).toEqual([]);
    const known = new Set(places);
    expect(template.cells.filter((one) => isEntry(one) && !known.has(`${one.row} ${one.column}`))).toEqual([]);
  });

  it('has lists of the very rows that formulas read', () => {
    const isRead = (wanted: Area): boolean =>
      allRead.some(
        ({ sheet: read, area }) =>
          read === template.name &&
          area.row === wanted.row &&
          area.lastRow === wanted.lastRow &&
          area.column <= wanted.column &&
          area.lastColumn >= wanted.column,
      );
    const isTouched = ({ row, column }: Area): boolean =>
      allRead.some(
        ({ sheet: read, area }) =>
          read === template.name && area.row <= row && area.lastRow >= row && area.column <= column && area.lastColumn >= column,
      );
    for (const list of listsOf(keys(template)).keys()) {
      const columns = [...ranges].flatMap(([key, area]) =>
        key.startsWith(`${list}.`) && !key.endsWith(headMark) && area !== undefined ? [area] : [],
      );
      // A list may wait for the formula that will read it.
      if (columns.some(isTouched)) expect([list, columns.some(isRead)]).toEqual([list, true]);
    }
  });

  it('keeps its keys in a hidden column, in a formula that Excel would take too', () => {
    expect([cell.row, cell.column, template.hiddenColumns]).toEqual([1, template.columns, [template.columns]]);
    expect(cell.text.length).toBeLessThan(8192);
    for (const { args } of readFormula(cell.text).calls) expect(args.length).toBeLessThan(255);
  });

  it('is unmoved as it was written, whatever its words and entries', () => {
    expect(isUnmoved(template, sheet)).toBe(true);
    const others = template.cells.filter((one) => one.formula === undefined).slice(0, 40);
    expect(
      isUnmoved(
        template,
        others.reduce((one, place) => typed(one, place, 'in my own words'), sheet),
      ),
    ).toBe(true);
    expect(isUnmoved(template, { ...sheet, formulas: sheet.formulas.map((one) => ({ ...one, text: one.text.replace(/,/g, ';') })) })).toBe(true);
  });

  it.each(['row', 'column'] as const)('is moved by each %s put in or taken out above its last', (lines) => {
    for (let at = 1; at <= Math.min(template[lines === 'row' ? 'rows' : 'columns'], 90); at += lines === 'row' ? 7 : 1) {
      // Behind its last known row nothing moves.
      if (lines === 'row' && at > Math.max(...keys(template).rows.map((row) => row ?? 0))) continue;
      expect(isUnmoved(template, changed(sheet, { lines, at, inserted: 1 })), `put in at ${at}`).toBe(false);
      expect(isUnmoved(template, changed(sheet, { lines, at, removed: 1 })), `taken out at ${at}`).toBe(false);
    }
  });

  it('is moved where its keys are gone', () => expect(isUnmoved(template, typed(sheet, cell, ''))).toBe(false));
});
