// The entries of a trip and of the sheets that go with it, found by their keys, for what the panel writes there.
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import type { Area } from './areas';
import { keysIn } from './keys';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';

export interface EntryWritten {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** "" empties the cell. */
  readonly content: CellValue;
  /** The content is a formula, written with commas; any other text stays a text. */
  readonly formula?: true;
  /** For a cell that may have no format yet, such as a day below the last tinted row of a list. */
  readonly numberFormat?: string;
}

/** How a kind of sheet is told to the user where it is not there, or there several times. */
interface KindInWords {
  readonly missing: string;
  readonly several: string;
}

/** The sheet of a kind that is in sight, else the only one, of today's version. */
export function sheetInSight(
  { sheets, selected }: WorkbookSnapshot,
  templates: readonly SheetTemplate[],
  key: SheetKey,
  { missing, several }: KindInWords,
): SheetSnapshot {
  const found = sheets.filter(({ mark }) => mark?.key === key);
  const sheet = found.find(({ name }) => name === selected.sheet) ?? found[0];
  if (sheet === undefined) throw new Error(missing);
  if (found.length > 1 && sheet.name !== selected.sheet)
    throw new Error(`There are several ${several} in this workbook. Show the one that you mean, then ask again.`);
  if (sheet.mark?.version !== templates.find((one) => one.key === key)?.version)
    throw new Error(`"${sheet.name}" is of another version of Rampwright. Bring the sheets up to date first.`);
  return sheet;
}

const trips: KindInWords = { missing: 'There is no Trip sheet in this workbook. Insert the sheets first.', several: 'Trip sheets' };
export const tripOf = (workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): SheetSnapshot =>
  sheetInSight(workbook, templates, 'trip', trips);

/** A sheet of the same set. */
export const companion = ({ sheets }: WorkbookSnapshot, of: SheetSnapshot, key: SheetKey): SheetSnapshot | undefined =>
  sheets.find(({ mark }) => mark?.key === key && mark.set === of.mark?.set);

/** Cells of the entries under these keys that are there. */
export function cellsOf(sheet: SheetSnapshot, keys: readonly string[]): Area[] {
  const ranges = keysIn(sheet)?.ranges;
  if (ranges === undefined)
    throw new Error(`The hidden keys of "${sheet.name}" are gone, so its entries cannot be told for certain. Nothing was changed.`);
  return keys.flatMap((key) => ranges.get(key) ?? []);
}

export const eachRow = ({ row, lastRow, column }: Area): { readonly row: number; readonly column: number }[] =>
  Array.from({ length: lastRow - row + 1 }, (_, index) => ({ row: row + index, column }));

export const valueAt = ({ values }: SheetSnapshot, { row, column }: Area): CellValue => values[row - 1]?.[column - 1] ?? '';

export function aircraftInUse(workbook: WorkbookSnapshot, trip: SheetSnapshot): CellValue {
  const starts = workbook.sheets.filter(({ mark }) => mark?.key === 'start');
  // A copied trip has no Start of its own: it reads that of the first.
  const start = starts.find(({ mark }) => mark?.set === trip.mark?.set) ?? (starts.length === 1 ? starts[0] : undefined);
  const [cell] = start === undefined ? [] : cellsOf(start, ['aircraftInUse']);
  if (start === undefined || cell === undefined) throw new Error('The aircraft in use was not found on Start. Nothing was changed.');
  return valueAt(start, cell);
}
