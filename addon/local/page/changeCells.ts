// Changes rectangles of cells where they still hold what was seen there: one step for each sheet, which the grid's own undo takes back too.
import { ICommandService, type ICellData, type Injector } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import type { PanelAnswer, PanelGiven } from '../../panel/host';
import { changedMeanwhile, contentsOf, standsStill, type CellContent, type CellsChanged } from '../../workbook/cellChanges';
import type { SheetSnapshot } from '../../workbook/snapshot';
import { valuesStep, type CellSet } from '../engine/valuesStep';
import { entryContent } from '../saved/withEntries';
import type { LiveWorkbook } from './liveWorkbook';

const contentOf = (content: CellContent): ICellData =>
  typeof content === 'object' ? { f: content.formula, v: null, si: null, p: null } : entryContent({ content });

function cellsOf({ row, column, after }: CellsChanged): CellSet[] {
  return after.flatMap((line, down) =>
    line.map((content, across) => ({ row: row - 1 + down, column: column - 1 + across, content: contentOf(content) })),
  );
}

function looked(sheets: readonly SheetSnapshot[], change: CellsChanged): void {
  const sheet = sheets.find(({ name }) => name === change.sheet);
  if (sheet === undefined) throw new Error(`There is no sheet "${change.sheet}" in this workbook any more. Nothing was changed.`);
  const now = change.before.map((line, down) => contentsOf(sheet, change.row + down, change.column, line.length));
  if (!standsStill(change, now)) throw new Error(changedMeanwhile(change.sheet));
}

export async function changeCells(
  injector: Injector,
  { workbook, settled, snapshot }: LiveWorkbook,
  { changes }: PanelGiven<'changeCells'>,
): Promise<PanelAnswer<'changeCells'>> {
  await settled();
  const { sheets } = snapshot('all');
  for (const change of changes) looked(sheets, change);
  for (const name of new Set(changes.map(({ sheet }) => sheet))) {
    const sheet = workbook.getSheetByName(name);
    if (sheet === null) throw new Error(`There is no sheet "${name}" in this workbook any more. Nothing was changed.`);
    const cells = changes.filter((one) => one.sheet === name).flatMap(cellsOf);
    injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, valuesStep(workbook.getId(), sheet.getSheetId(), cells));
  }
  await settled();
  return { cells: changes.reduce((sum, change) => sum + cellsOf(change).length, 0) };
}
