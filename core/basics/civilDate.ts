// Dates of the calendar without a clock or a zone: what a date cell of a spreadsheet means.
import { millisecondsPerDay } from './units';

export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

export interface CivilDateTime extends CivilDate {
  readonly hours: number;
  readonly minutes: number;
  readonly seconds: number;
}

/** A moment of the world's one clock, for a result that each spreadsheet shows in its own zone. */
export interface Instant {
  readonly utcMilliseconds: number;
}

/** The moment so many minutes after 0000 UTC of a day. */
export const instantOf = (day: number, utcMinutes: number): Instant => ({ utcMilliseconds: day * millisecondsPerDay + utcMinutes * 60_000 });

/** Whole days since 1 January 1970, in the proleptic Gregorian calendar. */
export function dayNumber({ year, month, day }: CivilDate): number {
  const instant = new Date(0);
  // setUTCFullYear, unlike Date.UTC, does not read years 0 to 99 as 1900 to 1999.
  instant.setUTCFullYear(year, month - 1, day);
  return Math.round(instant.getTime() / millisecondsPerDay);
}

export function civilDateFromDayNumber(days: number): CivilDate {
  const instant = new Date(days * millisecondsPerDay);
  return { year: instant.getUTCFullYear(), month: instant.getUTCMonth() + 1, day: instant.getUTCDate() };
}

/** Day 0 of the serial numbers of spreadsheets, 30 December 1899. */
export const serialDayZero = dayNumber({ year: 1899, month: 12, day: 30 });

/** The years in which a date of flying may lie: what lies outside was mistyped. @source common-practice */
export const firstYear = 1950;
export const lastYear = 2100;

/** False for a 30 February and the like. */
export function isCivilDate(date: CivilDate): boolean {
  const back = civilDateFromDayNumber(dayNumber(date));
  return back.year === date.year && back.month === date.month && back.day === date.day;
}

/** ISO 8601 text, such as 2026-01-22. */
export function isoDate({ year, month, day }: CivilDate): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
