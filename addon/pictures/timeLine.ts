// A line of days: its scale, its ticks, and the events on it put together where their numbers would overlap.
import { scaleUtc } from 'd3-scale';
import { dateFromSerial, isoFromSerial } from '../workbook/serialDates';
import { colours, element, label, widthOfText } from './svg';

export interface DayLine {
  readonly firstDay: number;
  readonly lastDay: number;
  readonly left: number;
  readonly right: number;
  /** Place of a day across, in pixels. */
  readonly x: (day: number) => number;
}

/** From one day to another, with a little room at both ends. */
export function dayLine(days: readonly number[], left: number, right: number): DayLine {
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const room = Math.max(2, (last - first) * 0.04);
  const [firstDay, lastDay] = [first - room, last + room];
  return { firstDay, lastDay, left, right, x: (day) => left + ((right - left) * (day - firstDay)) / (lastDay - firstDay) };
}

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** Words for ticks: years, months or days, whatever tells them apart. */
function tickWords(days: readonly string[]): (day: string) => string {
  if (days.length > 1 && days.every((day) => day.endsWith('-01-01'))) return (day) => day.slice(0, 4);
  if (days.every((day) => day.endsWith('-01'))) return (day) => day.slice(0, 7);
  return (day) => `${Number(day.slice(8))} ${months[Number(day.slice(5, 7)) - 1] ?? ''}`;
}

interface Tick {
  readonly at: number;
  readonly words: string;
}

/** As many as leave room between their words. */
function ticksOf({ firstDay, lastDay, left, right }: DayLine): readonly Tick[] {
  const scale = scaleUtc([dateFromSerial(firstDay), dateFromSerial(lastDay)], [left, right]);
  const ticks = (count: number): Tick[] => {
    const days = scale.ticks(count).map((date) => ({ at: scale(date), iso: date.toISOString().slice(0, 10) }));
    const words = tickWords(days.map(({ iso }) => iso));
    return days.map(({ at, iso }) => ({ at, words: words(iso) }));
  };
  const haveRoom = (some: readonly Tick[]): boolean =>
    some.every(({ at, words }, index) => index === 0 || at - (some[index - 1]?.at ?? 0) >= widthOfText(words) + 8);
  return [10, 9, 8, 7, 6, 5, 4, 3, 2, 1].map(ticks).find(haveRoom) ?? [];
}

/** Ticks below the line; a word that would reach beyond the margin is left out. */
export function dayTicks(days: DayLine, y: number): string {
  const { left, right } = days;
  const line = element('line', { x1: left, x2: right, y1: y, y2: y, stroke: colours.faint, 'stroke-width': 1.2 });
  const ticks = ticksOf(days).map(({ at, words }) => {
    const half = widthOfText(words) / 2;
    const fits = at - half >= 2 && at + half <= right + left - 2;
    return (
      element('line', { x1: at, x2: at, y1: y, y2: y + 6, stroke: colours.faint }) +
      (fits ? label(words, { x: at, y: y + 19 }, { anchor: 'middle', color: colours.faint }) : '')
    );
  });
  return [line, ...ticks].join('');
}

export interface DayEvent {
  readonly day: number;
  readonly count: number;
}

/** Events so near to each other that they are drawn as one, with their sum. */
export interface EventGroup {
  /** Edges of the mark in pixels: a dot, or longer over several days. */
  readonly left: number;
  readonly right: number;
  readonly words: string;
}

/** Pixels. */
export const dotRadius = 5;

/** Hours add up in binary fractions; nobody logs a thousandth. */
const inWords = (count: number): string => String(Number(count.toFixed(2)));

interface Gathered {
  readonly fromX: number;
  readonly toX: number;
  readonly count: number;
}

const middle = ({ fromX, toX }: Gathered): number => (fromX + toX) / 2;
const room = ({ count }: Gathered): number => Math.max(2 * dotRadius + 2, widthOfText(inWords(count)) + 4);

/** One pass from left to right; a group that grew may need another. */
const gatheredOnce = (groups: readonly Gathered[]): Gathered[] =>
  groups.reduce<Gathered[]>((kept, next) => {
    const last = kept[kept.length - 1];
    if (last === undefined || middle(next) - middle(last) >= (room(last) + room(next)) / 2) return [...kept, next];
    return [...kept.slice(0, -1), { fromX: last.fromX, toX: next.toX, count: last.count + next.count }];
  }, []);

/** Left to right; neighbours are put together until each number has room over its own mark. */
export function groupedEvents(events: readonly DayEvent[], x: (day: number) => number): EventGroup[] {
  let groups: Gathered[] = [...events].sort((one, other) => one.day - other.day).map(({ day, count }) => ({ fromX: x(day), toX: x(day), count }));
  for (let before = Infinity; groups.length < before;) {
    before = groups.length;
    groups = gatheredOnce(groups);
  }
  return groups.map(({ fromX, toX, count }, index) => {
    const [before, after] = [groups[index - 1]?.toX ?? -Infinity, groups[index + 1]?.fromX ?? Infinity];
    // Marks that would touch end half way between them.
    return {
      left: Math.max(fromX - dotRadius, (before + fromX + 1) / 2),
      right: Math.min(toX + dotRadius, (toX + after - 1) / 2),
      words: inWords(count),
    };
  });
}

export const dayInWords = isoFromSerial;
export const daysInWords = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;
