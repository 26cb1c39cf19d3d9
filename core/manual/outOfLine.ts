// Values of a typed table that stand apart from their neighbours, though the order of the table is kept: 1,480 for 1,840.
import { strideOf, type TableGrid } from './grid';

export interface OutOfLine {
  /** Index of the row in the table. */
  readonly row: number;
  readonly value: number;
  /** What its neighbours would make of it. */
  readonly expected: number;
}

/** A table with fewer rows shows no line to stand out of. @source common-practice */
const fewestRows = 12;
/** Parts of its size by which a value must stand apart, and how many times the middle one of all. @source common-practice */
const leastApart = 0.07;
const timesMiddle = 4;
/** Of the column's whole range: near 0 a part of the value itself would say nothing. */
const smallestScale = 0.15;

interface Guess {
  readonly expected: number;
  readonly apart: number;
}

/** By the straight line through the two neighbours along an input, or, at an end, the two next ones. */
function guessAlong(grid: TableGrid, column: number, key: number, input: number, scale: number): Guess | undefined {
  const axis = grid.axes[input] ?? [];
  const stride = strideOf(grid, input);
  const line = Math.floor(key / stride) % axis.length;
  if (axis.length < 3) return undefined;
  const [one, other] = line === 0 ? [1, 2] : line === axis.length - 1 ? [-1, -2] : [-1, 1];
  const valueAt = (step: number): number | undefined => grid.table.rows[grid.rowAt.get(key + step * stride) ?? -1]?.[column];
  const [value, first, second] = [valueAt(0), valueAt(one), valueAt(other)];
  const [at, atFirst, atSecond] = [axis[line], axis[line + one], axis[line + other]];
  if (value === undefined || first === undefined || second === undefined || at === undefined || atFirst === undefined || atSecond === undefined)
    return undefined;
  const expected = first + ((second - first) * (at - atFirst)) / (atSecond - atFirst);
  return { expected, apart: Math.abs(value - expected) / Math.max(Math.abs(expected), scale) };
}

/** Along the input where it stands apart least: curves bend along one, a slip stands apart along all. */
function leastGuess(grid: TableGrid, column: number, key: number, scale: number): Guess | undefined {
  const guesses = grid.axes.flatMap((_, input) => guessAlong(grid, column, key, input, scale) ?? []);
  return guesses.sort((left, right) => left.apart - right.apart)[0];
}

const middle = (values: readonly number[]): number => [...values].sort((left, right) => left - right)[Math.floor(values.length / 2)] ?? 0;

export function outOfLine(grid: TableGrid, column: number): OutOfLine[] {
  const values = grid.table.rows.flatMap((row) => row[column] ?? []);
  if (values.length < fewestRows) return [];
  const scale = smallestScale * (Math.max(...values) - Math.min(...values));
  if (scale === 0) return [];
  const guesses = [...grid.rowAt].flatMap(([key, row]) => {
    const guess = leastGuess(grid, column, key, scale);
    return guess === undefined ? [] : [{ row, ...guess }];
  });
  const bound = Math.max(leastApart, timesMiddle * middle(guesses.map(({ apart }) => apart)));
  return guesses
    .filter(({ apart }) => apart > bound)
    .map(({ row, expected }) => ({
      row,
      value: grid.table.rows[row]?.[column] ?? 0,
      expected,
    }));
}
