// The standard atmosphere against published tables, and each relation against its own inverse.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityAltitudeFeet,
  highestAltitudeFeet,
  lowestAltitudeFeet,
  pressureAltitudeFeet,
  pressureAltitudeFromPressureFeet,
  standardPressureHectopascals,
  standardTemperatureCelsius,
  standardTemperatureKelvin,
} from '../../../core/air/atmosphere';
import { CoreError } from '../../../core/basics/errors';
import { feetFromMetres, hectopascalsFromInchesOfMercury, inchesOfMercuryFromHectopascals, kelvinFromCelsius } from '../../../core/basics/units';

const densityRatio = (feet: number): number => standardPressureHectopascals(feet) / 1013.25 / (standardTemperatureKelvin(feet) / 288.15);

/** Feet, hectopascals, inches of mercury, density ratio, as far as they are printed; to half the last printed digit. */
const published: readonly (readonly [string, number, string, string, string, string])[] = [
  ['AT-01', 0, '1013.25', '29.92126', '1.00000', 'ICAO Doc 7488 (M)'],
  ['AT-02', 5000, '843.07', '24.896', '0.86167', 'ICAO Doc 7488 constants (D, M)'],
  ['AT-03', 10000, '696.82', '20.577', '0.73848', 'ICAO Doc 7488 constants (D, M)'],
  ['AT-04', 20000, '465.63', '13.750', '0.53281', 'ICAO Doc 7488 constants (D, M)'],
  ['AT-05', 30000, '300.90', '8.885', '0.37413', 'ICAO Doc 7488 constants (D, M)'],
  ['AT-09', 51000, '110.53', '', '0.14509', 'ICAO Doc 7488 constants (D)'],
  ['AT-10', -1000, '1050.41', '31.018', '', 'US Standard Atmosphere 1976, geopotential table (R)'],
  ['AT-10', -500, '1031.69', '30.466', '', 'US Standard Atmosphere 1976, geopotential table (R)'],
  ['AT-10', -300, '1024.28', '30.247', '', 'US Standard Atmosphere 1976, geopotential table (R)'],
];

const halfDigit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0) * (1 + 1e-6);

const altitude = fc.double({ min: lowestAltitudeFeet, max: highestAltitudeFeet, noNaN: true });

describe('the standard atmosphere', () => {
  it.each(published)('%s at %d ft', (_, feet, hectopascals, inches, ratio, source) => {
    const pressure = standardPressureHectopascals(feet);
    const pairs = [
      [pressure, hectopascals],
      [inchesOfMercuryFromHectopascals(pressure), inches],
      [densityRatio(feet), ratio],
    ] as const;
    for (const [got, printed] of pairs)
      if (printed !== '') expect(Math.abs(got - Number(printed)), `${printed}: ${source}`).toBeLessThanOrEqual(halfDigit(printed));
  });

  it.each([
    ['AT-06', 11000, 226.321, 0.363918],
    ['AT-07', 20000, 54.7489, 0.088035],
  ])('%s: %d m is %d hPa and %d kg/m3', (_, metres, hectopascals, density) => {
    // US Standard Atmosphere 1976, layer table (R*). Its gas constant differs from ICAO's in the seventh digit, and its sea
    // level density is itself rounded to 1.2250, so one part in ten thousand. 11 km is 6.6832 inHg.
    const feet = feetFromMetres(metres);
    expect(standardPressureHectopascals(feet) / hectopascals).toBeCloseTo(1, 4);
    expect((densityRatio(feet) * 1.225) / density).toBeCloseTo(1, 4);
    if (metres === 11000) expect(Math.abs(inchesOfMercuryFromHectopascals(standardPressureHectopascals(feet)) - 6.6832)).toBeLessThanOrEqual(0.00005);
  });

  it('meets itself at the tropopause, from both sides', () => {
    const tropopause = feetFromMetres(11000);
    const [below, above] = [tropopause - 0.001, tropopause + 0.001];
    expect(standardTemperatureKelvin(below)).toBeCloseTo(216.65, 5);
    expect(standardTemperatureKelvin(above)).toBeCloseTo(216.65, 9);
    // The slope of the pressure is 0.0000481 of it per foot on both sides, so 0.002 ft make about 0.00002 hPa.
    expect(standardPressureHectopascals(below) - standardPressureHectopascals(above)).toBeCloseTo(0.0000218, 6);
    expect(densityAltitudeFeet(below, -56.5)).toBeCloseTo(below, 3);
    expect(densityAltitudeFeet(above, -56.5)).toBeCloseTo(above, 3);
  });

  it('gives back the altitude from its pressure, and the pressure from its altitude', () => {
    fc.assert(
      fc.property(altitude, (feet) => {
        expect(pressureAltitudeFromPressureFeet(standardPressureHectopascals(feet))).toBeCloseTo(feet, 6);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: 54.75, max: 1200, noNaN: true }), (pressure) => {
        expect(standardPressureHectopascals(pressureAltitudeFromPressureFeet(pressure))).toBeCloseTo(pressure, 8);
      }),
    );
  });

  it('falls with height, always', () => {
    fc.assert(
      fc.property(fc.double({ min: lowestAltitudeFeet, max: 65000, noNaN: true }), fc.double({ min: 0.01, max: 600, noNaN: true }), (feet, step) => {
        expect(standardPressureHectopascals(feet + step)).toBeLessThan(standardPressureHectopascals(feet));
      }),
    );
  });
});

