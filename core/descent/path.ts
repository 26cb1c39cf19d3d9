// Descent on a straight path: where to start down, and the rate that a distance takes.
// Distances before the fix are positive, beyond it negative; no wind or airspeed change on the way down.
import { lowestAltitudeFeet } from '../air/atmosphere';
import { CoreError } from '../basics/errors';
import { degreesFromRadians, feetFromNauticalMiles, minutesPerHour, nauticalMilesFromFeet, radiansFromDegrees } from '../basics/units';

/** The height to lose, never negative. */
function heightToLoseFeet(fromFeet: number, toFeet: number): number {
  if (toFeet > fromFeet) {
    throw new CoreError('outside-range', {
      quantity: 'toFeet',
      unit: 'feet, no higher than from_ft',
      low: lowestAltitudeFeet,
      high: fromFeet,
      received: toFeet,
    });
  }
  return fromFeet - toFeet;
}

/**
 * Where to start down for a path of this angle, nautical miles before the fix: (height to lose) / tan(angle), further
 * out by the distance of the crossing point before the fix. @source terminal-procedures, descent table (feet per
 * nautical mile of an angle). Exact over level ground; the Earth's curve is left out, as it is in the tables.
 */
export function descentStartNauticalMiles(fromFeet: number, toFeet: number, angleDegrees: number, beforeFixNauticalMiles: number): number {
  return nauticalMilesFromFeet(heightToLoseFeet(fromFeet, toFeet) / Math.tan(radiansFromDegrees(angleDegrees))) + beforeFixNauticalMiles;
}

export interface DescentAtRate {
  readonly startNauticalMiles: number;
  readonly minutes: number;
}

/** Minutes = height / rate; distance = groundspeed x minutes / 60. @source terminal-procedures, descent table. Exact. */
export function descentStartAtRate(
  fromFeet: number,
  toFeet: number,
  rateFeetPerMinute: number,
  groundspeedKnots: number,
  beforeFixNauticalMiles: number,
): DescentAtRate {
  const minutes = heightToLoseFeet(fromFeet, toFeet) / rateFeetPerMinute;
  return { startNauticalMiles: (groundspeedKnots * minutes) / minutesPerHour + beforeFixNauticalMiles, minutes };
}

export interface PathAngle {
  readonly angleDegrees: number;
  readonly feetPerNauticalMile: number;
}

/** tan(angle) = height / distance. @source terminal-procedures, descent table. Over level ground. */
export function pathAngle(fromFeet: number, toFeet: number, distanceNauticalMiles: number): PathAngle {
  const heightFeet = heightToLoseFeet(fromFeet, toFeet);
  return {
    angleDegrees: degreesFromRadians(Math.atan2(heightFeet, feetFromNauticalMiles(distanceNauticalMiles))),
    feetPerNauticalMile: heightFeet / distanceNauticalMiles,
  };
}

export interface DescentRate {
  readonly rateFeetPerMinute: number;
  readonly angleDegrees: number;
}

/** Rate = height x groundspeed / (60 x distance). @source terminal-procedures, descent table. */
export function descentRateNeeded(fromFeet: number, toFeet: number, distanceNauticalMiles: number, groundspeedKnots: number): DescentRate {
  const { angleDegrees, feetPerNauticalMile } = pathAngle(fromFeet, toFeet, distanceNauticalMiles);
  return { rateFeetPerMinute: (feetPerNauticalMile * groundspeedKnots) / minutesPerHour, angleDegrees };
}
