// Changes rectangles of cells where they still hold what was seen there: all of them, or none and everything as it was.
import type { PanelAnswer, PanelGiven } from '../panel/host';
import {
  changedMeanwhile,
  holdMore,
  rowsFilled,
  seenBefore,
  standsStill,
  type CellContent,
  type CellsChanged,
  type RowsMoved,
} from '../workbook/cellChanges';
import { plain } from './cellContents';
import { googleDateHost } from './dateHost';
import { transaction, type Did } from './transaction';
import { withDocumentLock } from './withDocumentLock';

type Range = GoogleAppsScript.Spreadsheet.Range;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const words = { refused: 'Nothing was written', restored: 'every cell is as it was', byHand: 'put right by hand' };

/** What is handed to the sheet: a formula as it was read there. */
const handed = (contents: CellsChanged['after']): (string | number | boolean)[][] =>
  contents.map((line) => line.map((content) => (typeof content === 'object' ? content.formula : content)));

function contentsNow(range: Range): CellContent[][] {
  const dates = googleDateHost();
  const formulas = range.getFormulas();
  return range.getValues().map((line, row) =>
    line.map((value: unknown, column): CellContent => {
      const formula = formulas[row]?.[column] ?? '';
      return formula === '' ? plain(value, dates) : { formula };
    }),
  );
}

interface Placed extends CellsChanged {
  readonly range: Range;
}

function sheetNamed(name: string): Sheet {
  const sheet = SpreadsheetApp.getActive().getSheetByName(name);
  if (sheet === null) throw new Error(`There is no sheet "${name}" any more. Nothing was changed.`);
  return sheet;
}

function placed(change: CellsChanged): Placed {
  const sheet = sheetNamed(change.sheet);
  const [rows, columns] = [change.before.length, change.before[0]?.length ?? 0];
  if (change.row + rows - 1 > sheet.getMaxRows() || change.column + columns - 1 > sheet.getMaxColumns())
    throw new Error(changedMeanwhile(change.sheet));
  return { ...change, range: sheet.getRange(change.row, change.column, rows, columns) };
}

function checkStillThere(change: CellsChanged): void {
  if (!standsStill(change, contentsNow(placed(change).range))) throw new Error(changedMeanwhile(change.sheet));
}

/** Every list stands where it stood. */
function checkKeys({ sheet, keys }: RowsMoved): void {
  if (sheetNamed(sheet).getRange(keys.row, keys.column).getFormula() !== keys.text) throw new Error(changedMeanwhile(sheet));
}

const wholeRows = ({ sheet: name, row, count }: RowsMoved): Range => {
  const sheet = sheetNamed(name);
  return sheet.getRange(row, 1, count, sheet.getMaxColumns());
};

/** They look as the row above them and have its rules: the platform does not promise that of new rows. */
function putRowsIn(rows: RowsMoved, did: Did): void {
  const sheet = sheetNamed(rows.sheet);
  sheet.insertRowsAfter(rows.row - 1, rows.count);
  did(`rows ${rows.row} to ${rows.row + rows.count - 1} of ${rows.sheet}`, () => void sheet.deleteRows(rows.row, rows.count));
  const above = sheet.getRange(rows.row - 1, 1, 1, sheet.getMaxColumns());
  const { PASTE_FORMAT, PASTE_DATA_VALIDATION } = SpreadsheetApp.CopyPasteType;
  for (const type of [PASTE_FORMAT, PASTE_DATA_VALIDATION]) above.copyTo(wholeRows(rows), type, false);
}

/** The last step of all, so that no other can fail after it. */
function takeRowsOut(rows: RowsMoved): void {
  SpreadsheetApp.flush();
  sheetNamed(rows.sheet).deleteRows(rows.row, rows.count);
}

/** Nothing stands in rows that go but what the changes empty. */
function checkBlank(rows: RowsMoved, changes: readonly CellsChanged[]): void {
  if (holdMore(rows, contentsNow(wholeRows(rows)), changes)) throw new Error(rowsFilled(rows.sheet));
}

export function changeCells({ changes, rowsIn, rowsOut }: PanelGiven<'changeCells'>): PanelAnswer<'changeCells'> {
  return withDocumentLock(() => {
    // Everything is looked at before the first step.
    for (const rows of [rowsIn, rowsOut]) if (rows !== undefined) checkKeys(rows);
    for (const change of changes.flatMap((one) => seenBefore(one, rowsIn))) checkStillThere(change);
    if (rowsOut !== undefined) checkBlank(rowsOut, changes);
    return transaction(words, (did) => {
      if (rowsIn !== undefined) putRowsIn(rowsIn, did);
      for (const { range, before, after, sheet } of changes.map(placed)) {
        range.setValues(handed(after));
        did(`${sheet} ${range.getA1Notation()}`, () => range.setValues(handed(before)));
      }
      if (rowsOut !== undefined) takeRowsOut(rowsOut);
      return { cells: changes.reduce((sum, { after }) => sum + after.length * (after[0]?.length ?? 0), 0) };
    });
  });
}
