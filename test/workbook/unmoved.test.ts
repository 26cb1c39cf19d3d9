// Whether a sheet of ours still stands where its template put it: reworded is not moved, moved is not reworded.
import { describe, expect, it } from 'vitest';
import type { CellValue, SheetSnapshot } from '../../addon/workbook/snapshot';
import { labelsOf } from '../../addon/workbook/templateLabels';
import { isUnmoved } from '../../addon/workbook/unmoved';
import { sheetTemplates } from '../../sheets-templates';
import type { SheetTemplate } from '../../sheets-templates/template';
import { edited, typedOver, type LineEdit } from '../support/editedWorkbook';
import { writtenSheet } from '../support/writtenSheet';

const inBook = (sheet: SheetSnapshot) => ({ sheets: [sheet], names: [], selected: { sheet: sheet.name, row: 1, column: 1 } });
const changed = (sheet: SheetSnapshot, edit: Omit<LineEdit, 'sheet'>): SheetSnapshot => edited(inBook(sheet), { ...edit, sheet: sheet.name }).sheets[0] ?? sheet;
const typed = (sheet: SheetSnapshot, ...cells: readonly (readonly [place: { readonly row: number; readonly column: number }, content: CellValue])[]): SheetSnapshot =>
  typedOver(inBook(sheet), sheet.name, cells.map(([{ row, column }, content]) => ({ row, column, content }))).sheets[0] ?? sheet;
/** A label whose text stands once only. */
const single = (template: SheetTemplate, among = labelsOf(template)) => among.filter(({ text }) => among.filter((one) => one.text === text).length === 1);

describe.each(sheetTemplates.map((template) => [template.name, template] as const))('%s', (_name, template) => {
  const sheet = writtenSheet(template);
  const labels = labelsOf(template);
  const [first, second] = single(template).slice(-2);
  if (first === undefined || second === undefined) throw new Error('too few labels');

  it('is unmoved as it was written, with its labels in other words, and with another unit', () => {
    expect(isUnmoved(template, sheet)).toBe(true);
    expect(isUnmoved(template, typed(sheet, [first, 'in my own words'], [second, 'and this']))).toBe(true);
    const units = template.cells.filter(({ style, value }) => style === 'unit' && value !== undefined);
    expect(isUnmoved(template, typed(sheet, ...units.map((unit) => [unit, 'km'] as const)))).toBe(true);
  });

  it('is moved where a label was taken away, or two changed places', () => {
    expect(isUnmoved(template, typed(sheet, [first, '']))).toBe(false);
    expect(isUnmoved(template, typed(sheet, [first, second.text], [second, first.text]))).toBe(false);
    expect(isUnmoved(template, typed(sheet, [first, second.text]))).toBe(false);
    expect(isUnmoved(template, typed(sheet, [first, 'mine'], [{ row: template.rows, column: template.columns }, first.text]))).toBe(false);
  });

  it.each(['row', 'column'] as const)('is moved by each %s inserted or removed before its last label, reworded or not', (lines) => {
    const last = labels.reduce((most, label) => Math.max(most, label[lines]), 1);
    const reworded = typed(sheet, [single(template)[0] ?? first, 'in my own words']);
    for (let at = 1; at <= last; at += 1) {
      for (const one of [sheet, reworded]) {
        expect(isUnmoved(template, changed(one, { lines, at, inserted: 1 })), `inserted at ${at}`).toBe(false);
        expect(isUnmoved(template, changed(one, { lines, at, removed: 1 })), `removed at ${at}`).toBe(false);
      }
    }
  });
});
