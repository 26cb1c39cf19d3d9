// The forms in which manuals print a table, as a sheet hands them over: what each answers, what it says of itself, and bad input for each.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const heads = ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'];
/** Weight, elevation, temperature, wind, corrections, units: at 1013.25 the elevation is the pressure altitude. */
interface Day {
  readonly weight: number;
  readonly altitude: number;
  readonly celsius: number;
  readonly wind?: number;
  readonly corrections?: unknown;
  readonly lengthUnit?: string;
  readonly weightUnit?: string;
  readonly wanted?: string;
}
const day = (
  table: unknown,
  { weight, altitude, celsius, wind = 0, corrections = '', lengthUnit = '', weightUnit = '', wanted = 'over 50 ft' }: Day,
): unknown[] => [table, wanted, weight, 0, 5000, altitude, 1013.25, celsius, 0, wind, 1, corrections, '', '', '', lengthUnit, weightUnit];
const brief = (table: unknown, given: Day): Map<unknown, unknown[]> =>
  new Map((call('TAKEOFF_BRIEF', ...day(table, given)) as unknown[][]).map((row) => [row[0], row]));
const book = (table: unknown, given: Day): unknown => brief(table, given).get('book distance')?.[1];
const verdict = (table: unknown, given: Day): unknown[] => brief(table, given).get('verdict') ?? [];

const standardAt = (feet: number): number => 15 - 0.0019812 * feet;

describe('one weight', () => {
  const upTo = [
    heads,
    ['lb, up to', 'ft', '°C', 'ft', 'ft'],
    [2300, 0, 0, 800, 1400],
    [2300, 0, 40, 1000, 1800],
    [2300, 4000, 0, 1100, 2000],
    [2300, 4000, 40, 1400, 2600],
  ];
  const plain = upTo.filter((_, row) => row !== 1);
  const once = [
    heads,
    ['up to 2300 lb'],
    [undefined, 0, 0, 800, 1400],
    [undefined, 0, 40, 1000, 1800],
    [undefined, 4000, 0, 1100, 2000],
    [undefined, 4000, 40, 1400, 2600],
  ].map((row) => [...row, ...Array<undefined>(5 - row.length)]);

  it.each([
    { form: 'under "up to"', table: upTo },
    { form: 'once, as "up to 2300 lb"', table: once },
  ])('$form: holds for the lighter aircraft, and says so', ({ table }) => {
    const given = { weight: 2215.6, altitude: 2000, celsius: 20 };
    expect(book(table, given)).toBeCloseTo(1950, 9);
    expect(verdict(table, given)).toEqual([
      'verdict',
      'OK',
      '3,050 to spare with the factor 1; figures of 2,300 lb, used for the lighter aircraft too',
    ]);
    expect(verdict(table, { ...given, weight: 2300 })[2]).toBe('3,050 to spare with the factor 1');
  });

  it('is never used above its weight', () => {
    expect(verdict(upTo, { weight: 2301, altitude: 2000, celsius: 20, weightUnit: 'lb' })).toEqual([
      'verdict',
      'UNKNOWN',
      'your take-off table is for weight 2,300 lb only; at 2,301 lb nothing can be read',
    ]);
  });

  it('without "up to" is not used below it either, and says how that is told', () => {
    expect(verdict(plain, { weight: 2200, altitude: 2000, celsius: 20, weightUnit: 'lb' })[2]).toBe(
      'your take-off table is for weight 2,300 lb only; at 2,200 lb nothing can be read; where its figures are to be used below that weight too, write "up to" below its heading weight',
    );
  });

  it('is converted from the unit of the table', () => {
    const kilograms = [
      heads,
      ['kg, up to', 'm', '°F', 'm', 'm'],
      [1000, 0, 32, 250, 400],
      [1000, 1000, 32, 350, 600],
      [1000, 0, 86, 300, 500],
      [1000, 1000, 86, 400, 700],
    ];
    const given = { weight: 2000, altitude: 500 / 0.3048, celsius: 15, weightUnit: 'lb', lengthUnit: 'ft' };
    expect(book(kilograms, given)).toBeCloseTo((400 + 700) / 2 / 0.3048, 5);
    expect(verdict(kilograms, given)[2]).toContain('figures of 1,000 kg, used for the lighter aircraft too');
    expect(verdict(kilograms, { ...given, weight: 2205 })[1]).toBe('UNKNOWN');
  });

  it('gives limits in the units of the call', () => {
    const kilograms = [heads, ['kg', '', '', 'm', 'm'], [900, 0, 15, 250, 400], [1000, 0, 15, 300, 500]];
    const given = day(kilograms, { weight: 2000, altitude: 0, celsius: 15, weightUnit: 'lb', lengthUnit: 'ft' });
    given[4] = 450 / 0.3048;
    const rows = call('TAKEOFF_LIMITS', ...given) as unknown[][];
    expect(rows[0]?.[1]).toBeCloseTo(950 / 0.45359237, 6);
    expect(rows[0]?.[2]).toBe('lb');
  });
});

