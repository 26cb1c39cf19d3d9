// AFM_READ as a sheet calls it: the sentences, the blanks, and a big table over many rows.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const table = [
  ['Mass', 'Pressure  altitude', 'Temperature', 'Ground run', 'Over 50 ft'],
  [1100, 0, 0, 420, 700],
  [900, 0, 0, 300, 500],
  [900, 0, 30, 360, 600],
  ['', '', '', '', ''],
  [900, 2000, 0, 360, 600],
  [900, 2000, 30, 430, ''],
  [1100, 0, 30, 500, 820],
  [1100, 2000, 0, 500, 800],
];

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe('AFM_READ', () => {
  it('does not mind capitals and spaces in the header', () => {
    expect(answer('AFM_READ', table, ' groundRUN ', 1000, 0, 15).value).toBe(395);
  });

  it.each([
    {
      given: [950, 2100, 10],
      says: 'AFM_READ: input_2 must be 0 to 2,000, the "Pressure  altitude" rows of the table; got 2,100, 100 above the table, and nothing is extrapolated.',
    },
    {
      given: [850, 0, 10],
      says: 'AFM_READ: input_1 must be 900 to 1,100, the "Mass" rows of the table; got 850, 50 below the table, and nothing is extrapolated.',
    },
    { given: [1000, 1000, 15], says: 'AFM_READ: table must hold a whole grid; got no row for Mass 1,100, Pressure  altitude 2,000, Temperature 30.' },
    {
      given: [900, 2000, 30],
      wanted: 'over 50 ft',
      says: 'AFM_READ: table must hold a number in column "Over 50 ft"; got a blank at Mass 900, Pressure  altitude 2,000, Temperature 30 (row 7 of table).',
    },
    {
      given: [900, 0],
      says: 'AFM_READ: table must give each grid point once; got Mass 900, Pressure  altitude 0 in row 3 and again in row 4 of table.',
    },
    { given: [900, 0, 0], wanted: 'roll', says: `AFM_READ: wanted must be one of the table's headers "Ground run", "Over 50 ft"; got "roll".` },
    { given: [900, 0, ''], says: 'AFM_READ: input_3 must be -1,000,000 to 1,000,000,000; got a blank.' },
    { given: [900, undefined, 0], says: 'AFM_READ: input_2 must be a number, since input_3 is given; got a blank.' },
  ])('says $says', ({ given, wanted = 'ground run', says }) => {
    expect(sentenceOf('AFM_READ', table, wanted, ...given)).toBe(says);
  });

  it('lets a bad row of a column spoil only itself, and a blank row stay blank', () => {
    const got = call(
      'AFM_READ',
      table,
      'ground run',
      column(900, '', 1000, 9000, 1000),
      column(0, '', '', 0, 0),
      column(0, '', 0, 0, 30),
    ) as unknown[][];
    expect(got.map(([cell]) => (typeof cell === 'string' ? cell.slice(0, 30) : cell))).toEqual([
      300,
      '',
      'AFM_READ: input_2 must be -1,0',
      'AFM_READ: input_1 must be 900 ',
      430,
    ]);
    expect(got[3]?.[0]).toMatch(/\(row 4\)\.$/);
  });

  it('reads 10,000 rows of a table of 5,000 in one call, each as if it were alone', () => {
    const points = Array.from({ length: 5000 }, (_, index) => [
      1000 + 100 * (index % 10),
      500 * (Math.floor(index / 10) % 20),
      -20 + 3 * Math.floor(index / 200),
    ]);
    const value = (w = 0, h = 0, t = 0): number => 300 + w + h / 10 + 2 * t;
    const big = [['w', 'h', 't', 'd'], ...points.map((point) => [...point, value(...point)])];
    const inputs = Array.from({ length: 10_000 }, (_, index) => [1000 + ((index * 7) % 900), (index * 13) % 9500, -20 + (index % 72)]);
    const got = call('AFM_READ', big, 'd', ...[0, 1, 2].map((input) => inputs.map((row) => [row[input]]))) as number[][];
    expect(got).toHaveLength(10_000);
    got.forEach(([cell = 0], index) => expect(Math.abs(cell - value(...(inputs[index] ?? [])))).toBeLessThan(1e-6));
  });
});
