// Weight and balance: totals, centre of gravity, per cent of chord, and the place of a loading in its envelope.
import { distanceOutside, holds, polygonFromPoints, sectionAt, sheared, transposed, type Interval, type Polygon } from './envelope';
import { CoreError } from '../basics/errors';

export interface LoadedItem {
  readonly weight: number;
  readonly arm: number;
}

export interface Loading {
  readonly weight: number;
  readonly moment: number;
  readonly arm: number;
}

/** A sum of weights this small against its parts is what rounding leaves of nothing. */
const roundingShare = 1e-9;

/**
 * Moment = weight x arm; arm of the whole = total moment / total weight. Exact. Negative weights take something out.
 * @source weight-balance-handbook, chapter 2, weight and balance theory; phak, chapter on weight and balance, computational method.
 */
export function totalLoading(items: readonly LoadedItem[]): Loading {
  if (items.length === 0) throw new CoreError('nothing-given', { what: 'weights' });
  const weight = items.reduce((sum, item) => sum + item.weight, 0);
  const handled = items.reduce((sum, item) => sum + Math.abs(item.weight), 0);
  if (weight <= roundingShare * handled) throw new CoreError('no-weight', { total: weight });
  const moment = items.reduce((sum, item) => sum + item.weight * item.arm, 0);
  return { weight, moment, arm: moment / weight };
}

/** Per cent of the mean aerodynamic chord, aft of its leading edge. @source weight-balance-handbook, chapter 3, mean aerodynamic chord. */
export function percentOfChord(arm: number, leadingEdgeArm: number, chord: number): number {
  return ((arm - leadingEdgeArm) / chord) * 100;
}

/** The inverse of percentOfChord. */
export const armAtPercentOfChord = (percent: number, leadingEdgeArm: number, chord: number): number => leadingEdgeArm + (percent / 100) * chord;

export interface Envelope {
  readonly corners: readonly LoadedItem[];
  /** What its lines are straight in: between two corners a straight line of moments is a curve of arms. */
  readonly of: 'arm' | 'moment';
  /** x is the arm or the moment, y the weight. */
  readonly byWeight: Polygon;
  /** The same the other way round, for the limits of weight. */
  readonly byArm: Polygon;
}

export function envelopeFromPoints(points: readonly LoadedItem[]): Envelope {
  const byWeight = polygonFromPoints(points.map(({ weight, arm }) => ({ x: arm, y: weight })));
  return { of: 'arm', corners: byWeight.corners.map(({ x, y }) => ({ arm: x, weight: y })), byWeight, byArm: transposed(byWeight) };
}

export interface MomentCorner {
  readonly weight: number;
  readonly moment: number;
}

/** An envelope printed as moment against weight. @source weight-balance-handbook, centre of gravity moment envelope. */
export function envelopeFromMoments(points: readonly MomentCorner[]): Envelope {
  if (points.some(({ weight }) => weight <= 0)) throw new CoreError('envelope-bad', { reason: 'no-weight', points: points.length });
  const byWeight = polygonFromPoints(points.map(({ weight, moment }) => ({ x: moment, y: weight })));
  return { of: 'moment', corners: byWeight.corners.map(({ x, y }) => ({ arm: x / y, weight: y })), byWeight, byArm: transposed(byWeight) };
}

export interface EnvelopePlace {
  readonly inside: boolean;
  /** Arm from the forward limit at this weight, and to the aft limit; undefined where the envelope has no such weight. */
  readonly forwardMargin: number | undefined;
  readonly aftMargin: number | undefined;
  /** Weight to the upper limit at this arm; undefined where the envelope has no such arm. */
  readonly weightMargin: number | undefined;
}

const nearest = (intervals: readonly Interval[], x: number): Interval | undefined =>
  intervals.reduce<Interval | undefined>(
    (best, other) => (best === undefined || distanceOutside(other, x) < distanceOutside(best, x) ? other : best),
    undefined,
  );

/** The highest part of the envelope that begins below this weight, so that what is above it is above its limit; else the lowest part. */
const reachedFromBelow = (intervals: readonly Interval[], weight: number): Interval | undefined =>
  intervals.filter(({ low }) => low <= weight).pop() ?? intervals[0];

/**
 * The place of a loading in its envelope. On the line is inside.
 * @source weight-balance-handbook, chapter 5, centre of gravity envelopes; the margins are distances along the two axes.
 * Outside, the margins are to the part of the envelope that lies nearest along the arm.
 */
export function placeInEnvelope({ of, byWeight, byArm }: Envelope, weight: number, arm: number): EnvelopePlace {
  const perArm = of === 'arm' ? 1 : weight;
  const inside = holds(byWeight, { x: arm * perArm, y: weight });
  const limits = sectionAt(byWeight, weight).map(({ low, high }) => ({ low: low / perArm, high: high / perArm }));
  const across = nearest(limits, arm);
  // At one arm the moment rises with the weight: along that line a moment envelope is cut where it is sheared by as much.
  const upright = of === 'arm' ? sectionAt(byArm, arm) : sectionAt(transposed(sheared(byWeight, arm)), 0);
  const up = inside ? nearest(upright, weight) : reachedFromBelow(upright, weight);
  // On the line, rounding may leave a margin a hair below zero; it is none.
  const margin = (difference: number | undefined): number | undefined => (difference !== undefined && inside ? Math.max(difference, 0) : difference);
  return {
    inside,
    forwardMargin: margin(across && arm - across.low),
    aftMargin: margin(across && across.high - arm),
    weightMargin: margin(up && up.high - weight),
  };
}
