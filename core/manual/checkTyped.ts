// Looks a typed table over in whatever form it is: numbers under headings as one whole, anything else figure by figure.
import { byHeading } from './byHeading';
import { isInput, type InputColumn, type TypedTable } from './columns';
import { answersOf, figureOf, type InputsAsked } from './figure';
import type { NumberTable } from './grid';
import { checkTable, type TableCheck } from './tableCheck';

export interface TypedCheck {
  readonly checks: readonly TableCheck[];
  /** Inputs for which one weight alone is given, and inputs without a number in any row. */
  readonly upTo: readonly InputColumn[];
  readonly absent: readonly InputColumn[];
}

/** The inputs first, without those that are blank in every row; then the answers. */
function reordered(plain: NumberTable, inputs: readonly number[]): NumberTable {
  const places = [...inputs, ...plain.headers.map((_, index) => index).filter((index) => !inputs.includes(index))];
  return { ...plain, headers: places.map((place) => plain.headers[place] ?? ''), rows: plain.rows.map((row) => places.map((place) => row[place])) };
}

const isBlankIn =
  ({ rows }: NumberTable) =>
  (index: number): boolean =>
    rows.every((row) => row[index] === undefined);

function checkPlain(plain: NumberTable, typed: TypedTable, asked: InputsAsked): TypedCheck {
  const [block] = typed.blocks;
  const columns = block === undefined ? [] : asked === 'by-heading' ? byHeading(block, '').columns : block.columns;
  const inputs = columns.flatMap((column, index) => ((asked === 'by-heading' ? isInput(column) : index < asked) ? [index] : []));
  const known = (index: number): InputColumn | undefined => {
    const column = columns[index];
    return column !== undefined && isInput(column) ? column : undefined;
  };
  const blank = inputs.filter((index) => known(index) !== undefined && isBlankIn(plain)(index));
  const left = inputs.filter((index) => !blank.includes(index));
  if (left.length === 0 || (blank.length === 0 && asked !== 'by-heading')) {
    const count = asked === 'by-heading' ? inputs.length : asked;
    return { checks: [checkTable(plain, count, { inputs: inputs.flatMap((index) => known(index) ?? []), curves: false })], upTo: [], absent: [] };
  }
  const dropped: NumberTable = reordered(plain, left);
  const kept = dropped.headers.map((header) => !blank.some((index) => plain.headers[index] === header));
  const table = {
    ...dropped,
    headers: dropped.headers.filter((_, index) => kept[index]),
    rows: dropped.rows.map((row) => row.filter((_, index) => kept[index])),
  };
  return {
    checks: [checkTable(table, left.length, { inputs: left.flatMap((index) => known(index) ?? []), curves: false })],
    upTo: [],
    absent: blank.flatMap((index) => known(index) ?? []),
  };
}

export function checkTyped(typed: TypedTable, asked: InputsAsked): TypedCheck {
  if (typed.plain !== undefined && !typed.blocks.some(({ columns }) => columns.some((column) => column.kind === 'answer' && column.at !== undefined)))
    return checkPlain(typed.plain, typed, asked);
  const figures = answersOf(typed.blocks).map((header) => figureOf(typed, header, 'by-heading'));
  const checks = figures
    .flatMap(({ base, steps }) => [base, ...steps])
    .map(({ table, inputs, curves }) => checkTable(table, inputs.length, { inputs, curves }));
  const used = figures.flatMap(({ base, steps }) => [base, ...steps].flatMap(({ inputs }) => inputs));
  const all = figures[0]?.inputs ?? [];
  return {
    checks,
    upTo: all.filter(({ upTo }) => upTo),
    absent: all.filter(({ role }) => !used.some((input) => input.kind === 'input' && input.role === role)),
  };
}
