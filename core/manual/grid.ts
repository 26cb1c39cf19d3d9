// Arranges the rows of an aircraft's table on the grid of its first columns, the inputs. A grid point has one number,
// its key: the line numbers of its inputs as the digits of a number of mixed base.
import { CoreError, type GridCoordinate } from '../basics/errors';

/** A table as its owner typed it. Rows may come in any order; a cell left blank is undefined. */
export interface NumberTable {
  readonly headers: readonly string[];
  readonly rows: readonly (readonly (number | undefined)[])[];
  /** Place of each row within the table, the header being row 1. */
  readonly places: readonly number[];
}

export interface TableGrid {
  readonly table: NumberTable;
  readonly inputs: number;
  /** The headers as they are compared. */
  readonly plainHeaders: readonly string[];
  /** For each input, the values its rows stand on, rising. */
  readonly axes: readonly (readonly number[])[];
  /** Index of the row at each grid point that is there. */
  readonly rowAt: ReadonlyMap<number, number>;
}

/** A grid, and the rows that found no place on it. Rows are indices. */
export interface Arrangement {
  readonly grid: TableGrid;
  /** Rows with a blank input. */
  readonly unplaced: readonly { readonly row: number; readonly input: number }[];
  readonly repeated: readonly { readonly first: number; readonly second: number }[];
}

/** Where a value lies between the lines of an axis; on a line, low and high are the same one. */
export interface Bracket {
  readonly low: number;
  readonly high: number;
  /** Part of the way from low to high. */
  readonly fraction: number;
}

/** Two values this close, as a part of their size, are one: only binary rounding can set them apart. */
const sameValue = 1e-9;
export const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= sameValue * Math.max(1, Math.abs(one), Math.abs(other));

/** Headers are compared without their spaces, and in lower case. */
export const plainHeader = (header: string): string => header.replace(/\s+/g, '').toLowerCase();

function readHeaders({ headers }: NumberTable, inputs: number): string[] {
  const bad = (reason: 'too-few-columns' | 'blank' | 'repeated'): CoreError => new CoreError('table-header-bad', { reason, headers, inputs });
  if (headers.length <= inputs) throw bad('too-few-columns');
  const plain = headers.map(plainHeader);
  if (plain.slice(0, inputs).includes('')) throw bad('blank');
  const named = plain.filter((header) => header !== '');
  if (new Set(named).size < named.length) throw bad('repeated');
  return plain;
}

function axisOf({ rows }: NumberTable, input: number): number[] {
  const different = new Set(rows.map((row) => row[input]).filter((value) => value !== undefined));
  const rising = [...different].sort((one, other) => one - other);
  return rising.filter((value, index) => index === 0 || !isSame(value, rising[index - 1] ?? value));
}

/** Index of the first line of the axis that is not below the value; the axis length when all are. */
function firstNotBelow(axis: readonly number[], value: number): number {
  let low = 0;
  let high = axis.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((axis[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

export const onLine = (line: number): Bracket => ({ low: line, high: line, fraction: 0 });

/** Where the value lies on the axis, or undefined where that is beyond its ends. */
export function bracketOn(axis: readonly number[], value: number): Bracket | undefined {
  const high = firstNotBelow(axis, value);
  const below = axis[high - 1];
  const above = axis[high];
  if (above !== undefined && isSame(above, value)) return onLine(high);
  if (below !== undefined && isSame(below, value)) return onLine(high - 1);
  if (below === undefined || above === undefined) return undefined;
  return { low: high - 1, high, fraction: (value - below) / (above - below) };
}

export const nextKey = (axes: TableGrid['axes'], key: number, input: number, line: number): number => key * (axes[input]?.length ?? 0) + line;

/** How far apart the keys of two neighbours along an input are. */
export const strideOf = ({ axes }: TableGrid, input: number): number => axes.slice(input + 1).reduce((product, axis) => product * axis.length, 1);

/** A grid point in the words of the table: its headers and values. */
export const pointOf = (grid: TableGrid, key: number): GridCoordinate[] =>
  grid.axes.map((axis, input) => ({
    header: grid.table.headers[input] ?? '',
    value: axis[Math.floor(key / strideOf(grid, input)) % axis.length] ?? 0,
  }));

/** The inputs of a row as they stand there, blank ones left out. */
export const inputsOfRow = ({ headers, rows }: NumberTable, inputs: number, row: number): GridCoordinate[] =>
  headers.slice(0, inputs).flatMap((header, index) => {
    const value = rows[row]?.[index];
    return value === undefined ? [] : [{ header, value }];
  });

/** Puts every row on the grid that has a place of its own there, and tells of those that have none. */
export function arrange(table: NumberTable, inputs: number): Arrangement {
  const plainHeaders = readHeaders(table, inputs);
  const axes = Array.from({ length: inputs }, (_, input) => axisOf(table, input));
  const rowAt = new Map<number, number>();
  const unplaced: { row: number; input: number }[] = [];
  const repeated: { first: number; second: number }[] = [];
  table.rows.forEach((cells, row) => {
    const blank = axes.findIndex((_, input) => cells[input] === undefined);
    if (blank >= 0) {
      unplaced.push({ row, input: blank });
      return;
    }
    const key = axes.reduce((sofar, axis, input) => nextKey(axes, sofar, input, bracketOn(axis, cells[input] ?? 0)?.low ?? 0), 0);
    const first = rowAt.get(key);
    if (first === undefined) rowAt.set(key, row);
    else repeated.push({ first, second: row });
  });
  return { grid: { table, inputs, plainHeaders, axes, rowAt }, unplaced, repeated };
}
