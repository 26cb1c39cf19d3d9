// Several sheets laid below and beside one another on one of them, the carrier, so that each layer of looks and
// formats takes one call for all of them. From there each is copied to its own sheet.
import type { SheetTemplate } from '../../sheets-templates/template';
import { readArea, type Area } from '../workbook/areas';
import type { SheetGrid } from './sheetGrid';

export interface Laid {
  readonly template: SheetTemplate;
  readonly grid: SheetGrid;
}

export interface StackPiece extends Laid {
  /** Where its A1 stands on the carrier. */
  readonly row: number;
  readonly column: number;
  /** Rows laid out; the last one stands for all rows below it. */
  readonly height: number;
}

export interface Stack {
  /** Index of the piece whose sheet carries the others; it stands at A1, with all its rows. */
  readonly carrier: number;
  readonly pieces: readonly StackPiece[];
  readonly rows: number;
  readonly columns: number;
}

/** Rows that are alike are laid out once where that spares more cells than this; below it the extra call costs more. */
const worthAnotherCall = 2000;

const covers = (ranges: readonly string[], row: number): number[] =>
  ranges.map(readArea).flatMap((area, index) => (row >= area.row && row <= area.lastRow ? [index] : []));

/** Everything of a row that is copied, as text; rows of one text look alike. A row with a merged range is like no other. */
function rowText({ template, grid }: Laid, index: number): string {
  const row = index + 1;
  return JSON.stringify([grid.looks[index], grid.numberFormats[index], covers(template.merges, row).length > 0 ? row : 0]);
}

/** Rows down to the first of those that are alike to the end. */
function packedHeight(laid: Laid): number {
  const { rows, columns } = laid.grid;
  const last = rowText(laid, rows - 1);
  let height = rows;
  while (height > 1 && rowText(laid, height - 2) === last) height -= 1;
  return (rows - height) * columns > worthAnotherCall ? height : rows;
}

interface Shelf {
  readonly row: number;
  readonly height: number;
  nextColumn: number;
}

/** `room` is the number of columns to spread over. One row and one column are left between pieces: neighbours share borders. */
export function stackOf(all: readonly Laid[], room: number): Stack {
  const heights = all.map(packedHeight);
  const tallestFirst = all.map((_, index) => index).sort((one, other) => (heights[other] ?? 0) - (heights[one] ?? 0));
  const [carrier = 0, ...others] = tallestFirst;
  const shelves: Shelf[] = [];
  const places = new Map([[carrier, { row: 1, column: 1, height: all[carrier]?.grid.rows ?? 1 }]]);
  let [rows, columns] = [all[carrier]?.grid.rows ?? 1, all[carrier]?.grid.columns ?? 1];
  for (const index of others) {
    const [height, width] = [heights[index] ?? 1, all[index]?.grid.columns ?? 1];
    let shelf = shelves.find(({ nextColumn }) => nextColumn + width - 1 <= room);
    if (shelf === undefined) {
      shelf = { row: rows + 2, height, nextColumn: 1 };
      shelves.push(shelf);
      rows += 1 + height;
    }
    places.set(index, { row: shelf.row, column: shelf.nextColumn, height });
    columns = Math.max(columns, shelf.nextColumn + width - 1);
    shelf.nextColumn += width + 1;
  }
  const pieces = all.map((laid, index) => ({ ...laid, ...(places.get(index) ?? { row: 1, column: 1, height: 1 }) }));
  return { carrier, pieces, rows, columns };
}

/** Where a range of a piece stands on the carrier, as far as it is laid out. */
export function onCarrier({ row, column, height }: StackPiece, range: string): Area[] {
  const area = readArea(range);
  if (area.row > height) return [];
  const lastRow = Math.min(area.lastRow, height);
  return [{ row: area.row + row - 1, column: area.column + column - 1, lastRow: lastRow + row - 1, lastColumn: area.lastColumn + column - 1 }];
}

/** One property of every cell of the stack, as whole rows; `blank` stands between the pieces. */
export function stackLayer<Value>({ pieces, rows, columns }: Stack, blank: Value, of: (grid: SheetGrid) => readonly (readonly Value[])[]): Value[][] {
  const layer = Array.from({ length: rows }, () => Array<Value>(columns).fill(blank));
  for (const { grid, row, column, height } of pieces) {
    of(grid)
      .slice(0, height)
      .forEach((line, down) => layer[row - 1 + down]?.splice(column - 1, line.length, ...line));
  }
  return layer;
}
