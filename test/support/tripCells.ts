// Cells of the workbook by their keys, so that no test types an address: single entries, rows of the lists, results of the trip by their rows.
import { descentHoldCard } from '../../sheets-templates/card/sheet';
import { weightAndBalanceSheet } from '../../sheets-templates/balance/sheet';
import { address } from '../../sheets-templates/build';
import { currencyLogSheet } from '../../sheets-templates/currency/sheet';
import { loadListSheet } from '../../sheets-templates/due/sheet';
import { duesSheet } from '../../sheets-templates/dues/sheet';
import { statementSheet } from '../../sheets-templates/dues/statement';
import { fieldsSheet } from '../../sheets-templates/fields/sheet';
import { daySheet } from '../../sheets-templates/day/sheet';
import { dataLedgerSheet } from '../../sheets-templates/ledger/sheet';
import { manualTablesSheet } from '../../sheets-templates/manual/sheet';
import { routeSheet } from '../../sheets-templates/route/sheet';
import { startSheet } from '../../sheets-templates/start/sheet';
import type { DeclaredSheet, SheetKey, TemplateValue } from '../../sheets-templates/template';
import { placeColumns, placeNames, tripRows } from '../../sheets-templates/trip/rows';
import { tripSheet } from '../../sheets-templates/trip/sheet';
import { workingRows } from '../../sheets-templates/working/rows';
import { workingSheet } from '../../sheets-templates/working/sheet';

const declared: Readonly<Record<SheetKey, DeclaredSheet>> = {
  start: startSheet,
  trip: tripSheet,
  working: workingSheet,
  route: routeSheet,
  card: descentHoldCard,
  balance: weightAndBalanceSheet,
  day: daySheet,
  ledger: dataLedgerSheet,
  due: loadListSheet,
  dues: duesSheet,
  statement: statementSheet,
  currency: currencyLogSheet,
  fields: fieldsSheet,
  tables: manualTablesSheet,
};
export const sheetName = (key: SheetKey): string => declared[key].name;

/** Something typed into one cell. */
export interface Typed {
  readonly sheet: SheetKey;
  readonly cell: string;
  readonly value: TemplateValue;
}

/** The cell of a single entry, by its key of keys.generated.txt without the sheet. */
export function entryCell(sheet: SheetKey, key: string): string {
  const cell = declared[sheet].keys.entries[key];
  if (cell === undefined) throw new Error(`no entry ${sheet}.${key}`);
  return cell;
}

/** What the sheet holds there as it comes; "" where it holds nothing. */
export function standing(sheet: SheetKey, cell: string): TemplateValue {
  const found = declared[sheet].cells.find(({ row, column }) => address(row, column) === cell);
  return found?.formula ?? found?.value ?? '';
}

type Columns = Readonly<Record<string, TemplateValue>>;
const textOf = (value: TemplateValue): string => (typeof value === 'object' ? value.date : String(value));

const listOf = (sheet: SheetKey, list: string) => {
  const found = declared[sheet].keys.lists[list];
  if (found === undefined) throw new Error(`no list ${sheet}.${list}`);
  return found;
};
export function listCell(sheet: SheetKey, list: string, column: string, row: number): string {
  const at = listOf(sheet, list).columns[column];
  if (at === undefined) throw new Error(`no column ${sheet}.${list}.${column}`);
  return address(row, at);
}

/** The row of a list that holds these values as it comes; the first of them. `{}` finds the first row in which nothing stands. */
export function listRow(sheet: SheetKey, list: string, holds: Columns): number {
  const { first, last, columns } = listOf(sheet, list);
  const at = (row: number, column: string): string => textOf(standing(sheet, listCell(sheet, list, column, row)));
  const empty = Object.keys(holds).length === 0;
  const fits = (row: number): boolean =>
    empty
      ? Object.keys(columns).every((column) => at(row, column) === '')
      : Object.entries(holds).every(([column, value]) => at(row, column) === textOf(value));
  const found = Array.from({ length: last - first + 1 }, (_, index) => first + index).find(fits);
  if (found === undefined) throw new Error(`no row of ${sheet}.${list} with ${JSON.stringify(holds)}`);
  return found;
}

