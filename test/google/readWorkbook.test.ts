// The workbook as plain data, read from the double; and the cell that is shown.
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { goTo } from '../../addon/google/goTo';
import { insertSheets } from '../../addon/google/insertSheets';
import { readWorkbook } from '../../addon/google/readWorkbook';
import { sheetTemplates } from '../../sheets-templates';
import { FakeRange } from './double/range';
import { carried } from './double/scriptRun';
import type { Double } from './double/services';
import { sheetTypes } from './double/sheet';
import { insertSmall } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

let double: Double;

beforeEach(() => {
  double = withDouble('America/New_York');
});
afterEach(withoutPlatform);

const put = (sheet: string, cell: string, value: unknown, numberFormat = 'General'): void => {
  const { area } = double.sheet(sheet).getRange(cell);
  Object.assign(double.sheet(sheet).cell(area.row, area.column), { value, numberFormat });
};

const snapshotOf = (name: string, sheets: 'shown' | 'all' = 'all') => readWorkbook({ sheets }).sheets.find((sheet) => sheet.name === name);

describe('readWorkbook', () => {
  it('gives values as the cells hold them, formulas beside them, and a rectangle down to the last filled row', () => {
    put('Sheet1', 'A1', 'text');
    put('Sheet1', 'B2', 2.5);
    put('Sheet1', 'A3', true);
    put('Sheet1', 'B3', '#N/A');
    double.sheet('Sheet1').getRange('A4').setFormula('=SUM(A1;B2)');
    double.sheet('Sheet1').cell(4, 1).value = 2.5;
    expect(snapshotOf('Sheet1')).toEqual({
      name: 'Sheet1',
      values: [
        ['text', ''],
        ['', 2.5],
        [true, '#N/A'],
        [2.5, ''],
      ],
      formulas: [{ row: 4, column: 1, text: '=SUM(A1;B2)' }],
    });
  });

  it('cuts blank rows at the foot, but no row with a formula that shows nothing', () => {
    const sheet = double.sheet('Sheet1');
    put('Sheet1', 'A1', 1);
    sheet.getRange('B5').setFormula('=IF(A1>2;"much";"")');
    sheet.getDataRange = (() => new FakeRange(sheet, { row: 1, column: 1, lastRow: 8, lastColumn: 2 })) as never;
    expect(snapshotOf('Sheet1')?.values).toHaveLength(5);
    expect(new Set(snapshotOf('Sheet1')?.values.map((line) => line.length))).toEqual(new Set([2]));
  });

  it('gives an empty sheet no rows', () => expect(snapshotOf('Sheet1')).toEqual({ name: 'Sheet1', values: [], formulas: [] }));

  it.each(['America/New_York', 'Pacific/Auckland', 'Pacific/Honolulu', 'Asia/Kathmandu', 'Etc/UTC'])(
    'turns dates, times and durations into serial numbers by the clocks of %s',
    (zone) => {
      double = withDouble(zone);
      const serials: readonly (readonly [number, string])[] = [
        [46044, 'yyyy-mm-dd'],
        [46210.5, 'yyyy-mm-dd hh:mm'],
        [6.5 / 24, 'h:mm'],
        [35 / 24, '[h]:mm:ss'],
        [200_000, 'M/d/yyyy'],
        [46044, 'General'],
        [0.25, '0.0" h"'],
      ];
      serials.forEach(([serial, format], index) => put('Sheet1', `A${index + 1}`, serial, format));
      const values = snapshotOf('Sheet1')?.values.map(([value]) => value) ?? [];
      serials.forEach(([serial], index) => expect(values[index]).toBeCloseTo(serial, 9));
      expect(values[0]).toBe(46044);
    },
  );

  it('carries the marks, by sheet, whatever the sheets are called, and every name', () => {
    insertSmall();
    double.sheet('Yard').setName("My 'own' yard");
    double.document.setNamedRange('mine', double.sheet('Sheet1').getRange('B2:C9'));
    const { sheets, names } = readWorkbook({ sheets: 'all' });
    expect(sheets.map(({ name, mark }) => [name, mark?.key, mark?.set])).toEqual([
      ['Sheet1', undefined, undefined],
      ["My 'own' yard", 'start', '1'],
      ['Dock side', 'trip', '1'],
      ['Hold', 'balance', '1'],
    ]);
    expect(sheets[1]?.mark).toEqual({ key: 'start', version: 1, set: '1', names: { yard_day: 'yard_day' } });
    expect(names).toEqual([
      { name: 'yard_day', sheet: "My 'own' yard", range: 'B3' },
      { name: 'dock_verdict', sheet: 'Dock side', range: 'B3' },
      { name: 'mine', sheet: 'Sheet1', range: 'B2:C9' },
    ]);
  });

  it('passes over names that lost their cells, names of one sheet only, and marks that are damaged', () => {
    insertSmall();
    double.document.names[0]?.setRange(double.sheet('Yard').getRange('A1'));
    Object.assign(double.document.names[0] ?? {}, {
      getRange: () => {
        throw new Error('The named range no longer exists.');
      },
    });
    double.sheet('Dock side').copyTo(double.document);
    double.sheet('Hold').metadata.splice(0);
    double.sheet('Hold').addDeveloperMetadata('rampwright_sheet', '{"broken', {});
    const { names, sheets } = readWorkbook({ sheets: 'all' });
    expect(names.map(({ name }) => name)).toEqual(['dock_verdict']);
    expect(sheets.find(({ name }) => name === 'Hold')?.mark).toBeUndefined();
  });

  it('passes over sheets that have no cells', () => {
    double.document.insertSheet('Chart 1', 0).type = sheetTypes.OBJECT;
    const { sheets, selected } = readWorkbook({ sheets: 'all' });
    expect(sheets.map(({ name }) => name)).toEqual(['Sheet1']);
    expect(selected).toEqual({ sheet: 'Chart 1', row: 1, column: 1 });
  });

  it('knows a sheet that was copied by hand, or carries a mark of before identifiers, by where the mark is', () => {
    insertSmall();
    const hold = double.sheet('Hold');
    const [mark] = hold.metadata;
    if (mark === undefined) throw new Error('the sheet has no mark');
    double.document.insertSheet('Copy of Hold', 1);
    double.sheet('Copy of Hold').metadata.push(mark.copyOn(double.sheet('Copy of Hold')));
    const marked = (): readonly string[] =>
      readWorkbook({ sheets: 'all' }).sheets.flatMap(({ name, mark: read }) => (read === undefined ? [] : [`${name}: ${read.key}`]));
    expect(new Set(marked())).toEqual(new Set(['Yard: start', 'Hold: balance', 'Copy of Hold: balance', 'Dock side: trip']));
    // The original goes: the copy is asked where it is, as no sheet has the identifier that it names.
    double.document.deleteSheet(hold);
    expect(new Set(marked())).toEqual(new Set(['Yard: start', 'Copy of Hold: balance', 'Dock side: trip']));
  });

  it('says which cell is selected', () => {
    insertSmall();
    double.sheet('Hold').getRange('C4').activate();
    expect(readWorkbook({ sheets: 'shown' }).selected).toEqual({ sheet: 'Hold', row: 4, column: 3 });
  });

  it('reads the sheet in sight only, with the names that it uses', () => {
    insertSmall();
    double.document.setActiveSheet(double.sheet('Hold'));
    double.sheet('Hold').cell(5, 2).formula = '=Yard_Day+B4';
    const { sheets, names } = readWorkbook({ sheets: 'shown' });
    expect(sheets.map(({ name, mark }) => [name, mark?.key])).toEqual([['Hold', 'balance']]);
    expect(names).toEqual([{ name: 'yard_day', sheet: 'Yard', range: 'B3' }]);
  });

  it('adds the sheet with the day on which all is judged, of the set of the sheet in sight', () => {
    const keys = sheetTemplates.map(({ key }) => key);
    insertSheets(keys, sheetTemplates);
    insertSheets(keys, sheetTemplates);
    for (const number of ['', ' 2']) {
      double.document.setActiveSheet(double.sheet(`Currency log${number}`));
      expect(readWorkbook({ sheets: 'shown' }).sheets.map(({ name }) => name)).toEqual([`Currency log${number}`, `Start${number}`]);
    }
    double.document.setActiveSheet(double.sheet('Sheet1'));
    expect(readWorkbook({ sheets: 'shown' }).sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Start']);
  });

  it('refuses while a formula is being worked out', () => {
    insertSmall();
    double.sheet('Hold').cell(2, 2).value = 'Loading...';
    expect(() => readWorkbook({ sheets: 'all' })).toThrow(
      /^Some formulas are still being worked out\. Wait until no cell shows Loading, then ask again\.$/,
    );
    expect(readWorkbook({ sheets: 'shown' }).sheets.map(({ name }) => name)).toEqual(['Yard']);
  });

  it('writes nothing, is plain data, and takes few calls', () => {
    insertSheets(
      sheetTemplates.map(({ key }) => key),
      sheetTemplates,
    );
    const { recorder } = double;
    const before = recorder.calls.length;
    const snapshot = readWorkbook({ sheets: 'all' });
    const calls = recorder.calls.slice(before).filter(({ kind }) => kind === 'document');
    const questions = recorder.calls.slice(before).filter(({ name }) => name === 'Utilities.formatDate').length;
    expect(calls.filter(({ name }) => !/\.(?:get|find|with|create)/.test(name))).toEqual([]);
    expect(carried(snapshot)).toEqual(snapshot);
    const shown = recorder.calls.length;
    readWorkbook({ sheets: 'shown' });
    const callsShown = recorder.calls.slice(shown).filter(({ kind }) => kind === 'document').length;
    console.log(
      `readWorkbook: all ${snapshot.sheets.length} sheets ${calls.length} calls and ${questions} questions about the zone, the sheet in sight ${callsShown} calls`,
    );
    expect(calls.length).toBeLessThanOrEqual(9 * snapshot.sheets.length);
    expect(callsShown).toBeLessThanOrEqual(40);
  });
});

describe('goTo', () => {
  it('shows the cell and selects it', () => {
    insertSmall();
    expect(goTo({ sheet: 'Dock side', row: 3, column: 2 })).toEqual({ cell: 'B3' });
    expect(readWorkbook({ sheets: 'shown' }).selected).toEqual({ sheet: 'Dock side', row: 3, column: 2 });
  });

  it('refuses in sentences what is not there', () => {
    insertSmall();
    double.document.insertSheet('Chart 1', 0).type = sheetTypes.OBJECT;
    expect(() => goTo({ sheet: 'Elsewhere', row: 1, column: 1 })).toThrow('There is no sheet "Elsewhere" in this document any more.');
    for (const [sheet, row, column] of [
      ['Yard', 1001, 1],
      ['Yard', 1, 27],
      ['Yard', 0, 1],
      ['Yard', 1.5, 1],
      ['Chart 1', 1, 1],
    ] as const) {
      expect(() => goTo({ sheet, row, column })).toThrow(`The sheet "${sheet}" has no cell in row ${row}, column ${column} any more.`);
    }
  });
});
