// Copies the sheet in sight beside it and puts what its formulas show in their place, for sharing and for keeping. The
// sheet itself is only read.
import type { PanelAnswer } from '../panel/host';
import { cellContents, hasCells } from './cellContents';
import { googleDateHost } from './dateHost';
import { removeMark } from './documentState';
import { freeSheetName } from './freeSheetName';
import { allOrNothing } from './undo';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const words = { refused: 'No copy was made', restored: 'everything is as it was', byHand: 'put right by hand' };

/** The values come from the sheet itself: the copy's own formulas are only just being worked out. */
function pasteValues(from: Sheet, onto: Sheet): void {
  const range = from.getDataRange();
  range.copyTo(onto.getRange(1, 1, range.getNumRows(), range.getNumColumns()), SpreadsheetApp.CopyPasteType.PASTE_VALUES, false);
}

export function freezeSheet(): PanelAnswer<'freezeSheet'> {
  const document = SpreadsheetApp.getActive();
  const original = SpreadsheetApp.getActiveSheet();
  const sheets = document.getSheets();
  const names = sheets.map((sheet) => sheet.getName());
  const name = original.getName();
  if (!hasCells(original)) throw new Error(`"${name}" has no cells to copy. Show another sheet, then ask again.`);
  const dates = googleDateHost();
  // Of every sheet, since a formula may hide that a sheet it reads is still waiting.
  const contents = sheets.map((sheet) => (hasCells(sheet) ? cellContents(sheet, dates) : undefined));
  const place = names.indexOf(name);
  const formulas = contents[place]?.formulas.length ?? 0;
  return allOrNothing(words, (did) => {
    const copy = original.copyTo(document);
    did('the copy', () => document.deleteSheet(copy));
    const given = freeSheetName(name, ' (values)', names);
    copy.setName(given);
    pasteValues(original, copy);
    removeMark(copy);
    document.setActiveSheet(copy);
    did('the sheet in sight', () => document.setActiveSheet(original));
    document.moveActiveSheet(place + 2);
    // Also throws where a value was pasted that is no answer yet.
    if (cellContents(copy, dates).formulas.length > 0) throw new Error('some formulas of the copy are still formulas');
    return { sheet: given, formulas };
  });
}
