// The next flight of the day: the sheets of a trip copied together, so that they read one another and not those of the first flight, with what the
// panel has planned for them. All of it or nothing.
import { sheetsOfOneTrip } from '../../sheets-templates/places';
import type { PanelAnswer, PanelGiven } from '../panel/host';
import { placedOnCopies } from '../workbook/addFlight';
import { areasOf } from '../workbook/areas';
import { plainNameOf } from '../workbook/copyNames';
import { referencesOf, rewriteFormula, type NewNames } from '../workbook/formulaText';
import { freeName } from '../workbook/insertionPlan';
import type { EntryWritten } from '../workbook/tripEntries';
import { formulasIn } from './cellContents';
import { markedSheets, rangeOfName, removeMark, writeMark, type MarkedSheet } from './documentState';
import { transaction, type Did } from './transaction';
import { withDocumentLock } from './withDocumentLock';
import { write } from './writeEntries';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

const words = { refused: 'No flight was added', restored: 'everything is as it was', byHand: 'put right by hand' };

interface CopyPlan {
  readonly trip: readonly MarkedSheet[];
  readonly names: NewNames;
  /** The ranges of the trip that have a name, by it. */
  readonly ranges: ReadonlyMap<string, Range>;
  /** Place of the first copy among all sheets, counted from 1. */
  readonly place: number;
}

function planCopies(document: Document, name: string): CopyPlan {
  const marked = markedSheets(document);
  const chosen = marked.find((one) => one.name === name && one.mark.key === 'trip');
  if (chosen === undefined) throw new Error(`There is no sheet "${name}" in this document any more. Nothing was changed.`);
  const trip = marked.filter(({ mark }) => mark.set === chosen.mark.set && sheetsOfOneTrip.has(mark.key));
  const order = document.getSheets().map((sheet) => sheet.getName());
  const named = document.getNamedRanges().map((one) => ({ one, name: one.getName() }));
  const takenSheets = new Set(order.map((one) => one.toLowerCase()));
  const takenRanges = new Set(named.map((one) => one.name.toLowerCase()));
  const given = trip.flatMap(({ mark }) => Object.values(mark.names));
  const ranges = named.flatMap((one): [string, Range][] => {
    const range = given.includes(one.name) ? rangeOfName(one.one) : undefined;
    return range === undefined ? [] : [[one.name, range]];
  });
  if (ranges.length < given.length) throw new Error(`A named range of "${name}" is gone. Bring the sheets up to date first. Nothing was changed.`);
  return {
    trip,
    ranges: new Map(ranges),
    names: {
      sheets: new Map(trip.map((one) => [one.name, freeName(plainNameOf(one), ' ', takenSheets)])),
      ranges: new Map(given.map((one) => [one, freeName(one.replace(/_\d+$/, ''), '_', takenRanges)])),
    },
    place: 2 + Math.max(...trip.map((one) => order.indexOf(one.name))),
  };
}

interface Copied {
  readonly from: MarkedSheet;
  readonly copy: Sheet;
}

/** One after another behind the trip, each under its name and with the names of its ranges, before any formula speaks of them. */
function makeCopies(document: Document, { trip, names, ranges, place }: CopyPlan, did: Did): Copied[] {
  const copied = trip.map((from, index) => {
    const copy = from.sheet.copyTo(document);
    did(`the copy of ${from.name}`, () => document.deleteSheet(copy));
    copy.setName(names.sheets.get(from.name) ?? from.name);
    removeMark(copy);
    document.setActiveSheet(copy);
    document.moveActiveSheet(place + index);
    return { from, copy };
  });
  for (const { from, copy } of copied)
    for (const before of Object.values(from.mark.names)) {
      const [range, name] = [ranges.get(before), names.ranges.get(before)];
      if (range === undefined || name === undefined) continue;
      document.setNamedRange(name, copy.getRange(range.getA1Notation()));
      did(`the name ${name}`, () => document.removeNamedRange(name));
    }
  return copied;
}

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
