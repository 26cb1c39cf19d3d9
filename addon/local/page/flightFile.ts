// Puts the flights of a file into the Currency log: below its last filled row, in one step that can be undone, and never
// twice, since landings counted twice would look like recent experience.
import type { ICellData } from '@univerjs/core';
import { headingsWithoutPlace, importLog, rowsUnder, type DateOrder, type ImportedLog } from '../importLog';
import { serialFromIso } from '../../workbook/serialDates';
import { callNamed, NotThereError, rowAt, type AnswerCell, type CallInSheet } from './callInSheet';
import type { Workbook } from './grid';

export interface ImportSaid {
  /** For the user, in sentences. */
  readonly said: string;
  /** The file does not show whether 03/04 is in March or in April. */
  readonly asksOrder: boolean;
}

const isoDay = /^\d{4}-\d{2}-\d{2}$/;
const counted = (count: number): string => `${count} ${count === 1 ? 'flight' : 'flights'}`;
const wordOf = (value: AnswerCell): AnswerCell => (typeof value === 'string' && isoDay.test(value.trim()) ? serialFromIso(value.trim()) : value);

/** What two rows have in common that are one flight; a count of none is as good as a blank. */
const keyOf = (row: readonly AnswerCell[]): string =>
  JSON.stringify(row.map(wordOf).map((value) => (typeof value === 'number' ? (value === 0 ? '' : value.toFixed(4)) : String(value).trim().toLowerCase())));

function lastFilledRow({ sheet, reads }: CallInSheet): number {
  for (let row = reads.endRow; row > reads.startRow; row -= 1) {
    if (rowAt(sheet, row, 0, sheet.getMaxColumns()).some((value) => value !== '') || rowHasFormula(sheet, row)) return row;
  }
  return reads.startRow;
}

/** A formula that shows a blank fills its row too. */
const rowHasFormula = (sheet: CallInSheet['sheet'], row: number): boolean =>
  Array.from({ length: sheet.getMaxColumns() }, (_, column) => sheet.getSheet().getCellRaw(row, column)).some((cell) => Boolean(cell?.f ?? cell?.si));

/** The rows that the log does not have yet; a flight twice in the file and once in the log is new once. */
function newRows({ sheet, reads }: CallInSheet, lastFilled: number, rows: readonly AnswerCell[][]): AnswerCell[][] {
  const width = reads.endColumn - reads.startColumn + 1;
  const there = new Map<string, number>();
  for (let row = reads.startRow + 1; row <= lastFilled; row += 1) {
    const key = keyOf(rowAt(sheet, row, reads.startColumn, width));
    there.set(key, (there.get(key) ?? 0) + 1);
  }
  return rows.filter((row) => {
    const times = there.get(keyOf(row)) ?? 0;
    there.set(keyOf(row), times - 1);
    return times <= 0;
  });
}

/** Text stays text whatever it begins with; a day is a date; the look is that of the first row of the log where the cell has none. */
function contentOf({ sheet, reads }: CallInSheet, value: AnswerCell, row: number, column: number): ICellData {
  const style = sheet.getSheet().getCellRaw(row, column)?.s ?? sheet.getSheet().getCellRaw(reads.startRow + 1, column)?.s;
  const look = style === undefined || style === null ? {} : { s: style };
  const word = wordOf(value);
  if (word === '') return look;
  return { ...look, v: word, t: typeof word === 'number' ? 2 : 1 };
}

function write(call: CallInSheet, row: number, rows: readonly AnswerCell[][]): void {
  const column = call.reads.startColumn;
  const contents = rows.map((cells, down) => cells.map((value, across) => contentOf(call, value, row + down, column + across)));
  call.sheet.getRange(row, column, rows.length, contents[0]?.length ?? 1).setValues(contents);
}

function notTaken(log: ImportedLog, headings: readonly string[]): string[] {
  const passedOver = [...log.passedOver, ...headingsWithoutPlace(headings, log)];
  return [
    ...(log.problems.length === 0 ? [] : [`Not taken: ${log.problems.join('; ')}.`]),
    ...(passedOver.length === 0 ? [] : [`Columns not understood: ${passedOver.join(', ')}.`]),
  ];
}

/** Adds what is new, or throws why not. */
function add(call: CallInSheet, log: ImportedLog, headings: readonly string[]): string {
  const rows = rowsUnder(headings, log);
  if (headingsWithoutPlace(headings, log, ['date', 'aircraft']).length > 0) throw new NotThereError('the log of the Currency log no longer has a column "date" and a column "aircraft".');
  const filled = lastFilledRow(call);
  const fresh = newRows(call, filled, rows);
  const again = rows.length - fresh.length;
  const already = again === 0 ? '' : ` ${counted(again)} of the file ${again === 1 ? 'stands' : 'stand'} in the log already.`;
  if (fresh.length === 0) return `Nothing was added.${already}`;
  const room = call.reads.endRow - filled;
  if (fresh.length > room) throw new NotThereError(`the log is read down to row ${call.reads.endRow + 1} and has room for ${counted(room)} more, and the file has ${fresh.length} new. Insert rows before that row first.`);
  write(call, filled + 1, fresh);
  const rowsTold = fresh.length === 1 ? `row ${filled + 2}` : `rows ${filled + 2} to ${filled + 1 + fresh.length}`;
  return `${counted(fresh.length)} added to the sheet "${call.sheet.getSheetName()}", ${rowsTold}.${already}`;
}

export function importFlights(workbook: Workbook, text: string, order?: DateOrder): ImportSaid {
  const log = importLog(text, order);
  if (log.flights.length === 0) {
    const asksOrder = order === undefined && importLog(text, 'day first').flights.length > 0;
    const why = log.problems.length === 0 ? 'the file has no flights' : log.problems.join('; ');
    return { said: `Nothing was added: ${why}.`, asksOrder };
  }
  try {
    const call = callNamed(workbook, 'currency', 'PILOT_STATUS');
    const { startRow, startColumn, endColumn } = call.reads;
    const headings = rowAt(call.sheet, startRow, startColumn, endColumn - startColumn + 1).map(String);
    return { said: [add(call, log, headings), ...notTaken(log, headings)].join(' '), asksOrder: false };
  } catch (thrown) {
    if (!(thrown instanceof NotThereError)) throw thrown;
    return { said: `Nothing was added: ${thrown.message}`, asksOrder: false };
  }
}
