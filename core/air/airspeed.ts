// Airspeeds below the speed of sound: calibrated airspeed to Mach number to true airspeed, in the air as it is.
import { pressureAltitudeFromPressureFeet, standardPressureHectopascals } from './atmosphere';
import { gasConstantDryAir, heatCapacityRatio, seaLevelPressureHectopascals, seaLevelTemperatureKelvin } from '../basics/constants';
import { CoreError } from '../basics/errors';
import { celsiusFromKelvin, kelvinFromCelsius, knotsFromMetresPerSecond } from '../basics/units';

/** a = sqrt(gamma R T), a in m/s, T in kelvin. @source icao-7488, section on the speed of sound. Dry air. */
export function speedOfSoundKnots(temperatureCelsius: number): number {
  return knotsFromMetresPerSecond(Math.sqrt(heatCapacityRatio * gasConstantDryAir * kelvinFromCelsius(temperatureCelsius)));
}

/** a0, the speed of sound that every airspeed indicator is calibrated with. */
const seaLevelSpeedOfSoundKnots = speedOfSoundKnots(celsiusFromKelvin(seaLevelTemperatureKelvin));

/** gamma / (gamma - 1), 3.5 for air. */
const flowExponent = heatCapacityRatio / (heatCapacityRatio - 1);

/**
 * qc / p = (1 + 0.2 M^2)^3.5 - 1: impact pressure qc over static pressure p, at Mach number M up to 1.
 * @source nasa-rp-1046, equations of the impact pressure and the Mach number, subsonic.
 */
const impactPressureRatio = (machNumber: number): number => (1 + ((heatCapacityRatio - 1) / 2) * machNumber ** 2) ** flowExponent - 1;

/** The inverse: M = sqrt(5 ((qc / p + 1)^(2/7) - 1)). */
const machOfImpactPressureRatio = (ratio: number): number => Math.sqrt((2 / (heatCapacityRatio - 1)) * ((1 + ratio) ** (1 / flowExponent) - 1));

/** Pressure of the standard sea level over the pressure at this height. */
const pressureFall = (pressureAltitudeFeet: number): number => seaLevelPressureHectopascals / standardPressureHectopascals(pressureAltitudeFeet);

/**
 * Mach number from calibrated airspeed: the indicator's impact pressure at sea level, qc = p0 ((1 + 0.2 (Vc / a0)^2)^3.5 - 1),
 * taken over the static pressure aloft. @source nasa-rp-1046, definition of calibrated airspeed. Up to Mach 1.
 */
export function machFromCalibrated(calibratedKnots: number, pressureAltitudeFeet: number): number {
  // Below sea level the indicator passes a0, where its own law changes, before the aircraft reaches Mach 1.
  const high = Math.min(calibratedFromMachKnots(1, pressureAltitudeFeet), seaLevelSpeedOfSoundKnots);
  if (calibratedKnots > high) {
    throw new CoreError('outside-range', {
      quantity: 'calibratedKnots',
      unit: 'knots, below the speed of sound at this pressure altitude',
      low: 0,
      high,
      received: calibratedKnots,
    });
  }
  return machOfImpactPressureRatio(impactPressureRatio(calibratedKnots / seaLevelSpeedOfSoundKnots) * pressureFall(pressureAltitudeFeet));
}

/** Calibrated airspeed from Mach number, the inverse of machFromCalibrated. @source nasa-rp-1046, as there. Up to Mach 1. */
export function calibratedFromMachKnots(machNumber: number, pressureAltitudeFeet: number): number {
  return seaLevelSpeedOfSoundKnots * machOfImpactPressureRatio(impactPressureRatio(machNumber) / pressureFall(pressureAltitudeFeet));
}

/**
 * The changeover altitude, where this calibrated airspeed and this Mach number are the same speed: below it the Mach number is the
 * faster of the two. Both have the same impact pressure there: p = p0 (qc0 / p0) / (qc / p). @source nasa-rp-1046, as above.
 */
export const changeoverAltitudeFeet = (calibratedKnots: number, machNumber: number): number =>
  pressureAltitudeFromPressureFeet(
    (seaLevelPressureHectopascals * impactPressureRatio(calibratedKnots / seaLevelSpeedOfSoundKnots)) / impactPressureRatio(machNumber),
  );

/** V = M a. @source nasa-rp-1046, definition of the Mach number. */
export const trueFromMachKnots = (machNumber: number, temperatureCelsius: number): number => machNumber * speedOfSoundKnots(temperatureCelsius);

export const machFromTrue = (trueAirspeedKnots: number, temperatureCelsius: number): number =>
  trueAirspeedKnots / speedOfSoundKnots(temperatureCelsius);

/** True airspeed from calibrated airspeed, compressible. @source nasa-rp-1046. Up to Mach 1. */
export function trueAirspeedKnots(calibratedKnots: number, pressureAltitudeFeet: number, temperatureCelsius: number): number {
  return trueFromMachKnots(machFromCalibrated(calibratedKnots, pressureAltitudeFeet), temperatureCelsius);
}
