// Times that a user typed into cells of no date format: the grid gave those cells a format, by which functions know a time from
// a number, and it must go with the entry to its new cell.
import type { ICellData, IStyleData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import type { CarriedCell } from '../../workbook/carriedInputs';
import { a1FromRange } from '../engine/a1';
import { isDatePattern } from '../engine/engineValues';

type Cells = Record<number, Record<number, ICellData>>;

interface OldNumber {
  /** A1 text. */
  readonly place: string;
  /** Only of a date, a time or a duration. */
  readonly format?: string;
}

const placeText = (row: number, column: number): string => a1FromRange({ startRow: row, endRow: row, startColumn: column, endColumn: column });

const styleOf = ({ styles }: IWorkbookData, { s }: ICellData): Nullable<IStyleData> => (typeof s === 'string' ? styles[s] : s);

function dateFormatOf(data: IWorkbookData, cell: ICellData | undefined): string | undefined {
  const format = (cell === undefined ? undefined : styleOf(data, cell))?.n?.pattern;
  return format !== undefined && isDatePattern(format) ? format : undefined;
}

/** Every number of a sheet, by its value. */
function numbersOf(data: IWorkbookData, { cellData }: Partial<IWorksheetData>): Map<number, OldNumber[]> {
  const numbers = new Map<number, OldNumber[]>();
  for (const [row, ofRow] of Object.entries((cellData ?? {}) as Cells)) {
    for (const [column, cell] of Object.entries(ofRow)) {
      if (typeof cell?.v !== 'number') continue;
      const format = dateFormatOf(data, cell);
      numbers.set(cell.v, [...(numbers.get(cell.v) ?? []), { place: placeText(Number(row), Number(column)), ...(format !== undefined && { format }) }]);
    }
  }
  return numbers;
}

/** Where the same number is a time in one cell and none in another, its place tells, or nothing does. */
function formatFor({ row, column, content }: CarriedCell, numbers: ReadonlyMap<number, readonly OldNumber[]>, name: string): string | undefined {
  const same = (typeof content === 'number' ? numbers.get(content) : undefined) ?? [];
  const time = same.find(({ format }) => format !== undefined);
  const plain = same.find(({ format }) => format === undefined);
  if (time === undefined || plain === undefined) return time?.format;
  const here = same.find(({ place }) => place === placeText(row - 1, column - 1));
  if (here !== undefined || content === 0) return here?.format;
  throw new Error(`On "${name}" the same value is a time in ${time.place} and a plain number in ${plain.place}, and it cannot be told which is which. Change one of them, then ask again. Nothing was changed.`);
}

/** `old` is the sheet that held the entries so far, `sheetId` the one that holds them now; `name` is what it is called. */
export function withTimesKept(data: IWorkbookData, sheetId: string, cells: readonly CarriedCell[], old: Partial<IWorksheetData>, name: string): IWorkbookData {
  const sheet = data.sheets[sheetId];
  const numbers = numbersOf(data, old);
  const cellData = { ...(sheet?.cellData as Cells | undefined) };
  for (const carried of cells) {
    const [row, column] = [carried.row - 1, carried.column - 1];
    const cell = cellData[row]?.[column];
    const pattern = cell === undefined || dateFormatOf(data, cell) !== undefined ? undefined : formatFor(carried, numbers, name);
    if (cell !== undefined && pattern !== undefined) cellData[row] = { ...cellData[row], [column]: { ...cell, s: { ...styleOf(data, cell), n: { pattern } } } };
  }
  return { ...data, sheets: { ...data.sheets, [sheetId]: { ...sheet, cellData } } };
}
