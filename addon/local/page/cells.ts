// Reads cells of the grid as values: the grid itself hands out the formatted text, and nothing for a spilled cell.
import type { ICellData } from '@univerjs/core';
import { InterceptCellContentPriority, INTERCEPTOR_POINT } from '@univerjs/sheets';
import { numberFromCell } from '../../../functions/registry/readNumber';
import { rangeFromA1, readSheetReference } from '../engine/a1';
import type { Workbook } from './grid';

export type Worksheet = NonNullable<ReturnType<Workbook['getSheetByName']>>;

/** A cell without its number format. */
export function contentAt(sheet: Worksheet, row: number, column: number): ICellData {
  const unformatted = ({ priority }: { readonly priority?: number }): boolean => priority !== InterceptCellContentPriority.NUMFMT;
  return sheet.getSheet().getCellWithFilteredInterceptors(row, column, String(INTERCEPTOR_POINT.CELL_CONTENT), unformatted) ?? {};
}

/** Sheet and range behind a name of the workbook; undefined where they are gone. */
function placeNamed(workbook: Workbook, name: string): { readonly sheet: Worksheet; readonly range: string } | undefined {
  const reference = readSheetReference(workbook.getDefinedName(name)?.getFormulaOrRefString() ?? '');
  const sheet = reference === undefined ? null : workbook.getSheetByName(reference.sheet);
  return sheet === null || reference === undefined ? undefined : { sheet, range: reference.range };
}

export const sheetNamed = (workbook: Workbook, name: string): Worksheet | undefined => placeNamed(workbook, name)?.sheet;

/** The cells behind a name of the workbook as values, empty cells as ""; nothing where the name is gone. */
export function valuesNamed(workbook: Workbook, name: string): unknown[][] {
  const place = placeNamed(workbook, name);
  if (place === undefined) return [];
  const { sheet, range } = place;
  const { startRow, endRow, startColumn, endColumn } = rangeFromA1(range);
  return Array.from({ length: endRow - startRow + 1 }, (_, row) =>
    Array.from({ length: endColumn - startColumn + 1 }, (__, column) => contentAt(sheet, startRow + row, startColumn + column).v ?? ''),
  );
}

/** The numbers of the column behind a name of the workbook, as the sheet functions read them; undefined where a cell holds none. */
export function numbersNamed(workbook: Workbook, name: string): (number | undefined)[] {
  return valuesNamed(workbook, name).map(([value]) => numberFromCell(value));
}
