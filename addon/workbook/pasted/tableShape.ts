// The shape of a pasted table: a long list, or blocks with values down the side and across the top. Only what is certain is taken: where a
// line does not fit, or can fit in two ways, that is said.
import { isNumeric, type Pasted, type PastedCell, type PastedRow } from './readPasted';

export type PrintedNumber = Extract<PastedCell, { readonly kind: 'number' }>;

export interface ShapedRow {
  /** Line of the text, counted from 1. */
  readonly line: number;
  /** One for each column; undefined is a hole. */
  readonly cells: readonly (PrintedNumber | undefined)[];
}

export interface ShapedBlock {
  /** The lines of words above it. */
  readonly heading: readonly string[];
  /** Words above each column, '' where there are none; in a block with values across, those of the columns at the side. */
  readonly heads: readonly string[];
  /** Empty in a list. */
  readonly across: readonly PrintedNumber[];
  readonly rows: readonly ShapedRow[];
}

/** How many columns stand at the side, and how many figures below each value across. */
export interface Split {
  readonly side: number;
  readonly figures: number;
}

export interface TableShape extends Split {
  readonly columns: number;
  readonly blocks: readonly ShapedBlock[];
}

export interface ShapeFound {
  readonly shape: TableShape | undefined;
  /** More than one: which of them it is must be asked. */
  readonly splits: readonly Split[];
  /** Sentences: what does not fit. Nothing is taken while there is one. */
  readonly problems: readonly string[];
  /** Lines of words that nothing was understood from. */
  readonly leftOut: readonly string[];
}

interface Segment {
  readonly words: readonly PastedRow[];
  readonly rows: readonly PastedRow[];
}

function segmentsOf(rows: readonly PastedRow[]): Segment[] {
  const segments: { words: PastedRow[]; rows: PastedRow[] }[] = [];
  let open = { words: [] as PastedRow[], rows: [] as PastedRow[] };
  for (const row of rows) {
    if (isNumeric(row)) {
      if (open.rows.length === 0) segments.push(open);
      open.rows.push(row);
    } else {
      if (open.rows.length > 0) open = { words: [], rows: [] };
      open.words.push(row);
    }
  }
  return open.rows.length > 0 || open.words.length === 0 ? segments : [...segments, open];
}

