// The lists of one aircraft in a workbook: where they stand now, by their keys, and which of their rows are whose.
import type { SheetTemplate } from '../../../sheets-templates/template';
import { contentsOf, type CellContent } from '../cellChanges';
import { keysIn } from '../keys';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { sheetInSight } from '../tripEntries';

export interface ListNow {
  readonly sheet: SheetSnapshot;
  /** Rows of entries. */
  readonly first: number;
  readonly last: number;
  readonly head: number;
  /** All columns from the first to the last of the list; each key by its place among them. */
  readonly column: number;
  readonly width: number;
  readonly places: ReadonlyMap<string, number>;
}

/** The Manual tables in sight, else the only one of today's version. */
export const manualTables = (workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): SheetSnapshot =>
  sheetInSight(workbook, templates, 'tables', {
    missing: 'There is no sheet Manual tables in this workbook. Insert the sheets first.',
    several: 'sheets of Manual tables',
  });

export function listNow(sheet: SheetSnapshot, list: string): ListNow {
  const ranges = keysIn(sheet)?.ranges;
  const columns = [...(ranges ?? [])].filter(([key]) => key.startsWith(`${list}.`) && !key.endsWith('.@head'));
  const head = ranges?.get(`${list}.@head`);
  const areas = columns.flatMap(([key, area]) => (area === undefined ? [] : [{ key: key.slice(list.length + 1), area }]));
  if (head === undefined || areas.length === 0 || areas.length < columns.length)
    throw new Error(
      `The list "${list}" of "${sheet.name}" cannot be told for certain: its hidden keys are gone, or a column of it. Nothing was changed.`,
    );
  const column = Math.min(...areas.map(({ area }) => area.column));
  const [{ area }] = areas as [(typeof areas)[number]];
  return {
    sheet,
    head: head.row,
    first: Math.max(area.row, head.row + 1),
    last: area.lastRow,
    column,
    width: Math.max(...areas.map((one) => one.area.column)) - column + 1,
    places: new Map(areas.map((one) => [one.key, one.area.column - column])),
  };
}

export interface ListRow {
  readonly row: number;
  readonly contents: readonly CellContent[];
  /** As shown. */
  readonly values: readonly CellValue[];
}

/** Every row of the list, blank ones too. */
export function rowsOf({ sheet, first, last, column, width }: ListNow): ListRow[] {
  return Array.from({ length: last - first + 1 }, (_, index) => ({
    row: first + index,
    contents: contentsOf(sheet, first + index, column, width),
    values: Array.from({ length: width }, (__, at) => sheet.values[first + index - 1]?.[column - 1 + at] ?? ''),
  }));
}

export const valueAt = ({ values }: ListRow, { places }: ListNow, key: string): CellValue => values[places.get(key) ?? -1] ?? '';
export const isBlankRow = ({ contents }: ListRow): boolean => contents.every((content) => content === '');
/** As the formulas compare: whatever the case. */
export const sameAircraft = (one: CellValue, other: CellValue): boolean => one !== '' && String(one).toLowerCase() === String(other).toLowerCase();

/** The headings as they stand in the sheet, by the keys of their columns, in the order of the sheet; the names of the aircraft are none of them. */
export function headingsOf(list: ListNow): ReadonlyMap<string, string> {
  const heads = rowsOf({ ...list, first: list.head, last: list.head })[0];
  const places = [...list.places].filter(([key]) => key !== 'aircraft').sort(([, one], [, other]) => one - other);
  return new Map(places.map(([key, at]) => [key, String(heads?.values[at] ?? key)]));
}

/** The aircraft of the list, as their cells hold them. */
export function aircraftNames(sheet: SheetSnapshot): CellValue[] {
  const list = listNow(sheet, 'aircraft');
  return rowsOf(list)
    .map((row) => valueAt(row, list, 'aircraft'))
    .filter((name) => name !== '');
}
