// ROUTE_LEGS as a sheet calls it: what is wrong with a leg stands in its row, later legs still show their course, nothing unknown is 0.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

type Rows = readonly (readonly unknown[])[];
const columns =
  'leg part from to altitude_ft true_airspeed wind_from wind_kt true_course variation magnetic_heading distance_nm groundspeed minutes fuel time_over fuel_left fuel_wanted verdict reason'.split(
    ' ',
  );

const fields: Rows = [
  ['field', 'latitude', 'longitude', 'elevation, ft', 'station'],
  ['Amberly', 48, -100, 1200, 'XXAA'],
  ['Birch', 48, -98, 900, ''],
  ['Cold Lake', 49, -98, 800, ''],
  ['Dun', '', -97, 800, ''],
];
const points: Rows = [
  ['point', 'position'],
  ['Mill', 'N48 30 W099 00'],
];
const winds: Rows = [
  ['altitude, ft', 'wind from, true', 'wind, kt', 'temperature, C'],
  [0, 270, 10, 12],
  [3000, 280, 15, 8],
  [9000, 300, 30, -4],
];
const head = ['from', 'to', 'altitude, ft', 'true airspeed, kt', 'fuel flow, an hour', 'power'];
const climb: Rows = [
  ['pressure altitude', 'minutes', 'fuel', 'distance'],
  [0, 0, 0, 0],
  [6000, 10, 2, 14],
  [9000, 17, 3.2, 25],
];
const descent: Rows = [
  [9000, 120, 500],
  [3000, 100, 500],
];

interface Given {
  readonly legs?: Rows;
  readonly winds?: Rows;
  readonly fuel?: number;
  readonly more?: readonly unknown[];
}

const two: Rows = [
  ['Amberly', 'Mill', 6500, 110, 9],
  ['', 'Cold Lake', 6500, 110, 9],
];

function rows({ legs = two, winds: air = winds, fuel = 40, more = [undefined, climb, descent] }: Given = {}): Record<string, unknown>[] {
  const table = [head, ...legs.map((leg) => [...leg, ...Array<unknown>(head.length - leg.length).fill('')])];
  const got = call('ROUTE_LEGS', table, fields, air, '2026-06-01', 1200, fuel, 6, points, ...more) as unknown[][];
  return got.map((row) => Object.fromEntries(columns.map((column, index) => [column, row[index]])));
}

const row = (all: readonly Record<string, unknown>[], leg: unknown): Record<string, unknown> => all.find((one) => one['leg'] === leg) ?? {};
const sum = (all: readonly Record<string, unknown>[], column: string): number =>
  all.filter(({ part }) => part !== '' && part !== undefined).reduce((total, one) => total + Number(one[column]), 0);

