// Crossing restrictions: the path against one found by trying every start, and the cases that pilots meet.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { descentCrossings, type Crossing, type CrossingKind } from '../../../core/descent/crossings';
import { call } from '../../support/call';

const gradient = 318.436; // feet a mile at 3.0 degrees: 6076.115 x tan(3), by hand
const crossing = (distanceNauticalMiles: number, altitudeFeet: number, kind: CrossingKind = 'at'): Crossing => ({
  distanceNauticalMiles,
  altitudeFeet,
  kind,
});

describe('crossing restrictions', () => {
  it('one alone starts where the straight path does', () => {
    const { outcomes, binding } = descentCrossings([crossing(40, 7000)], 15350, 3);
    expect(outcomes[0]?.startNauticalMiles).toBeCloseTo(40 - 8350 / gradient, 3);
    expect(outcomes[0]).toMatchObject({ reachedFeet: 7000, missFeet: 0 });
    expect(binding).toBe(0);
  });

  it('the one that asks for the earliest start binds, wherever it stands', () => {
    expect(descentCrossings([crossing(60, 3000), crossing(30, 9000), crossing(20, 13000, 'at or above')], 15000, 3).binding).toBe(1);
    expect(descentCrossings([crossing(60, 3000), crossing(30, 14000), crossing(20, 13000, 'at or above')], 15000, 3).binding).toBe(0);
  });

  it('flies level after an early restriction and then down again', () => {
    const { outcomes } = descentCrossings([crossing(30, 9000), crossing(60, 8000), crossing(57, 8500, 'at or above')], 15000, 3);
    expect(outcomes.map(({ missFeet }) => missFeet)).toEqual([0, 0, 0]);
    // Level at 9,000 until 318.4 ft a mile bring it to 8,000: 3 miles out it is still at 8,955.
    expect(outcomes[2]?.reachedFeet).toBeCloseTo(8000 + 3 * gradient, 0);
  });

  it('names the restriction that pulls the path below an "at or above"', () => {
    const { outcomes } = descentCrossings([crossing(30, 9000, 'at or above'), crossing(34, 7000), crossing(80, 2000)], 12000, 3);
    expect(outcomes[0]).toMatchObject({ heldDownBy: 1 });
    expect(outcomes[0]?.missFeet).toBeCloseTo(7000 + 4 * gradient - 9000, 0);
  });

  it('too late, follows the angle from here and says how much too high', () => {
    const { outcomes } = descentCrossings([crossing(10, 7000)], 15000, 3);
    expect(outcomes[0]?.startNauticalMiles).toBeCloseTo(10 - 8000 / gradient, 3);
    expect(outcomes[0]?.missFeet).toBeCloseTo(8000 - 10 * gradient, 0);
    expect(outcomes[0]?.angleNeededDegrees).toBeCloseTo(7.5, 1); // atan(8000 / 60761)
  });

  it('a crossing above the present altitude asks for a climb, which is none of this', () => {
    const { outcomes, binding } = descentCrossings([crossing(10, 9000, 'at or above'), crossing(20, 12000, 'at or below')], 8000, 3);
    expect(outcomes[0]).toMatchObject({ missFeet: -1000, heldDownBy: undefined, startNauticalMiles: undefined });
    expect(outcomes[1]).toMatchObject({ missFeet: 0, startNauticalMiles: undefined });
    expect(binding).toBeUndefined();
  });
});

/** Flown in steps of 0.05 NM: down at the angle from a start, level whenever lower would be below what is still to be crossed at or above. */
function flownFrom(start: number, crossings: readonly Crossing[], fromFeet: number): readonly number[] {
  const step = 0.05;
  const ends = crossings.map(({ distanceNauticalMiles }) => Math.round(distanceNauticalMiles / step));
  const reached: number[] = [];
  let altitude = fromFeet;
  for (let at = 0; at <= Math.max(...ends); at += 1) {
    ends.forEach((end, index) => end === at && (reached[index] = altitude));
    const floor = Math.max(
      -1e9,
      ...crossings.filter(({ kind }, index) => kind !== 'at or below' && (ends[index] ?? 0) > at).map(({ altitudeFeet }) => altitudeFeet),
    );
    if (at * step >= start && altitude > floor) altitude = Math.max(floor, altitude - gradient * step);
  }
  return reached;
}

const kinds = fc.constantFrom<CrossingKind>('at', 'at or below', 'at or above');
const rows = fc.array(fc.record({ distance: fc.integer({ min: 5, max: 90 }), altitude: fc.integer({ min: 10, max: 190 }), kind: kinds }), {
  minLength: 1,
  maxLength: 5,
});

describe('against every possible start', () => {
  it('calls all met only where some start meets all, and none met where no start does', () => {
    fc.assert(
      fc.property(rows, (given) => {
        const crossings = given.map(({ distance, altitude, kind }) => crossing(distance, altitude * 100, kind));
        const { outcomes } = descentCrossings(crossings, 20000, 3);
        const allMet = outcomes.every(({ missFeet }) => missFeet === 0);
        const meets = (start: number): boolean =>
          flownFrom(start, crossings, 20000).every((feet, index) => {
            const miss = feet - (crossings[index]?.altitudeFeet ?? 0);
            const { kind } = crossings[index] ?? { kind: 'at' };
            return Math.abs(miss) < 17 || (kind === 'at or below' && miss < 0) || (kind === 'at or above' && miss > 0);
          });
        const someStart = Array.from({ length: 91 }, (_, start) => start).some(meets);
        // Starting earlier and levelling at what is still to be crossed at or above is possible whenever the latest path is.
        if (allMet) expect(someStart).toBe(true);
        if (someStart) expect(outcomes.every(({ missFeet }) => Math.abs(missFeet) < 34)).toBe(true);
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe('DESCENT_CROSSINGS', () => {
  const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
  it('leaves blank rows blank, and knows a point that lies behind', () => {
    const got = call(
      'DESCENT_CROSSINGS',
      column('A', '', 'B'),
      column(40, '', 5),
      column('', '', 8),
      column(7000, '', 6000),
      column('at', '', 'at'),
      12000,
    ) as unknown[][];
    expect(got[1]).toEqual(['', '', '', '', '', '']);
    expect(got[2]).toEqual(['', '', '', '', 'UNKNOWN', 'the crossing point lies 3.0 NM behind']);
    expect(got[0]?.[4]).toBe('OK');
  });

  it('names the row of a partly filled restriction', () => {
    expect(() => call('DESCENT_CROSSINGS', column('A', 'B'), column(40, ''), column('', ''), column(7000, 6000), column('at', 'at'), 12000)).toThrow(
      'distance_nm must be 0 to 500 nautical miles; got a blank (row 2).',
    );
  });
});
