// Whether rows and columns of a sheet stand where its template put them, so that a new sheet may read it by the template's own cells.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { SheetSnapshot } from './snapshot';
import { asText, fixedTexts, labelsOf, textAt } from './templateLabels';

/**
 * Every fixed text stands in its place, or was reworded there: a text of the user's own stands in its place, and it stands
 * itself nowhere but where the template has it. A unit may read as it likes.
 */
export function isUnmoved(template: SheetTemplate, sheet: Pick<SheetSnapshot, 'values'>): boolean {
  const labels = labelsOf(template);
  const missing = labels.filter(({ row, column, text }) => textAt(sheet, row, column) !== text);
  if (missing.length === 0) return true;
  const ours = new Set(fixedTexts(template).map(({ text }) => text));
  const isUsers = (text: string): boolean => text !== '' && !ours.has(text);
  if (!missing.every(({ row, column }) => isUsers(textAt(sheet, row, column)))) return false;
  const gone = new Set(missing.map(({ text }) => text));
  const places = new Set(labels.map(({ row, column, text }) => `${row} ${column} ${text}`));
  return sheet.values.every((line, row) => line.every((value, column) => !gone.has(asText(value)) || places.has(`${row + 1} ${column + 1} ${asText(value)}`)));
}
