// Reads a table of an aircraft's manual: its first columns are the inputs, in order, and its rows stand on a grid.
// Interpolates in a straight line along each input. Never extrapolates, never fills in a grid point that is not there.
import { CoreError } from './errors';
import { arrange, bracketOn, nextKey, plainHeader, pointOf, type Bracket, type NumberTable, type TableGrid } from './tableGrid';

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
  const { grid, unplaced: [lost], repeated: [again] } = arrange(table, inputs);
  if (lost !== undefined) throw new CoreError('table-bad-cell', { needed: 'number', header: table.headers[lost.input] ?? '', row: table.places[lost.row] ?? 0, received: '' });
  if (again !== undefined) throw new CoreError('table-repeated-row', { firstRow: table.places[again.first] ?? 0, secondRow: table.places[again.second] ?? 0 });
  return grid;
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

/** The value where it is known already where each input lies. */
export const readBrackets = (grid: TableGrid, column: AnswerColumn, brackets: readonly Bracket[]): number => blend(grid, column, brackets, 0, 0);

/**
 * The value of a column at these inputs, one for each input column. Multilinear: along any one input a straight line
 * between the table's rows. @source phak, performance charts: interpolation between the rows of a table.
 */
export const readGrid = (grid: TableGrid, column: AnswerColumn, inputs: readonly number[]): number =>
  readBrackets(grid, column, inputs.map((value, input) => bracketOf(grid, input, value)));

/** A table that arranges itself once for each number of inputs asked of it, however many rows ask. */
export interface AircraftTable {
  readonly table: NumberTable;
  readonly withInputs: (inputs: number) => TableGrid;
}

export function openTable(table: NumberTable): AircraftTable {
  const grids = new Map<number, TableGrid | CoreError>();
  const arranged = (inputs: number): TableGrid | CoreError => {
    try {
      return gridOf(table, inputs);
    } catch (thrown) {
      if (thrown instanceof CoreError) return thrown;
      throw thrown;
    }
  };
  return {
    table,
    withInputs: (inputs) => {
      const grid = grids.get(inputs) ?? arranged(inputs);
      grids.set(inputs, grid);
      if (grid instanceof CoreError) throw grid;
      return grid;
    },
  };
}

/** What a table does not cover leaves a case unknown; any other fault of the table is its owner's to mend. */
export const leavesUnknown: readonly string[] = ['table-outside', 'table-missing-point', 'table-bad-cell'];

/** The table's answer for a brief, or why it has none for this case. The inputs are its first columns, in order. */
export function readOrReason(table: AircraftTable, wanted: string, kind: AnswerColumn['kind'], inputs: readonly number[]): number | CoreError {
  try {
    const grid = table.withInputs(inputs.length);
    return readGrid(grid, columnOf(grid, wanted, kind), inputs);
  } catch (thrown) {
    if (thrown instanceof CoreError && leavesUnknown.includes(thrown.code)) return thrown;
    throw thrown;
  }
}
