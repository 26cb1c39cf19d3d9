// Points of a followed line as values of the chart, and readings of them where a table wants them: at every printed step, never beyond what was seen.
import type { FollowedLine } from './followLine';
import type { Place } from './greyPicture';
import type { ChartRange, ChartValue } from './knownPoints';
import type { Straightened } from './straightened';

/** Which axis is the one that the table is entered with; the other one is the figure. */
export type InputAxis = 'across' | 'up';

/** In the units of the axes. */
export interface CurvePoint {
  readonly input: number;
  readonly figure: number;
}

export interface SeenPoint extends CurvePoint {
  /** Between it and the one before it the line was not seen. */
  readonly afterGap: boolean;
}

export interface Reading extends CurvePoint {
  /** seen: on the line; gap: where it was not seen, between places where it was; hand: clicked or moved by a person. */
  readonly how: 'seen' | 'gap' | 'hand';
}

export interface LineValues {
  /** Inputs rising. */
  readonly points: readonly SeenPoint[];
  /** The line goes back to inputs that it has passed; the longest part of it that does not is taken. */
  readonly turnsBack: boolean;
}

export const pointOf = (value: ChartValue, axis: InputAxis): CurvePoint =>
  axis === 'across' ? { input: value.across, figure: value.up } : { input: value.up, figure: value.across };

export const valueOfPoint = ({ input, figure }: CurvePoint, axis: InputAxis): ChartValue =>
  axis === 'across' ? { across: input, up: figure } : { across: figure, up: input };

/** Straightened pixels by which a line may lean back without being said to turn. */
const backwards = 3;

/** Stretches of the line in each of which the input goes one way, but for a trembling of `loose`. */
function stretches(inputs: readonly number[], loose: number): { readonly first: number; readonly last: number }[] {
  const found: { first: number; last: number }[] = [];
  for (let first = 0; first < inputs.length; first += 1) {
    let [farthest, direction, last] = [inputs[first] ?? 0, 0, first];
    for (let next = first + 1; next < inputs.length; next += 1) {
      const gone = (inputs[next] ?? 0) - farthest;
      if (direction === 0 && Math.abs(gone) > loose) direction = Math.sign(gone);
      if (direction !== 0 && gone * direction < -loose) break;
      if (direction !== 0 && gone * direction > 0) farthest = inputs[next] ?? 0;
      last = next;
    }
    found.push({ first, last });
    if (last === first) continue;
    first = last - 1;
  }
  return found;
}

/** The line as values with rising inputs. */
export function lineValues({ points }: FollowedLine, { valueOf }: Straightened, axis: InputAxis): LineValues {
  const values = points.map((point) => ({ ...pointOf(valueOf(point), axis), afterGap: point.afterGap }));
  const pixel = Math.abs(pointOf(valueOf({ x: 1, y: 1 }), axis).input - pointOf(valueOf({ x: 0, y: 0 }), axis).input);
  const parts = stretches(
    values.map(({ input }) => input),
    backwards * pixel,
  ).sort((one, other) => other.last - other.first - (one.last - one.first));
  const [longest = { first: 0, last: 0 }] = parts;
  const part = values.slice(longest.first, longest.last + 1);
  const falls = (part[part.length - 1]?.input ?? 0) < (part[0]?.input ?? 0);
  // Read the other way, a gap is before the point on its other side.
  const rising = falls ? part.map((point, index) => ({ ...point, afterGap: part[index + 1]?.afterGap ?? false })).reverse() : part;
  let greatest = -Infinity;
  let gap = false;
  const kept = rising.flatMap((point): SeenPoint[] => {
    gap = gap || point.afterGap;
    if (point.input <= greatest) return [];
    greatest = point.input;
    const own = { ...point, afterGap: gap };
    gap = false;
    return [own];
  });
  const size = (one: { first: number; last: number }): number => one.last - one.first;
  return { points: kept, turnsBack: parts.some((one) => one !== longest && size(one) > 8) };
}

