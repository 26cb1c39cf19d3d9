// Finds the lists among the cells of a section: heads side by side, and rows of cells below them.
import type { TemplateCell } from '../../../sheets-templates/template';
import { isHead, isInList, valueOf, type IsEntry, type Lines, type PocketPart } from './parts';

/** A list: its heads, its rows, and the columns of it, which may have gaps between them. */
export interface Block {
  readonly head: number;
  readonly last: number;
  readonly columns: ReadonlySet<number>;
}

export const holds = ({ head, last, columns }: Block, { row, column }: TemplateCell): boolean => row >= head && row <= last && columns.has(column);

/** Heads side by side. */
function runsOf(heads: readonly TemplateCell[]): TemplateCell[][] {
  const runs: TemplateCell[][] = [];
  for (const cell of heads) {
    const run = runs[runs.length - 1];
    if (run !== undefined && run[run.length - 1]?.column === cell.column - 1) run.push(cell);
    else runs.push([cell]);
  }
  return runs;
}

/** A list goes on below its heads as long as every row has cells of it; rows with labels or units are lines. */
function lastRowOf(lines: Lines, head: number, column: number, lastColumn: number): number {
  for (let row = head + 1; ; row += 1) {
    const cells = (lines.get(row) ?? []).filter((cell) => cell.column >= column && cell.column <= lastColumn);
    if (!cells.some(isInList) || cells.some((cell) => isHead(cell) || cell.style === 'label' || cell.style === 'unit')) return row - 1;
  }
}

/** Runs of heads in one row whose rows end together are one list, unless it would be of one column only. */
export function listsIn(lines: Lines, heading: TemplateCell | undefined): Block[] {
  return [...lines].flatMap(([head, line]) => {
    if (head === heading?.row) return [];
    const found = new Map<number, Set<number>>();
    for (const run of runsOf(line.filter(isHead))) {
      const columns = run.map(({ column }) => column);
      const last = lastRowOf(lines, head, Math.min(...columns), Math.max(...columns));
      if (last > head) found.set(last, new Set([...(found.get(last) ?? []), ...columns]));
    }
    return [...found].flatMap(([last, columns]) => (columns.size < 2 ? [] : [{ head, last, columns }]));
  });
}

/** A column is one of entries where any of its rows takes one. */
export function listPart(lines: Lines, { head, last, columns }: Block, isEntry: IsEntry): PocketPart {
  const heads = new Map((lines.get(head) ?? []).map((cell) => [cell.column, cell]));
  const cells = [...lines].flatMap(([row, line]) => (row > head && row <= last ? line.filter(isInList) : []));
  const values = [...columns]
    .sort((one, other) => one - other)
    .flatMap((column) => {
      const below = cells.filter((cell) => cell.column === column);
      const cell = below.find(isEntry) ?? below[0];
      return cell === undefined ? [] : [valueOf(cell, heads.get(column), isEntry)];
    });
  return { kind: 'list', first: head + 1, last, columns: values };
}
