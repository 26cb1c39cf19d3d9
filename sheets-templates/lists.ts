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
export const listBelow = (last: number, rows: number, more = 0): List => ({ head: last + 4 + more, first: last + 5 + more, last: last + 4 + more + rows });

export const column = ({ first, last }: List, letter: string): string => `$${letter}$${first}:$${letter}$${last}`;

/**
 * Formula text: a column from the heads of a list to the row below its last one, so with what was inserted beside the list.
 * It is worked out, so that nobody takes that row for one of the list (an update would put entries there).
 */
export const withNeighbours = ({ head, last }: List, letter: string): string => `OFFSET($${letter}$${head},0,0,ROW($${letter}$${last + 1})-ROW($${letter}$${head})+1,1)`;

/**
 * Formula text: whether a row next to the list is filled in one of its columns of entries. Rows inserted below its heads or
 * below its last row do not make the list longer, and what stands in them is not read.
 */
export const besideList = (list: List, letter: string): string => `COUNTA(${withNeighbours(list, letter)})-COUNTA($${letter}$${list.head})>COUNTA(${column(list, letter)})`;

/** What is said then. */
export const moveIntoList = (what: string): string => `${what} stands in a row beside its list, where it is not read: insert rows between its first and its last tinted row, and move it there.`;

/** A line of help that gives way to a warning where an entry stands beside the list. */
export const helpUnlessBeside = (list: List, letter: string, what: string, help: string): string => `=IF(${besideList(list, letter)},"${moveIntoList(what)}","${help.replace(/"/g, '""')}")`;

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
  return Array.from({ length: last - first + 1 }, (_, down) => line(first + down, from, ...looks.map((look, across) => looking(look, contentOf(down, across), down === 0)))).flat();
}

/** Rows to be filled: the given ones first, blank ones below. */
export const entryList = (list: List, from: number, looks: readonly Look[], filled: readonly (readonly Content[])[]): TemplateCell[] =>
  block(list, from, looks, (down, across) => filled[down]?.[across]);

/** Room for a call that spills: its first cell holds the call, the others only their look. */
export const spillList = (list: List, from: number, looks: readonly Look[], call: string): TemplateCell[] =>
  block(list, from, looks, (down, across) => (down === 0 && across === 0 ? `=${call}` : undefined));

export const listHeads = (row: number, from: number, words: readonly string[]): TemplateCell[] => line(row, from, ...words.map((word): Field => [word, 'columnHead']));

/** A heading underlined from one column to another, and a line of help below it. */
export const listHeading = (row: number, from: number, to: number, words: string, help: string): TemplateCell[] => [
  ...line(row, from, ...Array.from({ length: to - from + 1 }, (_, index): Field => [index === 0 ? words : undefined, 'heading'])),
  cell(row + 1, from, help, 'subtitle'),
];
