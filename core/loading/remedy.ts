// What brings a loading inside: weight to take out or put in, or a load to move from one station to another.
import { weightToShift } from './balanceChange';
import { CoreError } from '../basics/errors';
import { judgeLoading, type LoadingCase, type LoadingPoint, type LoadingResult, type Station } from './flight';

export type Remedy =
  | { readonly kind: 'none-needed' }
  /** So much too heavy at this point. `from`: the station to take it from where not any will do; `settles`: then every point is inside. */
  | {
      readonly kind: 'take-out';
      readonly weight: number;
      readonly point: 'zero fuel' | 'take-off' | 'landing';
      readonly from: string | undefined;
      readonly settles: boolean;
    }
  /** Lighter at zero fuel than the envelope begins. */
  | { readonly kind: 'put-in'; readonly weight: number }
  /** `settles`: with this move every point of the flight is inside, and the lateral balance where it is known. */
  | { readonly kind: 'move'; readonly weight: number; readonly from: string; readonly to: string; readonly settles: boolean }
  | { readonly kind: 'none-found'; readonly direction: 'forward' | 'aft' }
  /** Inside fore and aft, and outside to one side. */
  | { readonly kind: 'lateral'; readonly direction: 'left' | 'right' }
  /** Inside fore and aft, and not known sideways. */
  | { readonly kind: 'lateral-unknown' };

const roundingShare = 1e-9;
/** A hair more than the least weight, so that rounding does not leave the point outside by nothing. */
const hair = 1 + 1e-9;
/** Each round brings the point that is outside to the line; a few rounds bring all. */
const mostRounds = 20;

const judged = ({ zeroFuel, takeoff, landing, onTheWay }: LoadingResult): readonly LoadingPoint[] => [takeoff, zeroFuel, landing, onTheWay];
const isInside = (result: LoadingResult): boolean => judged(result).every(({ verdict }) => verdict === 'OK');
const isSettled = (result: LoadingResult): boolean => isInside(result) && result.lateral?.verdict !== 'NO';

/** Where to take this weight from so that every point is inside: anywhere, one station, or nowhere alone. */
function leftBehind(loading: LoadingCase, weight: number): { readonly from: string | undefined; readonly settles: boolean } {
  const least = weight * hair;
  const able = movable(loading.stations).filter((station) => station.weight >= least);
  const without = (from: Station): LoadingCase => ({
    ...loading,
    stations: loading.stations.map((station) => (station === from ? { ...station, weight: station.weight - least } : station)),
  });
  const settling = able.filter((station) => isSettled(judgeLoading(without(station))));
  return { from: settling.length < able.length ? settling[0]?.name : undefined, settles: settling.length > 0 };
}

/** The heaviest point against its own limit and the top of the envelope. A slanting limit of the arm is no question of weight. */
function tooHeavy(loading: LoadingCase, { zeroFuel, takeoff, landing }: LoadingResult, top: number): Remedy | undefined {
  const points = [
    ['take-off', takeoff],
    ['zero fuel', zeroFuel],
    ['landing', landing],
  ] as const;
  const over = points.map(([point, { weight, limit }]) => ({ point, weight: weight - Math.min(limit ?? top, top) }));
  const worst = over.sort((a, b) => b.weight - a.weight)[0];
  return worst === undefined || worst.weight <= roundingShare * top
    ? undefined
    : { kind: 'take-out', ...worst, ...leftBehind(loading, worst.weight) };
}

/** Loads can be moved among all stations but the heaviest, which is the empty aircraft. */
function movable(stations: readonly Station[]): Station[] {
  const heaviest = Math.max(...stations.map(({ weight }) => weight));
  return stations.filter(({ weight }) => weight < heaviest);
}

function moved(loading: LoadingCase, from: Station, to: Station, weight: number): LoadingCase {
  const change = (station: Station): number => (station === from ? -weight : station === to ? weight : 0);
  return { ...loading, stations: loading.stations.map((station) => ({ ...station, weight: station.weight + change(station) })) };
}

type Direction = 'forward' | 'aft';
const wayBack = ({ aftMargin }: LoadingPoint): Direction => ((aftMargin ?? 0) < 0 ? 'forward' : 'aft');

/** What to move so that this point comes to the line; undefined where not even the whole aircraft is enough. */
function shiftFor(point: LoadingPoint, from: Station, to: Station): number | undefined {
  const target = point.arm + (wayBack(point) === 'forward' ? (point.aftMargin ?? 0) : -(point.forwardMargin ?? 0));
  try {
    return weightToShift(point.weight, point.arm, target, from.arm, to.arm) * hair;
  } catch (thrown) {
    if (thrown instanceof CoreError) return undefined;
    throw thrown;
  }
}

/** The least weight that brings point after point inside, or as many of them as this station's load can. */
function tryMove(
  loading: LoadingCase,
  start: LoadingResult,
  direction: Direction,
  from: Station,
  to: Station,
): { readonly weight: number; readonly settles: boolean } | undefined {
  let weight = 0;
  let result = start;
  for (let round = 0; round < mostRounds; round++) {
    const outside = judged(result).filter(({ inside }) => !inside);
    const next = outside.find((point) => wayBack(point) === direction);
    const more = next === undefined ? undefined : shiftFor(next, from, to);
    if (more === undefined || weight + more > from.weight) break;
    weight += more;
    result = judgeLoading(moved(loading, from, to, weight));
  }
  return weight === 0 ? undefined : { weight, settles: isSettled(result) };
}

/** From each station in turn, the furthest first, to the furthest on the other side: there the same weight does most. */
function move(loading: LoadingCase, result: LoadingResult, direction: Direction): Remedy {
  const places = movable(loading.stations).sort((a, b) => (direction === 'forward' ? b.arm - a.arm : a.arm - b.arm));
  const to = places[places.length - 1];
  if (to === undefined) return { kind: 'none-found', direction };
  const tried = places
    .filter(({ weight, arm }) => weight > 0 && arm !== to.arm)
    .map((from) => ({ from: from.name, to: to.name, found: tryMove(loading, result, direction, from, to) }));
  const best = tried.find(({ found }) => found?.settles === true) ?? tried.find(({ found }) => found !== undefined);
  return best?.found === undefined ? { kind: 'none-found', direction } : { kind: 'move', from: best.from, to: best.to, ...best.found };
}

function sideways({ lateralLimits }: LoadingCase, { lateral }: LoadingResult): Remedy {
  if (lateral === undefined || lateralLimits === undefined || lateral.verdict === 'OK') return { kind: 'none-needed' };
  if (lateral.verdict === 'UNKNOWN') return { kind: 'lateral-unknown' };
  return { kind: 'lateral', direction: lateral.left + lateral.right > lateralLimits.left + lateralLimits.right ? 'left' : 'right' };
}

/** The first of: nothing to do fore and aft, so look sideways; too heavy; too light; a centre of gravity outside, so move a load. */
export function remedyFor(loading: LoadingCase, result: LoadingResult): Remedy {
  if (isInside(result)) return sideways(loading, result);
  const heights = loading.envelope.corners.map(({ weight }) => weight);
  const heavy = tooHeavy(loading, result, Math.max(...heights));
  if (heavy !== undefined) return heavy;
  const short = Math.min(...heights) - result.zeroFuel.weight;
  if (short > roundingShare * Math.abs(Math.max(...heights))) return { kind: 'put-in', weight: short };
  const outside = judged(result).find(({ inside }) => !inside);
  return outside === undefined ? { kind: 'none-needed' } : move(loading, result, wayBack(outside));
}
