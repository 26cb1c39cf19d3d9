// How far a level clears the highest ground of its leg, with what cold air takes from an indicated height.
import { standardTemperatureCelsius } from '../air/atmosphere';
import { coldTemperatureCorrectionFeet } from '../air/coldTemperature';
import { CoreError } from '../basics/errors';
import type { AirColumn } from './air';

/** How far the correction is published: heights above the source of the altimeter setting, and temperatures there. @source icao-8168 */
const highestAboveSourceFeet = 5000;
const coldestAtSourceCelsius = -50;
/** A deviation smaller than this is none: temperatures are given in whole degrees. @source common-practice */
const leastColdCelsius = 0.5;

export interface GroundCase {
  readonly altitudeFeet: number;
  readonly highestGroundFeet: number;
  readonly clearanceFeet: number;
  readonly air: AirColumn;
  /** Elevation of the source of the altimeter setting; undefined where it is not known. */
  readonly sourceFeet: number | undefined;
}

export interface Clearance {
  /** To be added to ground and clearance. */
  readonly coldFeet: number;
  /** The level above ground, clearance and correction; negative is what is missing. */
  readonly spareFeet: number;
}

/** How much colder than standard the air is, at the level or anywhere below it where a temperature is given: the coldest counts. */
function coldCelsius({ levelsFeet, temperatureAt }: AirColumn, altitudeFeet: number): number {
  const at = (feet: number): number | undefined => {
    const temperature = temperatureAt(feet);
    return temperature === undefined ? undefined : temperature - standardTemperatureCelsius(feet);
  };
  const ofLevel = at(altitudeFeet);
  if (ofLevel === undefined) throw new CoreError('temperature-missing', { altitudeFeet });
  const below = levelsFeet.filter((feet) => feet < altitudeFeet).flatMap((feet) => at(feet) ?? []);
  return -Math.min(ofLevel, ...below);
}

/** @source icao-8168, with the temperature of the source taken as standard there less what the air is colder; and no further than it is published. */
function coldFeet({ altitudeFeet, highestGroundFeet, clearanceFeet, air, sourceFeet }: GroundCase): number {
  const cold = coldCelsius(air, altitudeFeet);
  if (cold < leastColdCelsius) return 0;
  if (sourceFeet === undefined) throw new CoreError('source-without-elevation', { coldCelsius: cold });
  const aboveSourceFeet = highestGroundFeet + clearanceFeet - sourceFeet;
  const atSourceCelsius = standardTemperatureCelsius(sourceFeet) - cold;
  if (aboveSourceFeet > highestAboveSourceFeet)
    throw new CoreError('cold-too-high', { aboveSourceFeet, most: highestAboveSourceFeet, sourceFeet, coldCelsius: cold });
  if (atSourceCelsius < coldestAtSourceCelsius) throw new CoreError('cold-too-cold', { celsius: atSourceCelsius, least: coldestAtSourceCelsius });
  return coldTemperatureCorrectionFeet(Math.max(0, aboveSourceFeet), sourceFeet, atSourceCelsius);
}

export function clearanceOf(given: GroundCase): Clearance {
  const cold = coldFeet(given);
  return { coldFeet: cold, spareFeet: given.altitudeFeet - given.highestGroundFeet - given.clearanceFeet - cold };
}
