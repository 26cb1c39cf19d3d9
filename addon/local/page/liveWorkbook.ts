// Reads the grid as it stands: the workbook as it would be saved, and as the plain data that the panel works from.
import type { Injector, IWorkbookData } from '@univerjs/core';
import * as engine from '@univerjs/engine-formula';
import { ILayoutService } from '@univerjs/preset-sheets-core';
import type { PanelGiven } from '../../panel/host';
import { visibleSheets } from '../../workbook/visibleSheets';
import type { SheetSnapshot, WorkbookSnapshot } from '../../workbook/snapshot';
import { engineParts } from '../engine/engineParts';
import { namesIn, rangeNamesIn, sheetSnapshot, workbookSnapshot } from '../engine/workbookSnapshot';
import { markedSheets } from '../saved/documentState';
import type { Settled } from './calculation';
import type { Workbook } from './grid';

export interface LiveWorkbook {
  readonly workbook: Workbook;
  /** Waits until what is being typed is in its cell and every formula has its answer. */
  readonly settled: Settled;
  readonly snapshot: (sheets: PanelGiven<'readWorkbook'>['sheets']) => WorkbookSnapshot;
  /** Gives the keyboard to the grid. */
  readonly focus: () => void;
  /** The sheet in sight. */
  readonly shown: () => { readonly sheetId: string; readonly snapshot: SheetSnapshot };
}

function inSight(data: IWorkbookData, shownId: string): string[] {
  const marks = new Map(markedSheets(data).map(({ name, mark }) => [name, mark]));
  const wanted = visibleSheets(data.sheets[shownId]?.name ?? '', marks, namesIn(data));
  return data.sheetOrder.filter((id) => wanted.has(data.sheets[id]?.name ?? ''));
}

function selected(workbook: Workbook): WorkbookSnapshot['selected'] {
  const cell = workbook.getActiveCell();
  return { sheet: workbook.getActiveSheet().getSheetName(), row: (cell?.getRow() ?? 0) + 1, column: (cell?.getColumn() ?? 0) + 1 };
}

export function liveWorkbook(workbook: Workbook, injector: Injector, calculated: Settled): LiveWorkbook {
  const parts = () => engineParts(injector, engine, workbook.getId());
  return {
    workbook,
    settled: async () => {
      await workbook.endEditingAsync(true);
      await calculated();
    },
    focus: () => {
      window.focus();
      injector.get(ILayoutService).focus();
    },
    snapshot: (sheets) => {
      const data = workbook.save();
      const ids = sheets === 'all' ? data.sheetOrder : inSight(data, workbook.getActiveSheet().getSheetId());
      return workbookSnapshot(data, ids, parts(), selected(workbook));
    },
    shown: () => {
      const data = workbook.save();
      const sheetId = workbook.getActiveSheet().getSheetId();
      return { sheetId, snapshot: sheetSnapshot(data.sheets[sheetId] ?? {}, rangeNamesIn(data), parts()) };
    },
  };
}
