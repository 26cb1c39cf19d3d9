// Small helpers with which the pictures are written as SVG text. No document is needed, so both hosts and the tests share them.
import { line } from 'd3-shape';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Okabe and Ito's colour-blind-safe set (Color Universal Design, 2008). In grey print the dashes and shapes tell things apart. */
export const colours = {
  ink: '#1b1f24',
  faint: '#57606a',
  grid: '#dfe4e9',
  band: '#eef2f5',
  path: '#0072b2',
  entry: '#d55e00',
  wind: '#009e73',
  paper: '#ffffff',
} as const;

/** Pixels; nothing in a picture is smaller. */
export const textSize = 12;
/** Widths of capitals and of all else at this size, rather too wide than too narrow; there is nothing to measure with. */
const [capitalWidth, letterWidth] = [8.6, 6.6];
export const widthOfText = (text: string): number =>
  [...text].reduce((width, letter) => width + (/[A-Z]/.test(letter) ? capitalWidth : letterWidth), 0);

/**
 * The text broken between words into lines of this width at most; a single word that is wider stands alone. Of more than `most` lines
 * the rest is left out, and the last one ends in three dots.
 */
export function wrapped(text: string, width: number, most = Infinity): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((one) => one !== '')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && widthOfText(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length <= most) return lines;
  const kept = lines.slice(0, most);
  return [...kept.slice(0, -1), shortened(`${kept[kept.length - 1] ?? ''} ${lines[most] ?? ''}`, width)];
}

/** The text, or as much of it as fits, three dots included. */
export function shortened(text: string, width: number): string {
  if (widthOfText(text) <= width) return text;
  let end = text.length;
  while (end > 0 && widthOfText(`${text.slice(0, end)}...`) > width) end -= 1;
  return `${text.slice(0, end).trimEnd()}...`;
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (letter) => escapes[letter] ?? '');

const rounded = (value: number): number => Math.round(value * 10) / 10;

type Attributes = Readonly<Record<string, string | number>>;

const attributesOf = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? rounded(value) : escaped(value)}"`)
    .join('');

export const element = (name: string, attributes: Attributes, content = ''): string =>
  content === '' ? `<${name}${attributesOf(attributes)}/>` : `<${name}${attributesOf(attributes)}>${content}</${name}>`;

export interface Writing {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly color?: string;
  readonly bold?: boolean;
}

/** Text with a white edge, so that a line behind it does not hide it. */
export const label = (text: string, { x, y }: Point, { anchor = 'start', color = colours.ink, bold = false }: Writing = {}): string =>
  element(
    'text',
    {
      x,
      y,
      'text-anchor': anchor,
      fill: color,
      stroke: colours.paper,
      'stroke-width': 3,
      'stroke-linejoin': 'round',
      'paint-order': 'stroke',
      ...(bold && { 'font-weight': 'bold' }),
    },
    escaped(text),
  );

const pathText = line<Point>(
  (point) => rounded(point.x),
  (point) => rounded(point.y),
);
export const polyline = (points: readonly Point[], attributes: Attributes): string =>
  element('path', { d: pathText([...points]) ?? '', fill: 'none', 'stroke-linejoin': 'round', ...attributes });

/** An arrowhead whose tip is at the point; `direction` in degrees, 0 up and 90 to the right. */
export const arrowhead = ({ x, y }: Point, direction: number, color: string): string =>
  element('path', {
    d: 'M0,0L-4.5,9L0,6.5L4.5,9Z',
    transform: `translate(${rounded(x)},${rounded(y)}) rotate(${rounded(direction)})`,
    fill: color,
    stroke: colours.paper,
    'stroke-width': 0.8,
  });

export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** What it is, and what it shows, for those who do not see it. */
  readonly title: string;
  readonly description: string;
}

/** The whole picture. Text sizes are of the size asked for: a host draws it at that size, not larger or smaller. */
export function svgDocument({ width, height, title, description }: Sheet, content: readonly string[]): string {
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${width} ${height}`,
    width,
    height,
    role: 'img',
    'font-family': 'Arial, sans-serif',
    'font-size': textSize,
  };
  const background = element('rect', { width, height, fill: colours.paper });
  return element(
    'svg',
    attributes,
    [element('title', {}, escaped(title)), element('desc', {}, escaped(description)), background, ...content].join(''),
  );
}

/** What stands in place of a picture that lacks its numbers. */
export function emptyPicture(sheet: Sheet, why: string): string {
  const write = (text: string, from: number, style: Writing): string[] =>
    wrapped(text, sheet.width - 24).map((line, index) => label(line, { x: 12, y: from + index * 17 }, style));
  const title = write(sheet.title, 22, { bold: true });
  return svgDocument({ ...sheet, description: why }, [...title, ...write(why, 27 + title.length * 17, { color: colours.faint })]);
}
