// The changes that a trend or a forecast announces: their kinds, their times, and what each says.
import type { Conditions } from './conditions';

/** FROM: all of it new, as at the beginning of a forecast and behind FM. BECOMING: what is named is new at the end. The rest is for a time, or likely. */
export type ChangeKind = 'FROM' | 'BECOMING' | 'TEMPORARY' | 'PROBABLE';

/** A day of some month and the minutes after its 0000 UTC; 1,440 minutes are its end. */
export interface DayTime {
  readonly day: number;
  readonly minutes: number;
}

/** A change with its times as moments: minutes of UTC since the beginning of 1970. */
export interface Change {
  readonly kind: ChangeKind;
  /** As it begins in the text, such as "TEMPO 1608/1612". */
  readonly written: string;
  readonly from: number;
  readonly to: number;
  readonly conditions: Conditions;
}

export const changeKind = (word: string): ChangeKind =>
  word.startsWith('PROB') ? 'PROBABLE' : word === 'BECMG' ? 'BECOMING' : word.startsWith('FM') ? 'FROM' : 'TEMPORARY';

/** Words cut before each word that begins a part; the first part has no such word. */
export function partsAt(words: readonly string[], begins: RegExp): string[][] {
  const parts: string[][] = [[]];
  for (const word of words) {
    if (begins.test(word)) parts.push([word]);
    else parts[parts.length - 1]?.push(word);
  }
  return parts;
}

/** "1612" as day and hour, 24 being the end of the day. */
export function dayHour(text: string): DayTime | undefined {
  const [, day, hour] = /^(0[1-9]|[12]\d|3[01])([01]\d|2[0-4])$/.exec(text) ?? [];
  return day === undefined ? undefined : { day: Number(day), minutes: Number(hour) * 60 };
}

/** "161230" as day, hour and minute. */
export function dayHourMinute(text: string): DayTime | undefined {
  const [, day, hour, minute] = /^(0[1-9]|[12]\d|3[01])([01]\d|2[0-3])([0-5]\d)$/.exec(text) ?? [];
  return day === undefined ? undefined : { day: Number(day), minutes: Number(hour) * 60 + Number(minute) };
}