describe('inputs that a manual does not print', () => {
  const noWeight = [heads, ['', 0, 0, 800, 1400], ['', 0, 40, 1000, 1800]];
  const noTemperature = [heads, [2300, 0, '', 800, 1400], [2300, 4000, '', 1100, 2000]];

  it('no weight: taken at any, and said', () => {
    expect(book(noWeight, { weight: 1234, altitude: 0, celsius: 20 })).toBe(1600);
    expect(verdict(noWeight, { weight: 1234, altitude: 0, celsius: 20 })[2]).toBe(
      '3,400 to spare with the factor 1; the table gives no weight, so its figures are taken at any',
    );
    expect((call('TAKEOFF_LIMITS', ...day(noWeight, { weight: 1234, altitude: 0, celsius: 20 })) as unknown[][])[0]).toEqual([
      'greatest weight',
      'UNKNOWN',
      'as the table',
      'your take-off table gives no weight',
    ]);
  });

  it('no temperature: read at standard, a warm day is CHECK unless a correction counts it', () => {
    const warm = { weight: 2300, altitude: 2000, celsius: standardAt(2000) + 20 };
    expect(verdict(noTemperature, { ...warm, celsius: 0 })).toEqual([
      'verdict',
      'OK',
      '3,300 to spare with the factor 1; the table gives no temperature',
    ]);
    expect(verdict(noTemperature, warm)[1]).toBe('CHECK');
    expect(verdict(noTemperature, warm)[2]).toContain('it is 20 deg C warmer than standard, which no correction "above standard" counts');
    const rows = brief(noTemperature, { ...warm, corrections: [['above standard', 10, 10, '']] });
    expect(rows.get('above standard')?.[1]).toBeCloseTo(20, 1);
    expect(rows.get('verdict')?.[1]).toBe('OK');
  });

  it('a correction for what the table takes itself would count it twice', () => {
    const table = [heads, [2300, 0, 0, 800, 1400], [2300, 0, 40, 1000, 1800]];
    expect(verdict(table, { weight: 2300, altitude: 0, celsius: 20, corrections: [['above standard', 10, 10, '']] })[2]).toBe(
      'corrections must leave out the temperature, which the table takes itself; got "above standard"',
    );
  });
});

