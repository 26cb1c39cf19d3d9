// Lists that sheets are made of: rows of entries, room for a call that spills, headings, and where each list begins.
import { cell, line, type Content, type Field } from './build';
import type { FormatName, StyleName } from './look';
import type { TemplateCell } from './template';

/** Rows of a list: its heads, its first and its last. */
export interface List {
  readonly head: number;
  readonly first: number;
  readonly last: number;
}

/** Below a list that ends at `last`: a row of air, a heading, a line of help (and `more` lines), the heads, then the rows. */
export const listBelow = (last: number, rows: number, more = 0): List => ({
  head: last + 4 + more,
  first: last + 5 + more,
  last: last + 4 + more + rows,
});

export const column = ({ first, last }: List, letter: string): string => `$${letter}$${first}:$${letter}$${last}`;

/** A column with its head, for a call in the row of the heads: a row put in right below them is one of it. */
export const columnWithHead = ({ head, last }: List, letter: string): string => `$${letter}$${head}:$${letter}$${last}`;

/** Formula text: a column from the heads of a list to the row below its last one, so with what was inserted beside the list. */
export const withNeighbours = ({ head, last }: List, letter: string): string => `$${letter}$${head}:$${letter}$${last + 1}`;

/**
 * Formula text: whether a row next to the list is filled in one of its columns of entries. Rows inserted below its heads or
 * below its last row do not make the list longer, and what stands in them is not read.
 */
export const besideList = (list: List, letter: string): string =>
  `COUNTA(${withNeighbours(list, letter)})-COUNTA($${letter}$${list.head})>COUNTA(${column(list, letter)})`;

/** Words by which other sheets know that this is said. */
export const saysBeside = 'in a row beside its list, where it is not read';
/** What is said then. */
export const moveIntoList = (what: string): string =>
  `${what} stands ${saysBeside}: insert rows between its first and its last tinted row, and move it there.`;

/** A line of help that gives way to a warning where an entry stands beside the list. */
export const helpUnlessBeside = (list: List, letter: string, what: string, help: string): string =>
  `=IF(${besideList(list, letter)},"${moveIntoList(what)}","${help.replace(/"/g, '""')}")`;

/** How a column of a list looks; the note goes to its first cell. */
export type Look = readonly [style: StyleName, format?: FormatName | undefined, note?: string | undefined];

export const typedText: Look = ['inputText'];
export const typedDate: Look = ['input', 'date'];
export const typedNumber = (format: FormatName): Look => ['input', format];
export const shownText: Look = ['computedText'];
export const shownNumber = (format: FormatName): Look => ['computed', format];

function looking([style, format, note]: Look, content: Content, isFirst: boolean): Field {
  return [content, style, { ...(format !== undefined && { format }), ...(isFirst && note !== undefined && { note }) }];
}

function block({ first, last }: List, from: number, looks: readonly Look[], contentOf: (down: number, across: number) => Content): TemplateCell[] {
  return Array.from({ length: last - first + 1 }, (_, down) =>
    line(first + down, from, ...looks.map((look, across) => looking(look, contentOf(down, across), down === 0))),
  ).flat();
}

/** Rows to be filled: the given ones first, blank ones below. */
export const entryList = (list: List, from: number, looks: readonly Look[], filled: readonly (readonly Content[])[]): TemplateCell[] =>
  block(list, from, looks, (down, across) => filled[down]?.[across]);

/** Room for what a call in the row of the heads spills below them. */
export const spillRoom = (list: List, from: number, looks: readonly Look[]): TemplateCell[] =>
  block(
    list,
    from,
    looks.map(([style, format]): Look => [style, format]),
    () => undefined,
  );

/** The row of heads that a call begins with, the call in its first cell: there no row of the list that is deleted takes it away. */
export const callHeads = (
  row: number,
  from: number,
  words: readonly string[],
  call: string,
  notes: readonly (string | undefined)[] = [],
): TemplateCell[] =>
  line(
    row,
    from,
    ...words.map((word, across): Field => {
      const note = notes[across];
      return [across === 0 ? `=${call}` : undefined, 'columnHead', { ...(word !== '' && { shows: word }), ...(note !== undefined && { note }) }];
    }),
  );

/** A call in the row of heads, with room below it for what it spills. */
export const spillList = (list: List, from: number, looks: readonly Look[], words: readonly string[], call: string): TemplateCell[] => [
  ...callHeads(
    list.head,
    from,
    words,
    call,
    looks.map(([, , note]) => note),
  ),
  ...spillRoom(list, from, looks),
];

/** Room for a call that spills where nobody deletes rows: its first cell holds the call, the others only their look. */
export const spillBlock = (rows: Pick<List, 'first' | 'last'>, from: number, looks: readonly Look[], call: string): TemplateCell[] =>
  block({ head: rows.first, ...rows }, from, looks, (down, across) => (down === 0 && across === 0 ? `=${call}` : undefined));

/** Formula text: the last argument of a call in a row of heads. */
export const headWords = (words: readonly string[]): string => `"${words.join('; ')}"`;

export const listHeads = (row: number, from: number, words: readonly string[]): TemplateCell[] =>
  line(row, from, ...words.map((word): Field => [word, 'columnHead']));

/** A heading underlined from one column to another, and a line of help below it. */
export const listHeading = (row: number, from: number, to: number, words: string, help: string): TemplateCell[] => [
  ...line(row, from, ...Array.from({ length: to - from + 1 }, (_, index): Field => [index === 0 ? words : undefined, 'heading'])),
  cell(row + 1, from, help, 'subtitle'),
];
