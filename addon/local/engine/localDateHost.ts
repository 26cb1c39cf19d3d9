// Dates of the local workbook. Its cells hold serial numbers, which are wall clocks without a zone; its zone is the machine's.
import { utcDateHost } from '../../../functions/registry/utcDateHost';
import type { DateHost } from '../../../functions/registry/dateHost';

const minute = 60_000;

export const localDateHost: DateHost = {
  ...utcDateHost,
  fromInstant: ({ utcMilliseconds }) => new Date(utcMilliseconds - new Date(utcMilliseconds).getTimezoneOffset() * minute),
};