describe('a whole route', () => {
  it('sets in the tops of climb and of descent by itself', () => {
    expect(rows().map(({ leg, part, from, to }) => [leg, part, from, to])).toEqual([
      [1, 'climb', 'Amberly', 'top of climb'],
      [1, 'cruise', 'top of climb', 'Mill'],
      [2, 'cruise', 'Mill', 'top of descent'],
      [2, 'descent', 'top of descent', 'Cold Lake'],
      ['total', '', 'Amberly', 'Cold Lake'],
      ['equal time', '', '', ''],
      ['safe return', '', '', ''],
    ]);
  });

  it('adds up', () => {
    const all = rows();
    const total = row(all, 'total');
    const parts = all.filter(({ leg }) => typeof leg === 'number');
    for (const column of ['distance_nm', 'minutes', 'fuel']) expect(sum(parts, column)).toBeCloseTo(Number(total[column]), 9);
    expect(Number(total['fuel_left'])).toBeCloseTo(40 - Number(total['fuel']), 9);
    expect(total['fuel_wanted']).toBe(6);
    expect(total['verdict']).toBe('OK');
    // At each part the wanted fuel and what is burned from there on come to the same.
    expect(Number(parts[0]?.['fuel_wanted'])).toBeCloseTo(Number(total['fuel']) - Number(parts[0]?.['fuel']) + 6, 9);
  });

  it('is the wind triangle and the variation of the other functions', () => {
    const cruise = rows({ more: [] })[0] ?? {};
    const { heading, groundspeed } = answer('WIND_TRIANGLE', cruise['true_course'], 110, cruise['wind_from'], cruise['wind_kt']);
    expect(Number(cruise['groundspeed'])).toBeCloseTo(Number(groundspeed), 2);
    expect(Number(cruise['magnetic_heading'])).toBeCloseTo((Number(heading) - Number(cruise['variation']) + 360) % 360, 2);
    expect(Number(cruise['variation'])).toBeCloseTo(Number(call('MAGNETIC_VARIATION', 48.2514, -99.5024, '2026-06-01', 6500)), 2);
  });

  it('reads true airspeed and flow of a leg that has none in the cruise table', () => {
    const cruise: Rows = [
      ['power', 'pressure altitude', 'temperature', 'true airspeed', 'fuel flow'],
      ...[55, 75].flatMap((power) =>
        [2000, 10000].flatMap((feet) => [-10, 20].map((celsius) => [power, feet, celsius, 60 + power + feet / 1000, power / 8])),
      ),
    ];
    const [first = {}] = rows({ legs: [['Amberly', 'Mill', 6000, '', '', 65]], more: [cruise] });
    expect(Number(first['true_airspeed'])).toBeCloseTo(60 + 65 + 6, 9);
    expect(Number(first['fuel'])).toBeCloseTo((Number(first['minutes']) / 60) * (65 / 8), 9);
    expect(rows({ legs: [['Amberly', 'Mill', 6000, '', '', '']], more: [cruise] })[0]).toMatchObject({
      verdict: 'UNKNOWN',
      reason: 'the cruise table is read by power, which must be given; got none',
    });
    expect(String(rows({ legs: [['Amberly', 'Mill', 6000, '', '', 90]], more: [cruise] })[0]?.['reason'])).toContain('nothing is extrapolated');
    expect(rows({ legs: [['Amberly', 'Mill', 6000]], more: [] })[0]).toMatchObject({
      verdict: 'UNKNOWN',
      minutes: '',
      reason: 'true airspeed must be typed or read in a table of the aircraft; got neither',
    });
  });

  it('climbs by a table of rates with the weight, the speed and the flow beside it', () => {
    const rates: Rows = [
      ['weight', 'pressure altitude', 'temperature', 'rate of climb'],
      ...[2000, 2400].flatMap((weight) =>
        [0, 8000].flatMap((feet) => [-20, 30].map((celsius) => [weight, feet, celsius, 800 - feet / 20 - (weight - 2000) / 4])),
      ),
    ];
    const more = (weight: unknown, knots: unknown, flow: unknown): readonly unknown[] => [undefined, rates, descent, undefined, weight, knots, flow];
    const [first = {}] = rows({ more: more(2200, 80, 14) });
    expect(first).toMatchObject({ part: 'climb', altitude_ft: 6500 });
    // The rate is 750 - feet / 20: the time is 20 ln of the rates at both ends.
    expect(Number(first['minutes'])).toBeCloseTo(20 * Math.log((750 - 60) / (750 - 325)), 1);
    expect(Number(first['fuel'])).toBeCloseTo((Number(first['minutes']) * 14) / 60, 9);
    expect(String(rows({ more: more('', 80, 14) })[0]?.['reason'])).toBe('the climb table is read by weight, which must be given; got none');
    expect(String(rows({ more: more(2200, '', 14) })[0]?.['reason'])).toBe(
      'indicated airspeed in the climb must be typed or read in a table of the aircraft; got neither',
    );
  });

  it('steps between levels from the beginning of a leg', () => {
    const legs = [
      ['Amberly', 'Mill', 6500, 110, 9],
      ['', 'Birch', 8500, 110, 9],
      ['', 'Cold Lake', 5000, 110, 9],
    ];
    expect(
      rows({ legs })
        .map(({ leg, part, altitude_ft }) => [leg, part, altitude_ft])
        .slice(0, 7),
    ).toEqual([
      [1, 'climb', 6500],
      [1, 'cruise', 6500],
      [2, 'climb', 8500],
      [2, 'cruise', 8500],
      [3, 'step down', 5000],
      [3, 'cruise', 5000],
      [3, 'descent', 1800],
    ]);
  });

  it('flies on to the alternate from overhead, and wants its fuel all the way', () => {
    const all = rows({ more: [undefined, climb, descent, 'Birch'] });
    const alternate = row(all, 'alternate');
    expect(alternate).toMatchObject({ from: 'Cold Lake', to: 'Birch', verdict: 'OK', fuel_wanted: 6 });
    expect(Number(row(all, 'total')['fuel_wanted'])).toBeCloseTo(6 + Number(alternate['fuel']), 9);
    expect(row(rows({ more: [undefined, climb, descent, 'Nowhere'] }), 'total')).toMatchObject({ verdict: 'UNKNOWN', fuel_wanted: '' });
  });

  it('finds where the way back takes as long, and how far the fuel lasts back', () => {
    const legs = [['Amberly', 'Birch', 6500, 110, 9]];
    const all = rows({ legs, more: [] });
    const [on, whole] = [Number(all[0]?.['groundspeed']), Number(all[0]?.['distance_nm'])];
    const back = Number(
      answer('WIND_TRIANGLE', Number(all[0]?.['true_course']) - 180 + 360, 110, all[0]?.['wind_from'], all[0]?.['wind_kt'])['groundspeed'],
    );
    expect(Number(row(all, 'equal time')['distance_nm'])).toBeCloseTo(Number(answer('EQUAL_TIME_POINT', whole, on, back)['distance_nm']), 1);
    const little = rows({ legs, more: [], fuel: 12 });
    expect(Number(row(little, 'safe return')['distance_nm'])).toBeCloseTo(Number(answer('SAFE_RETURN_POINT', 40, on, back)['distance_nm']), 1);
    expect(row(all, 'safe return')).toMatchObject({ distance_nm: '', reason: 'not before Birch: the fuel lasts for the way back from there' });
  });

  it('says NO where less is left than wanted, by how much', () => {
    const total = row(rows({ fuel: 10 }), 'total');
    expect(total).toMatchObject({ verdict: 'NO' });
    expect(total['reason']).toMatch(/^leg 1: \d+(\.\d)? of fuel short of what is still wanted$/);
  });

  it('takes the wind of the nearest place, and is CHECK where that is far away', () => {
    const near: Rows = [
      ['place', 'altitude', 'wind from', 'knots'],
      ['Amberly', 6500, 360, 20],
      ['Birch', 6500, 180, 30],
      ['N20 W100', 6500, 90, 90],
    ];
    const all = rows({
      winds: near,
      legs: [
        ['Amberly', 'N48 W099 30', 6500, 110, 9],
        ['', 'Birch', 6500, 110, 9],
      ],
      more: [],
    });
    expect(all.slice(0, 2).map((one) => Number(one['wind_kt']).toFixed(3))).toEqual(['20.000', '30.000']);
    const far = rows({ winds: near, legs: [['N55 W100', 'N56 W100', 6500, 110, 9]], more: [] });
    expect(far[0]).toMatchObject({ verdict: 'CHECK' });
    expect(far[0]?.['reason']).toMatch(/^the wind is that of Amberly, 4\d\d NM away$/);
    expect(
      sentenceOf('ROUTE_LEGS', [head, ['Amberly', 'Birch', 6500, 110, 9, '']], fields, [...near, ['', 3000, 90, 10]], '2026-06-01', 1200, 40, 6),
    ).toContain('winds must name a place in each of their rows, or in none; got both');
  });

  it('is CHECK without a climb table, since the climb is flown as cruise', () => {
    expect(row(rows({ more: [] }), 'total')).toMatchObject({ verdict: 'CHECK', reason: 'no climb table: the climb is flown as cruise' });
  });
});

