// The calendar file of a workbook: the diary of a Data ledger and the days on which things lapse in a Currency log, as their
// cells stand.
import { sheetNames } from '../../sheets-templates/places';
import type { SheetKey } from '../../sheets-templates/template';
import { answersOf, argumentOf, callIn, columnsOfList, NotThereError, sheetOfKind, type CallInSheet } from '../workbook/ownCalls';
import { valuesIn, type Place } from '../workbook/readPlace';
import { isoFromSerial } from '../workbook/serialDates';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../workbook/snapshot';
import { aircraftEntries, diaryEntries, licenceEntries, pilotEntries, together, type AnswerRow } from './calendarEntries';
import { calendarText, type CalendarEntries } from './calendarText';

export interface CalendarFile {
  /** None where there is nothing to write. */
  readonly text?: string;
  /** For the user, in sentences. */
  readonly said: string;
}

/** What one call gave, and where it was read. */
interface Part {
  readonly sheet: SheetSnapshot;
  readonly asOf: string;
  readonly found: CalendarEntries;
}

const isoDay = (value: CellValue): string => (typeof value === 'number' && value > 0 ? isoFromSerial(Math.floor(value)) : String(value));

/** The same rows with the date of one column as an ISO day. */
const withDays = (rows: readonly (readonly CellValue[])[], dayColumn: number): AnswerRow[] =>
  rows.map((row) => row.map((value, column) => (column === dayColumn ? isoDay(value) : value)));

/** The day that the call was given. */
function asOfDay(call: CallInSheet, place: Place | undefined): string {
  const day = isoDay((place === undefined ? [] : valuesIn(place))[0]?.[0] ?? '');
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day))
    throw new NotThereError(`The day "as_of" that ${call.name} in the sheet "${call.sheet.name}" is given is not there, or is no date.`);
  return day;
}

function diaryOf(workbook: WorkbookSnapshot, sheet: SheetSnapshot): Part {
  const call = callIn(sheet, 'LEDGER_DIARY');
  const licences = columnsOfList(sheet, 'licences', ['aircraft', 'database', 'endsOn', 'cost', 'currency']);
  const aircraft = argumentOf(workbook, call, 'aircraft');
  const names = aircraft === undefined ? [] : valuesIn(aircraft).map(([name]) => String(name ?? ''));
  const found = together(diaryEntries(withDays(answersOf(call, 7), 2), names), licenceEntries(withDays(licences, 2)));
  return { sheet, asOf: asOfDay(call, argumentOf(workbook, call, 'from_date')), found };
}

function pilotOf(workbook: WorkbookSnapshot, sheet: SheetSnapshot): Part {
  const call = callIn(sheet, 'PILOT_STATUS');
  return { sheet, asOf: asOfDay(call, argumentOf(workbook, call, 'as_of')), found: pilotEntries(withDays(answersOf(call, 7), 4)) };
}

function aircraftOf(workbook: WorkbookSnapshot, sheet: SheetSnapshot): Part {
  const call = callIn(sheet, 'AIRCRAFT_STATUS');
  const table = argumentOf(workbook, call, 'items');
  if (table === undefined || table.sheet !== sheet)
    throw new NotThereError(`The formula with AIRCRAFT_STATUS in the sheet "${sheet.name}" no longer reads the list beside it.`);
  const rows = { row: table.area.row + 1, lastRow: table.area.lastRow };
  const items = columnsOfList(sheet, 'items', ['aircraft', 'item'], rows).map(([aircraft = '', item = '']) => ({
    aircraft: String(aircraft),
    item: String(item),
  }));
  const answers = withDays(answersOf(call, 5, items.length), 1);
  return { sheet, asOf: asOfDay(call, argumentOf(workbook, call, 'as_of')), found: aircraftEntries(answers, items) };
}

const readings: readonly (readonly [SheetKey, (workbook: WorkbookSnapshot, sheet: SheetSnapshot) => Part])[] = [
  ['ledger', diaryOf],
  ['currency', pilotOf],
  ['currency', aircraftOf],
];

function partsOf(workbook: WorkbookSnapshot): { readonly parts: readonly Part[]; readonly missing: readonly string[] } {
  const parts: Part[] = [];
  const missing = new Set<string>();
  for (const [key, read] of readings) {
    const sheet = sheetOfKind(workbook, key);
    try {
      if (sheet === undefined) throw new NotThereError(`The sheet "${sheetNames[key]}" is no longer in this workbook.`);
      parts.push(read(workbook, sheet));
    } catch (thrown) {
      if (!(thrown instanceof NotThereError)) throw thrown;
      missing.add(thrown.message);
    }
  }
  return { parts, missing: [...missing] };
}

/** Of several sheets of a kind one was read: which one is said. */
function whichRead({ sheets }: WorkbookSnapshot, parts: readonly Part[]): string {
  const read = [...new Set(parts.map(({ sheet }) => sheet))];
  const left = sheets.filter((sheet) => !read.includes(sheet) && read.some(({ mark }) => mark?.key === sheet.mark?.key));
  const named = (some: readonly SheetSnapshot[]): string => some.map(({ name }) => `"${name}"`).join(' and ');
  return left.length === 0 ? '' : `Read from ${named(read)}, not from ${named(left)}: select a cell there to read those.`;
}

/** No sentence of its own where every part was judged on one day. */
const otherDays = (parts: readonly Part[], asOf: string): string =>
  [...new Set(parts.filter((part) => part.asOf !== asOf).map((part) => `"${part.sheet.name}" is judged on ${part.asOf}.`))].join(' ');

/** `madeAt` is the moment at which the file is made. */
export function calendarFile(workbook: WorkbookSnapshot, madeAt: Date): CalendarFile {
  const { parts, missing } = partsOf(workbook);
  const all = together(...parts.map(({ found }) => found));
  if (all.entries.length === 0) return { said: ['No calendar file: no dates were found.', ...missing].join(' ') };
  const asOf =
    parts
      .map((part) => part.asOf)
      .sort()
      .pop() ?? '';
  const leftOut = all.leftOut.length === 0 ? '' : `Not in it: ${all.leftOut.join('; ')}.`;
  const said = [
    `Calendar file rampwright.ics: ${all.entries.length} dates, as of ${asOf}.`,
    otherDays(parts, asOf),
    whichRead(workbook, parts),
    ...missing,
    leftOut,
  ];
  return { text: calendarText('Rampwright', all, madeAt), said: said.filter((sentence) => sentence !== '').join(' ') };
}
