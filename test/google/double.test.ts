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
