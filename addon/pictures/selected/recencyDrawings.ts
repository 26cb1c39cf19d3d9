// The pictures of RECENCY_DAYS, RECENCY_MONTHS and DUE_STATUS on any sheet.
import { dayMonthsLater } from '../../../core/basics/calendarMonths';
import { verdicts, type Verdict } from '../../../core/basics/verdict';
import { dateFromSerial, serialFromDate } from '../../workbook/serialDates';
import type { CellValue } from '../../workbook/snapshot';
import { Missing, orEmpty } from '../missing';
import { recencyPicture, type LookedBack } from '../recencyPicture';
import type { DayEvent } from '../timeLine';
import { from, type Drawable, type Drawing, type Size } from './drawable';
import type { PicturedCall } from './picturedCall';
import { dayOf, isNumber } from './workbookCells';

export const asVerdict = (value: CellValue | undefined): Verdict | undefined => verdicts.find((word) => word === value);

export function asOfDay(call: PicturedCall, index = 0): number {
  const day = dayOf(call.value('as_of', index));
  if (day === undefined) throw new Missing(`no as_of yet for ${call.place}, the day it is judged on`);
  return day;
}

export const titleOf = (item: string): string => `How long it holds: ${item}`;

/** Serial number of day 0 of the calendar arithmetic. */
const dayZero = serialFromDate(new Date(0));
const monthStart = (day: number): number => {
  const date = dateFromSerial(day);
  return serialFromDate(new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth(), 1)));
};
const monthsLater = (day: number, months: number): number => dayMonthsLater(day - dayZero, months) + dayZero;

/** The days that count for a flight on a day; for months those before its own month. */
function daysBack(day: number, days: number): LookedBack {
  return { firstDay: day - days + 1, lastDay: day, words: `${days} days` };
}
function monthsBack(day: number, months: number): LookedBack {
  const start = monthStart(day);
  return { firstDay: monthsLater(start, -months), lastDay: start - 1, words: `${months} calendar months` };
}

/** Rows with something done; a row that cannot be read would show in the sum, which is compared with the answer. */
function eventsOf(call: PicturedCall): DayEvent[] {
  const [dates, counts] = [call.cells('dates') ?? [], call.cells('counts') ?? []];
  return dates.flatMap(([date], index) => {
    const [day, count] = [dayOf(date), counts[counts.length > 1 ? index : 0]?.[0]];
    return day === undefined || !isNumber(count) || count === 0 ? [] : [{ day, count }];
  });
}

/** Sums of hours differ in their last bits. */
const agrees = (one: number, other: number): boolean => Math.abs(one - other) < 1e-5;

function recencySvg(call: PicturedCall, item: string, width: number): string {
  const [count = '', word, through] = [0, 1, 2].map((column) => call.answer(0, column));
  const verdict = asVerdict(word);
  if (verdict === undefined) throw call.unlike(count === '' ? (word ?? '') : count);
  if (verdict === 'UNKNOWN' || !isNumber(count)) throw new Missing(`${call.place} is ${verdict}, as its log is empty`);
  const asOf = asOfDay(call);
  const isDays = call.name === 'RECENCY_DAYS';
  const back = (day: number): LookedBack => (isDays ? daysBack(day, call.number('days', 90)) : monthsBack(day, call.number('months', 6)));
  const lookedBack = back(asOf);
  const goodThroughDay = dayOf(through);
  const events = eventsOf(call);
  const sum = events.filter(({ day }) => day >= lookedBack.firstDay && day <= lookedBack.lastDay).reduce((total, one) => total + one.count, 0);
  if (!agrees(sum, count))
    throw new Missing(`${call.place} counts ${count}, but the rows it reads add up to ${Number(sum.toFixed(2))}; look at their dates`);
  const first = Math.min(lookedBack.firstDay, goodThroughDay === undefined ? Infinity : back(goodThroughDay).firstDay);
  const last = Math.max(asOf, goodThroughDay ?? asOf);
  const needed = call.number('needed', isDays ? 3 : 6);
  const shown = events.filter(({ day }) => day >= first && day <= last);
  const reason = verdict === 'CHECK' ? { reason: 'Enough only with what was done in this month.' } : {};
  return recencyPicture(
    { selected: { item, verdict, goodThroughDay }, asOfDay: asOf, counted: count, needed, lookedBack, events: shown, ...reason },
    width,
  );
}

export function recencyDrawable(call: PicturedCall): Drawable {
  const { row } = call.cell;
  const item = call.rowName(row);
  const draw = (_: number, size: Size): Drawing => ({
    svg: orEmpty({ ...size, title: titleOf(item) }, () => recencySvg(call, item, size.width)),
    what: item,
    row,
  });
  return { ...from(call.cell, 1, 3), name: call.name, draw };
}

/** Both days, of which either may be a formula in the call: then the days left, which the sheet shows, give it. */
function dueDays(call: PicturedCall, index: number, daysLeft: number): { readonly due: number; readonly asOf: number } {
  const isFormula = (parameter: string): boolean => call.argument(parameter).kind === 'formula';
  if (isFormula('as_of')) {
    const due = dayOf(call.value('due_on', index));
    if (due === undefined) throw new Missing(`no due day yet for ${call.place}`);
    return { due, asOf: due - daysLeft };
  }
  const asOf = asOfDay(call, index);
  const due = isFormula('due_on') ? asOf + daysLeft : dayOf(call.value('due_on', index));
  if (due === undefined || due - asOf !== daysLeft) throw new Missing(`the due day of ${call.place} and its days left do not agree`);
  return { due, asOf };
}

function dueSvg(call: PicturedCall, index: number, item: string, width: number): string {
  const [word = '', daysLeft] = [call.answer(index, 0), call.answer(index, 1)];
  const verdict = asVerdict(word);
  if (verdict === undefined) throw call.unlike(word);
  if (verdict === 'UNKNOWN' || !isNumber(daysLeft)) throw new Missing(`${call.place} is ${verdict}, as no due day is written down`);
  const { due, asOf } = dueDays(call, index, daysLeft);
  return recencyPicture(
    { selected: { item, verdict, goodThroughDay: due }, asOfDay: asOf, events: [], checkFromDay: due - call.number('warn_days', 30, index) },
    width,
  );
}

export function dueDrawable(call: PicturedCall): Drawable {
  const count = call.rows('due_on', 'as_of', 'warn_days');
  const draw = (selectedRow: number, size: Size): Drawing => {
    const index = Math.min(count - 1, Math.max(0, selectedRow - call.cell.row));
    const row = call.cell.row + index;
    const item = call.rowName(row);
    return { svg: orEmpty({ ...size, title: titleOf(item) }, () => dueSvg(call, index, item, size.width)), what: item, row };
  };
  return { ...from(call.cell, count, 2), name: 'DUE_STATUS', draw };
}
