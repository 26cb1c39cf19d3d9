// Winds aloft between the levels of a forecast: interpolated by height as vectors, never beyond the levels given.
import { CoreError } from './errors';
import { radiansFromDegrees } from './units';

export interface WindLevel {
  readonly altitudeFeet: number;
  /** True, where the wind blows from. */
  readonly fromDegrees: number;
  readonly knots: number;
}

/** The air's own motion, knots. */
export interface WindVector {
  readonly toNorthKnots: number;
  readonly toEastKnots: number;
}

export interface WindsAloft {
  /** Levels, rising. */
  readonly altitudesFeet: readonly number[];
  readonly vectors: readonly WindVector[];
}

function vectorOf({ fromDegrees, knots }: WindLevel): WindVector {
  const from = radiansFromDegrees(fromDegrees);
  return { toNorthKnots: -knots * Math.cos(from), toEastKnots: -knots * Math.sin(from) };
}

/** Arranges the levels by height; each height must stand there once. */
export function windsAloft(levels: readonly WindLevel[]): WindsAloft {
  if (levels.length === 0) throw new CoreError('nothing-given', { what: 'winds' });
  const rising = [...levels].sort((one, other) => one.altitudeFeet - other.altitudeFeet);
  rising.forEach(({ altitudeFeet }, index) => {
    if (index > 0 && rising[index - 1]?.altitudeFeet === altitudeFeet) throw new CoreError('level-repeated', { table: 'winds', altitudeFeet });
  });
  return { altitudesFeet: rising.map(({ altitudeFeet }) => altitudeFeet), vectors: rising.map(vectorOf) };
}

/** Throws unless the levels reach from the lower to the higher altitude. */
export function mustReach({ altitudesFeet }: WindsAloft, lowFeet: number, highFeet: number): void {
  const [lowest = 0] = altitudesFeet;
  const highest = altitudesFeet[altitudesFeet.length - 1] ?? 0;
  if (lowFeet < lowest || highFeet > highest) throw new CoreError('levels-too-few', { table: 'winds', lowest, highest, neededLow: lowFeet, neededHigh: highFeet });
}

/**
 * The wind at a height within the levels: each component in a straight line between the level below and the one above.
 * @source common-practice: winds aloft are interpolated between the levels of the forecast. Unlike direction and speed taken
 * singly, the vector has no jump where the direction passes north.
 */
export function windAt(winds: WindsAloft, altitudeFeet: number): WindVector {
  mustReach(winds, altitudeFeet, altitudeFeet);
  const { altitudesFeet, vectors } = winds;
  const above = altitudesFeet.findIndex((level) => level >= altitudeFeet);
  const [low, high] = [vectors[above - 1], vectors[above]];
  const [lowFeet, highFeet] = [altitudesFeet[above - 1], altitudesFeet[above]];
  if (high === undefined || highFeet === undefined) throw new Error('a height within the levels has one of them at or above it');
  if (low === undefined || lowFeet === undefined) return high;
  const part = (altitudeFeet - lowFeet) / (highFeet - lowFeet);
  const between = (one: number, other: number): number => one + (other - one) * part;
  return { toNorthKnots: between(low.toNorthKnots, high.toNorthKnots), toEastKnots: between(low.toEastKnots, high.toEastKnots) };
}
