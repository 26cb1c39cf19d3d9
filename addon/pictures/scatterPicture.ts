// A scatter chart as SVG. Series differ in shape or dash as well as in colour, so that it reads in grey print.
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { chartColours } from '../../sheets-templates/look';
import { colours, element, emptyPicture, label, polyline, svgDocument, widthOfText, wrapped, type Point, type Sheet } from './svg';

export interface DrawnSeries {
  readonly title: string;
  readonly drawn: 'line' | 'points';
  /** Unbroken runs of points; a row without two numbers breaks a line. */
  readonly runs: readonly (readonly Point[])[];
}

export interface ScatterRequest {
  readonly title: string;
  readonly description: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly DrawnSeries[];
  /** A point to be ringed, and what it is. */
  readonly selected?: Point & { readonly words: string };
}

export interface PlotArea {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

const dashes = ['', '7 3', '2 3', '8 3 2 3', '4 2'];
/** One outline for each series in turn, about 9 pixels wide, centred on 0,0. */
const markers = ['M-4.5,0a4.5,4.5 0 1,0 9,0a4.5,4.5 0 1,0 -9,0', 'M-4,-4H4V4H-4Z', 'M0,-5L5,4H-5Z', 'M0,-5.5L5.5,0L0,5.5L-5.5,0Z', 'M0,5L5,-4H-5Z'];
const of = (list: readonly string[], index: number): string => list[index % list.length] ?? '';

const lineHeight = 16;

/** Pairs the two columns row by row. */
export function runsOf(xs: readonly (number | undefined)[], ys: readonly (number | undefined)[]): Point[][] {
  const runs: Point[][] = [[]];
  for (let row = 0; row < Math.min(xs.length, ys.length); row += 1) {
    const [x, y] = [xs[row], ys[row]];
    if (x === undefined || y === undefined) runs.push([]);
    else runs[runs.length - 1]?.push({ x, y });
  }
  return runs.filter((run) => run.length > 0);
}

/** The extent with a little room round it; a single value gets room of its own. */
function domain(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = high > low ? (high - low) * 0.05 : Math.max(1, Math.abs(high) * 0.05);
  return [low - room, high + room];
}

export function scalesOf(points: readonly Point[], area: PlotArea): Scales {
  return {
    x: scaleLinear(domain(points.map(({ x }) => x)), [area.left, area.right]).nice(),
    y: scaleLinear(domain(points.map(({ y }) => y)), [area.bottom, area.top]).nice(),
  };
}

/** As many ticks as leave room for their words, six at most. */
const ticksOf = (scale: ScaleLinear<number, number>, room: number): readonly { readonly at: number; readonly words: string }[] => {
  const [from = 0, to = 0] = scale.range();
  const count = Math.max(2, Math.min(6, Math.floor(Math.abs(to - from) / room)));
  const format = scale.tickFormat(count);
  return scale.ticks(count).map((tick) => ({ at: scale(tick), words: format(tick) }));
};
const xRoom = 56;
const yRoom = 32;

function axes({ x, y }: Scales, area: PlotArea, { xTitle, yTitle }: ScatterRequest): string {
  const middle = (area.top + area.bottom) / 2;
  const faint = { color: colours.faint, anchor: 'middle' } as const;
  const up = ticksOf(x, xRoom).map(
    ({ at, words }) =>
      element('line', { x1: at, x2: at, y1: area.top, y2: area.bottom, stroke: colours.grid }) + label(words, { x: at, y: area.bottom + 15 }, faint),
  );
  const across = ticksOf(y, yRoom).map(
    ({ at, words }) =>
      element('line', { x1: area.left, x2: area.right, y1: at, y2: at, stroke: colours.grid }) +
      label(words, { x: area.left - 6, y: at + 4 }, { ...faint, anchor: 'end' }),
  );
  const titles =
    label(xTitle, { x: (area.left + area.right) / 2, y: area.bottom + 31 }, faint) +
    element('g', { transform: `translate(15,${middle}) rotate(-90)` }, label(yTitle, { x: 0, y: 0 }, faint));
  return [...up, ...across, titles].join('');
}

const marker = (index: number, { x, y }: Point): string =>
  element('path', {
    d: of(markers, index),
    transform: `translate(${x.toFixed(1)},${y.toFixed(1)})`,
    fill: of(chartColours, index),
    stroke: colours.paper,
  });
const stroke = (index: number): Readonly<Record<string, string | number>> => ({
  stroke: of(chartColours, index),
  'stroke-width': 1.8,
  'stroke-dasharray': of(dashes, index),
});
const ring = ({ x, y }: Point, radius: number): string =>
  element('circle', { cx: x, cy: y, r: radius, fill: 'none', stroke: colours.ink, 'stroke-width': 2 });

function seriesShapes({ drawn, runs }: DrawnSeries, index: number, { x, y }: Scales): string {
  const placed = runs.map((run) => run.map((point) => ({ x: x(point.x), y: y(point.y) })));
  return drawn === 'points'
    ? placed
        .flat()
        .map((point) => marker(index, point))
        .join('')
    : placed.map((run) => polyline(run, stroke(index))).join('');
}

interface KeyEntry {
  readonly words: string;
  /** The sample, 18 pixels wide, its middle on this line. */
  readonly sample: (x: number, y: number) => string;
}

function keyEntries({ series, selected }: ScatterRequest): KeyEntry[] {
  const entries = series.map(({ title, drawn }, index): KeyEntry => ({
    words: title,
    sample: (x, y) =>
      drawn === 'points'
        ? marker(index, { x: x + 9, y })
        : polyline(
            [
              { x, y },
              { x: x + 18, y },
            ],
            stroke(index),
          ),
  }));
  return selected === undefined ? entries : [...entries, { words: `selected: ${selected.words}`, sample: (x, y) => ring({ x: x + 9, y }, 6) }];
}

/** The names of the series side by side, on as many lines as they need. */
export function keyPlaces(words: readonly string[], width: number): { readonly x: number; readonly line: number }[] {
  let [x, line] = [0, 0];
  return words.map((text) => {
    const needed = 24 + widthOfText(text) + 10;
    if (x > 0 && x + needed - 10 > width) [x, line] = [0, line + 1];
    const place = { x, line };
    x += needed;
    return place;
  });
}

function inWords(request: ScatterRequest): string {
  const shown = (value: number): string => String(Number(value.toPrecision(6)));
  const place = (words: string, { x, y }: Point): string => `${words} at ${request.xTitle} ${shown(x)}, ${request.yTitle} ${shown(y)}`;
  const single = request.series.flatMap(({ title, drawn, runs }) => (drawn === 'points' ? runs.flat().map((point) => place(title, point)) : []));
  const selected = request.selected === undefined ? [] : [place(`selected: ${request.selected.words},`, request.selected)];
  return [request.description, ...[...single, ...selected].map((words) => `${words}.`)].join(' ');
}

export function scatterPicture(request: ScatterRequest, size: Pick<Sheet, 'width' | 'height'>): string {
  const { title, series, selected } = request;
  const points = [...series.flatMap(({ runs }) => runs.flat()), ...(selected === undefined ? [] : [selected])];
  if (points.length === 0) return emptyPicture({ ...size, title, description: '' }, 'Nothing to draw yet: the cells hold no numbers.');
  const margin = 14;
  const heading = wrapped(title, size.width - 2 * margin);
  const entries = keyEntries(request);
  const places = keyPlaces(
    entries.map(({ words }) => words),
    size.width - 2 * margin,
  );
  const keyTop = 4 + (heading.length + 1) * lineHeight;
  const [top, bottom] = [keyTop + 12 + lineHeight * (places[places.length - 1]?.line ?? 0), size.height - 40];
  const yWords = ticksOf(scalesOf(points, { left: 0, right: 1, top, bottom }).y, yRoom).map(({ words }) => widthOfText(words));
  const area = { left: 28 + Math.max(...yWords), right: size.width - margin, top, bottom };
  const scales = scalesOf(points, area);
  const drawnKey = entries.map(({ words, sample }, index) => {
    const { x = 0, line = 0 } = places[index] ?? {};
    const [left, y] = [margin + x, keyTop + lineHeight * line];
    return sample(left, y - 4) + label(words, { x: left + 24, y });
  });
  return svgDocument({ ...size, title, description: inWords(request) }, [
    axes(scales, area, request),
    ...series.map((one, index) => seriesShapes(one, index, scales)),
    selected === undefined ? '' : ring({ x: scales.x(selected.x), y: scales.y(selected.y) }, 9),
    ...heading.map((line, index) => label(line, { x: margin, y: 18 + index * lineHeight }, { bold: true })),
    ...drawnKey,
  ]);
}
