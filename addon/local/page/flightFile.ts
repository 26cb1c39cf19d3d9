// Puts the flights of a file into the Currency log: below its last filled row, in one step that can be undone, and never
// twice, since landings counted twice would look like recent experience.
import type { ICellData } from '@univerjs/core';
import { headingsWithoutPlace, importLog, rowsUnder, type DateOrder, type ImportedLog } from '../importLog';
import { sheetNames } from '../../../sheets-templates/places';
import { argumentOf, callIn, NotThereError, sheetOfKind } from '../../calendar/calendarSheets';
import type { Area } from '../../workbook/areas';
import { valuesIn } from '../../workbook/readPlace';
import { serialFromIso } from '../../workbook/serialDates';
import type { CellValue } from '../../workbook/snapshot';
import type { Worksheet } from './cells';
import type { LiveWorkbook } from './liveWorkbook';

export interface ImportSaid {
  /** For the user, in sentences. */
  readonly said: string;
  /** The file does not show whether 03/04 is in March or in April. */
  readonly asksOrder: boolean;
}

const isoDay = /^\d{4}-\d{2}-\d{2}$/;
const counted = (count: number): string => `${count} ${count === 1 ? 'flight' : 'flights'}`;
const wordOf = (value: CellValue): CellValue => (typeof value === 'string' && isoDay.test(value.trim()) ? serialFromIso(value.trim()) : value);

/** What two rows have in common that are one flight; a count of none is as good as a blank. */
const keyOf = (row: readonly CellValue[]): string =>
  JSON.stringify(row.map(wordOf).map((value) => (typeof value === 'number' ? (value === 0 ? '' : value.toFixed(4)) : String(value).trim().toLowerCase())));

/** The log as it stands: the range that the pilot's list is worked out from. */
interface Log {
  readonly sheet: Worksheet;
  readonly name: string;
  /** Rows and columns counted from 1; the first row holds the headings. */
  readonly area: Area;
  readonly headings: readonly string[];
  /** Last row with anything in it, on the whole sheet; a formula that shows a blank fills its row too. */
  readonly lastFilled: number;
  readonly flights: readonly (readonly CellValue[])[];
}

function logIn({ workbook, snapshot }: LiveWorkbook): Log {
  const all = snapshot('all');
  const found = sheetOfKind(all, 'currency');
  if (found === undefined) throw new NotThereError(`The sheet "${sheetNames.currency}" is no longer in this workbook.`);
  const place = argumentOf(all, callIn(found, 'PILOT_STATUS'), 0);
  const sheet = place === undefined ? null : workbook.getSheetByName(place.sheet.name);
  if (place === undefined || sheet === null) throw new NotThereError(`The formula with PILOT_STATUS in the sheet "${found.name}" no longer reads a range.`);
  const { name, values, formulas } = place.sheet;
  const area = { ...place.area, lastRow: Math.min(place.area.lastRow, sheet.getMaxRows()), lastColumn: Math.min(place.area.lastColumn, sheet.getMaxColumns()) };
  const inFormulas = new Set(formulas.map(({ row }) => row));
  let lastFilled = area.lastRow;
  while (lastFilled > area.row && !inFormulas.has(lastFilled) && (values[lastFilled - 1] ?? []).every((value) => value === '')) lastFilled -= 1;
  const [headings = [], ...flights] = valuesIn({ sheet: place.sheet, area: { ...area, lastRow: lastFilled } });
  return { sheet, name, area, headings: headings.map(String), lastFilled, flights };
}

/** The rows that the log does not have yet; a flight twice in the file and once in the log is new once. */
function newRows({ flights }: Log, rows: readonly CellValue[][]): CellValue[][] {
  const there = new Map<string, number>();
  for (const flight of flights) there.set(keyOf(flight), (there.get(keyOf(flight)) ?? 0) + 1);
  return rows.filter((row) => {
    const times = there.get(keyOf(row)) ?? 0;
    there.set(keyOf(row), times - 1);
    return times <= 0;
  });
}

/** Text stays text whatever it begins with; a day is a date; the look is that of the first row of the log where the cell has none. */
function contentOf({ sheet, area }: Log, value: CellValue, row: number, column: number): ICellData {
  const cells = sheet.getSheet();
  const style = cells.getCellRaw(row - 1, column - 1)?.s ?? cells.getCellRaw(area.row, column - 1)?.s;
  const look = style === undefined || style === null ? {} : { s: style };
  const word = wordOf(value);
  if (word === '') return look;
  return { ...look, v: word, t: typeof word === 'number' ? 2 : 1 };
}

function write(log: Log, row: number, rows: readonly CellValue[][]): void {
  const { column } = log.area;
  const contents = rows.map((cells, down) => cells.map((value, across) => contentOf(log, value, row + down, column + across)));
  log.sheet.getRange(row - 1, column - 1, rows.length, contents[0]?.length ?? 1).setValues(contents);
}

function notTaken(log: ImportedLog, headings: readonly string[]): string[] {
  const passedOver = [...log.passedOver, ...headingsWithoutPlace(headings, log)];
  return [
    ...(log.problems.length === 0 ? [] : [`Not taken: ${log.problems.join('; ')}.`]),
    ...(passedOver.length === 0 ? [] : [`Columns not understood: ${passedOver.join(', ')}.`]),
  ];
}

/** Adds what is new, or throws why not. */
function add(log: Log, imported: ImportedLog): string {
  const { name, area, headings, lastFilled } = log;
  const rows = rowsUnder(headings, imported);
  if (headingsWithoutPlace(headings, imported, ['date', 'aircraft']).length > 0) throw new NotThereError('the log of the Currency log no longer has a column "date" and a column "aircraft".');
  const fresh = newRows(log, rows);
  const again = rows.length - fresh.length;
  const already = again === 0 ? '' : ` ${counted(again)} of the file ${again === 1 ? 'stands' : 'stand'} in the log already.`;
  if (fresh.length === 0) return `Nothing was added.${already}`;
  const room = area.lastRow - lastFilled;
  if (fresh.length > room) throw new NotThereError(`the log is read down to row ${area.lastRow} and has room for ${counted(room)} more, and the file has ${fresh.length} new. Insert rows before that row first.`);
  write(log, lastFilled + 1, fresh);
  const rowsTold = fresh.length === 1 ? `row ${lastFilled + 1}` : `rows ${lastFilled + 1} to ${lastFilled + fresh.length}`;
  return `${counted(fresh.length)} added to the sheet "${name}", ${rowsTold}.${already}`;
}

export function importFlights(live: LiveWorkbook, text: string, order?: DateOrder): ImportSaid {
  const log = importLog(text, order);
  if (log.flights.length === 0) {
    const asksOrder = order === undefined && importLog(text, 'day first').flights.length > 0;
    const why = log.problems.length === 0 ? 'the file has no flights' : log.problems.join('; ');
    return { said: `Nothing was added: ${why}.`, asksOrder };
  }
  try {
    const there = logIn(live);
    return { said: [add(there, log), ...notTaken(log, there.headings)].join(' '), asksOrder: false };
  } catch (thrown) {
    if (!(thrown instanceof NotThereError)) throw thrown;
    return { said: `Nothing was added: ${thrown.message}`, asksOrder: false };
  }
}
