// The profile of a descent as SVG: altitude over distance, the bands of the plan, its start, and the crossing restrictions.
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { arrowhead, colours, element, label, polyline, svgDocument, textSize, widthOfText, type Point, type Sheet } from './svg';

export interface ProfileBand {
  readonly fromFeet: number;
  readonly toFeet: number;
  readonly groundspeedKnots: number;
  readonly nauticalMiles: number;
}

export interface ProfileCrossing {
  readonly name: string;
  /** From here along the track. */
  readonly atNauticalMiles: number;
  readonly altitudeFeet: number;
  readonly kind: 'at' | 'at or below' | 'at or above';
}

export interface DescentProfile {
  readonly bands: readonly ProfileBand[];
  /** Where the last band ends, from here. */
  readonly endNauticalMiles: number;
  readonly crossings: readonly ProfileCrossing[];
  /** Given where there is no "here": distances run from the start of the descent, and the fix it is made for lies so far on. */
  readonly fixNauticalMiles?: number;
}

interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

const area = { left: 52, right: 14, bottom: 60 };
const nameRow = 15;

export const thousands = (feet: number): string => String(Math.round(feet)).replace(/\B(?=(\d{3})+$)/g, ',');
const totalMiles = (bands: readonly ProfileBand[]): number => bands.reduce((total, { nauticalMiles }) => total + nauticalMiles, 0);

/** Start and end of each band along the track. */
export function bandPlaces({ bands, endNauticalMiles }: DescentProfile): readonly (ProfileBand & { readonly startsAt: number; readonly endsAt: number })[] {
  let at = endNauticalMiles - totalMiles(bands);
  return bands.map((band) => {
    const startsAt = at;
    at += band.nauticalMiles;
    return { ...band, startsAt, endsAt: at };
  });
}

/** From here, level to the start, down the bands, and level on to the last thing there is to show. */
export function pathOf(profile: DescentProfile): readonly { readonly miles: number; readonly feet: number }[] {
  const places = bandPlaces(profile);
  const [first, last] = [places[0], places[places.length - 1]];
  if (first === undefined || last === undefined) return [];
  const farthest = Math.max(last.endsAt, profile.fixNauticalMiles ?? last.endsAt, ...profile.crossings.map(({ atNauticalMiles }) => atNauticalMiles));
  const start = first.startsAt > 0 ? [{ miles: 0, feet: first.fromFeet }] : [];
  const onward = farthest > last.endsAt ? [{ miles: farthest, feet: last.toFeet }] : [];
  return [...start, { miles: first.startsAt, feet: first.fromFeet }, ...places.map(({ endsAt, toFeet }) => ({ miles: endsAt, feet: toFeet })), ...onward];
}

interface NamePlace {
  readonly crossing: ProfileCrossing;
  readonly x: number;
  readonly row: number;
}

/**
 * Names over the plot, each ending at the thread that hangs down from it. From left to right each takes the lowest row that neither a
 * name nor a thread reaches into, so that no thread runs through a name.
 */
export function namePlaces(crossings: readonly ProfileCrossing[], x: (miles: number) => number): readonly NamePlace[] {
  const taken: number[] = [];
  return [...crossings].sort((one, other) => one.atNauticalMiles - other.atNauticalMiles).map((crossing) => {
    const thread = x(crossing.atNauticalMiles);
    const end = Math.max(thread, area.left + widthOfText(crossing.name));
    const free = taken.findIndex((until) => end - widthOfText(crossing.name) > until);
    const row = free < 0 ? taken.length : free;
    for (let lower = 0; lower <= row; lower += 1) taken[lower] = end + 4;
    return { crossing, x: end, row };
  });
}

const mostNameRows = 3;
const rowsOf = (places: readonly NamePlace[]): number => places.reduce((most, { row }) => Math.max(most, row + 1), 0);

