// Properties of reading a table: exact for what is linear along each input, blind to the order of rows, never a guess.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnOf, gridOf, readGrid } from '../../../core/manual/table';
import type { NumberTable } from '../../../core/manual/grid';
import { CoreError, type CoreErrorCode } from '../../../core/basics/errors';

const rising = fc
  .uniqueArray(fc.integer({ min: -40, max: 400 }), { minLength: 2, maxLength: 5 })
  .map((values) => values.map((value) => value * 25).sort((one, other) => one - other));
const axes3 = fc.tuple(rising, rising, rising);
const coefficients = fc.tuple(...Array.from({ length: 8 }, () => fc.integer({ min: -9, max: 9 }))) as fc.Arbitrary<number[]>;

/** Linear along each input, with every product of inputs: what multilinear reading must give back exactly. */
const multilinear = (c: readonly number[], [x = 0, y = 0, z = 0]: readonly number[]): number =>
  [1, x, y, z, x * y, y * z, z * x, x * y * z].reduce((sum, term, index) => sum + (c[index] ?? 0) * term, 0);

const pointsOf = ([first, second, third]: readonly (readonly number[])[]): number[][] =>
  (first ?? []).flatMap((x) => (second ?? []).flatMap((y) => (third ?? []).map((z) => [x, y, z])));

function tableOf(points: readonly (readonly number[])[], value: (point: readonly number[]) => number | undefined): NumberTable {
  return {
    headers: ['weight', 'altitude', 'temperature', 'distance'],
    rows: points.map((point) => [...point, value(point)]),
    places: points.map((_, index) => index + 2),
  };
}

const read = (table: NumberTable, inputs: readonly number[]): number => {
  const grid = gridOf(table, inputs.length);
  return readGrid(grid, columnOf(grid, 'distance', 'number'), inputs);
};

function codeOf(run: () => unknown): CoreErrorCode | 'none' {
  try {
    run();
    return 'none';
  } catch (thrown) {
    if (thrown instanceof CoreError) return thrown.code;
    throw thrown;
  }
}

const between = (axis: readonly number[], part: number): number => {
  const low = axis[0] ?? 0;
  return low + part * ((axis[axis.length - 1] ?? 0) - low);
};
const parts = fc.tuple(...Array.from({ length: 3 }, () => fc.double({ min: 0, max: 1, noNaN: true }))) as fc.Arbitrary<number[]>;

describe('reading a whole grid', () => {
  it('gives back whatever is linear along each input, rows in any order', () => {
    fc.assert(
      fc.property(axes3, coefficients, parts, fc.infiniteStream(fc.nat()), (axes, c, at, order) => {
        const shuffled = pointsOf(axes)
          .map((point) => ({ point, key: order.next().value }))
          .sort((one, other) => one.key - other.key);
        const table = tableOf(
          shuffled.map(({ point }) => point),
          (point) => multilinear(c, point),
        );
        const inputs = axes.map((axis, index) => between(axis, at[index] ?? 0));
        const largest = Math.max(1, ...table.rows.map((row) => Math.abs(row[3] ?? 0)));
        expect(Math.abs(read(table, inputs) - multilinear(c, inputs))).toBeLessThanOrEqual(1e-8 * largest);
      }),
    );
  });

  it('stays between the least and the greatest of the corners around', () => {
    fc.assert(
      fc.property(
        rising,
        fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 5, maxLength: 5 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (axis, values, part) => {
          const table = {
            headers: ['weight', 'distance'],
            rows: axis.map((x, index) => [x, values[index]]),
            places: axis.map((_, index) => index + 2),
          };
          const input = between(axis, part);
          const line = axis.findIndex((x) => x >= input);
          const corners = [values[Math.max(0, line - 1)] ?? 0, values[line] ?? 0];
          const got = read(table, [input]);
          expect(got).toBeGreaterThanOrEqual(Math.min(...corners) - 1e-9);
          expect(got).toBeLessThanOrEqual(Math.max(...corners) + 1e-9);
        },
      ),
    );
  });

  it('gives the row itself at every grid point', () => {
    const axes = [
      [900, 1100, 1234.5],
      [0, 2000],
      [-10.5, 0, 30],
    ];
    const table = tableOf(pointsOf(axes), (point) => 1 + multilinear([1, 0.3, 0.7, 0.1, 0, 0, 0, 0], point));
    for (const row of table.rows) expect(read(table, row.slice(0, 3) as number[])).toBe(row[3]);
  });
});

