// The cold temperature correction: where it is zero, how it grows, and the exact relation that it approximates.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coldTemperatureCorrectionFeet } from '../../../core/air/coldTemperature';

describe('coldTemperatureCorrectionFeet', () => {
  it('is 0 in standard and in warm air, and at no height', () => {
    expect(coldTemperatureCorrectionFeet(1000, 0, 15)).toBe(0);
    expect(coldTemperatureCorrectionFeet(1000, 0, 40)).toBe(0);
    expect(coldTemperatureCorrectionFeet(0, 3000, -30)).toBe(0);
    // Standard temperature of 5,000 ft by the source's own lapse rate.
    expect(coldTemperatureCorrectionFeet(2000, 5000, 15 - 0.00198 * 5000)).toBeCloseTo(0, 9);
  });

  it('grows with height and with cold, and is never negative', () => {
    const height = fc.double({ min: 1, max: 4900, noNaN: true });
    const celsius = fc.double({ min: -49, max: 50, noNaN: true });
    fc.assert(
      fc.property(height, fc.double({ min: -1000, max: 10000, noNaN: true }), celsius, (feet, source, degrees) => {
        const correction = coldTemperatureCorrectionFeet(feet, source, degrees);
        expect(correction).toBeGreaterThanOrEqual(0);
        expect(coldTemperatureCorrectionFeet(feet + 100, source, degrees)).toBeGreaterThanOrEqual(correction);
        expect(coldTemperatureCorrectionFeet(feet, source, degrees - 1)).toBeGreaterThanOrEqual(correction);
      }),
    );
  });

  it('stays within the 5 percent that the source allows of the exact correction', () => {
    // ICAO Doc 8168, the more accurate form (M): dh = -(dT / L0) ln(1 + L0 h / (T0 + L0 hss)), with L0 = -0.00198 and
    // dT the fall below standard; T0 the standard sea level temperature in kelvin.
    const exact = (feet: number, source: number, celsius: number): number => {
      const below = celsius - (15 - 0.00198 * source);
      return (-below / -0.00198) * Math.log(1 + (-0.00198 * feet) / (288.15 - 0.00198 * source));
    };
    for (const source of [0, 3000, 6000, 10000]) {
      for (const feet of [500, 1500, 3000, 5000]) {
        for (const celsius of [-10, -30, -50]) {
          const ours = coldTemperatureCorrectionFeet(feet, source, celsius);
          // The exact form counts in the altimeter's feet, ours in true feet: a pilot adds ours to the height to be flown.
          const altimeterFeet = feet + ours;
          expect(Math.abs(ours / exact(altimeterFeet, source, celsius) - 1), `${feet} ft over ${source} ft at ${celsius}`).toBeLessThan(0.05);
        }
      }
    }
  });
});
