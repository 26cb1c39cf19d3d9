// Rectangles and strokes, against counting cell by cell.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areasOf, areaText, eachCell, equalRuns, fewestStrokes, readArea } from '../../addon/workbook/areas';

describe('readArea and areaText', () => {
  it.each(['A1', 'B3:D9', 'Z10', 'AA1:AZ200'])('%s', (text) => expect(areaText(readArea(text))).toBe(text));
  it('passes over dollar signs', () => expect(readArea('$C$36:$D$47')).toEqual({ row: 36, column: 3, lastRow: 47, lastColumn: 4 }));
  it('refuses what is not on one sheet', () => expect(() => readArea("'Start'!A1")).toThrow('not a range'));
});

describe('areasOf', () => {
  it('covers exactly the cells given, each once', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }), { minLength: 1, maxLength: 8 }), (cells) => {
        const counted = cells.map((line) => line.map(() => 0));
        for (const area of areasOf(cells)) {
          eachCell(area, (row, column) => {
            const line = counted[row - 1];
            if (line !== undefined) line[column - 1] = (line[column - 1] ?? 0) + 1;
          });
        }
        expect(counted).toEqual(cells.map((line) => line.map((set) => (set ? 1 : 0))));
      }),
    );
  });

  it('joins equal runs of rows into one rectangle', () =>
    expect(
      areasOf([
        [true, true],
        [true, true],
        [false, true],
      ]).map(areaText),
    ).toEqual(['A1:B2', 'B3']));
});

describe('equalRuns', () => {
  it('gives each place its value, leaves the others, and never sets two neighbours of one value apart', () => {
    fc.assert(
      fc.property(fc.array(fc.option(fc.integer({ min: 1, max: 2 }), { nil: undefined })), (values) => {
        const runs = equalRuns(values);
        const set = values.map((): number | undefined => undefined);
        for (const { start, count, value } of runs) set.fill(value, start - 1, start - 1 + count);
        expect(set).toEqual(values);
        expect(runs).toHaveLength(values.filter((value, index) => value !== undefined && value !== values[index - 1]).length);
      }),
    );
  });
});

/** Fewest strokes by trying every way: remove from the finished picture, last stroke first, until only fresh columns are left. */
function fewestByTrying(widths: readonly (number | undefined)[], fresh?: number): number {
  if (widths.every((width) => width === undefined || width === fresh)) return 0;
  let best = Infinity;
  for (let from = 0; from < widths.length; from += 1) {
    for (let to = from; to < widths.length; to += 1) {
      const shown = new Set(widths.slice(from, to + 1).filter((width) => width !== undefined));
      if (shown.size !== 1) continue;
      best = Math.min(
        best,
        1 +
          fewestByTrying(
            widths.map((width, index) => (index >= from && index <= to ? undefined : width)),
            fresh,
          ),
      );
    }
  }
  return best;
}

describe('fewestStrokes', () => {
  it('paints every column its width, with as few strokes as there can be', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 5 }), (widths) => {
        const strokes = fewestStrokes(widths);
        const painted = widths.map(() => 0);
        for (const { start, count, value } of strokes) painted.fill(value, start - 1, start - 1 + count);
        expect(painted).toEqual(widths);
        expect(strokes.length).toBe(fewestByTrying(widths));
      }),
      { numRuns: 60 },
    );
  });

  it('needs none for columns that are as wide as fresh ones, unless another stroke goes over them', () => {
    expect(fewestStrokes([1, 2, 1, 1], 1)).toEqual([{ start: 2, count: 1, value: 2 }]);
    expect(fewestStrokes([1, 1], 1)).toEqual([]);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 5 }), (widths) => {
        const strokes = fewestStrokes(widths, 1);
        const painted = widths.map(() => 1);
        for (const { start, count, value } of strokes) painted.fill(value, start - 1, start - 1 + count);
        expect(painted).toEqual(widths);
        expect(strokes.length).toBe(fewestByTrying(widths, 1));
      }),
      { numRuns: 60 },
    );
  });
});
