// What an update of sheets refuses, what it does with times and formulas, and that a failure leaves no trace.
import { afterEach, describe, expect, it } from 'vitest';
import { updateSheets } from '../../addon/google/updateSheets';
import type { CarriedSheet } from '../../addon/workbook/carriedInputs';
import type { Double } from './double/services';
import { documentOf } from './smallDocument';
import { carriedEntries, laterTemplates, typed, update } from './smallUpdate';
import { withoutPlatform } from './support';

afterEach(withoutPlatform);

describe('times', () => {
  /** Types a number of this format into the cell of Hold that has none of its own. */
  const held = (double: Double, cell: readonly [number, number], value: number, numberFormat: string): void =>
    void Object.assign(double.sheet('Hold').cell(...cell), { value, numberFormat });
  const entries = (content: number, row = 3): CarriedSheet[] =>
    carriedEntries().map((sheet) => (sheet.key === 'balance' ? { ...sheet, cells: [{ row, column: 1, content }] } : sheet));

  it.each([
    ['h:mm', 'Europe/Paris'],
    ['[h]:mm:ss', 'Asia/Kathmandu'],
  ])('stay times: %s in %s', (format, zone) => {
    const double = typed(zone);
    held(double, [4, 2], 0.0625, format);
    update(double, entries(0.0625));
    expect(double.sheet('Hold').cell(3, 1)).toMatchObject({ value: 0.0625, numberFormat: format });
  });

  it('are written as the day and the hour where a cell does not say its format', () => {
    const double = typed();
    const cell = double.sheet('Hold').cell(4, 2);
    Object.assign(cell, { value: new Date(Date.UTC(1899, 11, 30, 6, 30)), numberFormat: 'General' });
    expect(double.sheet('Hold').getRange('B4').getNumberFormats()).toEqual([['0.###############']]);
    update(double, entries(6.5 / 24));
    expect(double.sheet('Hold').cell(3, 1)).toMatchObject({ value: 6.5 / 24, numberFormat: 'hh:mm' });
  });

  it('are told from equal numbers by their place, or not at all', () => {
    const [same, other] = [typed(), typed()];
    for (const double of [same, other]) {
      held(double, [3, 1], 0.5, 'h:mm');
      held(double, [3, 2], 0.5, 'General');
    }
    Object.assign(globalThis, same.globals());
    update(same, entries(0.5));
    expect(same.sheet('Hold').cell(3, 1).numberFormat).toBe('h:mm');
    Object.assign(globalThis, other.globals());
    const before = documentOf(other);
    expect(() => update(other, entries(0.5, 4))).toThrow(
      'On "Hold" the same value is a time in A3 and a plain number in B3, and it cannot be told which is which. Change one of them, then ask again.',
    );
    expect(documentOf(other)).toEqual(before);
  });
});

describe("a formula of the user's own", () => {
  it('goes into a cell meant for text as a formula, and as it was written', () => {
    const double = typed();
    const own = `=IF('Dock side'!B2>1;"north, then east";"south")`;
    update(
      double,
      carriedEntries().map((sheet) => (sheet.key === 'start' ? { ...sheet, cells: [{ row: 6, column: 2, content: own }] } : sheet)),
    );
    expect(double.sheet('Yard').cell(6, 2)).toMatchObject({ formula: own, numberFormat: 'General' });
  });

  it('reads a decimal comma as before', () => {
    const double = typed();
    // The double takes no comma, as it stands for every locale; what counts is that it is asked to take the very text.
    const asked: string[][][] = [];
    const own = double.document.insertSheet.bind(double.document);
    double.document.insertSheet = (name, index) => {
      const sheet = own(name, index);
      const { getRange } = sheet;
      sheet.getRange = (...place: Parameters<typeof getRange>) =>
        Object.assign(getRange.apply(sheet, place), { setFormulas: (texts: string[][]) => asked.push(texts) });
      return sheet;
    };
    update(double, carriedEntries('=1,5*B3'));
    expect(asked).toEqual([[['=1,5*B3']]]);
  });
});

