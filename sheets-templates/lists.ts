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
