// The part of a picture within the known points, drawn anew with its axes level: what of it is dark, and how dark.
import { brightnessAt, halved, type GreyPicture, type Place } from './greyPicture';
import type { ChartFrame, ChartValue } from './knownPoints';

/** Row by row from the top; 0 is paper and 1 black. */
export interface Ink {
  readonly width: number;
  readonly height: number;
  readonly amount: Float32Array;
}

export interface Straightened {
  readonly ink: Ink;
  /** Straightened pixels from the values of the chart, and back. */
  readonly pixelOf: (value: ChartValue) => Place;
  readonly valueOf: (pixel: Place) => ChartValue;
}

/** Pixels of the longer side: fine enough for a tenth of a small step, and not more than is followed at once. */
const [fewest, greatest] = [700, 1800];

const between = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Of the chart's two sides in the picture, in pixels: the mean of both opposite edges. */
function sidesOf({ range: { least, most }, placeOf }: ChartFrame): { readonly across: number; readonly up: number } {
  const corner = (across: number, up: number): Place => placeOf({ across, up }) ?? { x: 0, y: 0 };
  const apart = (one: Place, other: Place): number => Math.hypot(one.x - other.x, one.y - other.y);
  const [a, b] = [corner(least.across, least.up), corner(most.across, least.up)];
  const [c, d] = [corner(least.across, most.up), corner(most.across, most.up)];
  return { across: (apart(a, b) + apart(c, d)) / 2, up: (apart(a, c) + apart(b, d)) / 2 };
}

/** How bright the paper is about a place: a photograph has shadows. The ninth of ten pixels by brightness, in squares of this side. */
const square = 48;

function paperOf({ width, height, amount }: Ink): Float32Array {
  const [columns, rows] = [Math.max(1, Math.ceil(width / square)), Math.max(1, Math.ceil(height / square))];
  const paper = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      const own: number[] = [];
      for (let y = row * square; y < Math.min(height, (row + 1) * square); y += 2)
        for (let x = column * square; x < Math.min(width, (column + 1) * square); x += 2) own.push(amount[y * width + x] ?? 0);
      own.sort((one, other) => one - other);
      paper[row * columns + column] = own[Math.floor(own.length * 0.9)] ?? 255;
    }
  return paper;
}

/** Brightness becomes ink against the paper about it, between the squares' middles bilinear. */
function inkOf(bright: Ink): Ink {
  const { width, height, amount } = bright;
  const [columns, rows] = [Math.max(1, Math.ceil(width / square)), Math.max(1, Math.ceil(height / square))];
  const paper = paperOf(bright);
  const ink = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const v = between(y / square - 0.5, 0, rows - 1);
    const top = Math.min(Math.floor(v), Math.max(0, rows - 2));
    for (let x = 0; x < width; x += 1) {
      const u = between(x / square - 0.5, 0, columns - 1);
      const left = Math.min(Math.floor(u), Math.max(0, columns - 2));
      const at = (column: number, row: number): number => paper[Math.min(row, rows - 1) * columns + Math.min(column, columns - 1)] ?? 255;
      const above = at(left, top) * (1 - (u - left)) + at(left + 1, top) * (u - left);
      const below = at(left, top + 1) * (1 - (u - left)) + at(left + 1, top + 1) * (u - left);
      const white = above * (1 - (v - top)) + below * (v - top);
      ink[y * width + x] = between(1 - (amount[y * width + x] ?? 0) / Math.max(white, 1), 0, 1);
    }
  }
  return { width, height, amount: ink };
}

export function straightened(picture: GreyPicture, frame: ChartFrame): Straightened {
  const sides = sidesOf(frame);
  const longer = Math.max(sides.across, sides.up, 1);
  const scale = between(longer, fewest, greatest) / longer;
  const [width, height] = [Math.max(2, Math.round(sides.across * scale)), Math.max(2, Math.round(sides.up * scale))];
  const { least, most } = frame.range;
  const valueOf = ({ x, y }: Place): ChartValue => ({
    across: least.across + (x / (width - 1)) * (most.across - least.across),
    up: most.up - (y / (height - 1)) * (most.up - least.up),
  });
  const pixelOf = ({ across, up }: ChartValue): Place => ({
    x: ((across - least.across) / (most.across - least.across)) * (width - 1),
    y: ((most.up - up) / (most.up - least.up)) * (height - 1),
  });
  let [source, shrunk] = [picture, 1];
  while (scale * shrunk < 0.6) [source, shrunk] = [halved(source), shrunk * 2];
  const amount = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const place = frame.placeOf(valueOf({ x, y }));
      // The middle of the first of the smaller pixels is between the first of the larger.
      const inSource = place && { x: (place.x + 0.5) / shrunk - 0.5, y: (place.y + 0.5) / shrunk - 0.5 };
      amount[y * width + x] = (inSource && brightnessAt(source, inSource)) ?? 255;
    }
  return { ink: inkOf({ width, height, amount }), pixelOf, valueOf };
}