describe('what is not there', () => {
  const axes = [
    [900, 1100],
    [0, 2000, 4000],
    [0, 30],
  ];
  const without = (lost: readonly number[], value: number | undefined = undefined): NumberTable =>
    tableOf(
      pointsOf(axes).filter((point) => value !== undefined || String(point) !== String(lost)),
      (point) => (String(point) === String(lost) ? value : 500),
    );

  it('names the one grid point that is missing, and needs only those beside the inputs', () => {
    const table = without([1100, 2000, 30]);
    try {
      read(table, [1000, 1000, 15]);
      expect.unreachable();
    } catch (thrown) {
      expect((thrown as CoreError<'table-missing-point'>).detail.point).toEqual([
        { header: 'weight', value: 1100 },
        { header: 'altitude', value: 2000 },
        { header: 'temperature', value: 30 },
      ]);
    }
    expect(read(table, [900, 1000, 15])).toBe(500);
    expect(read(table, [1000, 0, 30])).toBe(500);
    expect(read(table, [1000, 1000, 0])).toBe(500);
  });

  it('takes values apart only by rounding for one, in rows and in inputs', () => {
    const table = {
      headers: ['x', 'y', 'distance'],
      rows: [
        [0.1 + 0.2, 0, 5],
        [0.3, 1, 7],
      ],
      places: [2, 3],
    };
    expect(read(table, [0.3, 0])).toBe(5);
    expect(read(table, [0.1 + 0.2, 1])).toBe(7);
    expect(read(table, [0.3, 1 + 1e-12])).toBe(7);
  });

  it.each([
    {
      what: 'a row given twice',
      code: 'table-repeated-row',
      table: {
        headers: ['w', 'distance'],
        rows: [
          [1, 5],
          [2, 6],
          [1, 5],
        ],
        places: [2, 3, 4],
      },
      inputs: [1],
    },
    {
      what: 'a row with a blank input',
      code: 'table-bad-cell',
      table: {
        headers: ['w', 'distance'],
        rows: [
          [1, 5],
          [undefined, 6],
        ],
        places: [2, 3],
      },
      inputs: [1],
    },
    {
      what: 'a header given twice',
      code: 'table-header-bad',
      table: { headers: ['w', 'Dist', ' dist', 'distance'], rows: [[1, 5, 6, 7]], places: [2] },
      inputs: [1],
    },
    { what: 'an input with no header', code: 'table-header-bad', table: { headers: ['', 'distance'], rows: [[1, 5]], places: [2] }, inputs: [1] },
    { what: 'no column left', code: 'table-header-bad', table: { headers: ['w', 'distance'], rows: [[1, 5]], places: [2] }, inputs: [1, 5] },
    {
      what: 'an input below',
      code: 'table-outside',
      table: {
        headers: ['w', 'distance'],
        rows: [
          [1, 5],
          [2, 6],
        ],
        places: [2, 3],
      },
      inputs: [0.999],
    },
    {
      what: 'an input above',
      code: 'table-outside',
      table: {
        headers: ['w', 'distance'],
        rows: [
          [1, 5],
          [2, 6],
        ],
        places: [2, 3],
      },
      inputs: [2.001],
    },
  ])('refuses $what', ({ code, table, inputs }) => {
    expect(codeOf(() => read(table, inputs))).toBe(code);
  });

  it('refuses a blank cell it needs, and only then', () => {
    const table = tableOf(pointsOf(axes), ([weight, altitude]) => (weight === 1100 && altitude === 4000 ? undefined : 500));
    expect(codeOf(() => read(table, [1000, 3000, 15]))).toBe('table-bad-cell');
    expect(codeOf(() => read(table, [900, 3000, 15]))).toBe('none');
  });

  it('takes a distance of 0 for a cell never filled in', () => {
    const grid = gridOf(without([900, 0, 0], 0), 3);
    expect(codeOf(() => readGrid(grid, columnOf(grid, 'distance', 'distance'), [1000, 0, 0]))).toBe('table-bad-cell');
    expect(readGrid(grid, columnOf(grid, 'distance', 'number'), [1000, 0, 0])).toBe(250);
  });
});
