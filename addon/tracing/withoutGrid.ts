// The printed grid taken out of a straightened picture. There its lines are level or upright and long, as no curve is for long: along a row (and a
// column) the middle one of many pixels tells how dark the grid is there.
import type { Ink } from './straightened';

export interface WithoutGrid {
  /** What is dark beside the grid. */
  readonly lines: Ink;
  /** How dark the grid itself is; a line below it cannot be seen where it is as dark as the line. */
  readonly grid: Ink;
}

/** Part of the picture's side over which the middle is taken: short enough for a grid that leans a little, long enough for no curve to fill half. */
const part = 1 / 3;
const levels = 64;

/** The middle one of the pixels about each pixel of a row; near the ends, of the first or last `length`. */
function middles(row: Float32Array, length: number): Float32Array {
  const counts = new Int32Array(levels);
  const levelOf = (index: number): number => Math.min(levels - 1, Math.floor((row[index] ?? 0) * levels));
  const change = (index: number, by: number): void => {
    const level = levelOf(index);
    counts[level] = (counts[level] ?? 0) + by;
  };
  for (let index = 0; index < length; index += 1) change(index, 1);
  const found = new Float32Array(row.length);
  let first = 0;
  for (let index = 0; index < row.length; index += 1) {
    const wanted = Math.min(Math.max(0, index - Math.floor(length / 2)), row.length - length);
    for (; first < wanted; first += 1) {
      change(first, -1);
      change(first + length, 1);
    }
    let level = 0;
    for (let sum = counts[0] ?? 0; sum * 2 < length && level < levels - 1; sum += counts[level] ?? 0) level += 1;
    found[index] = level === 0 ? 0 : (level + 0.5) / levels;
  }
  return found;
}

function turned({ width, height, amount }: Ink): Ink {
  const other = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1) for (let x = 0; x < width; x += 1) other[x * height + y] = amount[y * width + x] ?? 0;
  return { width: height, height: width, amount: other };
}

/** Of level lines, each a pixel broader to both sides: the clicked points are not exact, and a grid leans by their error. */
function levelGrid({ width, height, amount }: Ink): Ink {
  const length = Math.max(Math.min(60, width), Math.round(width * part));
  const narrow = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1) narrow.set(middles(amount.subarray(y * width, (y + 1) * width), length), y * width);
  const broad = narrow.map((value, index) => Math.max(value, narrow[index - width] ?? 0, narrow[index + width] ?? 0));
  return { width, height, amount: broad };
}

export function withoutGrid(ink: Ink): WithoutGrid {
  const level = levelGrid(ink).amount;
  const upright = turned(levelGrid(turned(ink))).amount;
  const grid = level.map((value, index) => Math.max(value, upright[index] ?? 0));
  const lines = ink.amount.map((value, index) => Math.max(0, value - (grid[index] ?? 0)));
  return { lines: { ...ink, amount: lines }, grid: { ...ink, amount: grid } };
}
