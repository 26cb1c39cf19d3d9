// One figure of a table (ground roll, say) out of all blocks that give it: one grid or one set of curves, and the further curves of a chain.
import { CoreError } from '../basics/errors';
import { byHeading } from './byHeading';
import { plainHeader, type NumberTable, type TableGrid } from './grid';
import { gridOf } from './table';
import { isInput, keyOfInput, type AnswerColumnHead, type FromColumn, type InputColumn, type TableBlock, type TypedTable } from './columns';
import { curvesOf, type CurveNode } from './curves';
import { usualUnits, type TableUnit } from './tableUnits';

/** Points by their inputs. */
export interface Lookup {
  readonly inputs: readonly (InputColumn | FromColumn)[];
  readonly table: NumberTable;
  /** The manual's note at each row. */
  readonly notes: readonly string[];
  readonly curves: boolean;
}

/** Arranged for reading. */
export interface ReadyLookup extends Lookup {
  readonly grid: TableGrid;
  readonly tree: CurveNode | undefined;
}

export interface Figure<Ready extends Lookup = Lookup> {
  readonly header: string;
  readonly unit: TableUnit | undefined;
  /** All inputs of the table in their order, also those without a number in any row, which the figure does not depend on. */
  readonly inputs: readonly InputColumn[];
  readonly base: Ready;
  /** The further curves, in order: each is entered with the answer before it. */
  readonly steps: readonly Ready[];
}

/** How many first columns are inputs; or those that are inputs by their headings. */
export type InputsAsked = number | 'by-heading';

/** Inputs of the block that stand in its rows, or in its heading for all of them. */
function inputsIn({ columns, rows }: TableBlock): { readonly input: InputColumn; readonly index: number }[] {
  return columns.flatMap((column, index) =>
    isInput(column) && (column.constant !== undefined || column.role === 'other' || rows.some((row) => row[index] !== undefined))
      ? [{ input: column, index }]
      : [],
  );
}

const isNamed =
  (wanted: string) =>
  (column: TableBlock['columns'][number]): column is AnswerColumnHead =>
    column.kind === 'answer' && [column.header, column.typed].some((name) => plainHeader(name) === plainHeader(wanted));

interface Points {
  readonly inputs: readonly (InputColumn | FromColumn)[];
  readonly rows: readonly { readonly cells: readonly (number | undefined)[]; readonly place: number; readonly note: string }[];
}

/** The block's points of one answer column: its inputs in order, the one across last, then the answer. */
function pointsOf(block: TableBlock, answer: AnswerColumnHead): Points {
  const from = block.columns.findIndex(({ kind }) => kind === 'from');
  const entered = block.columns[from];
  const inputs = inputsIn(block);
  const column = block.columns.indexOf(answer);
  const rows = block.rows.map((row, index) => ({
    cells: [
      ...(from < 0 ? [] : [row[from]]),
      ...inputs.map(({ input, index: place }) => input.constant ?? row[place]),
      ...(answer.at === undefined ? [] : [answer.at.value]),
      row[column],
    ],
    place: block.places[index] ?? 0,
    note: block.notes[index] ?? '',
  }));
  const heads = [
    ...(entered?.kind === 'from' ? [entered] : []),
    ...inputs.map(({ input }) => input),
    ...(answer.at === undefined ? [] : [answer.at.input]),
  ];
  return { inputs: heads, rows };
}

const nameOf = (input: InputColumn | FromColumn): string => (input.kind === 'from' ? 'from' : keyOfInput(input));
const unitOfInput = ({ role, unit }: InputColumn): TableUnit | undefined => unit ?? usualUnits[role];
const sameInputs = (one: Points, other: Points): boolean =>
  one.inputs.length === other.inputs.length &&
  one.inputs.every((input, index) => {
    const second = other.inputs[index];
    return (
      second !== undefined &&
      nameOf(input) === nameOf(second) &&
      (input.kind === 'from' || second.kind === 'from' || unitOfInput(input) === unitOfInput(second))
    );
  });

const headersOf = ({ inputs }: Points): string[] => inputs.map(({ header }) => header);

/** Several blocks of one figure must be read by the same inputs, in the same units. A row whose figure another block gives is no hole. */
function joined(header: string, parts: readonly Points[], curves: boolean): Lookup {
  const [first] = parts;
  if (first === undefined) throw new CoreError('nothing-given', { what: header });
  const other = parts.find((part) => !sameInputs(first, part));
  if (other !== undefined) throw new CoreError('table-blocks-differ', { header, one: headersOf(first), other: headersOf(other) });
  const all = parts.flatMap(({ rows }) => rows);
  const last = first.inputs.length;
  const rows = parts.length === 1 ? all : all.filter(({ cells }) => cells[last] !== undefined);
  return {
    inputs: first.inputs,
    table: { headers: [...headersOf(first), header], rows: rows.map(({ cells }) => cells), places: rows.map(({ place }) => place) },
    notes: rows.map(({ note }) => note),
    curves,
  };
}

