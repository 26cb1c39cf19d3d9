// Cell references in A1 notation.
import { describe, expect, it } from 'vitest';
import { a1FromRange, quoteSheetName, rangeFromA1, splitSheetReference } from '../../addon/local/engine/a1';

describe('cell references', () => {
  it.each([
    ['A1', 0, 0, 0, 0],
    ['$B$4:$C$9', 3, 1, 8, 2],
    ['AA10', 9, 26, 9, 26],
    ['ZZ1:AAA2', 0, 701, 1, 702],
  ] as const)('%s', (reference, startRow, startColumn, endRow, endColumn) => {
    expect(rangeFromA1(reference)).toEqual({ startRow, startColumn, endRow, endColumn });
    expect(a1FromRange(rangeFromA1(reference))).toBe(reference.replace(/\$/g, ''));
  });

  it.each(['', 'A', '1', 'A0', 'A1:B', 'Sheet!A1', 'AAAA1'])('refuses "%s"', (reference) =>
    expect(() => rangeFromA1(reference)).toThrow('not a cell reference'),
  );

  it('splits a reference to a sheet, quotes and all', () => {
    expect(splitSheetReference("='Pilot''s sheet'!$A$1:$B$2")).toEqual({ sheet: "Pilot's sheet", range: '$A$1:$B$2' });
    expect(splitSheetReference('Inputs!B1')).toEqual({ sheet: 'Inputs', range: 'B1' });
    expect(quoteSheetName("Pilot's sheet")).toBe("'Pilot''s sheet'");
    expect(() => splitSheetReference('B1')).toThrow('not a reference to a sheet');
  });
});
