// Follows a dark line through a straightened picture, from a click to both its ends. Where it cannot be seen for a moment (below the grid, between
// dashes, under a spot) it goes straight on, and counts that only once the same line is found behind. Otherwise it stops, and says why.
import type { Place } from './greyPicture';
import { cutAcross, type Cut, type Look, type Stroke } from './lineProfile';
import { localFit } from './localFit';
import { startOfLine, type LineStart, type StartProblem } from './startOfLine';
import type { WithoutGrid } from './withoutGrid';

export interface LinePoint extends Place {
  /** First behind a stretch in which the line was not seen, longer than a grid line that crosses it. */
  readonly afterGap: boolean;
}

/**
 * lost: it ends or fades; crowded: another line runs into it; hidden: it runs along the grid; edge: it leaves the known points; several: more than
 * one line goes on behind a gap; long: it comes to no end.
 */
export type LineEnd = 'lost' | 'crowded' | 'hidden' | 'edge' | 'several' | 'long';

export interface FollowedLine {
  /** In straightened pixels, from one end to the other. */
  readonly points: readonly LinePoint[];
  readonly ends: readonly [LineEnd, LineEnd];
}

export type Followed = { readonly line: FollowedLine } | { readonly problem: StartProblem };

/** Pixels of a step; points that tell the way; the length from which they may tell a bend. */
const [step, remembered, bendFrom] = [1.5, 26, 24];
const longest = 20_000;

type Seen = { readonly kind: 'seen'; readonly stroke: Stroke } | { readonly kind: 'lost' | 'crowded' | 'hidden' | 'edge' | 'several' };

/** What one cut tells of the line, which was expected in its middle and may be beside it by `loose` pixels. */
function seenIn(cut: Cut, { width, ink }: LineStart, loose: number): Seen {
  if (cut.outside) return { kind: 'edge' };
  const near = cut.strokes.filter(({ offset, width: own }) => Math.abs(offset) - own / 2 <= loose + width / 2);
  const fitting = near.filter(({ offset }) => Math.abs(offset) <= loose);
  if (cut.hidden > 0.2) return { kind: 'hidden' };
  if (near.length > 1) return { kind: loose > width + 2 ? 'several' : 'crowded' };
  const [stroke] = near;
  if (stroke === undefined) return { kind: 'lost' };
  if (stroke.width > 1.7 * width + 1) return { kind: 'crowded' };
  return fitting.length === 0 || stroke.ink < 0.45 * ink || stroke.width < 0.35 * width ? { kind: 'lost' } : { kind: 'seen', stroke };
}

/** Pixels for which a line may stay unseen, by why. */
const patience = (width: number): Readonly<Record<Exclude<Seen['kind'], 'seen'>, number>> => ({
  lost: 6 * width + 8,
  // A line that crosses by less than some 25 degrees takes longer, and which of the two goes on is then not sure.
  crowded: 2.5 * width + 6,
  several: 2.5 * width + 6,
  hidden: 90,
  edge: 0,
});

/** How far the line behind a gap may turn; where another one was in the way, less. */
const sharpest = { plain: Math.cos((14 * Math.PI) / 180), crowded: Math.cos((9 * Math.PI) / 180) };
/** Pixels to both sides in which neighbours are looked for. */
const wide = 24;

interface Gap {
  readonly kind: Exclude<Seen['kind'], 'seen'>;
  readonly length: number;
  /** Pixels by which each kind added to it. */
  readonly spent: ReadonlyMap<string, number>;
}

const longerGap = (gap: Gap | undefined, kind: Gap['kind']): Gap => {
  const spent = new Map(gap?.spent);
  spent.set(kind, (spent.get(kind) ?? 0) + step);
  return { kind: gap === undefined || gap.kind === 'lost' ? kind : gap.kind, length: (gap?.length ?? 0) + step, spent };
};

const placeOf = (place: Place, way: Place, offset: number): Place => ({ x: place.x - way.y * offset, y: place.y + way.x * offset });