/** The further curves of a chain, each with one input beside what it is entered with. */
function stepsOf(header: string, blocks: readonly TableBlock[], wanted: string): Lookup[] {
  const points = blocks.flatMap((block) => block.columns.filter(isNamed(wanted)).map((answer) => pointsOf(block, answer)));
  const bad = points.find(({ inputs }) => inputs.length !== 2);
  if (bad !== undefined) throw new CoreError('table-header-bad', { reason: 'chain', headers: headersOf(bad), inputs: 2 });
  const keys = [...new Set(points.map(({ inputs: [, input] }) => (input === undefined ? '' : nameOf(input))))];
  return keys.map((key) =>
    joined(
      header,
      points.filter(({ inputs: [, input] }) => input !== undefined && nameOf(input) === key),
      true,
    ),
  );
}

const isEntered = ({ columns }: TableBlock): boolean => columns.some(({ kind }) => kind === 'from');

function orderOf(blocks: readonly TableBlock[]): InputColumn[] {
  const found = new Map<string, InputColumn>();
  const all = blocks.flatMap(({ columns }) =>
    columns.flatMap((column) => (isInput(column) ? [column] : column.kind === 'answer' && column.at ? [column.at.input] : [])),
  );
  for (const input of all) if (!found.has(keyOfInput(input))) found.set(keyOfInput(input), input);
  return [...found.values()];
}

/** A table of numbers alone, with so many first columns as inputs. A heading that is known says what they are. */
function plainBlock(block: TableBlock, inputs: number): TableBlock {
  const columns = block.columns.map((column, index): TableBlock['columns'][number] => {
    const { header } = column;
    if (index >= inputs && header === '') return column;
    if (index >= inputs)
      return column.kind === 'answer' ? { ...column, at: undefined } : { kind: 'answer', header, typed: header, unit: undefined, at: undefined };
    return isInput(column) ? column : { kind: 'input', header, role: 'other', unit: undefined, upTo: false, constant: undefined };
  });
  return { ...block, columns };
}

function blocksFor({ blocks, plain }: TypedTable, wanted: string, asked: InputsAsked): readonly TableBlock[] {
  const [first] = blocks;
  if (plain === undefined || first === undefined) return blocks;
  if (asked === 'by-heading') {
    const block = byHeading(first, wanted);
    if (block.columns.some((column) => isInput(column) && plainHeader(column.header) === plainHeader(wanted)))
      throw new CoreError('table-header-bad', {
        reason: plain.headers.length <= 3 ? 'too-few-columns' : 'wanted-is-input',
        headers: plain.headers,
        inputs: 3,
      });
    return [block];
  }
  const bad = (reason: 'too-few-columns' | 'blank' | 'wanted-is-input'): CoreError =>
    new CoreError('table-header-bad', { reason, headers: plain.headers, inputs: asked });
  if (plain.headers.length <= asked) throw bad('too-few-columns');
  const heads = plain.headers.map(plainHeader);
  if (heads.slice(0, asked).includes('')) throw bad('blank');
  const place = heads.indexOf(plainHeader(wanted));
  if (place < 0 && first.columns.some((column) => column.kind === 'answer' && column.at !== undefined)) return blocks;
  if (place >= 0 && place < asked && plainHeader(wanted) !== '') throw bad('wanted-is-input');
  return [plainBlock(first, asked)];
}

/** The answers of a table by their headings, each once. */
export function answersOf(blocks: readonly TableBlock[]): string[] {
  const headers = blocks.flatMap(({ columns }) => columns.flatMap((column) => (column.kind === 'answer' ? [column.header] : [])));
  return headers.filter((header, index) => headers.findIndex((other) => plainHeader(other) === plainHeader(header)) === index);
}

export function figureOf(table: TypedTable, wanted: string, asked: InputsAsked): Figure {
  const blocks = blocksFor(table, wanted, asked);
  const named = blocks.filter(({ columns }) => columns.some(isNamed(wanted)));
  const answer = named[0]?.columns.find(isNamed(wanted));
  if (answer === undefined || plainHeader(wanted) === '') throw new CoreError('table-header-unknown', { wanted, headers: answersOf(blocks) });
  const bases = named.filter((block) => !isEntered(block));
  const across = (block: TableBlock): Points[] => {
    const columns = block.columns.filter(isNamed(wanted));
    if (columns.length > 1 && columns.some(({ at }) => at === undefined))
      throw new CoreError('table-header-bad', {
        reason: 'repeated',
        headers: block.columns.map(({ header }) => header),
        inputs: inputsIn(block).length,
      });
    return columns.map((column) => pointsOf(block, column));
  };
  const base = joined(
    answer.header,
    bases.flatMap(across),
    bases.some(({ curves }) => curves),
  );
  if (base.inputs.length === 0) throw new CoreError('table-header-bad', { reason: 'no-input', headers: base.table.headers, inputs: 0 });
  return {
    header: answer.header,
    unit: answer.unit,
    inputs: orderOf(blocks),
    base,
    steps: stepsOf(answer.header, named.filter(isEntered), wanted),
  };
}

function ready(lookup: Lookup): ReadyLookup {
  const inputs = lookup.inputs.length;
  return { ...lookup, grid: gridOf(lookup.table, inputs), tree: lookup.curves ? curvesOf(lookup.table, inputs) : undefined };
}

/** Throws where a row has no place, or two rows share one. */
export const arranged = (figure: Figure): Figure<ReadyLookup> => ({ ...figure, base: ready(figure.base), steps: figure.steps.map(ready) });
