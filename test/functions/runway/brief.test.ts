// The runway briefs as a sheet calls them: every row in its place, and no OK without proof.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const table = [
  ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
  [900, 0, 0, 300],
  [900, 0, 30, 360],
  [900, 2000, 0, 360],
  [900, 2000, 30, 430],
  [1100, 0, 0, 420],
  [1100, 0, 30, 500],
  [1100, 2000, 0, 500],
  [1100, 2000, 30, 600],
];
const manual = [
  ['headwind', -10, 9, ''],
  ['tailwind', 10, 2, ''],
];

interface Case {
  readonly weight?: unknown;
  readonly runway?: unknown;
  readonly available?: unknown;
  readonly elevation?: unknown;
  readonly setting?: unknown;
  readonly temperature?: unknown;
  readonly from?: unknown;
  readonly wind?: unknown;
  readonly factor?: unknown;
  readonly corrections?: unknown;
  readonly table?: unknown;
}

const given = (some: Case): unknown[] => {
  const all = {
    table,
    weight: 1000,
    runway: 270,
    available: 800,
    elevation: 0,
    setting: 1013.25,
    temperature: 15,
    from: 270,
    wind: 9,
    factor: '',
    corrections: manual,
    ...some,
  };
  return [
    all.table,
    'over 50 ft',
    all.weight,
    all.runway,
    all.available,
    all.elevation,
    all.setting,
    all.temperature,
    all.from,
    all.wind,
    all.factor,
    all.corrections,
  ];
};
const brief = (some: Case = {}): unknown[][] => call('TAKEOFF_BRIEF', ...given(some)) as unknown[][];
const rowOf = (rows: readonly unknown[][], item: string): unknown[] => rows.filter(([name]) => name === item).at(-1) ?? [];

