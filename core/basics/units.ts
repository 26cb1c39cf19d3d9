// Conversions between units, all from exact definitions; and the two directions that must never be mixed.

declare const directionReference: unique symbol;
/** A direction measured from true north, degrees. */
export type TrueDegrees = number & { readonly [directionReference]: 'true' };
/** A direction measured from magnetic north, degrees. */
export type MagneticDegrees = number & { readonly [directionReference]: 'magnetic' };

export const asTrueDegrees = (degrees: number): TrueDegrees => degrees as TrueDegrees;
export const asMagneticDegrees = (degrees: number): MagneticDegrees => degrees as MagneticDegrees;

/** International foot. @source sp-811, appendix B.8: exactly 0.3048 m. */
const metresPerFoot = 0.3048;
/** International nautical mile. @source sp-811, appendix B.8: exactly 1852 m. */
const metresPerNauticalMile = 1852;
/** International (statute) mile. @source sp-811, appendix B.8: exactly 1609.344 m. */
const metresPerStatuteMile = 1609.344;
const secondsPerHour = 3600;
export const minutesPerHour = 60;
export const minutesPerDay = 1440;
export const millisecondsPerDay = 86_400_000;
/** US gallon, 231 cubic inches. @source sp-811, appendix B.8: exactly 3.785411784 L. */
const litresPerUsGallon = 3.785411784;
/** @source sp-811, section 4.2.2: 0 degrees Celsius is exactly 273.15 K. */
const kelvinAtZeroCelsius = 273.15;
/**
 * Conventional inch of mercury, 0.0254 m of mercury of 13595.1 kg/m3 under standard gravity.
 * @source sp-811, appendix B.8 (3386.389 Pa to seven figures).
 */
const hectopascalsPerInchOfMercury = (0.0254 * 13595.1 * 9.80665) / 100;

/** Avoirdupois pound. @source sp-811, appendix B.8: exactly 0.45359237 kg. */
const kilogramsPerPound = 0.45359237;

export const kilogramsFromPounds = (pounds: number): number => pounds * kilogramsPerPound;
export const poundsFromKilograms = (kilograms: number): number => kilograms / kilogramsPerPound;
export const metresFromFeet = (feet: number): number => feet * metresPerFoot;
export const feetFromMetres = (metres: number): number => metres / metresPerFoot;
export const feetFromNauticalMiles = (nauticalMiles: number): number => (nauticalMiles * metresPerNauticalMile) / metresPerFoot;
export const nauticalMilesFromFeet = (feet: number): number => (feet * metresPerFoot) / metresPerNauticalMile;
export const metresFromNauticalMiles = (nauticalMiles: number): number => nauticalMiles * metresPerNauticalMile;
export const nauticalMilesFromMetres = (metres: number): number => metres / metresPerNauticalMile;
export const metresFromStatuteMiles = (miles: number): number => miles * metresPerStatuteMile;
export const knotsFromKilometresPerHour = (kilometres: number): number => (kilometres * 1000) / metresPerNauticalMile;
export const metresPerSecondFromKnots = (knots: number): number => (knots * metresPerNauticalMile) / secondsPerHour;
export const knotsFromMetresPerSecond = (metresPerSecond: number): number => (metresPerSecond * secondsPerHour) / metresPerNauticalMile;
export const nauticalMilesPerSecondFromKnots = (knots: number): number => knots / secondsPerHour;
export const litresFromUsGallons = (gallons: number): number => gallons * litresPerUsGallon;
export const usGallonsFromLitres = (litres: number): number => litres / litresPerUsGallon;
export const kelvinFromCelsius = (celsius: number): number => celsius + kelvinAtZeroCelsius;
export const celsiusFromKelvin = (kelvin: number): number => kelvin - kelvinAtZeroCelsius;
export const hectopascalsFromInchesOfMercury = (inches: number): number => inches * hectopascalsPerInchOfMercury;
export const inchesOfMercuryFromHectopascals = (hectopascals: number): number => hectopascals / hectopascalsPerInchOfMercury;
export const radiansFromDegrees = (degrees: number): number => (degrees * Math.PI) / 180;
export const degreesFromRadians = (radians: number): number => (radians * 180) / Math.PI;

/** The same direction between 0 (included) and 360 (excluded). */
export function wrapDegrees(degrees: number): number {
  const wrapped = degrees % 360;
  // Adding 360 to a tiny negative number can round to 360 itself, so the sum is wrapped again.
  return wrapped < 0 ? (wrapped + 360) % 360 : wrapped + 0;
}

/** The turn from one direction to another, from -180 (excluded) to 180, right positive. */
export function turnDegrees(fromDegrees: number, toDegrees: number): number {
  const turn = wrapDegrees(toDegrees - fromDegrees);
  return turn > 180 ? turn - 360 : turn;
}
