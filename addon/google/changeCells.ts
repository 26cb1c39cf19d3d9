// Changes rectangles of cells where they still hold what was seen there: all of them, or none and everything as it was.
import type { PanelAnswer, PanelGiven } from '../panel/host';
import { changedMeanwhile, standsStill, type CellContent, type CellsChanged } from '../workbook/cellChanges';
import { plain } from './cellContents';
import { googleDateHost } from './dateHost';
import { transaction } from './transaction';
import { withDocumentLock } from './withDocumentLock';

type Range = GoogleAppsScript.Spreadsheet.Range;

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

function placed(document: GoogleAppsScript.Spreadsheet.Spreadsheet, change: CellsChanged): Placed {
  const sheet = document.getSheetByName(change.sheet);
  if (sheet === null) throw new Error(`There is no sheet "${change.sheet}" any more. Nothing was changed.`);
  const [rows, columns] = [change.before.length, change.before[0]?.length ?? 0];
  if (change.row + rows - 1 > sheet.getMaxRows() || change.column + columns - 1 > sheet.getMaxColumns())
    throw new Error(changedMeanwhile(change.sheet));
  return { ...change, range: sheet.getRange(change.row, change.column, rows, columns) };
}

export function changeCells({ changes }: PanelGiven<'changeCells'>): PanelAnswer<'changeCells'> {
  return withDocumentLock(() => {
    const document = SpreadsheetApp.getActive();
    const places = changes.map((change) => placed(document, change));
    // Every rectangle is looked at before the first is written.
    const moved = places.find((place) => !standsStill(place, contentsNow(place.range)));
    if (moved !== undefined) throw new Error(changedMeanwhile(moved.sheet));
    return transaction(words, (did) => {
      for (const { range, before, after, sheet } of places) {
        range.setValues(handed(after));
        did(`${sheet} ${range.getA1Notation()}`, () => range.setValues(handed(before)));
      }
      return { cells: places.reduce((sum, { after }) => sum + after.length * (after[0]?.length ?? 0), 0) };
    });
  });
}
