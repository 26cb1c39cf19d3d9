// Several crossing restrictions in one descent: the latest start that meets them all at one angle, and which one decides it.
import { CoreError } from '../basics/errors';
import { degreesFromRadians, feetFromNauticalMiles, radiansFromDegrees } from '../basics/units';

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
  /** Index of the restriction that allows the least at a distance; undefined where none bears on the path. */
  readonly lowestAt: (distance: number) => number | undefined;
  readonly crossings: readonly Crossing[];
}

/** What a restriction allows at most at a distance: its own altitude beyond it, a straight line up from it before it. */
const ceilingAt = ({ altitudeFeet, distanceNauticalMiles }: Crossing, feetPerNauticalMile: number, distance: number): number =>
  altitudeFeet + feetPerNauticalMile * Math.max(0, distanceNauticalMiles - distance);

interface Least {
  readonly index: number;
  readonly feet: number;
}

/** The lesser of two, the earlier row where they are equal. */
const lesser = (one: Least | undefined, other: Least | undefined): Least | undefined => {
  if (one === undefined || other === undefined) return one ?? other;
  if (one.feet === other.feet) return one.index < other.index ? one : other;
  return one.feet < other.feet ? one : other;
};

/**
 * Finds the lowest ceiling at any distance without looking at every restriction again: of those passed already the lowest altitude,
 * of those still ahead the lowest line at the start, since all their lines are parallel.
 */
function lowestCeiling(crossings: readonly Crossing[], feetPerNauticalMile: number): Path['lowestAt'] {
  const ceilings = crossings
    .map((crossing, index) => ({ ...crossing, index }))
    .filter(({ kind }) => kind !== 'at or above')
    .sort((one, other) => one.distanceNauticalMiles - other.distanceNauticalMiles);
  const passed: Least[] = [];
  for (const { index, altitudeFeet: feet } of ceilings) passed.push(lesser(passed[passed.length - 1], { index, feet }) ?? { index, feet });
  const ahead: Least[] = [];
  for (const { index, altitudeFeet, distanceNauticalMiles } of [...ceilings].reverse()) {
    const line = { index, feet: altitudeFeet + feetPerNauticalMile * distanceNauticalMiles };
    ahead.push(lesser(ahead[ahead.length - 1], line) ?? line);
  }
  ahead.reverse();
  return (distance) => {
    let [low, high] = [0, ceilings.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((ceilings[middle]?.distanceNauticalMiles ?? 0) <= distance) low = middle + 1;
      else high = middle;
    }
    const exact = (least: Least | undefined): Least | undefined => {
      const crossing = least === undefined ? undefined : crossings[least.index];
      return least === undefined || crossing === undefined ? undefined : { ...least, feet: ceilingAt(crossing, feetPerNauticalMile, distance) };
    };
    return lesser(exact(passed[low - 1]), exact(ahead[low]))?.index;
  };
}

function lowestFeet({ crossings, feetPerNauticalMile, lowestAt }: Path, distance: number): number {
  const crossing = crossings[lowestAt(distance) ?? -1];
  return crossing === undefined ? Number.POSITIVE_INFINITY : ceilingAt(crossing, feetPerNauticalMile, distance);
}

/**
 * The highest path that meets every "at" and "at or below", never steeper than the angle and never climbing: the lowest of cruise
 * and of all ceilings. It starts down latest, so an "at or above" that it misses is missed by every path of this angle.
 * @source common-practice: a descent is begun as late as its restrictions allow, and levelled off between them.
 */
const highestFeet = (path: Path, distance: number): number => Math.min(path.fromFeet, lowestFeet(path, distance));

const heldDownBy = (path: Path, distance: number): number | undefined =>
  lowestFeet(path, distance) < path.fromFeet ? path.lowestAt(distance) : undefined;

/** Too late for the path that would meet all, the aircraft follows its angle from here. */
const flownFeet = (path: Path, distance: number): number =>
  Math.max(highestFeet(path, distance), path.fromFeet - path.feetPerNauticalMile * distance);

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
  const path = { fromFeet, feetPerNauticalMile, crossings, lowestAt: lowestCeiling(crossings, feetPerNauticalMile) };
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
  const earliest = starts.reduce((least, start) => Math.min(least, start), Number.POSITIVE_INFINITY);
  return { outcomes, binding: Number.isFinite(earliest) ? starts.indexOf(earliest) : undefined };
}
