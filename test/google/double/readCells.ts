// What the double's cells give when they are read: dates as Dates of the spreadsheet's zone, a formula's result where the
// test has put one, and how formulas follow a sheet that gets another name.
import type { Cell } from './cells';
import { wallClockIn } from './zoneClock';

const day = 86_400_000;
/** Serial number of 1 January 1970. */
const serialOfUnixEpoch = 25_569;

/** General is written and kept, but read back otherwise (brucemcpherson/gas-fakes, test/testsheets.js, which runs live too). */
export const shownFormat = (format: string): string => (format === 'General' ? '0.###############' : format);

/** A number under such a format is a date, a time or a duration; [Red] and the like say nothing, [h] and the like do. */
export const isDateFormat = (format: string): boolean =>
  /[ymdhs]/i.test(format.replace(/"[^"]*"/g, '').replace(/\[[^\]]*\]/g, (found) => (/^\[([hms])\1*\]$/i.test(found) ? found : '')));

/** The instant at which the clocks of the zone show this wall clock, written as if it were UTC. */
function instantOf(zone: string, wall: number): number {
  let instant = wall;
  for (let round = 0; round < 3; round += 1) instant += wall - Date.parse(`${wallClockIn(zone, instant).replace(' ', 'T')}Z`);
  return instant;
}

const dateIn = (zone: string, wall: number): Date => new Date(instantOf(zone, Math.round(wall / 1000) * 1000));

/** One value of getValues. A formula cell holds the result that the test gave it (null for a blank one), or shows itself. */
export function readValue({ value, formula, numberFormat }: Cell, shown: string, zone: string): unknown {
  if (value === null) return '';
  if (formula !== '' && value === '') return shown;
  // Typed into a cell of no format of its own it is shown as a date; under a format of numbers, as a number.
  if (value instanceof Date)
    return numberFormat === 'General' || isDateFormat(numberFormat) ? dateIn(zone, value.getTime()) : value.getTime() / day + serialOfUnixEpoch;
  if (typeof value === 'number' && isDateFormat(numberFormat)) return dateIn(zone, (value - serialOfUnixEpoch) * day);
  return value;
}

/** The formula with the sheet under its new name; what stands in quotes is text and stays. */
export function followRename(formula: string, before: string, now: string): string {
  return formula.replace(/"(?:[^"]|"")*"|'((?:[^']|'')*)'!/g, (whole, quoted?: string) => {
    const isIt = quoted?.replace(/''/g, "'").toLowerCase() === before.toLowerCase();
    return isIt ? `'${now.replace(/'/g, "''")}'!` : whole;
  });
}
