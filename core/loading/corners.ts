// Corners of an envelope that look like a slip of typing. Common practice, no source: guesses from sizes.
import type { Envelope } from './balance';
import { spanOf, type Span } from './span';

export interface CornerDoubt {
  readonly of: 'arm' | 'weight';
  readonly value: number;
  /** Where the other corners lie, or the stations; the maximum weight of the aircraft twice. */
  readonly others: Span;
  readonly from: 'corners' | 'stations' | 'maximum';
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Further from all the others than three times their width, and than a quarter of itself. */
const apart = (value: number, { low, high }: Span): boolean => {
  const off = Math.max(low - value, value - high);
  return high > low && off > 3 * (high - low) && off > Math.abs(value) / 4;
};

function farFromOthers(of: CornerDoubt['of'], values: readonly number[]): CornerDoubt | undefined {
  const without = (index: number): Span => spanOf(values.filter((_, other) => other !== index));
  const alone = values.findIndex((value, index) => values.length > 1 && apart(value, without(index)));
  const value = values[alone];
  return value === undefined ? undefined : { of, value, others: without(alone), from: 'corners' };
}

/** A manual may print the envelope up to the ramp weight; beyond that a corner is higher than the aircraft may weigh. */
const aboveMaximum = 1.03;

/**
 * How far, as a part of the width of all the others, a corner may stand out alone at its end. The heaviest and the lightest weight are each
 * the edge of two corners, and the aft limit is a line; the forward limit leans aft with the weight, so its foot may stand out, and its head
 * not. A foot that leaves the outline hollow was slipped: limits lean more with more weight, not less.
 */
const standsOut = { weight: 0.25, aft: 0.35, forward: 0.3, leaningFoot: 1.5 } as const;

/** That the outline turns the one way round at every corner. */
function isConvex(corners: readonly Corner[]): boolean {
  const turns = corners.map((one, index) => {
    const [next, after] = [corners[(index + 1) % corners.length] ?? one, corners[(index + 2) % corners.length] ?? one];
    return (next.x - one.x) * (after.y - next.y) - (next.y - one.y) * (after.x - next.x);
  });
  return turns.every((turn) => turn >= 0) || turns.every((turn) => turn <= 0);
}

function aloneAtEnd(corners: readonly Corner[]): CornerDoubt | undefined {
  const leastWeight = Math.min(...corners.map(({ y }) => y));
  const foot = isConvex(corners) ? standsOut.leaningFoot : standsOut.forward;
  const ends = [
    { of: 'weight', at: ({ y }: Corner) => y, sign: 1, most: () => standsOut.weight },
    { of: 'weight', at: ({ y }: Corner) => y, sign: -1, most: () => standsOut.weight },
    { of: 'arm', at: ({ x }: Corner) => x, sign: 1, most: () => standsOut.aft },
    { of: 'arm', at: ({ x }: Corner) => x, sign: -1, most: ({ y }: Corner) => (y === leastWeight ? foot : standsOut.forward) },
  ] as const;
  for (const { of, at, sign, most } of ends) {
    const outermost = corners.reduce((one, other) => (sign * at(other) > sign * at(one) ? other : one));
    const others = spanOf(corners.filter((one) => one !== outermost).map(at));
    const off = sign > 0 ? at(outermost) - others.high : others.low - at(outermost);
    if (others.high > others.low && off > most(outermost) * (others.high - others.low)) return { of, value: at(outermost), others, from: 'corners' };
  }
  return undefined;
}

/** Arms beyond the stations by more than these lie apart, or a quarter of them: the centre of gravity is always among stations and tanks. */
function farFromStations(arms: readonly number[], stations: Span): CornerDoubt | undefined {
  const reach = Math.max(stations.high - stations.low, Math.max(Math.abs(stations.low), Math.abs(stations.high)) / 4);
  const value = reach > 0 ? arms.find((arm) => arm > stations.high + reach || arm < stations.low - reach) : undefined;
  return value === undefined ? undefined : { of: 'arm', value, others: stations, from: 'stations' };
}

/** A corner that no loading comes near is no limit: one far from all the others or from the stations, or above what the aircraft may weigh. */
export function doubtOfCorners(stationArms: readonly number[], envelope: Envelope, maximumWeight: number | undefined): CornerDoubt | undefined {
  // The first corner may stand at the end again.
  const all = envelope.corners.map(({ arm, weight }) => ({ x: arm, y: weight }));
  const corners = all.filter((corner, index) => all.findIndex(({ x, y }) => x === corner.x && y === corner.y) === index);
  const [arms, weights] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const far = farFromOthers('arm', arms) ?? farFromOthers('weight', weights) ?? farFromStations(arms, spanOf(stationArms));
  if (far !== undefined) return far;
  const span = spanOf(weights);
  if (span.low > 0 && span.high > 4 * span.low)
    return { of: 'weight', value: span.high, others: spanOf(weights.filter((one) => one < span.high)), from: 'corners' };
  if (maximumWeight !== undefined && span.high > aboveMaximum * maximumWeight)
    return { of: 'weight', value: span.high, others: spanOf([maximumWeight]), from: 'maximum' };
  return aloneAtEnd(corners);
}