/** By a straight line between the two seen points beside it. Undefined beyond the ends. */
export function readAt(points: readonly SeenPoint[], input: number): Reading | undefined {
  const above = points.findIndex((point) => point.input >= input);
  const [high, low] = [points[above], points[Math.max(0, above - 1)]];
  if (high === undefined || low === undefined || (points[0]?.input ?? Infinity) > input) return undefined;
  const part = high.input === low.input ? 1 : (input - low.input) / (high.input - low.input);
  return { input, figure: low.figure + (high.figure - low.figure) * part, how: part < 1 && high.afterGap ? 'gap' : 'seen' };
}

/** The power of ten that is a tenth of a small printed step, or the next one below: finer than that nobody reads a chart. */
export const finestOf = (minor: number): number => 10 ** Math.max(-2, Math.floor(Math.log10(minor / 10) + 1e-9));

export const roundedTo = (value: number, finest: number): number => Number((Math.round(value / finest) * finest).toFixed(2));

export interface ReadingsAsked {
  /** Of the input, between two readings. */
  readonly step: number;
  /** Small printed steps of the two axes. */
  readonly minor: { readonly input: number; readonly figure: number };
  /** The ends of the line too, between two steps; only where the table's curves may have points of their own. */
  readonly ends: boolean;
  /** By how much a line that ends below the frame's own line, or a grid line, is prolonged to its middle, in units of the input. */
  readonly beneath: number;
}

/** The end of what was seen and a step that lies hardly beyond it: prolonged along its last points, and marked as not seen. */
function beyond(points: readonly SeenPoint[], input: number, beneath: number): Reading | undefined {
  const [first, last] = [points[0], points[points.length - 1]];
  if (first === undefined || last === undefined || last.input - first.input < 3 * beneath) return undefined;
  const [end, inner] = input > last.input ? [last, last.input - 3 * beneath] : [first, first.input + 3 * beneath];
  const other = readAt(points, inner);
  if (other === undefined || Math.abs(input - end.input) > beneath) return undefined;
  return { input, figure: end.figure + ((end.figure - other.figure) / (end.input - other.input)) * (input - end.input), how: 'gap' };
}

export function readingsOf(points: readonly SeenPoint[], { step, minor, ends, beneath }: ReadingsAsked): Reading[] {
  const [first, last] = [points[0], points[points.length - 1]];
  if (first === undefined || last === undefined || !(step > 0)) return [];
  const inputs: number[] = [];
  for (let count = Math.ceil((first.input - beneath) / step - 1e-9); count * step <= last.input + beneath + step * 1e-9; count += 1)
    inputs.push(count * step);
  const finest = finestOf(minor.input);
  const isApart = (input: number): boolean => inputs.every((one) => Math.abs(one - input) > 0.15 * step);
  // Rounded towards the inside, so that nothing beyond the end is read.
  const outer = [
    Math.max(first.input, Math.ceil(first.input / finest - 1e-6) * finest),
    Math.min(last.input, Math.floor(last.input / finest + 1e-6) * finest),
  ].filter((input) => ends && isApart(input));
  return [...inputs, ...outer]
    .sort((one, other) => one - other)
    .flatMap((input) => {
      const read = readAt(points, input) ?? beyond(points, input, beneath);
      return read === undefined ? [] : [{ ...read, input: Number(input.toFixed(6)), figure: roundedTo(read.figure, finestOf(minor.figure)) }];
    });
}

/** The part of a range by which two lines of one curve may differ where both were seen. */
export function disagreement(one: readonly SeenPoint[], other: readonly SeenPoint[]): number {
  return Math.max(0, ...one.map(({ input, figure }) => Math.abs((readAt(other, input)?.figure ?? figure) - figure)));
}

/** A click within the known points. */
export const isWithin = ({ least, most }: ChartRange, { across, up }: ChartValue): boolean =>
  across >= least.across && across <= most.across && up >= least.up && up <= most.up;

/** Distance in a picture. */
export const apart = (one: Place, other: Place): number => Math.hypot(one.x - other.x, one.y - other.y);
