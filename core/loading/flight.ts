// One loading from its start to its empty tanks: the three points, the whole burn track between them, and what to change.
import { placeInEnvelope, totalLoading, type EnvelopePlace, type Envelope, type LoadedItem } from './balance';
import { CoreError } from '../basics/errors';
import { burnsAtBends, fuelItems, totalFuel, type Tank } from './tanks';
import type { Verdict } from '../basics/verdict';

export interface Station extends LoadedItem {
  readonly name: string;
  /** Undefined where the owner gave none. */
  readonly lateralArm: number | undefined;
}

/** Undefined: the manual has no such limit. */
export interface WeightLimits {
  readonly zeroFuel: number | undefined;
  readonly takeoff: number | undefined;
  readonly landing: number | undefined;
}

export interface LateralLimits {
  readonly left: number;
  readonly right: number;
}

export interface LoadingCase {
  readonly stations: readonly Station[];
  readonly tanks: readonly Tank[];
  readonly weightPerUnit: number;
  readonly taxiFuel: number;
  readonly tripFuel: number;
  readonly envelope: Envelope;
  readonly limits: WeightLimits;
  readonly lateralLimits: LateralLimits | undefined;
}

export interface LoadingPoint extends EnvelopePlace {
  readonly fuel: number;
  readonly weight: number;
  readonly arm: number;
  readonly limit: number | undefined;
  readonly verdict: Verdict;
}

/** Even parts of a burn that are looked at, besides every place where the way of the centre of gravity or the outline bends. */
const trackSteps = 400;
/** What lies this much above a limit, relative to it, is on it. */
const roundingShare = 1e-9;

function pointAt(loading: LoadingCase, burned: number, limit: number | undefined): LoadingPoint {
  const { weight, arm } = totalLoading([...loading.stations, ...fuelItems(loading.tanks, burned, loading.weightPerUnit)]);
  const place = placeInEnvelope(loading.envelope, weight, arm);
  const within = limit === undefined || weight <= limit * (1 + roundingShare);
  const toLimit = limit === undefined ? undefined : within ? Math.max(0, limit - weight) : limit - weight;
  // The lower of the two upper limits is the one that counts.
  const weightMargin = toLimit === undefined ? place.weightMargin : Math.min(toLimit, place.weightMargin ?? toLimit);
  return {
    ...place,
    weightMargin,
    fuel: Math.max(0, totalFuel(loading.tanks) - burned),
    weight,
    arm,
    limit,
    verdict: place.inside && within ? 'OK' : 'NO',
  };
}

/** The nearer of the two arm limits; outside, how far beyond it (negative). */
const armMargin = ({ inside, forwardMargin, aftMargin }: LoadingPoint): number =>
  forwardMargin === undefined || aftMargin === undefined ? (inside ? 0 : Number.NEGATIVE_INFINITY) : Math.min(forwardMargin, aftMargin);

function worstPoint(points: readonly LoadingPoint[]): LoadingPoint {
  return points.reduce((worst, point) => (armMargin(point) < armMargin(worst) ? point : worst));
}

const evenly = (from: number, to: number, steps: number): number[] =>
  Array.from({ length: steps + 1 }, (_, index) => (index === steps ? to : from + ((to - from) * index) / steps));

/** Points from one burn to another in equal parts, both ends among them. */
export function trackBetween(loading: LoadingCase, fromBurned: number, toBurned: number, steps: number): LoadingPoint[] {
  return evenly(fromBurned, toBurned, steps).map((burned) => pointAt(loading, burned, undefined));
}

/**
 * The burns at which to look: equal parts, each bend of the way, and each weight at which the outline has a corner. Between
 * two of them the moment and its limits are quadratic in the fuel, so what is missed is of second order in a small part.
 */
function burnsBetween({ stations, tanks, weightPerUnit, envelope }: LoadingCase, from: number, to: number): number[] {
  const full = stations.reduce((sum, { weight }) => sum + weight, 0) + totalFuel(tanks) * weightPerUnit;
  const atCorners = envelope.corners.map(({ weight }) => (full - weight) / weightPerUnit);
  return [...evenly(from, to, trackSteps), ...[...burnsAtBends(tanks), ...atCorners].filter((burned) => burned > from && burned < to)];
}

