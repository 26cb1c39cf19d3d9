// A hold as SVG, true to scale: the racetrack over the ground, the way in, the wind; north or the inbound course up.
import { scaleLinear } from 'd3-scale';
import { holdPath, type HoldBriefing, type HoldPath } from './holdPath';
import { arrowhead, colours, element, label, polyline, svgDocument, wrapped, type Point, type Sheet } from './svg';

export interface HoldPictureRequest {
  readonly briefing: HoldBriefing;
  /** As the brief words it, the other entry in brackets. */
  readonly entryWords: string;
  /** False where the wind leaves no racetrack. */
  readonly isRacetrack: boolean;
  readonly up: 'north' | 'inbound course';
}

const lineHeight = 17;
const margin = 14;
/** Room beside the drawing for the north arrow and the wind. */
const sideRoom = 46;

export const asHeading = (degrees: number): string => String(Math.round(degrees) % 360 === 0 ? 360 : Math.round(degrees) % 360).padStart(3, '0');
export const asClock = (seconds: number): string => `${Math.floor(Math.round(seconds) / 60)}:${String(Math.round(seconds) % 60).padStart(2, '0')}`;

/** Turns the map so that this direction is up. */
function rotated({ x, y }: Point, upDegrees: number): Point {
  const angle = (upDegrees * Math.PI) / 180;
  return { x: x * Math.cos(angle) - y * Math.sin(angle), y: x * Math.sin(angle) + y * Math.cos(angle) };
}

export interface Frame {
  readonly pixelsPerMile: number;
  readonly place: (point: Point) => Point;
}