/** Behind a gap a few points must lie in one line, which goes the way that was expected. */
function goesOn(found: readonly Place[], expected: Place, { spent }: Gap): boolean {
  const [first, last] = [found[0], found[found.length - 1]];
  if (first === undefined || last === undefined) return false;
  const [x, y] = [last.x - first.x, last.y - first.y];
  return x * expected.x + y * expected.y >= (spent.has('crowded') || spent.has('several') ? sharpest.crowded : sharpest.plain) * Math.hypot(x, y);
}

function followed(picture: WithoutGrid, start: LineStart): { readonly points: LinePoint[]; readonly end: LineEnd } {
  const points: LinePoint[] = [{ ...start.at, afterGap: false }];
  const wait = patience(start.width);
  const streak = Math.ceil(Math.max(7, 1.6 * start.width) / step);
  const look = (loose: number): Look => ({
    reach: Math.max(wide, 2.2 * start.width + loose),
    least: Math.max(0.08, 0.5 * start.ink),
    hiding: 0.3 * start.ink,
    near: start.width / 2 + 1,
  });
  let way = start.way;
  let gap: Gap | undefined;
  let behind: Place[] = [];
  /** Pixels to the nearest neighbour of late: behind a gap the line is looked for in less than half of them. */
  let room = wide;
  while (points.length < longest) {
    // The longer a gap, the more of the line before it tells where it goes on.
    const known = points.slice(-remembered - Math.round((gap?.length ?? 0) / step));
    const fit = localFit(known, way, bendFrom);
    const ahead = step + (gap?.length ?? 0) + behind.length * step;
    const expected = behind.length < 3 ? fit.at(ahead) : localFit(behind, fit.at(ahead).way, Infinity).at(step);
    const loose = behind.length > 0 || gap === undefined ? start.width / 2 + 1 : Math.min(start.width / 2 + 1 + 0.08 * gap.length, 10, 0.45 * room);
    const cut = cutAcross(picture, expected.place, expected.way, look(loose));
    const seen = seenIn(cut, start, loose);
    if (seen.kind === 'seen') {
      const others = cut.strokes.filter((one) => one !== seen.stroke).map(({ offset }) => Math.abs(offset - seen.stroke.offset));
      room = Math.min(room + step / 3, wide, ...others);
      const place = placeOf(expected.place, expected.way, seen.stroke.offset);
      if (gap === undefined) {
        points.push({ ...place, afterGap: false });
        way = localFit(points.slice(-remembered), way, bendFrom).at(0).way;
        continue;
      }
      behind.push(place);
      if (behind.length < streak) continue;
      if (!goesOn(behind, fit.at(gap.length + step).way, gap)) return { points, end: gap.kind };
      const isLong = gap.length > 3 * start.width + 4;
      points.push(...behind.map((one, index) => ({ ...one, afterGap: isLong && index === 0 })));
      way = localFit(points.slice(-streak), fit.at(ahead).way, Infinity).at(0).way;
      [gap, behind] = [undefined, []];
      continue;
    }
    for (; behind.length > 0; behind.pop()) gap = longerGap(gap, 'lost');
    gap = longerGap(gap, seen.kind);
    const kind = [...gap.spent].find(([one, length]) => length > wait[one as Gap['kind']])?.[0];
    if (kind !== undefined) return { points, end: kind as LineEnd };
    // Another line that comes in while this one is hidden, or the other way round: too long to be sure which of them comes out.
    const met = (['several', 'crowded'] as const).find((one) => gap?.spent.has(one));
    if (met !== undefined && gap.length > wait.crowded + 10) return { points, end: met };
  }
  return { points, end: 'long' };
}

export function followLine(picture: WithoutGrid, click: Place): Followed {
  const found = startOfLine(picture, click);
  if ('problem' in found) return found;
  const { start } = found;
  const back = followed(picture, { ...start, way: { x: -start.way.x, y: -start.way.y } });
  const forth = followed(picture, start);
  // The gap that was crossed backwards lies before the point on its other side.
  const backwards = back.points.map((point, index) => ({ ...point, afterGap: back.points[index + 1]?.afterGap ?? false })).reverse();
  return { line: { points: [...backwards, ...forth.points.slice(1)], ends: [back.end, forth.end] } };
}
