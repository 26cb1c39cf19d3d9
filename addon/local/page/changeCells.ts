// Changes rectangles of cells where they still hold what was seen there, with rows put in or taken out: one step for each sheet, which the grid's own
// undo takes back too.
import { ICommandService, IUndoRedoService, type ICellData, type Injector } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import type { PanelAnswer, PanelGiven } from '../../panel/host';
import {
  changedMeanwhile,
  contentsOf,
  holdMore,
  rowsFilled,
  seenBefore,
  standsStill,
  type CellContent,
  type CellsChanged,
  type CellsStep,
  type RowsMoved,
} from '../../workbook/cellChanges';
import { keysIn } from '../../workbook/keys';
import type { SheetSnapshot } from '../../workbook/snapshot';
import { valuesStep, type CellSet } from '../engine/valuesStep';
import { entryContent } from '../saved/withEntries';
import type { Workbook } from './grid';
import type { LiveWorkbook } from './liveWorkbook';

const contentOf = (content: CellContent): ICellData =>
  typeof content === 'object' ? { f: content.formula, v: null, si: null, p: null } : entryContent({ content });

function cellsOf({ row, column, after }: CellsChanged): CellSet[] {
  return after.flatMap((line, down) =>
    line.map((content, across) => ({ row: row - 1 + down, column: column - 1 + across, content: contentOf(content) })),
  );
}

const gone = (name: string): Error => new Error(`There is no sheet "${name}" in this workbook any more. Nothing was changed.`);

function sheetIn(sheets: readonly SheetSnapshot[], name: string): SheetSnapshot {
  const sheet = sheets.find((one) => one.name === name);
  if (sheet === undefined) throw gone(name);
  return sheet;
}

function looked(sheets: readonly SheetSnapshot[], change: CellsChanged): void {
  const sheet = sheetIn(sheets, change.sheet);
  const now = change.before.map((line, down) => contentsOf(sheet, change.row + down, change.column, line.length));
  if (!standsStill(change, now)) throw new Error(changedMeanwhile(change.sheet));
}

/** Every list stands where it stood. */
function lookedAtKeys(sheets: readonly SheetSnapshot[], { sheet, keys }: RowsMoved): void {
  if (keysIn(sheetIn(sheets, sheet))?.cell.text !== keys.text) throw new Error(changedMeanwhile(sheet));
}

/** Nothing stands in rows that go but what the changes empty. */
function lookedBlank(sheets: readonly SheetSnapshot[], rows: RowsMoved, changes: readonly CellsChanged[]): void {
  const sheet = sheetIn(sheets, rows.sheet);
  const width = Math.max(...sheet.values.map((line) => line.length));
  const contents = Array.from({ length: rows.count }, (_, index) => contentsOf(sheet, rows.row + index, 1, width));
  if (holdMore(rows, contents, changes)) throw new Error(rowsFilled(rows.sheet));
}

function write(injector: Injector, workbook: Workbook, { changes, rowsIn, rowsOut }: CellsStep): void {
  const named = (name: string) => {
    const sheet = workbook.getSheetByName(name);
    if (sheet === null) throw gone(name);
    return sheet;
  };
  // Formulas follow the rows of the sheet in sight only.
  if (rowsIn !== undefined) workbook.setActiveSheet(named(rowsIn.sheet)).insertRowsBefore(rowsIn.row - 1, rowsIn.count);
  for (const name of new Set(changes.map(({ sheet }) => sheet))) {
    const cells = changes.filter((one) => one.sheet === name).flatMap(cellsOf);
    injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, valuesStep(workbook.getId(), named(name).getSheetId(), cells));
  }
  if (rowsOut !== undefined) workbook.setActiveSheet(named(rowsOut.sheet)).deleteRows(rowsOut.row - 1, rowsOut.count);
}

export async function changeCells(
  injector: Injector,
  { workbook, settled, snapshot }: LiveWorkbook,
  given: PanelGiven<'changeCells'>,
): Promise<PanelAnswer<'changeCells'>> {
  await settled();
  const { sheets } = snapshot('all');
  const { changes, rowsIn, rowsOut } = given;
  for (const rows of [rowsIn, rowsOut]) if (rows !== undefined) lookedAtKeys(sheets, rows);
  for (const change of changes.flatMap((one) => seenBefore(one, rowsIn))) looked(sheets, change);
  if (rowsOut !== undefined) lookedBlank(sheets, rowsOut, changes);
  // Rows and cells are one step of the undo.
  const step = rowsIn === undefined && rowsOut === undefined ? undefined : injector.get(IUndoRedoService).__tempBatchingUndoRedo(workbook.getId());
  try {
    write(injector, workbook, given);
  } finally {
    step?.dispose();
  }
  await settled();
  return { cells: changes.reduce((sum, change) => sum + cellsOf(change).length, 0) };
}