/** One scale for both axes, so that angles and lengths are true, with everything inside the area. */
export function frameOf(
  points: readonly Point[],
  upDegrees: number,
  area: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
): Frame {
  const turned = points.map((point) => rotated(point, upDegrees));
  const [xs, ys] = [turned.map(({ x }) => x), turned.map(({ y }) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const pixelsPerMile = Math.min((area.right - area.left) / (right - left), (area.bottom - area.top) / (high - low));
  const [middleX, middleY] = [(left + right) / 2, (low + high) / 2];
  const place = (point: Point): Point => {
    const { x, y } = rotated(point, upDegrees);
    return { x: (area.left + area.right) / 2 + (x - middleX) * pixelsPerMile, y: (area.top + area.bottom) / 2 - (y - middleY) * pixelsPerMile };
  };
  return { pixelsPerMile, place };
}

const between = (one: Point, other: Point, share = 0.5): Point => ({ x: one.x + (other.x - one.x) * share, y: one.y + (other.y - one.y) * share });
/** Direction on the screen, 0 up. */
const screenDirection = (from: Point, to: Point): number => (Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI;

const arrowOn = (from: Point, to: Point, share: number, color: string): string => {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  return long < 14 ? '' : arrowhead(between(from, to, share), screenDirection(from, to), color);
};

/** An arrow on a track of many points, at a share of its length. */
function arrowAlong(track: readonly Point[], share: number, color: string): string {
  const index = Math.min(track.length - 2, Math.max(0, Math.round((track.length - 1) * share) - 1));
  const [from, to] = [track[index], track[index + 1]];
  return from === undefined || to === undefined ? '' : arrowhead(to, screenDirection(from, to), color);
}

function drawing({ lap, marks, entry, arrival }: HoldPath, frame: Frame): string {
  const place = frame.place;
  const [fix, outboundFrom, outboundTo, inboundFrom] = [
    place({ x: 0, y: 0 }),
    place(marks.outboundFrom),
    place(marks.outboundTo),
    place(marks.inboundFrom),
  ];
  const [way, into] = [entry.map(place), arrival.map(place)];
  return [
    polyline(into, { stroke: colours.entry, 'stroke-width': 1.6, 'stroke-dasharray': '7 4' }),
    polyline(lap.map(place), { stroke: colours.path, 'stroke-width': 2.6 }),
    polyline(way, { stroke: colours.entry, 'stroke-width': 1.6, 'stroke-dasharray': '7 4' }),
    arrowOn(inboundFrom, fix, 0.55, colours.path),
    arrowOn(outboundFrom, outboundTo, 0.55, colours.path),
    arrowOn(into[0] ?? fix, fix, 0.5, colours.entry),
    arrowAlong(way, 0.3, colours.entry),
    element('circle', { cx: fix.x, cy: fix.y, r: 5.5, fill: colours.paper, stroke: colours.ink, 'stroke-width': 2 }),
    element('circle', { cx: fix.x, cy: fix.y, r: 2, fill: colours.ink }),
  ].join('');
}

/** North and the wind in the upper corners, each a small arrow of its own kind. */
function compass({ briefing: { windFromDegrees, windKnots } }: HoldPictureRequest, upDegrees: number, { width }: Sheet): string {
  const shaft = (middle: Point, degrees: number, color: string, dashes: string): string => {
    const [dx, dy] = [13 * Math.sin((degrees * Math.PI) / 180), -13 * Math.cos((degrees * Math.PI) / 180)];
    const [from, to] = [
      { x: middle.x - dx, y: middle.y - dy },
      { x: middle.x + dx, y: middle.y + dy },
    ];
    return polyline([from, to], { stroke: color, 'stroke-width': 2, 'stroke-dasharray': dashes }) + arrowhead(to, degrees, color);
  };
  const north = shaft({ x: 24, y: 50 }, -upDegrees, colours.ink, '') + label('north', { x: 8, y: 82 }, { color: colours.ink });
  const still = windKnots === 0;
  const right = width - 24;
  const wind = still ? '' : shaft({ x: right, y: 50 }, windFromDegrees + 180 - upDegrees, colours.wind, '3 2');
  return `${north}${wind}${label(still ? 'calm' : 'wind', { x: width - 8, y: 82 }, { anchor: 'end' })}`;
}

/** A length of round miles, no longer than a third of the width. */
function scaleBar(pixelsPerMile: number, { width }: Sheet, y: number): string {
  const miles = scaleLinear([0, width / 3 / pixelsPerMile], [0, 1]).ticks(4)[1] ?? 1;
  const [right, left] = [width - margin, width - margin - miles * pixelsPerMile];
  const bar = element('path', { d: `M${left.toFixed(1)},${y - 4}v4H${right}v-4`, fill: 'none', stroke: colours.ink, 'stroke-width': 1.4 });
  return bar + label(`${Number(miles.toPrecision(3))} NM`, { x: right, y: y - 7 }, { anchor: 'end' });
}

interface KeyLine {
  readonly text: string;
  readonly sample?: 'lap' | 'entry';
  readonly bold?: boolean;
}

/** Everything in words under the drawing: no word has to find a place among the lines. */
export function keyLines({ briefing, entryWords, isRacetrack }: HoldPictureRequest): readonly KeyLine[] {
  const {
    firstTurn,
    firstHeadingDegrees,
    secondTurn,
    secondHeadingDegrees,
    outboundHeadingDegrees,
    outboundSeconds,
    outboundEndNauticalMiles,
    inboundHeadingDegrees,
    inboundSeconds,
    inboundDegrees,
    windFromDegrees,
    windKnots,
  } = briefing;
  return [
    { text: `entry ${entryWords}`, sample: 'entry' },
    { text: `${firstTurn} to ${asHeading(firstHeadingDegrees)}, then ${secondTurn} to ${asHeading(secondHeadingDegrees)}` },
    {
      text: `outbound ${asHeading(outboundHeadingDegrees)} for ${asClock(outboundSeconds)}, to ${outboundEndNauticalMiles.toFixed(1)} NM from the fix`,
      sample: 'lap',
    },
    { text: `inbound ${asHeading(inboundHeadingDegrees)} for ${asClock(inboundSeconds)}, course ${asHeading(inboundDegrees)}` },
    { text: windKnots === 0 ? 'no wind' : `wind from ${asHeading(windFromDegrees)} at ${Math.round(windKnots)} kt, magnetic` },
    ...(isRacetrack ? [] : [{ text: 'NO: wind too strong for a racetrack', bold: true }]),
  ];
}

const wordsFrom = margin + 32;
/** Bold letters are so much wider. */
const boldness = 1.1;

/** The lines broken where the picture is too narrow for them. */
const keyRows = (lines: readonly KeyLine[], width: number): readonly KeyLine[] =>
  lines.flatMap(({ text, sample, bold = false }) =>
    wrapped(text, (width - wordsFrom - 4) / (bold ? boldness : 1)).map((words, index) => ({
      text: words,
      bold,
      ...(index === 0 && sample !== undefined && { sample }),
    })),
  );

function key(rows: readonly KeyLine[], top: number): string {
  return rows
    .map(({ text, sample, bold = false }, index) => {
      const y = top + index * lineHeight;
      const from = { x: margin, y: y - 4 };
      const to = { x: margin + 24, y: y - 4 };
      const drawn =
        sample === 'lap'
          ? polyline([from, to], { stroke: colours.path, 'stroke-width': 2.6 })
          : sample === 'entry'
            ? polyline([from, to], { stroke: colours.entry, 'stroke-width': 1.6, 'stroke-dasharray': '7 4' })
            : '';
      return drawn + label(text, { x: wordsFrom, y }, { bold });
    })
    .join('');
}

export function holdPicture(request: HoldPictureRequest, size: Pick<Sheet, 'width' | 'height'>): string {
  const { briefing, up } = request;
  const lines = keyLines(request);
  const description = `Holding pattern with ${briefing.turns} turns, drawn to scale with ${up === 'north' ? 'magnetic north' : up} up. ${lines.map(({ text }) => text).join('. ')}.`;
  const sheet = { ...size, title: `Hold, ${briefing.turns} turns`, description };
  const upDegrees = up === 'north' ? 0 : briefing.inboundDegrees;
  const path = holdPath(briefing);
  const rows = keyRows(lines, size.width);
  const keyTop = size.height - rows.length * lineHeight + 6;
  const area = { left: sideRoom, right: size.width - sideRoom, top: 34, bottom: keyTop - 40 };
  const frame = frameOf([...path.lap, ...path.entry, ...path.arrival], upDegrees, area);
  return svgDocument(sheet, [
    label(`${sheet.title}, ${up} up`, { x: margin, y: 18 }, { bold: true }),
    drawing(path, frame),
    compass(request, upDegrees, sheet),
    scaleBar(frame.pixelsPerMile, sheet, keyTop - 18),
    key(rows, keyTop),
  ]);
}
