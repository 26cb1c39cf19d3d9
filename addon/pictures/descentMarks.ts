// The marks of a descent's picture: crossing restrictions with their names, the start, the fix, and what the marks mean.
import type { ScaleLinear } from 'd3-scale';
import { arrowhead, colours, element, label, widthOfText, type Point } from './svg';
import { bandPlaces, type DescentProfile, type NamePlace, type ProfileCrossing, startWords } from './descentProfile';

export interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

export const nameRow = 15;

/** At: a bar with a dot on it. At or below: a bar with teeth hanging down. At or above: a bar with teeth standing up. */
function crossingMark(kind: ProfileCrossing['kind'], { x, y }: Point): string {
  const bar = `M${(x - 9).toFixed(1)},${y.toFixed(1)}h18`;
  const tooth =
    kind === 'at' ? '' : [-8, 0, 8].map((across) => `M${(x + across).toFixed(1)},${y.toFixed(1)}v${kind === 'at or below' ? 6 : -6}`).join('');
  const dot = kind === 'at' ? element('circle', { cx: x, cy: y, r: 4, fill: colours.entry, stroke: colours.paper }) : '';
  return element('path', { d: bar + tooth, stroke: colours.entry, 'stroke-width': 2.2, fill: 'none' }) + dot;
}

export function crossingMarks(places: readonly NamePlace[], { x, y }: Scales, top: number): string {
  return places
    .map(({ crossing, x: nameX, row }) => {
      const point = { x: x(crossing.atNauticalMiles), y: y(crossing.altitudeFeet) };
      const nameY = top - 10 - row * nameRow;
      const thread = element('path', {
        d: `M${nameX.toFixed(1)},${nameY + 3}L${point.x.toFixed(1)},${top}V${point.y.toFixed(1)}`,
        stroke: colours.entry,
        'stroke-width': 0.8,
        'stroke-dasharray': '1 2',
        fill: 'none',
      });
      return thread + crossingMark(crossing.kind, point) + label(crossing.name, { x: nameX, y: nameY }, { anchor: 'end' });
    })
    .join('');
}

/** What the marks mean, those that are there, along the foot of the picture. */
export function markKey(crossings: readonly ProfileCrossing[], y: number): string {
  let x = 10;
  return (['at', 'at or below', 'at or above'] as const)
    .filter((kind) => crossings.some((crossing) => crossing.kind === kind))
    .map((kind) => {
      const drawn = crossingMark(kind, { x: x + 9, y: y - 4 }) + label(kind, { x: x + 23, y }, { color: colours.faint });
      x += 23 + widthOfText(kind) + 8;
      return drawn;
    })
    .join('');
}

/** The fix as a broken line from top to bottom, its word above. */
export function fixMark({ fixNauticalMiles }: DescentProfile, { x }: Scales, top: number, bottom: number): string {
  if (fixNauticalMiles === undefined) return '';
  const at = x(fixNauticalMiles);
  const line = element('path', { d: `M${at.toFixed(1)},${top}V${bottom}`, stroke: colours.ink, 'stroke-width': 1.6, 'stroke-dasharray': '6 3' });
  return line + label('fix', { x: at, y: top - 6 }, { bold: true, anchor: 'middle' });
}

export function startMark(profile: DescentProfile, { x, y }: Scales, right: number): string {
  const [first] = bandPlaces(profile);
  if (first === undefined) return '';
  const [point, words] = [{ x: x(first.startsAt), y: y(first.fromFeet) }, startWords(profile, first.startsAt)];
  const toRight = point.x + 8 + widthOfText(words) < right;
  return (
    arrowhead(point, 180, colours.path) +
    label(words, { x: toRight ? point.x + 8 : right, y: point.y - 8 }, { bold: true, anchor: toRight ? 'start' : 'end' })
  );
}
