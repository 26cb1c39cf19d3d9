// Values that stand apart from their neighbours: slips of a digit found, whole tables left alone.
import { describe, expect, it } from 'vitest';
import { arrange } from '../../../core/manual/grid';
import { outOfLine } from '../../../core/manual/outOfLine';
import { brindle } from '../../../sheets-templates/demo/aircraft/brindle';
import { quillon } from '../../../sheets-templates/demo/aircraft/quillon';

type Rows = readonly (readonly number[])[];
const column = 4;
const headers = ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'];
const apart = (rows: Rows, inputs = 3, of = column, heads = headers): number[] =>
  outOfLine(arrange({ headers: heads, rows, places: rows.map((_, index) => index + 2) }, inputs).grid, of).map(({ row }) => row);
const changed = (rows: Rows, at: number, by: number): Rows =>
  rows.map((row, index) => (index === at ? row.map((value, across) => (across === column ? Math.round(value * by) : value)) : row));

/**
 * Take-off distances of a table with ground roll against pressure altitude and temperature, by hand from the classic shape (distance grows
 * with the square of density altitude): a curve that bends, with no slip in it.
 */
const bent: Rows = [0, 2000, 4000, 6000].flatMap((altitude) =>
  [-10, 10, 30].map((temperature) => [2300, altitude, temperature, 0, Math.round((600 + altitude / 12 + (temperature + 10) * 4) ** 2 / 400 / 5) * 5]),
);

describe('a value apart', () => {
  it.each([
    ['Quillon Four, take-off', quillon.takeoff],
    ['Quillon Four, landing', quillon.landing],
    ['Brindle Two, take-off', brindle.takeoff],
    ['Brindle Two, landing', brindle.landing],
  ])('is not seen in a whole table: %s', (_, rows) => expect(apart(rows)).toEqual([]));

  it('is not seen in a curve that bends', () => expect(apart(bent)).toEqual([]));

  it.each([0.1, 0.8, 1.25, 10])('is found at its own row, and there alone, where the value is %d times itself', (by) => {
    const rows = quillon.takeoff;
    for (const at of [0, 5, 21, 38, 63]) expect(apart(changed(rows, at, by)), `row ${at}`).toEqual([at]);
  });

  it('is not looked for in a table of fewer than 12 rows', () => expect(apart(changed(quillon.takeoff.slice(0, 8), 3, 0.1))).toEqual([]));
});
