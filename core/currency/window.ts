// How far back flights count, to the day: so many days or months, calendar months, or since a day.
import { dayMonthsLater, lastDayOfItsMonth } from '../basics/calendarMonths';
import { civilDateFromDayNumber, dayNumber } from '../basics/civilDate';

/**
 * The day of the flight is one of the days, the stricter reading: of 90 days the first is 89 days before it, of 6 months the day after the
 * same date 6 months before. Of calendar months, the months before that of the flight, and that month so far.
 */
export type Window = { readonly days: number } | { readonly months: number } | { readonly calendarMonths: number } | { readonly sinceDay: number };

const firstOfMonth = (day: number): number => dayNumber({ ...civilDateFromDayNumber(day), day: 1 });

/** The first day whose flights count for a day. */
export function firstCounted(window: Window, day: number): number {
  if ('days' in window) return day - window.days + 1;
  if ('months' in window) return dayMonthsLater(day, -window.months) + 1;
  return 'sinceDay' in window ? window.sinceDay : firstOfMonth(dayMonthsLater(firstOfMonth(day), -window.calendarMonths));
}

/** The last day for which what was done on a day counts. @source eu-1182-71, article 3(2)(c), for a month that is shorter. */
export function countsThrough(window: Window, day: number): number {
  if ('days' in window) return day + window.days - 1;
  if ('sinceDay' in window) return Infinity;
  if ('calendarMonths' in window) return lastDayOfItsMonth(dayMonthsLater(day, window.calendarMonths));
  const later = dayMonthsLater(day, window.months);
  return civilDateFromDayNumber(later).day === civilDateFromDayNumber(day).day ? later - 1 : later;
}
