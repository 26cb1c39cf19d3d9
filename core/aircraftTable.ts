// Reads a table of an aircraft's manual: its first columns are the inputs, in order, and its rows stand on a grid.
// Interpolates in a straight line along each input. Never extrapolates, never fills in a grid point that is not there.
import { CoreError, type GridCoordinate } from './errors';

/** A table as its owner typed it. Rows may come in any order; a cell left blank is undefined. */
export interface NumberTable {
  readonly headers: readonly string[];
  readonly rows: readonly (readonly (number | undefined)[])[];
  /** Place of each row as its owner sees it, for messages. */
  readonly places: readonly number[];
}

/** The same table with its rows arranged on the grid of its first `inputs` columns. */
export interface TableGrid {
  readonly table: NumberTable;
  readonly inputs: number;
  /** For each input, the values its rows stand on, rising. */
  readonly axes: readonly (readonly number[])[];
  /** The headers as they are compared. */
  readonly plainHeaders: readonly string[];
  /** Index of the row at each grid point that is there, by the point's key. */
  readonly rowAt: ReadonlyMap<number, number>;
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
const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= sameValue * Math.max(1, Math.abs(one), Math.abs(other));

/** Headers are compared without their spaces, and in lower case. */
const plainHeader = (header: string): string => header.replace(/\s+/g, '').toLowerCase();

function readHeaders({ headers }: NumberTable, inputs: number): string[] {
  const bad = (reason: 'too-few-columns' | 'blank' | 'repeated'): CoreError => new CoreError('table-header-bad', { reason, headers, inputs });
  if (headers.length <= inputs) throw bad('too-few-columns');
  const plain = headers.map(plainHeader);
  if (plain.slice(0, inputs).includes('')) throw bad('blank');
  const named = plain.filter((header) => header !== '');
  if (new Set(named).size < named.length) throw bad('repeated');
  return plain;
}

/** A column of answers. Where they are distances, 0 or less is no answer: such a cell was never filled in. */
export interface AnswerColumn {
  readonly index: number;
  readonly kind: 'number' | 'distance';
}

/** The answer column with this header. */
export function columnOf({ table, inputs, plainHeaders }: TableGrid, wanted: string, kind: AnswerColumn['kind']): AnswerColumn {
  const plain = plainHeader(wanted);
  const column = plain === '' ? -1 : plainHeaders.indexOf(plain);
  if (column < 0) throw new CoreError('table-header-unknown', { wanted, headers: table.headers.slice(inputs).filter((header) => header !== '') });
  if (column < inputs) throw new CoreError('table-header-bad', { reason: 'wanted-is-input', headers: table.headers, inputs });
  return { index: column, kind };
}

function coordinate({ headers, rows, places }: NumberTable, row: number, input: number): number {
  const value = rows[row]?.[input];
  if (value === undefined) throw new CoreError('table-bad-cell', { needed: 'number', header: headers[input] ?? '', row: places[row] ?? 0, received: '' });
  return value;
}

function axisOf(table: NumberTable, input: number): number[] {
  const different = new Set(table.rows.map((_, row) => coordinate(table, row, input)));
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

/** Where the value lies on the axis, or undefined where that is beyond its ends. */
export function bracketOn(axis: readonly number[], value: number): Bracket | undefined {
  const high = firstNotBelow(axis, value);
  const below = axis[high - 1];
  const above = axis[high];
  if (above !== undefined && isSame(above, value)) return { low: high, high, fraction: 0 };
  if (below !== undefined && isSame(below, value)) return { low: high - 1, high: high - 1, fraction: 0 };
  if (below === undefined || above === undefined) return undefined;
  return { low: high - 1, high, fraction: (value - below) / (above - below) };
}

/** One number for a grid point: its line numbers, one for each input, as the digits of a number of mixed base. */
const nextKey = (axes: TableGrid['axes'], key: number, input: number, line: number): number => key * (axes[input]?.length ?? 0) + line;

/** The grid point of a key, in the words of the table: its headers and values. */
export function pointOf({ table, axes, inputs }: TableGrid, key: number): GridCoordinate[] {
  const point: GridCoordinate[] = [];
  for (let input = inputs - 1, rest = key; input >= 0; input -= 1) {
    const axis = axes[input] ?? [];
    point.unshift({ header: table.headers[input] ?? '', value: axis[rest % axis.length] ?? 0 });
    rest = Math.floor(rest / axis.length);
  }
  return point;
}

/** Arranges the rows on the grid. Throws where a row has no place on it, or two rows share one. */
export function gridOf(table: NumberTable, inputs: number): TableGrid {
  const plainHeaders = readHeaders(table, inputs);
  const axes = Array.from({ length: inputs }, (_, input) => axisOf(table, input));
  const rowAt = new Map<number, number>();
  table.rows.forEach((_, row) => {
    const key = axes.reduce((sofar, axis, input) => nextKey(axes, sofar, input, bracketOn(axis, coordinate(table, row, input))?.low ?? 0), 0);
    const first = rowAt.get(key);
    if (first !== undefined) throw new CoreError('table-repeated-row', { firstRow: table.places[first] ?? 0, secondRow: table.places[row] ?? 0 });
    rowAt.set(key, row);
  });
  return { table, inputs, axes, plainHeaders, rowAt };
}

/** The table's own value at a grid point. */
function valueAt(grid: TableGrid, { index, kind }: AnswerColumn, key: number): number {
  const row = grid.rowAt.get(key);
  if (row === undefined) throw new CoreError('table-missing-point', { point: pointOf(grid, key) });
  const value = grid.table.rows[row]?.[index];
  if (value === undefined || (kind === 'distance' && value <= 0)) {
    const header = grid.table.headers[index] ?? '';
    throw new CoreError('table-bad-cell', { needed: kind, header, row: grid.table.places[row] ?? 0, received: value ?? '' });
  }
  return value;
}

/** Straight lines along the last input first, then along those before it. Exactly on a line only that line is read. */
function blend(grid: TableGrid, column: AnswerColumn, brackets: readonly Bracket[], input: number, key: number): number {
  const bracket = brackets[input];
  if (bracket === undefined) return valueAt(grid, column, key);
  const low = blend(grid, column, brackets, input + 1, nextKey(grid.axes, key, input, bracket.low));
  if (bracket.low === bracket.high) return low;
  const high = blend(grid, column, brackets, input + 1, nextKey(grid.axes, key, input, bracket.high));
  return low + (high - low) * bracket.fraction;
}

/** Where a value of one input lies; throws where the table does not reach it. */
export function bracketOf({ table, axes }: TableGrid, input: number, value: number): Bracket {
  const axis = axes[input] ?? [];
  const bracket = bracketOn(axis, value);
  if (bracket !== undefined) return bracket;
  const [low = 0] = axis;
  throw new CoreError('table-outside', { inputNumber: input + 1, header: table.headers[input] ?? '', low, high: axis[axis.length - 1] ?? 0, received: value });
}

/**
 * The value of a column at these inputs, one for each input column. Multilinear: along any one input a straight line
 * between the table's rows. @source phak, performance charts: interpolation between the rows of a table.
 */
export function readGrid(grid: TableGrid, column: AnswerColumn, inputs: readonly number[]): number {
  return readBrackets(grid, column, inputs.map((value, input) => bracketOf(grid, input, value)));
}

/** The same where it is known already where each input lies. */
export const readBrackets = (grid: TableGrid, column: AnswerColumn, brackets: readonly Bracket[]): number => blend(grid, column, brackets, 0, 0);

/** A table that arranges itself once for each number of inputs asked of it, however many rows ask. */
export interface AircraftTable {
  readonly withInputs: (inputs: number) => TableGrid;
}

export function openTable(table: NumberTable): AircraftTable {
  const grids = new Map<number, TableGrid | CoreError>();
  const arrange = (inputs: number): TableGrid | CoreError => {
    try {
      return gridOf(table, inputs);
    } catch (thrown) {
      if (thrown instanceof CoreError) return thrown;
      throw thrown;
    }
  };
  return {
    withInputs: (inputs) => {
      const grid = grids.get(inputs) ?? arrange(inputs);
      grids.set(inputs, grid);
      if (grid instanceof CoreError) throw grid;
      return grid;
    },
  };
}
