// Arithmetic of calendar months on whole day numbers, by date-fns on UTC dates, so that no zone can shift a day.
import { millisecondsPerDay } from './units';
import { UTCDateMini } from '@date-fns/utc/date/mini';
import { addMonths } from 'date-fns/addMonths';
import { lastDayOfMonth } from 'date-fns/lastDayOfMonth';

const utcDate = (day: number): Date => new UTCDateMini(day * millisecondsPerDay);

/** The same day of the month so many months later; the last day of that month where it is shorter. */
export const dayMonthsLater = (day: number, months: number): number => addMonths(utcDate(day), months).getTime() / millisecondsPerDay;

/** The last day of the month in which a day lies. */
export const lastDayOfItsMonth = (day: number): number => lastDayOfMonth(utcDate(day)).getTime() / millisecondsPerDay;
