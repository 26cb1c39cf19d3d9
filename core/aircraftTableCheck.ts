// Looks a typed table over before it is trusted: is the grid whole, is every cell filled, does a value stand out of line?
import type { GridCoordinate } from './errors';
import { arrange, pointOf, strideOf, type Arrangement, type NumberTable, type TableGrid } from './tableGrid';
import type { Verdict } from './verdict';

export interface BlankAnswers {
  readonly header: string;
  /** Places of the rows, as the table's owner sees them. */
  readonly rows: readonly number[];
}

/** A step between neighbouring rows that goes against nearly all others along the same input. */
export interface StepAgainst {
  readonly header: string;
  readonly along: string;
  readonly fromRow: number;
  readonly toRow: number;
}

export interface TableCheck {
  readonly axes: readonly { readonly header: string; readonly lines: number }[];
  readonly missingCount: number;
  /** The first of the missing grid points. */
  readonly missing: readonly (readonly GridCoordinate[])[];
  readonly repeated: readonly { readonly firstRow: number; readonly secondRow: number }[];
  readonly unplacedRows: readonly number[];
  readonly blanks: readonly BlankAnswers[];
  readonly against: readonly StepAgainst[];
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

interface Step {
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

function againstAlong(grid: TableGrid, column: number, input: number): StepAgainst[] {
  const steps = stepsAlong(grid, column, input);
  const rising = steps.filter(({ rises }) => rises).length;
  const most = Math.max(rising, steps.length - rising);
  if (steps.length < fewestSteps || most < habit * steps.length) return [];
  const { headers, places } = grid.table;
  const others = steps.filter(({ rises }) => rises !== rising > steps.length / 2);
  return others.map(({ from, to }) => ({ header: headers[column] ?? '', along: headers[input] ?? '', fromRow: places[from] ?? 0, toRow: places[to] ?? 0 }));
}

function blankAnswers({ headers, rows, places }: NumberTable, columns: readonly number[]): BlankAnswers[] {
  const rowsBlank = (column: number): number[] => places.filter((_, row) => rows[row]?.[column] === undefined);
  return columns.map((column) => ({ header: headers[column] ?? '', rows: rowsBlank(column) })).filter(({ rows: blank }) => blank.length > 0);
}

function verdictOf(check: Omit<TableCheck, 'verdict'>): Verdict {
  if (check.repeated.length > 0 || check.unplacedRows.length > 0) return 'NO';
  return check.missingCount > 0 || check.blanks.length > 0 || check.against.length > 0 ? 'CHECK' : 'OK';
}

function findings({ grid, unplaced, repeated }: Arrangement): Omit<TableCheck, 'verdict'> {
  const { headers, places } = grid.table;
  const placeOf = (row: number): number => places[row] ?? 0;
  const columns = headers.map((_, index) => index).filter((index) => index >= grid.inputs && headers[index] !== '');
  const inputs = grid.axes.map((_, index) => index);
  return {
    axes: grid.axes.map((axis, index) => ({ header: headers[index] ?? '', lines: axis.length })),
    ...missingPoints(grid),
    repeated: repeated.map(({ first, second }) => ({ firstRow: placeOf(first), secondRow: placeOf(second) })),
    unplacedRows: unplaced.map(({ row }) => placeOf(row)),
    blanks: blankAnswers(grid.table, columns),
    against: columns.flatMap((column) => inputs.flatMap((input) => againstAlong(grid, column, input))),
  };
}

/** NO where the table cannot be read at all, CHECK where parts of it cannot or look wrong, OK where it is whole. */
export function checkTable(table: NumberTable, inputs: number): TableCheck {
  const found = findings(arrange(table, inputs));
  return { ...found, verdict: verdictOf(found) };
}