function usualColumns(rows: readonly PastedRow[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  return [...counts].sort(([one, times], [other, otherTimes]) => otherTimes - times || other - one)[0]?.[0] ?? 0;
}

const isNumber = (cell: PastedCell | undefined): cell is PrintedNumber => cell?.kind === 'number';

function isMonotonic(values: readonly number[]): boolean {
  const steps = values.slice(1).map((value, index) => value - (values[index] ?? 0));
  return steps.every((step) => step > 0) || steps.every((step) => step < 0);
}

/** Values across the top: numbers in order, before rows that begin with a number, with something or nothing above the side. */
function acrossOf({ rows: [first, second] }: Segment, columns: number): { readonly row: PastedRow; readonly lead: number } | undefined {
  if (first === undefined || second === undefined || !isNumber(second.cells[0])) return undefined;
  const lead = first.cells.findIndex(isNumber);
  const rest = first.cells.slice(lead);
  const numbers = rest.filter(isNumber);
  const fits = rest.every(({ kind }) => kind === 'number' || kind === 'hole') && numbers.length >= 2;
  const placed = lead > 0 || first.cells.length < columns;
  return fits && placed && isMonotonic(numbers.map(({ value }) => value)) ? { row: first, lead } : undefined;
}

const mostSide = 3;
const mostFigures = 2;

/** Every way in which the values across can stand over the columns. Cells that show their columns leave one way at most. */
function splitsOf({ row: { cells }, lead }: { readonly row: PastedRow; readonly lead: number }, columns: number): Split[] {
  const places = cells.flatMap((cell, index) => (isNumber(cell) ? [index] : []));
  const ways: Split[] = [];
  for (let side = 1; side <= mostSide; side += 1) {
    for (let figures = 1; figures <= mostFigures; figures += 1) {
      const over = places.every((place, index) => place === side + index * figures);
      const shown = cells.length === columns ? lead === side && over : true;
      if (side + figures * places.length === columns && shown) ways.push({ side, figures });
    }
  }
  return ways;
}

const isSplit =
  (one: Split) =>
  (other: Split): boolean =>
    one.side === other.side && one.figures === other.figures;

interface RowsRead {
  readonly rows: readonly ShapedRow[];
  readonly problems: readonly string[];
}

function rowRead({ line, cells }: PastedRow, columns: number): { readonly row: ShapedRow } | { readonly problem: string } {
  const beyond = cells.slice(columns).find(({ kind }) => kind !== 'hole');
  if (beyond !== undefined) return { problem: `Line ${line} has more than ${columns} columns.` };
  const strange = cells.findIndex(({ kind }) => kind !== 'number' && kind !== 'hole');
  const found = cells[strange];
  if (found !== undefined)
    return { problem: `Line ${line}, column ${strange + 1}: ${found.kind === 'words' ? `"${found.text}"` : 'this'} is no number. Mend it above.` };
  return { row: { line, cells: Array.from({ length: columns }, (_, index) => (isNumber(cells[index]) ? cells[index] : undefined)) } };
}

function rowsRead(rows: readonly PastedRow[], columns: number): RowsRead {
  const read = rows.map((row) => rowRead(row, columns));
  return {
    rows: read.flatMap((one) => ('row' in one ? [one.row] : [])),
    problems: read.flatMap((one) => ('problem' in one ? [one.problem] : [])),
  };
}

const wordsOf = (cell: PastedCell | undefined): string => (cell?.kind === 'words' ? cell.text : '');

/** Above a list each column may have its words, in one line or in several (names, then units). */
const headsOf = (words: readonly PastedRow[], columns: number): string[] => {
  const lines = words.filter(({ cells }) => cells.length === columns);
  return Array.from({ length: columns }, (_, column) =>
    lines
      .map(({ cells }) => wordsOf(cells[column]).replace(/^\((.*)\)$/, '$1'))
      .filter((text) => text !== '')
      .join(', '),
  );
};

interface Placed extends Segment {
  readonly across: ReturnType<typeof acrossOf>;
}

/** A line of words without a figure in it parts nothing: a foot of a page, say. */
function joined(segments: readonly Placed[], hasDigit: (row: PastedRow) => boolean): Placed[] {
  const blocks: Placed[] = [];
  for (const segment of segments) {
    const last = blocks[blocks.length - 1];
    if (last === undefined || segment.across !== undefined || segment.words.some(hasDigit)) blocks.push(segment);
    else blocks[blocks.length - 1] = { ...last, rows: [...last.rows, ...segment.rows] };
  }
  return blocks;
}

interface Blocks {
  readonly blocks: readonly ShapedBlock[];
  readonly problems: readonly string[];
}

function blocksOf(placed: readonly Placed[], columns: number, side: number, textOf: (row: PastedRow) => string): Blocks {
  let across: readonly PrintedNumber[] = [];
  const read = placed.map((segment) => {
    const top = segment.across;
    if (top !== undefined) across = top.row.cells.filter(isNumber);
    const { rows, problems } = rowsRead(segment.rows.slice(top === undefined ? 0 : 1), columns);
    const lead = top?.row.cells.slice(0, top.lead).map(wordsOf) ?? [];
    const heads = across.length === 0 ? headsOf(segment.words, columns) : lead.length === side ? lead : [];
    return { block: { heading: segment.words.map(textOf), heads, across, rows }, problems };
  });
  return { blocks: read.map(({ block }) => block), problems: read.flatMap(({ problems }) => problems) };
}

const noSides = (blocks: readonly ShapedBlock[], side: number): string[] =>
  blocks.flatMap(({ rows }) =>
    rows.flatMap(({ line, cells }) =>
      cells.slice(0, side).includes(undefined)
        ? [`Line ${line} has a blank at the side. Where the manual prints a value once for several lines, write it on each of them.`]
        : [],
    ),
  );

const nothing: ShapeFound = { shape: undefined, splits: [], problems: [], leftOut: [] };

/** `text` is what was read; `chosen` says which split it is, where there are several. */
export function shapeOf({ rows, questions }: Pasted, text: string, chosen?: Split): ShapeFound {
  if (questions.length > 0 || rows.length === 0) return nothing;
  const lines = text.split(/\r\n|\r|\n/);
  const textOf = ({ line }: PastedRow): string => (lines[line - 1] ?? '').trim().replace(/\s+/g, ' ');
  const segments = segmentsOf(rows);
  const columns = usualColumns(segments.flatMap(({ rows: own }) => own));
  if (columns < 2)
    return { ...nothing, problems: ['No table is seen in this text: it needs lines of two numbers or more.'], leftOut: rows.map(textOf) };
  const placed = joined(
    segments.filter((segment) => segment.rows.length > 0).map((segment) => ({ ...segment, across: acrossOf(segment, columns) })),
    (row) => /\d/.test(textOf(row)),
  );
  const foot = segments.flatMap((segment) => (segment.rows.length === 0 ? segment.words.map(textOf) : []));
  const tops = placed.flatMap(({ across }) => across ?? []);
  const ways = tops.length === 0 ? [{ side: 0, figures: 0 }] : splitsOf(tops[0] ?? { row: { line: 0, cells: [] }, lead: 0 }, columns);
  const splits = tops.length === 0 ? ways : ways.filter((way) => tops.every((top) => splitsOf(top, columns).some(isSplit(way))));
  const split = splits.length === 1 ? splits[0] : splits.find((way) => chosen !== undefined && isSplit(chosen)(way));
  if (splits.length === 0)
    return {
      ...nothing,
      problems: [
        `The values across the top (line ${tops[0]?.row.line}) do not fit the ${columns} columns below them. Put a dash where one is blank.`,
      ],
      leftOut: foot,
    };
  if (split === undefined) return { ...nothing, splits, leftOut: foot };
  const { blocks, problems } = blocksOf(placed, columns, split.side, textOf);
  const bare = tops.length > 0 && placed[0]?.across === undefined ? [`Line ${placed[0]?.rows[0]?.line} stands below no values across the top.`] : [];
  const all = [...bare, ...problems, ...noSides(blocks, split.side)];
  return { shape: all.length > 0 ? undefined : { ...split, columns, blocks }, splits, problems: all, leftOut: foot };
}