describe('a formula of the template in an entry cell', () => {
  it('reads the new name, where the user has a name like it', () => {
    const double = typed();
    double.document.setNamedRange('yard_keeper', double.sheet('Sheet1').getRange('A1'));
    const templates = laterTemplates.map((one) =>
      one.key === 'trip'
        ? { ...one, cells: [...one.cells, { row: 8, column: 1, formula: '=IF(yard_keeper="","nobody",yard_keeper)', style: 'inputText' as const }] }
        : one,
    );
    const content = '=IF(yard_keeper="";"nobody";yard_keeper)';
    update(
      double,
      carriedEntries().map((sheet) => (sheet.key === 'trip' ? { ...sheet, cells: [...sheet.cells, { row: 8, column: 1, content }] } : sheet)),
      'Yard',
      templates,
    );
    expect(double.sheet('Dock side').cell(8, 1).formula).toBe('=IF(yard_keeper_2="";"nobody";yard_keeper_2)');
  });
});

describe('what is refused', () => {
  it.each<readonly [string, (double: Double) => void, string]>([
    [
      'a set that is not there',
      () => void updateSheets({ set: 'none', entries: carriedEntries() }, laterTemplates),
      'The sheets to be brought up to date are not in this document any more. Close the panel, open it again and try once more.',
    ],
    [
      'a sheet whose entries did not come',
      (double) => void update(double, carriedEntries().slice(1)),
      'The entries of "Yard" did not come along, so nothing was changed. Close the panel, open it again and try once more.',
    ],
    [
      'a kind that this version no longer has',
      (double) => void update(double, carriedEntries(), 'Yard', laterTemplates.slice(1)),
      'This version has no sheet of the kind of "Yard". Delete that sheet, then ask again.',
    ],
    [
      'an entry for a cell that is none',
      (double) => void update(double, [...carriedEntries().slice(1), { key: 'start', cells: [{ row: 1, column: 1, content: 1 }] }]),
      '"Yard" has no entry cell A1, where an entry was to go.',
    ],
  ])('%s', (_, work, sentence) => {
    const double = typed();
    const before = documentOf(double);
    expect(() => work(double)).toThrow(sentence);
    expect(documentOf(double)).toEqual(before);
  });

  it('two sheets of one kind, as when a sheet was copied by hand', () => {
    const double = typed();
    double.sheet('Yard').copyTo(double.document);
    const before = documentOf(double);
    expect(() => update(double)).toThrow(
      /^"Yard" and "Copy of Yard" are two of one kind, so it cannot be told which of them is in use\. Delete one of them/,
    );
    expect(documentOf(double)).toEqual(before);
  });
});

describe('a step that fails', () => {
  it('leaves the document as it was, whichever call it is', () => {
    const prepared = (): Double => {
      const double = typed('Europe/Paris');
      Object.assign(double.sheet('Hold').cell(4, 2), { value: 0.0625, numberFormat: 'h:mm' });
      double.document.setActiveSheet(double.sheet('Dock side'));
      return double;
    };
    const entries = carriedEntries().map((sheet) =>
      sheet.key === 'balance'
        ? { ...sheet, cells: [...sheet.cells.slice(0, 2), { row: 4, column: 1, content: 0.0625 }, ...sheet.cells.slice(3)] }
        : sheet,
    );
    const counted = prepared();
    const start = counted.recorder.count('document');
    update(counted, entries);
    const calls = counted.recorder.count('document') - start;
    const after = documentOf(counted);
    const askedTwice: string[] = [];
    for (let failing = 1; failing <= calls; failing += 1) {
      const double = prepared();
      const before = documentOf(double);
      double.recorder.failAt = double.recorder.count('document') + failing;
      let said = '';
      try {
        update(double, entries);
        askedTwice.push(double.recorder.calls.filter(({ kind }) => kind === 'document')[double.recorder.failAt - 1]?.name ?? '');
      } catch (thrown) {
        said = String(thrown);
        expect(said).toContain('Service Spreadsheets failed');
      }
      expect(documentOf(double), `call ${failing}`).toEqual(said === '' ? after : before);
    }
    expect(calls).toBeGreaterThan(80);
    // A name without cells looks like a failure, so only that question is put again.
    expect(new Set(askedTwice)).toEqual(new Set(['NamedRange.getRange']));
  });

  it('says so in one sentence', () => {
    const double = typed();
    double.sheet('Hold').setName = () => {
      throw new Error('no');
    };
    expect(() => update(double)).toThrow(
      /^The sheets were not brought up to date, because Google Sheets refused a step; everything is as it was\. It said: no\.$/,
    );
  });
});
