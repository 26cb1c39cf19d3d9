// Brings a cell into sight and selects it.
import type { PanelAnswer, PanelGiven } from '../../panel/host';
import type { LiveWorkbook } from './liveWorkbook';

/** Cells kept in sight before the one that is gone to. */
const [rowsAbove, columnsBefore] = [4, 3];

export async function goTo({ workbook, focus }: LiveWorkbook, { sheet: name, row, column }: PanelGiven<'goTo'>): Promise<PanelAnswer<'goTo'>> {
  await workbook.endEditingAsync(true);
  const sheet = workbook.getSheetByName(name);
  if (sheet === null) throw new Error(`There is no sheet "${name}" in this workbook any more.`);
  if (sheet.isSheetHidden()) throw new Error(`The sheet "${name}" is hidden. Show it first: right-click a sheet's tab, then "Unhide Sheet".`);
  if (row > sheet.getMaxRows() || column > sheet.getMaxColumns())
    throw new Error(`The sheet "${name}" no longer reaches as far as row ${row}, column ${column}.`);
  workbook.setActiveSheet(sheet);
  const cell = sheet.getRange(row - 1, column - 1);
  cell.activate();
  sheet.scrollToCell(Math.max(0, row - rowsAbove), Math.max(0, column - columnsBefore));
  focus();
  return { cell: cell.getA1Notation() };
}
