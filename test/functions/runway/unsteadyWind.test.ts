// TAKEOFF_BRIEF and LANDING_BRIEF in a wind that gusts or varies: by hand, and never longer to spare than in any steady wind it can be.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

const table = [
  ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
  [1000, 0, 15, 400],
];
const corrections = [
  ['headwind', -10, 10, ''],
  ['tailwind', 10, 2, ''],
];
/** Runway 27 at sea level on a standard day. */
const given = (from: unknown, wind: number, ...unsteady: readonly unknown[]): unknown[] => [
  table,
  'over 50 ft',
  1000,
  270,
  900,
  0,
  1013.25,
  15,
  from,
  wind,
  1,
  corrections,
  ...unsteady,
];
/** A correction for wind has the name of the wind's own row, which stands first. */
const rowsOf = (...of: Parameters<typeof given>): Map<unknown, unknown[]> =>
  new Map((call('TAKEOFF_BRIEF', ...given(...of)) as unknown[][]).map((row) => [row[0], row] as const).reverse());
const value = (item: string, ...of: Parameters<typeof given>): number => rowsOf(...of).get(item)?.[1] as number;

describe('a wind that gusts or varies', () => {
  it('counts no more headwind than the steady wind, but the crosswind of the gust', () => {
    expect(value('headwind', 270, 10, 25)).toBeCloseTo(10, 9);
    expect(value('crosswind', 300, 10, 20)).toBeCloseTo(10, 9);
    expect(value('corrected distance', 270, 10, 25)).toBeCloseTo(360, 9);
  });

  it('counts the tailwind of the gust', () => {
    expect(value('headwind', 90, 4, 10)).toBeCloseTo(-10, 9);
    expect(value('corrected distance', 90, 4, 10)).toBeCloseTo(600, 9);
  });

  it('takes the worst of a range of directions: 140V300 leaves 10 kt x cos 130 on runway 27, and 10 kt across at 180', () => {
    expect(value('headwind', 220, 10, '', 140, 300)).toBeCloseTo(-6.427876, 6);
    expect(Math.abs(value('crosswind', 220, 10, '', 140, 300))).toBeCloseTo(10, 9);
  });

  it('takes VRB from behind and from the side in full', () => {
    expect(value('headwind', 'VRB', 5)).toBeCloseTo(-5, 9);
    expect(Math.abs(value('crosswind', 'vrb', 5))).toBeCloseTo(5, 9);
  });

  it('names the unit of lengths where it is given', () => {
    expect(rowsOf(270, 0, '', '', '', 'm').get('book distance')?.[2]).toBe('m');
    expect(rowsOf(270, 0, '', '', '', 'm').get('verdict')).toEqual(['verdict', 'OK', '500 m to spare with the factor 1']);
  });

  it('refuses a gust below the wind, half a range, and no direction at all', () => {
    expect(sentenceOf('TAKEOFF_BRIEF', ...given(270, 10, 5))).toContain('gust_kt must be');
    expect(sentenceOf('TAKEOFF_BRIEF', ...given(270, 10, '', 140))).toContain('variable_to_deg must be given with its other end');
    expect(sentenceOf('LANDING_BRIEF', ...given('', 10))).toContain('wind_from_deg must be');
  });

  it('never leaves more than any steady wind within its range and its gusts would', () => {
    const degrees = fc.integer({ min: 0, max: 359 });
    fc.assert(
      fc.property(
        degrees,
        fc.integer({ min: 1, max: 180 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 20 }),
        (start, width, part, wind, more) => {
          const [from, to] = [start, (start + width) % 360];
          const within = (start + width * part) % 360;
          const worst = value('corrected distance', within, wind, wind + more, from, to);
          expect(worst).toBeGreaterThanOrEqual(value('corrected distance', within, wind) - 1e-9);
        },
      ),
      { seed: 9, numRuns: 400 },
    );
  });
});
