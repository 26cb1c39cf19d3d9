// The workbook as plain data for the panel. Only reads, so that the platform never has to write between two of them.
import type { PanelGiven } from '../panel/host';
import { asOfName } from '../../sheets-templates/asOf';
import { areaText } from '../workbook/areas';
import { referencesOf } from '../workbook/formulaText';
import { visibleSheets } from '../workbook/visibleSheets';
import type { NameSnapshot, SheetMark, SheetSnapshot, WorkbookSnapshot } from '../workbook/snapshot';
import { cellContents, hasCells, type CellContents } from './cellContents';
import { googleDateHost } from './dateHost';
import { knownSheets, markedSheets, markOf, rangeOfName, type KnownSheet } from './documentState';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;

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

/** Names that the sheet's formulas use, and those of the day on which all is judged, which is read with the sheet. */
function namesBeside({ formulas }: CellContents, all: readonly NamedRange[]): NameSnapshot[] {
  const words = new Set(formulas.flatMap(({ text }) => [...referencesOf(text).words]).map((word) => word.toLowerCase()));
  return all.flatMap((named) => {
    const name = named.getName();
    if (name.includes('!') || !(words.has(name.toLowerCase()) || name.startsWith(asOfName))) return [];
    const range = rangeOfName(named);
    return range === undefined ? [] : [{ name, sheet: range.getSheet().getName(), range: closedRange(range) }];
  });
}

/** The sheet in sight, with what it has to be read with: of the others only their marks are asked for, and only where a name leads to them. */
function readShown(document: Document, shown: Sheet, name: string): Omit<WorkbookSnapshot, 'selected'> {
  const dates = googleDateHost();
  const contents = hasCells(shown) ? trimmed(cellContents(shown, dates)) : undefined;
  const names = contents === undefined ? [] : namesBeside(contents, document.getNamedRanges());
  const marks = new Map<string, SheetMark>();
  for (const one of new Set([name, ...names.map(({ sheet }) => sheet)])) {
    const sheet = one === name ? shown : document.getSheetByName(one);
    const mark = sheet === null ? undefined : markOf(sheet);
    if (mark !== undefined) marks.set(one, mark);
  }
  const snapshot = (of: string, read: CellContents): SheetSnapshot => {
    const mark = marks.get(of);
    return { name: of, ...(mark === undefined ? {} : { mark }), ...read };
  };
  const others = [...visibleSheets(name, marks, names)].filter((one) => one !== name);
  return {
    names,
    sheets: [
      ...(contents === undefined ? [] : [snapshot(name, contents)]),
      ...others.flatMap((one) => {
        const sheet = document.getSheetByName(one);
        return sheet === null ? [] : [snapshot(one, trimmed(cellContents(sheet, dates)))];
      }),
    ],
  };
}

function readAll(document: Document): Omit<WorkbookSnapshot, 'selected'> {
  const known = knownSheets(document);
  const marks = new Map(markedSheets(document, known).map(({ name, mark }) => [name, mark]));
  const dates = googleDateHost();
  const sheets = known.flatMap(({ sheet, name }): SheetSnapshot[] => {
    const mark = marks.get(name);
    // A sheet of ours has cells.
    if (mark === undefined && !hasCells(sheet)) return [];
    return [{ name, ...(mark === undefined ? {} : { mark }), ...trimmed(cellContents(sheet, dates)) }];
  });
  return { sheets, names: namesOf(document, known) };
}

/** Of the sheet in sight only: the names that it uses. */
export function readWorkbook({ sheets: wanted }: PanelGiven<'readWorkbook'>): WorkbookSnapshot {
  const document = SpreadsheetApp.getActive();
  const shown = SpreadsheetApp.getActiveSheet();
  const shownName = shown.getName();
  const read = wanted === 'all' ? readAll(document) : readShown(document, shown, shownName);
  return { ...read, selected: selectedOn(shown, shownName) };
}
