// Copies the sheet in sight beside it and puts what its formulas show in their place, for sharing and for keeping. The
// sheet itself is only read.
import type { PanelAnswer } from '../panel/host';
import { isKeyFormula } from '../workbook/keys';
import { cellContents, hasCells, refuseWaiting, type CellContents } from './cellContents';
import { googleDateHost } from './dateHost';
import { removeMark } from './documentState';
import { freeSheetName } from './freeSheetName';
import { withDocumentLock } from './withDocumentLock';
import { transaction, type Did } from './transaction';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const words = { refused: 'No copy was made', restored: 'everything is as it was', byHand: 'put right by hand' };

/** The values come from the sheet itself: the copy's own formulas are only just being worked out. No rule may refuse one. */
function pasteValues(from: Sheet, onto: Sheet): void {
  const range = from.getDataRange();
  const place = onto.getRange(1, 1, range.getNumRows(), range.getNumColumns());
  place.clearDataValidations();
  range.copyTo(place, SpreadsheetApp.CopyPasteType.PASTE_VALUES, false);
}

/** A paste that left rows out would put numbers beside the wrong labels: all that is no formula must stand where it stood. */
function checkPasted({ values, formulas }: CellContents, pasted: CellContents): void {
  if (pasted.formulas.length > 0) throw new Error('some formulas of the copy are still formulas');
  const worked = new Set(formulas.map(({ row, column }) => `${row}-${column}`));
  values.forEach((line, row) =>
    line.forEach((value, column) => {
      if (worked.has(`${row + 1}-${column + 1}`) || (pasted.values[row]?.[column] ?? '') === value) return;
      throw new Error(`the copy does not hold in row ${row + 1}, column ${column + 1} what the sheet holds there`);
    }),
  );
}

/** What a sheet holds that can be copied, no formula of the document waiting; throws a sentence where it cannot. */
function contentsToCopy(sheets: readonly Sheet[], names: readonly string[], original: Sheet): CellContents {
  const name = original.getName();
  if (!hasCells(original)) throw new Error(`"${name}" has no cells to copy. Show another sheet, then ask again.`);
  // Google Sheets copies only the rows that a filter shows.
  if (original.getFilter() !== null)
    throw new Error(`"${name}" has a filter, and rows that it hides could be left out. Remove the filter (Data, Remove filter), then ask again.`);
  const dates = googleDateHost();
  // A formula may hide that a sheet it reads is still waiting.
  sheets.forEach((sheet, index) => {
    if (names[index] !== name && hasCells(sheet)) refuseWaiting(sheet.getDataRange().getValues());
  });
  return cellContents(original, dates);
}

/** Readies a copy of a sheet as values beside it, which is then in sight; the answer makes it, told to `did`. */
export function copyAsValues(
  document: GoogleAppsScript.Spreadsheet.Spreadsheet,
  original: Sheet,
  suffix: string,
): (did: Did) => { readonly sheet: string; readonly formulas: number } {
  const sheets = document.getSheets();
  const names = sheets.map((sheet) => sheet.getName());
  const contents = contentsToCopy(sheets, names, original);
  const name = original.getName();
  const inSight = document.getActiveSheet();
  return (did) => {
    const copy = original.copyTo(document);
    did('the copy', () => document.deleteSheet(copy));
    const given = freeSheetName(name, suffix, names);
    copy.setName(given);
    pasteValues(original, copy);
    removeMark(copy);
    document.setActiveSheet(copy);
    did('the sheet in sight', () => document.setActiveSheet(inSight));
    document.moveActiveSheet(names.indexOf(name) + 2);
    // Also throws where a value was pasted that is no answer yet.
    checkPasted(contents, cellContents(copy, googleDateHost()));
    return { sheet: given, formulas: contents.formulas.filter((cell) => !isKeyFormula(cell)).length };
  };
}

function freeze(): PanelAnswer<'freezeSheet'> {
  const document = SpreadsheetApp.getActive();
  return transaction(words, copyAsValues(document, SpreadsheetApp.getActiveSheet(), ' (values)'));
}

export const freezeSheet = (): PanelAnswer<'freezeSheet'> => withDocumentLock(freeze);