function axes({ x, y }: Scales, { width, height }: Sheet, top: number, milesTitle: string): string {
  const [xTicks, yTicks] = [x.ticks(Math.max(3, Math.floor(width / 80))), y.ticks(Math.max(3, Math.floor((height - area.bottom - top) / 32)))];
  const bottom = height - area.bottom;
  const across = yTicks.map((feet) => element('path', { d: `M${area.left},${y(feet).toFixed(1)}H${width - area.right}`, stroke: colours.grid }) + label(thousands(feet), { x: area.left - 6, y: y(feet) + 4 }, { anchor: 'end', color: colours.faint }));
  const up = xTicks.map((miles) => element('path', { d: `M${x(miles).toFixed(1)},${top}V${bottom}`, stroke: colours.grid }) + label(String(miles), { x: x(miles), y: bottom + 16 }, { anchor: 'middle', color: colours.faint }));
  const titles = label('feet', { x: area.left - 6, y: top - 6 }, { anchor: 'end', color: colours.faint }) + label(milesTitle, { x: (area.left + width - area.right) / 2, y: bottom + 33 }, { anchor: 'middle', color: colours.faint });
  return [...across, ...up, titles].join('');
}

/** Every second band is shaded; the groundspeed stands at its foot where it fits. */
function bandShades(profile: DescentProfile, { x, y }: Scales, bottom: number): string {
  return bandPlaces(profile)
    .map(({ startsAt, endsAt, fromFeet, toFeet, groundspeedKnots }, index) => {
      const [left, right] = [x(startsAt), x(endsAt)];
      const corners = [{ x: left, y: bottom }, { x: left, y: y(fromFeet) }, { x: right, y: y(toFeet) }, { x: right, y: bottom }, { x: left, y: bottom }];
      const speed = `${Math.round(groundspeedKnots)} kt`;
      const fits = right - left > widthOfText(speed) + 6 && bottom - y(toFeet) > textSize + 8;
      const edge = element('path', { d: `M${right.toFixed(1)},${y(toFeet).toFixed(1)}V${bottom}`, stroke: colours.faint, 'stroke-width': 0.8, 'stroke-dasharray': '2 3' });
      return polyline(corners, { fill: index % 2 === 0 ? colours.band : colours.paper }) + edge + (fits ? label(speed, { x: (left + right) / 2, y: bottom - 6 }, { anchor: 'middle', color: colours.faint }) : '');
    })
    .join('');
}

/** At: a bar with a dot on it. At or below: a bar with teeth hanging down. At or above: a bar with teeth standing up. */
function crossingMark(kind: ProfileCrossing['kind'], { x, y }: Point): string {
  const bar = `M${(x - 9).toFixed(1)},${y.toFixed(1)}h18`;
  const tooth = kind === 'at' ? '' : [-8, 0, 8].map((across) => `M${(x + across).toFixed(1)},${y.toFixed(1)}v${kind === 'at or below' ? 6 : -6}`).join('');
  const dot = kind === 'at' ? element('circle', { cx: x, cy: y, r: 4, fill: colours.entry, stroke: colours.paper }) : '';
  return element('path', { d: bar + tooth, stroke: colours.entry, 'stroke-width': 2.2, fill: 'none' }) + dot;
}

function crossingMarks(places: readonly NamePlace[], { x, y }: Scales, top: number): string {
  return places
    .map(({ crossing, x: nameX, row }) => {
      const point = { x: x(crossing.atNauticalMiles), y: y(crossing.altitudeFeet) };
      const nameY = top - 10 - row * nameRow;
      const thread = element('path', { d: `M${nameX.toFixed(1)},${nameY + 3}L${point.x.toFixed(1)},${top}V${point.y.toFixed(1)}`, stroke: colours.entry, 'stroke-width': 0.8, 'stroke-dasharray': '1 2', fill: 'none' });
      return thread + crossingMark(crossing.kind, point) + label(crossing.name, { x: nameX, y: nameY }, { anchor: 'end' });
    })
    .join('');
}

