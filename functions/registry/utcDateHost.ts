// Dates of a spreadsheet whose zone is UTC: the tests, and the base of hosts whose Dates are wall clocks written as UTC.
import { dayNumber } from '../../core/basics/civilDate';
import { millisecondsPerDay } from '../../core/basics/units';
import type { DateHost } from './dateHost';

export const utcDateHost: DateHost = {
  toCivil: (date) => ({
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    hours: date.getUTCHours(),
    minutes: date.getUTCMinutes(),
    seconds: date.getUTCSeconds(),
  }),
  fromCivil: (date) => new Date(dayNumber(date) * millisecondsPerDay),
  fromInstant: ({ utcMilliseconds }) => new Date(utcMilliseconds),
};
