// The ICAO standard atmosphere: pressure, temperature and density against geopotential height, and their inverses.
import {
  gasConstantDryAir,
  isothermalTopMetres,
  seaLevelPressureHectopascals,
  seaLevelTemperatureKelvin,
  standardGravity,
  troposphereLapseKelvinPerMetre,
  tropopauseMetres,
} from '../basics/constants';
import { CoreError } from '../basics/errors';
import { celsiusFromKelvin, feetFromMetres, kelvinFromCelsius, metresFromFeet } from '../basics/units';

/** p = p0 (T/T0)^(g0 / (L R)). @source icao-7488, equation 12 (hydrostatic, constant lapse rate). */
const pressureExponent = standardGravity / (troposphereLapseKelvinPerMetre * gasConstantDryAir);
const tropopauseKelvin = seaLevelTemperatureKelvin - troposphereLapseKelvinPerMetre * tropopauseMetres;
const tropopauseHectopascals = seaLevelPressureHectopascals * (tropopauseKelvin / seaLevelTemperatureKelvin) ** pressureExponent;
/** p = p11 exp(-(h - 11 km) / H) above the tropopause. @source icao-7488, equation 13 (isothermal layer). */
const isothermalScaleMetres = (gasConstantDryAir * tropopauseKelvin) / standardGravity;

/** Deepest height the model is used at here: -5000 ft, far below any field. */
export const lowestAltitudeFeet = -5000;
/** 20 km, the top of the isothermal layer. */
export const highestAltitudeFeet = Math.round(feetFromMetres(isothermalTopMetres));

/** Temperature in the standard atmosphere, from -5,000 ft to 20 km. @source icao-7488, table D. */
export function standardTemperatureKelvin(pressureAltitudeFeet: number): number {
  return seaLevelTemperatureKelvin - troposphereLapseKelvinPerMetre * Math.min(metresFromFeet(pressureAltitudeFeet), tropopauseMetres);
}

export const standardTemperatureCelsius = (pressureAltitudeFeet: number): number =>
  celsiusFromKelvin(standardTemperatureKelvin(pressureAltitudeFeet));

/** Pressure in the standard atmosphere at a pressure altitude. @source icao-7488, equations 12 and 13. */
export function standardPressureHectopascals(pressureAltitudeFeet: number): number {
  const metres = metresFromFeet(pressureAltitudeFeet);
  if (metres <= tropopauseMetres) {
    return seaLevelPressureHectopascals * (standardTemperatureKelvin(pressureAltitudeFeet) / seaLevelTemperatureKelvin) ** pressureExponent;
  }
  return tropopauseHectopascals * Math.exp(-(metres - tropopauseMetres) / isothermalScaleMetres);
}

/** The inverse of standardPressureHectopascals: the height at which the standard atmosphere has this pressure. */
export function pressureAltitudeFromPressureFeet(hectopascals: number): number {
  if (hectopascals >= tropopauseHectopascals) {
    const kelvin = seaLevelTemperatureKelvin * (hectopascals / seaLevelPressureHectopascals) ** (1 / pressureExponent);
    return feetFromMetres((seaLevelTemperatureKelvin - kelvin) / troposphereLapseKelvinPerMetre);
  }
  return feetFromMetres(tropopauseMetres + isothermalScaleMetres * Math.log(tropopauseHectopascals / hectopascals));
}

/**
 * Pressure altitude of a field from its elevation and the altimeter setting. The setting is the pressure an altimeter
 * needs to read the elevation, so the field's pressure is that of the standard atmosphere at (elevation + the height
 * of the setting); no approximation. @source icao-7488, equation 12; agrees with the NWS altimeter-setting relation.
 */
export function pressureAltitudeFeet(elevationFeet: number, altimeterSettingHectopascals: number): number {
  return elevationFeet + pressureAltitudeFromPressureFeet(altimeterSettingHectopascals);
}

/**
 * Saturation vapour pressure over water, hPa: 6.1094 exp(17.625 t / (t + 243.04)).
 * @source alduchov-1996, equation 21; within 0.4 % from -40 to 50 degrees Celsius.
 */
function vapourPressureHectopascals(dewPointCelsius: number): number {
  return 6.1094 * Math.exp((17.625 * dewPointCelsius) / (dewPointCelsius + 243.04));
}

/** Ratio of the molar masses of water and dry air. @source wmo-8, annex 4.A. */
const waterToAirMassRatio = 0.62198;

/** rho = p / (R T), kg/m3. @source icao-7488, equation of state. */
const densityOf = (hectopascals: number, kelvin: number): number => (hectopascals * 100) / (gasConstantDryAir * kelvin);

const seaLevelDensity = densityOf(seaLevelPressureHectopascals, seaLevelTemperatureKelvin);

/** The standard atmosphere is tabulated from -5 km (and here to 20 km); no density altitude is given beyond. @source icao-7488, table 1. */
const lowestModelFeet = feetFromMetres(-5000);
const standardDensity = (altitudeFeet: number): number =>
  densityOf(standardPressureHectopascals(altitudeFeet), standardTemperatureKelvin(altitudeFeet));

/** The height at which the standard atmosphere has this density, kg/m3. @source icao-7488, equations 12 to 14, inverted. */
function altitudeOfDensityFeet(density: number): number {
  const tropopauseDensity = densityOf(tropopauseHectopascals, tropopauseKelvin);
  if (density >= tropopauseDensity) {
    const kelvin = seaLevelTemperatureKelvin * (density / seaLevelDensity) ** (1 / (pressureExponent - 1));
    return feetFromMetres((seaLevelTemperatureKelvin - kelvin) / troposphereLapseKelvinPerMetre);
  }
  return feetFromMetres(tropopauseMetres + isothermalScaleMetres * Math.log(tropopauseDensity / density));
}

/**
 * Density altitude, with the virtual temperature where a dew point is given: Tv = T / (1 - (e/p)(1 - 0.62198)).
 * Throws where the air is thinner or denser than any of the standard atmosphere from -5 to 20 km.
 * @source icao-7488, equations 12 to 14; virtual temperature wmo-8, annex 4.A.
 */
export function densityAltitudeFeet(altitudeFeet: number, temperatureCelsius: number, dewPointCelsius?: number): number {
  if (dewPointCelsius !== undefined && dewPointCelsius > temperatureCelsius) {
    throw new CoreError('outside-range', {
      quantity: 'dewPointCelsius',
      unit: 'degrees Celsius, no more than the temperature',
      low: -90,
      high: temperatureCelsius,
      received: dewPointCelsius,
    });
  }
  const pressure = standardPressureHectopascals(altitudeFeet);
  const vapour = dewPointCelsius === undefined ? 0 : vapourPressureHectopascals(dewPointCelsius);
  const dryShare = 1 - (vapour / pressure) * (1 - waterToAirMassRatio);
  const temperatureOfDensity = (density: number): number => celsiusFromKelvin((densityOf(pressure, 1) / density) * dryShare);
  const low = temperatureOfDensity(standardDensity(lowestModelFeet));
  const high = temperatureOfDensity(standardDensity(highestAltitudeFeet));
  if (temperatureCelsius < low || temperatureCelsius > high) {
    const unit = 'degrees Celsius at this pressure altitude, so that the density altitude stays within the standard atmosphere';
    throw new CoreError('outside-range', { quantity: 'temperatureCelsius', unit, low, high, received: temperatureCelsius });
  }
  return altitudeOfDensityFeet(densityOf(pressure, kelvinFromCelsius(temperatureCelsius) / dryShare));
}
