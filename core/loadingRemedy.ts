// What brings a loading inside: weight to take off, or a load to move from one station to another.
import { weightToShift } from './balanceChange';
import { CoreError } from './errors';
import { judgeLoading, type LoadingCase, type LoadingPoint, type LoadingResult, type Station } from './loading';

export type Remedy =
  | { readonly kind: 'none-needed' }
  /** So much too heavy: at which point. */
  | { readonly kind: 'take-off'; readonly weight: number; readonly point: 'zero fuel' | 'take-off' | 'landing' }
  /** `settles`: with this move every point of the flight is inside. */
  | { readonly kind: 'move'; readonly weight: number; readonly from: string; readonly to: string; readonly settles: boolean }
  | { readonly kind: 'none-found'; readonly direction: 'forward' | 'aft' };

const judged = ({ zeroFuel, takeoff, landing, onTheWay }: LoadingResult): readonly LoadingPoint[] => [takeoff, zeroFuel, landing, onTheWay];

const isSettled = (result: LoadingResult): boolean => judged(result).every(({ verdict }) => verdict === 'OK');

function overweight({ zeroFuel, takeoff, landing }: LoadingResult): Remedy | undefined {
  const points = [['take-off', takeoff], ['zero fuel', zeroFuel], ['landing', landing]] as const;
  const over = points.map(([point, { weightMargin }]) => ({ point, weight: -(weightMargin ?? 0) })).filter(({ weight }) => weight > 0);
  const heaviest = over.sort((a, b) => b.weight - a.weight)[0];
  return heaviest === undefined ? undefined : { kind: 'take-off', ...heaviest };
}

/** Loads can be moved among all stations but the heaviest, which is the empty aircraft. */
function movable(stations: readonly Station[]): Station[] {
  const heaviest = Math.max(...stations.map(({ weight }) => weight));
  return stations.filter(({ weight }) => weight < heaviest);
}

/** A hair more than the least weight, so that rounding does not leave the point outside by nothing. */
const hair = 1 + 1e-9;

function moved(loading: LoadingCase, from: string, to: string, weight: number): LoadingCase {
  const change = (name: string): number => (name === from ? -weight : name === to ? weight : 0);
  return { ...loading, stations: loading.stations.map((station) => ({ ...station, weight: station.weight + change(station.name) })) };
}

function move(loading: LoadingCase, point: LoadingPoint): Remedy {
  const tooFarAft = (point.aftMargin ?? 0) < 0;
  const direction = tooFarAft ? 'forward' : 'aft';
  const target = point.arm + (tooFarAft ? (point.aftMargin ?? 0) : -(point.forwardMargin ?? 0));
  const places = movable(loading.stations).sort((a, b) => (tooFarAft ? b.arm - a.arm : a.arm - b.arm));
  const from = places.find(({ weight }) => weight > 0);
  const to = places[places.length - 1];
  if (from === undefined || to === undefined || from.arm === to.arm) return { kind: 'none-found', direction };
  try {
    const weight = weightToShift(point.weight, point.arm, target, from.arm, to.arm) * hair;
    if (weight > from.weight) return { kind: 'none-found', direction };
    const settles = isSettled(judgeLoading(moved(loading, from.name, to.name, weight)));
    return { kind: 'move', weight, from: from.name, to: to.name, settles };
  } catch (thrown) {
    if (thrown instanceof CoreError) return { kind: 'none-found', direction };
    throw thrown;
  }
}

/** The first of: nothing to do; too heavy, so take off; a centre of gravity outside, so move from the station furthest on that side to the furthest on the other. */
export function remedyFor(loading: LoadingCase, result: LoadingResult): Remedy {
  if (isSettled(result)) return { kind: 'none-needed' };
  const heavy = overweight(result);
  if (heavy !== undefined) return heavy;
  const outside = judged(result).filter(({ inside }) => !inside);
  const withLimits = outside.find(({ forwardMargin }) => forwardMargin !== undefined);
  return withLimits === undefined ? { kind: 'none-found', direction: 'aft' } : move(loading, withLimits);
}
