// Lines on WGS84 at the places where they go wrong: poles, date line, opposite points, the same point; and round trips.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CoreError } from '../../../core/basics/errors';
import { geodesicLeg, geodesicPoint, type Position } from '../../../core/navigation/geodesy';
import { asTrueDegrees, turnDegrees } from '../../../core/basics/units';

const at = (latitudeDegrees: number, longitudeDegrees: number): Position => ({ latitudeDegrees, longitudeDegrees });
const position = fc
  .tuple(fc.double({ min: -89, max: 89, noNaN: true }), fc.double({ min: -180, max: 180, noNaN: true }))
  .map(([latitude, longitude]) => at(latitude, longitude));
const course = fc.double({ min: 0, max: 359.999, noNaN: true }).map(asTrueDegrees);

/** Quarter of a WGS84 meridian: 10,001,965.729 m (NIMA TR8350.2, also the documentation of GeographicLib; M). */
const quarterMeridianMiles = 10001965.729 / 1852;

describe('geodesicLeg', () => {
  it('reaches a pole along the meridian, and leaves it on the meridian of its longitude', () => {
    const up = geodesicLeg(at(0, 25), at(90, 25));
    expect(up.distanceNauticalMiles).toBeCloseTo(quarterMeridianMiles, 5);
    expect([up.initialCourse, up.finalCourse]).toEqual([0, 0]);
    const down = geodesicLeg(at(90, 25), at(0, 25));
    expect([down.initialCourse, down.finalCourse]).toEqual([180, 180]);
    // From the pole as written on the Greenwich meridian, longitude 25 east lies 25 degrees to the left of straight ahead (180).
    expect(geodesicLeg(at(90, 0), at(0, 25)).initialCourse).toBeCloseTo(155, 9);
    expect(geodesicLeg(at(-90, 0), at(0, 25)).initialCourse).toBeCloseTo(25, 9);
    expect(geodesicLeg(at(90, 0), at(-90, 0)).distanceNauticalMiles).toBeCloseTo(2 * quarterMeridianMiles, 5);
  });

  it('crosses the date line the short way', () => {
    // One degree of the equator is 6,378,137 m x pi / 180.
    const degreeMiles = (6378137 * Math.PI) / 180 / 1852;
    const east = geodesicLeg(at(0, 179.5), at(0, -179.5));
    expect(east.distanceNauticalMiles).toBeCloseTo(degreeMiles, 9);
    expect([east.initialCourse, east.finalCourse]).toEqual([90, 90]);
    const west = geodesicLeg(at(0, -179.5), at(0, 179.5));
    expect([west.initialCourse, west.finalCourse]).toEqual([270, 270]);
  });

  it('finds a shortest line between opposite points, over a pole and no longer than half a meridian ellipse', () => {
    for (const [latitude, longitude] of [
      [0, 0],
      [30, 40],
      [-45, 170],
      [89, -10],
    ] as const) {
      const opposite = at(-latitude, longitude > 0 ? longitude - 180 : longitude + 180);
      const { distanceNauticalMiles, initialCourse, finalCourse } = geodesicLeg(at(latitude, longitude), opposite);
      expect(distanceNauticalMiles).toBeCloseTo(2 * quarterMeridianMiles, 5);
      expect(initialCourse % 180).toBeCloseTo(0, 9);
      expect(finalCourse % 180).toBeCloseTo(0, 9);
    }
  });

  it.each([
    ['twice the same', at(12.5, -30), at(12.5, -30)],
    ['the date line from both sides', at(10, 180), at(10, -180)],
    ['the pole on two meridians', at(90, 10), at(90, -150)],
    ['less than a thousandth of a millimetre apart', at(10, 20), at(10 + 1e-13, 20)],
  ])('has no direction: %s', (_, one, other) => {
    expect(() => geodesicLeg(one, other)).toThrow(CoreError);
  });

  it('has a direction a millimetre away', () => {
    const { distanceNauticalMiles, initialCourse } = geodesicLeg(at(10, 20), at(10 + 1e-8, 20));
    expect(initialCourse).toBeCloseTo(0, 3);
    expect(distanceNauticalMiles * 1852).toBeCloseTo(0.0011, 4);
  });

  it('is as long backwards, on the opposite courses', () => {
    fc.assert(
      fc.property(position, position, (one, other) => {
        fc.pre(Math.abs(one.latitudeDegrees - other.latitudeDegrees) > 1e-6);
        const there = geodesicLeg(one, other);
        const back = geodesicLeg(other, one);
        expect(back.distanceNauticalMiles).toBeCloseTo(there.distanceNauticalMiles, 8);
        // Near opposite points two lines can be equally short, and the course is free.
        if (there.distanceNauticalMiles < 10700 && there.distanceNauticalMiles > 0.001) {
          expect(turnDegrees(back.initialCourse, there.finalCourse + 180)).toBeCloseTo(0, 5);
        }
        for (const direction of [there.initialCourse, there.finalCourse]) {
          expect(direction).toBeGreaterThanOrEqual(0);
          expect(direction).toBeLessThan(360);
        }
      }),
    );
  });
});

describe('geodesicPoint', () => {
  it('goes out and finds the way back', () => {
    fc.assert(
      fc.property(position, course, fc.double({ min: 0.1, max: 8000, noNaN: true }), (from, out, miles) => {
        const to = geodesicPoint(from, out, miles);
        const leg = geodesicLeg(from, to);
        expect(leg.distanceNauticalMiles).toBeCloseTo(miles, 6);
        expect(Math.abs(turnDegrees(leg.initialCourse, out))).toBeLessThan(0.0001);
        expect(Math.abs(to.latitudeDegrees)).toBeLessThanOrEqual(90);
        expect(Math.abs(to.longitudeDegrees)).toBeLessThanOrEqual(180);
      }),
    );
  });

  it('stays where it is over no distance, and comes over the pole', () => {
    const still = geodesicPoint(at(12.5, -30), asTrueDegrees(77), 0);
    expect(still.latitudeDegrees).toBeCloseTo(12.5, 12);
    expect(still.longitudeDegrees).toBeCloseTo(-30, 12);
    const over = geodesicPoint(at(89, 20), asTrueDegrees(0), 120.6);
    expect(over.longitudeDegrees).toBeCloseTo(-160, 9);
    expect(over.latitudeDegrees).toBeCloseTo(89, 1);
  });
});
