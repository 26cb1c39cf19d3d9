// A workbook with every formula read once, for all the looks that a check takes at it.
import { isOurs, readFormula, type FormulaReading } from '../formulaReading';
import type { CellPlace, FormulaCell, SheetSnapshot, WorkbookSnapshot } from '../snapshot';

export interface ReadCell extends FormulaCell {
  readonly sheet: SheetSnapshot;
  readonly reading: FormulaReading;
}

export interface CheckedBook {
  readonly workbook: WorkbookSnapshot;
  readonly cells: readonly ReadCell[];
  readonly cellAt: (sheet: SheetSnapshot, place: CellPlace) => ReadCell | undefined;
}

export const ourCalls = ({ reading }: ReadCell): FormulaReading['calls'] => reading.calls.filter(({ name }) => isOurs(name));

export function readBook(workbook: WorkbookSnapshot): CheckedBook {
  const cells = workbook.sheets.flatMap((sheet) => sheet.formulas.map((cell): ReadCell => ({ ...cell, sheet, reading: readFormula(cell.text) })));
  const byPlace = new Map(cells.map((cell) => [`${cell.row} ${cell.column} ${cell.sheet.name}`, cell]));
  return { workbook, cells, cellAt: ({ name }, { row, column }) => byPlace.get(`${row} ${column} ${name}`) };
}

/** As people point at a cell of another sheet. */
export const cellOf = (sheet: SheetSnapshot, cell: string, home: SheetSnapshot): string => (sheet === home ? cell : `${cell} of "${sheet.name}"`);