describe('TAKEOFF_BRIEF', () => {
  it('lays its rows in order, one for each item and each correction', () => {
    const items = ['pressure altitude', 'density altitude', 'headwind', 'crosswind', 'book distance'];
    const ending = ['corrected distance', 'factored distance', 'available', 'margin', 'ratio', 'verdict'];
    expect(brief().map(([item]) => item)).toEqual([...items, 'headwind', 'tailwind', ...ending]);
    expect(brief({ corrections: undefined }).map(([item]) => item)).toEqual([...items, ...ending]);
    expect(
      brief({
        corrections: [
          ['', '', '', ''],
          ['', '', '', ''],
        ],
      }).map(([item]) => item),
    ).toEqual([...items, ...ending]);
    expect(brief().every((row) => row.length === 3)).toBe(true);
  });

  it('agrees with the functions it stands for', () => {
    const rows = brief({ elevation: 1234, setting: 29.7, temperature: 21, from: 240, wind: 14 });
    const altitude = answer('PRESSURE_ALTITUDE', 1234, 29.7).pressure_altitude;
    const wind = answer('WIND_COMPONENTS', 270, 240, 14);
    expect(rowOf(rows, 'pressure altitude')[1]).toBe(altitude);
    expect(rowOf(rows, 'density altitude')[1]).toBe(answer('DENSITY_ALTITUDE', altitude, 21).density_altitude);
    expect(rows[2]).toEqual(['headwind', wind.headwind, 'kt']);
    expect(rows[3]).toEqual(['crosswind', wind.crosswind, 'kt']);
    const book = answer('AFM_READ', table, 'over 50 ft', 1000, altitude, 21).value;
    expect(rowOf(rows, 'book distance')[1]).toBe(book);
    const margin = answer('TAKEOFF_MARGIN', 800, rowOf(rows, 'corrected distance')[1]);
    expect(['factored distance', 'margin', 'ratio', 'verdict'].map((item) => rowOf(rows, item)[1])).toEqual([
      margin.factored,
      margin.margin,
      margin.ratio,
      margin.verdict,
    ]);
  });

  it('shortens for a headwind and lengthens for a tailwind, each by its own row', () => {
    const ahead = brief({ wind: 18 });
    expect(ahead.slice(5, 7)).toEqual([
      ['headwind', -20, 'percent'],
      ['tailwind', 0, 'percent'],
    ]);
    expect(rowOf(ahead, 'corrected distance')[1]).toBeCloseTo(395 * 0.8, 9);
    const behind = brief({ runway: 90, wind: 4 });
    expect(behind.slice(5, 7)).toEqual([
      ['headwind', 0, 'percent'],
      ['tailwind', 20, 'percent'],
    ]);
    expect(rowOf(behind, 'corrected distance')[1]).toBeCloseTo(395 * 1.2, 9);
  });

  it('counts half of a headwind and one and a half of a tailwind where the rows say so (EU 965/2012 CAT.POL.A.305)', () => {
    const rule = [
      ['headwind 50 %', -10, 9, ''],
      ['Tailwind 150 percent', 10, 2, ''],
    ];
    expect(brief({ wind: 18, corrections: rule }).slice(5, 7)).toEqual([
      ['headwind 50 %', -10, 'percent'],
      ['Tailwind 150 percent', 0, 'percent'],
    ]);
    expect(brief({ runway: 90, wind: 4, corrections: rule }).slice(5, 7)).toEqual([
      ['headwind 50 %', 0, 'percent'],
      ['Tailwind 150 percent', 30, 'percent'],
    ]);
  });

  it('does not call a fit OK while a tailwind is not counted', () => {
    for (const corrections of [undefined, [['headwind', -10, 9, '']], [['tailwind', 10, 2, 0]]]) {
      expect(rowOf(brief({ runway: 90, wind: 4, corrections }), 'verdict')).toEqual([
        'verdict',
        'CHECK',
        '207 to spare with the factor 1.5, but 4 kt of tailwind is not counted: corrections has no tailwind row',
      ]);
    }
    expect(rowOf(brief({ runway: 90, wind: 4, available: 100, corrections: undefined }), 'verdict')[1]).toBe('NO');
  });

  it.each([
    { available: 592.5, says: ['verdict', 'OK', '0 to spare with the factor 1.5'] },
    { available: 592.4, says: ['verdict', 'NO', '1 short with the factor 1.5 (needs 593, has 592)'] },
    { available: 0, says: ['verdict', 'NO', '593 short with the factor 1.5 (needs 593, has 0)'] },
    { available: 2592.4, says: ['verdict', 'OK', '1,999 to spare with the factor 1.5'] },
  ])('with $available available says $says', ({ available, says }) => {
    expect(rowOf(brief({ available, wind: 0 }), 'verdict')).toEqual(says);
  });

  it.each([
    {
      why: 'beyond the table',
      some: { elevation: 2100 },
      says: 'your take-off table is for pressure altitude 0 to 2,000 ft; 2,100 ft is 100 ft above it, and nothing is extrapolated',
    },
    {
      why: 'too heavy',
      some: { weight: 1150 },
      says: 'your take-off table is for weight 900 to 1,100; 1,150 is 50 above it, and nothing is extrapolated',
    },
    {
      why: 'too hot',
      some: { temperature: 31 },
      says: 'your take-off table is for temperature 0 to 30 deg C; 31 deg C is 1 deg C above it, and nothing is extrapolated',
    },
    {
      why: 'a missing row',
      some: { table: table.slice(0, -1), elevation: 100 },
      says: 'your take-off table must hold a whole grid; got no row for weight 1,100, pressure altitude 2,000, temperature 30',
    },
    {
      why: 'a blank cell',
      some: { table: [...table.slice(0, -1), [1100, 2000, 30, '']], elevation: 100 },
      says: 'your take-off table must hold a distance of more than 0 in column "over 50 ft"; got a blank at weight 1,100, pressure altitude 2,000, temperature 30 (row 9 of table)',
    },
    {
      why: 'a zero for a distance',
      some: { table: [...table.slice(0, -1), [1100, 2000, 30, 0]], elevation: 100 },
      says: 'your take-off table must hold a distance of more than 0 in column "over 50 ft"; got 0 at weight 1,100, pressure altitude 2,000, temperature 30 (row 9 of table)',
    },
  ])('is UNKNOWN for $why, and still lays every row', ({ some, says }) => {
    const rows = brief(some);
    expect(rows.map(([item]) => item)).toEqual(brief().map(([item]) => item));
    for (const item of ['book distance', 'corrected distance', 'factored distance', 'margin', 'ratio']) expect(rowOf(rows, item)[1]).toBe('UNKNOWN');
    expect(rowOf(rows, 'verdict')).toEqual(['verdict', 'UNKNOWN', says]);
  });

  it.each([
    { some: { temperature: '' }, says: 'temperature_c must be -90 to 60 degrees Celsius; got a blank' },
    { some: { from: '' }, says: 'wind_from_deg must be 0 to 360 degrees, or VRB; got a blank' },
    { some: { weight: [[900], [1000]] }, says: 'in a single cell; got a range of 2 rows x 1 column' },
    {
      some: { table: [...table, table[1]] },
      says: 'table must give each grid point once; got weight 900, pressure altitude 0, temperature 0 in row 2 and again in row 10 of table',
    },
    {
      some: { corrections: [['headwind', -10, 9]] },
      says: 'corrections must be rows of name, percent, per amount, amount; got a range of 1 row x 3 columns',
    },
    {
      some: { corrections: [['grass', 20, 1, '']] },
      says: 'blank only for headwind, tailwind and above standard); got a blank (row 1, column 4 of corrections)',
    },
    {
      some: {
        corrections: [
          ['', '', '', ''],
          ['grass', '', 1, 1],
        ],
      },
      says: 'got a blank (row 2, column 2 of corrections)',
    },
    { some: { corrections: [['grass', 20, 0, 1]] }, says: 'got 0 (row 1, column 3 of corrections)' },
    {
      some: { corrections: [['headwind', 10, 9, '']] },
      says: 'percent of a headwind -1,000 to 0, since it shortens); got 10 (row 1, column 2 of corrections)',
    },
    {
      some: { corrections: [['tailwind', -10, 2, '']] },
      says: 'percent of a tailwind 0 to 1,000, since it lengthens); got -10 (row 1, column 2 of corrections)',
    },
    {
      some: {
        corrections: [
          ['headwind', -10, 9, ''],
          ['Headwind 50%', -10, 9, ''],
        ],
      },
      says: '(each correction once); got "Headwind 50%" again (row 2, column 1 of corrections)',
    },
    { some: { wind: 90 }, says: 'corrections must leave some of the distance; got -100 percent from "headwind"' },
  ])('says $says', ({ some, says }) => {
    const sentence = sentenceOf('TAKEOFF_BRIEF', ...given(some));
    expect(sentence).toMatch(/^TAKEOFF_BRIEF: .+\.$/);
    expect(sentence).toContain(`${says}.`);
  });

  it('never has a better margin when it is hotter, higher or heavier', () => {
    const margin = (some: Case): number => Number(rowOf(brief(some), 'margin')[1]);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 29, noNaN: true }),
        fc.double({ min: 0, max: 1900, noNaN: true }),
        fc.double({ min: 900, max: 1090, noNaN: true }),
        (temperature, elevation, weight) => {
          const here = margin({ temperature, elevation, weight });
          expect(margin({ temperature: temperature + 1, elevation, weight })).toBeLessThan(here);
          expect(margin({ temperature, elevation: elevation + 100, weight })).toBeLessThan(here);
          expect(margin({ temperature, elevation, weight: weight + 10 })).toBeLessThan(here);
        },
      ),
    );
  });
});

