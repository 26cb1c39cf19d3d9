// Whether the empty aircraft of a loading is the one to which its weighing record leads.
import type { Envelope, Loading } from './balance';
import { spanOf } from './span';

/** More than the rounding of what is typed, as a part of the weight and of the envelope's width. Common practice, no source. */
const partOfWeight = 0.001;
const partOfWidth = 0.005;

/** Weights and arms in the units of the envelope. */
export function isAsWeighed(typed: Pick<Loading, 'weight' | 'arm'>, recorded: Loading, { corners }: Envelope): boolean {
  const { low, high } = spanOf(corners.map(({ arm }) => arm));
  const isNear = Math.abs(typed.arm - recorded.arm) <= partOfWidth * (high - low);
  return isNear && Math.abs(typed.weight - recorded.weight) <= partOfWeight * recorded.weight;
}
