// Keeps the formats that the grid gave to cells when times were typed into them (see typedTimes.ts).
import type { ICellData, IStyleData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import type { CarriedCell } from '../../workbook/carriedInputs';
import { isDatePattern } from '../../workbook/datePattern';
import { placeText, timeFormatOf, type OldNumber } from '../../workbook/typedTimes';

type Cells = Record<number, Record<number, ICellData>>;

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
      numbers.set(cell.v, [
        ...(numbers.get(cell.v) ?? []),
        { place: placeText({ row: Number(row) + 1, column: Number(column) + 1 }), ...(format !== undefined && { format }) },
      ]);
    }
  }
  return numbers;
}

/** `old` is the sheet that held the entries so far, `sheetId` the one that holds them now; `name` is what it is called. */
export function withTimesKept(
  data: IWorkbookData,
  sheetId: string,
  cells: readonly CarriedCell[],
  old: Partial<IWorksheetData>,
  name: string,
): IWorkbookData {
  const sheet = data.sheets[sheetId];
  const numbers = numbersOf(data, old);
  const cellData = { ...(sheet?.cellData as Cells | undefined) };
  for (const carried of cells) {
    const [row, column] = [carried.row - 1, carried.column - 1];
    const cell = cellData[row]?.[column];
    const pattern = cell === undefined || dateFormatOf(data, cell) !== undefined ? undefined : timeFormatOf(carried, numbers, name);
    if (cell !== undefined && pattern !== undefined)
      cellData[row] = { ...cellData[row], [column]: { ...cell, s: { ...styleOf(data, cell), n: { pattern } } } };
  }
  return { ...data, sheets: { ...data.sheets, [sheetId]: { ...sheet, cellData } } };
}
