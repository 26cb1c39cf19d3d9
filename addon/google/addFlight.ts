// The next flight of the day: the sheets of a trip copied together, so that they read one another and not those of the first flight, with what the
// panel has planned for them. All of it or nothing.
import type { PanelAnswer, PanelGiven } from '../panel/host';
import { placedOnCopies } from '../workbook/addFlight';
import { areasOf } from '../workbook/areas';
import { referencesOf, rewriteFormula, type NewNames } from '../workbook/formulaText';
import type { EntryWritten } from '../workbook/tripEntries';
import { formulasIn } from './cellContents';
import { makeCopies, planCopies, type Copied, type CopyPlan } from './copyTrip';
import { writeMark } from './documentState';
import { transaction, type Did } from './transaction';
import { withDocumentLock } from './withDocumentLock';
import { write } from './writeEntries';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

const words = { refused: 'No flight was added', restored: 'everything is as it was', byHand: 'put right by hand' };

interface Written {
  readonly row: number;
  readonly column: number;
  readonly content: EntryWritten['content'];
}

/** One call for each rectangle of cells. */
function writeCells(sheet: Sheet, cells: readonly Written[], put: (range: Range, contents: EntryWritten['content'][][]) => void): void {
  const rows = Math.max(0, ...cells.map(({ row }) => row));
  const columns = Math.max(0, ...cells.map(({ column }) => column));
  const grid = Array.from({ length: rows }, () => Array<EntryWritten['content'] | undefined>(columns).fill(undefined));
  for (const { row, column, content } of cells) grid[row - 1]?.splice(column - 1, 1, content);
  for (const { row, column, lastRow, lastColumn } of areasOf(grid.map((line) => line.map((content) => content !== undefined)))) {
    const range = sheet.getRange(row, column, lastRow - row + 1, lastColumn - column + 1);
    put(
      range,
      grid.slice(row - 1, lastRow).map((line) => line.slice(column - 1, lastColumn).map((content) => content ?? '')),
    );
  }
}

const putFormulas = (range: Range, contents: EntryWritten['content'][][]): void => {
  range.setFormulas(contents.map((line) => line.map(String)));
};

/** A formula of a copy names the other copies. What stands between its arguments stays as the document wrote it. */
function rewritten(copy: Sheet, names: NewNames): Written[] {
  return formulasIn(copy.getDataRange()).flatMap(({ row, column, text }) => {
    const { sheets, words: used } = referencesOf(text);
    const speaks = [...sheets].some((one) => names.sheets.has(one)) || [...used].some((one) => names.ranges.has(one));
    return speaks ? [{ row, column, content: rewriteFormula(text, names, ',') }] : [];
  });
}

/** The rules of entries are off while their cells are written: the platform refuses a formula in a cell that has one. */
function fillCopy({ from, copy }: Copied, { names }: CopyPlan, entries: readonly EntryWritten[]): void {
  const [rows, columns] = [copy.getMaxRows(), copy.getMaxColumns()];
  copy.getRange(1, 1, rows, columns).clearDataValidations();
  const own = entries.filter(({ sheet }) => sheet === names.sheets.get(from.name));
  writeCells(copy, rewritten(copy, names), putFormulas);
  writeCells(
    copy,
    own.filter(({ formula }) => formula !== true),
    (range, contents) => range.setValues(contents),
  );
  const formulas = own.filter(({ formula }) => formula === true);
  writeCells(
    copy,
    formulas.map((one) => ({ ...one, content: rewriteFormula(String(one.content), { sheets: new Map(), ranges: new Map() }) })),
    putFormulas,
  );
  from.sheet.getRange(1, 1, rows, columns).copyTo(copy.getRange(1, 1, rows, columns), SpreadsheetApp.CopyPasteType.PASTE_DATA_VALIDATION, false);
}

function add(document: Document, given: PanelGiven<'addFlight'>, plan: CopyPlan, did: Did): PanelAnswer<'addFlight'> {
  const inSight = document.getActiveSheet();
  did('the sheet in sight', () => document.setActiveSheet(inSight));
  const copied = makeCopies(document, plan, did);
  const entries = placedOnCopies(given, plan.names);
  const set = String(copied[0]?.copy.getSheetId() ?? '');
  for (const one of copied) {
    fillCopy(one, plan, entries);
    const { mark } = one.from;
    const renamed = Object.entries(mark.names).map(([ofTemplate, name]): [string, string] => [ofTemplate, plan.names.ranges.get(name) ?? name]);
    writeMark(one.copy, { ...mark, set, names: Object.fromEntries(renamed) });
  }
  const onCopies = new Set(plan.names.sheets.values());
  write(
    document,
    entries.filter(({ sheet }) => !onCopies.has(sheet)),
    did,
  );
  const shown = copied.find(({ from }) => from.mark.key === 'trip');
  if (shown !== undefined) document.setActiveSheet(shown.copy);
  const first = shown === undefined ? [] : [shown];
  return { copies: [...first, ...copied.filter((one) => one !== shown)].map(({ from }) => plan.names.sheets.get(from.name) ?? from.name) };
}

export function addFlight(given: PanelGiven<'addFlight'>): PanelAnswer<'addFlight'> {
  return withDocumentLock(() => {
    const document = SpreadsheetApp.getActive();
    const plan = planCopies(document, given.sheet);
    return transaction(words, (did) => add(document, given, plan, did));
  });
}
