// Dates as a calendar file (iCalendar, RFC 5545), for whichever host: entries in, text out. Written by ical-generator.
// The same entry always has the same UID, and a later as_of a higher SEQUENCE, so importing again moves an event and never doubles it.
import ical, { ICalCalendarMethod } from 'ical-generator';
import { dayNumber } from '../../core/civilDate';

export interface CalendarEntry {
  /** What the entry is, in words that do not change when its day does. */
  readonly identity: string;
  readonly title: string;
  readonly details: string;
  /** A whole day as 2026-11-26, or a moment of UTC as 2026-11-26T09:01Z. */
  readonly when: string;
}

export interface CalendarEntries {
  readonly entries: readonly CalendarEntry[];
  /** What has no day, or lies behind: to be told beside the file. */
  readonly leftOut: readonly string[];
}

const wholeDay = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Lower-case letters and digits with hyphens between; other letters by their code, so that two names stay two. */
export const slug = (text: string): string =>
  text.trim().toLowerCase().replace(/[^a-z0-9]+/g, (others) => ([...others].every((letter) => letter.charCodeAt(0) < 128) ? '-' : `-${[...others].map((letter) => letter.codePointAt(0)?.toString(36)).join('-')}-`)).replace(/^-+|-+$/g, '');

/** An identity used twice is numbered, in the order of the rows. */
function uids(entries: readonly CalendarEntry[]): string[] {
  const used = new Map<string, number>();
  return entries.map(({ identity }) => {
    const times = (used.get(identity) ?? 0) + 1;
    used.set(identity, times);
    return `${slug(identity)}${times === 1 ? '' : `-${times}`}@rampwright`;
  });
}

function sequenceOf(asOf: string): number {
  const [, year, month, day] = wholeDay.exec(asOf) ?? [];
  if (day === undefined) throw new Error(`as_of must be a day such as 2026-11-25; got "${asOf}"`);
  return dayNumber({ year: Number(year), month: Number(month), day: Number(day) });
}

/** `asOf` is the day on which the entries were worked out, as 2026-11-25; no clock is read. */
export function calendarText(name: string, { entries }: CalendarEntries, asOf: string): string {
  const calendar = ical({ name, prodId: { company: 'Rampwright', product: 'Dates', language: 'EN' }, method: ICalCalendarMethod.PUBLISH });
  const sequence = sequenceOf(asOf);
  const ids = uids(entries);
  entries.forEach(({ title, details, when }, index) => {
    const allDay = wholeDay.test(when);
    const start = new Date(allDay ? `${when}T00:00:00Z` : when);
    if (Number.isNaN(start.getTime())) throw new Error(`an entry must have a day or a moment of UTC; got "${when}"`);
    calendar.createEvent({ id: ids[index] ?? null, sequence, stamp: new Date(`${asOf}T00:00:00Z`), start, allDay, summary: title, ...(details === '' ? {} : { description: details }) });
  });
  return calendar.toString();
}