/** Types single entries of a sheet. */
export const typed = (sheet: SheetKey, entries: Columns): Typed[] =>
  Object.entries(entries).map(([key, value]) => ({ sheet, cell: entryCell(sheet, key), value }));

/** Types into a row of a list. */
export function typedRow(sheet: SheetKey, list: string, holds: Columns, entries: Columns): Typed[] {
  const row = listRow(sheet, list, holds);
  return Object.entries(entries).map(([column, value]) => ({ sheet, cell: listCell(sheet, list, column, row), value }));
}

type Place = 'departure' | 'destination' | 'alternate';
const letterOf = (place: Place): string => placeColumns.find((column) => placeNames[column] === place) ?? '';

/** A cell of the Trip sheet, by its row and, where the row has several, its place. */
export const tripCell = (row: keyof typeof tripRows, place: Place = 'departure'): string => `${letterOf(place)}${rowNumber(tripRows[row])}`;
/** A cell of Trip working that has one value for each place. */
export const workingCell = (row: keyof typeof workingRows, place: Place = 'departure'): string => `${letterOf(place)}${rowNumber(workingRows[row])}`;
const rowNumber = (row: number | { readonly first: number }): number => (typeof row === 'number' ? row : row.first);

const order: readonly Place[] = ['departure', 'destination', 'alternate'];
export const trip = (entries: Columns): Typed[] => typed('trip', entries);
export const start = (entries: Columns): Typed[] => typed('start', entries);
/** Rows of the lists as they come, by what names them. */
const ofQuillon = (entries: Columns): Columns => ({ aircraft: 'Quillon Four', ...entries });
export const seat = (station: string, entries: Columns): Typed[] => typedRow('balance', 'stations', ofQuillon({ station }), entries);
export const tank = (name: string, entries: Columns): Typed[] => typedRow('balance', 'tanks', ofQuillon({ tank: name }), entries);
export const corner = (arm: number, weight: number, entries: Columns): Typed[] =>
  typedRow('balance', 'corners', ofQuillon({ category: 'normal', arm, weight }), entries);
export const plane = (entries: Columns): Typed[] => typedRow('tables', 'aircraft', ofQuillon({}), entries);
export const tableRow = (
  table: 'takeoff' | 'landing' | 'climb',
  [weight = 0, pressureAltitude = 0, temperature = 0]: readonly number[],
  entries: Columns,
): Typed[] => typedRow('tables', table, ofQuillon({ weight, pressureAltitude, temperature }), entries);
export const correction = (of: 'take-off' | 'landing', name: string, entries: Columns): Typed[] =>
  typedRow('tables', 'corrections', ofQuillon({ for: of, correction: name }), entries);
export const field = (name: string, entries: Columns): Typed[] => typedRow('fields', 'fields', { field: name }, entries);
export const runway = (ofField: string, name: string, entries: Columns): Typed[] =>
  typedRow('fields', 'runways', { field: ofField, runway: name }, entries);
export const paper = (name: string, entries: Columns): Typed[] => typedRow('currency', 'papers', { paper: name }, entries);
export const inspection = (name: string, entries: Columns): Typed[] => typedRow('currency', 'items', ofQuillon({ item: name }), entries);
export const flight = (date: string, entries: Columns): Typed[] => typedRow('currency', 'flights', { date }, entries);
/** A card: its series stands in its own row, everything else in the line of its last load. */
export const dataCard = (box: string, database: string, entries: Columns): Typed[] =>
  Object.entries(entries).flatMap(([column, value]) =>
    column === 'series'
      ? typedRow('ledger', 'cards', ofQuillon({ card: box, database }), { series: value })
      : typedRow('ledger', 'loads', ofQuillon({ card: box, database, effective: '2026-10-29' }), { [column]: value }),
  );
export const onCard = (entries: Columns): Typed[] => typed('card', entries);
export const crossing = (fix: string, entries: Columns): Typed[] => typedRow('card', 'crossings', { fix }, entries);

const report = (list: 'metars' | 'tafs', place: Place, text: string): Typed[] => [
  { sheet: 'trip', cell: listCell('trip', list, 'report', listOf('trip', list).first + order.indexOf(place)), value: text },
];
export const metar = (place: Place, text: string): Typed[] => report('metars', place, text);
export const taf = (place: Place, text: string): Typed[] => report('tafs', place, text);