describe('other measures of the air', () => {
  it('the difference from standard', () => {
    const table = [
      heads,
      ['', 'ft', 'ISA deviation'],
      ...[0, 4000].flatMap((h) => [-20, 0, 20].map((d) => [2300, h, d, 800 + h / 10 + 5 * d, 1400 + h / 8 + 10 * d])),
    ].map((row) => [...row, ...Array<undefined>(5 - row.length)]);
    expect(book(table, { weight: 2300, altitude: 2000, celsius: standardAt(2000) + 7 })).toBeCloseTo(1400 + 250 + 70, 1);
    expect(verdict(table, { weight: 2300, altitude: 2000, celsius: standardAt(2000) + 21 })[2]).toMatch(
      /^your take-off table is for ISA deviation -20 to 20 deg C; 21(\.00\d*)? deg C is [\d.]+ deg C above it/,
    );
    const limits = call(
      'TAKEOFF_LIMITS',
      ...day(table, { weight: 2300, altitude: 2000, celsius: 10 }).map((cell, index) => (index === 4 ? 1700 : cell)),
    ) as unknown[][];
    expect(limits[2]?.[1]).toBeCloseTo(standardAt(2000) + 5, 2);
  });

  it('density altitude, read by pressure altitude and temperature together', () => {
    const table = [
      ['density altitude', 'over 50 ft'],
      [0, 1000],
      [10000, 2000],
    ];
    const rows = brief(table, { weight: 2300, altitude: 3000, celsius: 30 });
    const density = Number(rows.get('density altitude')?.[1]);
    expect(rows.get('book distance')?.[1]).toBeCloseTo(1000 + density / 10, 6);
    const limits = call(
      'TAKEOFF_LIMITS',
      ...day(table, { weight: 2300, altitude: 3000, celsius: 10 }).map((cell, index) => (index === 4 ? 1600 : cell)),
    ) as unknown[][];
    expect(Number(answer('DENSITY_ALTITUDE', 3000, limits[2]?.[1]).density_altitude)).toBeCloseTo(6000, 3);
  });
});

describe('a two-way block', () => {
  const table = [
    heads,
    ['up to 2300 lb', '', 'ground roll at 0', 'at 20 °C', 'at 40'],
    ['', 0, 800, 900, 1000],
    ['', 4000, 1100, 1250, 1400],
    ['', '', 'over 50 ft at 0', 'at 20', 'at 40'],
    ['', 0, 1400, 1600, 1800],
    ['', 4000, 2000, 2300, 2600],
  ];

  it('reads as the list would, each figure from its own block', () => {
    expect(book(table, { weight: 2300, altitude: 2000, celsius: 10 })).toBeCloseTo((1400 + 1600 + 2000 + 2300) / 4, 9);
    expect(book(table, { weight: 2200, altitude: 4000, celsius: 30, wanted: 'ground roll' })).toBe(1325);
    expect(answer('AFM_READ', table, 'ground roll', 2300, 2000, 10).value).toBe((800 + 900 + 1100 + 1250) / 4);
  });

  it('stands across by differences from standard too', () => {
    const isa = [heads, ['', '', 'over 50 ft at ISA -20', 'at ISA', 'at ISA +20'], ['', 0, 1400, 1600, 1800], ['', 4000, 2000, 2300, 2600]].map(
      (row) => [...row, ...Array<undefined>(5 - row.length)],
    );
    expect(book(isa, { weight: 2300, altitude: 0, celsius: 25 })).toBeCloseTo(1700, 9);
    expect(verdict(isa, { weight: 2300, altitude: 0, celsius: 36 })[2]).toMatch(
      /^your take-off table is for ISA deviation -20 to 20 deg C; 21 deg C is 1 deg C above it/,
    );
  });

  it('is looked over figure by figure', () => {
    expect(answer('AFM_CHECK', table, 3)).toEqual({
      verdict: 'OK',
      reasons: 'grid whole: 1 weight x 2 pressure altitude x 3 temperature; used below the least weight too',
    });
    const hole = table.map((row, index) => (index === 6 ? ['', 4000, 2000, '', 2600] : row));
    expect(answer('AFM_CHECK', hole, 3, [[20], [31], [32], [33], [40], [41], [42]])).toEqual({
      verdict: 'CHECK',
      reasons: expect.stringMatching(/^of the 1 x 2 x 3 grid 1 point is missing: weight 2,300, pressure altitude 4,000, temperature 20/) as string,
    });
  });

  it('refuses words that say nothing', () => {
    const bad = table.map((row, index) => (index === 1 ? ['up to 2300 lb', '', 'ground roll at 0', 'warm', 'at 40'] : row));
    expect(sentenceOf('AFM_READ', bad, 'ground roll', 2300, 0, 0)).toMatch(
      /in a row of words a unit .+; got "warm" under "ground roll" \(row 2, column 4 of table\)\.$/,
    );
  });
});

