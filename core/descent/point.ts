// Where on the map a descent starts: a point on the geodesic from the present position to the fix.
import { geodesicLeg, geodesicPoint, type Position } from '../navigation/geodesy';

export interface DescentPoint extends Position {
  /** From the present position, along the leg; negative is behind. */
  readonly distanceNauticalMiles: number;
}

/** The point this far before the fix, on the line from the present position to it or on that line drawn on. @source karney-2013. */
export function descentPoint(present: Position, fix: Position, beforeFixNauticalMiles: number): DescentPoint {
  const leg = geodesicLeg(present, fix);
  const distanceNauticalMiles = leg.distanceNauticalMiles - beforeFixNauticalMiles;
  return { distanceNauticalMiles, ...geodesicPoint(present, leg.initialCourse, distanceNauticalMiles) };
}
