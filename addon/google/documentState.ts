// What of ours is in the document already: sheets inserted earlier, found by the mark they carry, and still laid out as
// they were, so that a new sheet may read them.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { ExistingSheet } from '../workbook/insertionPlan';
import type { SheetMark } from '../workbook/snapshot';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Key of the developer metadata on each sheet of ours. */
export const markKey = 'rampwright_sheet';

export function writeMark(sheet: Sheet, mark: SheetMark): void {
  sheet.addDeveloperMetadata(markKey, JSON.stringify(mark), SpreadsheetApp.DeveloperMetadataVisibility.PROJECT);
}

function readMark(text: string | null): Partial<SheetMark> {
  try {
    return JSON.parse(text ?? '{}') as Partial<SheetMark>;
  } catch {
    return {};
  }
}

/** Labels stand where the template put them; a user who moved rows or columns has another sheet than ours. */
function stillLaidOut(sheet: Sheet, { cells }: SheetTemplate): boolean {
  const labels = cells.filter(({ value, style }) => typeof value === 'string' && style !== 'input' && style !== 'inputText');
  const rows = labels.reduce((most, { row }) => Math.max(most, row), 1);
  const columns = labels.reduce((most, { column }) => Math.max(most, column), 1);
  if (sheet.getMaxRows() < rows || sheet.getMaxColumns() < columns) return false;
  const values = sheet.getRange(1, 1, rows, columns).getDisplayValues();
  return labels.every(({ row, column, value }) => values[row - 1]?.[column - 1] === value);
}

/** Sheets of ours that a new sheet may refer to: of this version, laid out as written, their names still there. */
export function existingSheets(document: Document, templates: readonly SheetTemplate[], rangeNames: ReadonlySet<string>): ExistingSheet[] {
  const marks = document.createDeveloperMetadataFinder().withKey(markKey).find();
  return marks.flatMap((metadata) => {
    const { key, version, set = '', names = {} } = readMark(metadata.getValue());
    const template = templates.find((one) => one.key === key && one.version === version);
    const sheet = metadata.getLocation().getSheet();
    const named = Object.values(names).every((name) => rangeNames.has(name));
    if (template === undefined || sheet === null || !named || !stillLaidOut(sheet, template)) return [];
    return [{ key: template.key, sheetName: sheet.getName(), sheetId: String(sheet.getSheetId()), set, names }];
  });
}
