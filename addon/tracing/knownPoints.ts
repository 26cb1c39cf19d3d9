// Points of a chart whose values are printed at its axes, clicked in its picture: they tell where every value of the chart is in the picture.
import type { Place } from './greyPicture';
import { homographyThrough, inverseOf, mapped, type Homography } from './homography';

/** A value on the axis across the page, and one on the axis up the page, in the units of the axes. */
export interface ChartValue {
  readonly across: number;
  readonly up: number;
}

export interface KnownPoint {
  /** In the picture. */
  readonly at: Place;
  readonly value: ChartValue;
}

/** The rectangle of values within the known points. */
export interface ChartRange {
  readonly least: ChartValue;
  readonly most: ChartValue;
}

export interface ChartFrame {
  readonly range: ChartRange;
  readonly placeOf: (value: ChartValue) => Place | undefined;
  readonly valueAt: (place: Place) => ChartValue | undefined;
  /** Where in the picture the values of each axis grow; people are asked to look where that is not to the right and up. */
  readonly grows: { readonly across: Heading; readonly up: Heading };
  /** Pixels by which the known points lie beside where all of them together say; 0 with four points, which cannot disagree. */
  readonly off: number;
}

export type Heading = 'right' | 'left' | 'up' | 'down';

const heading = (from: Place, to: Place): Heading => {
  const [x, y] = [to.x - from.x, to.y - from.y];
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y < 0 ? 'up' : 'down';
};

export type FrameProblem =
  | { readonly kind: 'few'; readonly missing: number }
  | { readonly kind: 'sameAcross' | 'sameUp' | 'sameValue' | 'samePlace' | 'nearLine' | 'crossed' }
  | { readonly kind: 'disagree'; readonly point: number; readonly pixels: number };

export type FrameFound = { readonly frame: ChartFrame } | { readonly problem: FrameProblem };

const least = (values: readonly number[]): number => Math.min(...values);
const most = (values: readonly number[]): number => Math.max(...values);

function rangeOf(points: readonly KnownPoint[]): ChartRange {
  const [across, up] = [points.map(({ value }) => value.across), points.map(({ value }) => value.up)];
  return { least: { across: least(across), up: least(up) }, most: { across: most(across), up: most(up) } };
}

const isTwice = <Item>(items: readonly Item[], same: (one: Item, other: Item) => boolean): boolean =>
  items.some((one, index) => items.slice(index + 1).some((other) => same(one, other)));

/** Twice the area of a triangle; the sign tells which way round. */
const turn = (a: Place, b: Place, c: Place): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** How broad the places lie, across the direction in which they lie longest, as a part of that length. */
function breadth(places: readonly Place[]): number {
  let longest = 0;
  let widest = 0;
  for (const a of places)
    for (const b of places) {
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      if (length <= longest) continue;
      longest = length;
      widest = most(places.map((c) => Math.abs(turn(a, b, c)) / length));
    }
  return longest === 0 ? 0 : widest / longest;
}

/** Each triangle of known points must go the same way round in the picture as on the chart, or all of them the other way: else two were confused. */
function isCrossed(points: readonly KnownPoint[]): boolean {
  const values = points.map(({ value }) => ({ x: value.across, y: value.up }));
  const area = turnsOver(values);
  const signs = new Set<number>();
  for (let a = 0; a < points.length; a += 1)
    for (let b = a + 1; b < points.length; b += 1)
      for (let c = b + 1; c < points.length; c += 1) {
        const [one, two, three] = [values[a], values[b], values[c]];
        const [first, second, third] = [points[a]?.at, points[b]?.at, points[c]?.at];
        if (!one || !two || !three || !first || !second || !third) continue;
        const onChart = turn(one, two, three) / area;
        // Three in a line on the chart may lean either way in a picture that was clicked by hand.
        if (Math.abs(onChart) > 0.02) signs.add(Math.sign(onChart * turn(first, second, third)));
      }
  return signs.size > 1;
}
const turnsOver = (values: readonly Place[]): number =>
  (most(values.map(({ x }) => x)) - least(values.map(({ x }) => x))) * (most(values.map(({ y }) => y)) - least(values.map(({ y }) => y))) || 1;

