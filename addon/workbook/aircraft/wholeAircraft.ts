// An aircraft as a whole: everything of it that its manual and its weighing give, in the lists of Manual tables and of Weight and balance of one
// set. What is loaded today (seats, fuel in the tanks) belongs to the day and is no part of it.
import { isEmptyStation } from '../../../functions/loading/weighedWords';
import type { SheetKey } from '../../../sheets-templates/template';
import type { CellContent, CellsChanged } from '../cellChanges';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { aircraftNames, headingsOf, listNow, rowsOf, sameAircraft, valueAt, type ListNow, type ListRow } from './aircraftLists';
import { listChange, type RowContents } from './listChange';
import { keysIn } from '../keys';
import { companion } from '../tripEntries';

interface AircraftList {
  readonly key: string;
  readonly sheet: Extract<SheetKey, 'tables' | 'balance'>;
  readonly title: string;
  /** Rows below its room are read too, so that a row put in there counts; nothing is written into them. */
  readonly readBelow?: number;
}

export const aircraftLists: readonly AircraftList[] = [
  { key: 'aircraft', sheet: 'tables', title: 'aircraft list' },
  { key: 'takeoff', sheet: 'tables', title: 'take-off table' },
  { key: 'landing', sheet: 'tables', title: 'landing table' },
  { key: 'climb', sheet: 'tables', title: 'climb table' },
  { key: 'tankArms', sheet: 'tables', title: 'arms of the fuel' },
  { key: 'corrections', sheet: 'tables', title: 'corrections' },
  { key: 'cruise', sheet: 'tables', title: 'cruise table' },
  { key: 'stations', sheet: 'balance', title: 'stations', readBelow: 1 },
  { key: 'tanks', sheet: 'balance', title: 'tanks' },
  { key: 'corners', sheet: 'balance', title: 'envelope', readBelow: 1 },
  { key: 'weighings', sheet: 'balance', title: 'weighing record', readBelow: 1 },
];

/** By the keys of lists: rows without the name and without blanks. */
export type AircraftRows = Readonly<Record<string, readonly Readonly<Record<string, CellValue>>[]>>;

export interface WholeAircraft {
  readonly name: CellValue;
  readonly lists: AircraftRows;
}

const isEmpty = (row: Readonly<Record<string, CellValue>>): boolean => isEmptyStation(String(row['station'] ?? ''));
/** The weight of the empty aircraft is no load of the day. */
const ofTheDay = (list: string, key: string, row: Readonly<Record<string, CellValue>>): boolean =>
  (list === 'tanks' && key === 'onBoard') || (list === 'stations' && key === 'weight' && !isEmpty(row));

/** For another aircraft of the kind: without what is weighed of each alone. */
export const withoutWeighings = ({ stations = [], ...lists }: AircraftRows): AircraftRows => ({
  ...lists,
  stations: stations.map((row) => (isEmpty(row) ? { station: row['station'] ?? '' } : row)),
  weighings: [],
});

const listOf = (workbook: WorkbookSnapshot, tables: SheetSnapshot, { key, sheet, readBelow = 0 }: AircraftList): ListNow => {
  const home = sheet === 'tables' ? tables : companion(workbook, tables, sheet);
  if (home === undefined) throw new Error('The Weight and balance sheet that belongs to these Manual tables was not found. Nothing was changed.');
  const list = listNow(home, key);
  return { ...list, last: list.last - readBelow };
};

const ownRows = (list: ListNow, name: CellValue): ListRow[] => rowsOf(list).filter((row) => sameAircraft(valueAt(row, list, 'aircraft'), name));

function rowOf(row: ListRow, list: ListNow, key: string): Readonly<Record<string, CellValue>> {
  const filled = Object.fromEntries(
    [...list.places.keys()]
      .filter((one) => one !== 'aircraft' && valueAt(row, list, one) !== '')
      .map((one) => [one, valueAt(row, list, one)] as const),
  );
  return Object.fromEntries(Object.entries(filled).filter(([one]) => !ofTheDay(key, one, filled)));
}

export function wholeAircraft(workbook: WorkbookSnapshot, tables: SheetSnapshot, name: CellValue): WholeAircraft {
  return {
    name,
    lists: Object.fromEntries(
      aircraftLists.map((one) => {
        const list = listOf(workbook, tables, one);
        return [one.key, ownRows(list, name).map((row) => rowOf(row, list, one.key))];
      }),
    ),
  };
}

/** The columns of each list, by which a file is judged; each with its heading in the sheet. */
export function columnsOf(workbook: WorkbookSnapshot, tables: SheetSnapshot): ReadonlyMap<string, ReadonlyMap<string, string>> {
  return new Map(aircraftLists.map((one) => [one.key, headingsOf(listOf(workbook, tables, one))]));
}

export const isListed = (tables: SheetSnapshot, name: CellValue): boolean => aircraftNames(tables).some((one) => sameAircraft(one, name));

/** Every list of the aircraft into blank rows; refused where the name is taken or a list has too few. */
export function aircraftPutIn(workbook: WorkbookSnapshot, tables: SheetSnapshot, { name, lists }: WholeAircraft): CellsChanged[] {
  if (isListed(tables, name))
    throw new Error(`"${tables.name}" has an aircraft "${String(name)}" already. Give another name, or remove that one first.`);
  return aircraftLists.flatMap((one) => {
    const list = listOf(workbook, tables, one);
    if (ownRows(list, name).length > 0)
      throw new Error(
        `The ${one.title} of "${list.sheet.name}" has rows of "${String(name)}" already, though no aircraft of that name is listed. Nothing was changed.`,
      );
    const rows: readonly RowContents[] = lists[one.key] ?? [];
    return rows.length === 0 ? [] : listChange(list, name, rows, true).changes;
  });
}

function isInUse(workbook: WorkbookSnapshot, tables: SheetSnapshot, name: CellValue): boolean {
  const start = companion(workbook, tables, 'start');
  const cell = start === undefined ? undefined : keysIn(start)?.ranges.get('aircraftInUse');
  return start !== undefined && cell !== undefined && sameAircraft(start.values[cell.row - 1]?.[cell.column - 1] ?? '', name);
}

export interface Removal {
  readonly changes: readonly CellsChanged[];
  /** Every row that would be emptied, by list. */
  readonly rows: readonly { readonly title: string; readonly row: number; readonly sheet: string; readonly contents: readonly CellContent[] }[];
}

export function aircraftRemoved(workbook: WorkbookSnapshot, tables: SheetSnapshot, name: CellValue): Removal {
  if (isInUse(workbook, tables, name)) throw new Error(`${String(name)} is the aircraft in use. Choose another one on Start first, then ask again.`);
  const lists = aircraftLists.map((one) => ({ title: one.title, list: listOf(workbook, tables, one) }));
  return {
    changes: lists.flatMap(({ list }) => listChange(list, name, [], false).changes),
    rows: lists.flatMap(({ title, list }) => ownRows(list, name).map(({ row, contents }) => ({ title, row, sheet: list.sheet.name, contents }))),
  };
}
