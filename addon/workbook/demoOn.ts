// The sheets as they are written on a day: every date of the demonstration moved to it, so that the demonstration is fresh whenever it is
// first opened. No clock is read here: the host says what day it is.
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../core/basics/civilDate';
import { airacSeries, effectiveOnOrBefore, isEffectiveDate, knownSeries, type CycleSeries } from '../../core/ledger/cycles';
import { demoDay, demoTrip } from '../../sheets-templates/demo/day';
import type { Moves, SheetTemplate, TemplateCell, TemplateDate } from '../../sheets-templates/template';

function dayOf(iso: string): number {
  const [year = 0, month = 0, day = 0] = iso.split('-').map(Number);
  return dayNumber({ year, month, day });
}

const isoOf = (day: number): string => isoDate(civilDateFromDayNumber(day));

/** A day of the demonstration, and the one that takes its place. */
interface Moved {
  readonly from: number;
  readonly to: number;
}

interface MovedDays {
  readonly day: Moved;
  /** First day of the trip. */
  readonly trip: Moved;
}

/** The trip lies as far ahead, or further by the few days that keep a change of data out of the middle of it. */
function movedDays(today: string): MovedDays {
  const day = { from: dayOf(demoDay), to: dayOf(today) };
  const [from, last] = [dayOf(demoTrip.firstDay), dayOf(demoTrip.lastDay)];
  const changes = (first: number): boolean =>
    Array.from({ length: last - from }, (_, index) => first + 1 + index).some((one) => isEffectiveDate(one, airacSeries));
  let to = day.to + from - day.from;
  while (changes(to)) to += 1;
  return { day, trip: { from, to } };
}

function seriesNamed(name: string): CycleSeries {
  const found = knownSeries.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no series "${name}"`);
  return found;
}

/** By how many days an effective date moves: it stays as many cycles from the one in force. */
const cycleShift = (series: CycleSeries, { from, to }: Moved): number => effectiveOnOrBefore(to, series) - effectiveOnOrBefore(from, series);

function movedDay(day: number, moves: Moves | undefined, days: MovedDays): number {
  if (moves === 'never') return day;
  if (moves === undefined || moves === 'trip') {
    const { from, to } = moves === 'trip' ? days.trip : days.day;
    return day + to - from;
  }
  const moved = day + cycleShift(seriesNamed(moves.series), days[moves.inForceOn]);
  // Nobody has loaded data on a day that is still to come.
  return moves.loaded === undefined ? moved : Math.min(moved, days.day.to);
}

const movedDate = ({ date, moves }: TemplateDate, days: MovedDays): TemplateDate => ({ date: isoOf(movedDay(dayOf(date), moves, days)) });

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** The groups of day and time of a report, of which the days move: when it was made, and from when to when a forecast holds. */
function movedReport(text: string, reportOf: string, days: MovedDays): string {
  const from = dayOf(reportOf);
  const to = movedDay(from, 'trip', days);
  const { day: written } = civilDateFromDayNumber(from);
  /** Days of a report lie near its own; a day of the month after it. */
  const moved = (ofMonth: string): string => twoDigits(civilDateFromDayNumber(to + Number(ofMonth) - written).day);
  return text
    .replace(/\b(\d\d)(\d{4}Z)\b/, (_, day: string, time: string) => `${moved(day)}${time}`)
    .replace(
      /\b(\d\d)(\d\d)\/(\d\d)(\d\d)\b/,
      (_, day: string, hour: string, lastDay: string, lastHour: string) => `${moved(day)}${hour}/${moved(lastDay)}${lastHour}`,
    );
}

function movedCell(cell: TemplateCell, days: MovedDays): TemplateCell {
  const { value, reportOf } = cell;
  if (typeof value === 'object') return { ...cell, value: movedDate(value, days) };
  return typeof value === 'string' && reportOf !== undefined ? { ...cell, value: movedReport(value, reportOf, days) } : cell;
}

/** `today` in ISO form, as the clock of the spreadsheet has it. */
export function demoOn(templates: readonly SheetTemplate[], today: string): SheetTemplate[] {
  const days = movedDays(today);
  return templates.map((template) => ({ ...template, cells: template.cells.map((cell) => movedCell(cell, days)) }));
}