describe('LANDING_BRIEF', () => {
  it('is the same but for the factor left out, 1/0.6', () => {
    const takeoff = brief({ factor: 1 / 0.6 });
    expect(call('LANDING_BRIEF', ...given({}))).toEqual(takeoff);
    expect(rowOf(takeoff, 'verdict')[2]).toBe('207 to spare with the factor 1.667');
  });
});

describe('TAKEOFF_MARGIN', () => {
  it('takes an exact fit for a fit, whatever binary rounding makes of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 100, max: 500 }), (required, hundredths) => {
        const available = (required * hundredths) / 100;
        expect(answer('TAKEOFF_MARGIN', available, required, hundredths / 100)).toMatchObject({ verdict: 'OK', margin: 0 });
        expect(answer('TAKEOFF_MARGIN', available - 0.01, required, hundredths / 100).verdict).toBe('NO');
      }),
    );
  });

  it.each([
    { given: [1000, 0], says: 'TAKEOFF_MARGIN: required must be more than 0 and at most 1,000,000 feet or metres; got 0.' },
    { given: [1000, 500, 0.9], says: 'TAKEOFF_MARGIN: factor must be 1 to 5; got 0.9.' },
    { given: [1000, ''], says: 'TAKEOFF_MARGIN: required must be more than 0 and at most 1,000,000 feet or metres; got a blank.' },
  ])('says $says', ({ given: some, says }) => expect(sentenceOf('TAKEOFF_MARGIN', ...some)).toBe(says));
});
