// ROUTE_LEVELS as a sheet calls it: answers beside their legs, cold air by the formula of ICAO Doc 8168 and no further than it is published.
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';

type Rows = readonly (readonly unknown[])[];
const head = ['from', 'to', 'altitude, ft', 'true airspeed', 'fuel flow', 'power', 'highest ground', 'clearance'];
const fields: Rows = [
  ['field', 'latitude', 'longitude', 'elevation, ft'],
  ['Amberly', 48, -100, 1200],
  ['Birch', 48, -98, 900],
];
const airOf = (...temperatures: readonly (number | string)[]): Rows => [
  ['altitude', 'wind from', 'knots', 'temperature'],
  ...temperatures.map((temperature, index) => [index * 4000, 270, 10, temperature]),
];
/** Standard air at 0, 4,000 and 8,000 ft, and colder by so much. */
const colder = (by: number): Rows => airOf(15 - by, 15 - 7.925 - by, 15 - 15.85 - by);
const leg = (ground: unknown, clearance: unknown = 1000, altitude = 6500): unknown[] => ['Amberly', 'Birch', altitude, 110, 9, '', ground, clearance];
const levels = (legs: Rows, air: Rows = colder(0), ...more: readonly unknown[]): unknown[][] =>
  call('ROUTE_LEVELS', [head, ...legs], fields, air, ...more) as unknown[][];

describe('each leg at its level', () => {
  it('answers beside the rows, blank ones too', () => {
    const blank = head.map(() => '');
    const rows = levels([blank, leg(3000), blank, ['', 'Amberly', 5500, 105, 8, '', 3000, 1000]]);
    expect(rows.map(([knots]) => knots)).toEqual(['', 110, '', 105]);
    expect(rows[1]?.slice(2)).toEqual([0, 2500, 'OK', '2,500 ft more than wanted; speed and flow typed']);
  });

  it('takes the level itself for enough, and a foot less for too low', () => {
    expect(levels([leg(5500)])[0]?.[4]).toBe('OK');
    expect(levels([leg(5501)])[0]?.slice(3)).toEqual([-1, 'NO', '1 ft too low: ground 5,501 + clearance 1,000; speed and flow typed']);
  });

  it('counts cold air above the lower of the two ends, by the formula, to the foot', () => {
    // By hand: 2,100 ft above Birch at 900 ft; at sea level -15, so 2,100 x 30 / (273 - 15 - 0.00099 x (2,100 + 900)) = 247.0.
    const [row] = levels([leg(2000)], colder(30));
    expect(Number(row?.[2])).toBeCloseTo(247.03, 1);
    expect(Number(row?.[3])).toBeCloseTo(6500 - 2000 - 1000 - 247.03, 1);
    // 1,800 ft above a source of 1,200 ft asks for less.
    expect(Number(levels([leg(2000)], colder(30), undefined, undefined, 1200)[0]?.[2])).toBeLessThan(212);
  });

  it('takes the coldest air at the level or below it', () => {
    const inversion = airOf(-20, 15 - 7.925, 15 - 15.85);
    expect(Number(levels([leg(2000)], inversion)[0]?.[2])).toBeGreaterThan(270);
    const above = airOf(15, 15 - 7.925, -40);
    expect(levels([leg(2000, 1000, 4000)], above)[0]?.[2]).toBe(0);
  });

  it.each([
    ['higher above the source than the correction is published', leg(5200, 800, 8000), colder(10), 'at most 5,000 feet above the altimeter'],
    ['colder than the correction is published', leg(2000), colder(70), 'must be -50 degrees or warmer'],
    ['no temperature at the level', leg(2000), airOf('', '', ''), 'the temperature at 6,500 feet must stand among the winds'],
    ['a temperature only below the level', leg(2000), airOf(5, 0, ''), 'the temperature at 6,500 feet must stand among the winds'],
    ['no ground', leg(''), colder(0), 'the highest ground is not typed'],
    ['a ground of a digit too many', leg(31000), colder(0), 'highest ground must be -1,500 to 30,000 feet'],
    ['no clearance', leg(2000, ''), colder(0), 'no clearance is typed, for this leg or for all'],
    ['a clearance that is a word', leg(2000, 'high'), colder(0), 'clearance must be 0 to 10,000 feet'],
  ])('is UNKNOWN with %s', (_, row, air, reason) => {
    const [answer] = levels([row], air);
    expect(answer?.[4]).toBe('UNKNOWN');
    expect(String(answer?.[5])).toContain(reason);
    expect(answer?.[3]).toBe('');
  });

  it('needs no elevation in warm air, and says which is missing in cold', () => {
    const nowhere: Rows = [
      ['field', 'latitude', 'longitude', 'elevation, ft'],
      ['Amberly', 48, -100, ''],
      ['Birch', 48, -98, ''],
    ];
    const of = (air: Rows): unknown[] => (call('ROUTE_LEVELS', [head, leg(2000)], nowhere, air) as unknown[][])[0] ?? [];
    expect(of(colder(0))[4]).toBe('OK');
    expect(String(of(colder(9))[5])).toContain("the elevation of the altimeter's source must be given in air 9 degrees colder than standard");
  });

  it('says nothing of the ground where it is not judged', () => {
    expect(levels([leg('')], colder(0), undefined, 'no')[0]).toEqual([110, 9, '', '', 'not judged', 'speed and flow typed']);
  });
});

