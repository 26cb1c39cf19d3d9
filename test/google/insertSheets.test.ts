// Inserting sheets into a document of the double: what is written, what is never touched, what happens when a step fails.
import { afterEach, describe, expect, it } from 'vitest';
import { insertSheets } from '../../addon/google/insertSheets';
import { styles, verdictTints } from '../../sheets-templates/look';
import type { SheetTemplate } from '../../sheets-templates/template';
import { locale } from './double/cells';
import type { FakeRange } from './double/range';
import type { Double } from './double/services';
import type { FakeSheet } from './double/sheet';
import { contentOf, documentOf, formulasOf, insertSmall, rangesOf, sheetNamesOf } from './smallDocument';
import { dock, hold, smallTemplates, yard } from './smallTemplates';
import { withDouble, withoutPlatform } from './support';

/** Cells that ask before they are typed over, as row-column. */
function guarded({ protections, rows, columns }: FakeSheet): string[] {
  const places = Array.from({ length: rows * columns }, (_, index) => ({ row: Math.floor(index / columns) + 1, column: (index % columns) + 1 }));
  const holds = (ranges: readonly FakeRange[], place: { row: number; column: number }): boolean =>
    ranges.some(({ area }) => place.row >= area.row && place.row <= area.lastRow && place.column >= area.column && place.column <= area.lastColumn);
  const asks = (place: { row: number; column: number }): boolean =>
    protections.some(({ range, free }) => (range === undefined ? !holds(free, place) : holds([range], place)));
  return places.filter(asks).map(({ row, column }) => `${row}-${column}`);
}

/** A fresh document with the small sheets in it. */
function inserted(): Double {
  const double = withDouble();
  insertSmall();
  return double;
}

afterEach(withoutPlatform);

