// What the pocket view is made of, and how cells of a description are told apart.
import type { TemplateCell } from '../../../sheets-templates/template';

export type IsEntry = (cell: TemplateCell) => boolean;

/** A value in a line, or in a row of a list. */
export interface PocketValue {
  readonly cell: TemplateCell;
  /** What stands above it ("departure"); "" where nothing does. */
  readonly head: string;
  /** The cell of that, where a formula says it. */
  readonly headCell?: TemplateCell;
  readonly isEntry: boolean;
}

export type PocketPart =
  | { readonly kind: 'line'; readonly label: string; readonly values: readonly PocketValue[]; readonly unit?: TemplateCell }
  | { readonly kind: 'said'; readonly cell: TemplateCell }
  /** Of each column one cell; where that is an entry, some of its rows may hold an answer all the same: only tinted cells are typed into. */
  | { readonly kind: 'list'; readonly first: number; readonly last: number; readonly columns: readonly PocketValue[] };

export const wordIn = ({ value, shows }: TemplateCell): string => (typeof value === 'string' ? value : (shows ?? ''));
export type Lines = ReadonlyMap<number, readonly TemplateCell[]>;

export function linesOf(cells: readonly TemplateCell[]): Lines {
  const lines = new Map<number, TemplateCell[]>();
  for (const cell of cells) lines.set(cell.row, [...(lines.get(cell.row) ?? []), cell]);
  for (const line of lines.values()) line.sort((one, other) => one.column - other.column);
  return new Map([...lines].sort(([one], [other]) => one - other));
}

export const isHead = ({ style }: TemplateCell): boolean => style === 'columnHead';
export const isValue = ({ style }: TemplateCell): boolean => /^(?:input|computed|verdict|bigVerdict)/.test(style);
export const isInList = (cell: TemplateCell): boolean => isValue(cell) || cell.style === 'reason';

export function valueOf(cell: TemplateCell, head: TemplateCell | undefined, isEntry: IsEntry): PocketValue {
  const word = head === undefined ? '' : wordIn(head);
  return { cell, head: word, ...(head !== undefined && word === '' && { headCell: head }), isEntry: isEntry(cell) };
}
