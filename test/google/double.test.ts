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
    expect(() =>
      fresh()
        .sheet.getRange(1, 1, 2, 2)
        .setValues?.([[1, 2]]),
    ).toThrow('number of rows');
    expect(() =>
      fresh()
        .sheet.getRange(1, 1, 1, 2)
        .setValues?.([[1]]),
    ).toThrow('number of columns');
    expect(() => fresh().sheet.getRange(1, 1, 1001, 1)).toThrow('outside the dimensions');
  });
  it('takes no undefined, no NaN, no object into a cell', () => {
    for (const value of [undefined, Number.NaN, {}, null])
      expect(() =>
        fresh()
          .sheet.getRange('A1')
          .setValues?.([[value]]),
      ).toThrow('setValues does not take');
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
  it.each([
    ['with merges; no notes or tints, which nobody promises', false],
    ['with merges, notes and tints', true],
  ])('copies everything but formulas, over whole copies of the source only, %s', (_, pastesAll) => {
    const { double, app, sheet } = fresh();
    double.document.pastesAll = pastesAll;
    const held = double.sheet('Sheet1');
    sheet.getRange('A1:B1').setValues?.([['07 x', 2]]);
    sheet.getRange('A1:B1').setNotes?.([['a', '']]);
    sheet.getRange('A1:B1').merge?.();
    const rule = (app.newConditionalFormatRule?.() as AnySheet).whenTextEqualTo?.('OK') as AnySheet;
    const made = ((rule.setBackground?.('#ffffff') as AnySheet).setRanges?.([sheet.getRange('B1:B2')]) as AnySheet).build?.();
    sheet.setConditionalFormatRules?.([made]);
    sheet.getRange('A1:B1').copyTo?.(sheet.getRange('D4:E6'));
    expect([4, 5, 6].map((row) => [held.cell(row, 4).value, held.cell(row, 4).note, held.cell(row, 5).value])).toEqual(
      Array(3).fill(['07 x', pastesAll ? 'a' : '', 2]),
    );
    expect(held.merges.map(({ row, column }) => [row, column])).toEqual([
      [1, 1],
      [4, 4],
      [5, 4],
      [6, 4],
    ]);
    expect(held.rules.flatMap(({ facts }) => facts.ranges.map((range) => range.getA1Notation()))).toEqual(
      pastesAll ? ['B1:B2', 'E4', 'E5', 'E6'] : ['B1:B2'],
    );
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
  it('moves down what stands below rows that are put in, bare ones, and every range with rows on both sides grows', () => {
    const { double, app, sheet } = fresh();
    const held = double.sheet('Sheet1');
    const other = (app.getActive?.() as AnySheet).insertSheet?.('Other', 1) as AnySheet;
    sheet.getRange('A9').setValues?.([['below']]);
    sheet.getRange('B1').setFormula?.('=SUM(A2:A9)+COUNTIF(A9:A12;"A9")+A3');
    other.getRange('A1').setFormula?.("=SUM('Sheet1'!$A$2:$A$9)+A9");
    sheet.insertRowsAfter?.(8, 3);
    expect([held.cell(12, 1).value, held.cell(9, 1).value, held.rows]).toEqual(['below', '', 1003]);
    expect(held.cell(1, 2).formula).toBe('=SUM(A2:A12)+COUNTIF(A12:A15;"A9")+A3');
    expect(double.sheet('Other').cell(1, 1).formula).toBe("=SUM('Sheet1'!$A$2:$A$12)+A9");
    sheet.deleteRows?.(9, 3);
    expect(held.cell(1, 2).formula).toBe('=SUM(A2:A9)+COUNTIF(A9:A12;"A9")+A3');
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

describe('what the platform refuses', () => {
  it('a value that the rule of its cell does not allow, and a formula there', () => {
    const { double, sheet } = fresh();
    const plain = double.sheet('Sheet1');
    plain.getRange('A1:A2').setValues([['one'], ['two']]);
    const rule = double.app.newDataValidation().setAllowInvalid(false).requireValueInRange(plain.getRange('A1:A2'), true).build();
    plain.getRange('B1').setDataValidations([[rule]]);
    expect(() => sheet.getRange('B1').setValues?.([['two']])).not.toThrow();
    expect(() => sheet.getRange('B1').setValues?.([['']])).not.toThrow();
    for (const value of ['three', 3, '=A1'])
      expect(() => sheet.getRange('B1').setValues?.([[value]])).toThrow(
        'The data you entered in cell B1 violates the data validation rules set on this cell.',
      );
    plain.getRange('B1').setDataValidations([[double.app.newDataValidation().requireNumberBetween(0, 1).build()]]);
    expect(() => sheet.getRange('B1').setValues?.([[9]])).not.toThrow();
  });

  it('to freeze a part of a merged range, and a text beyond 50,000 characters', () => {
    const { double, sheet } = fresh();
    double.sheet('Sheet1').getRange('A2:A4').merge();
    expect(() => double.sheet('Sheet1').setFrozenRows(3)).toThrow('part of a merged cell');
    expect(() => double.sheet('Sheet1').setFrozenRows(4)).not.toThrow();
    expect(() => sheet.getRange('B1').setValues?.([['x'.repeat(50_001)]])).toThrow('50000 characters');
  });
});

describe('google.script.run of the double', () => {
  it('carries plain data, and makes undefined in a list null', () =>
    expect(carried({ a: [1, undefined, 'x'], b: null, c: true })).toEqual({ a: [1, null, 'x'], b: null, c: true }));
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

describe('sheets of the double', () => {
  it('take no name that is taken, empty or too long, and formulas follow a name, texts do not', () => {
    const { double, sheet } = fresh();
    const other = double.document.insertSheet("Other's", 1);
    sheet.getRange('A1').setFormula?.(`='Other''s'!A1&"'Other''s'!A1"`);
    for (const name of ['sheet1', '', 'x'.repeat(101)]) expect(() => other.setName(name)).toThrow();
    other.setName('Renamed');
    expect(double.sheet('Sheet1').cell(1, 1).formula).toBe(`='Renamed'!A1&"'Other''s'!A1"`);
    expect(() => other.setName('RENAMED')).not.toThrow();
  });

  it('are copied with their mark and with names of their own, which go with them', () => {
    const { double } = fresh();
    const original = double.sheet('Sheet1');
    original.addDeveloperMetadata('key', 'value', {});
    double.document.setNamedRange('day', original.getRange('A1'));
    const copy = original.copyTo(double.document);
    expect([copy.name, copy.metadata.length, double.document.names.map(({ name }) => name)]).toEqual([
      'Copy of Sheet1',
      1,
      ['day', "'Copy of Sheet1'!day"],
    ]);
    copy.cell(1, 1).value = 'changed';
    expect(original.cell(1, 1).value).toBe('');
    double.document.deleteSheet(copy);
    expect(double.document.names.map(({ name }) => name)).toEqual(['day']);
  });

  it("let nobody point a name of the user's own elsewhere", () => {
    const { double } = fresh();
    double.document.setNamedRange('mine', double.sheet('Sheet1').getRange('A1'));
    const [named] = double.document.names;
    expect(() => named?.setRange(double.sheet('Sheet1').getRange('B1'))).toThrow("the name mine is the user's own");
    expect(() => double.document.setNamedRange('Mine', double.sheet('Sheet1').getRange('B1'))).toThrow('is taken');
  });

  it('give dates, times and durations as Dates by the clocks of the document', () => {
    const double = new Double('Asia/Kathmandu');
    const sheet = double.sheet('Sheet1');
    Object.assign(sheet.cell(1, 1), { value: 46044, numberFormat: 'yyyy-mm-dd' });
    Object.assign(sheet.cell(1, 2), { value: 0.25, numberFormat: '[h]:mm' });
    Object.assign(sheet.cell(1, 3), { value: 0.25, numberFormat: '0.0" h"' });
    // Kathmandu is 5 h 45 min ahead of UTC, and was 5 h 41 min 16 s ahead in 1899.
    expect(sheet.getRange('A1:C1').getValues()).toEqual([
      [new Date(Date.UTC(2026, 0, 21, 18, 15)), new Date(Date.UTC(1899, 11, 30, 0, 18, 44)), 0.25],
    ]);
  });

  it('paste values only as values, into the same size', () => {
    const { double, sheet } = fresh();
    sheet.getRange('A1').setFormula?.('=SUM(B1;C1)');
    double.sheet('Sheet1').cell(1, 1).value = 5;
    const [from, onto] = [double.sheet('Sheet1').getRange('A1'), double.sheet('Sheet1').getRange('A2')];
    from.copyTo(onto, double.app.CopyPasteType.PASTE_VALUES, false);
    expect(double.sheet('Sheet1').cell(2, 1)).toMatchObject({ value: 5, formula: '' });
    expect(() => from.copyTo(double.sheet('Sheet1').getRange('A3:A4'), double.app.CopyPasteType.PASTE_VALUES, false)).toThrow('number of rows');
  });
});
