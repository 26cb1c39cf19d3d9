// Distances, courses and points on the WGS84 ellipsoid. The arithmetic is geographiclib-geodesic; here it gets our
// units, our directions and our errors. The library is touched inside functions only, so that hosts can load it late.
import geodesic from 'geographiclib-geodesic';
import { CoreError } from '../basics/errors';
import { asTrueDegrees, metresFromNauticalMiles, nauticalMilesFromMetres, wrapDegrees, type TrueDegrees } from '../basics/units';

/** South and west negative. */
export interface Position {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}

export interface GeodesicLeg {
  readonly distanceNauticalMiles: number;
  readonly initialCourse: TrueDegrees;
  /** The course on arrival, in the direction of travel. */
  readonly finalCourse: TrueDegrees;
}

/** Closer than this, two positions are one: the direction between them would be rounding noise. */
const samePointMetres = 1e-6;

/**
 * The shortest line between two positions: its length, and its true courses at the start and at the end. At a pole a
 * course is measured from the meridian given as the pole's longitude; between exactly opposite points one of the many
 * shortest lines is taken. Throws for the same point twice. @source karney-2013, inverse problem; within 15 nanometres.
 */
export function geodesicLeg(from: Position, to: Position): GeodesicLeg {
  const solution = geodesic.Geodesic.WGS84.Inverse(from.latitudeDegrees, from.longitudeDegrees, to.latitudeDegrees, to.longitudeDegrees);
  // The library's types leave these open, since a caller may ask for less; the standard question gives all three.
  const { s12, azi1, azi2 } = solution as Required<typeof solution>;
  if (s12 < samePointMetres) throw new CoreError('no-direction', { reason: 'same-point' });
  return {
    distanceNauticalMiles: nauticalMilesFromMetres(s12),
    initialCourse: asTrueDegrees(wrapDegrees(azi1)),
    finalCourse: asTrueDegrees(wrapDegrees(azi2)),
  };
}

export interface PointOnLeg {
  readonly position: Position;
  /** The course there, in the direction of travel. */
  readonly course: TrueDegrees;
}

/** The point at a distance along the geodesic that leaves `from` on a true course. @source karney-2013, direct problem; within 15 nanometres. */
export function pointOnLeg(from: Position, course: TrueDegrees, distanceNauticalMiles: number): PointOnLeg {
  const solution = geodesic.Geodesic.WGS84.Direct(
    from.latitudeDegrees,
    from.longitudeDegrees,
    course,
    metresFromNauticalMiles(distanceNauticalMiles),
  );
  const { lat2, lon2, azi2 } = solution as Required<typeof solution>;
  // Adding 0 turns a negative zero into zero.
  return { position: { latitudeDegrees: lat2 + 0, longitudeDegrees: lon2 + 0 }, course: asTrueDegrees(wrapDegrees(azi2)) };
}

export const geodesicPoint = (from: Position, course: TrueDegrees, distanceNauticalMiles: number): Position =>
  pointOnLeg(from, course, distanceNauticalMiles).position;
