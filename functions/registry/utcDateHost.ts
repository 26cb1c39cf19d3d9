// Dates of a host whose Dates are wall clocks in UTC already: the local workbook (serial numbers) and the tests.
import { dayNumber } from '../../core/civilDate';
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
  fromCivil: (date) => new Date(dayNumber(date) * 86_400_000),
};
