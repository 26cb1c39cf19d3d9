// One sheet of the grid as a sheet of an Excel file: its values as they stand, and how they look. No formulas.
import type { ICellData, IColumnData, IRowData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import type { Cell, CellStyle, ColumnDef, RowDef, WriteSheet } from 'hucre';
import { sheetTemplates } from '../../../sheets-templates';
import { verdictTints } from '../../../sheets-templates/look';
import type { CellValue, SheetSnapshot } from '../../workbook/snapshot';
import { quoteSheetName, type CellRange } from '../engine/a1';
import { plainRowHeight } from '../engine/workbookIds';
import { cellLook, colour, composed, fillOf } from './cellLook';
import { fileErrors, fileText } from './fileText';

/** A sheet on its way into the file. */
export interface SheetInFile {
  readonly data: IWorkbookData;
  readonly sheet: Partial<IWorksheetData>;
  readonly snapshot: SheetSnapshot;
  /** What each sheet is called in the file, by its identifier. */
  readonly names: ReadonlyMap<string, string>;
  /** Where a verdict's word is tinted. */
  readonly tinted: readonly CellRange[];
  /** By row and column, counted from 0. */
  readonly notes: Readonly<Record<number, Readonly<Record<number, { readonly note: string } | undefined>> | undefined>>;
  readonly charts: NonNullable<WriteSheet['charts']>;
  /** What is printed at the foot of each page. */
  readonly foot: string;
}

/** Rows of the grid that are filled or have a look, and columns. */
interface Extent {
  readonly rows: number;
  readonly columns: number;
}

/** Inches. */
export const margins = { left: 0.5, right: 0.5, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 } as const;
const pointsOfPixels = (pixels: number): number => pixels * 0.75;
/** A column's width counts digits of the file's own font, Arial 10: seven pixels each. */
const digitPixels = 7;
const plainColumnWidth = 88;

const cellAt = ({ sheet }: SheetInFile, row: number, column: number): Nullable<ICellData> => sheet.cellData?.[row]?.[column];
const rowAt = ({ sheet }: SheetInFile, row: number): Nullable<Partial<IRowData>> => sheet.rowData?.[row];
const columnAt = ({ sheet }: SheetInFile, column: number): Nullable<Partial<IColumnData>> => sheet.columnData?.[column];

function extentOf({ sheet, snapshot }: SheetInFile): Extent {
  const rows = Object.entries(sheet.cellData ?? {});
  const last = (keys: readonly string[]): number => keys.reduce((most, key) => Math.max(most, Number(key) + 1), 0);
  return {
    rows: Math.max(snapshot.values.length, last(rows.map(([row]) => row))),
    columns: Math.max(snapshot.values[0]?.length ?? 0, last(rows.flatMap(([, cells]) => Object.keys((cells ?? {}) as object)))),
  };
}

const isIn =
  (row: number, column: number) =>
  ({ startRow, endRow, startColumn, endColumn }: CellRange): boolean =>
    row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;

/** The fill is fixed: it belongs to the word that stands there now. */
function withTint(look: CellStyle, value: CellValue, isTinted: boolean): CellStyle {
  const rgb = isTinted && typeof value === 'string' ? (verdictTints as Readonly<Record<string, string>>)[value.toUpperCase()] : undefined;
  const tint = colour({ rgb });
  return tint === undefined ? look : { ...look, fill: fillOf(tint) };
}

function content(value: CellValue): Partial<Cell> {
  if (value === '') return {};
  if (typeof value !== 'string') return { value };
  // As text in runs, since the library makes an error cell of codes that only newer programs know.
  if (value.startsWith('#') && !fileErrors.has(value)) return { richText: [{ text: fileText(value) }] };
  return { value: fileErrors.has(value) ? value : fileText(value) };
}

function linkFrom({ names }: SheetInFile, cell: Nullable<ICellData>): Partial<Cell> {
  const name = names.get(String(cell?.custom?.['goesTo'] ?? ''));
  return name === undefined ? {} : { hyperlink: { target: '', location: `${quoteSheetName(name)}!A1` } };
}

function cellInFile(one: SheetInFile, row: number, column: number): Partial<Cell> {
  const { data, sheet, snapshot, tinted, notes } = one;
  const cell = cellAt(one, row, column);
  const value = snapshot.values[row]?.[column] ?? '';
  const look = cellLook(composed(data.styles, [data.defaultStyle, sheet.defaultStyle, rowAt(one, row)?.s, columnAt(one, column)?.s, cell?.s]));
  const note = notes[row]?.[column]?.note;
  return {
    ...content(value),
    style: withTint(look, value, tinted.some(isIn(row, column))),
    ...linkFrom(one, cell),
    ...(note !== undefined && note !== '' && { comment: { author: 'Rampwright', text: fileText(note) } }),
  };
}

function cellsInFile(one: SheetInFile, { rows, columns }: Extent): Map<string, Partial<Cell>> {
  const cells = new Map<string, Partial<Cell>>();
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const isUsed = cellAt(one, row, column) || (one.snapshot.values[row]?.[column] ?? '') !== '' || one.notes[row]?.[column];
      if (isUsed) cells.set(`${row},${column}`, cellInFile(one, row, column));
    }
  }
  return cells;
}

