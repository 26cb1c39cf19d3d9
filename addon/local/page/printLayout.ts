// Where the text of a cell goes on paper: over the blank cells beside it as on the screen, and where those end it wraps, since paper cannot be
// scrolled. A number or a word is never broken: it is made smaller until it fits.
import { BooleanNumber, HorizontalAlign, WrapStrategy, type IRange, type IStyleData } from '@univerjs/core';
import type { Worksheet } from './cells';

export type Skeleton = ReturnType<Worksheet['getSheet']>;

export interface Extent {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}

export interface PrintedCell {
  readonly column: number;
  /** Rows and columns of the sheet, those hidden among them. */
  readonly lastRow: number;
  readonly lastColumn: number;
  readonly wraps: boolean;
  /** Of the size of its letters. */
  readonly shrunk: number;
  /** Pixels that its text takes. */
  readonly height: number;
}

export const fontOf = (style: IStyleData): string => `${style.ff ?? 'Arial'}, sans-serif`;
const defaultSize = 10;
export const sizeOf = (style: IStyleData): number => style.fs ?? defaultSize;

/** Padding on both sides, and a little for the rounding of letters. */
const air = 5;
const lineHeight = 1.15;
const pixelsPerPoint = 96 / 72;

let drawing: CanvasRenderingContext2D | null | undefined;
function widthOf(text: string, style: IStyleData, between: string | RegExp = '\n'): number {
  drawing ??= document.createElement('canvas').getContext('2d');
  if (drawing === null) return 0;
  drawing.font = `${style.it === BooleanNumber.TRUE ? 'italic ' : ''}${style.bl === BooleanNumber.TRUE ? 'bold ' : ''}${sizeOf(style)}pt ${fontOf(style)}`;
  return Math.max(...text.split(between).map((line) => drawing?.measureText(line).width ?? 0)) + air;
}

export const shownAt = (sheet: Skeleton, row: number, column: number): string => String(sheet.getCell(row, column)?.v ?? '');

const inMerge = (merges: readonly IRange[], row: number, column: number): IRange | undefined =>
  merges.find(({ startRow, endRow, startColumn, endColumn }) => row >= startRow && row <= endRow && column >= startColumn && column <= endColumn);

/** A cell that text beside it may run over: nothing in it, and no look that would be lost. */
function isOpen(sheet: Skeleton, merges: readonly IRange[], row: number, column: number): boolean {
  if (shownAt(sheet, row, column) !== '' || inMerge(merges, row, column) !== undefined) return false;
  const { bg, bd } = sheet.getComposedCellStyle(row, column);
  return !bg?.rgb && !bd?.l && !bd?.r;
}

const runsOn = ({ ht, tb }: IStyleData, isNumber: boolean): boolean =>
  !isNumber && tb !== WrapStrategy.WRAP && (ht ?? HorizontalAlign.LEFT) <= HorizontalAlign.LEFT;

/** The last column that the text of a cell reaches, up to one column, and how much room it has there. */
function reach(
  sheet: Skeleton,
  merges: readonly IRange[],
  row: number,
  column: number,
  last: number,
): { readonly column: number; readonly fits: boolean } {
  const style = sheet.getComposedCellStyle(row, column);
  const wanted = widthOf(shownAt(sheet, row, column), style);
  let [reached, room] = [column, sheet.getColumnWidth(column)];
  if (!runsOn(style, sheet.getCell(row, column)?.t === 2)) return { column, fits: wanted <= room };
  while (wanted > room && reached < last && isOpen(sheet, merges, row, reached + 1)) {
    reached += 1;
    room += sheet.getColVisible(reached) ? sheet.getColumnWidth(reached) : 0;
  }
  return { column: reached, fits: wanted <= room };
}

/** From the first cell to the last that shows anything, and on as far as its text reaches within a width; without what is hidden. */
export function extentOf(sheet: Skeleton, most: number): Extent {
  const merges = sheet.getMergeData();
  let [lastRow, lastColumn, reached] = [0, 0, 0];
  for (let row = 0; row < sheet.getRowCount(); row += 1) {
    for (let column = 0; column < sheet.getColumnCount(); column += 1) {
      if (shownAt(sheet, row, column) === '') continue;
      [lastRow, lastColumn] = [row, Math.max(lastColumn, column)];
      if (inMerge(merges, row, column) === undefined)
        reached = Math.max(reached, reach(sheet, merges, row, column, sheet.getColumnCount() - 1).column);
    }
  }
  const upTo = (last: number, isShown: (index: number) => boolean): number[] => Array.from({ length: last + 1 }, (_, index) => index).filter(isShown);
  const columns = upTo(Math.max(lastColumn, reached), (column) => sheet.getColVisible(column));
  let width = 0;
  const within = columns.filter((column) => (width += sheet.getColumnWidth(column)) <= most || column <= lastColumn);
  return { rows: upTo(lastRow, (row) => sheet.getRowVisible(row)), columns: within };
}

function printedCell(sheet: Skeleton, { columns }: Extent, merges: readonly IRange[], row: number, column: number): PrintedCell {
  const style = sheet.getComposedCellStyle(row, column);
  const text = shownAt(sheet, row, column);
  const merge = inMerge(merges, row, column);
  const last = columns[columns.length - 1] ?? column;
  const reached = merge === undefined ? reach(sheet, merges, row, column, last) : { column: merge.endColumn, fits: false };
  const room = columns.filter((one) => one >= column && one <= reached.column).reduce((sum, one) => sum + sheet.getColumnWidth(one), 0);
  const wanted = text === '' ? 0 : widthOf(text, style);
  const isNumber = sheet.getCell(row, column)?.t === 2;
  const wraps = style.tb === WrapStrategy.WRAP || (!isNumber && wanted > room);
  const unbroken = wraps ? widthOf(text, style, /\s+/) : wanted;
  const lines = wraps ? Math.ceil(wanted / Math.max(1, room)) : 1;
  return {
    column,
    lastRow: merge?.endRow ?? row,
    lastColumn: reached.column,
    wraps,
    shrunk: unbroken > room ? room / unbroken : 1,
    height: merge === undefined ? lines * sizeOf(style) * pixelsPerPoint * lineHeight : 0,
  };
}

/** The cells of a row that stand on paper: not those within a merge that begins elsewhere, nor those that text beside them runs over. */
export function printedRow(sheet: Skeleton, extent: Extent, merges: readonly IRange[], row: number): PrintedCell[] {
  const cells: PrintedCell[] = [];
  for (const column of extent.columns) {
    const before = cells[cells.length - 1];
    if (before !== undefined && before.lastColumn >= column) continue;
    const merge = inMerge(merges, row, column);
    if (merge !== undefined && (merge.startRow !== row || merge.startColumn !== column)) continue;
    cells.push(printedCell(sheet, extent, merges, row, column));
  }
  return cells;
}
