// Wind against a direction: what must hold for any wind, and the corners of the circle.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CoreError } from '../../../core/basics/errors';
import { radiansFromDegrees, turnDegrees } from '../../../core/basics/units';
import { windComponents, windTriangle } from '../../../core/air/wind';

const direction = fc.double({ min: 0, max: 360, noNaN: true });
const speed = fc.double({ min: 0, max: 120, noNaN: true });

describe('wind components', () => {
  it.each([
    [360, 360, 20, 0],
    [360, 0, 20, 0],
    [0, 360, 20, 0],
    [90, 90, 20, 0],
    [270, 90, -20, 0],
    [180, 360, -20, 0],
    [360, 90, 0, 20],
    [0, 270, 0, -20],
    [350, 80, 0, 20],
    [10, 280, 0, -20],
    [237, 147, 0, -20],
  ])('direction %d, wind from %d at 20 kt: exactly %d and %d', (towards, from, headwind, crosswind) => {
    // By hand; toBe tells 0 from -0.
    const { headwindKnots, crosswindKnots } = windComponents(towards, from, 20);
    expect(headwindKnots).toBe(headwind);
    expect(crosswindKnots).toBe(crosswind);
  });

  it('is no negative zero in a calm', () => {
    expect(windComponents(200, 20, 0)).toEqual({ headwindKnots: 0, crosswindKnots: 0 });
    expect(Object.is(windComponents(200, 250, 0).headwindKnots, 0)).toBe(true);
  });

  it('keeps the whole wind, turns with the circle, and turns over on the opposite runway', () => {
    fc.assert(
      fc.property(direction, direction, speed, fc.integer({ min: -5, max: 5 }), (towards, from, knots, laps) => {
        const one = windComponents(towards, from, knots);
        expect(Math.hypot(one.headwindKnots, one.crosswindKnots)).toBeCloseTo(knots, 9);
        const turned = windComponents(towards + 360 * laps, from, knots);
        expect(turned.headwindKnots).toBeCloseTo(one.headwindKnots, 8);
        const opposite = windComponents(towards + 180, from, knots);
        expect(opposite.headwindKnots).toBeCloseTo(-one.headwindKnots, 8);
        expect(opposite.crosswindKnots).toBeCloseTo(-one.crosswindKnots, 8);
        const mirrored = windComponents(-towards, -from, knots);
        expect(mirrored.crosswindKnots).toBeCloseTo(-one.crosswindKnots, 8);
      }),
    );
  });
});

describe('the wind triangle', () => {
  it('closes: airspeed along the heading and wind add to groundspeed along the course', () => {
    fc.assert(
      fc.property(direction, fc.double({ min: 121, max: 500, noNaN: true }), direction, speed, (course, airspeed, from, wind) => {
        const { headingDegrees, groundspeedKnots, correctionDegrees } = windTriangle(course, airspeed, from, wind);
        const [heading, track, blow] = [headingDegrees, course, from + 180].map(radiansFromDegrees) as [number, number, number];
        expect(airspeed * Math.sin(heading) + wind * Math.sin(blow)).toBeCloseTo(groundspeedKnots * Math.sin(track), 7);
        expect(airspeed * Math.cos(heading) + wind * Math.cos(blow)).toBeCloseTo(groundspeedKnots * Math.cos(track), 7);
        expect(turnDegrees(course, headingDegrees)).toBeCloseTo(correctionDegrees, 8);
        expect(headingDegrees).toBeGreaterThanOrEqual(0);
        expect(headingDegrees).toBeLessThan(360);
      }),
    );
  });

  it.each([
    ['all across', 360, 20, 90, 20],
    ['more across than airspeed', 360, 20, 90, 30],
    ['as strong ahead', 360, 20, 360, 20],
    ['stronger ahead', 360, 20, 360, 25],
    ['stronger on the quarter', 360, 20, 30, 25],
  ])('refuses a wind that leaves no headway: %s', (_, course, airspeed, from, wind) => {
    expect(() => windTriangle(course, airspeed, from, wind)).toThrow(CoreError);
  });

  it('flies with a wind stronger than the airspeed while it blows from behind', () => {
    // By hand: 20 kt of airspeed and 25 kt from straight behind.
    expect(windTriangle(360, 20, 180, 25)).toEqual({ headingDegrees: 0, groundspeedKnots: 45, correctionDegrees: 0 });
  });
});
