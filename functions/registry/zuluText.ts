// A time of day in UTC as the trade writes it.

const minutesPerDay = 1440;
/** So that 90 minutes computed as 89.9999999 is not written as a minute less. */
const roundingMinutes = 1e-6;
const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** Minutes after 0000 UTC, of this day or another, as "1430Z". Seconds are dropped, so that a latest time is never made later. */
export function zuluText(minutes: number): string {
  const whole = Math.floor(minutes + roundingMinutes);
  const ofDay = ((whole % minutesPerDay) + minutesPerDay) % minutesPerDay;
  return `${twoDigits(Math.floor(ofDay / 60))}${twoDigits(ofDay % 60)}Z`;
}
