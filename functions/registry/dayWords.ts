// A day as a pilot writes it, and what is said of the last good one.
import { civilDateFromDayNumber } from '../../core/basics/civilDate';
import type { TripDays } from '../../core/basics/flightRows';

const months = 'January February March April May June July August September October November December'.split(' ');

/** "2 December 2026". */
export function dayInWords(dayNumber: number): string {
  const { year, month, day } = civilDateFromDayNumber(dayNumber);
  return `${day} ${months[month - 1] ?? ''} ${year}`;
}

/** Why something that ends before the last day of the trip does not serve it. */
export function lapseInWords(goodThroughDay: number, { firstDay, asOfDay }: TripDays): string {
  const through = `valid through ${dayInWords(goodThroughDay)}`;
  if (goodThroughDay < asOfDay) return `lapsed, ${through}`;
  return `lapses ${goodThroughDay < firstDay ? 'before' : 'during'} the trip, ${through}`;
}
