// Published tables and test questions that need a table, which the rows of the .txt files cannot carry.
import { describe, expect, it } from 'vitest';
import { answer, call } from '../../support/call';

const withinHalf = (got: unknown, printed: number): void => expect(Math.abs(Number(got) - printed)).toBeLessThanOrEqual(0.5 * (1 + 1e-9));

describe("take-off ground roll, Pilot's Handbook of Aeronautical Knowledge (FAA-H-8083-25A page 10-19)", () => {
  const table = [['pressure altitude', 'ground roll'], [2000, 1115], [3000, 1230]];
  it('TL-01: between 1,115 ft at 2,000 ft and 1,230 ft at 3,000 ft it is 1,173 ft at 2,500 ft (R +C)', () => {
    withinHalf(answer('AFM_READ', table, 'ground roll', 2500).value, 1173);
  });
});

/**
 * FAA private pilot knowledge test supplement, figure 38: landing distance at standard temperature, 10 percent less for
 * each 4 knots of headwind, 10 percent more for each 60 degrees Fahrenheit above standard.
 * The row of 7,500 ft and the three answers marked R* were read in a copy of the question bank; the rest is from memory (M).
 */
const figure38 = [
  ['pressure altitude', 'ground roll', 'over 50 ft'],
  [0, 445, 1075],
  [2500, 470, 1135],
  [5000, 495, 1195],
  [7500, 515, 1255],
];

describe('landing distance, FAA private pilot test, figure 38', () => {
  it.each([
    { id: 'TL-02 (R* +C)', wanted: 'over 50 ft', altitude: 7500, headwind: 8, printed: 1004 },
    { id: 'TL-04 (R* +C)', wanted: 'ground roll', altitude: 1250, headwind: 8, printed: 366 },
    { id: 'TL-04, before the wind (R* +C)', wanted: 'ground roll', altitude: 1250, headwind: 0, printed: 457 },
    { id: 'M: 3,750 ft, 12 knots', wanted: 'over 50 ft', altitude: 3750, headwind: 12, printed: 816 },
    { id: 'M: 5,000 ft, 8 knots', wanted: 'over 50 ft', altitude: 5000, headwind: 8, printed: 956 },
  ])('$id: $wanted at $altitude ft with $headwind kt is $printed ft', ({ wanted, altitude, headwind, printed }) => {
    const book = Number(answer('AFM_READ', figure38, wanted, altitude).value);
    // The brief reads the same distance from a table of its own form: one weight, one temperature.
    const table = [['weight', 'pressure altitude', 'temperature', wanted], [1600, altitude, 0, book]];
    const brief = call('LANDING_BRIEF', table, wanted, 1600, 0, 5000, altitude, 1013.25, 0, 0, headwind, '', [['headwind', -10, 4, '']]) as unknown[][];
    withinHalf(brief.find(([item]) => item === 'corrected distance')?.[1], printed);
  });

  it('M: 5,000 ft, calm, 101 degrees Fahrenheit (60 above standard): ground roll 545 ft', () => {
    const table = [['weight', 'pressure altitude', 'temperature', 'ground roll'], [1600, 5000, 38, 495]];
    const brief = call('LANDING_BRIEF', table, 'ground roll', 1600, 0, 5000, 5000, 1013.25, 38, 0, 0, '', [['above standard', 10, 60, 60]]) as unknown[][];
    withinHalf(brief.find(([item]) => item === 'corrected distance')?.[1], 545);
  });
});

describe('UK CAA Safety Sense Leaflet 7, worked example', () => {
  it('SF-12: 390 m x 1.2 x 1.1 x 1.05 x 1.1 x 1.33 is 791 m (M +C)', () => {
    const table = [['mass', 'pressure altitude', 'temperature', 'run'], [1000, 500, 25, 390]];
    const corrections = [['dry grass', 20, 1, 1], ['slope', 10, 2, 2], ['elevation', 10, 1000, 500], ['temperature', 10, 10, 10]];
    const brief = call('TAKEOFF_BRIEF', table, 'run', 1000, 90, 900, 500, 1013.25, 25, 90, 0, 1.33, corrections) as unknown[][];
    withinHalf(brief.find(([item]) => item === 'factored distance')?.[1], 791);
  });
});