/** Read apart from our code: along each of two neighbouring curves by its own points, then between the curves. */
function lineThrough(points: readonly (readonly [number, number])[], x: number): number {
  const sorted = [...points].sort(([one], [other]) => one - other);
  const next = sorted.findIndex(([at]) => at >= x);
  const [x2, y2] = sorted[next] ?? [Number.NaN, Number.NaN];
  const [x1, y1] = sorted[Math.max(0, next - 1)] ?? [Number.NaN, Number.NaN];
  return x1 === x2 ? y2 : (y1 * (x2 - x) + y2 * (x - x1)) / (x2 - x1);
}
const between = (
  curves: readonly { readonly at: number; readonly points: readonly (readonly [number, number])[] }[],
  at: number,
  x: number,
): number =>
  lineThrough(
    curves.map((curve) => [curve.at, lineThrough(curve.points, x)] as const),
    at,
  );

const unevenCurve = fc
  .uniqueArray(fc.integer({ min: -19, max: 39 }), { minLength: 0, maxLength: 4 })
  .chain((inner) =>
    fc.tuple(
      fc.constant([-20, ...inner, 40]),
      fc.array(fc.integer({ min: 300, max: 4000 }), { minLength: inner.length + 2, maxLength: inner.length + 2 }),
    ),
  )
  .map(([xs, ys]) => xs.map((x, index) => [x, ys[index] ?? 0] as const));

describe('curves with points of their own', () => {
  const rowsOf = (altitudes: readonly number[], curves: readonly (readonly (readonly [number, number])[])[]): unknown[][] =>
    altitudes.flatMap((altitude, index) => (curves[index] ?? []).map(([x, y]) => [altitude, x, y]));
  const altitudes = [0, 1500, 4000];

  it('reads what straight lines along and between the curves give', () => {
    fc.assert(
      fc.property(
        fc.tuple(unevenCurve, unevenCurve, unevenCurve),
        fc.integer({ min: 0, max: 4000 }),
        fc.integer({ min: -20, max: 40 }),
        (curves, altitude, x) => {
          const table = [['pressure altitude', 'temperature', 'over 50 ft'], ['', 'curve', ''], ...rowsOf(altitudes, curves)];
          const expected = between(
            curves.map((points, index) => ({ at: altitudes[index] ?? 0, points })),
            altitude,
            x,
          );
          const near = altitudes.includes(altitude)
            ? lineThrough(curves[altitudes.indexOf(altitude)] ?? [], x)
            : between(
                [0, 1]
                  .map((step) => Math.max(0, altitudes.findIndex((one) => one > altitude) - 1) + step)
                  .map((index) => ({ at: altitudes[index] ?? 0, points: curves[index] ?? [] })),
                altitude,
                x,
              );
          expect(answer('AFM_READ', table, 'over 50 ft', altitude, x).value).toBeCloseTo(near, 6);
          expect(near).toBeCloseTo(expected, 6);
        },
      ),
      { numRuns: 300 },
    );
  });

  const table = [
    ['pressure altitude', 'temperature', 'over 50 ft'],
    ['', 'curve', ''],
    [0, -20, 1000],
    [0, 5, 1200],
    [0, 40, 1500],
    [2000, -10, 1300],
    [2000, 30, 1700],
  ];
  it('ends where the shorter of two curves ends', () => {
    expect(answer('AFM_READ', table, 'over 50 ft', 0, 35).value).toBeCloseTo(1200 + (300 * 30) / 35, 9);
    expect(sentenceOf('AFM_READ', table, 'over 50 ft', 1000, 35)).toBe(
      'AFM_READ: input_2 must be -10 to 30, the "temperature" rows of the table on its curve of pressure altitude 2,000; got 35, 5 above the table, and nothing is extrapolated.',
    );
  });
  it('without the word "curve" the same rows are a grid with holes, and are not bridged', () => {
    const grid = table.filter((_, row) => row !== 1);
    expect(sentenceOf('AFM_READ', grid, 'over 50 ft', 1000, 10)).toContain('table must hold a whole grid; got no row for');
  });
  it('is looked over curve by curve', () => {
    expect(answer('AFM_CHECK', table, 2)).toEqual({ verdict: 'OK', reasons: 'curves whole: 2 pressure altitude x 5 temperature' });
    expect(answer('AFM_CHECK', [...table, [4000, 0, 1600]], 2).reasons).toBe(
      'a curve has one point alone: pressure altitude 4,000, temperature 0 (row 8)',
    );
  });
});

