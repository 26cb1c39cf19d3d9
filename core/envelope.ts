// The polygon of weight-and-balance limits: whether it is one area, where a line across it runs inside, and margins.
import { CoreError } from './errors';

/** x is the arm and y the weight, or the other way round where a section is taken along the weight. */
export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

export type Polygon = readonly PlanePoint[];

/** Part of a line that lies in the polygon, its ends included; both ends are the same where it only touches a corner. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** A computed arm or weight this close to a limit, relative to the largest coordinate, is on it: binary rounding, not a margin. */
const roundingShare = 1e-9;

/** Twice the signed area of the triangle: positive where c lies left of the way from a to b. */
const leftOf = (a: PlanePoint, b: PlanePoint, c: PlanePoint): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

const same = (a: PlanePoint, b: PlanePoint): boolean => a.x === b.x && a.y === b.y;

const inBox = (a: PlanePoint, b: PlanePoint, p: PlanePoint): boolean =>
  p.x >= Math.min(a.x, b.x) && p.x <= Math.max(a.x, b.x) && p.y >= Math.min(a.y, b.y) && p.y <= Math.max(a.y, b.y);

/**
 * Whether two segments share any point. @source cormen-algorithms, section 33.1, SEGMENTS-INTERSECT: the ends of each lie on
 * different sides of the other, or an end lies on the other.
 */
function segmentsMeet(a: PlanePoint, b: PlanePoint, c: PlanePoint, d: PlanePoint): boolean {
  const [d1, d2, d3, d4] = [leftOf(c, d, a), leftOf(c, d, b), leftOf(a, b, c), leftOf(a, b, d)];
  if (d1 * d2 < 0 && d3 * d4 < 0) return true;
  return (d1 === 0 && inBox(c, d, a)) || (d2 === 0 && inBox(c, d, b)) || (d3 === 0 && inBox(a, b, c)) || (d4 === 0 && inBox(a, b, d));
}

/** The outline as pairs of neighbouring corners, the last one back to the first. */
function edgesOf(polygon: Polygon): readonly (readonly [PlanePoint, PlanePoint])[] {
  return polygon.map((corner, index) => [corner, polygon[(index + 1) % polygon.length] ?? corner] as const);
}

/** Two neighbouring edges share a corner anyway; they are wrong where the second runs back along the first. */
const foldsBack = (a: PlanePoint, corner: PlanePoint, b: PlanePoint): boolean =>
  leftOf(a, corner, b) === 0 && (a.x - corner.x) * (b.x - corner.x) + (a.y - corner.y) * (b.y - corner.y) > 0;

function crossesItself(polygon: Polygon): boolean {
  const edges = edgesOf(polygon);
  return edges.some(([a, b], first) =>
    edges.some(([c, d], second) => {
      if (second <= first) return false;
      if (same(b, c) && second === first + 1) return foldsBack(a, b, d);
      if (same(d, a) && first === 0 && second === edges.length - 1) return foldsBack(c, a, b);
      return segmentsMeet(a, b, c, d);
    }),
  );
}

/** The polygon of these points in order, the closing point and repeats dropped; refuses what is not one plain area. */
export function polygonFromPoints(points: readonly PlanePoint[]): Polygon {
  const corners = points.filter((point, index) => index === 0 || !same(point, points[index - 1] ?? point));
  const [first] = corners;
  if (first !== undefined && corners.length > 1 && same(first, corners[corners.length - 1] ?? first)) corners.pop();
  const bad = (reason: 'too-few-points' | 'no-area' | 'self-crossing') => new CoreError('envelope-bad', { reason, points: points.length });
  const second = corners[1];
  if (first === undefined || second === undefined || corners.length < 3) throw bad('too-few-points');
  if (corners.every((corner) => leftOf(first, second, corner) === 0)) throw bad('no-area');
  if (crossesItself(corners)) throw bad('self-crossing');
  return corners;
}

export const transposed = (polygon: Polygon): Polygon => polygon.map(({ x, y }) => ({ x: y, y: x }));

/** y itself, or the height of a corner from which it differs by rounding only. */
function snappedToCorner(polygon: Polygon, y: number): number {
  const rounding = roundingShare * Math.max(...polygon.map((corner) => Math.abs(corner.y)));
  return polygon.find((corner) => Math.abs(corner.y - y) <= rounding)?.y ?? y;
}

/** Exactly the corner where y is a corner's, so that two edges meet it at one place. */
function crossingX(a: PlanePoint, b: PlanePoint, y: number): number {
  return y === b.y ? b.x : a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
}

/**
 * Whether a point that is on no edge lies inside: a ray to the right crosses the outline an odd number of times.
 * @source shimrat-1962, algorithm 112 (even-odd rule); an edge counts from its lower end, included, to its upper, excluded.
 */
function insideByCrossings(polygon: Polygon, x: number, y: number): boolean {
  const crossings = edgesOf(polygon).filter(([a, b]) => a.y > y !== b.y > y && crossingX(a, b, y) > x);
  return crossings.length % 2 === 1;
}

/**
 * Where the line at height y runs inside the polygon or along its outline, from low to high x. Between two neighbouring
 * meetings with the outline a line is inside or outside throughout, so one point in the middle decides.
 */
export function sectionAt(polygon: Polygon, height: number): readonly Interval[] {
  const y = snappedToCorner(polygon, height);
  const met = edgesOf(polygon).filter(([a, b]) => Math.min(a.y, b.y) <= y && y <= Math.max(a.y, b.y));
  const along = met.filter(([a, b]) => a.y === b.y);
  const xs = met.flatMap(([a, b]) => (a.y === b.y ? [a.x, b.x] : [crossingX(a, b, y)])).sort((a, b) => a - b);
  const intervals: Interval[] = [];
  for (const [index, x] of xs.entries()) {
    const before = xs[index - 1] ?? x;
    const middle = (before + x) / 2;
    const onEdge = along.some(([a, b]) => Math.min(a.x, b.x) <= middle && middle <= Math.max(a.x, b.x));
    const joined = index > 0 && (before === x || onEdge || insideByCrossings(polygon, middle, y));
    const last = intervals[intervals.length - 1];
    if (joined && last !== undefined) intervals[intervals.length - 1] = { low: last.low, high: x };
    else intervals.push({ low: x, high: x });
  }
  return intervals;
}

/** What counts as rounding along x. */
export const roundingAlongX = (polygon: Polygon): number => roundingShare * Math.max(...polygon.map(({ x }) => Math.abs(x)));

/** How far x lies outside the interval; 0 within it. */
export const distanceOutside = ({ low, high }: Interval, x: number): number => Math.max(low - x, x - high, 0);
