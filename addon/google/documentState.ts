// What of ours is in the document already: sheets inserted earlier, found by the mark they carry, and still laid out as
// they were, so that a new sheet may read them.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { ExistingSheet } from '../workbook/insertionPlan';
import type { SheetMark } from '../workbook/snapshot';
import { isUnmoved } from '../workbook/unmoved';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;
type Range = GoogleAppsScript.Spreadsheet.Range;
type Metadata = GoogleAppsScript.Spreadsheet.DeveloperMetadata;

/** Key of the developer metadata on each sheet of ours. */
const markKey = 'rampwright_sheet';

/** For every script to see: a copy of the document has a copy of the script, which Google takes for another project. */
export function writeMark(sheet: Sheet, mark: SheetMark): void {
  sheet.addDeveloperMetadata(markKey, JSON.stringify(mark), SpreadsheetApp.DeveloperMetadataVisibility.DOCUMENT);
}

/** Undefined where the text is no mark of ours. The key may be of a sheet that this version no longer has. */
function readMark(text: string | null): SheetMark | undefined {
  try {
    const { key, version, set = '', names = {} } = JSON.parse(text ?? '{}') as Partial<SheetMark>;
    return key === undefined || version === undefined ? undefined : { key, version, set, names };
  } catch {
    return undefined;
  }
}

export interface MarkedSheet {
  readonly sheet: Sheet;
  readonly name: string;
  readonly mark: SheetMark;
  readonly metadata: Metadata;
}

/** Every sheet that carries our mark. */
export function markedSheets(document: Document): MarkedSheet[] {
  const found = document.createDeveloperMetadataFinder().withKey(markKey).find();
  return found.flatMap((metadata) => {
    const mark = readMark(metadata.getValue());
    const sheet = metadata.getLocation().getSheet();
    return mark === undefined || sheet === null ? [] : [{ sheet, name: sheet.getName(), mark, metadata }];
  });
}

/** Takes our mark from a sheet, where it carries one. */
export function removeMark(sheet: Sheet): void {
  for (const metadata of sheet.getDeveloperMetadata()) if (metadata.getKey() === markKey) metadata.remove();
}

/** Undefined where its cells were deleted, at which the platform throws; asked twice, since a service fails now and then too. */
export function rangeOfName(named: NamedRange): Range | undefined {
  try {
    return named.getRange();
  } catch {
    try {
      return named.getRange();
    } catch {
      return undefined;
    }
  }
}

/** Sheets of ours that a new sheet may refer to: of this version, laid out as written, their names still there. */
export function existingSheets(document: Document, templates: readonly SheetTemplate[], rangeNames: ReadonlySet<string>): ExistingSheet[] {
  return markedSheets(document).flatMap(({ sheet, name, mark: { key, version, set, names } }) => {
    const template = templates.find((one) => one.key === key && one.version === version);
    const named = Object.values(names).every((one) => rangeNames.has(one));
    if (template === undefined || !named || !isUnmoved(template, { values: sheet.getDataRange().getDisplayValues() })) return [];
    return [{ key: template.key, sheetName: name, sheetId: String(sheet.getSheetId()), set, names }];
  });
}
