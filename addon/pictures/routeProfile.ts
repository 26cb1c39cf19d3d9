// A route seen from the side as SVG: its levels, climbs and descents over the distance, and under each leg the highest ground with what is wanted above it.
import { scaleLinear } from 'd3-scale';
import { axes } from './axes';
import { area, thousands } from './descentProfile';
import type { Scales } from './descentMarks';
import { colours, element, label, polyline, svgDocument, widthOfText, type Point, type Sheet } from './svg';

export interface ProfilePart {
  readonly nauticalMiles: number;
  /** At its end. */
  readonly toFeet: number;
}

export interface ProfileLeg {
  readonly number: number;
  readonly to: string;
  readonly levelFeet: number;
  readonly parts: readonly ProfilePart[];
  /** Undefined where the ground of the leg is not typed, or not judged. */
  readonly ground: { readonly highestFeet: number; readonly wantedFeet: number } | undefined;
}

export interface RouteProfile {
  /** Where the climb begins. */
  readonly fromFeet: number;
  readonly legs: readonly ProfileLeg[];
}

type Size = Pick<Sheet, 'width' | 'height'>;

interface LaidLeg extends ProfileLeg {
  readonly startMiles: number;
  readonly endMiles: number;
}

export function laidAlong({ legs }: RouteProfile): LaidLeg[] {
  let at = 0;
  return legs.map((leg) => {
    const startMiles = at;
    at += leg.parts.reduce((sum, { nauticalMiles }) => sum + nauticalMiles, 0);
    return { ...leg, startMiles, endMiles: at };
  });
}

/** Heights over miles, a straight line for each part. */
export function flownLine({ fromFeet, legs }: RouteProfile): Point[] {
  let at = 0;
  const points = legs.flatMap(({ parts }) =>
    parts.map(({ nauticalMiles, toFeet }) => {
      at += nauticalMiles;
      return { x: at, y: toFeet };
    }),
  );
  return [{ x: 0, y: fromFeet }, ...points];
}

const isLow = ({ ground, levelFeet }: ProfileLeg): boolean => ground !== undefined && levelFeet < ground.wantedFeet;

function groundOf(leg: LaidLeg, { x, y }: Scales, bottom: number): string {
  const [left, right] = [x(leg.startMiles), x(leg.endMiles)];
  if (leg.ground === undefined)
    return widthOfText('no ground') < right - left
      ? label('no ground', { x: (left + right) / 2, y: bottom - 20 }, { anchor: 'middle', color: colours.faint })
      : '';
  const top = y(leg.ground.highestFeet);
  const wanted = y(leg.ground.wantedFeet);
  const block = element('rect', {
    x: left,
    y: top,
    width: Math.max(0, right - left),
    height: Math.max(0, bottom - top),
    fill: colours.grid,
    stroke: colours.faint,
    'stroke-width': 0.8,
  });
  const line = [
    { x: left, y: wanted },
    { x: right, y: wanted },
  ];
  return block + polyline(line, { stroke: colours.entry, 'stroke-width': isLow(leg) ? 3.2 : 1.6, 'stroke-dasharray': isLow(leg) ? 'none' : '5 3' });
}

/** Where a leg ends; its number in the middle, on the foot of the picture. */
function legMarks(leg: LaidLeg, isLast: boolean, { x }: Scales, top: number, bottom: number): string {
  const end = element('path', {
    d: `M${x(leg.endMiles).toFixed(1)},${top}V${bottom}`,
    stroke: colours.faint,
    'stroke-width': 0.8,
    'stroke-dasharray': '2 3',
  });
  const middle = { x: x((leg.startMiles + leg.endMiles) / 2), y: bottom - 5 };
  const number = label(isLow(leg) ? `${leg.number} too low` : String(leg.number), middle, { anchor: 'middle', bold: true });
  return (isLast ? '' : end) + number;
}

const legInWords = (leg: ProfileLeg): string =>
  `leg ${leg.number} to ${leg.to} at ${thousands(leg.levelFeet)} feet, ` +
  (leg.ground === undefined
    ? 'ground not judged'
    : `ground ${thousands(leg.ground.highestFeet)}, wanted ${thousands(leg.ground.wantedFeet)}${isLow(leg) ? ': too low' : ''}`);

function scalesOf(profile: RouteProfile, { width, height }: Size, top: number): Scales {
  const feet = [
    ...flownLine(profile).map(({ y }) => y),
    ...profile.legs.flatMap(({ ground }) => (ground === undefined ? [] : [ground.highestFeet, ground.wantedFeet])),
  ];
  const [low, high] = [Math.min(0, ...feet), Math.max(...feet)];
  const miles = flownLine(profile).map(({ x }) => x);
  return {
    x: scaleLinear([0, Math.max(...miles)], [area.left, width - area.right]),
    y: scaleLinear([low, high + Math.max(500, (high - low) * 0.08)], [height - area.bottom, top]),
  };
}

export function routeProfilePicture(profile: RouteProfile, size: Size): string {
  const sheet = { ...size, title: 'Route from the side', description: profile.legs.map(legInWords).join('; ') };
  const top = 40;
  const bottom = size.height - area.bottom;
  const scales = scalesOf(profile, size, top);
  const laid = laidAlong(profile);
  const path = flownLine(profile).map((point) => ({ x: scales.x(point.x), y: scales.y(point.y) }));
  return svgDocument(sheet, [
    label(sheet.title, { x: 12, y: 18 }, { bold: true }),
    axes(scales, size, top, 'NM from the departure'),
    ...laid.map((leg) => groundOf(leg, scales, bottom)),
    ...laid.map((leg, index) => legMarks(leg, index === laid.length - 1, scales, top, bottom)),
    polyline(path, { stroke: colours.path, 'stroke-width': 2.4 }),
    label('Grey: highest ground. Orange: ground, clearance and cold air.', { x: 12, y: size.height - 8 }, { color: colours.faint }),
  ]);
}
