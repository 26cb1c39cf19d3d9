// Several crossing restrictions in one descent: the latest start that meets them all at one angle, and which one decides it.
import { CoreError } from './errors';
import { degreesFromRadians, feetFromNauticalMiles, radiansFromDegrees } from './units';

export type CrossingKind = 'at' | 'at or below' | 'at or above';

export interface Crossing {
  /** Along the track from here to the crossing point. */
  readonly distanceNauticalMiles: number;
  readonly altitudeFeet: number;
  readonly kind: CrossingKind;
}

export interface CrossingOutcome {
  /** The latest start down, from here, for this restriction alone; negative is behind. Undefined where it asks for no descent. */
  readonly startNauticalMiles: number | undefined;
  /** Altitude over the crossing point on the path that is flown. */
  readonly reachedFeet: number;
  /** Reached less asked: positive is too high, negative too low, 0 is met. */
  readonly missFeet: number;
  /** Where too low: index of the restriction that brings the path down so far; undefined where the flight begins too low already. */
  readonly heldDownBy: number | undefined;
  /** The angle, straight from here, that just meets it; undefined at the crossing point itself and where no descent is asked for. */
  readonly angleNeededDegrees: number | undefined;
}

export interface CrossingsDescent {
  readonly outcomes: readonly CrossingOutcome[];
  /** Index of the restriction that decides the start; undefined where none asks for a descent. */
  readonly binding: number | undefined;
}

/** Far below what an altimeter shows. */
const roundingFeet = 0.01;

interface Path {
  readonly fromFeet: number;
  readonly feetPerNauticalMile: number;
  readonly crossings: readonly Crossing[];
}

/** What each restriction allows at most at a distance: its own altitude beyond it, a straight line up from it before it. */
const ceilingsAt = ({ feetPerNauticalMile, crossings }: Path, distance: number): number[] =>
  crossings.map(({ altitudeFeet, distanceNauticalMiles, kind }) =>
    kind === 'at or above' ? Number.POSITIVE_INFINITY : altitudeFeet + feetPerNauticalMile * Math.max(0, distanceNauticalMiles - distance),
  );

/**
 * The highest path that meets every "at" and "at or below", never steeper than the angle and never climbing: the lowest of cruise
 * and of all ceilings. It starts down latest, so an "at or above" that it misses is missed by every path of this angle.
 * @source common-practice: a descent is begun as late as its restrictions allow, and levelled off between them.
 */
const highestFeet = (path: Path, distance: number): number => Math.min(path.fromFeet, ...ceilingsAt(path, distance));

function heldDownBy(path: Path, distance: number): number | undefined {
  const ceilings = ceilingsAt(path, distance);
  const lowest = Math.min(...ceilings);
  return lowest < path.fromFeet ? ceilings.indexOf(lowest) : undefined;
}

/** Too late for the path that would meet all, the aircraft follows its angle from here. */
const flownFeet = (path: Path, distance: number): number => Math.max(highestFeet(path, distance), path.fromFeet - path.feetPerNauticalMile * distance);

function missOf({ altitudeFeet, kind }: Crossing, reachedFeet: number): number {
  const miss = reachedFeet - altitudeFeet;
  if (Math.abs(miss) <= roundingFeet || (kind === 'at or below' && miss < 0) || (kind === 'at or above' && miss > 0)) return 0;
  return miss;
}

function angleOf(heightFeet: number, distanceNauticalMiles: number): number | undefined {
  return distanceNauticalMiles > 0 ? degreesFromRadians(Math.atan2(heightFeet, feetFromNauticalMiles(distanceNauticalMiles))) : undefined;
}

export function descentCrossings(crossings: readonly Crossing[], fromFeet: number, angleDegrees: number): CrossingsDescent {
  if (crossings.length === 0) throw new CoreError('nothing-given', { what: 'altitude_ft' });
  const feetPerNauticalMile = feetFromNauticalMiles(Math.tan(radiansFromDegrees(angleDegrees)));
  const path = { fromFeet, feetPerNauticalMile, crossings };
  const outcomes = crossings.map((crossing): CrossingOutcome => {
    const { distanceNauticalMiles, altitudeFeet, kind } = crossing;
    const height = fromFeet - altitudeFeet;
    const descends = kind !== 'at or above' && height > 0;
    const reachedFeet = flownFeet(path, distanceNauticalMiles);
    const missFeet = missOf(crossing, reachedFeet);
    return {
      startNauticalMiles: descends ? distanceNauticalMiles - height / feetPerNauticalMile : undefined,
      reachedFeet,
      missFeet,
      heldDownBy: missFeet < 0 ? heldDownBy(path, distanceNauticalMiles) : undefined,
      angleNeededDegrees: descends ? angleOf(height, distanceNauticalMiles) : undefined,
    };
  });
  const starts = outcomes.map(({ startNauticalMiles }) => startNauticalMiles ?? Number.POSITIVE_INFINITY);
  const earliest = Math.min(...starts);
  return { outcomes, binding: Number.isFinite(earliest) ? starts.indexOf(earliest) : undefined };
}
