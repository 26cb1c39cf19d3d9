// Where a chart or a picture stands over the grid: its corners as cells and offsets, so that it moves with the rows and columns.
import type { SheetTemplate } from '../../../sheets-templates/template';
import { plainRowHeight } from './workbookIds';

/** Top left cell, counted from 1, and size in pixels. */
interface Placed {
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
}

interface Corner {
  readonly column: number;
  readonly columnOffset: number;
  readonly row: number;
  readonly rowOffset: number;
}

/** The track (row or column, from 0) that holds a position in pixels, and how far into it. */
function trackAt(position: number, sizes: readonly number[]): { readonly index: number; readonly offset: number } {
  let rest = position;
  for (const [index, size] of sizes.entries()) {
    // The far edge of the last track is still of the sheet: a picture may end there.
    if (rest < size || (rest === size && index === sizes.length - 1)) return { index, offset: rest };
    rest -= size;
  }
  throw new Error(`a chart or picture reaches beyond the ${sizes.length} rows or columns of its sheet`);
}

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);

/** Transform in pixels from the first cell, and the same as corners in cells. */
export function chartPlace(template: SheetTemplate, { row, column, width, height }: Placed): object {
  const heights = Array.from({ length: template.rows }, (_, index) => template.rowHeights[index + 1] ?? plainRowHeight);
  const left = sum(template.columnWidths.slice(0, column - 1));
  const top = sum(heights.slice(0, row - 1));
  const corner = (x: number, y: number): Corner => {
    const across = trackAt(x, template.columnWidths);
    const down = trackAt(y, heights);
    return { column: across.index, columnOffset: across.offset, row: down.index, rowOffset: down.offset };
  };
  const sheetTransform = { from: corner(left, top), to: corner(left + width, top + height) };
  return { transform: { left, top, width, height }, sheetTransform, axisAlignSheetTransform: sheetTransform };
}
