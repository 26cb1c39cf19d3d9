// What of ours is in the document already: sheets inserted earlier, found by the mark they carry, and still laid out as
// they were, so that a new sheet may read them.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { ExistingSheet } from '../workbook/insertionPlan';
import type { SheetMark } from '../workbook/snapshot';
import { isUnmoved } from '../workbook/keys';
import { formulasIn } from './cellContents';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;
type Range = GoogleAppsScript.Spreadsheet.Range;
type Metadata = GoogleAppsScript.Spreadsheet.DeveloperMetadata;

/** Key of the developer metadata on each sheet of ours. */
const markKey = 'rampwright_sheet';

/** A sheet of the document with what the platform has to be asked for. */
export interface KnownSheet {
  readonly sheet: Sheet;
  readonly name: string;
  readonly id: number;
}

export const knownSheets = (document: Document): KnownSheet[] =>
  document.getSheets().map((sheet) => ({ sheet, name: sheet.getName(), id: sheet.getSheetId() }));

/**
 * For every script to see: a copy of the document has a copy of the script, which Google takes for another project. With the sheet's
 * identifier, so that its place need not be asked for.
 */
export function writeMark(sheet: Sheet, mark: SheetMark, id = String(sheet.getSheetId())): void {
  sheet.addDeveloperMetadata(markKey, JSON.stringify({ ...mark, on: id }), SpreadsheetApp.DeveloperMetadataVisibility.DOCUMENT);
}

interface WrittenMark {
  readonly mark: SheetMark;
  /** Identifier of the sheet that the mark was written on. */
  readonly on: string | undefined;
}

/** Undefined where the text is no mark of ours. The key may be of a sheet that this version no longer has. */
function readMark(text: string | null): WrittenMark | undefined {
  try {
    const { key, version, set = '', names = {}, on } = JSON.parse(text ?? '{}') as Partial<SheetMark & { readonly on: string }>;
    return key === undefined || version === undefined ? undefined : { mark: { key, version, set, names }, on };
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

/** Every sheet that carries our mark. A sheet copied by hand carries that of another: where two name one sheet, and where none has it, each is asked. */
export function markedSheets(document: Document, sheets = knownSheets(document)): MarkedSheet[] {
  const found = document.createDeveloperMetadataFinder().withKey(markKey).find();
  const written = found.map((metadata) => ({ metadata, read: readMark(metadata.getValue()) }));
  const byId = new Map(sheets.map((one) => [String(one.id), one]));
  return written.flatMap(({ metadata, read }) => {
    if (read === undefined) return [];
    const alone = written.filter((other) => other.read?.on === read.on).length === 1;
    const known = alone && read.on !== undefined ? byId.get(read.on) : undefined;
    const sheet = known?.sheet ?? metadata.getLocation().getSheet();
    return sheet === null ? [] : [{ sheet, name: known?.name ?? sheet.getName(), mark: read.mark, metadata }];
  });
}

/** The mark that a single sheet carries. */
export function markOf(sheet: Sheet): SheetMark | undefined {
  const own = sheet.getDeveloperMetadata().find((metadata) => metadata.getKey() === markKey);
  return own === undefined ? undefined : readMark(own.getValue())?.mark;
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
    if (template === undefined || !named || !isUnmoved(template, { formulas: formulasIn(sheet.getDataRange()) })) return [];
    return [{ key: template.key, sheetName: name, sheetId: String(sheet.getSheetId()), set, names }];
  });
}
