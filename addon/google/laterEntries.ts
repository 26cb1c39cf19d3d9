// Entries that a template cannot carry: formulas of the user's own, written as they were read once all sheets have their
// names, and times in cells of no date format, which would else be shown as the numbers behind them.
import type { DateHost } from '../../functions/registry/dateHost';
import { formats, type FormatName } from '../../sheets-templates/look';
import { areasOf } from '../workbook/areas';
import type { CarriedCell } from '../workbook/carriedInputs';
import { isDatePattern } from '../workbook/datePattern';
import type { CellPlace } from '../workbook/snapshot';
import { placeText, timeFormatOf, type OldNumber } from '../workbook/typedTimes';
import { isDate, serialOf } from './cellContents';
import type { MarkedSheet } from './documentState';
import type { FilledTemplate } from './fillTemplate';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface LaterEntries {
  readonly formulas: readonly CarriedCell[];
  /** Cells that need another number format than their template's, by that format: times, and formulas where text was to go. */
  readonly numberFormats: ReadonlyMap<string, readonly CellPlace[]>;
}

const dateFormats: ReadonlySet<FormatName | undefined> = new Set<FormatName>(['date', 'dateTime', 'month']);

/** A cell that got its format by being typed into may not say which: what it says then is a format of numbers. */
const timeFormat = (written: string, serial: number): string => (isDatePattern(written) ? written : serial < 1 ? 'hh:mm' : formats.dateTime);

/** Every number of a sheet, by its value. */
function numbersOf(sheet: Sheet, dates: DateHost): Map<number, OldNumber[]> {
  const range = sheet.getDataRange();
  const values: readonly (readonly unknown[])[] = range.getValues();
  const written = range.getNumberFormats();
  const numbers = new Map<number, OldNumber[]>();
  const add = (value: number, number: OldNumber): void => void numbers.set(value, [...(numbers.get(value) ?? []), number]);
  values.forEach((line, row) =>
    line.forEach((value, column) => {
      const place = placeText({ row: row + 1, column: column + 1 });
      if (typeof value === 'number') add(value, { place });
      if (!isDate(value)) return;
      const serial = serialOf(value, dates);
      add(serial, { place, format: timeFormat(written[row]?.[column] ?? '', serial) });
    }),
  );
  return numbers;
}

/** `sheet` is the one that held the entries so far, under its name. */
export function laterEntries(
  { template, entries, formulas }: FilledTemplate,
  { sheet, name }: Pick<MarkedSheet, 'sheet' | 'name'>,
  dates: DateHost,
): LaterEntries {
  const numbers = numbersOf(sheet, dates);
  const ofTemplate = new Map(template.cells.map((cell) => [placeText(cell), cell]));
  const formatNow = (cell: CarriedCell): string | undefined => {
    const { format, style } = ofTemplate.get(placeText(cell)) ?? {};
    // A formula in a cell of the text format would be shown, not computed.
    if (formulas.includes(cell)) return format === 'text' || (format === undefined && style === 'inputText') ? formats.general : undefined;
    return dateFormats.has(format) ? undefined : timeFormatOf(cell, numbers, name);
  };
  const numberFormats = new Map<string, CellPlace[]>();
  for (const cell of entries) {
    const format = formatNow(cell);
    if (format !== undefined) numberFormats.set(format, [...(numberFormats.get(format) ?? []), cell]);
  }
  return { formulas, numberFormats };
}

/** One call for each format, one for each rectangle of formulas. */
export function writeLater(sheet: Sheet, { formulas, numberFormats }: LaterEntries): void {
  for (const [format, places] of numberFormats) sheet.getRangeList(places.map(placeText)).setNumberFormat(format);
  const texts = new Map(formulas.map((cell) => [placeText(cell), String(cell.content)]));
  const rows = Math.max(0, ...formulas.map(({ row }) => row));
  const columns = Math.max(0, ...formulas.map(({ column }) => column));
  const grid = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => texts.get(placeText({ row: row + 1, column: column + 1 })) ?? ''),
  );
  for (const { row, column, lastRow, lastColumn } of areasOf(grid.map((line) => line.map((text) => text !== '')))) {
    const range = sheet.getRange(row, column, lastRow - row + 1, lastColumn - column + 1);
    range.setFormulas(grid.slice(row - 1, lastRow).map((line) => line.slice(column - 1, lastColumn)));
  }
}
