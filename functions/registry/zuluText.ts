// A time of day in UTC as the trade writes it.
import { civilDateFromDayNumber } from '../../core/basics/civilDate';
import { minutesPerDay } from '../../core/basics/units';

/** So that 90 minutes computed as 89.9999999 is not written as a minute less. */
const roundingMinutes = 1e-6;
const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** Minutes after 0000 UTC, of this day or another, as "1430Z". Seconds are dropped, so that a latest time is never made later. */
export function zuluText(minutes: number): string {
  const whole = Math.floor(minutes + roundingMinutes);
  const ofDay = ((whole % minutesPerDay) + minutesPerDay) % minutesPerDay;
  return `${twoDigits(Math.floor(ofDay / 60))}${twoDigits(ofDay % 60)}Z`;
}

/** A moment, in minutes of UTC since the beginning of 1970, as a report writes it: 281350Z is the 28th of its month at 1350. */
export const dayZuluText = (moment: number): string =>
  `${twoDigits(civilDateFromDayNumber(Math.floor(moment / minutesPerDay)).day)}${zuluText(moment)}`;
