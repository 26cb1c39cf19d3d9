// A cut across a line: which dark strokes it goes through, where the middle of each is to a part of a pixel, and how much of the cut the grid hides.
import type { Place } from './greyPicture';
import type { Ink } from './straightened';
import type { WithoutGrid } from './withoutGrid';

export interface Stroke {
  /** Pixels from the middle of the cut, to the right of the way. */
  readonly offset: number;
  readonly width: number;
  /** 0 to 1, at its darkest. */
  readonly ink: number;
}

export interface Cut {
  readonly strokes: readonly Stroke[];
  /** Part of the middle of the cut that lies on the grid, 0 to 1. */
  readonly hidden: number;
  /** The cut leaves the picture. */
  readonly outside: boolean;
}

/** Pixels between the samples of a cut. */
const fine = 0.5;

export function inkAt({ width, height, amount }: Ink, x: number, y: number): number {
  if (!(x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1)) return 0;
  const [left, top] = [Math.min(Math.floor(x), width - 2), Math.min(Math.floor(y), height - 2)];
  const [right, down] = [x - left, y - top];
  const first = top * width + left;
  const above = (amount[first] ?? 0) * (1 - right) + (amount[first + 1] ?? 0) * right;
  const below = (amount[first + width] ?? 0) * (1 - right) + (amount[first + width + 1] ?? 0) * right;
  return above * (1 - down) + below * down;
}

export interface Look {
  /** Pixels to both sides. */
  readonly reach: number;
  /** Less than this is paper. */
  readonly least: number;
  /** Grid of at least this hides what is below it. */
  readonly hiding: number;
  /** Pixels about the middle in which the grid counts. */
  readonly near: number;
}

function strokesIn(samples: readonly number[], reach: number, least: number): Stroke[] {
  const strokes: Stroke[] = [];
  for (let first = 0; first < samples.length; first += 1) {
    if ((samples[first] ?? 0) < least) continue;
    let last = first;
    while (last + 1 < samples.length && (samples[last + 1] ?? 0) >= least) last += 1;
    let [weight, moment, ink] = [0, 0, 0];
    for (let index = first; index <= last; index += 1) {
      const value = samples[index] ?? 0;
      // What is above the limit counts alone: a stroke's middle is not moved by where its foot is cut off.
      const over = value - least * 0.8;
      weight += over;
      moment += over * (index * fine - reach);
      ink = Math.max(ink, value);
    }
    strokes.push({ offset: moment / weight, width: (last - first + 1) * fine, ink });
    first = last;
  }
  return strokes;
}

/** `way`: a step of length 1 along the line. */
export function cutAcross({ lines, grid }: WithoutGrid, { x, y }: Place, way: Place, { reach, least, hiding, near }: Look): Cut {
  const samples: number[] = [];
  let [hidden, counted] = [0, 0];
  for (let offset = -reach; offset <= reach + 1e-9; offset += fine) {
    const [column, row] = [x - way.y * offset, y + way.x * offset];
    const along = (step: number): number => inkAt(lines, column + way.x * step, row + way.y * step);
    samples.push((along(-1) + 2 * along(0) + along(1)) / 4);
    if (Math.abs(offset) > near) continue;
    counted += 1;
    if (inkAt(grid, column, row) > hiding) hidden += 1;
  }
  const outside = x < 0 || y < 0 || x > lines.width - 1 || y > lines.height - 1;
  return { strokes: strokesIn(samples, reach, least), hidden: counted === 0 ? 0 : hidden / counted, outside };
}
