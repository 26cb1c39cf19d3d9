// Readers of dates, times of day in UTC, and durations.
import { civilDateFromDayNumber, dayNumber, firstYear, isCivilDate, lastYear, serialDayZero, type CivilDate } from '../../core/basics/civilDate';
import { minutesPerDay } from '../../core/basics/units';
import { ArgumentError } from './argumentError';
import { inWords, type CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';
import { numberFromCell, numberInWords } from './readNumber';

const isRealDate = (raw: CellValue): raw is Date => raw instanceof Date && !Number.isNaN(raw.getTime());

/** A date cell, ISO text, or the serial number behind a date whose cell lost its format; else undefined. */
export function civilDateFromCell(raw: CellValue, dates: DateHost, earliestYear = firstYear): CivilDate | undefined {
  let date: CivilDate | undefined;
  if (isRealDate(raw)) {
    const { year, month, day } = dates.toCivil(raw);
    date = { year, month, day };
  } else if (typeof raw === 'number' && Number.isInteger(raw) && Math.abs(raw) < 1e6) {
    date = civilDateFromDayNumber(raw + serialDayZero);
  } else if (typeof raw === 'string') {
    const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(raw.trim());
    const written = parts === null ? undefined : { year: Number(parts[1]), month: Number(parts[2]), day: Number(parts[3]) };
    if (written !== undefined && isCivilDate(written)) date = written;
  }
  return date !== undefined && date.year >= earliestYear && date.year <= lastYear ? date : undefined;
}

/** `earliestYear` is for a date of birth, which may lie before any date of flying. */
export function date(help: string, earliestYear = firstYear): Parameter<CivilDate> & { readonly shape: 'cell' } {
  const mustBe = `a date from ${earliestYear} to ${lastYear}, such as 2026-01-22`;
  const read = (raw: CellValue, dates: DateHost): CivilDate => {
    const found = civilDateFromCell(raw, dates, earliestYear);
    if (found === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return found;
  };
  return { shape: 'cell', unit: 'date', mustBe, help, optional: undefined, read };
}

const timeMustBe = 'a time of day in UTC, such as 1430 or 14:30Z';

function minutesOfDay(hours: number, minutes: number): number | undefined {
  return hours < 24 && minutes < 60 ? hours * 60 + minutes : undefined;
}

/** 1430, 14:30 or 14:30Z as text; else undefined. */
export function minutesFromTimeText(text: string): number | undefined {
  const parts = /^(\d{1,2}):?(\d{2})\s*Z?$/i.exec(text.trim());
  return parts === null ? undefined : minutesOfDay(Number(parts[1]), Number(parts[2]));
}

/** A time of day as a cell holds it: minutes after 0000. */
export function minutesFromTimeCell(raw: CellValue, dates: DateHost): number | undefined {
  if (isRealDate(raw)) {
    // A time-only cell is a moment of 30 December 1899, and its wall clock is what the pilot typed.
    const { hours, minutes, seconds } = dates.toCivil(raw);
    return hours * 60 + minutes + seconds / 60;
  }
  if (typeof raw === 'number' && raw > 0 && raw < 1) return raw * minutesPerDay;
  if (typeof raw === 'number' && Number.isInteger(raw) && raw >= 0) return minutesOfDay(Math.floor(raw / 100), raw % 100);
  return typeof raw === 'string' ? minutesFromTimeText(raw) : undefined;
}

/** Minutes after 0000 UTC. */
export function timeOfDayZulu(help: string): Parameter<number> & { readonly shape: 'cell' } {
  const read = (raw: CellValue, dates: DateHost): number => {
    const minutes = minutesFromTimeCell(raw, dates);
    if (minutes === undefined) throw new ArgumentError(timeMustBe, inWords(raw));
    return minutes;
  };
  return { shape: 'cell', unit: 'UTC', mustBe: timeMustBe, help, optional: undefined, read };
}

/** A duration cell arrives as a Date counted from the spreadsheet's day zero; over 24 hours it moves the date on. */
export function minutesFromDurationCell(raw: CellValue, dates: DateHost): number | undefined {
  if (isRealDate(raw)) {
    const civil = dates.toCivil(raw);
    const days = dayNumber(civil) - serialDayZero;
    return days * minutesPerDay + civil.hours * 60 + civil.minutes + civil.seconds / 60;
  }
  const plain = numberFromCell(raw);
  if (plain !== undefined) return plain;
  const words = typeof raw === 'string' ? raw.trim() : '';
  const clock = /^(\d{1,3}):(\d{2})$/.exec(words);
  if (clock !== null && Number(clock[2]) < 60) return Number(clock[1]) * 60 + Number(clock[2]);
  const named = /^(\d+(?:\.\d+)?)\s*(h|hours?|min|minutes?)$/i.exec(words);
  if (named === null) return undefined;
  return Number(named[1]) * (/^h/i.test(named[2] ?? '') ? 60 : 1);
}

export function durationMinutes(options: { readonly help: string; readonly maximum: number }): Parameter<number> & { readonly shape: 'cell' } {
  const mustBe = `0 to ${options.maximum} minutes, as a number, 1:30 (hours and minutes) or "1.5 h"`;
  const read = (raw: CellValue, dates: DateHost): number => {
    const minutes = minutesFromDurationCell(raw, dates);
    if (minutes === undefined || minutes < 0 || minutes > options.maximum) throw new ArgumentError(mustBe, numberInWords(raw));
    return minutes;
  };
  return { shape: 'cell', unit: 'minutes', mustBe, help: options.help, optional: undefined, read };
}
