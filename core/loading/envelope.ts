// The polygon of weight-and-balance limits: whether it is one area, where a line across it runs inside, and margins.
import { CoreError } from '../basics/errors';

/** x is the arm and y the weight, or the other way round where a section is taken along the weight. */
export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

type Edge = readonly [PlanePoint, PlanePoint];

/** One plain area, made ready once for however many points are asked about. */
export interface Polygon {
  readonly corners: readonly PlanePoint[];
  readonly edges: readonly Edge[];
  /** Largest coordinates, by size whatever their sign. */
  readonly largestX: number;
  readonly largestY: number;
}

/** Part of a line that lies in the polygon, its ends included; both ends are the same where it only touches a corner. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** What lies this close to the outline, along each axis relative to its largest coordinate, is on it: binary rounding, not a margin. */
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
function prepared(corners: readonly PlanePoint[]): Polygon {
  const edges = corners.map((corner, index) => [corner, corners[(index + 1) % corners.length] ?? corner] as const);
  const largest = (values: readonly number[]): number => Math.max(...values.map(Math.abs));
  return { corners, edges, largestX: largest(corners.map(({ x }) => x)), largestY: largest(corners.map(({ y }) => y)) };
}

/** Two neighbouring edges share a corner anyway; they are wrong where the second runs back along the first. */
const foldsBack = (a: PlanePoint, corner: PlanePoint, b: PlanePoint): boolean =>
  leftOf(a, corner, b) === 0 && (a.x - corner.x) * (b.x - corner.x) + (a.y - corner.y) * (b.y - corner.y) > 0;

function crossesItself({ edges }: Polygon): boolean {
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
  const polygon = prepared(corners);
  if (crossesItself(polygon)) throw bad('self-crossing');
  return polygon;
}

/** Each corner moved along x by so much for each unit of y, so that a line of that slope stands upright at 0. Straight lines stay straight. */
export const sheared = ({ corners }: Polygon, perHeight: number): Polygon => prepared(corners.map(({ x, y }) => ({ x: x - perHeight * y, y })));

export const transposed = ({ corners }: Polygon): Polygon => prepared(corners.map(({ x, y }) => ({ x: y, y: x })));

/** y itself, or the height of a corner from which it differs by rounding only. */
function snappedToCorner({ corners, largestY }: Polygon, y: number): number {
  return corners.find((corner) => Math.abs(corner.y - y) <= roundingShare * largestY)?.y ?? y;
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
  let inside = false;
  for (const [a, b] of polygon.edges) if (a.y > y !== b.y > y && crossingX(a, b, y) > x) inside = !inside;
  return inside;
}

/**
 * Where the line at height y runs inside the polygon or along its outline, from low to high x. Between two neighbouring
 * meetings with the outline a line is inside or outside throughout, so one point in the middle decides.
 */
export function sectionAt(polygon: Polygon, height: number): readonly Interval[] {
  const y = snappedToCorner(polygon, height);
  const met = polygon.edges.filter(([a, b]) => Math.min(a.y, b.y) <= y && y <= Math.max(a.y, b.y));
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

/** Distance of a point from a segment, squared. */
function squaredDistance(a: PlanePoint, b: PlanePoint, p: PlanePoint): number {
  const along = { x: b.x - a.x, y: b.y - a.y };
  const share = ((p.x - a.x) * along.x + (p.y - a.y) * along.y) / (along.x ** 2 + along.y ** 2);
  const held = Math.min(Math.max(share, 0), 1);
  return (p.x - a.x - held * along.x) ** 2 + (p.y - a.y - held * along.y) ** 2;
}

/** On the outline, but for rounding. The axes are scaled by their largest coordinates, since arms and weights are unlike. */
function isOnOutline(polygon: Polygon, point: PlanePoint): boolean {
  const scaled = ({ x, y }: PlanePoint): PlanePoint => ({ x: x / polygon.largestX, y: y / polygon.largestY });
  return polygon.edges.some(([a, b]) => squaredDistance(scaled(a), scaled(b), scaled(point)) <= roundingShare ** 2);
}

/** Inside the polygon or on its outline. */
export const holds = (polygon: Polygon, point: PlanePoint): boolean => insideByCrossings(polygon, point.x, point.y) || isOnOutline(polygon, point);

/** How far x lies outside the interval; 0 within it. */
export const distanceOutside = ({ low, high }: Interval, x: number): number => Math.max(low - x, x - high, 0);
