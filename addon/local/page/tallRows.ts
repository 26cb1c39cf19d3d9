// Rows that grow with the reason that wraps in them, and shrink again with it: the grid does so for what is typed, not for what a formula says.
// The height that the template gives stays the least. Nothing of this is a change of the user's.
import { BooleanNumber, WrapStrategy } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-ui/facade';
import { SetWorksheetRowAutoHeightMutation } from '@univerjs/sheets';
import type { Worksheet } from './cells';
import type { Workbook } from './grid';

/** The answers of a calculation are in their cells a moment after its end. */
const afterMilliseconds = 20;

interface Height {
  readonly row: number;
  readonly autoHeight: number;
}

function heightsOf(shown: Worksheet): Height[] {
  const [sheet, skeleton] = [shown.getSheet(), shown.getSkeleton()];
  if (!skeleton) return [];
  const columns = Array.from({ length: sheet.getColumnCount() }, (_, column) => column);
  return Object.entries(sheet.getConfig().rowData).flatMap(([key, data]) => {
    const row = Number(key);
    if (data?.ia !== BooleanNumber.TRUE || data.h === undefined) return [];
    const wrapped = columns.filter((column) => sheet.getComposedCellStyle(row, column).tb === WrapStrategy.WRAP);
    const autoHeight = Math.max(data.h, ...wrapped.map((column) => skeleton.calculateAutoHeightForCell(row, column) ?? 0));
    return autoHeight === data.ah ? [] : [{ row, autoHeight }];
  });
}

export function keepRowsTall(api: FUniver, workbook: Workbook): void {
  const grow = (): void => {
    const shown = workbook.getActiveSheet();
    const rowsAutoHeightInfo = heightsOf(shown);
    if (rowsAutoHeightInfo.length === 0) return;
    const params = { unitId: workbook.getId(), subUnitId: shown.getSheetId(), rowsAutoHeightInfo };
    api.syncExecuteCommand(SetWorksheetRowAutoHeightMutation.id, params, { onlyLocal: true });
  };
  const soon = (): void => void setTimeout(grow, afterMilliseconds);
  api.getFormula().calculationEnd(soon);
  api.addEvent(api.Event.ActiveSheetChanged, soon);
}
