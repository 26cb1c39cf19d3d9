// Writes single entries, or empties them, for a new trip or the next leg.
import type { PanelAnswer, PanelGiven } from '../panel/host';
import { rewriteFormula } from '../workbook/formulaText';
import type { EntryWritten } from '../workbook/tripEntries';
import { copyAsValues } from './freezeSheet';
import { withDocumentLock } from './withDocumentLock';
import { transaction, type Did } from './transaction';

const words = { refused: 'Nothing was written', restored: 'every entry is as it was', byHand: 'put right by hand' };

/** Each with how it is taken back. */
export function write(document: GoogleAppsScript.Spreadsheet.Spreadsheet, entries: readonly EntryWritten[], did: Did): void {
  for (const { sheet: name, row, column, content, formula: isFormula, numberFormat } of entries) {
    const sheet = document.getSheetByName(name);
    if (sheet === null) throw new Error(`there is no sheet "${name}" any more.`);
    const cell = sheet.getRange(row, column);
    const formula = cell.getFormulas()[0]?.[0] ?? '';
    const before = formula === '' ? (cell.getValues() as unknown[][]) : [[formula]];
    if (numberFormat !== undefined) {
      const formats = cell.getNumberFormats();
      cell.setNumberFormats([[numberFormat]]);
      did(`the number format of ${name} ${cell.getA1Notation()}`, () => cell.setNumberFormats(formats));
    }
    if (isFormula === true) cell.setFormulas([[rewriteFormula(String(content), { sheets: new Map(), ranges: new Map() })]]);
    else cell.setValues([[content]]);
    did(`${name} ${cell.getA1Notation()}`, () => cell.setValues(before));
  }
}

/** Readies the copy of the sheet to be put aside, before anything is changed. */
function putAside(document: GoogleAppsScript.Spreadsheet.Spreadsheet, { copyFirst }: PanelGiven<'writeEntries'>) {
  if (copyFirst === undefined) return undefined;
  const sheet = document.getSheetByName(copyFirst.sheet);
  if (sheet === null) throw new Error(`There is no sheet "${copyFirst.sheet}" any more. Nothing was changed.`);
  return copyAsValues(document, sheet, copyFirst.suffix);
}

export function writeEntries(given: PanelGiven<'writeEntries'>): PanelAnswer<'writeEntries'> {
  return withDocumentLock(() => {
    const document = SpreadsheetApp.getActive();
    const inSight = document.getActiveSheet();
    const copied = putAside(document, given);
    return transaction(words, (did) => {
      const copy = copied?.(did).sheet;
      if (copy !== undefined) document.setActiveSheet(inSight);
      write(document, given.entries, did);
      return { cells: given.entries.length, ...(copy !== undefined && { copy }) };
    });
  });
}
