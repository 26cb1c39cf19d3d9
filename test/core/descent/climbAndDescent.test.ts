// Climb gradients and straight descents: what must hold for any of them.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { climbGradientFeetPerNauticalMile, climbRateFeetPerMinute, gradientPercent } from '../../../core/runway/climb';
import { descentRateNeeded, descentStartAtRate, descentStartNauticalMiles } from '../../../core/descent/path';
import { CoreError } from '../../../core/basics/errors';

const groundspeed = fc.double({ min: 30, max: 500, noNaN: true });
const height = fc.double({ min: 1, max: 40000, noNaN: true });
const beforeFix = fc.double({ min: -50, max: 50, noNaN: true });

describe('climb', () => {
  it('goes from gradient to rate and back', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 1000, noNaN: true }), groundspeed, (gradient, knots) => {
        expect(climbGradientFeetPerNauticalMile(climbRateFeetPerMinute(gradient, knots), knots)).toBeCloseTo(gradient, 8);
      }),
    );
  });

  it('is 100 percent where it climbs as far as it goes', () => {
    // One nautical mile is 1852 / 0.3048 feet, by definition.
    expect(gradientPercent(1852 / 0.3048)).toBeCloseTo(100, 10);
    expect(gradientPercent(0)).toBe(0);
  });
});

describe('descent', () => {
  it('starts where the rate and the angle that it needs lead back to', () => {
    fc.assert(
      fc.property(height, fc.double({ min: 0.5, max: 15, noNaN: true }), groundspeed, beforeFix, (feet, angle, knots, miles) => {
        const start = descentStartNauticalMiles(feet + 500, 500, angle, miles);
        const needed = descentRateNeeded(feet + 500, 500, start - miles, knots);
        expect(needed.angleDegrees).toBeCloseTo(angle, 6);
        const again = descentStartAtRate(feet + 500, 500, needed.rateFeetPerMinute, knots, miles);
        expect(again.startNauticalMiles).toBeCloseTo(start, 6);
        expect(again.minutes).toBeCloseTo(((start - miles) / knots) * 60, 6);
      }),
    );
  });

  it('moves the start out by the miles before the fix, and in by the miles beyond it', () => {
    const atFix = descentStartNauticalMiles(9000, 7000, 3, 0);
    expect(descentStartNauticalMiles(9000, 7000, 3, 8)).toBeCloseTo(atFix + 8, 12);
    expect(descentStartNauticalMiles(9000, 7000, 3, -8)).toBeCloseTo(atFix - 8, 12);
    expect(descentStartAtRate(9000, 7000, 500, 120, 8)).toEqual({ startNauticalMiles: 16, minutes: 4 });
    expect(descentStartAtRate(9000, 7000, 500, 120, -10)).toEqual({ startNauticalMiles: -2, minutes: 4 });
  });

  it('has nothing to lose at equal altitudes', () => {
    expect(descentStartNauticalMiles(7000, 7000, 3, 8)).toBe(8);
    expect(descentStartAtRate(7000, 7000, 500, 120, -8)).toEqual({ startNauticalMiles: -8, minutes: 0 });
    expect(descentRateNeeded(7000, 7000, 5, 120)).toEqual({ rateFeetPerMinute: 0, angleDegrees: 0 });
  });

  it('never goes up', () => {
    const upward = { quantity: 'toFeet', high: 7000, received: 7001 };
    for (const upwards of [
      () => descentStartNauticalMiles(7000, 7001, 3, 0),
      () => descentStartAtRate(7000, 7001, 500, 120, 0),
      () => descentRateNeeded(7000, 7001, 5, 120),
    ]) {
      expect(upwards).toThrow(CoreError);
      try {
        upwards();
      } catch (thrown) {
        expect((thrown as CoreError).detail).toMatchObject(upward);
      }
    }
  });
});