describe('the cruise of a leg', () => {
  const table: Rows = [
    ['power', 'pressure altitude', 'temperature', 'true airspeed', 'fuel flow'],
    ['', '', 'ISA deviation', 'mph', 'L'],
    ...[55, 65].flatMap((power) => [4000, 8000].flatMap((feet) => [0, 20].map((above) => [power, feet, above, power + 60 + feet / 1000, power / 2]))),
  ];
  const open = (power: unknown = '', altitude = 6000): unknown[] => ['Amberly', 'Birch', altitude, '', '', power, 2000, 1000];
  const flown = (row: unknown[], air: Rows, power: unknown, fuelUnit: unknown, knots: unknown = '', flow: unknown = ''): unknown[] =>
    levels([row], air, 1000, 'yes', undefined, undefined, table, undefined, power, knots, flow, fuelUnit)[0] ?? [];

  it('is read by power, level and deviation, in knots and in the unit of the route', () => {
    const [knots, flow, , , , reason] = flown(open(60), colder(-10), '', 'US gal');
    expect(Number(knots)).toBeCloseTo((126 * 1609.344) / 1852, 9);
    expect(Number(flow)).toBeCloseTo(30 / 3.785411784, 9);
    expect(reason).toContain('speed and flow of the cruise table at power 60');
    expect(Number(flown(open(), colder(-10), 65, 'L')[1])).toBeCloseTo(32.5, 9);
  });

  it.each([
    ['a power beyond its rows', open(75), colder(-10), '', 'L', 'nothing is extrapolated'],
    ['a level beyond its rows', open(60, 3000), colder(-10), '', 'L', 'nothing is extrapolated'],
    ['colder air than its rows', open(60), colder(1), '', 'L', 'nothing is extrapolated'],
    ['no power and no other figure', open(), colder(-10), '', 'L', 'the cruise table is read by power, which must be given'],
    ['a unit of fuel that nobody has given', open(60), colder(-10), '', '', 'fuel in the unit of the aircraft list; L is another'],
    ['fuel by weight', open(60), colder(-10), '', 'lb', 'fuel in the unit of the aircraft list; L is another'],
    ['no temperature', open(60), airOf('', '', ''), '', 'L', 'the cruise table is read by ISA deviation, which must be given'],
  ])('is UNKNOWN with %s', (_, row, air, power, unit, reason) => {
    const answer = flown(row, air, power, unit);
    expect(answer.slice(0, 2)).toEqual(['', '']);
    expect(answer[4]).toBe('UNKNOWN');
    expect(String(answer[5])).toContain(reason);
  });

  it('is that of the aircraft list without a power, and never where the table fails', () => {
    const [knots, flow, , , , reason] = flown(open(), colder(-10), '', 'L', 118, 30);
    expect([knots, flow]).toEqual([118, 30]);
    expect(reason).toContain('speed and flow of the aircraft list');
    expect(flown(open(75), colder(-10), '', 'L', 118, 30)[4]).toBe('UNKNOWN');
  });
});