const pointsBetween = (loading: LoadingCase, from: number, to: number): LoadingPoint[] =>
  burnsBetween(loading, from, to).map((burned) => pointAt(loading, burned, undefined));

export type LateralSpan =
  /** Furthest left (negative) and right lateral centre of gravity from take-off to empty tanks. */
  | { readonly verdict: 'OK' | 'NO'; readonly left: number; readonly right: number }
  /** Nothing is known while one lateral arm is missing: the names of the stations and tanks without one. */
  | { readonly verdict: 'UNKNOWN'; readonly stations: readonly string[]; readonly tanks: readonly string[] };

type Placed<Item extends { readonly lateralArm: number | undefined }> = Item & { readonly lateralArm: number };
const isPlaced = <Item extends { readonly lateralArm: number | undefined }>(item: Item): item is Placed<Item> => item.lateralArm !== undefined;
const namesOf = (items: readonly { readonly name: string }[]): string[] => items.map(({ name }) => name);

/** Sum of weight x lateral arm over sum of weight, right positive. @source weight-balance-handbook, helicopter chapter, lateral CG. */
function lateralSpan(loading: LoadingCase, limits: LateralLimits): LateralSpan {
  const [stations, tanks] = [loading.stations.filter(isPlaced), loading.tanks.filter(isPlaced)];
  if (stations.length < loading.stations.length || tanks.length < loading.tanks.length) {
    return {
      verdict: 'UNKNOWN',
      stations: namesOf(loading.stations.filter((one) => !isPlaced(one))),
      tanks: namesOf(loading.tanks.filter((one) => !isPlaced(one))),
    };
  }
  const centres = burnsBetween(loading, loading.taxiFuel, totalFuel(tanks)).map((burned) => {
    const items = [...stations, ...fuelItems(tanks, burned, loading.weightPerUnit)];
    return totalLoading(items.map(({ weight, lateralArm }) => ({ weight, arm: lateralArm }))).arm;
  });
  const [left, right] = [Math.min(...centres), Math.max(...centres)];
  const rounding = roundingShare * Math.max(Math.abs(limits.left), Math.abs(limits.right));
  return { verdict: left >= limits.left - rounding && right <= limits.right + rounding ? 'OK' : 'NO', left, right };
}

export interface LoadingResult {
  readonly zeroFuel: LoadingPoint;
  readonly takeoff: LoadingPoint;
  readonly landing: LoadingPoint;
  /** The worst point from take-off to landing; NO where any of them is outside. */
  readonly onTheWay: LoadingPoint;
  /** The worst from landing on to empty tanks: CHECK where any is outside, since only a longer flight gets there. */
  readonly reserve: LoadingPoint;
  readonly lateral: LateralSpan | undefined;
}

function checkFuel({ tanks, taxiFuel, tripFuel }: LoadingCase): void {
  const onBoard = totalFuel(tanks);
  const needed = taxiFuel + tripFuel;
  if (needed > onBoard * (1 + roundingShare)) throw new CoreError('fuel-too-little', { onBoard, needed });
}

/**
 * The loading judged at zero fuel, take-off and landing, and all along the burn.
 * @source weight-balance-handbook, chapters 2 and 5; the track is flown tank by tank.
 */
export function judgeLoading(loading: LoadingCase): LoadingResult {
  checkFuel(loading);
  const { tanks, taxiFuel, tripFuel, limits, lateralLimits } = loading;
  const onBoard = totalFuel(tanks);
  const landed = Math.min(taxiFuel + tripFuel, onBoard);
  const flown = pointsBetween(loading, Math.min(taxiFuel, landed), landed);
  const later = pointsBetween(loading, landed, onBoard);
  const reserve = worstPoint(later);
  return {
    zeroFuel: pointAt(loading, onBoard, limits.zeroFuel),
    takeoff: pointAt(loading, taxiFuel, limits.takeoff),
    landing: pointAt(loading, landed, limits.landing),
    onTheWay: { ...worstPoint(flown), verdict: flown.every(({ inside }) => inside) ? 'OK' : 'NO' },
    reserve: { ...reserve, verdict: later.every(({ inside }) => inside) ? 'OK' : 'CHECK' },
    lateral: lateralLimits === undefined ? undefined : lateralSpan(loading, lateralLimits),
  };
}
