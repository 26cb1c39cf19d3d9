// Arithmetic of ranges on one sheet: reading A1 text, and covering scattered cells with few rectangles.
import { area } from '../../sheets-templates/addresses';

/** Rows and columns counted from 1, both ends included. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

export const areaOfCell = ({ row, column }: Pick<Area, 'row' | 'column'>): Area => ({ row, column, lastRow: row, lastColumn: column });

/** A is 1. */
export function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

/** A1, A1:C9, with or without dollar signs; on one sheet, so without a sheet's name. */
export function readArea(text: string): Area {
  const parts = /^([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?$/.exec(text.replace(/\$/g, ''));
  if (parts === null) throw new Error(`"${text}" is not a range on one sheet`);
  const [, column = '', row = '', lastColumn = column, lastRow = row] = parts;
  return { row: Number(row), column: columnNumber(column), lastRow: Number(lastRow), lastColumn: columnNumber(lastColumn) };
}

export const areaText = ({ row, column, lastRow, lastColumn }: Area): string =>
  row === lastRow && column === lastColumn ? area(row, column, row, column).replace(/:.*/, '') : area(row, column, lastRow, lastColumn);

/** Every cell of an area. */
export function eachCell({ row, column, lastRow, lastColumn }: Area, visit: (row: number, column: number) => void): void {
  for (let r = row; r <= lastRow; r += 1) for (let c = column; c <= lastColumn; c += 1) visit(r, c);
}

/** Runs of true in a line, counted from 1. */
function runsOf(line: readonly boolean[]): { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  line.forEach((set, index) => {
    const last = runs[runs.length - 1];
    if (set && last !== undefined && last.to === index) last.to = index + 1;
    else if (set) runs.push({ from: index + 1, to: index + 1 });
  });
  return runs;
}

/** Rectangles that together cover exactly the true cells: runs of each row, joined to equal runs of the row above. */
export function areasOf(cells: readonly (readonly boolean[])[]): Area[] {
  const areas: { row: number; column: number; lastRow: number; lastColumn: number }[] = [];
  cells.forEach((line, index) => {
    for (const { from, to } of runsOf(line)) {
      const above = areas.find((one) => one.lastRow === index && one.column === from && one.lastColumn === to);
      if (above !== undefined) above.lastRow = index + 1;
      else areas.push({ row: index + 1, column: from, lastRow: index + 1, lastColumn: to });
    }
  });
  return areas;
}

export interface Stroke {
  readonly start: number;
  readonly count: number;
  readonly value: number;
}

/** Strokes over neighbours of one value; places without a value are left as they are. */
export function equalRuns(values: readonly (number | undefined)[]): Stroke[] {
  const strokes: { start: number; count: number; value: number }[] = [];
  values.forEach((value, index) => {
    const last = strokes[strokes.length - 1];
    if (value === undefined) return;
    if (last !== undefined && last.value === value && last.start + last.count === index + 1) last.count += 1;
    else strokes.push({ start: index + 1, count: 1, value });
  });
  return strokes;
}

/**
 * The fewest strokes that give each column its width, a stroke being one call that sets a run of columns; later strokes
 * paint over earlier ones. Interval programming: the stroke of the first column either stops there, or reaches a later
 * column of the same width and is painted over in between. A column that has `fresh` already needs a stroke only where
 * another one goes over it.
 */
export function fewestStrokes(values: readonly number[], fresh?: number): Stroke[] {
  const known = new Map<string, Stroke[]>();
  /** `bare`: no stroke has gone over these columns yet. */
  const paint = (from: number, to: number, bare: boolean): Stroke[] => {
    const value = values[from];
    if (from > to || value === undefined) return [];
    const key = `${from}-${to}-${bare}`;
    const found = known.get(key) ?? (bare && value === fresh ? paint(from + 1, to, true) : undefined);
    if (found !== undefined) return found;
    let best: Stroke[] = [{ start: from + 1, count: 1, value }, ...paint(from + 1, to, bare)];
    for (let again = from + 1; again <= to; again += 1) {
      if (values[again] !== value) continue;
      const [first, ...rest] = paint(again, to, bare);
      const inside = paint(from + 1, again - 1, false);
      if (first === undefined || 1 + rest.length + inside.length >= best.length) continue;
      best = [{ ...first, start: from + 1, count: first.count + first.start - from - 1 }, ...rest, ...inside];
    }
    known.set(key, best);
    return best;
  };
  return paint(0, values.length - 1, true);
}
