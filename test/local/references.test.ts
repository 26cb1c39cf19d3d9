// Cell references, and what the chart of the grid draws from columns of numbers.
import { describe, expect, it } from 'vitest';
import { a1FromRange, quoteSheetName, rangeFromA1, splitSheetReference } from '../../addon/local/engine/a1';
import { pathOf, runsOf, scalesOf } from '../../addon/local/page/charts/chartModel';

describe('cell references', () => {
  it.each([['A1', 0, 0, 0, 0], ['$B$4:$C$9', 3, 1, 8, 2], ['AA10', 9, 26, 9, 26], ['ZZ1:AAA2', 0, 701, 1, 702]] as const)('%s', (reference, startRow, startColumn, endRow, endColumn) => {
    expect(rangeFromA1(reference)).toEqual({ startRow, startColumn, endRow, endColumn });
    expect(a1FromRange(rangeFromA1(reference))).toBe(reference.replace(/\$/g, ''));
  });

  it.each(['', 'A', '1', 'A0', 'A1:B', 'Sheet!A1', 'AAAA1'])('refuses "%s"', (reference) => expect(() => rangeFromA1(reference)).toThrow('not a cell reference'));

  it('splits a reference to a sheet, quotes and all', () => {
    expect(splitSheetReference("='Pilot''s sheet'!$A$1:$B$2")).toEqual({ sheet: "Pilot's sheet", range: '$A$1:$B$2' });
    expect(splitSheetReference('Inputs!B1')).toEqual({ sheet: 'Inputs', range: 'B1' });
    expect(quoteSheetName("Pilot's sheet")).toBe("'Pilot''s sheet'");
    expect(() => splitSheetReference('B1')).toThrow('not a reference to a sheet');
  });
});

describe('the chart', () => {
  const area = { left: 60, right: 260, top: 40, bottom: 240 };

  it('breaks a line at a row without two numbers', () => {
    expect(runsOf([1, 2, undefined, 4], [10, 20, 30, 40])).toEqual([[{ x: 1, y: 10 }, { x: 2, y: 20 }], [{ x: 4, y: 40 }]]);
    expect(runsOf([1, 2, 3], [1])).toEqual([[{ x: 1, y: 1 }]]);
    expect(runsOf([], [])).toEqual([]);
  });

  it('keeps every point inside its area, larger values up and to the right', () => {
    const run = [{ x: -5, y: 100 }, { x: 15, y: 900 }];
    const scales = scalesOf([{ title: 'a', drawn: 'line', runs: [run] }], area);
    if (scales === undefined) throw new Error('no scales');
    const places = run.map(({ x, y }) => [scales.x(x), scales.y(y)] as const);
    for (const [x, y] of places) {
      expect(x).toBeGreaterThanOrEqual(area.left);
      expect(x).toBeLessThanOrEqual(area.right);
      expect(y).toBeGreaterThanOrEqual(area.top);
      expect(y).toBeLessThanOrEqual(area.bottom);
    }
    expect(places[1]?.[0]).toBeGreaterThan(places[0]?.[0] ?? 0);
    expect(places[1]?.[1]).toBeLessThan(places[0]?.[1] ?? 0);
    expect(pathOf(run, scales)).toMatch(/^M[\d.]+,[\d.]+L[\d.]+,[\d.]+$/);
  });

  it('has room round a single value, and nothing to draw without numbers', () => {
    const scales = scalesOf([{ title: 'a', drawn: 'points', runs: [[{ x: 7, y: 7 }]] }], area);
    expect(scales?.x(7)).toBeGreaterThan(area.left);
    expect(scales?.x(7)).toBeLessThan(area.right);
    expect(scalesOf([{ title: 'a', drawn: 'line', runs: [] }], area)).toBeUndefined();
  });
});
