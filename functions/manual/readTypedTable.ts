// Reads an aircraft's table as its owner typed it: headings, rows of numbers, rows of words that say more of the columns below, and notes.
import { isInput, type TableBlock, type TableColumn, type TypedTable } from '../../core/manual/columns';
import { plainHeader } from '../../core/manual/grid';
import { ArgumentError } from '../registry/argumentError';
import { isBlank, isErrorText, isRange, quoted, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { numberFromCell } from '../registry/readNumber';
import { lastHeader, numberOrBlank, readHeaders } from '../registry/readTable';
import { columnOfHeading, columnOfWords, isNote, wordsAllowed } from './columnWords';

const mustBe = 'a table of numbers under one header row';

interface PlacedRow {
  readonly row: readonly CellValue[];
  readonly place: number;
}

/** A row of words: nothing in it is a number, or could be one that was mistyped. */
const isWords = (cells: readonly CellValue[]): boolean => {
  const filled = cells.filter((cell) => !isBlank(cell));
  return (
    filled.length > 0 &&
    filled.every((cell) => typeof cell === 'string' && /[a-z]/i.test(cell) && !isErrorText(cell) && numberFromCell(cell) === undefined)
  );
};

interface Headings {
  readonly headers: readonly string[];
  readonly columns: readonly TableColumn[];
  readonly noteAt: number;
}

/** A unit behind a heading belongs to its name where two headings differ by nothing else. */
function headingsOf(headers: readonly string[]): Headings {
  const columns = headers.map(columnOfHeading);
  const names = columns.map(({ header }) => plainHeader(header));
  const told = columns.map((column, index): TableColumn =>
    column.kind === 'answer' && column.at === undefined && names.indexOf(names[index] ?? '') !== names.lastIndexOf(names[index] ?? '')
      ? { ...column, header: headers[index] ?? '' }
      : column,
  );
  return { headers, columns: told, noteAt: headers.findIndex(isNote) };
}

interface Block {
  readonly columns: readonly TableColumn[];
  readonly curves: boolean;
  readonly worded: boolean;
  readonly note: string;
  readonly rows: PlacedRow[];
}

/** The columns under a row of words; a blank keeps what the heading says, and of an input what an earlier row of words said. */
function columnsUnder({ columns: common }: Headings, before: Block, { row, place }: PlacedRow): Pick<Block, 'columns' | 'curves'> {
  let name: string | undefined;
  let curves = before.curves;
  const columns = common.map((heading, index): TableColumn => {
    const cell = row[index];
    if (isBlank(cell)) {
      const earlier = before.columns[index];
      return heading.kind === 'input' && earlier !== undefined && earlier.kind === 'input' ? earlier : heading;
    }
    const worded = columnOfWords(heading, String(cell), name);
    if (worded === undefined)
      throw new ArgumentError(
        `${mustBe}, and in a row of words ${wordsAllowed}`,
        `${quoted(String(cell))} under ${quoted(heading.header)}`,
        place,
        index + 1,
      );
    curves ||= worded.curves;
    if (worded.column.kind === 'answer') name = worded.column.header;
    return worded.column;
  });
  return { columns, curves };
}

function blocksOf(headings: Headings, rows: readonly PlacedRow[]): Block[] {
  const { columns, noteAt } = headings;
  const blocks: Block[] = [{ columns, curves: false, worded: false, note: '', rows: [] }];
  for (const placed of rows) {
    const last = blocks[blocks.length - 1] ?? { columns, curves: false, worded: false, note: '', rows: [] };
    const cells = placed.row.map((cell, index) => (index === noteAt ? undefined : cell));
    const note = noteAt < 0 || isBlank(placed.row[noteAt]) ? '' : String(placed.row[noteAt]).trim();
    if (cells.every(isBlank)) blocks.push({ ...last, note, rows: [] });
    else if (isWords(cells))
      blocks.push({ ...columnsUnder(headings, last, { ...placed, row: cells }), worded: true, note: note === '' ? last.note : note, rows: [] });
    else last.rows.push(placed);
  }
  return blocks.filter(({ rows: own }) => own.length > 0);
}

function finished({ columns, curves, worded, note, rows }: Block, { headers, noteAt }: Headings): TableBlock {
  const numbers = rows.map(({ row, place }) =>
    columns.map((column, index) =>
      index === noteAt || (worded && column.kind === 'idle') ? undefined : numberOrBlank(row, index, headers, mustBe, place),
    ),
  );
  // Under words of its own a block need not use every column of the common headings.
  const used = columns.map((column, index): TableColumn =>
    worded && column.kind === 'answer' && numbers.every((row) => row[index] === undefined) ? { kind: 'idle', header: column.header } : column,
  );
  const notes = rows.map(({ row }) => (noteAt < 0 || isBlank(row[noteAt]) ? note : String(row[noteAt]).trim()));
  return { columns: used, curves, rows: numbers, places: rows.map(({ place }) => place), notes };
}

/** Numbers under headings that say no more than names and units. */
const isPlain = ({ columns, curves, worded }: Block): boolean =>
  !worded && !curves && columns.every((column) => column.kind !== 'from' && !(isInput(column) && column.upTo));

/** The table in a range, its headings in the first row. */
export function readTypedTable(raw: CellValue): TypedTable {
  const range = (isRange(raw) ? raw : [[raw]]) as RangeValue;
  const first = range[0] ?? [];
  const headers = readHeaders(first, mustBe);
  const width = lastHeader(headers);
  const used = range
    .slice(1)
    .map((row, index) => ({ row: row.slice(0, width), place: index + 2 }))
    .filter(({ row }) => !row.every(isBlank));
  const headings = headingsOf(headers.slice(0, width));
  const typed = blocksOf(headings, used);
  const [only] = typed;
  if (width < 2 || only === undefined) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, first.length)}`);
  const blocks = typed.map((block) => finished(block, headings));
  const [block] = blocks;
  if (block === undefined || blocks.length > 1 || !isPlain(only)) return { blocks, plain: undefined };
  // A heading in brackets over nothing is one that a two-way block may use.
  const isUnused = (index: number): boolean => block.columns[index]?.kind === 'idle' && block.rows.every((row) => row[index] === undefined);
  const names = headings.headers.map((header, index) => (isUnused(index) ? '' : header));
  return { blocks, plain: { headers: names, rows: block.rows, places: block.places } };
}

export const typedTable = (help: string): Parameter<TypedTable> & { readonly shape: 'table' } => ({
  shape: 'table',
  unit: 'table',
  mustBe,
  help,
  optional: undefined,
  read: readTypedTable,
});
