// The workbook of the page for those who put it together with others: read as it would be saved, and cells of others written into it.
import { ICommandService, type ICellData, type Injector } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-ui/facade';
import { SetRangeValuesMutation, type ISetRangeValuesMutationParams } from '@univerjs/sheets';
import type { CellFromThere } from '../saved/mergeWorkbooks';
import type { Workbook } from './grid';
import type { PageBook } from './together';
import { fromOthers } from './usersChange';

/** Whether something is typed into a cell that is not entered yet. */
function watchTyping(api: FUniver): () => boolean {
  let typing = false;
  api.addEvent(api.Event.SheetEditChanging, () => (typing = true));
  api.addEvent(api.Event.SheetEditEnded, () => (typing = false));
  return () => typing;
}

/** The grid lays a look over the one that is there: so that one goes first. */
const cleared: ICellData = { v: null, t: null, f: null, si: null, p: null, s: null, custom: null as never };

function valuesOf(cells: readonly CellFromThere[], contentOf: (cell: CellFromThere) => ICellData): Record<number, Record<number, ICellData>> {
  const values: Record<number, Record<number, ICellData>> = {};
  for (const cell of cells) (values[cell.row] ??= {})[cell.column] = contentOf(cell);
  return values;
}

export function pageBook(api: FUniver, injector: Injector, workbook: Workbook): PageBook {
  const set = (subUnitId: string, cellValue: Record<number, Record<number, ICellData>>): void => {
    const params: ISetRangeValuesMutationParams = { unitId: workbook.getId(), subUnitId, cellValue };
    injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, params, fromOthers);
  };
  return {
    read: () => workbook.save(),
    isTyping: watchTyping(api),
    write: (cells) => {
      for (const sheetId of new Set(cells.map((one) => one.sheetId))) {
        const ofSheet = cells.filter((one) => one.sheetId === sheetId);
        set(
          sheetId,
          valuesOf(ofSheet, () => ({ ...cleared })),
        );
        set(
          sheetId,
          valuesOf(ofSheet, ({ content: { s, ...content } }) => ({ ...content, ...(s !== null && { s }) })),
        );
      }
    },
  };
}