describe('a chain of curves', () => {
  const guide = (from: number, rows: readonly (readonly [number, number])[]): unknown[][] =>
    rows.map(([weight, value]) => [weight, from, '', '', value]);
  const chain = [
    heads,
    ['', 'ft', 'curve', '', 'ft'],
    ['', 0, -20, '', 1200],
    ['', 0, 40, '', 1800],
    ['', 4000, -20, '', 1800],
    ['', 4000, 30, '', 2600],
    ['lb', 'from', '', '', 'over 50 ft'],
    ...guide(1000, [
      [2300, 1000],
      [2000, 800],
      [1800, 700],
    ]),
    ...guide(2000, [
      [2300, 2000],
      [2100, 1700],
      [1800, 1300],
    ]),
    ...guide(3000, [
      [2300, 3000],
      [1800, 2000],
    ]),
    ['', 'from', 'headwind, kt', '', 'over 50 ft'],
    ...[500, 3000].flatMap((from) =>
      [
        [0, 1],
        [20, 0.7],
        [-10, 1.4],
      ].map(([wind = 0, part = 0]) => ['', from, wind, '', from * part]),
    ),
  ];

  it('goes from curve to curve: temperature and altitude, then weight, then wind', () => {
    const first = between(
      [
        {
          at: 0,
          points: [
            [-20, 1200],
            [40, 1800],
          ],
        },
        {
          at: 4000,
          points: [
            [-20, 1800],
            [30, 2600],
          ],
        },
      ],
      1000,
      10,
    );
    const second = between(
      [
        {
          at: 1000,
          points: [
            [2300, 1000],
            [2000, 800],
            [1800, 700],
          ],
        },
        {
          at: 2000,
          points: [
            [2300, 2000],
            [2100, 1700],
            [1800, 1300],
          ],
        },
      ],
      first,
      2050,
    );
    const third = second * (1 - 0.3 * 0.4);
    expect(book(chain, { weight: 2050, altitude: 1000, celsius: 10, wind: 8 })).toBeCloseTo(third, 6);
    expect(answer('AFM_READ', chain, 'over 50 ft', 2050, 1000, 10, 8).value).toBeCloseTo(third, 6);
  });

  it('counts the wind itself: no CHECK for a tailwind, and no second headwind', () => {
    expect(verdict(chain, { weight: 2050, altitude: 1000, celsius: 10, wind: 0 })[1]).toBe('OK');
    expect(verdict(chain, { weight: 2050, altitude: 1000, celsius: 10, wind: 8, corrections: [['headwind', -10, 9, '']] })).toEqual([
      'verdict',
      'UNKNOWN',
      'corrections must leave out the wind, which the table takes itself; got "headwind"',
    ]);
  });

  it('is never extrapolated in any of its curves', () => {
    expect(verdict(chain, { weight: 2400, altitude: 1000, celsius: 10 })[2]).toMatch(
      /is for weight 1,800 to 2,300 lb on its curve of from 1,000; 2,400 lb is 100 lb above it/,
    );
    expect(verdict(chain, { weight: 2050, altitude: 1000, celsius: 10, wind: 25 })[2]).toMatch(/headwind -10 to 20 kt/);
    const short = chain.filter((row) => row[1] !== 1000 || row[2] !== '');
    expect(verdict(short, { weight: 2050, altitude: 0, celsius: 0 })[2]).toMatch(
      /^your take-off table is for what its next curve is entered with, 2,000 to 3,000/,
    );
  });

  it('finds the greatest weight that comes back to the runway', () => {
    const given = day(chain, { weight: 2050, altitude: 1000, celsius: 10, wind: 8 });
    given[4] = 1300;
    const [weight] = (call('TAKEOFF_LIMITS', ...given) as unknown[][]).map((row) => Number(row[1]));
    expect(book(chain, { weight: weight ?? 0, altitude: 1000, celsius: 10, wind: 8 })).toBeCloseTo(1300, 5);
  });

  it('must give one input beside what it is entered with', () => {
    const bad = [heads, ['', 0, 0, '', 1200], ['', 0, 40, '', 1500], ['lb', 'from', 'headwind', '', 'over 50 ft'], [2300, 1200, 0, '', 1200]];
    expect(sentenceOf('TAKEOFF_BRIEF', ...day(bad, { weight: 2050, altitude: 0, celsius: 10 }))).toContain(
      'has "from" beside more or fewer than one input',
    );
  });
});

