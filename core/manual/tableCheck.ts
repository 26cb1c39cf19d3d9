// Looks a typed table over before it is trusted: is the grid whole, is every cell filled, does a value stand out of line?
import type { GridCoordinate } from '../basics/errors';
import type { FromColumn, InputColumn } from './columns';
import { stepsOnCurves, apartOnCurves, lonePoints } from './curveCheck';
import { arrange, inputsOfRow, pointOf, strideOf, type Arrangement, type NumberTable, type TableGrid } from './grid';
import { outOfLine } from './outOfLine';
import { converted, convertedDifference, usualUnits } from './tableUnits';
import type { Verdict } from '../basics/verdict';

/** A row by its place within the table, the header being row 1, and by its inputs: how its owner finds it in the sheet. */
export interface RowOfTable {
  readonly row: number;
  readonly point: readonly GridCoordinate[];
}

export interface BlankAnswers {
  readonly header: string;
  readonly rows: readonly RowOfTable[];
}

/** A step between neighbouring rows that goes against nearly all others along the same input. */
export interface StepAgainst {
  readonly header: string;
  readonly along: string;
  readonly from: RowOfTable & { readonly value: number };
  readonly to: RowOfTable & { readonly value: number };
}

/** A value that its neighbours contradict. */
export interface ValueApart {
  readonly header: string;
  readonly at: RowOfTable;
  readonly value: number;
  readonly expected: number;
}

/** An input that no aircraft of this kind meets: digits or unit? */
export interface ValueBeyond {
  readonly header: string;
  readonly at: RowOfTable;
  readonly value: number;
}

export interface TableCheck {
  /** Each curve has points of its own, so that no grid is asked for. */
  readonly curves: boolean;
  /** Curves of a single point, which can be read at that point alone. */
  readonly lone: readonly RowOfTable[];
  readonly beyond: readonly ValueBeyond[];
  readonly axes: readonly { readonly header: string; readonly lines: number }[];
  readonly missingCount: number;
  /** The first of the missing grid points. */
  readonly missing: readonly (readonly GridCoordinate[])[];
  readonly repeated: readonly { readonly first: RowOfTable; readonly second: RowOfTable }[];
  readonly unplacedRows: readonly RowOfTable[];
  readonly blanks: readonly BlankAnswers[];
  readonly against: readonly StepAgainst[];
  readonly apart: readonly ValueApart[];
  readonly verdict: Verdict;
}

/** Missing points named one by one; beyond this their number says enough. */
const mostNamed = 5;
/** A table with fewer steps along an input shows no habit to go against. @source common-practice */
const fewestSteps = 10;
/** Steps one way, of all steps, from which the others are slips. @source common-practice */
const habit = 0.9;

function missingPoints(grid: TableGrid): Pick<TableCheck, 'missing' | 'missingCount'> {
  const points = grid.axes.reduce((product, axis) => product * axis.length, 1);
  const missing: GridCoordinate[][] = [];
  for (let key = 0; key < points && missing.length < mostNamed; key += 1) {
    if (!grid.rowAt.has(key)) missing.push(pointOf(grid, key));
  }
  return { missing, missingCount: points - grid.rowAt.size };
}

export interface Step {
  readonly from: number;
  readonly to: number;
  readonly rises: boolean;
}

/** Every step of a column from a row to the next one along an input; level steps have no direction. */
function stepsAlong(grid: TableGrid, column: number, input: number): Step[] {
  const steps: Step[] = [];
  const lines = grid.axes[input]?.length ?? 0;
  const stride = strideOf(grid, input);
  for (const [key, from] of grid.rowAt) {
    const atEnd = Math.floor(key / stride) % lines === lines - 1;
    const to = atEnd ? undefined : grid.rowAt.get(key + stride);
    const low = grid.table.rows[from]?.[column];
    const high = to === undefined ? undefined : grid.table.rows[to]?.[column];
    if (to !== undefined && low !== undefined && high !== undefined && low !== high) steps.push({ from, to, rises: high > low });
  }
  return steps;
}

/** The few steps against the many. */
function againstAmong(grid: TableGrid, column: number, input: number, steps: readonly Step[]): StepAgainst[] {
  const rising = steps.filter(({ rises }) => rises).length;
  const most = Math.max(rising, steps.length - rising);
  if (steps.length < fewestSteps || most < habit * steps.length) return [];
  const { headers, rows } = grid.table;
  const others = steps.filter(({ rises }) => rises !== rising > steps.length / 2);
  const end = (row: number) => ({ ...rowOf(grid.table, grid.inputs, row), value: rows[row]?.[column] ?? 0 });
  return others.map(({ from, to }) => ({ header: headers[column] ?? '', along: headers[input] ?? '', from: end(from), to: end(to) }));
}

