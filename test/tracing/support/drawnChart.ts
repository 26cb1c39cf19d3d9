// Charts drawn by the test from known formulas, then turned, skewed, blurred and dirtied as a photograph of a page is. It shares no arithmetic with the
// tracer: the picture is made by going from each of its pixels back to the chart.
import type { GreyPicture, Place } from '../../../addon/tracing/greyPicture';

export interface DrawnCurve {
  /** Value up the page by the value across. */
  readonly formula: (across: number) => number;
  readonly from: number;
  readonly to: number;
  /** Pixels of the chart before it is turned. */
  readonly width: number;
  /** 0 white to 1 black. */
  readonly ink: number;
  /** Pixels of a dash and of the blank behind it. */
  readonly dash?: readonly [number, number];
}

export interface Drawing {
  readonly across: readonly [number, number];
  readonly up: readonly [number, number];
  /** Pixels of the chart before it is turned, without its margin. */
  readonly size: readonly [number, number];
  readonly minor: { readonly across: number; readonly up: number };
  readonly grid: { readonly ink: number; readonly width: number };
  readonly curves: readonly DrawnCurve[];
}

export interface Spoilt {
  /** Degrees. */
  readonly turned?: number;
  /** How much smaller the far edge is, as a part. */
  readonly skewed?: number;
  /** Standard deviation of the blur, pixels. */
  readonly blurred?: number;
  /** Standard deviation of the noise, of 255. */
  readonly noise?: number;
  readonly spots?: number;
  /** Coarseness of the eight by eight blocks, of 255. */
  readonly blocks?: number;
  /** How much darker the far corner is, as a part. */
  readonly shadow?: number;
  readonly seed?: number;
}

export interface DrawnChart {
  readonly picture: GreyPicture;
  /** Where a value is in the picture. */
  readonly placeOf: (across: number, up: number) => Place;
}

export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
const gaussian = (random: () => number): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const margin = 40;

/** A canvas of our own: ink, at twice the size of the chart. */
class Sheet {
  readonly ink: Float32Array;
  constructor(
    readonly width: number,
    readonly height: number,
  ) {
    this.ink = new Float32Array(width * height);
  }
  /** A round brush with a soft edge. */
  dab(x: number, y: number, radius: number, ink: number): void {
    for (let row = Math.floor(y - radius - 1); row <= y + radius + 1; row += 1)
      for (let column = Math.floor(x - radius - 1); column <= x + radius + 1; column += 1) {
        if (row < 0 || column < 0 || row >= this.height || column >= this.width) continue;
        const covered = Math.min(1, Math.max(0, radius + 0.5 - Math.hypot(column - x, row - y)));
        const at = row * this.width + column;
        this.ink[at] = Math.max(this.ink[at] ?? 0, ink * covered);
      }
  }
  stroke(points: readonly Place[], width: number, ink: number, dash?: readonly [number, number]): void {
    let gone = 0;
    points.slice(1).forEach((to, index) => {
      const from = points[index] ?? to;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const dabs = Math.max(1, Math.ceil(length / 0.5));
      for (let one = 0; one < dabs; one += 1) {
        const part = one / dabs;
        const inDash = dash === undefined || (gone + part * length) % (dash[0] + dash[1]) < dash[0];
        if (inDash) this.dab(from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part, width / 2, ink);
      }
      gone += length;
    });
  }
}

function drawnSheet({ across, up, size, minor, grid, curves }: Drawing): Sheet {
  const sheet = new Sheet(2 * (size[0] + 2 * margin), 2 * (size[1] + 2 * margin));
  const place = (x: number, y: number): Place => ({
    x: 2 * (margin + ((x - across[0]) / (across[1] - across[0])) * size[0]),
    y: 2 * (margin + ((up[1] - y) / (up[1] - up[0])) * size[1]),
  });
  const level = (x: number): Place[] => [place(x, up[0]), place(x, up[1])];
  for (let x = across[0]; x <= across[1] + 1e-9; x += minor.across) sheet.stroke(level(x), 2 * grid.width, grid.ink);
  for (let y = up[0]; y <= up[1] + 1e-9; y += minor.up) sheet.stroke([place(across[0], y), place(across[1], y)], 2 * grid.width, grid.ink);
  for (const { formula, from, to, width, ink, dash } of curves) {
    const points = Array.from({ length: 401 }, (_, index) => from + ((to - from) * index) / 400).map((x) => place(x, formula(x)));
    sheet.stroke(points, 2 * width, ink, dash && [2 * dash[0], 2 * dash[1]]);
  }
  return sheet;
}

function blurredBy(ink: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, index) => Math.exp(-((index - reach) ** 2) / (2 * sigma * sigma)));
  const total = weights.reduce((sum, one) => sum + one, 0);
  const pass = (from: Float32Array, stride: number, limit: (at: number) => boolean): Float32Array =>
    from.map((_, at) => {
      let sum = 0;
      weights.forEach((weight, index) => {
        const other = at + (index - reach) * stride;
        sum += weight * ((other >= 0 && other < from.length && (stride > 1 || limit(other - at)) ? from[other] : from[at]) ?? 0);
      });
      return sum / total;
    });
  return pass(
    pass(ink, 1, () => true),
    width,
    () => height > 0,
  );
}

