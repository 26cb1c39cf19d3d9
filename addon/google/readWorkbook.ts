// The workbook as plain data for the panel. Only reads, so that the platform never has to write between two of them.
import type { PanelGiven } from '../panel/host';
import { areaText } from '../workbook/areas';
import { visibleSheets } from '../workbook/visibleSheets';
import type { NameSnapshot, SheetSnapshot, WorkbookSnapshot } from '../workbook/snapshot';
import { cellContents, hasCells, type CellContents } from './cellContents';
import { googleDateHost } from './dateHost';
import { knownSheets, markedSheets, rangeOfName, type KnownSheet } from './documentState';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** A1 or A1:C9, also for a name of whole rows or columns. */
function closedRange(range: Range): string {
  const text = range.getA1Notation();
  if (/^[A-Z]+\d+(?::[A-Z]+\d+)?$/.test(text)) return text;
  const [row, column] = [range.getRow(), range.getColumn()];
  return areaText({ row, column, lastRow: row + range.getNumRows() - 1, lastColumn: column + range.getNumColumns() - 1 });
}

/** Left out: names that hold on one sheet only (a copied sheet has such), and names whose cells were deleted. */
function namesOf(document: Document, sheets: readonly KnownSheet[]): NameSnapshot[] {
  const byId = new Map(sheets.map(({ id, name }) => [id, name]));
  return document.getNamedRanges().flatMap((named) => {
    const name = named.getName();
    const range = name.includes('!') ? undefined : rangeOfName(named);
    const sheet = range === undefined ? undefined : byId.get(range.getGridId());
    return range === undefined || sheet === undefined ? [] : [{ name, sheet, range: closedRange(range) }];
  });
}

/** Rows that hold nothing, neither a value nor a formula, are cut off at the foot. */
function trimmed({ values, formulas }: CellContents): CellContents {
  let rows = formulas.reduce((most, { row }) => Math.max(most, row), 0);
  values.forEach((line, index) => {
    if (line.some((value) => value !== '')) rows = Math.max(rows, index + 1);
  });
  return { values: values.slice(0, rows), formulas };
}

function selectedOn(shown: Sheet, sheet: string): WorkbookSnapshot['selected'] {
  const cell = hasCells(shown) ? SpreadsheetApp.getCurrentCell() : null;
  return cell === null ? { sheet, row: 1, column: 1 } : { sheet, row: cell.getRow(), column: cell.getColumn() };
}

export function readWorkbook({ sheets: wanted }: PanelGiven<'readWorkbook'>): WorkbookSnapshot {
  const document = SpreadsheetApp.getActive();
  const shown = SpreadsheetApp.getActiveSheet();
  const known = knownSheets(document);
  const shownName = shown.getName();
  const marks = new Map(markedSheets(document, known).map(({ name, mark }) => [name, mark]));
  const names = namesOf(document, known);
  const read = wanted === 'all' ? undefined : visibleSheets(shownName, marks, names);
  const dates = googleDateHost();
  const sheets = known.flatMap(({ sheet, name }): SheetSnapshot[] => {
    const mark = marks.get(name);
    // A sheet of ours has cells.
    if ((read !== undefined && !read.has(name)) || (mark === undefined && !hasCells(sheet))) return [];
    return [{ name, ...(mark === undefined ? {} : { mark }), ...trimmed(cellContents(sheet, dates)) }];
  });
  return { sheets, names, selected: selectedOn(shown, shownName) };
}
