// Calendar entries from the answers of the sheet functions, row by row. Dates in the rows are ISO days (2026-11-26): each
// host turns its own date cells into these first.
import { authorities } from '../../core/currency/rules';
import type { DiaryDoing } from '../../functions/facts';
import { visitTitle } from '../../functions/ledger/visitWords';
import { plainWords } from '../../functions/registry/readText';
import { firstFew } from '../../functions/registry/sharedWords';
import type { CalendarEntries, CalendarEntry } from './calendarText';

/** Days before which a calendar reminds: of a load, somebody has to get to the aircraft; of an end, there is something to arrange. */
const [beforeLoad, beforeEnd] = [2, 14];

export type AnswerRow = readonly (string | number | boolean)[];

const text = (row: AnswerRow, column: number): string => String(row[column] ?? '').trim();
const isDay = (cell: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(cell);

/** "0901Z" on a day, as a moment of UTC. */
function moment(day: string, time: string): string | undefined {
  const parts = /^(\d{2}):?(\d{2})Z?$/.exec(time);
  return parts === null ? undefined : `${day}T${parts[1] ?? ''}:${parts[2] ?? ''}Z`;
}

interface Sorted {
  readonly entry?: CalendarEntry;
  readonly leftOut?: string;
}

const sorted = (rows: readonly Sorted[]): CalendarEntries => ({
  entries: rows.flatMap(({ entry }) => (entry === undefined ? [] : [entry])),
  leftOut: rows.flatMap(({ leftOut }) => (leftOut === undefined ? [] : [leftOut])),
});

/** The aircraft that a visit is for, as the diary's words have them between brackets and commas; of many the first three. */
function aircraftNamed(about: string, names: readonly string[]): string {
  const ends = ['(', ', '].flatMap((before) => [')', ', '].map((after) => [before, after] as const));
  const isThere = (name: string): boolean => ends.some(([before, after]) => about.includes(`${before}${name}${after}`));
  const there = [...new Set(names.map((name) => name.trim()))].filter((name) => name !== '' && isThere(name));
  return there.length === 0 ? '' : ` (${firstFew(there, 3)})`;
}

function diaryEntry(row: AnswerRow, names: readonly string[]): Sorted {
  const [what, day, time, about] = [0, 2, 3, 6].map((column) => text(row, column)) as [DiaryDoing, string, string, string];
  if (what === 'renew') return {};
  const when = what === 'load' && isDay(day) ? moment(day, time) : undefined;
  if (when === undefined) return about === '' ? {} : { leftOut: about };
  const title = `Load data: ${visitTitle(about)}${aircraftNamed(about, names)}`;
  return { entry: { identity: `load ${day}`, title, details: about, when, remindDays: beforeLoad } };
}

/**
 * Rows of LEDGER_DIARY, and the names of the aircraft in the ledger: a load at its moment of UTC. An effective date is what a load is, and never moves; its time of day may be corrected.
 * The ends of licences come from the licences themselves: in the diary one that was renewed may have no row any more to move its entry by.
 */
export const diaryEntries = (rows: readonly AnswerRow[], aircraft: readonly string[]): CalendarEntries =>
  sorted(rows.map((row) => diaryEntry(row, aircraft)));

/** Rows of aircraft, database, licence end, cost, currency: one entry a licence, on the day on which it ends, whichever that is. */
export const licenceEntries = (rows: readonly AnswerRow[]): CalendarEntries =>
  sorted(
    rows.map((row): Sorted => {
      const [aircraft, database, day, cost, currency] = [0, 1, 2, 3, 4].map((column) => text(row, column)) as [
        string,
        string,
        string,
        string,
        string,
      ];
      if (aircraft === '' || database === '' || !isDay(day)) return {};
      const licence = `${database} (${aircraft})`;
      const price = cost === '' || currency === '' ? 'cost not written down' : `${cost} ${currency}`;
      return {
        entry: { identity: `licence ${plainWords(licence)}`, title: `Licence ends: ${licence}`, details: price, when: day, remindDays: beforeEnd },
      };
    }),
  );

const paragraphs = authorities.flatMap(({ pilot }) =>
  pilot.flatMap((rule) => [rule.paragraph, ...(rule.kind === 'months' ? [rule.check.paragraph] : [])]),
);

/** The same item may stand in the list of two authorities; the paragraph tells them apart, whatever else the rule says. */
const paragraphIn = (rule: string): string => rule.split('; ').find((part) => paragraphs.includes(part)) ?? '';

function lapse(identity: string, name: string, day: string, daysLeft: string, rule: string): Sorted {
  if (name === '') return {};
  if (!isDay(day)) return { leftOut: `${name}: no last good day` };
  if (Number(daysLeft) < 0) return { leftOut: `${name}: lapsed on ${day}` };
  return { entry: { identity, title: `Last good day: ${name}`, details: rule, when: day, remindDays: beforeEnd } };
}

/** Rows of PILOT_STATUS: the last good day of each item as a whole day. */
export const pilotEntries = (rows: readonly AnswerRow[]): CalendarEntries =>
  sorted(rows.map((row) => lapse(`pilot ${text(row, 0)} ${paragraphIn(text(row, 6))}`, text(row, 0), text(row, 4), text(row, 5), text(row, 6))));

/** Rows of AIRCRAFT_STATUS beside the aircraft and the item of each. Hours have no day and are left out. */
export const aircraftEntries = (
  rows: readonly AnswerRow[],
  items: readonly { readonly aircraft: string; readonly item: string }[],
): CalendarEntries =>
  sorted(
    rows.map((row, index) => {
      const { aircraft, item } = items[index] ?? { aircraft: '', item: '' };
      const name = `${aircraft} ${item}`.trim();
      return text(row, 0) === '' ? {} : lapse(`aircraft ${name}`, name, text(row, 1), text(row, 2), text(row, 4));
    }),
  );

export const together = (...all: readonly CalendarEntries[]): CalendarEntries => ({
  entries: all.flatMap(({ entries }) => entries),
  leftOut: all.flatMap(({ leftOut }) => leftOut),
});
