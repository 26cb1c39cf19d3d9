// Reader of the aircraft's inspections, tests and papers. A cell that cannot be read spoils only its own row.
import type { AircraftItem } from '../../core/currency/aircraftList';
import type { Named } from '../../core/basics/named';
import { dayNumber } from '../../core/basics/civilDate';
import { inWords, isBlank, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { columnPlaces, type Headings } from '../registry/readHeadings';
import { numberFromCell } from '../registry/readNumber';
import { namedFromCell } from '../registry/readText';

type Column = 'aircraft' | 'item' | 'doneOn' | 'doneAt' | 'wasDueAt' | 'months' | 'days' | 'hours' | 'landings';
/** The headings by which the columns are found. */
export const itemHeadings: Headings<Column> = {
  aircraft: ['aircraft', 'registration'],
  item: ['item', 'inspection'],
  doneOn: ['done on', 'done', 'date'],
  doneAt: ['done at hours', 'done at, h', 'done at'],
  wasDueAt: ['was due at hours', 'was due at, h', 'was due at'],
  months: ['every months', 'months'],
  days: ['every days', 'days'],
  hours: ['every hours', 'hours'],
  landings: ['every landings', 'every cycles', 'landings', 'cycles'],
};
const mustBe = 'a table of items under one header row';

/** A row of the aircraft's list; what is known of one that cannot be read, and why it cannot; or undefined where it is blank. */
export type ItemRow =
  AircraftItem | { readonly unreadable: string; readonly aircraft: Named | undefined; readonly item: Named | undefined } | undefined;

function itemRow(cell: (column: Column) => CellValue, dates: DateHost): ItemRow {
  const bad: string[] = [];
  const read = <Value>(column: Column, found: Value | undefined): Value | undefined => {
    if (!isBlank(cell(column)) && found === undefined) bad.push(`${itemHeadings[column][0] ?? column} cannot be read: ${inWords(cell(column))}`);
    return found;
  };
  const numberIn = (column: Column, fits: (value: number) => boolean): number | undefined => {
    const value = numberFromCell(cell(column));
    return read(column, value !== undefined && fits(value) ? value : undefined);
  };
  const isHours = (value: number): boolean => value >= 0 && value <= 1e6;
  const isInterval = (value: number): boolean => value > 0 && value <= 36_600;
  const isWholeInterval = (value: number): boolean => isInterval(value) && Number.isInteger(value);
  const done = civilDateFromCell(cell('doneOn'), dates);
  const found = {
    day: read('doneOn', done === undefined ? undefined : dayNumber(done)),
    doneAtHours: numberIn('doneAt', isHours),
    wasDueAtHours: numberIn('wasDueAt', isHours),
    everyMonths: numberIn('months', isWholeInterval),
    everyDays: numberIn('days', isWholeInterval),
    ...everyUse(cell('hours'), numberIn, read, isInterval),
  };
  const aircraft = namedFromCell(cell('aircraft'));
  const item = namedFromCell(cell('item'));
  if (aircraft === undefined) bad.push('aircraft missing');
  if (item === undefined) bad.push('item missing');
  return aircraft === undefined || item === undefined || bad.length > 0
    ? { unreadable: bad.join('; '), aircraft, item }
    : { aircraft, item, ...found };
}

/** "50" are hours; "300 landings" and "300 cycles" say so themselves, where a sheet has no column for them. */
function everyUse(
  cell: CellValue,
  numberIn: (column: Column, fits: (value: number) => boolean) => number | undefined,
  read: (column: Column, found: number | undefined) => number | undefined,
  fits: (value: number) => boolean,
): Pick<AircraftItem, 'everyHours' | 'everyLandings'> {
  const everyLandings = numberIn('landings', (value) => fits(value) && Number.isInteger(value));
  const counted = typeof cell === 'string' ? /^\s*(\d+)\s*(?:landings|cycles)\s*$/i.exec(cell) : null;
  if (counted === null) return { everyHours: numberIn('hours', fits), everyLandings };
  return { everyHours: undefined, everyLandings: read('hours', fits(Number(counted[1])) ? Number(counted[1]) : undefined) };
}

/** Every row below the header, blank ones too, so that the answers can stand beside them. */
export function itemRows(help: string): Parameter<readonly ItemRow[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): readonly ItemRow[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const places = columnPlaces(range, { headings: itemHeadings, needed: ['aircraft', 'item'], mustBe });
    const used = [...places.values()];
    return range
      .slice(1)
      .map((row) => (used.every((at) => isBlank(row[at])) ? undefined : itemRow((column) => row[places.get(column) ?? -1], dates)));
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}
