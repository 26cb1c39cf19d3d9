// Reads a table of an aircraft's manual: its first columns are the inputs, in order, and its rows stand on a grid.
// Interpolates in a straight line along each input. Never extrapolates, never fills in a grid point that is not there.
import { CoreError } from '../basics/errors';
import { arrange, bracketOn, inputsOfRow, nextKey, plainHeader, pointOf, type Bracket, type NumberTable, type TableGrid } from './grid';

/** A column of answers. Where they are distances, 0 or less is no answer: such a cell was never filled in. */
export interface AnswerColumn {
  readonly index: number;
  readonly kind: 'number' | 'distance';
}

/** The answer column with this header. */
export function columnOf({ table, inputs, plainHeaders }: TableGrid, wanted: string, kind: AnswerColumn['kind']): AnswerColumn {
  const plain = plainHeader(wanted);
  const index = plain === '' ? -1 : plainHeaders.indexOf(plain);
  if (index < 0) throw new CoreError('table-header-unknown', { wanted, headers: table.headers.slice(inputs).filter((header) => header !== '') });
  if (index < inputs) throw new CoreError('table-header-bad', { reason: 'wanted-is-input', headers: table.headers, inputs });
  return { index, kind };
}

/** Arranges the rows on the grid. Throws where a row has no place on it, or two rows share one. */
export function gridOf(table: NumberTable, inputs: number): TableGrid {
  const {
    grid,
    unplaced: [lost],
    repeated: [again],
  } = arrange(table, inputs);
  if (lost !== undefined)
    throw new CoreError('table-bad-cell', {
      needed: 'number',
      header: table.headers[lost.input] ?? '',
      row: table.places[lost.row] ?? 0,
      point: inputsOfRow(table, inputs, lost.row),
      received: '',
    });
  if (again !== undefined)
    throw new CoreError('table-repeated-row', {
      point: inputsOfRow(table, inputs, again.first),
      firstRow: table.places[again.first] ?? 0,
      secondRow: table.places[again.second] ?? 0,
    });
  return grid;
}

/** The table's own value in a row. */
export function valueAtRow(grid: TableGrid, { index, kind }: AnswerColumn, row: number): number {
  const value = grid.table.rows[row]?.[index];
  if (value === undefined || (kind === 'distance' && value <= 0)) {
    const header = grid.table.headers[index] ?? '';
    const place = { row: grid.table.places[row] ?? 0, point: inputsOfRow(grid.table, grid.inputs, row) };
    throw new CoreError('table-bad-cell', { needed: kind, header, ...place, received: value ?? '' });
  }
  return value;
}

/** The table's own value at a grid point. */
function valueAt(grid: TableGrid, column: AnswerColumn, key: number): number {
  const row = grid.rowAt.get(key);
  if (row === undefined) throw new CoreError('table-missing-point', { point: pointOf(grid, key) });
  return valueAtRow(grid, column, row);
}

/** The rows at the corners between which a value is read. */
export function rowsAt({ axes, rowAt }: TableGrid, brackets: readonly Bracket[]): number[] {
  const keys = brackets.reduce<number[]>(
    (sofar, { low, high }, input) => sofar.flatMap((key) => [...new Set([low, high])].map((line) => nextKey(axes, key, input, line))),
    [0],
  );
  return keys.flatMap((key) => rowAt.get(key) ?? []);
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
  throw new CoreError('table-outside', {
    inputNumber: input + 1,
    header: table.headers[input] ?? '',
    low,
    high: axis[axis.length - 1] ?? 0,
    received: value,
  });
}

/** The value where it is known already where each input lies. */
export const readBrackets = (grid: TableGrid, column: AnswerColumn, brackets: readonly Bracket[]): number => blend(grid, column, brackets, 0, 0);

/**
 * The value of a column at these inputs, one for each input column. Multilinear: along any one input a straight line
 * between the table's rows. @source phak, performance charts: interpolation between the rows of a table.
 */
export const readGrid = (grid: TableGrid, column: AnswerColumn, inputs: readonly number[]): number =>
  readBrackets(
    grid,
    column,
    inputs.map((value, input) => bracketOf(grid, input, value)),
  );