describe('one insertion into a fresh document', () => {
  it("adds the sheets after the user's own, in order, and shows the first", () => {
    const double = withDouble();
    expect(insertSmall()).toEqual({ inserted: ['Yard', 'Dock side', 'Hold'], reads: [] });
    expect(sheetNamesOf(double)).toEqual(['Sheet1', 'Yard', 'Dock side', 'Hold']);
    expect(double.document.active.name).toBe('Yard');
    expect(rangesOf(double)).toEqual(['yard_day=Yard!B3', 'dock_verdict=Dock side!B3']);
  });

  it('writes values as values, and text that looks like a number, a date or a boolean as text', () => {
    const yard = inserted().sheet('Yard');
    expect(yard.cell(4, 2)).toMatchObject({ value: '09', numberFormat: '@' });
    expect(yard.cell(6, 1)).toMatchObject({ value: '2026-03-04', numberFormat: '@' });
    expect(yard.cell(6, 2)).toMatchObject({ value: 'TRUE', numberFormat: '@' });
    // 22 January 2026 is day 46044 of the spreadsheet's count from 30 December 1899 (25569 is 1 January 1970).
    expect(yard.cell(3, 2)).toMatchObject({ value: 46044, numberFormat: 'yyyy-mm-dd', note: 'Named yard_day.' });
  });

  it('writes formulas with semicolons, links by the identifier of the sheet', () => {
    const double = inserted();
    expect(double.sheet('Dock side').cell(3, 2).formula).toBe(`=IF('Hold'!B2>=B2;"OK, all in";"NO")`);
    expect(double.sheet('Yard').cell(5, 1).formula).toBe(`=HYPERLINK("#gid=${double.sheet('Hold').sheetId}";"to the hold")`);
  });

  it('writes the look: tints, text, borders, widths, merges, heights of merged wrapped rows, frozen rows', () => {
    const double = inserted();
    const yard = double.sheet('Yard');
    expect(yard.cell(3, 2)).toMatchObject({ background: styles.input.background, alignment: 'right', border: 'box' });
    expect(yard.cell(1, 1).textStyle?.facts).toMatchObject({ size: 16, bold: true, family: 'Arial' });
    expect([1, 2, 3].map((column) => yard.widths.get(column))).toEqual([120, 80, 80]);
    expect(yard.merges).toEqual([
      { row: 1, column: 1, lastRow: 1, lastColumn: 3 },
      { row: 2, column: 1, lastRow: 2, lastColumn: 3 },
    ]);
    expect([...yard.heights]).toEqual([[2, 40]]);
    expect(double.sheet('Dock side').frozen).toBe(1);
    expect([yard.cell(1, 1).wrap, yard.cell(2, 1).wrap]).toEqual(['overflow', 'wrap']);
  });

  it('writes validations with their help, and refuses invalid entries', () => {
    const hold = inserted().sheet('Hold');
    expect(hold.cell(4, 2).validation?.facts).toMatchObject({ criteria: 'number', values: [0, 9], help: 'A number, 0 to 9.', allowInvalid: false });
    expect(hold.cell(3, 3).validation?.facts).toMatchObject({ criteria: 'list', values: ['left', 'right', true] });
    expect(hold.cell(2, 3).validation?.facts.criteria).toBe('range');
    expect(hold.cell(5, 2).validation).toBeNull();
  });

  it('reads a list from the sheet that it is on, under the name that sheet has', () => {
    const double = inserted();
    insertSmall();
    for (const [name, from] of [
      ['Hold', 'Yard'],
      ['Hold 2', 'Yard 2'],
    ] as const) {
      const [range] = double.sheet(name).cell(2, 3).validation?.facts.values as FakeRange[];
      expect([range?.sheet.name, range?.getA1Notation()]).toEqual([from, 'B4']);
    }
    expect(insertSmall(['trip']).reads).toEqual([]);
  });

  it('writes what a rule does not allow, a list still blank among it, before the rule', () => {
    withDouble();
    const listed: SheetTemplate = {
      ...yard,
      validations: [
        { kind: 'listFrom', range: 'B4', source: `'Hold'!$A$3:$A$4`, help: 'One.' },
        { kind: 'number', range: 'A6', minimum: 0, maximum: 1, help: 'One.' },
      ],
    };
    expect(insertSheets(['start'], [listed, dock, hold]).inserted).toEqual(['Yard', 'Dock side', 'Hold']);
  });

  it('tints each verdict word in the ranges of verdicts', () => {
    const dock = inserted().sheet('Dock side');
    expect(dock.rules.map(({ facts }) => [facts.text, facts.background])).toEqual(Object.entries(verdictTints));
    expect(dock.rules[0]?.facts.ranges.map((range) => range.getA1Notation())).toEqual(['B3', 'B5:B6']);
  });

  it('warns before a computed cell is typed over, and nowhere else', () => {
    const double = inserted();
    expect(guarded(double.sheet('Dock side'))).toEqual(['1-4', '3-2', '4-2', '5-2']);
    const ofChart = ['4-6', '4-7', '5-6', '5-7', '6-6', '6-8'];
    expect(guarded(double.sheet('Hold'))).toEqual(['1-4', '2-2', ...ofChart]);
    for (const name of ['Yard', 'Dock side', 'Hold']) expect(double.sheet(name).protections.map(({ warningOnly }) => warningOnly)).toEqual([true]);
    // Only the link and the keys are formulas there.
    expect(guarded(double.sheet('Yard'))).toEqual(['1-4']);
  });

  it('hides the column of the keys, which tell where everything stands', () => {
    const double = inserted();
    for (const { name, columns } of smallTemplates) {
      expect([...double.sheet(name).hidden]).toEqual([columns]);
      expect(double.sheet(name).cell(1, columns).formula).toMatch(/^=IF\(TRUE;"Rampwright keys";COUNTA\("@rows";/);
    }
  });

  it('draws the chart from a block beside the sheet: one column of x, one of y for each series', () => {
    const hold = inserted().sheet('Hold');
    expect(hold.charts[0]?.facts).toMatchObject({ type: 'scatter', title: 'Room', xTitle: 'x', yTitle: 'y', headers: 1, position: [2, 4, 0, 0] });
    expect(hold.charts[0]?.facts.ranges.map((range) => range.getA1Notation())).toEqual(['F3:F6', 'G3:G6', 'H3:H6']);
    expect([3, 4, 5, 6].map((row) => [6, 7, 8].map((column) => hold.shown(hold.cell(row, column))))).toEqual([
      ['x', 'line', 'point'],
      ['=IF(AND(ISNUMBER(A3);ISNUMBER(B3));A3;NA())', '=IF(AND(ISNUMBER(A3);ISNUMBER(B3));B3;NA())', ''],
      ['=IF(AND(ISNUMBER(A4);ISNUMBER(B4));A4;NA())', '=IF(AND(ISNUMBER(A4);ISNUMBER(B4));B4;NA())', ''],
      ['=IF(AND(ISNUMBER(A3);ISNUMBER(B4));A3;NA())', '', '=IF(AND(ISNUMBER(A3);ISNUMBER(B4));B4;NA())'],
    ]);
  });

  it('marks each sheet with its template, its version and its names', () => {
    const dock = inserted().sheet('Dock side');
    expect(dock.metadata.map((metadata) => JSON.parse(metadata.getValue() ?? '') as unknown)).toEqual([
      { key: 'trip', version: 1, set: '1', names: { dock_verdict: 'dock_verdict' }, on: String(dock.sheetId) },
    ]);
  });
});

describe('what the document takes between arguments', () => {
  afterEach(() => {
    locale.separator = ';';
  });

  it('is asked: where it takes commas only, every formula has them', () => {
    locale.separator = ',';
    const hold = inserted().sheet('Hold');
    expect(hold.shown(hold.cell(4, 6))).toBe('=IF(AND(ISNUMBER(A3),ISNUMBER(B3)),A3,NA())');
  });

  it('is no guess: where it takes neither, nothing is inserted', () => {
    locale.separator = undefined;
    const double = withDouble();
    expect(() => insertSmall()).toThrow(
      /^No sheet was inserted, because Google Sheets refused a step; everything added was removed again\. It said: it works out no formula/,
    );
    expect(double.document.getSheets().map((sheet) => sheet.getName())).toEqual(['Sheet1']);
  });
});

describe('a document in which the names are taken', () => {
  it('numbers sheets and names, points every formula of the new set to them, and changes nothing else', () => {
    const double = withDouble();
    insertSmall();
    const before = double.document.sheets.map(contentOf);
    const rangesBefore = rangesOf(double);
    expect(insertSmall().inserted).toEqual(['Yard 2', 'Dock side 2', 'Hold 2']);
    expect(double.document.sheets.slice(0, 4).map(contentOf)).toEqual(before);
    expect(rangesOf(double)).toEqual([...rangesBefore, 'yard_day_2=Yard 2!B3', 'dock_verdict_2=Dock side 2!B3']);
    expect(double.sheet('Dock side 2').cell(3, 2).formula).toBe(`=IF('Hold 2'!B2>=B2;"OK, all in";"NO")`);
    expect(double.sheet('Dock side 2').cell(4, 2).formula).toBe('=yard_day_2+B2');
    expect(formulasOf(double.sheet('Hold 2')).filter((formula) => formula.includes("'Dock side'!"))).toEqual([]);
  });

  it('takes the next free number, whatever the case of the taken names', () => {
    const double = withDouble();
    double.document.insertSheet('YARD', 1);
    double.document.insertSheet('yard 2', 2);
    double.document.setNamedRange('Yard_Day', double.sheet('Sheet1').getRange('A1'));
    expect(insertSmall(['start']).inserted).toEqual(['Yard 3']);
    expect(rangesOf(double)).toEqual(['Yard_Day=Sheet1!A1', 'yard_day_2=Yard 3!B3']);
  });
});

describe('one sheet of the set', () => {
  it('brings what it reads, and what reads it back', () => {
    withDouble();
    expect(insertSmall(['trip'])).toEqual({ inserted: ['Yard', 'Dock side', 'Hold'], reads: [] });
  });

  it('reads a sheet that is there, but never one that reads another of the same kind as itself', () => {
    const double = withDouble();
    insertSmall();
    // Hold reads Dock side: the new Dock side with the old Hold would be judged by the crates of the old one.
    expect(insertSmall(['trip'])).toEqual({ inserted: ['Dock side 2', 'Hold 2'], reads: ['Yard'] });
    expect(double.sheet('Dock side 2').cell(4, 2).formula).toBe('=yard_day+B2');
  });

  it('joins the set of the sheets it reads, but never as the second of a kind', () => {
    const double = withDouble();
    const setOf = (name: string): unknown => (JSON.parse(double.sheet(name).metadata[0]?.getValue() ?? '{}') as { readonly set?: unknown }).set;
    insertSmall(['start']);
    insertSmall(['trip']);
    expect(setOf('Dock side')).toBe(setOf('Yard'));
    insertSmall(['trip']);
    expect(setOf('Dock side 2')).toBe(setOf('Hold 2'));
    expect(setOf('Dock side 2')).not.toBe(setOf('Yard'));
  });

  it('finds a sheet under the name the user gave it, with the names it got', () => {
    const double = withDouble();
    double.document.setNamedRange('yard_day', double.sheet('Sheet1').getRange('A1'));
    insertSmall(['start']);
    double.sheet('Yard').name = "My 'own' yard";
    expect(insertSmall(['trip'])).toEqual({ inserted: ['Dock side', 'Hold'], reads: ["My 'own' yard"] });
    expect(double.sheet('Dock side').cell(4, 2).formula).toBe('=yard_day_2+B2');
  });

  it('finds it in a copy of the document too, whose script is another project to Google', () => {
    const double = withDouble();
    insertSmall(['start']);
    double.document.project = 2;
    expect(insertSmall(['trip']).reads).toEqual(['Yard']);
  });

  it('reads a sheet whose label, link or unit the user put in other words', () => {
    const double = withDouble();
    insertSmall(['start']);
    Object.assign(double.sheet('Yard').cell(3, 1), { value: 'the day' });
    Object.assign(double.sheet('Yard').cell(5, 1), { value: 'there' });
    expect(insertSmall(['trip'])).toEqual({ inserted: ['Dock side', 'Hold'], reads: ['Yard'] });
  });

  it.each([
    ['there are two of it', () => void insertSmall(['start'])],
    [
      'its rows were moved',
      // As Google Sheets rewrites the keys when a row is put in above the third.
      (double: Double) => {
        const keys = double.sheet('Yard').cell(1, 4);
        keys.formula = keys.formula.replace(/D([3-6])/g, (_, row: string) => `D${Number(row) + 1}`);
      },
    ],
    ['its keys are gone', (double: Double) => void Object.assign(double.sheet('Yard').cell(1, 4), { value: '', formula: '' })],
    ['its name was deleted', (double: Double) => void double.document.removeNamedRange('yard_day')],
    ['its mark is damaged', (double: Double) => void double.sheet('Yard').metadata.splice(0)],
  ])('adds its own where %s', (_, change) => {
    const double = withDouble();
    insertSmall(['start']);
    change(double);
    const { inserted: names, reads } = insertSmall(['trip']);
    expect(reads).toEqual([]);
    expect(names[0]).toMatch(/^Yard [23]$/);
  });
});

describe('a step that fails', () => {
  it('leaves the document as it was, whichever call it is, and says why', () => {
    const counted = withDouble();
    insertSmall();
    insertSmall();
    const calls = counted.recorder.count('document');
    let tried = 0;
    for (let failAt = 1; ; failAt += 1) {
      const double = withDouble();
      insertSmall();
      const [before, rangesBefore] = [double.document.sheets.map(contentOf), rangesOf(double)];
      double.recorder.failAt = double.recorder.count('document') + failAt;
      if (double.recorder.failAt > calls) break;
      tried += 1;
      expect(() => insertSmall()).toThrow('Service Spreadsheets failed');
      expect(double.document.sheets.map(contentOf)).toEqual(before);
      expect(rangesOf(double)).toEqual(rangesBefore);
    }
    expect(tried).toBeGreaterThan(40);
  });

  it('is told in one sentence', () => {
    const double = withDouble();
    double.recorder.failAt = 12;
    expect(() => insertSmall()).toThrow(
      /^No sheet was inserted, because Google Sheets refused a step; everything added was removed again\. It said: Service Spreadsheets failed while accessing document\.$/,
    );
  });

  it('waits for another run, and says so where that takes long', () => {
    const double = withDouble();
    insertSmall();
    expect(double.lock.held).toBe(false);
    double.recorder.failAt = double.recorder.count('document') + 12;
    expect(() => insertSmall()).toThrow();
    expect(double.lock.held).toBe(false);
    const before = documentOf(double);
    double.lock.elsewhere = true;
    expect(() => insertSmall()).toThrow(
      'The add-on is changing sheets of this document already, perhaps for somebody else. Wait until that is done, then ask again.',
    );
    expect(documentOf(double)).toEqual(before);
  });

  it('needs permission to write', () => {
    const double = withDouble();
    double.recorder.mode = 'CUSTOM_FUNCTION';
    expect(() => insertSmall()).toThrow('You do not have permission');
    expect(sheetNamesOf(double)).toEqual(['Sheet1']);
  });
});
