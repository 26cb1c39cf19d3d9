// The double is strict: what the platform refuses, it refuses.
import { describe, expect, it } from 'vitest';
import { carried, runOnServer } from './double/scriptRun';
import { Double } from './double/services';

interface AnySheet {
  getRange(...given: readonly unknown[]): Record<string, (...given: readonly unknown[]) => unknown>;
  [name: string]: (...given: readonly unknown[]) => unknown;
}

function fresh(): { readonly double: Double; readonly app: Record<string, (...given: readonly unknown[]) => unknown>; readonly sheet: AnySheet } {
  const double = new Double();
  const { SpreadsheetApp } = double.globals() as { SpreadsheetApp: Record<string, (...given: readonly unknown[]) => unknown> };
  const document = SpreadsheetApp.getActive?.() as { getSheets(): AnySheet[] };
  const [sheet] = document.getSheets();
  if (sheet === undefined) throw new Error('no sheet');
  return { double, app: SpreadsheetApp, sheet };
}

describe('the double', () => {
  it('has only the methods it has', () => expect(() => fresh().sheet.hideSheet?.()).toThrow('the double has no Sheet.hideSheet'));
  it('takes no wrong sizes', () => {
    expect(() => fresh().sheet.getRange(1, 1, 2, 2).setValues?.([[1, 2]])).toThrow('number of rows');
    expect(() => fresh().sheet.getRange(1, 1, 1, 2).setValues?.([[1]])).toThrow('number of columns');
    expect(() => fresh().sheet.getRange(1, 1, 1001, 1)).toThrow('outside the dimensions');
  });
  it('takes no undefined, no NaN, no object into a cell', () => {
    for (const value of [undefined, Number.NaN, {}, null]) expect(() => fresh().sheet.getRange('A1').setValues?.([[value]])).toThrow('setValues does not take');
  });
  it('reads text as Sheets does, unless the cell has the text format', () => {
    const { double, sheet } = fresh();
    sheet.getRange('A1:B1').setNumberFormats?.([['@', 'General']]);
    sheet.getRange('A1:B1').setValues?.([['09', '09']]);
    expect([1, 2].map((column) => double.sheet('Sheet1').cell(1, column).value)).toEqual(['09', 9]);
  });
  it('takes semicolons only, and names that are there', () => {
    expect(() => fresh().sheet.getRange('A1').setFormula?.('=SUM(1,2)')).toThrow('parse error');
    expect(() => fresh().sheet.getRange('A1').setFormula?.("='Elsewhere'!A1")).toThrow('#REF!');
    expect(() => fresh().sheet.getRange('A1').setFormula?.('=as_of+1')).toThrow('#NAME?');
    expect(() => fresh().sheet.getRange('A1').setFormula?.('=SUM(A2;"x, y")')).not.toThrow();
  });
  it('copies everything but formulas, over whole copies of the source only, with merges and tints', () => {
    const { double, app, sheet } = fresh();
    const held = double.sheet('Sheet1');
    sheet.getRange('A1:B1').setValues?.([['07 x', 2]]);
    sheet.getRange('A1:B1').setNotes?.([['a', '']]);
    sheet.getRange('A1:B1').merge?.();
    const rule = (app.newConditionalFormatRule?.() as AnySheet).whenTextEqualTo?.('OK') as AnySheet;
    const made = ((rule.setBackground?.('#ffffff') as AnySheet).setRanges?.([sheet.getRange('B1:B2')]) as AnySheet).build?.();
    sheet.setConditionalFormatRules?.([made]);
    sheet.getRange('A1:B1').copyTo?.(sheet.getRange('D4:E6'));
    expect([4, 5, 6].map((row) => [held.cell(row, 4).value, held.cell(row, 4).note, held.cell(row, 5).value])).toEqual(Array(3).fill(['07 x', 'a', 2]));
    expect(held.merges.map(({ row, column }) => [row, column])).toEqual([[1, 1], [4, 4], [5, 4], [6, 4]]);
    expect(held.rules.flatMap(({ facts }) => facts.ranges.map((range) => range.getA1Notation()))).toEqual(['B1:B2', 'E4', 'E5', 'E6']);
    expect(() => sheet.getRange('A1:B1').copyTo?.(sheet.getRange('G1:I1'))).toThrow('whole number of copies');
    expect(() => sheet.getRange('A1').copyTo?.(sheet.getRange('G1'))).toThrow('cuts the merged range');
    sheet.getRange('G1').setFormula?.('=A1');
    expect(() => sheet.getRange('G1').copyTo?.(sheet.getRange('G2'))).toThrow('no formula');
  });
  it('moves up what stands below deleted rows, and deletes none that a name means', () => {
    const { double, app, sheet } = fresh();
    const held = double.sheet('Sheet1');
    sheet.getRange('A9').setValues?.([['below']]);
    sheet.getRange('A7:B9').merge?.();
    sheet.deleteRows?.(3, 5);
    expect([held.cell(4, 1).value, held.rows, held.merges]).toEqual(['below', 995, [{ row: 3, column: 1, lastRow: 4, lastColumn: 2 }]]);
    (app.getActive?.() as AnySheet).setNamedRange?.('kept', sheet.getRange('A9'));
    expect(() => sheet.deleteRows?.(3, 5)).toThrow('named range');
    expect(() => sheet.deleteRows?.(990, 9)).toThrow('cannot be deleted');
  });
  it('knows no free ranges of a protected range', () => {
    const { sheet } = fresh();
    expect(() => (sheet.getRange('A1').protect?.() as AnySheet).setUnprotectedRanges?.([])).toThrow('only a protected sheet');
  });
  it('honours the authorisation mode', () => {
    const { double, app } = fresh();
    double.recorder.mode = 'NONE';
    expect(() => app.getActive?.()).toThrow('permission');
    expect(() => app.getUi?.()).not.toThrow();
    double.recorder.mode = 'CUSTOM_FUNCTION';
    expect(() => app.getActive?.()).not.toThrow();
    expect(() => app.getUi?.()).toThrow('permission');
    expect(() => app.flush?.()).toThrow('permission');
  });
  it('cannot be set', () => expect(() => Object.assign(fresh().sheet, { name: 'x' })).toThrow('cannot be set'));
});

describe('google.script.run of the double', () => {
  it('carries plain data, and makes undefined in a list null', () => expect(carried({ a: [1, undefined, 'x'], b: null, c: true })).toEqual({ a: [1, null, 'x'], b: null, c: true }));
  it('refuses dates, functions and objects of a class', () => {
    for (const value of [new Date(0), () => 1, new Map(), { deep: [new Date(0)] }]) expect(() => carried(value)).toThrow('cannot carry');
  });
  it('calls top-level functions only, none that ends in an underscore', async () => {
    await expect(runOnServer({ helper_: () => 1 }, 'helper_', [])).rejects.toThrow('not found');
    await expect(runOnServer({}, 'absent', [])).rejects.toThrow('not found');
    await expect(runOnServer({ when: () => new Date(0) }, 'when', [])).rejects.toThrow('cannot carry');
    expect(await runOnServer({ twice: (value: number) => 2 * value }, 'twice', [21])).toBe(42);
  });
});
