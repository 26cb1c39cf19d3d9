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

/** Words for ticks: years, months or days, whatever tells them apart. */
function tickWords(days: readonly string[]): (day: string) => string {
  if (days.every((day) => day.endsWith('-01-01'))) return (day) => day.slice(0, 4);
  return days.every((day) => day.endsWith('-01')) ? (day) => day.slice(0, 7) : (day) => day;
}

/** Ticks below the line, no word reaching beyond the edges. */
export function dayTicks({ firstDay, lastDay, left, right, x }: DayLine, y: number): string {
  const scale = scaleUtc([dateFromSerial(firstDay), dateFromSerial(lastDay)], [left, right]);
  const tickRoom = 84;
  const days = scale.ticks(Math.max(2, Math.floor((right - left) / tickRoom))).map((date) => ({ at: scale(date), iso: date.toISOString().slice(0, 10) }));
  const words = tickWords(days.map(({ iso }) => iso));
  const line = element('line', { x1: left, x2: right, y1: y, y2: y, stroke: colours.faint, 'stroke-width': 1.2 });
  const ticks = days.map(({ at, iso }) => {
    const half = widthOfText(words(iso)) / 2;
    const fits = at - half >= 2 && at + half <= right + (x(firstDay) - 2);
    return element('line', { x1: at, x2: at, y1: y, y2: y + 6, stroke: colours.faint }) + (fits ? label(words(iso), { x: at, y: y + 19 }, { anchor: 'middle', color: colours.faint }) : '');
  });
  return [line, ...ticks].join('');
}

export interface DayEvent {
  readonly day: number;
  readonly count: number;
}

/** Events so near to each other that they are drawn as one, with their sum. */
export interface EventGroup {
  readonly fromX: number;
  readonly toX: number;
  readonly words: string;
}

/** Hours add up in binary fractions; nobody logs a thousandth. */
const inWords = (count: number): string => String(Number(count.toFixed(2)));

/** Left to right; neighbours are put together until each number has room over its own mark. */
export function groupedEvents(events: readonly DayEvent[], x: (day: number) => number): EventGroup[] {
  let groups = [...events].sort((one, other) => one.day - other.day).map(({ day, count }) => ({ fromX: x(day), toX: x(day), count }));
  const middle = ({ fromX, toX }: { readonly fromX: number; readonly toX: number }): number => (fromX + toX) / 2;
  const room = (count: number): number => Math.max(12, widthOfText(inWords(count)) + 4);
  for (let before = Infinity; groups.length < before; ) {
    before = groups.length;
    groups = groups.reduce<typeof groups>((kept, next) => {
      const last = kept[kept.length - 1];
      const apart = last === undefined || (middle(next) - middle(last) >= (room(last.count) + room(next.count)) / 2 && next.fromX - last.toX >= 11);
      return apart ? [...kept, next] : [...kept.slice(0, -1), { fromX: last.fromX, toX: next.toX, count: last.count + next.count }];
    }, []);
  }
  return groups.map(({ fromX, toX, count }) => ({ fromX, toX, words: inWords(count) }));
}

export const dayInWords = isoFromSerial;
export const daysInWords = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;
