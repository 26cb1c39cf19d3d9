// Reads curves of a chart, each with points of its own: along a curve by straight lines between its points, and between
// two neighbouring curves by a straight line at the same place. Never beyond the ends of a curve that it needs.
import { CoreError, type GridCoordinate } from '../basics/errors';
import { bracketOn, isSame, type NumberTable } from './grid';

/** The rows of a table as a tree: the first input's values rising, under each the second's, and so on down to rows. */
export interface CurveNode {
  readonly values: readonly number[];
  readonly below: readonly (CurveNode | number)[];
}

export interface Reading {
  readonly value: number;
  /** Indices of the rows that the value was read from. */
  readonly rows: readonly number[];
}

function nodeOf(table: NumberTable, inputs: number, rows: readonly number[], input: number): CurveNode {
  const at = (row: number): number => table.rows[row]?.[input] ?? 0;
  const rising = [...rows].sort((one, other) => at(one) - at(other));
  const groups: number[][] = [];
  for (const row of rising) {
    const last = groups[groups.length - 1];
    if (last?.[0] !== undefined && isSame(at(last[0]), at(row))) last.push(row);
    else groups.push([row]);
  }
  const below = groups.map((group) => (input + 1 < inputs ? nodeOf(table, inputs, group, input + 1) : (group[0] ?? 0)));
  return { values: groups.map(([first = 0]) => at(first)), below };
}

/** Rows that stand for one place twice are found by `arrange`, which looks at them first. */
export const curvesOf = (table: NumberTable, inputs: number): CurveNode =>
  nodeOf(
    table,
    inputs,
    table.rows.map((_, row) => row),
    0,
  );

function between(low: Reading, high: Reading, fraction: number): Reading {
  return { value: low.value + (high.value - low.value) * fraction, rows: [...low.rows, ...high.rows] };
}

/** `along`: where on the inputs before this one the curve stands. */
export function readCurves(
  table: NumberTable,
  node: CurveNode,
  at: readonly number[],
  valueOf: (row: number) => number,
  along: readonly GridCoordinate[] = [],
): Reading {
  const input = along.length;
  const header = table.headers[input] ?? '';
  const received = at[input] ?? 0;
  const { values, below } = node;
  const bracket = bracketOn(values, received);
  if (bracket === undefined)
    throw new CoreError('table-outside', {
      inputNumber: input + 1,
      header,
      low: values[0] ?? 0,
      high: values[values.length - 1] ?? 0,
      received,
      along,
    });
  const one = (line: number): Reading => {
    const next = below[line] ?? 0;
    if (typeof next === 'number') return { value: valueOf(next), rows: [next] };
    return readCurves(table, next, at, valueOf, [...along, { header, value: values[line] ?? 0 }]);
  };
  return bracket.low === bracket.high ? one(bracket.low) : between(one(bracket.low), one(bracket.high), bracket.fraction);
}
