// Published problems of cruise tables by ROUTE_LEGS: the table of 65 per cent power of the FAA's supplements, read between its rows.
// R: what is asked and answered was read in the source; M: from memory, as the other rows of the table are. They are those of
// FAA-CT-8080-2, figure 35 (36 in older editions), 2,800 lb, 2,450 rpm, at deviations from standard of -20, 0 and +20 degrees.
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';

type Row = readonly [feet: number, deviation: number, manifold: number, gallons: number, knots: number, mph: number];
const rows: readonly Row[] = [
  [6000, -20, 19.8, 11.5, 155, 178],
  [8000, -20, 19.5, 11.5, 157, 181],
  [10000, -20, 19.2, 11.5, 160, 184],
  [6000, 0, 20.4, 11.5, 158, 182],
  [8000, 0, 20.2, 11.5, 161, 185],
  [10000, 0, 19.9, 11.5, 163, 188],
  [12000, 0, 18.8, 10.9, 163, 188],
  [4000, 20, 21.3, 11.5, 159, 183],
  [6000, 20, 21.0, 11.5, 161, 185],
  [8000, 20, 20.8, 11.5, 164, 189],
];

/** The rows of one deviation: the problems ask for none between them, and the table here is not whole at others. */
function legAt(feet: number, deviation: number, unit: 'kt' | 'mph', miles = 120): { readonly knots: number; readonly minutes: number; readonly fuel: number } {
  const table = [
    ['power', 'pressure altitude', 'temperature', 'true airspeed', 'fuel flow'],
    ['', '', 'ISA deviation', unit, 'gph'],
    ...rows.filter(([, of]) => of === deviation).map(([altitude, of, , gallons, knots, mph]) => [65, altitude, of, unit === 'kt' ? knots : mph, gallons]),
  ];
  const to = (call('COURSE_POINT', 36, -97, 0, miles) as number[][])[0] ?? [];
  const legs = [
    ['from', 'to', 'altitude'],
    ['A', 'B', feet],
  ];
  const places = [
    ['point', 'latitude', 'longitude'],
    ['A', 36, -97],
    ['B', to[0], to[1]],
  ];
  const winds = [
    ['altitude', 'wind from', 'knots', 'temperature'],
    [feet, 360, 0, 15 - 0.0019812 * feet + deviation],
  ];
  const none = Array<undefined>(9).fill(undefined);
  const given = [legs, places, winds, '2026-06-01', 1200, 500, 5, undefined, table, ...none, 65, undefined, undefined, 'US gal'];
  const [leg = []] = call('ROUTE_LEGS', ...given) as unknown[][];
  return { knots: Number(leg[5]), minutes: Number(leg[13]), fuel: Number(leg[14]) };
}

const knotsFromMph = (mph: number): number => (mph * 1609.344) / 1852;

describe('a cruise table as the FAA prints it', () => {
  it('gives what the handbook reads in it (R: FAA-H-8083-25A, page 10-23, sample problem 7)', () => {
    const { knots, minutes, fuel } = legAt(6000, 20, 'kt');
    expect(Math.abs(knots - 161)).toBeLessThanOrEqual(0.5);
    expect(Math.abs((fuel / minutes) * 60 - 11.5)).toBeLessThanOrEqual(0.05);
  });

  it('gives 11.2 gallons an hour at 11,000 ft on a standard day (M)', () => {
    const { minutes, fuel } = legAt(11000, 0, 'kt');
    expect(Math.abs((fuel / minutes) * 60 - 11.2)).toBeLessThanOrEqual(0.05);
  });

  it('gives 183 miles an hour at 9,500 ft, 36 degrees Fahrenheit colder than standard (M)', () => {
    const { knots } = legAt(9500, -20, 'mph');
    expect(Math.abs(knots - knotsFromMph(183))).toBeLessThanOrEqual(knotsFromMph(0.5));
  });

  it('gives 70.1 gallons for 1,000 NM at 8,000 ft and 22 degrees Celsius (M)', () => {
    // Printed at an indicated 22 degrees, which is 20 above standard in the table.
    expect(Math.abs(legAt(8000, 20, 'kt', 1000).fuel - 70.1)).toBeLessThanOrEqual(0.05);
  });

  it('gives 36.1 gallons for 500 NM at 4,000 ft and 29 degrees Celsius (M)', () => {
    // 500 / 159 x 11.5 is 36.16, which the answer cuts to 36.1: a tenth, its last digit.
    expect(Math.abs(legAt(4000, 20, 'kt', 500).fuel - 36.1)).toBeLessThanOrEqual(0.1);
  });
});

describe('the same table read alone', () => {
  it('gives 20.95 inches, answered as 21.0, at 6,500 ft and 36 degrees Fahrenheit warmer (R: AOPA training tip of 29 March 2019)', () => {
    const table = [['pressure altitude', 'manifold pressure'], ...rows.filter(([, of]) => of === 20).map(([feet, , manifold]) => [feet, manifold])];
    expect(Number(call('AFM_READ', table, 'manifold pressure', 6500))).toBeCloseTo(20.95, 9);
  });
});
