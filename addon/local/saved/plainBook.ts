// A saved workbook in a form in which two of them can be compared: looks as they are instead of by their names, which each window gives anew, and
// without what the grid works out by itself (answers of formulas, heights of rows that fit their text).
import type { ICellData, IRowData, IStyleData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';

export type Cell = Nullable<ICellData>;

/** The same text for the same content, whatever the order of its parts; nothing for what is empty. */
export function canonical(value: unknown): string {
  if (value === undefined || value === null) return '';
  if (typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  const parts = Object.entries(value)
    .map(([key, part]): [string, string] => [key, canonical(part)])
    .filter(([, part]) => part !== '')
    .sort(([one], [other]) => (one < other ? -1 : 1));
  return parts.length === 0 ? '' : `{${parts.map(([key, part]) => `${JSON.stringify(key)}:${part}`).join(',')}}`;
}

export const sameContent = (one: unknown, other: unknown): boolean => canonical(one) === canonical(other);

const without = <Whole extends object>(whole: Whole, names: ReadonlySet<string>): Whole =>
  Object.fromEntries(Object.entries(whole).filter(([name]) => !names.has(name))) as Whole;

const answers: ReadonlySet<string> = new Set(['v', 't', 'p']);
const fitted: ReadonlySet<string> = new Set(['ah']);

const styleOf = ({ styles }: IWorkbookData, look: Cell): Nullable<IStyleData> => (typeof look?.s === 'string' ? styles[look.s] : look?.s);

/** A cell that carries its look with it. */
export function ownCell(data: IWorkbookData, cell: Cell): ICellData {
  const style = styleOf(data, cell);
  return { ...cell, s: style ?? null };
}

/** What a person has put into a cell, without the answer of its formula. */
export function entered(data: IWorkbookData, cell: Cell): ICellData {
  const own = ownCell(data, cell);
  if (!own.f && !own.si) return own.v === undefined || own.v === null || own.v === '' ? { ...own, v: null, t: null } : own;
  return without(own, answers);
}

export type Line = Readonly<Record<number, Cell>>;

export const linesOf = (sheet: Partial<IWorksheetData> | undefined): Readonly<Record<number, Line | undefined>> =>
  (sheet?.cellData ?? {}) as Record<number, Line>;

/** A row without the height that follows from its text. */
export const rowKept = (row: Nullable<Partial<IRowData>>): Partial<IRowData> => without(row ?? {}, fitted);

/** Where somebody looks, which is nobody's change. */
const views = ['scrollTop', 'scrollLeft', 'zoomRatio', 'selections', 'status'];
const beyondFrame: ReadonlySet<string> = new Set([...views, 'cellData', 'rowData', 'columnData']);

/** Everything of a sheet but its cells, rows, columns and what is in sight. */
export const sheetFrame = (sheet: Partial<IWorksheetData> | undefined): Partial<IWorksheetData> => without(sheet ?? {}, beyondFrame);
