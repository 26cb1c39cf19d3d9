// Cold air and the altimeter: how many feet to add to a height so that the true height is what it should be.

/** Temperature of the standard sea level, rounded as the source rounds it. */
const standardSeaLevelCelsius = 15;
/** @source icao-8168, cold temperature correction: L0, degrees Celsius per foot. */
const lapseCelsiusPerFoot = 0.00198;
/** @source icao-8168, cold temperature correction: kelvin at 0 degrees Celsius, as printed. */
const kelvinAtZero = 273;

/**
 * Correction = H (15 - t0) / (273 + t0 - 0.5 L0 (H + Hss)), t0 = t + L0 Hss: H the height above the altimeter setting
 * source, Hss the source's elevation, t the temperature there. Never less than 0: nothing is taken off in warm air.
 * @source icao-8168, altimeter corrections, cold temperature; within 5 % for sources up to 10,000 ft and heights up to 5,000 ft.
 */
export function coldTemperatureCorrectionFeet(heightAboveSourceFeet: number, sourceElevationFeet: number, temperatureCelsius: number): number {
  const seaLevelCelsius = temperatureCelsius + lapseCelsiusPerFoot * sourceElevationFeet;
  const meanKelvin = kelvinAtZero + seaLevelCelsius - 0.5 * lapseCelsiusPerFoot * (heightAboveSourceFeet + sourceElevationFeet);
  return Math.max(0, (heightAboveSourceFeet * (standardSeaLevelCelsius - seaLevelCelsius)) / meanKelvin);
}
