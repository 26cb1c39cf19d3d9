// The map from one plane to another that keeps straight lines straight: how a flat page looks in a photograph taken from anywhere.
import type { Place } from './greyPicture';

/** Row by row; the ninth is 1. */
export type Homography = readonly [number, number, number, number, number, number, number, number, 1];

/** Where a place goes; undefined at the horizon of the map and beyond it. */
export function mapped([a, b, c, d, e, f, g, h]: Homography, { x, y }: Place): Place | undefined {
  const depth = g * x + h * y + 1;
  return depth <= 1e-9 ? undefined : { x: (a * x + b * y + c) / depth, y: (d * x + e * y + f) / depth };
}

/** Solves a square set of equations by elimination, the greatest pivot first. Undefined where it has no single answer. */
export function solved(equations: readonly (readonly number[])[]): number[] | undefined {
  const rows = equations.map((row) => [...row]);
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const best = rows.slice(column).reduce((most, row) => (Math.abs(row[column] ?? 0) > Math.abs(most[column] ?? 0) ? row : most));
    const pivot = best[column] ?? 0;
    if (Math.abs(pivot) < 1e-10) return undefined;
    rows.splice(rows.indexOf(best), 1);
    rows.splice(column, 0, best);
    for (const row of rows) {
      if (row === best) continue;
      const factor = (row[column] ?? 0) / pivot;
      for (let place = column; place <= size; place += 1) row[place] = (row[place] ?? 0) - factor * (best[place] ?? 0);
    }
  }
  return rows.map((row, index) => (row[size] ?? 0) / (row[index] ?? 1));
}

type Scale = { readonly middle: Place; readonly size: number };

/** Places moved to about 0 and to a size of about 1, without which the equations lose their digits. */
function scaleOf(places: readonly Place[]): Scale {
  const mean = (of: (place: Place) => number): number => places.reduce((sum, place) => sum + of(place), 0) / places.length;
  const middle = { x: mean(({ x }) => x), y: mean(({ y }) => y) };
  return { middle, size: mean(({ x, y }) => Math.hypot(x - middle.x, y - middle.y)) || 1 };
}
const scaled = ({ middle, size }: Scale, { x, y }: Place): Place => ({ x: (x - middle.x) / size, y: (y - middle.y) / size });

type Nine = readonly number[];
const times = (one: Nine, other: Nine): number[] =>
  Array.from({ length: 9 }, (_, index) => {
    const [row, column] = [Math.floor(index / 3) * 3, index % 3];
    return (one[row] ?? 0) * (other[column] ?? 0) + (one[row + 1] ?? 0) * (other[column + 3] ?? 0) + (one[row + 2] ?? 0) * (other[column + 6] ?? 0);
  });

function withLastOne(nine: Nine): Homography | undefined {
  const last = nine[8] ?? 0;
  if (Math.abs(last) < 1e-12) return undefined;
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = nine.map((value) => value / last);
  return [a, b, c, d, e, f, g, h, 1];
}

/** The two equations of a pair, for the eight unknowns and the right side. */
const equationsOf = (from: Place, to: Place): readonly (readonly number[])[] => [
  [from.x, from.y, 1, 0, 0, 0, -from.x * to.x, -from.y * to.x, to.x],
  [0, 0, 0, from.x, from.y, 1, -from.x * to.y, -from.y * to.y, to.y],
];

/** Through four pairs exactly, through more by least squares. Undefined for fewer, or where they do not settle it. */
export function homographyThrough(pairs: readonly { readonly from: Place; readonly to: Place }[]): Homography | undefined {
  if (pairs.length < 4) return undefined;
  const [fromScale, toScale] = [scaleOf(pairs.map(({ from }) => from)), scaleOf(pairs.map(({ to }) => to))];
  const equations = pairs.flatMap(({ from, to }) => equationsOf(scaled(fromScale, from), scaled(toScale, to)));
  const normal = Array.from({ length: 8 }, (_, row) =>
    Array.from({ length: 9 }, (_unused, column) => equations.reduce((sum, one) => sum + (one[row] ?? 0) * (one[column] ?? 0), 0)),
  );
  const found = solved(normal);
  if (found === undefined) return undefined;
  const back = [toScale.size, 0, toScale.middle.x, 0, toScale.size, toScale.middle.y, 0, 0, 1];
  const into = [1 / fromScale.size, 0, -fromScale.middle.x / fromScale.size, 0, 1 / fromScale.size, -fromScale.middle.y / fromScale.size, 0, 0, 1];
  return withLastOne(times(back, times([...found, 1], into)));
}

export function inverseOf([a, b, c, d, e, f, g, h, i]: Homography): Homography | undefined {
  const cofactors = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  return withLastOne(cofactors);
}
