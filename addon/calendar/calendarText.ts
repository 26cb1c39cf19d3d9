// Dates as a calendar file (iCalendar, RFC 5545), for whichever host: entries in, text out. Written by ical-generator.
// The same entry always has the same UID, and a later file a higher SEQUENCE and a later DTSTAMP (RFC 5545, 3.8.7.2 and 3.8.7.4), so importing
// again moves an event and never doubles it.
import ical, { ICalAlarmType, ICalCalendarMethod } from 'ical-generator';

export interface CalendarEntry {
  /** What the entry is, in words that do not change when its day does. */
  readonly identity: string;
  readonly title: string;
  readonly details: string;
  /** A whole day as 2026-11-26, or a moment of UTC as 2026-11-26T09:01Z. */
  readonly when: string;
  /** How many days before it the calendar reminds: that day at 9 in the morning, or for a moment so many times 24 hours before. */
  readonly remindDays: number;
}

export interface CalendarEntries {
  readonly entries: readonly CalendarEntry[];
  /** What has no day, or lies behind: to be told beside the file. */
  readonly leftOut: readonly string[];
}

const wholeDay = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Lower-case letters and digits with hyphens between; other letters by their code, so that two names stay two. */
export const slug = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, (others) =>
      [...others].every((letter) => letter.charCodeAt(0) < 128)
        ? '-'
        : `-${[...others].map((letter) => letter.codePointAt(0)?.toString(36)).join('-')}-`,
    )
    .replace(/^-+|-+$/g, '');

/** RFC 5545, 3.1 (CONTROL) and 3.3.11: a text holds no control characters but tabs, and line breaks as \\n. Nor does half a pair make a letter. */
const fit = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]+/g, ' ')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');

/** An identity used twice is numbered, in the order of the rows. */
function uids(entries: readonly CalendarEntry[]): string[] {
  const used = new Map<string, number>();
  return entries.map(({ identity }) => {
    const times = (used.get(identity) ?? 0) + 1;
    used.set(identity, times);
    return `${slug(identity)}${times === 1 ? '' : `-${times}`}@rampwright`;
  });
}

/** Seconds since 2020: higher with every later file, also of the same day, and than in the files that counted days. */
const sequenceOf = (madeAt: Date): number => Math.floor((madeAt.getTime() - Date.UTC(2020, 0, 1)) / 1000);

/** Seconds before the beginning of the entry. A whole day begins at midnight, when nobody wants to be told. */
const reminderBefore = (days: number, allDay: boolean): number => days * 86_400 - (allDay ? 9 * 3600 : 0);

/** `madeAt` is the moment at which the file is made. */
export function calendarText(name: string, { entries }: CalendarEntries, madeAt: Date): string {
  const calendar = ical({ name, prodId: { company: 'Rampwright', product: 'Dates', language: 'EN' }, method: ICalCalendarMethod.PUBLISH });
  const sequence = sequenceOf(madeAt);
  const ids = uids(entries);
  entries.forEach(({ title, details, when, remindDays }, index) => {
    const allDay = wholeDay.test(when);
    const start = new Date(allDay ? `${when}T00:00:00Z` : when);
    if (Number.isNaN(start.getTime())) throw new Error(`an entry must have a day or a moment of UTC; got "${when}"`);
    calendar.createEvent({
      id: ids[index] ?? null,
      sequence,
      stamp: madeAt,
      start,
      allDay,
      summary: fit(title),
      alarms: [{ type: ICalAlarmType.display, trigger: reminderBefore(remindDays, allDay), description: fit(title) }],
      ...(details === '' ? {} : { description: fit(details) }),
    });
  });
  return calendar.toString();
}
