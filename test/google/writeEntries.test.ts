// Entries written for a new trip: all of them, or none and everything as it was.
import { afterEach, describe, expect, it } from 'vitest';
import { writeEntries } from '../../addon/google/writeEntries';
import { contentOf, documentOf, formulasOf, insertSmall, sheetNamesOf } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

afterEach(withoutPlatform);

describe('writeEntries', () => {
  it('writes and empties single cells, and nothing beside them', () => {
    const double = withDouble('Europe/Paris');
    insertSmall();
    const hold = double.sheet('Hold');
    hold.cell(9, 1).value = 'old';
    const beside = hold.cell(2, 2).value;
    expect(
      writeEntries({
        entries: [
          { sheet: 'Hold', row: 9, column: 1, content: '' },
          { sheet: 'Hold', row: 9, column: 2, content: 'Tansy Ridge' },
        ],
      }),
    ).toEqual({ cells: 2 });
    expect([hold.cell(9, 1).value, hold.cell(9, 2).value, hold.cell(2, 2).value]).toEqual(['', 'Tansy Ridge', beside]);
  });

  it('puts back what it wrote where a sheet is gone, and says so', () => {
    const double = withDouble('Europe/Paris');
    insertSmall();
    const before = contentOf(double.sheet('Hold'));
    expect(() =>
      writeEntries({
        entries: [
          { sheet: 'Hold', row: 2, column: 2, content: 7 },
          { sheet: 'Gone', row: 1, column: 1, content: '' },
        ],
      }),
    ).toThrow('Nothing was written, because Google Sheets refused a step; every entry is as it was. It said: there is no sheet "Gone" any more.');
    expect(contentOf(double.sheet('Hold'))).toEqual(before);
  });

  const old = { sheet: 'Hold', suffix: ' 2026-11-25' };
  const entries = [{ sheet: 'Hold', row: 9, column: 1, content: '' }];

  it('puts the sheet aside as values first, where that is asked for, and shows what was in sight', () => {
    const double = withDouble('Europe/Paris');
    insertSmall();
    const hold = double.sheet('Hold');
    hold.cell(9, 1).value = 'old';
    hold.cell(2, 2).value = 24;
    double.document.setActiveSheet(double.sheet('Yard'));
    expect(writeEntries({ entries, copyFirst: old })).toEqual({ cells: 1, copy: 'Hold 2026-11-25' });
    const copy = double.sheet('Hold 2026-11-25');
    expect([copy.cell(9, 1).value, hold.cell(9, 1).value]).toEqual(['old', '']);
    expect(formulasOf(copy)).toEqual([]);
    expect(copy.metadata).toEqual([]);
    expect(double.document.active.name).toBe('Yard');
    expect(writeEntries({ entries, copyFirst: old }).copy).toBe('Hold 2026-11-25 2');
  });

  it('writes nothing and leaves no copy where either is refused', () => {
    const double = withDouble('Europe/Paris');
    insertSmall();
    const before = documentOf(double);
    const gone = [...entries, { sheet: 'Gone', row: 1, column: 1, content: '' }];
    expect(() => writeEntries({ entries: gone, copyFirst: old })).toThrow(/^Nothing was written, .*there is no sheet "Gone" any more\.$/);
    expect(documentOf(double)).toEqual(before);
    expect(() => writeEntries({ entries, copyFirst: { ...old, sheet: 'Gone' } })).toThrow('There is no sheet "Gone" any more. Nothing was changed.');
    double.sheet('Hold').cell(2, 2).value = 'Loading...';
    expect(() => writeEntries({ entries, copyFirst: old })).toThrow('Some formulas are still being worked out.');
    expect(sheetNamesOf(double)).not.toContain('Hold 2026-11-25');
  });
});