/** What the marks mean, those that are there, along the foot of the picture. */
function markKey(crossings: readonly ProfileCrossing[], y: number): string {
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

function startWords({ fixNauticalMiles }: DescentProfile, miles: number): string {
  if (fixNauticalMiles === undefined) return miles < 0 ? `start ${(-miles).toFixed(1)} NM behind` : `start in ${miles.toFixed(1)} NM`;
  return fixNauticalMiles < 0 ? `start ${(-fixNauticalMiles).toFixed(1)} NM after the fix` : `start ${fixNauticalMiles.toFixed(1)} NM before the fix`;
}

/** The fix as a broken line from top to bottom, its word above. */
function fixMark({ fixNauticalMiles }: DescentProfile, { x }: Scales, top: number, bottom: number): string {
  if (fixNauticalMiles === undefined) return '';
  const at = x(fixNauticalMiles);
  const line = element('path', { d: `M${at.toFixed(1)},${top}V${bottom}`, stroke: colours.ink, 'stroke-width': 1.6, 'stroke-dasharray': '6 3' });
  return line + label('fix', { x: at, y: top - 6 }, { bold: true, anchor: 'middle' });
}

function startMark(profile: DescentProfile, { x, y }: Scales, right: number): string {
  const [first] = bandPlaces(profile);
  if (first === undefined) return '';
  const [point, words] = [{ x: x(first.startsAt), y: y(first.fromFeet) }, startWords(profile, first.startsAt)];
  const toRight = point.x + 8 + widthOfText(words) < right;
  return arrowhead(point, 180, colours.path) + label(words, { x: toRight ? point.x + 8 : right, y: point.y - 8 }, { bold: true, anchor: toRight ? 'start' : 'end' });
}

function scalesOf(profile: DescentProfile, { width, height }: Sheet, top: number): Scales {
  const path = pathOf(profile);
  const miles = [...path.map((point) => point.miles), ...profile.crossings.map(({ atNauticalMiles }) => atNauticalMiles), 0, profile.fixNauticalMiles ?? 0];
  const feet = [...path.map((point) => point.feet), ...profile.crossings.map(({ altitudeFeet }) => altitudeFeet)];
  const [low, high] = [Math.min(...feet), Math.max(...feet)];
  const room = Math.max(500, (high - low) * 0.2);
  return {
    x: scaleLinear([Math.min(...miles), Math.max(...miles)], [area.left, width - area.right]),
    y: scaleLinear([Math.max(Math.min(0, low), low - room), high + room], [height - area.bottom, top]),
  };
}

function describe(profile: DescentProfile): string {
  const places = bandPlaces(profile);
  const last = places[places.length - 1];
  const down = last === undefined ? '' : `From ${thousands(places[0]?.fromFeet ?? 0)} to ${thousands(last.toFeet)} feet, ${startWords(profile, places[0]?.startsAt ?? 0)}, down at ${last.endsAt.toFixed(1)} NM.`;
  const crossings = profile.crossings.map(({ name, kind, altitudeFeet, atNauticalMiles }) => `${name} ${kind} ${thousands(altitudeFeet)} feet at ${atNauticalMiles.toFixed(1)} NM`);
  return `${down}${crossings.length === 0 ? '' : ` Crossing: ${crossings.join('; ')}.`}`;
}

export function descentPicture(profile: DescentProfile, size: Pick<Sheet, 'width' | 'height'>): string {
  const sheet = { ...size, title: 'Descent profile', description: describe(profile) };
  const { x } = scalesOf(profile, sheet, 0);
  const isCrowded = rowsOf(namePlaces(profile.crossings, x)) > mostNameRows;
  // Too many names side by side would leave no height to the profile: then their numbers stand there.
  const named = isCrowded ? profile.crossings.map((crossing, index) => ({ ...crossing, name: String(index + 1) })) : profile.crossings;
  const places = namePlaces(named, x);
  const top = 42 + rowsOf(places) * nameRow;
  const scales = scalesOf(profile, sheet, top);
  const path = pathOf(profile).map(({ miles, feet }) => ({ x: scales.x(miles), y: scales.y(feet) }));
  const bottom = size.height - area.bottom;
  return svgDocument(sheet, [
    label(isCrowded ? `${sheet.title}, crossings by their row` : sheet.title, { x: 12, y: 18 }, { bold: true }),
    bandShades(profile, scales, bottom),
    axes(scales, sheet, top, profile.fixNauticalMiles === undefined ? 'NM from here' : 'NM from the start'),
    polyline(path, { stroke: colours.path, 'stroke-width': 2.4 }),
    crossingMarks(places, scales, top),
    fixMark(profile, scales, top, bottom),
    startMark(profile, scales, size.width - area.right),
    markKey(profile.crossings, size.height - 8),
  ]);
}
