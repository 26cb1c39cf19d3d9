// The lists of the descent half of the card: where they stand, how formulas read them, and what stands above them unread.
import { filledOutside, line, type Content, type Field } from '../build';
import type { TemplateCell, Validation } from '../template';

export const heads = (...words: readonly string[]): Field[] => words.map((word) => [word, 'columnHead'] as const);

/** A heading drawn across the whole sheet. */
export const headingAcross = (row: number, text: string): TemplateCell[] =>
  line(row, 1, [text, 'heading'], ...Array.from({ length: 10 }, (): Field => ['', 'heading']));

export const crossings = { first: 12, last: 19 } as const;

export const schedule = { first: 24, last: 28 } as const;

export const winds = { first: 31, last: 36 } as const;

export const plan = { first: 40, last: 49 } as const;

export type Rows = { readonly first: number; readonly last: number };

export const rows = ({ first, last }: Rows, column: string, lastColumn = column): string => `${column}${first}:${lastColumn}${last}`;

/** The rows of a list that formulas read: with the blank row below, so that a row put in after the last is read too. */
export const readRows = ({ first, last }: Rows): Rows => ({ first, last: last + 1 });

export const read = (list: Rows, column: string, lastColumn = column): string => rows(readRows(list), column, lastColumn);

/** Formula text: whether something stands between the heads of a list and its first row, where it is not read. */
export const strayAbove = (list: Rows, from: string, to: string): string => `${filledOutside(readRows(list), from, to, { above: list.first - 1 })}>0`;

export const moveDown = (what: string): string => `"${what} stands right below the heads of its list, where it is not read: move it down"`;

export const padded = (values: readonly (readonly Content[])[], { first, last }: Rows, width: number): readonly (readonly Content[])[] => [
  ...values,
  ...Array.from({ length: last - first + 1 - values.length }, () => Array<Content>(width).fill(undefined)),
];

export const numbers = (range: string, minimum: number, maximum: number, help: string): Validation => ({
  kind: 'number',
  range,
  minimum,
  maximum,
  help,
});

export const altitudeHelp = 'Altitude in feet, -5,000 to 60,000.';