describe('notes and corrections of one figure', () => {
  const table = [
    [...heads, 'note'],
    [2300, 0, 0, 800, 1400, ''],
    [2300, 0, 40, 1000, 1800, 'above 30 C with the mixture leaned'],
    [2300, 4000, 0, 1100, 2000, ''],
    [2300, 4000, 40, 1400, 2600, ''],
  ];
  it('prints a note beside the figure that it belongs to, and no other', () => {
    expect(verdict(table, { weight: 2300, altitude: 0, celsius: 20 })[2]).toBe(
      '3,400 to spare with the factor 1; note of the manual: above 30 C with the mixture leaned',
    );
    expect(verdict(table, { weight: 2300, altitude: 4000, celsius: 20 })[2]).not.toContain('note');
  });

  const at = { weight: 2300, altitude: 0, celsius: 0 };
  const corrected = (corrections: unknown, wanted = 'over 50 ft'): unknown =>
    brief(table, { ...at, wanted, corrections }).get('corrected distance')?.[1];
  it('takes a part of the ground roll into both distances', () => {
    expect(corrected([['dry grass, of ground roll', 15, 1, 1]])).toBeCloseTo(1400 + 0.15 * 800, 9);
    expect(corrected([['dry grass, of ground roll', 15, 1, 1]], 'ground roll')).toBeCloseTo(800 * 1.15, 9);
    expect(
      corrected([
        ['slope', 10, 1, 1],
        ['dry grass (15 % of the ground roll)', 15, 1, 1],
      ]),
    ).toBeCloseTo((1400 + 0.15 * 800) * 1.1, 9);
  });
  it('keeps a correction of one distance out of the other', () => {
    const both = [
      ['dry grass, ground roll only', 20, 1, 1],
      ['dry grass, over 50 ft only', 15, 1, 1],
    ];
    expect(corrected(both)).toBeCloseTo(1400 * 1.15, 9);
    expect(corrected(both, 'ground roll')).toBeCloseTo(800 * 1.2, 9);
    expect(
      sentenceOf(
        'TAKEOFF_BRIEF',
        ...day(table, {
          ...at,
          corrections: [
            ['dry grass', 20, 1, 1],
            ['dry grass, of ground roll', 15, 1, 1],
          ],
        }),
      ),
    ).toContain('(each correction once)');
  });
  it('is UNKNOWN where the table gives no ground roll to take a part of', () => {
    const without = table.map((row) => row.filter((_, column) => column !== 3));
    expect(verdict(without, { ...at, corrections: [['dry grass, of ground roll', 15, 1, 1]] })).toEqual([
      'verdict',
      'UNKNOWN',
      'your take-off table must have a column "ground roll", since "dry grass, of ground roll" is a part of it; got "over 50 ft"',
    ]);
  });
  it('reaches RUNWAY_CORRECTIONS and comes out as it went in', () => {
    expect(
      call('RUNWAY_CORRECTIONS', 'takeoff', 'grass, dry', 0, [
        ['dry grass, of ground roll', 15, 1, ''],
        ['above standard', 10, 10, ''],
      ]),
    ).toEqual([
      ['dry grass, of ground roll', 15, 1, 1, 'OK', "the aircraft's manual"],
      ['above standard', 10, 10, '', 'OK', "the aircraft's manual"],
    ]);
  });
});
