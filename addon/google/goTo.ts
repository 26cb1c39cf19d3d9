// Shows a cell and selects it.
import type { PanelAnswer, PanelGiven } from '../panel/host';
import { hasCells } from './cellContents';

export function goTo({ sheet: name, row, column }: PanelGiven<'goTo'>): PanelAnswer<'goTo'> {
  const sheet = SpreadsheetApp.getActive().getSheetByName(name);
  if (sheet === null) throw new Error(`There is no sheet "${name}" in this document any more.`);
  const within = (place: number, last: number): boolean => Number.isInteger(place) && place >= 1 && place <= last;
  if (!hasCells(sheet) || !within(row, sheet.getMaxRows()) || !within(column, sheet.getMaxColumns())) {
    throw new Error(`The sheet "${name}" has no cell in row ${row}, column ${column} any more.`);
  }
  return { cell: sheet.getRange(row, column).activate().getA1Notation() };
}
