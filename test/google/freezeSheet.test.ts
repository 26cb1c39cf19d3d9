// Freezing the sheet in sight: a copy beside it, with values where its formulas were; the sheet itself untouched.
import { afterEach, describe, expect, it } from 'vitest';
import { freezeSheet } from '../../addon/google/freezeSheet';
import { insertSheets } from '../../addon/google/insertSheets';
import { sheetTemplates } from '../../sheets-templates';
import { FakeFilter } from './double/filter';
import type { Double } from './double/services';
import { sheetTypes } from './double/sheet';
import { contentOf, documentOf, formulasOf, insertSmall, rangesOf, sheetNamesOf } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

/** The small sheets, Dock side in sight, with what its formulas show. */
function worked(): Double {
  const double = withDouble('Europe/Paris');
  insertSmall();
  const dock = double.sheet('Dock side');
  dock.cell(3, 2).value = 'OK, all in';
  dock.cell(4, 2).value = 46056;
  dock.cell(5, 2).value = 'a spilled answer';
  double.sheet('Yard').cell(5, 1).value = 'to the hold';
  double.sheet('Hold').cell(2, 2).value = 24;
  double.document.setActiveSheet(dock);
  return double;
}

afterEach(withoutPlatform);

describe('freezeSheet', () => {
  it('copies the sheet beside it, with what the formulas show in their place, and shows the copy', () => {
    const double = worked();
    expect(freezeSheet()).toEqual({ sheet: 'Dock side (values)', formulas: 2 });
    expect(sheetNamesOf(double)).toEqual(['Sheet1', 'Yard', 'Dock side', 'Dock side (values)', 'Hold']);
    expect(double.document.active.name).toBe('Dock side (values)');
    const copy = double.sheet('Dock side (values)');
    expect(formulasOf(copy)).toEqual([]);
    expect([2, 3, 4, 5].map((row) => copy.cell(row, 2).value)).toEqual([12, 'OK, all in', 46056, 'a spilled answer']);
    expect(copy.cell(4, 2).numberFormat).toBe('yyyy-mm-dd');
  });

  it('keeps widths, heights, merges, charts, tints and frozen rows', () => {
    const double = worked();
    double.document.setActiveSheet(double.sheet('Hold'));
    freezeSheet();
    const [hold, copy] = [double.sheet('Hold'), double.sheet('Hold (values)')];
    expect([copy.charts.length, [...copy.widths], [...copy.heights], copy.merges, copy.frozen]).toEqual([
      hold.charts.length,
      [...hold.widths],
      [...hold.heights],
      hold.merges,
      hold.frozen,
    ]);
    expect(copy.cell(3, 1).background).toBe(hold.cell(3, 1).background);
  });

  it('leaves everything else as it was', () => {
    const double = worked();
    const before = ['Sheet1', 'Yard', 'Dock side', 'Hold'].map((name) => contentOf(double.sheet(name)));
    const ranges = rangesOf(double);
    freezeSheet();
    expect(['Sheet1', 'Yard', 'Dock side', 'Hold'].map((name) => contentOf(double.sheet(name)))).toEqual(before);
    expect(rangesOf(double).filter((one) => !one.startsWith("'"))).toEqual(ranges);
  });

  it('makes no second sheet of ours of it', () => {
    const double = worked();
    freezeSheet();
    expect(double.sheet('Dock side (values)').metadata).toEqual([]);
    expect(double.sheet('Dock side').metadata).toHaveLength(1);
    // Still the only one of its kind, so a new sheet reads it.
    expect(insertSmall(['trip']).reads).toEqual(['Yard']);
  });

  it('takes the next free name, and one that is not too long', () => {
    const double = worked();
    freezeSheet();
    double.document.setActiveSheet(double.sheet('Dock side'));
    expect(freezeSheet().sheet).toBe('Dock side (values) 2');
    const long = 'x'.repeat(100);
    double.sheet('Yard').setName(long);
    double.document.setActiveSheet(double.sheet(long));
    expect(freezeSheet().sheet).toMatch(/^x{87} \(values\)$/);
  });

  it.each(['Dock side', 'Hold'])('refuses while a formula is being worked out on %s', (name) => {
    const double = worked();
    double.sheet(name).cell(2, 2).value = 'Loading...';
    const before = documentOf(double);
    expect(() => freezeSheet()).toThrow('Some formulas are still being worked out. Wait until no cell shows Loading, then ask again.');
    expect(documentOf(double)).toEqual(before);
  });

  it('refuses a sheet without cells', () => {
    const double = worked();
    double.document.insertSheet('Chart 1', 0).type = sheetTypes.OBJECT;
    expect(() => freezeSheet()).toThrow('"Chart 1" has no cells to copy. Show another sheet, then ask again.');
  });

  it('refuses a sheet with a filter, for its hidden rows would be left out of the copy', () => {
    const double = worked();
    double.sheet('Dock side').filter = new FakeFilter([2]);
    const before = documentOf(double);
    expect(() => freezeSheet()).toThrow(
      '"Dock side" has a filter, and rows that it hides could be left out. Remove the filter (Data, Remove filter), then ask again.',
    );
    expect(documentOf(double)).toEqual(before);
  });

  it('leaves no copy behind whose rows stand elsewhere than those of the sheet', () => {
    const double = worked();
    const dock = double.sheet('Dock side');
    const before = documentOf(double);
    const { copyTo } = dock;
    // Another person sets a filter while the sheet is being copied.
    dock.copyTo = (document) => {
      const copy = copyTo.call(dock, document);
      dock.filter = new FakeFilter([2]);
      return copy;
    };
    expect(() => freezeSheet()).toThrow(/^No copy was made, .* It said: the copy does not hold in row 2, column 1 what the sheet holds there\.$/);
    dock.filter = null;
    expect(documentOf(double)).toEqual(before);
  });

  it('copies a sheet whose last rows show nothing', () => {
    const double = worked();
    Object.assign(double.sheet('Dock side').cell(20, 3), { formula: '=IF(B2>0;"";1)', value: null });
    expect(freezeSheet()).toEqual({ sheet: 'Dock side (values)', formulas: 3 });
    expect(double.sheet('Dock side (values)').cell(20, 3)).toMatchObject({ formula: '', value: '' });
  });

  it('pastes what stands in a cell though its rule would refuse it', () => {
    const double = worked();
    double.document.setActiveSheet(double.sheet('Hold'));
    double.sheet('Hold').cell(3, 1).value = 99;
    freezeSheet();
    expect(double.sheet('Hold (values)').cell(3, 1)).toMatchObject({ value: 99, validation: null });
    expect(double.sheet('Hold').cell(3, 1).validation).not.toBeNull();
  });

  it('leaves no copy behind where a value pasted is no answer yet', () => {
    const double = worked();
    const before = documentOf(double);
    const { copyTo } = double.sheet('Dock side');
    double.sheet('Dock side').copyTo = (document) => {
      const copy = copyTo.call(double.sheet('Dock side'), document);
      double.sheet('Dock side').cell(3, 2).value = 'Loading...';
      return copy;
    };
    expect(() => freezeSheet()).toThrow(/^No copy was made, .* everything is as it was\. It said: Some formulas are still being worked out\./);
    double.sheet('Dock side').cell(3, 2).value = 'OK, all in';
    expect(documentOf(double)).toEqual(before);
  });

  it('leaves the document as it was, whichever call fails', () => {
    const counted = worked();
    const start = counted.recorder.count('document');
    freezeSheet();
    const calls = counted.recorder.count('document') - start;
    for (let failing = 1; failing <= calls; failing += 1) {
      const double = worked();
      const before = documentOf(double);
      double.recorder.failAt = double.recorder.count('document') + failing;
      expect(() => freezeSheet()).toThrow('Service Spreadsheets failed');
      expect(documentOf(double)).toEqual(before);
    }
    expect(calls).toBeGreaterThan(20);
  });

  it('says how many calls it takes', () => {
    const double = withDouble();
    insertSheets(
      sheetTemplates.map(({ key }) => key),
      sheetTemplates,
    );
    const before = double.recorder.count('document');
    double.document.setActiveSheet(double.sheet('Trip sheet'));
    const { formulas } = freezeSheet();
    console.log(
      `freezeSheet: the Trip sheet with ${formulas} formulas in a document of ${double.document.sheets.length - 1} sheets: ${double.recorder.count('document') - before} calls`,
    );
    expect(formulas).toBe(formulasOf(double.sheet('Trip sheet')).length - 1);
    expect(double.recorder.count('document') - before).toBeLessThanOrEqual(90);
  });
});
