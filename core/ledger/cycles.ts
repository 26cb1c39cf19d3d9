// The calendar of data cycles: effective dates of a series, and the AIRAC identifiers. All in whole day numbers.
// A series is one effective date and a number of days; it runs on in both directions without end.
import { civilDateFromDayNumber, dayNumber } from '../basics/civilDate';
import { CoreError } from '../basics/errors';

export interface CycleSeries {
  /** As people write it, such as 28-day. */
  readonly name: string;
  readonly days: number;
  /** Day number of any one effective date. */
  readonly phaseDay: number;
  /** Its dates are AIRAC dates, or lie between them, in the calendar that AIRAC identifiers name. */
  readonly identified: boolean;
}

/** 2 January 2020, the first AIRAC date of 2020 (cycle 2001). @source ais-airac-2020, first row. */
const airacDay = dayNumber({ year: 2020, month: 1, day: 2 });
/** @source icao-annex-15, section 6.2: a common effective date every 28 days. */
const airacDays = 28;
/** @source faa-cut-off-dates: charts every 56 days, 10 August 2023 among them (every second AIRAC date). */
const chartDay = dayNumber({ year: 2023, month: 8, day: 10 });

export const airacSeries: CycleSeries = { name: '28-day', days: airacDays, phaseDay: airacDay, identified: true };

/** The 14-day series is common practice, no source: the AIRAC dates and the days halfway between them. */
export const knownSeries: readonly CycleSeries[] = [
  airacSeries,
  { name: '56-day', days: 2 * airacDays, phaseDay: chartDay, identified: true },
  { name: '14-day', days: airacDays / 2, phaseDay: airacDay, identified: true },
];

/** The latest effective date on or before a day. */
export function effectiveOnOrBefore(day: number, { days, phaseDay }: CycleSeries): number {
  return phaseDay + Math.floor((day - phaseDay) / days) * days;
}

/** The first effective date strictly after a day, or the count-th of them. */
export const effectiveAfter = (day: number, series: CycleSeries, count = 1): number => effectiveOnOrBefore(day, series) + count * series.days;

/** The first effective date on or after a day. */
export const effectiveOnOrAfter = (day: number, series: CycleSeries): number => effectiveAfter(day - 1, series);

export const isEffectiveDate = (day: number, series: CycleSeries): boolean => effectiveOnOrBefore(day, series) === day;

/**
 * Identifiers have two digits for the year. They are read as 1964, when the system began, to 2063.
 * Common practice, no source: no publication says to which century the two digits belong.
 */
export const firstIdentifiedYear = 1964;
const lastIdentifiedYear = firstIdentifiedYear + 99;

const firstOfYear = (year: number): number => effectiveOnOrAfter(dayNumber({ year, month: 1, day: 1 }), airacSeries);
const twoDigits = (value: number): string => String(value % 100).padStart(2, '0');

/** Whole cycles that begin in a year: 13, and 14 where the first begins on 1 January (or 2 January of a leap year). */
export const cyclesInYear = (year: number): number => (firstOfYear(year + 1) - firstOfYear(year)) / airacDays;

/**
 * YYNN of the AIRAC cycle in force on a day: the year in which it became effective, and its place in that year.
 * Undefined where two digits would name another century. @source icao-8126, AIRAC cycle identification.
 */
export function airacIdentifier(day: number): string | undefined {
  const effective = effectiveOnOrBefore(day, airacSeries);
  const { year } = civilDateFromDayNumber(effective);
  if (year < firstIdentifiedYear || year > lastIdentifiedYear) return undefined;
  return `${twoDigits(year)}${twoDigits((effective - firstOfYear(year)) / airacDays + 1)}`;
}

/** The identifier of an effective date of a series: blank where the date is no AIRAC date, or the series is its owner's own. */
export function identifierInSeries(day: number, series: CycleSeries): string {
  return series.identified && isEffectiveDate(day, airacSeries) ? (airacIdentifier(day) ?? '') : '';
}

/** The effective date that a four-digit identifier names. */
export function effectiveOfIdentifier(identifier: string): number {
  const century = firstIdentifiedYear - (firstIdentifiedYear % 100);
  const twoDigitYear = Number(identifier.slice(0, 2));
  const year = century + twoDigitYear + (century + twoDigitYear < firstIdentifiedYear ? 100 : 0);
  const cycle = Number(identifier.slice(2));
  const cycles = cyclesInYear(year);
  if (cycle < 1 || cycle > cycles) throw new CoreError('cycle-unknown', { identifier, cyclesInYear: cycles });
  return firstOfYear(year) + (cycle - 1) * airacDays;
}
