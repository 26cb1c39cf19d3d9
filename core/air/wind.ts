// Wind against a direction: the parts along and across it, and the triangle of course, airspeed and wind.
// All directions of one call are in one reference, true or magnetic; the wind's is where it blows from.
import { CoreError } from '../basics/errors';
import { degreesFromRadians, radiansFromDegrees, turnDegrees, wrapDegrees } from '../basics/units';

export interface WindComponents {
  /** Negative is a tailwind. */
  readonly headwindKnots: number;
  /** Positive from the right. */
  readonly crosswindKnots: number;
}

/** The sine of an angle in degrees, exactly 0 or 1 at the quarter turns, so that a wind down the runway has no crosswind. */
function sineOfDegrees(degrees: number): number {
  const turn = turnDegrees(0, degrees);
  const folded = Math.abs(turn) > 90 ? Math.sign(turn) * 180 - turn : turn;
  return Math.sin(radiansFromDegrees(folded));
}

const cosineOfDegrees = (degrees: number): number => sineOfDegrees(degrees + 90);

/**
 * Headwind = wind cos(angle), crosswind = wind sin(angle), the angle being from the direction to where the wind is from.
 * @source phak, chapter on performance, crosswind component chart. Exact.
 */
export function windComponents(directionDegrees: number, windFromDegrees: number, windKnots: number): WindComponents {
  const angle = turnDegrees(directionDegrees, windFromDegrees);
  // Adding 0 turns a negative zero into zero.
  return { headwindKnots: windKnots * cosineOfDegrees(angle) + 0, crosswindKnots: windKnots * sineOfDegrees(angle) + 0 };
}

export interface WindTriangle {
  readonly headingDegrees: number;
  readonly groundspeedKnots: number;
  /** From the course to the heading, right positive. */
  readonly correctionDegrees: number;
}

/**
 * sin(correction) = crosswind / true airspeed; groundspeed = true airspeed cos(correction) - headwind.
 * @source phak, chapter on navigation, wind triangle. Exact for a steady wind.
 */
export function windTriangle(courseDegrees: number, trueAirspeedKnots: number, windFromDegrees: number, windKnots: number): WindTriangle {
  const { headwindKnots, crosswindKnots } = windComponents(courseDegrees, windFromDegrees, windKnots);
  const along = Math.sqrt(Math.max(0, trueAirspeedKnots ** 2 - crosswindKnots ** 2));
  const groundspeedKnots = along - headwindKnots;
  if (Math.abs(crosswindKnots) >= trueAirspeedKnots || groundspeedKnots <= 0) {
    throw new CoreError('wind-too-strong', { windKnots, trueAirspeedKnots, headwindKnots, crosswindKnots });
  }
  const correctionDegrees = degreesFromRadians(Math.atan2(crosswindKnots, along));
  return { headingDegrees: wrapDegrees(courseDegrees + correctionDegrees), groundspeedKnots, correctionDegrees };
}
