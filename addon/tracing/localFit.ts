// The way of a line at its end: a parabola through its last points, across the direction in which they lie.
import type { Place } from './greyPicture';
import { solved } from './homography';

export interface LocalFit {
  /** Where the line is `ahead` pixels beyond its last point, and which way it goes there. */
  readonly at: (ahead: number) => { readonly place: Place; readonly way: Place };
}

const unit = (x: number, y: number): Place => {
  const length = Math.hypot(x, y) || 1;
  return { x: x / length, y: y / length };
};

function coefficients(points: readonly { readonly along: number; readonly beside: number }[], order: number): readonly number[] | undefined {
  const size = order + 1;
  const sums = (power: number, of: (point: (typeof points)[number]) => number): number =>
    points.reduce((sum, point) => sum + point.along ** power * of(point), 0);
  return solved(
    Array.from({ length: size }, (_, row) => [
      ...Array.from({ length: size }, (_unused, column) => sums(row + column, () => 1)),
      sums(row, ({ beside }) => beside),
    ]),
  );
}

/** `last` points, the newest behind; `way` is where the line went so far. Few points make a straight line. */
export function localFit(last: readonly Place[], way: Place, bendFrom: number): LocalFit {
  const end = last[last.length - 1] ?? { x: 0, y: 0 };
  const first = last[0] ?? end;
  const chord = Math.hypot(end.x - first.x, end.y - first.y);
  const axis = chord < 2 ? way : unit(end.x - first.x, end.y - first.y);
  const points = last.map(({ x, y }) => ({
    along: (x - end.x) * axis.x + (y - end.y) * axis.y,
    beside: -(x - end.x) * axis.y + (y - end.y) * axis.x,
  }));
  const order = chord >= bendFrom && points.length >= 8 ? 2 : chord >= 3 && points.length >= 3 ? 1 : 0;
  const [offset = 0, slope = 0, bend = 0] = (order === 0 ? undefined : coefficients(points, order)) ?? [];
  return {
    at: (ahead) => {
      const beside = offset + slope * ahead + bend * ahead * ahead;
      const grade = slope + 2 * bend * ahead;
      return {
        place: { x: end.x + axis.x * ahead - axis.y * beside, y: end.y + axis.y * ahead + axis.x * beside },
        way: unit(axis.x - axis.y * grade, axis.y + axis.x * grade),
      };
    },
  };
}
