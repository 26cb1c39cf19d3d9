// Lists of our sheets that are full: what is pasted beyond the last row of a list is refused before it runs over the section below, and rows are offered
// above that last row, where every range of the list grows with them.
import type { ICellData, ICommandService, Nullable } from '@univerjs/core';
import type { FWorksheet } from '@univerjs/sheets/facade';
import type { SetRangeValuesMutation, ISetRangeValuesMutationParams } from '@univerjs/sheets';
import { headMark } from '../../../sheets-templates/keys';
import { isKeyFormula, keysIn, type Keys } from '../../workbook/keys';
import { isEntered, type Cells } from './enteredCells';

/** Counted from 0. */
interface OwnList {
  readonly first: number;
  readonly last: number;
  readonly columns: readonly number[];
}

const valuesMutation: typeof SetRangeValuesMutation.id = 'sheet.mutation.set-range-values';
/** Rows to spare. */
const more = 10;
/** Each row of a shorter list has a meaning of its own, such as a report for each of three fields: it is never full. */
const shortest = 5;

const holds = (cell: Nullable<ICellData>): boolean =>
  [cell?.v, cell?.f, cell?.si, cell?.p].some((part) => part !== undefined && part !== null && part !== '');

/** By the keys "list.column"; a list without its heads is none. */
function listsIn({ ranges }: Keys): OwnList[] {
  const names = [...ranges.keys()].filter((key) => key.endsWith(headMark)).map((key) => key.slice(0, -headMark.length));
  return names.flatMap((name): OwnList[] => {
    const areas = [...ranges].flatMap(([key, area]) => (key.startsWith(`${name}.`) && !key.endsWith(headMark) && area !== undefined ? [area] : []));
    const head = ranges.get(`${name}${headMark}`);
    if (areas.length === 0 || head === undefined) return [];
    const last = Math.min(...areas.map(({ lastRow }) => lastRow)) - 1;
    return areas.every(({ row, lastRow }) => lastRow - row < shortest)
      ? []
      : [{ first: head.row, last, columns: areas.map(({ column }) => column - 1) }];
  });
}

/** The formula with the keys stands in the last column, in the first row unless rows were put in above it. It is read once. */
function listsOnSheet(sheet: FWorksheet, known: Map<string, readonly OwnList[]>): readonly OwnList[] {
  const cells = sheet.getSheet();
  const column = cells.getColumnCount() - 1;
  const texts = [0, 1, 2, 3].map((row) => ({ row: row + 1, column: column + 1, text: cells.getCellRaw(row, column)?.f ?? '' }));
  const formula = texts.find(isKeyFormula);
  if (formula === undefined) return [];
  const keys = known.has(formula.text) ? undefined : keysIn({ formulas: [formula] });
  if (keys !== undefined) known.set(formula.text, listsIn(keys));
  return known.get(formula.text) ?? [];
}

/** Rows that a list lacks. */
export interface FullList {
  readonly sheet: FWorksheet;
  /** Counted from 0: the last row of the list, above which rows go. */
  readonly above: number;
  readonly rows: number;
  /** Nothing was entered; else it stands in the last row. */
  readonly isRefused: boolean;
}

/** Rows of one block with the last row of the list: what is written elsewhere in the same step is of other lists. */
function blockAround(last: number, columns: readonly number[], cells: Cells): number[] {
  const isWritten = (row: number): boolean => columns.some((column) => column in ((cells[row] ?? {}) as object));
  if (!isWritten(last)) return [];
  let [from, to] = [last, last];
  while (isWritten(from - 1)) from -= 1;
  while (isWritten(to + 1)) to += 1;
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}

function fullList(sheet: FWorksheet, { first, last, columns }: OwnList, cells: Cells): FullList | undefined {
  const rows = blockAround(last, columns, cells).filter((row) =>
    columns.some((column) => holds((cells[row] as Record<number, Nullable<ICellData>>)[column])),
  );
  const [from, to] = [Math.min(...rows), Math.max(...rows)];
  if (rows.length === 0 || from < first || from > last || to < last) return undefined;
  return { sheet, above: last, rows: to - last + more, isRefused: to > last };
}

function takeAllOut(cells: Cells): void {
  for (const line of Object.values(cells)) for (const column of Object.keys(line as object)) Reflect.deleteProperty(line as object, column);
}

/** Looks at every change before the grid does: so this must be called before any part of the grid is there. */
export function guardLists(commands: ICommandService, sheetOf: (id: string) => FWorksheet | undefined, tell: (full: FullList) => void): void {
  const known = new Map<string, readonly OwnList[]>();
  commands.beforeCommandExecuted(({ id, params }, options) => {
    if (id !== valuesMutation || options?.onlyLocal === true || options?.fromCollab === true) return;
    const { subUnitId, cellValue, trigger = '' } = params as ISetRangeValuesMutationParams;
    if (cellValue === undefined || !isEntered(trigger)) return;
    const sheet = sheetOf(subUnitId);
    if (sheet === undefined) return;
    const found = listsOnSheet(sheet, known).flatMap((list) => fullList(sheet, list, cellValue as Cells) ?? []);
    const full = found.find(({ isRefused }) => isRefused) ?? found[0];
    if (full === undefined) return;
    if (full.isRefused) takeAllOut(cellValue as Cells);
    tell(full);
  });
}
