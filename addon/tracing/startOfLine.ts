// Where a click meant a line: the middle of the nearest dark stroke, its direction, breadth and darkness.
import type { Place } from './greyPicture';
import { cutAcross, inkAt } from './lineProfile';
import type { WithoutGrid } from './withoutGrid';

export interface LineStart {
  readonly at: Place;
  /** A step of length 1 along the line. */
  readonly way: Place;
  /** Pixels. */
  readonly width: number;
  readonly ink: number;
}

export type StartProblem = 'noLine' | 'twoLines' | 'faint';
export type StartFound = { readonly start: LineStart } | { readonly problem: StartProblem };

/** Pixels about the click in which a line is looked for, and over which a direction is told. */
const [around, arm] = [9, 11];
const directions = Array.from({ length: 36 }, (_, index) => (index * Math.PI) / 36);
const faintest = 0.12;

/** The mean ink along a stick through a place. */
function along({ lines }: WithoutGrid, { x, y }: Place, angle: number): number {
  const [right, down] = [Math.cos(angle), Math.sin(angle)];
  let sum = 0;
  for (let step = -arm; step <= arm; step += 1) sum += inkAt(lines, x + right * step, y + down * step);
  return sum / (2 * arm + 1);
}

interface Stick {
  readonly angle: number;
  readonly ink: number;
}

function bestStick(picture: WithoutGrid, place: Place): Stick {
  return directions.map((angle) => ({ angle, ink: along(picture, place, angle) })).reduce((best, one) => (one.ink > best.ink ? one : best));
}

interface Candidate {
  readonly place: Place;
  readonly stick: Stick;
  readonly worth: number;
}

/** Dark places about the click, each with its direction: the darker and the nearer, the more it is worth. */
function candidates(picture: WithoutGrid, click: Place): Candidate[] {
  const found: Candidate[] = [];
  for (let down = -around; down <= around; down += 1)
    for (let right = -around; right <= around; right += 1) {
      const distance = Math.hypot(right, down);
      const place = { x: click.x + right, y: click.y + down };
      const own = inkAt(picture.lines, place.x, place.y);
      if (distance > around || own < faintest) continue;
      const stick = bestStick(picture, place);
      found.push({ place, stick, worth: Math.min(own, stick.ink) * (1 - (0.6 * distance) / around) });
    }
  return found;
}

const turnedBy = (one: Stick, other: Stick): number => Math.abs(((one.angle - other.angle + Math.PI * 1.5) % Math.PI) - Math.PI / 2);

/** Another direction is nearly as dark, here or at a place that the click may have meant as well. */
function crosses(picture: WithoutGrid, best: Candidate, all: readonly Candidate[]): boolean {
  const differs = (one: Stick): boolean => turnedBy(one, best.stick) > Math.PI / 6;
  const here = directions.map((angle) => ({ angle, ink: along(picture, best.place, angle) }));
  return (
    here.some((one) => differs(one) && one.ink > 0.75 * best.stick.ink) || all.some(({ stick, worth }) => differs(stick) && worth > 0.6 * best.worth)
  );
}

/** Pixels along the line at which it must be alone, or beside lines that keep their distance. */
const beside = [-18, -12, -6, 0, 6, 12, 18];

/** Another line comes nearer or is run into, close by: which of the two goes on beyond it could not be told. */
function isJoined(picture: WithoutGrid, { at, way, width, ink }: LineStart): boolean {
  const near = 2.2 * width + 6;
  const cuts = beside.flatMap((along) => {
    const place = { x: at.x + way.x * along, y: at.y + way.y * along };
    const { strokes, hidden } = cutAcross(picture, place, way, { reach: near + 6, least: ink * 0.5, hiding: 0.3 * ink, near: width / 2 + 1 });
    const own = strokes.reduce<(typeof strokes)[number] | undefined>(
      (best, one) => (best === undefined || Math.abs(one.offset) < Math.abs(best.offset) ? one : best),
      undefined,
    );
    return own === undefined || hidden > 0 ? [] : [{ own, others: strokes.filter((one) => one !== own).map(({ offset }) => offset - own.offset) }];
  });
  if (cuts.some(({ own }) => own.width > 1.7 * width + 1)) return true;
  return [-1, 1].some((side) => {
    const gaps = cuts.flatMap(({ others }) => others.filter((one) => Math.sign(one) === side && Math.abs(one) < near).map(Math.abs));
    return gaps.length > 1 && Math.max(...gaps) - Math.min(...gaps) > 3;
  });
}

export function startOfLine(picture: WithoutGrid, click: Place): StartFound {
  const all = candidates(picture, click);
  const [first] = all;
  if (first === undefined) return { problem: 'noLine' };
  const best = all.reduce((most, one) => (one.worth > most.worth ? one : most), first);
  const { place, stick } = best;
  if (stick.ink < faintest) return { problem: 'faint' };
  if (crosses(picture, best, all)) return { problem: 'twoLines' };
  const way = { x: Math.cos(stick.angle), y: Math.sin(stick.angle) };
  const { strokes } = cutAcross(picture, place, way, { reach: 14, least: stick.ink * 0.5, hiding: 1, near: 0 });
  const [own] = [...strokes].sort((one, other) => Math.abs(one.offset) - Math.abs(other.offset));
  if (own === undefined || Math.abs(own.offset) > 6) return { problem: 'noLine' };
  if (own.width > 20) return { problem: 'twoLines' };
  const at = { x: place.x - way.y * own.offset, y: place.y + way.x * own.offset };
  const start = { at, way, width: Math.max(1.5, own.width), ink: own.ink };
  return isJoined(picture, start) ? { problem: 'twoLines' } : { start };
}
