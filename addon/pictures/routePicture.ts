// A route as SVG: its legs true to scale with north up and no map behind them, where the climb ends and the descents begin, and a line for each leg.
import { arrowhead, colours, element, label, polyline, shortened, svgDocument, wrapped, type Point, type Sheet } from './svg';

export interface DrawnPart {
  readonly kind: string;
  readonly nauticalMiles: number;
}

export interface DrawnLeg {
  readonly number: number;
  readonly from: string;
  readonly to: string;
  /** True, in the middle of the leg: each leg is drawn straight. */
  readonly courseDegrees: number;
  readonly headingDegrees: number;
  readonly minutes: number;
  readonly parts: readonly DrawnPart[];
}

type Size = Pick<Sheet, 'width' | 'height'>;

const margin = 22;
const lineHeight = 17;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const milesOf = ({ parts }: DrawnLeg): number => parts.reduce((sum, { nauticalMiles }) => sum + nauticalMiles, 0);

/** A point in miles east and south of the start. */
const onward = ({ x, y }: Point, courseDegrees: number, miles: number): Point => ({
  x: x + miles * Math.sin(radians(courseDegrees)),
  y: y - miles * Math.cos(radians(courseDegrees)),
});

interface Laid {
  readonly leg: DrawnLeg;
  readonly start: Point;
  readonly end: Point;
  /** Where a part ends and another begins, within the leg. */
  readonly changes: readonly Point[];
}

/** The legs one behind the other, from the start at 0, 0. */
export function laidOut(legs: readonly DrawnLeg[]): readonly Laid[] {
  let at: Point = { x: 0, y: 0 };
  return legs.map((leg) => {
    const start = at;
    let gone = 0;
    const changes = leg.parts.slice(0, -1).map(({ nauticalMiles }) => {
      gone += nauticalMiles;
      return onward(start, leg.courseDegrees, gone);
    });
    at = onward(start, leg.courseDegrees, milesOf(leg));
    return { leg, start, end: at, changes };
  });
}

/** A round number of miles that takes about a third of the width. */
function scaleMiles(milesAcross: number): number {
  const rough = milesAcross / 3;
  const power = 10 ** Math.floor(Math.log10(rough));
  return ([5, 2, 1].find((step) => step * power <= rough) ?? 1) * power;
}

function drawn(laid: readonly Laid[], size: Size): string[] {
  const points = laid.flatMap(({ start, end }) => [start, end]);
  const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
  const [top, bottom] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
  const room = { width: size.width - 2 * margin, height: size.height - 2 * margin - lineHeight };
  const perMile = Math.min(room.width / Math.max(1, right - left), room.height / Math.max(1, bottom - top));
  const place = ({ x, y }: Point): Point => ({
    x: margin + (x - left) * perMile + (room.width - (right - left) * perMile) / 2,
    y: margin + (y - top) * perMile + (room.height - (bottom - top) * perMile) / 2,
  });
  const dot = (point: Point, radius: number, fill: string): string =>
    element('circle', { cx: place(point).x, cy: place(point).y, r: radius, fill, stroke: colours.paper, 'stroke-width': 1 });
  const miles = scaleMiles(room.width / perMile);
  const bar = size.height - 8;
  const scale = [
    polyline(
      [
        { x: margin, y: bar },
        { x: margin + miles * perMile, y: bar },
      ],
      { stroke: colours.ink, 'stroke-width': 2 },
    ),
    label(`${miles} NM`, { x: margin + miles * perMile + 6, y: bar + 4 }, { color: colours.faint }),
    polyline(
      [
        { x: size.width - margin, y: margin + 22 },
        { x: size.width - margin, y: margin - 4 },
      ],
      { stroke: colours.faint },
    ),
    arrowhead({ x: size.width - margin, y: margin - 6 }, 0, colours.faint),
    label('N', { x: size.width - margin, y: margin + 34 }, { anchor: 'middle', color: colours.faint }),
  ];
  return [
    ...laid.map(({ start, end }) => polyline([place(start), place(end)], { stroke: colours.path, 'stroke-width': 2 })),
    ...laid.map(({ leg, start, end }) => {
      const tip = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
      return arrowhead(place(tip), leg.courseDegrees, colours.path);
    }),
    ...laid.flatMap(({ changes }) => changes.map((point) => dot(point, 3, colours.entry))),
    ...laid.map(({ start }) => dot(start, 4, colours.ink)),
    ...laid.slice(-1).map(({ end }) => dot(end, 4, colours.ink)),
    ...laid.map(({ leg, start, end }) => {
      const beside = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
      const { x, y } = place(beside);
      const away = radians(leg.courseDegrees + 90);
      return label(String(leg.number), { x: x + 13 * Math.sin(away), y: y - 13 * Math.cos(away) + 4 }, { anchor: 'middle', bold: true });
    }),
    ...scale,
  ];
}

const degrees = (value: number): string => String(Math.round(value) % 360 || 360).padStart(3, '0');
/** The numbers first: of a long name the end may be cut. */
const legInWords = (leg: DrawnLeg): string =>
  `${leg.number}  heading ${degrees(leg.headingDegrees)}, ${milesOf(leg).toFixed(1)} NM, ${leg.minutes.toFixed(0)} min to ${leg.to}`;

/** The drawing at the left, a line for each leg at its right. */
export function routePicture(legs: readonly DrawnLeg[], size: Size): string {
  const drawing = { width: Math.round(size.width * 0.36), height: size.height };
  const from = drawing.width + 12;
  const room = size.width - from - 6;
  const most = Math.floor((size.height - 40) / lineHeight);
  const all = legs.map((leg) => shortened(legInWords(leg), room));
  const lines = all.length <= most ? all : [...all.slice(0, most - 1), `and ${all.length - most + 1} more legs`];
  const [note = ''] = wrapped('Orange: climb, cruise and descent change. Headings magnetic.', room, 1);
  const description = legs.map(legInWords).join('; ');
  return svgDocument({ ...size, title: 'Route', description }, [
    ...drawn(laidOut(legs), drawing),
    label('Route, north up', { x: from, y: 18 }, { bold: true }),
    ...lines.map((text, index) => label(text, { x: from, y: 38 + index * lineHeight })),
    label(note, { x: from, y: size.height - 6 }, { color: colours.faint }),
  ]);
}
