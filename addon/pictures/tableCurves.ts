// The curves of an aircraft's table, to be compared with the manual's at a glance: one picture for each figure and weight, a line for each value
// of the next input, and the points that stand out of line as marks of their own.
import type { FromColumn, InputColumn, TypedTable } from '../../core/manual/columns';
import { answersOf, figureOf, type Lookup } from '../../core/manual/figure';
import { checkTable } from '../../core/manual/tableCheck';
import { usualUnits } from '../../core/manual/tableUnits';
import type { DrawnSeries, ScatterRequest } from './scatterPicture';
import type { Point } from './svg';

/** Title of the marks. */
export const standsOut = 'stands out';

const withUnit = (words: string, unit: string | undefined): string => (unit === undefined ? words : `${words}, ${unit}`);
const unitOf = (input: InputColumn | FromColumn): string | undefined => (input.kind === 'from' ? undefined : (input.unit ?? usualUnits[input.role]));
const valueWords = (input: InputColumn | FromColumn | undefined, value: number): string =>
  `${value}${input === undefined || unitOf(input) === undefined ? '' : ` ${unitOf(input)}`}`;

const distinct = (values: readonly (number | undefined)[]): number[] =>
  [...new Set(values)].filter((value) => value !== undefined).sort((one, other) => one - other);

interface Axes {
  readonly x: number;
  /** Undefined in a table of one input. */
  readonly line: number | undefined;
  readonly others: readonly number[];
}

/** The input with the most values lies along the picture, the next one tells the lines apart; a curve lies along its last input. */
function axesOf({ inputs, table, curves }: Lookup): Axes {
  const counts = inputs.map((_, index) => ({ index, count: distinct(table.rows.map((row) => row[index])).length }));
  const ranked = curves ? counts.reverse() : counts.sort((one, other) => other.count - one.count);
  const [x, line, ...others] = ranked.map(({ index }) => index);
  return { x: x ?? 0, line, others: others.sort() };
}

/** Places of the rows that the check names. */
function strangeRows({ table, inputs, curves }: Lookup): ReadonlySet<number> {
  const { apart, against } = checkTable(table, inputs.length, { inputs, curves });
  return new Set([...apart.map(({ at }) => at.row), ...(apart.length > 0 ? [] : against.flatMap(({ from, to }) => [from.row, to.row]))]);
}

interface Placed extends Point {
  readonly cells: readonly (number | undefined)[];
  readonly strange: boolean;
}

function pointsOf(lookup: Lookup, { x }: Axes, strange: ReadonlySet<number>): Placed[] {
  const { table, inputs } = lookup;
  return table.rows.flatMap((cells, row) => {
    const [at, value] = [cells[x], cells[inputs.length]];
    return at === undefined || value === undefined ? [] : [{ x: at, y: value, cells, strange: strange.has(table.places[row] ?? 0) }];
  });
}

const rising = (points: readonly Placed[]): Point[] => [...points].sort((one, other) => one.x - other.x);

function seriesOf(points: readonly Placed[], { inputs }: Lookup, { line }: Axes): DrawnSeries[] {
  const lines = line === undefined ? [undefined] : distinct(points.map(({ cells }) => cells[line]));
  const drawn = lines.map((value): DrawnSeries => {
    const own = points.filter(({ cells }) => value === undefined || cells[line ?? 0] === value);
    return { title: value === undefined ? 'the table' : valueWords(inputs[line ?? 0], value), drawn: 'line', runs: [rising(own)] };
  });
  const strange = points.filter((point) => point.strange);
  return strange.length === 0 ? drawn : [...drawn, { title: standsOut, drawn: 'points', runs: [strange] }];
}

function picturesOf(lookup: Lookup, header: string, unit: string | undefined): ScatterRequest[] {
  const axes = axesOf(lookup);
  const points = pointsOf(lookup, axes, strangeRows(lookup));
  const keyOf = ({ cells }: Placed): string => axes.others.map((index) => cells[index]).join(' ');
  const along = lookup.inputs[axes.x];
  return [...new Set(points.map(keyOf))].map((key): ScatterRequest => {
    const own = points.filter((point) => keyOf(point) === key);
    const at = axes.others.map((index) => `${lookup.inputs[index]?.header ?? ''} ${valueWords(lookup.inputs[index], own[0]?.cells[index] ?? 0)}`);
    return {
      title: [header, ...at].join(', '),
      description: `${header} against ${along?.header ?? ''}, ${own.length} points.`,
      xTitle: withUnit(along?.header ?? '', along === undefined ? undefined : unitOf(along)),
      yTitle: withUnit(header, unit),
      series: seriesOf(own, lookup, axes),
    };
  });
}

/** Every picture of the table, its further curves included. */
export function tableCurves(typed: TypedTable): ScatterRequest[] {
  return answersOf(typed.blocks).flatMap((header) => {
    const { base, steps, unit } = figureOf(typed, header, 'by-heading');
    return [base, ...steps].flatMap((lookup) => picturesOf(lookup, header, unit));
  });
}
