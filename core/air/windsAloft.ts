// Winds aloft between the levels of a forecast: interpolated by height as vectors, never beyond the levels given.
import { CoreError } from '../basics/errors';
import { radiansFromDegrees } from '../basics/units';

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
  if (lowFeet < lowest || highFeet > highest)
    throw new CoreError('levels-too-few', { table: 'winds', lowest, highest, neededLow: lowFeet, neededHigh: highFeet });
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

/** Knots along a course over the ground. */
export interface SpeedsAlong {
  readonly trueAirspeedKnots: number;
  readonly headwindKnots: number;
  /** Positive from the right. */
  readonly crosswindKnots: number;
  readonly groundspeedKnots: number;
}

/**
 * Groundspeed along the course: sqrt(V^2 - crosswind^2) - headwind, V taken along the ground (the path's slope left out, as
 * handbooks do: 0.2 % at 4 degrees). @source phak, chapter on navigation, wind triangle.
 */
export function speedsAlong(
  trueAirspeedKnots: number,
  { toNorthKnots, toEastKnots }: WindVector,
  courseTrueDegrees: number,
  altitudeFeet: number,
): SpeedsAlong {
  const course = radiansFromDegrees(courseTrueDegrees);
  const headwindKnots = -(toNorthKnots * Math.cos(course) + toEastKnots * Math.sin(course)) + 0;
  const crosswindKnots = toNorthKnots * Math.sin(course) - toEastKnots * Math.cos(course);
  const groundspeedKnots = Math.sqrt(Math.max(0, trueAirspeedKnots ** 2 - crosswindKnots ** 2)) - headwindKnots;
  if (Math.abs(crosswindKnots) >= trueAirspeedKnots || groundspeedKnots <= 0)
    throw new CoreError('winds-too-strong', { altitudeFeet, trueAirspeedKnots, headwindKnots, crosswindKnots });
  return { trueAirspeedKnots, headwindKnots, crosswindKnots, groundspeedKnots };
}
