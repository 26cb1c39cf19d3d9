// What the cells of a sheet hold, as plain data, in two calls: dates and times become the serial numbers that they are in
// the spreadsheet's own zone.
import { dayNumber } from '../../core/basics/civilDate';
import type { DateHost } from '../../functions/registry/dateHost';
import { serialFromDate } from '../workbook/serialDates';
import type { CellValue, FormulaCell } from '../workbook/snapshot';
import { stillWorking } from '../workbook/waitingFormulas';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const secondsPerDay = 86_400;
/** What Google Sheets shows while a formula waits for its answer. */
const waiting = 'Loading...';

export interface CellContents {
  /** The rectangle from A1 to the last cell that holds anything. */
  readonly values: readonly (readonly CellValue[])[];
  readonly formulas: readonly FormulaCell[];
}

/** Asked of the tag and not of the class: the platform's Dates need not be of the script's own realm. */
export const isDate = (value: unknown): value is Date => Object.prototype.toString.call(value) === '[object Date]';

/** Days since 30 December 1899 on the spreadsheet's clocks, the time of day as a fraction. */
export function serialOf(date: Date, { toCivil }: Pick<DateHost, 'toCivil'>): number {
  const civil = toCivil(date);
  const milliseconds = ((date.getTime() % 1000) + 1000) % 1000;
  return (
    serialFromDate(new Date(dayNumber(civil) * secondsPerDay * 1000)) +
    (civil.hours * 3600 + civil.minutes * 60 + civil.seconds + milliseconds / 1000) / secondsPerDay
  );
}

export function plain(value: unknown, dates: DateHost): CellValue {
  if (isDate(value)) return serialOf(value, dates);
  return typeof value === 'number' || typeof value === 'boolean' ? value : String(value);
}

/** Charts and the like may be sheets of their own, without cells. */
export const hasCells = (sheet: Sheet): boolean => sheet.getType() === SpreadsheetApp.SheetType.GRID;

/** `range` begins in A1. */
export function formulasIn(range: GoogleAppsScript.Spreadsheet.Range): FormulaCell[] {
  const texts: readonly (readonly string[])[] = range.getFormulas();
  return texts.flatMap((line, row) => line.flatMap((text, column) => (text === '' ? [] : [{ row: row + 1, column: column + 1, text }])));
}

/** Throws a sentence while any cell waits for its answer: what depends on it would look worked out, and be wrong. */
export function refuseWaiting(values: readonly (readonly unknown[])[]): void {
  if (values.some((line) => line.includes(waiting))) throw new Error(stillWorking);
}

/** Throws a sentence while any cell of the sheet waits. */
export function cellContents(sheet: Sheet, dates: DateHost): CellContents {
  const range = sheet.getDataRange();
  const values = range.getValues().map((line) => line.map((value: unknown) => plain(value, dates)));
  refuseWaiting(values);
  return { values, formulas: formulasIn(range) };
}