const narrowest = 0.05;

function problemOf(points: readonly KnownPoint[]): FrameProblem | undefined {
  if (points.length < 4) return { kind: 'few', missing: 4 - points.length };
  const { least: low, most: high } = rangeOf(points);
  if (low.across === high.across) return { kind: 'sameAcross' };
  if (low.up === high.up) return { kind: 'sameUp' };
  if (isTwice(points, ({ value: one }, { value: other }) => one.across === other.across && one.up === other.up)) return { kind: 'sameValue' };
  if (isTwice(points, ({ at: one }, { at: other }) => Math.hypot(one.x - other.x, one.y - other.y) < 3)) return { kind: 'samePlace' };
  const inSquare = points.map(({ value }) => ({
    x: (value.across - low.across) / (high.across - low.across),
    y: (value.up - low.up) / (high.up - low.up),
  }));
  if (breadth(points.map(({ at }) => at)) < narrowest || breadth(inSquare) < narrowest) return { kind: 'nearLine' };
  // Of a further point that lies wrong it is said by how much.
  return isCrossed(points.slice(0, 4)) ? { kind: 'crossed' } : undefined;
}

/** Known points may lie beside one another's word by this many pixels, or this part of the chart's size in the picture: a hand and a warped page. */
const mostOff = { pixels: 4, part: 0.006 };

function worstOf(points: readonly KnownPoint[], toPicture: Homography, unit: (value: ChartValue) => Place): { point: number; pixels: number } {
  const offs = points.map(({ at, value }) => {
    const told = mapped(toPicture, unit(value));
    return told === undefined ? Infinity : Math.hypot(told.x - at.x, told.y - at.y);
  });
  const pixels = most(offs);
  return { point: offs.indexOf(pixels) + 1, pixels };
}

/** Where all values of the chart are in the picture, as far as the known points enclose them; or why that cannot be told. */
export function chartFrame(points: readonly KnownPoint[]): FrameFound {
  const wrong = problemOf(points);
  if (wrong !== undefined) return { problem: wrong };
  const range = rangeOf(points);
  const { least: low, most: high } = range;
  const unit = ({ across, up }: ChartValue): Place => ({
    x: (across - low.across) / (high.across - low.across),
    y: (up - low.up) / (high.up - low.up),
  });
  const toPicture = homographyThrough(points.map(({ at, value }) => ({ from: unit(value), to: at })));
  const fromPicture = toPicture && inverseOf(toPicture);
  if (toPicture === undefined || fromPicture === undefined) return { problem: { kind: 'nearLine' } };
  const corners = [0, 1].flatMap((x) => [0, 1].map((y) => mapped(toPicture, { x, y })));
  const [origin, upEnd, acrossEnd] = corners;
  if (origin === undefined || upEnd === undefined || acrossEnd === undefined || corners.includes(undefined)) return { problem: { kind: 'crossed' } };
  const worst = worstOf(points, toPicture, unit);
  const size = Math.max(Math.hypot(acrossEnd.x - origin.x, acrossEnd.y - origin.y), Math.hypot(upEnd.x - origin.x, upEnd.y - origin.y));
  if (worst.pixels > Math.max(mostOff.pixels, mostOff.part * size)) return { problem: { kind: 'disagree', ...worst } };
  return {
    frame: {
      range,
      placeOf: (value) => mapped(toPicture, unit(value)),
      valueAt: (place) => {
        const found = mapped(fromPicture, place);
        return found && { across: low.across + found.x * (high.across - low.across), up: low.up + found.y * (high.up - low.up) };
      },
      grows: { across: heading(origin, acrossEnd), up: heading(origin, upEnd) },
      off: points.length === 4 ? 0 : worst.pixels,
    },
  };
}