/** Pixels. A row that fits itself to its text has that height in `ah`. */
function heightOf(one: SheetInFile, row: number): number {
  const { h, ah, ia } = rowAt(one, row) ?? {};
  return (ia === 0 ? h : (ah ?? h)) ?? one.sheet.defaultRowHeight ?? plainRowHeight;
}

const rowsInFile = (one: SheetInFile, { rows }: Extent): Map<number, RowDef> =>
  new Map(Array.from({ length: rows }, (_, row) => [row, { height: pointsOfPixels(heightOf(one, row)), hidden: rowAt(one, row)?.hd === 1 }]));

function columnsInFile(one: SheetInFile, { columns }: Extent): ColumnDef[] {
  return Array.from({ length: columns }, (_, column) => {
    const { w, hd } = columnAt(one, column) ?? {};
    return { width: (w ?? one.sheet.defaultColumnWidth ?? plainColumnWidth) / digitPixels, hidden: hd === 1 };
  });
}

function printing({ snapshot, foot }: SheetInFile): Pick<WriteSheet, 'pageSetup' | 'headerFooter'> {
  const template = sheetTemplates.find(({ key }) => key === snapshot.mark?.key);
  return {
    // As many pages down as it takes.
    pageSetup: {
      orientation: template?.print.landscape === true ? 'landscape' : 'portrait',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      margins,
    },
    headerFooter: { oddFooter: foot },
  };
}

export function sheetContents(one: SheetInFile): WriteSheet {
  const { sheet, names } = one;
  const extent = extentOf(one);
  const { xSplit = 0, ySplit = 0 } = sheet.freeze ?? {};
  const tab = colour({ rgb: sheet.tabColor });
  return {
    name: names.get(sheet.id ?? '') ?? '',
    cells: cellsInFile(one, extent),
    columns: columnsInFile(one, extent),
    rowDefs: rowsInFile(one, extent),
    merges: (sheet.mergeData ?? []).map(({ startRow, startColumn, endRow, endColumn }) => ({
      startRow,
      startCol: startColumn,
      endRow,
      endCol: endColumn,
    })),
    ...((xSplit > 0 || ySplit > 0) && { freezePane: { rows: ySplit, columns: xSplit } }),
    view: { showGridLines: sheet.showGridlines !== 0, ...(tab !== undefined && { tabColor: tab }) },
    ...(sheet.hidden === 1 && { hidden: true }),
    ...(one.charts.length > 0 && { charts: one.charts }),
    ...printing(one),
  };
}