/** Each block of eight by eight by its cosines, rounded the more the finer they are: what strong JPEG does. */
function inBlocks(values: Float32Array, width: number, height: number, coarse: number): void {
  const cosines = Array.from({ length: 8 }, (_, u) => Array.from({ length: 8 }, (_unused, x) => Math.cos(((2 * x + 1) * u * Math.PI) / 16)));
  const cosine = (u: number, x: number): number => cosines[u]?.[x] ?? 0;
  const norm = (u: number): number => (u === 0 ? Math.SQRT1_2 : 1) / 2;
  for (let top = 0; top + 8 <= height; top += 8)
    for (let left = 0; left + 8 <= width; left += 8) {
      const block = Array.from({ length: 64 }, (_, at) => values[(top + (at >> 3)) * width + left + (at & 7)] ?? 0);
      const half = Array.from({ length: 64 }, (_, at) => {
        let sum = 0;
        for (let x = 0; x < 8; x += 1) sum += (block[(at & 56) + x] ?? 0) * cosine(at & 7, x);
        return sum * norm(at & 7);
      });
      const kept = Array.from({ length: 64 }, (_, at) => {
        let sum = 0;
        for (let y = 0; y < 8; y += 1) sum += (half[y * 8 + (at & 7)] ?? 0) * cosine(at >> 3, y);
        const size = coarse * (1 + ((at & 7) + (at >> 3)) / 3);
        return Math.round((sum * norm(at >> 3)) / size) * size;
      });
      const back = Array.from({ length: 64 }, (_, at) => {
        let sum = 0;
        for (let v = 0; v < 8; v += 1) sum += norm(v) * (kept[v * 8 + (at & 7)] ?? 0) * cosine(v, at >> 3);
        return sum;
      });
      for (let at = 0; at < 64; at += 1) {
        let sum = 0;
        for (let u = 0; u < 8; u += 1) sum += norm(u) * (back[(at & 56) + u] ?? 0) * cosine(u, at & 7);
        values[(top + (at >> 3)) * width + left + (at & 7)] = sum;
      }
    }
}

export function drawnChart(drawing: Drawing, spoilt: Spoilt = {}): DrawnChart {
  const sheet = drawnSheet(drawing);
  const [wide, high] = [drawing.size[0] + 2 * margin, drawing.size[1] + 2 * margin];
  const angle = ((spoilt.turned ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const room = Math.ceil(Math.hypot(wide, high) - Math.min(wide, high)) / 2;
  const [width, height] = angle === 0 ? [wide, high] : [Math.round(wide + room), Math.round(high + room)];
  const skew = spoilt.skewed ?? 0;
  /** From the chart, its middle at 0, into the picture; the far right edge is drawn smaller. */
  const onto = (x: number, y: number): Place => {
    const depth = 1 + (skew * (x + wide / 2)) / wide;
    const [u, v] = [(x + skew * 0.3 * y) / depth, y / depth];
    return { x: width / 2 + cos * u - sin * v, y: height / 2 + sin * u + cos * v };
  };
  /** The same the other way: two steps of elimination, written out. */
  const back = (x: number, y: number): Place => {
    const [u, v] = [cos * (x - width / 2) + sin * (y - height / 2), -sin * (x - width / 2) + cos * (y - height / 2)];
    // u * depth = x + 0.3 k y and v * depth = y, with depth = 1 + k / 2 + k x / wide.
    const still = 1 + skew / 2;
    const reduced = u - skew * 0.3 * v;
    const along = (reduced * still) / (1 - (reduced * skew) / wide);
    return { x: along, y: v * (still + (skew * along) / wide) };
  };
  const random = randomFrom(spoilt.seed ?? 1);
  let ink: Float32Array = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (const [right, down] of [
        [-0.25, -0.25],
        [0.25, -0.25],
        [-0.25, 0.25],
        [0.25, 0.25],
      ] as const) {
        const from = back(x + right, y + down);
        const [column, row] = [Math.round(2 * (from.x + wide / 2)), Math.round(2 * (from.y + high / 2))];
        if (column >= 0 && row >= 0 && column < sheet.width && row < sheet.height) sum += sheet.ink[row * sheet.width + column] ?? 0;
      }
      ink[y * width + x] = sum / 4;
    }
  for (let spot = 0; spot < (spoilt.spots ?? 0); spot += 1) {
    const [x, y, radius] = [random() * width, random() * height, 1 + random() * 4];
    for (let row = Math.max(0, Math.floor(y - radius)); row <= Math.min(height - 1, y + radius); row += 1)
      for (let column = Math.max(0, Math.floor(x - radius)); column <= Math.min(width - 1, x + radius); column += 1)
        if (Math.hypot(column - x, row - y) <= radius) ink[row * width + column] = 0.85;
  }
  if (spoilt.blurred !== undefined) ink = blurredBy(ink, width, height, spoilt.blurred);
  const bright = ink.map((value, at) => {
    const light = 1 - (spoilt.shadow ?? 0) * (((at % width) / width + at / width / height) / 2);
    return 250 * (1 - value) * light + (spoilt.noise ?? 0) * gaussian(random);
  });
  if (spoilt.blocks !== undefined) inBlocks(bright, width, height, spoilt.blocks);
  const brightness = Uint8Array.from(bright, (value) => Math.round(Math.min(255, Math.max(0, value))));
  return {
    picture: { width, height, brightness },
    placeOf: (across, up) =>
      onto(
        ((across - drawing.across[0]) / (drawing.across[1] - drawing.across[0])) * drawing.size[0] - drawing.size[0] / 2,
        ((drawing.up[1] - up) / (drawing.up[1] - drawing.up[0])) * drawing.size[1] - drawing.size[1] / 2,
      ),
  };
}
