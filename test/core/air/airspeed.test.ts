// Airspeeds against published relations, and each against its inverse.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  calibratedFromMachKnots,
  machFromCalibrated,
  machFromTrue,
  speedOfSoundKnots,
  trueAirspeedKnots,
  trueFromMachKnots,
} from '../../../core/air/airspeed';
import { standardPressureHectopascals, standardTemperatureCelsius } from '../../../core/air/atmosphere';
import { CoreError } from '../../../core/basics/errors';

const altitude = fc.double({ min: 0, max: 45000, noNaN: true });
const mach = fc.double({ min: 0.05, max: 0.99, noNaN: true });
const celsius = fc.double({ min: -80, max: 50, noNaN: true });

describe('the speed of sound', () => {
  it.each([
    ['AT-01', 15, 661.48, 0.005],
    ['AT-03', -4.81, 638.3, 0.05],
    ['AT-04', -24.62, 614.3, 0.05],
    ['AT-05', -44.44, 589.3, 0.05],
  ])('%s: at %d degrees it is %d kt', (_, degrees, knots, tolerance) => {
    // ICAO Doc 7488 / US Standard Atmosphere 1976 (M, D).
    expect(Math.abs(speedOfSoundKnots(degrees) - knots)).toBeLessThanOrEqual(tolerance);
  });
});

describe('true airspeed', () => {
  it('is what the incompressible rule of ICAO Doc 8168 gives where compression does not matter', () => {
    // Volume II, table I-4-3-App C-1, line 1 (R*; formula M): K = 171233 ((288 + VAR) - 0.00198 H)^0.5 / (288 - 0.00198 H)^2.628.
    const ruleFactor = (feet: number, variation: number): number =>
      (171233 * Math.sqrt(288 + variation - 0.00198 * feet)) / (288 - 0.00198 * feet) ** 2.628;
    expect(140 * ruleFactor(6000, 15)).toBeCloseTo(157.23, 2);
    for (const [feet, variation] of [
      [0, 0],
      [2000, -20],
      [6000, 15],
      [10000, 0],
      [14000, 15],
    ] as const) {
      const ratio = trueAirspeedKnots(30, feet, 15 - 0.00198 * feet + variation) / (30 * ruleFactor(feet, variation));
      expect(ratio).toBeCloseTo(1, 3);
    }
  });

  it('is the calibrated airspeed over the root of the density ratio, less a compression that grows with speed and height', () => {
    const incompressible = (calibrated: number, feet: number): number => {
      const kelvinRatio = (273.15 + standardTemperatureCelsius(feet)) / 288.15;
      return calibrated / Math.sqrt(standardPressureHectopascals(feet) / 1013.25 / kelvinRatio);
    };
    const lost = (calibrated: number, feet: number): number =>
      incompressible(calibrated, feet) - trueAirspeedKnots(calibrated, feet, standardTemperatureCelsius(feet));
    expect(lost(120, 5000)).toBeGreaterThan(0);
    expect(lost(240, 5000)).toBeGreaterThan(lost(120, 5000));
    expect(lost(240, 25000)).toBeGreaterThan(lost(240, 5000));
  });

  it('meets the crossover of 300 kt and Mach 0.78 at 29,314 ft', () => {
    // Printed to the foot, for the standard atmosphere, in an aircraft maker's course on performance (M: from memory); one foot is
    // 0.00002 Mach.
    expect(machFromCalibrated(300, 29314)).toBeCloseTo(0.78, 4);
    expect(calibratedFromMachKnots(0.78, 29314)).toBeCloseTo(300, 2);
  });

  it('goes to Mach and back', () => {
    fc.assert(
      fc.property(mach, altitude, celsius, (number, feet, degrees) => {
        expect(machFromCalibrated(calibratedFromMachKnots(number, feet), feet)).toBeCloseTo(number, 9);
        expect(machFromTrue(trueFromMachKnots(number, degrees), degrees)).toBeCloseTo(number, 12);
        expect(trueAirspeedKnots(calibratedFromMachKnots(number, feet), feet, degrees)).toBeCloseTo(trueFromMachKnots(number, degrees), 6);
      }),
    );
  });

  it('is 0 at rest, and the calibrated airspeed at the standard sea level', () => {
    expect(trueAirspeedKnots(0, 20000, -25)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 660, noNaN: true }), (knots) => {
        expect(trueAirspeedKnots(knots, 0, 15)).toBeCloseTo(knots, 8);
      }),
    );
  });

  it('stops at Mach 1, naming the airspeed at which it is reached', () => {
    const detail = (calibrated: number, feet: number): unknown => {
      try {
        return machFromCalibrated(calibrated, feet);
      } catch (thrown) {
        return thrown instanceof CoreError ? thrown.detail : thrown;
      }
    };
    const limit = calibratedFromMachKnots(1, 40000);
    expect(detail(limit, 40000)).toBeCloseTo(1, 9);
    expect(detail(limit + 0.01, 40000)).toMatchObject({ quantity: 'calibratedKnots', high: limit, received: limit + 0.01 });
    expect(detail(662, 0)).toMatchObject({ quantity: 'calibratedKnots' });
    expect(detail(662, -3000)).toMatchObject({ quantity: 'calibratedKnots' });
  });
});
