// Looks over curves that have points of their own: a step against the others, a point off its curve, a curve of one point.
import { curvesOf, type CurveNode } from './curves';
import type { NumberTable, TableGrid } from './grid';
import type { OutOfLine } from './outOfLine';

/** The rows of each curve, in the order of the last input. */
export function curveRows(table: NumberTable, inputs: number): number[][] {
  const leaves = ({ below }: CurveNode): number[][] => {
    const rows = below.filter((next) => typeof next === 'number');
    return rows.length > 0 ? [rows] : below.flatMap((next) => (typeof next === 'number' ? [] : leaves(next)));
  };
  return leaves(curvesOf(placed(table, inputs), inputs)).map((rows) => rows.map((row) => placedRows(table, inputs)[row] ?? 0));
}

/** Rows without a blank input. */
const placedRows = (table: NumberTable, inputs: number): number[] =>
  table.rows.flatMap((cells, row) => (cells.slice(0, inputs).includes(undefined) ? [] : [row]));

const placed = (table: NumberTable, inputs: number): NumberTable => ({
  ...table,
  rows: placedRows(table, inputs).map((row) => table.rows[row] ?? []),
});

export const lonePoints = (table: NumberTable, inputs: number): number[] =>
  inputs < 2 ? [] : curveRows(table, inputs).flatMap((rows) => (rows.length === 1 ? rows : []));

/** Every step from a point of a curve to the next. */
export function stepsOnCurves(
  { table, inputs }: TableGrid,
  column: number,
): { readonly from: number; readonly to: number; readonly rises: boolean }[] {
  return curveRows(table, inputs).flatMap((rows) =>
    rows.slice(1).flatMap((to, index) => {
      const from = rows[index] ?? to;
      const [low, high] = [table.rows[from]?.[column], table.rows[to]?.[column]];
      return low === undefined || high === undefined || low === high ? [] : [{ from, to, rises: high > low }];
    }),
  );
}

/** A point by this part of its size off the line through its neighbours, and four times as far as the middle one. @source common-practice */
const leastApart = 0.07;
const timesMiddle = 4;
const fewestPoints = 6;

export function apartOnCurves({ table, inputs }: TableGrid, column: number): OutOfLine[] {
  const at = (row: number): number => table.rows[row]?.[inputs - 1] ?? 0;
  const value = (row: number): number | undefined => table.rows[row]?.[column];
  const guesses = curveRows(table, inputs).flatMap((rows) =>
    rows.slice(1, -1).flatMap((row, index) => {
      const [before, after] = [rows[index] ?? row, rows[index + 2] ?? row];
      const [low, here, high] = [value(before), value(row), value(after)];
      if (low === undefined || here === undefined || high === undefined || at(after) === at(before)) return [];
      const expected = low + ((high - low) * (at(row) - at(before))) / (at(after) - at(before));
      return [{ row, value: here, expected, apart: Math.abs(here - expected) / Math.max(Math.abs(expected), 1e-9) }];
    }),
  );
  if (guesses.length < fewestPoints) return [];
  const sizes = guesses.map(({ apart }) => apart).sort((one, other) => one - other);
  const bound = Math.max(leastApart, timesMiddle * (sizes[Math.floor(sizes.length / 2)] ?? 0));
  return guesses.filter(({ apart }) => apart > bound).map(({ row, value: here, expected }) => ({ row, value: here, expected }));
}
