/// <reference types="google-apps-script" />
// What a Date means in the spreadsheet's own zone, through the platform's services, asked only when a date is there.
//
// A custom function runs in the script's zone (fixed in appsscript.json), while a date cell is midnight in the
// spreadsheet's zone, which each user sets. So the Date getters are never used on the platform.
import { civilDateFromDayNumber, dayNumber, type CivilDate, type CivilDateTime } from '../../core/basics/civilDate';
import { millisecondsPerDay } from '../../core/basics/units';
import type { DateHost } from '../../functions/registry/dateHost';
import { withoutDoubt } from './earlyTimes';
import { reasonOf } from './reason';
import { rememberedOffsets, type OffsetAt } from './zoneOffsets';

/**
 * Instants outside these years have no four-digit text of the calendar that we count in. Readers of arguments refuse far
 * earlier; the panel reads a date of any year as the number that it is.
 */
const firstInstant = Date.UTC(1800, 0, 1);
const lastInstant = Date.UTC(9999, 11, 31);

/** The wall clock written as if it were UTC. */
function wallClock(year: number, month: number, date: number, hours: number, minutes: number, seconds: number): number {
  return Date.UTC(year, month - 1, date, hours, minutes, seconds);
}

/** Offsets of the spreadsheet's zone, from Utilities.formatDate. */
function spreadsheetOffsets(): OffsetAt {
  const zone = SpreadsheetApp.getActive().getSpreadsheetTimeZone();
  const asked: OffsetAt = (instant) => {
    const text = Utilities.formatDate(new Date(instant), zone, 'yyyy-MM-dd HH:mm:ss');
    const parts = /^(\d{4})-(\d\d)-(\d\d) (\d\d):(\d\d):(\d\d)$/.exec(text);
    if (parts === null) throw new Error(`the date service answered "${text}"`);
    const [year = 0, month = 0, date = 0, hours = 0, minutes = 0, seconds = 0] = parts.slice(1).map(Number);
    return wallClock(year, month, date, hours, minutes, seconds) - Math.floor(instant / 1000) * 1000;
  };
  return withoutDoubt(rememberedOffsets(asked), zone);
}

/**
 * Offsets of the runtime's own zone. Used only where SpreadsheetApp does not exist at all, which is a bare test context:
 * on the platform the Spreadsheet service is a global of every execution, custom functions included, so this branch
 * cannot be reached there.
 */
const runtimeOffset: OffsetAt = (instant) => {
  const at = new Date(instant);
  const wall = wallClock(at.getFullYear(), at.getMonth() + 1, at.getDate(), at.getHours(), at.getMinutes(), at.getSeconds());
  return wall - Math.floor(instant / 1000) * 1000;
};

/** The first instant of a civil day; where midnight is skipped or comes twice, still the first. */
export function startOfDay(midnight: number, offsetAt: OffsetAt): number {
  const offsets = [offsetAt(midnight - millisecondsPerDay), offsetAt(midnight + millisecondsPerDay)];
  const candidates = offsets.map((offset) => midnight - offset).filter((instant) => instant + offsetAt(instant) === midnight);
  if (candidates.length > 0) return Math.min(...candidates);
  // The clock jumped over midnight: halve the way to the first second whose wall clock is past it.
  let before = midnight - Math.max(...offsets) - 1000;
  let after = midnight - Math.min(...offsets);
  while (after - before > 1000) {
    const middle = before + Math.floor((after - before) / 2000) * 1000;
    if (middle + offsetAt(middle) >= midnight) after = middle;
    else before = middle;
  }
  return after;
}

export interface GoogleDateHost extends DateHost {
  /** Set once a service has failed: then no date of this call can be trusted, and the reason is this. */
  readonly failure: () => string | undefined;
}

/** One for each call: the zone is asked at the first date, and remembered with its offsets. */
export function googleDateHost(): GoogleDateHost {
  let offsets: OffsetAt | undefined;
  let failed: string | undefined;
  const offsetAt: OffsetAt = (instant) => {
    if (failed !== undefined) throw new Error(failed);
    try {
      offsets ??= typeof SpreadsheetApp === 'undefined' ? rememberedOffsets(runtimeOffset) : spreadsheetOffsets();
      return offsets(instant);
    } catch (thrown) {
      failed = reasonOf(thrown);
      throw thrown;
    }
  };
  return {
    failure: () => failed,
    toCivil: (date): CivilDateTime => {
      const instant = date.getTime();
      const known = instant >= firstInstant && instant < lastInstant;
      const wall = new Date(instant + (known ? offsetAt(instant) : 0));
      const civil = civilDateFromDayNumber(Math.floor(wall.getTime() / millisecondsPerDay));
      return { ...civil, hours: wall.getUTCHours(), minutes: wall.getUTCMinutes(), seconds: wall.getUTCSeconds() };
    },
    fromCivil: (date: CivilDate): Date => new Date(startOfDay(dayNumber(date) * millisecondsPerDay, offsetAt)),
    // The platform shows every Date in the spreadsheet's zone.
    fromInstant: ({ utcMilliseconds }): Date => new Date(utcMilliseconds),
  };
}