describe('what is wrong with a leg', () => {
  const broken = (leg: readonly unknown[], given: Given = {}): Record<string, unknown>[] =>
    rows({ legs: [two[0] ?? [], leg, ['Birch', 'Cold Lake', 6500, 110, 9]], ...given });

  it.each([
    [
      ['', 'Nowhere', 6500, 110, 9],
      'a place of the route must be a name in the lists of places, or a position with its letters or signs; got "Nowhere"',
    ],
    [['', 'Dun', 6500, 110, 9], 'each place flown to must have a position that can be read; got none for "Dun"'],
    [['', 'Birch', 'high', 110, 9], 'altitude must be -1,500 to 60,000 feet; got "high"'],
    [['', 'Birch', 6500, 5, 9], 'true airspeed must be 20 to 600 knots; got 5'],
    [['', 'Birch', 6500, 110, 0], 'fuel flow must be more than 0 and at most 100,000 an hour; got 0'],
    [['Amberly', 'Birch', 6500, 110, 9], 'each leg must begin where the one before it ends, at "Mill"; got "Amberly"'],
    [['', 'Birch', 12500, 110, 9], 'winds must reach'],
    [['', 'N48 30 W099', 6500, 110, 9], 'same'],
  ])('%j', (leg, reason) => {
    const all = broken(leg);
    const bad = row(all, 2);
    expect(bad).toMatchObject({ verdict: 'UNKNOWN', minutes: '', fuel: '', fuel_left: '', time_over: '' });
    expect(String(bad['reason'])).toContain(reason);
    // The leg behind still has its course and its minutes, but no time and no fuel.
    expect(row(all, 3)).toMatchObject({ fuel_left: '', time_over: '', verdict: 'UNKNOWN' });
    expect(row(all, 'total')).toMatchObject({ minutes: '', fuel: '', fuel_left: '', verdict: 'UNKNOWN' });
    expect(row(all, 'equal time')).toMatchObject({ distance_nm: '', minutes: '' });
  });

  it('stands in the first leg where the field has no elevation to climb from', () => {
    expect(rows({ legs: [['N48 W101', 'Mill', 6500, 110, 9]] })[0]).toMatchObject({
      verdict: 'UNKNOWN',
      reason: 'the climb and the descent must know the elevation of the field; got none for "N48 W101"',
    });
  });

  it('tells a route that is too short for its level', () => {
    const all = rows({ legs: [['Amberly', 'N48 W099 45', 8500, 110, 9]], more: [undefined, climb, []] });
    expect(all[0]).toMatchObject({ part: 'climb' });
    const short = rows({ legs: [['N48 15 W098', 'Birch', 8500, 110, 9]], more: [undefined, climb, descent] });
    expect(String(short[0]?.['reason'])).toMatch(/elevation|too short/);
  });

  it('tells a wind that the aircraft cannot fly against', () => {
    const gale: Rows = [
      ['altitude', 'wind from', 'knots'],
      [6500, 90, 150],
    ];
    expect(rows({ winds: gale, more: [], legs: [['Amberly', 'Birch', 6500, 110, 9]] })[0]).toMatchObject({ verdict: 'UNKNOWN' });
  });

  it('refuses a route of more than twenty legs, and a table without its heads', () => {
    const many = Array.from({ length: 21 }, (_, index) => [
      index % 2 === 0 ? 'Amberly' : 'Birch',
      index % 2 === 0 ? 'Birch' : 'Amberly',
      6500,
      110,
      9,
    ]);
    expect(() => rows({ legs: many })).toThrow('ROUTE_LEGS: legs must be a table of 1 to 20 legs under one header row; got 21 legs');
    expect(() =>
      rows({
        winds: [
          ['height', 'wind from', 'knots'],
          [0, 270, 10],
        ],
      }),
    ).toThrow('with a column "altitude, ft"');
  });

  it('refuses a name with two positions', () => {
    const twice = [...fields, ['Birch', 47, -98, 900, '']];
    const got = call('ROUTE_LEGS', [head, ['Amberly', 'Birch', 6500, 110, 9, '']], twice, winds, '2026-06-01', 1200, 40, 6) as unknown[][];
    expect(got[0]?.[19]).toBe('each place must have one position; got "Birch" with two');
  });
});
