// AFM_CHECK: a whole table passes, and every way to mistype one is named by its rows.
import { describe, expect, it } from 'vitest';
import { answer } from '../../support/call';

const weights = [900, 1000, 1100];
const altitudes = [0, 2000, 4000, 6000];
const temperatures = [0, 20, 40];
const header = ['weight', 'pressure altitude', 'temperature', 'ground run', 'over 50 ft'];
const whole = [
  header,
  ...weights.flatMap((w) => altitudes.flatMap((h) => temperatures.map((t) => [w, h, t, w / 3 + h / 20 + t, w + h / 10 + 2 * t]))),
];
const check = (table: unknown[][], inputs: unknown = 3) => answer('AFM_CHECK', table, inputs);
const changed = (row: number, column: number, value: unknown): unknown[][] =>
  whole.map((cells, r) => cells.map((cell, c) => (r === row - 1 && c === column - 1 ? value : cell)));

describe('AFM_CHECK', () => {
  it('passes a whole table, its rows in any order', () => {
    expect(check(whole)).toEqual({ verdict: 'OK', reasons: 'grid whole: 3 weight x 4 pressure altitude x 3 temperature' });
    expect(check([header, ...whole.slice(1).reverse()]).verdict).toBe('OK');
  });

  it.each([
    {
      what: 'a missing row',
      table: whole.filter((_, row) => row !== 36),
      verdict: 'CHECK',
      reasons: 'of the 3 x 4 x 3 grid 1 point is missing: weight 1,100, pressure altitude 6,000, temperature 40',
    },
    {
      what: 'a blank answer',
      table: changed(8, 4, ''),
      verdict: 'CHECK',
      reasons: '"ground run" is blank at weight 900, pressure altitude 4,000, temperature 0 (row 8)',
    },
    {
      what: 'a blank input',
      table: changed(8, 2, ''),
      verdict: 'NO',
      reasons:
        'an input is blank at weight 900, temperature 0 (row 8). of the 3 x 4 x 3 grid 1 point is missing: weight 900, pressure altitude 4,000, temperature 0',
    },
    {
      what: 'a row given twice',
      table: [...whole, whole[5] ?? []],
      verdict: 'NO',
      reasons: 'given twice: weight 900, pressure altitude 2,000, temperature 20 (rows 6 and 38)',
    },
    {
      what: 'digits swapped',
      table: changed(9, 5, 2413),
      verdict: 'CHECK',
      reasons:
        /^"over 50 ft" is 2,413 at weight 900, pressure altitude 4,000, temperature 20 \(row 9\), where its neighbours make about [\d,]+: a typing error\?$/,
    },
  ])('names $what', ({ table, verdict, reasons }) => {
    const got = check(table);
    expect(got.verdict).toBe(verdict);
    if (typeof reasons === 'string') expect(got.reasons).toBe(reasons);
    else expect(got.reasons).toMatch(reasons);
  });

  it('names a mistyped input by the grid it tears', () => {
    const got = check(changed(8, 1, 990));
    expect(got.verdict).toBe('CHECK');
    expect(got.reasons).toMatch(/^of the 4 x 4 x 3 grid 12 points are missing: weight 900, pressure altitude 4,000, temperature 0; .+; and 7 more$/);
  });

  it('does not count out the grid of rows that make none', () => {
    const rows = Array.from({ length: 4000 }, (_, index) => [index, index * 2, index * 3, index + 1]);
    expect(check([['a', 'b', 'c', 'd'], ...rows]).reasons).toMatch(/^of the 4,000 x 4,000 x 4,000 grid 63,999,996,000 points are missing/);
  });

  it('leaves alone a column that goes both ways by nature', () => {
    const curved = [
      ['altitude', 'temperature', 'range'],
      ...[0, 2, 4, 6, 8, 10].flatMap((h) => [0, 20, 40].map((t) => [h, t, 500 + 40 * h - 4 * h * h + t])),
    ];
    expect(check(curved, 2).verdict).toBe('OK');
  });
});
