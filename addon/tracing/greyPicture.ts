// A picture as brightness alone. It knows no file and no canvas.

/** A place in a picture, in pixels from its top left corner, to the right and down; the middle of the first pixel is 0, 0. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface GreyPicture {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Row by row, 0 for black to 255 for white. */
  readonly brightness: Uint8Array;
}

/** `rgba`: four bytes a pixel, as a canvas gives them. What can be seen through is white paper. */
export function greyFromRgba(rgba: ArrayLike<number>, width: number, height: number): GreyPicture {
  const brightness = new Uint8Array(width * height);
  for (let pixel = 0; pixel < brightness.length; pixel += 1) {
    const [red = 0, green = 0, blue = 0, alpha = 0] = [rgba[pixel * 4], rgba[pixel * 4 + 1], rgba[pixel * 4 + 2], rgba[pixel * 4 + 3]];
    // The usual weights of luminance (ITU-R BT.601).
    const grey = 0.299 * red + 0.587 * green + 0.114 * blue;
    brightness[pixel] = Math.round(255 + ((grey - 255) * alpha) / 255);
  }
  return { width, height, brightness };
}

/** Between pixels, bilinear. Undefined outside of the picture. */
export function brightnessAt({ width, height, brightness }: GreyPicture, { x, y }: Place): number | undefined {
  if (!(x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1)) return undefined;
  const [left, top] = [Math.min(Math.floor(x), width - 2), Math.min(Math.floor(y), height - 2)];
  const [right, down] = [x - left, y - top];
  const at = (column: number, row: number): number => brightness[row * width + column] ?? 255;
  const above = at(left, top) * (1 - right) + at(left + 1, top) * right;
  const below = at(left, top + 1) * (1 - right) + at(left + 1, top + 1) * right;
  return above * (1 - down) + below * down;
}

/** Half as wide and high, each pixel the mean of four, so that a finer picture loses no thin line when it is drawn smaller. */
export function halved({ width, height, brightness }: GreyPicture): GreyPicture {
  const [half, rows] = [Math.floor(width / 2), Math.floor(height / 2)];
  const smaller = new Uint8Array(half * rows);
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < half; column += 1) {
      const first = 2 * row * width + 2 * column;
      const sum = (brightness[first] ?? 0) + (brightness[first + 1] ?? 0) + (brightness[first + width] ?? 0) + (brightness[first + width + 1] ?? 0);
      smaller[row * half + column] = Math.round(sum / 4);
    }
  return { width: half, height: rows, brightness: smaller };
}
