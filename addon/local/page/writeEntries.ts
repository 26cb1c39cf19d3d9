// Writes single entries, or empties them, for a new trip or the next leg: one step for each sheet, which an undo takes back.
import { ICommandService, type Injector } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import type { PanelAnswer, PanelGiven } from '../../panel/host';
import { valuesStep } from '../engine/valuesStep';
import { entryContent } from '../saved/withEntries';
import type { LiveWorkbook } from './liveWorkbook';

export async function writeEntries(
  injector: Injector,
  { workbook, settled }: LiveWorkbook,
  { entries }: Pick<PanelGiven<'writeEntries'>, 'entries'>,
): Promise<PanelAnswer<'writeEntries'>> {
  await settled();
  const names = [...new Set(entries.map(({ sheet }) => sheet))];
  const steps = names.map((name) => {
    const sheet = workbook.getSheetByName(name);
    if (sheet === null) throw new Error(`There is no sheet "${name}" in this workbook any more. Nothing was changed.`);
    const ofSheet = entries.filter((one) => one.sheet === name);
    const cells = ofSheet.map(({ row, column, ...entry }) => ({ row: row - 1, column: column - 1, content: entryContent(entry) }));
    return valuesStep(workbook.getId(), sheet.getSheetId(), cells);
  });
  for (const step of steps) injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, step);
  await settled();
  return { cells: entries.length };
}