describe('pressure altitude', () => {
  it('meets the altimeter setting relation of the NWS: AS = (P^0.1903 + 1.313e-5 H)^5.255, inches and feet', () => {
    // AT-18, NOAA NWS training, ASOS algorithm (R); its rounded constants agree to about 0.01 inHg up to 6,000 ft.
    for (const elevation of [0, 500, 1000, 2500, 4000, 6000]) {
      for (const setting of [29.0, 29.5, 29.92, 30.3, 30.8]) {
        const station = inchesOfMercuryFromHectopascals(
          standardPressureHectopascals(pressureAltitudeFeet(elevation, hectopascalsFromInchesOfMercury(setting))),
        );
        expect((station ** 0.1903 + 1.313e-5 * elevation) ** 5.255).toBeCloseTo(setting, 1.7);
      }
    }
  });

  it('rises foot for foot with the elevation, and is the elevation at the standard setting', () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 14000, noNaN: true }), (elevation) => {
        expect(pressureAltitudeFeet(elevation, 1013.25)).toBeCloseTo(elevation, 6);
        expect(pressureAltitudeFeet(elevation, 1000) - elevation).toBeCloseTo(pressureAltitudeFeet(0, 1000), 6);
      }),
    );
  });
});

describe('density altitude', () => {
  it('is the pressure altitude at the standard temperature', () => {
    fc.assert(
      fc.property(altitude, (feet) => {
        expect(densityAltitudeFeet(feet, standardTemperatureCelsius(feet))).toBeCloseTo(feet, 5);
      }),
    );
  });

  it('is where the standard atmosphere is as dense as the given air', () => {
    const warmth = fc.double({ min: -40, max: 45, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 20000, noNaN: true }), warmth, (feet, celsius) => {
        const ratio = standardPressureHectopascals(feet) / 1013.25 / (kelvinFromCelsius(celsius) / 288.15);
        expect(densityRatio(densityAltitudeFeet(feet, celsius))).toBeCloseTo(ratio, 10);
      }),
    );
  });

  it('rises with temperature and with moisture', () => {
    expect(densityAltitudeFeet(5000, 30)).toBeGreaterThan(densityAltitudeFeet(5000, 29));
    expect(densityAltitudeFeet(5000, 30, 25)).toBeGreaterThan(densityAltitudeFeet(5000, 30, 10));
    expect(densityAltitudeFeet(5000, 30, 10)).toBeGreaterThan(densityAltitudeFeet(5000, 30));
  });

  it('takes moist air as light as the CIPM formula does', () => {
    // CIPM-2007 (Metrologia 45): 1.1992 kg/m3 at 20 degrees, 1013.25 hPa, 50 % humidity, a dew point of 9.27 degrees (M).
    // The formula also knows that air is no ideal gas, which is 0.04 % or 13 ft here.
    const densityFeet = (288.15 / 0.0019812) * (1 - (1.1992 / 1.225) ** (1 / 4.2558797));
    expect(Math.abs(densityAltitudeFeet(0, 20, 9.27) - densityFeet)).toBeLessThan(20);
  });

  it('refuses air outside the tabulated atmosphere, and a dew point above the temperature', () => {
    const refusal = (...given: Parameters<typeof densityAltitudeFeet>): unknown => {
      try {
        return densityAltitudeFeet(...given);
      } catch (thrown) {
        return thrown instanceof CoreError ? thrown.detail : thrown;
      }
    };
    expect(refusal(65617, 0)).toMatchObject({ quantity: 'temperatureCelsius', received: 0 });
    expect(refusal(-5000, -80)).toMatchObject({ quantity: 'temperatureCelsius', received: -80 });
    expect(refusal(1000, 10, 11)).toMatchObject({ quantity: 'dewPointCelsius', high: 10, received: 11 });
    expect(refusal(65617, -56.5)).toBeCloseTo(65617, 3);
  });
});
