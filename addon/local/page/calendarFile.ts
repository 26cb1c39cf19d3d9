// The calendar file of the workbook: the diary of the Data ledger and the days on which things lapse in the Currency log, as
// their cells stand.
import { aircraftEntries, diaryEntries, pilotEntries, together, type AnswerRow } from '../../calendar/calendarEntries';
import { calendarText, type CalendarEntries } from '../../calendar/calendarText';
import { isoFromSerial } from '../../workbook/serialDates';
import { answersOf, callNamed, NotThereError, rowAt, type AnswerCell } from './callInSheet';
import { valuesNamed } from './cells';
import type { Workbook } from './grid';

export interface CalendarFile {
  /** None where there is nothing to write. */
  readonly text?: string;
  /** For the user, in sentences. */
  readonly said: string;
}

const isoDay = (value: unknown): string => (typeof value === 'number' && value > 0 ? isoFromSerial(Math.floor(value)) : String(value));

/** The same rows with the date of one column as an ISO day. */
const withDays = (rows: readonly AnswerCell[][], dayColumn: number): AnswerRow[] => rows.map((row) => row.map((value, column) => (column === dayColumn ? isoDay(value) : value)));

function diaryOf(workbook: Workbook): CalendarEntries {
  return diaryEntries(withDays(answersOf(callNamed(workbook, 'ledger', 'LEDGER_DIARY'), 'LEDGER_DIARY', 7), 2));
}

function pilotOf(workbook: Workbook): CalendarEntries {
  return pilotEntries(withDays(answersOf(callNamed(workbook, 'currency', 'PILOT_STATUS'), 'PILOT_STATUS', 7), 4));
}

function aircraftOf(workbook: Workbook): CalendarEntries {
  const call = callNamed(workbook, 'currency', 'AIRCRAFT_STATUS');
  const { startRow, endRow, startColumn, endColumn } = call.reads;
  const width = endColumn - startColumn + 1;
  const heads = rowAt(call.sheet, startRow, startColumn, width).map((head) => String(head).trim().toLowerCase());
  const rows = answersOf(call, 'AIRCRAFT_STATUS', 5, endRow - startRow);
  const items = rows.map((_, index) => {
    const item = rowAt(call.sheet, startRow + 1 + index, startColumn, width);
    return { aircraft: String(item[heads.indexOf('aircraft')] ?? ''), item: String(item[heads.indexOf('item')] ?? '') };
  });
  return aircraftEntries(withDays(rows, 1), items);
}

function asOfDay(workbook: Workbook): string {
  const day = isoDay(valuesNamed(workbook, 'as_of')[0]?.[0] ?? '');
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) throw new NotThereError('No calendar file: the day "as_of" of the Start sheet is not there, or is no date.');
  return day;
}

export function calendarFile(workbook: Workbook): CalendarFile {
  const parts: CalendarEntries[] = [];
  const missing = new Set<string>();
  for (const part of [diaryOf, pilotOf, aircraftOf]) {
    try {
      parts.push(part(workbook));
    } catch (thrown) {
      if (!(thrown instanceof NotThereError)) throw thrown;
      missing.add(thrown.message);
    }
  }
  const all = together(...parts);
  const reasons = [...missing].join(' ');
  if (all.entries.length === 0) return { said: `No calendar file: no dates were found. ${reasons}`.trim() };
  const leftOut = all.leftOut.length === 0 ? '' : `Not in it: ${all.leftOut.join('; ')}.`;
  const said = [`Calendar file rampwright.ics: ${all.entries.length} dates, as of ${asOfDay(workbook)}.`, reasons, leftOut];
  return { text: calendarText('Rampwright', all, asOfDay(workbook)), said: said.filter((sentence) => sentence !== '').join(' ') };
}