const rowOf = (table: NumberTable, inputs: number, row: number): RowOfTable => ({
  row: table.places[row] ?? 0,
  point: inputsOfRow(table, inputs, row),
});

function blankAnswers(table: NumberTable, inputs: number, columns: readonly number[]): BlankAnswers[] {
  const { headers, rows } = table;
  const rowsBlank = (column: number): RowOfTable[] => rows.flatMap((cells, row) => (cells[column] === undefined ? [rowOf(table, inputs, row)] : []));
  return columns.map((column) => ({ header: headers[column] ?? '', rows: rowsBlank(column) })).filter(({ rows: blank }) => blank.length > 0);
}

function verdictOf(check: Omit<TableCheck, 'verdict'>): Verdict {
  if (check.repeated.length > 0 || check.unplacedRows.length > 0) return 'NO';
  const doubts = [check.blanks, check.against, check.apart, check.lone, check.beyond];
  return check.missingCount > 0 || doubts.some((found) => found.length > 0) ? 'CHECK' : 'OK';
}

/** Between which values the inputs of light aircraft lie, in feet, degrees Celsius and knots. @source common-practice */
const usual: Readonly<Record<string, readonly [number, number]>> = {
  weight: [1, 1_000_000],
  'pressure altitude': [-2000, 30_000],
  'density altitude': [-5000, 35_000],
  temperature: [-60, 60],
  'isa deviation': [-60, 60],
  headwind: [-30, 80],
};
function beyondUsual(table: NumberTable, inputs: readonly (InputColumn | FromColumn)[]): ValueBeyond[] {
  return inputs.flatMap((input, index) => {
    const bounds = input.kind === 'from' ? undefined : usual[input.role];
    if (input.kind === 'from' || bounds === undefined) return [];
    const inUsual = (value: number): number =>
      input.role === 'isa deviation' ? convertedDifference(value, input.unit ?? '°C', '°C') : converted(value, input.unit, usualUnits[input.role]);
    return table.rows.flatMap((row, at) => {
      const value = row[index];
      const outside = value !== undefined && (inUsual(value) < bounds[0] || inUsual(value) > bounds[1]);
      return outside ? [{ header: input.header, at: rowOf(table, inputs.length, at), value }] : [];
    });
  });
}

export interface Checked {
  /** What the first columns are, where it is known. */
  readonly inputs: readonly (InputColumn | FromColumn)[];
  readonly curves: boolean;
}

function findings({ grid, unplaced, repeated }: Arrangement, { inputs: known, curves }: Checked): Omit<TableCheck, 'verdict'> {
  const { headers } = grid.table;
  const placeOf = (row: number): RowOfTable => rowOf(grid.table, grid.inputs, row);
  const columns = headers.map((_, index) => index).filter((index) => index >= grid.inputs && headers[index] !== '');
  const inputs = grid.axes.map((_, index) => index);
  return {
    axes: grid.axes.map((axis, index) => ({ header: headers[index] ?? '', lines: axis.length })),
    curves,
    lone: curves ? lonePoints(grid.table, grid.inputs).map(placeOf) : [],
    beyond: beyondUsual(grid.table, known),
    ...(curves ? { missing: [], missingCount: 0 } : missingPoints(grid)),
    repeated: repeated.map(({ first, second }) => ({ first: placeOf(first), second: placeOf(second) })),
    unplacedRows: unplaced.map(({ row }) => placeOf(row)),
    blanks: blankAnswers(grid.table, grid.inputs, columns),
    apart: columns.flatMap((column) =>
      (curves ? apartOnCurves(grid, column) : outOfLine(grid, column)).map(({ row, value, expected }) => ({
        header: headers[column] ?? '',
        at: placeOf(row),
        value,
        expected,
      })),
    ),
    against: columns.flatMap((column) =>
      inputs.flatMap((input) => {
        if (!curves) return againstAmong(grid, column, input, stepsAlong(grid, column, input));
        return input === grid.inputs - 1 ? againstAmong(grid, column, input, stepsOnCurves(grid, column)) : [];
      }),
    ),
  };
}

/** NO where the table cannot be read at all, CHECK where parts of it cannot or look wrong, OK where it is whole. */
export function checkTable(table: NumberTable, inputs: number, checked: Checked = { inputs: [], curves: false }): TableCheck {
  const found = findings(arrange(table, inputs), checked);
  return { ...found, verdict: verdictOf(found) };
}
