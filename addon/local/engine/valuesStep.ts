// What the grid's command to set values takes, for single cells of one sheet: one step, which an undo takes back.
import type { ICellData } from '@univerjs/core';
import type { ISetRangeValuesCommandParams } from '@univerjs/sheets';

export interface CellSet {
  /** Both counted from 0. */
  readonly row: number;
  readonly column: number;
  readonly content: ICellData;
}

export function valuesStep(unitId: string, subUnitId: string, cells: readonly CellSet[]): ISetRangeValuesCommandParams {
  const value: Record<number, Record<number, ICellData>> = {};
  for (const { row, column, content } of cells) (value[row] ??= {})[column] = content;
  // Without a range the command does nothing while no cell is selected; what is set goes by the places in `value` alone.
  const [{ row, column } = { row: 0, column: 0 }] = cells;
  return { unitId, subUnitId, range: { startRow: row, endRow: row, startColumn: column, endColumn: column }, value };
}
