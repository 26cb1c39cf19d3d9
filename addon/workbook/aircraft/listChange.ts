// New rows in a list that several aircraft share: into blank rows, and into rows of the same aircraft that they replace; never into another's.
import type { CellContent, CellsChanged } from '../cellChanges';
import { isBlankRow, rowsOf, sameAircraft, valueAt, type ListNow, type ListRow } from './aircraftLists';
import type { CellValue } from '../snapshot';

export type RowContents = Readonly<Record<string, CellContent>>;

export interface ListChange {
  readonly changes: readonly CellsChanged[];
  /** The rows of the aircraft afterwards, in the order of the sheet. */
  readonly rows: readonly { readonly row: number; readonly contents: readonly CellContent[] }[];
  /** Those of the sheet into which something new goes. */
  readonly written: readonly number[];
}

/** The first run of free rows that holds them all; else the first free rows, wherever they are. */
function chosenRows(free: readonly number[], count: number): number[] {
  for (let start = 0; start + count <= free.length; start += 1) {
    const run = free.slice(start, start + count);
    if ((run[count - 1] ?? 0) - (run[0] ?? 0) === count - 1) return run;
  }
  return free.slice(0, count);
}

/** One rectangle for each run of rows side by side. */
function rectangles(
  { sheet, column }: ListNow,
  rows: readonly { readonly row: number; readonly before: readonly CellContent[]; readonly after: readonly CellContent[] }[],
): CellsChanged[] {
  const changes: { sheet: string; row: number; column: number; before: (readonly CellContent[])[]; after: (readonly CellContent[])[] }[] = [];
  for (const { row, before, after } of [...rows].sort((one, other) => one.row - other.row)) {
    const last = changes[changes.length - 1];
    if (last === undefined || last.row + last.before.length !== row)
      changes.push({ sheet: sheet.name, row, column, before: [before], after: [after] });
    else {
      last.before.push(before);
      last.after.push(after);
    }
  }
  return changes;
}

function filled({ places, width }: ListNow, aircraft: CellValue, row: RowContents): CellContent[] {
  const line = Array<CellContent>(width).fill('');
  for (const [key, content] of [['aircraft', aircraft] as const, ...Object.entries(row)]) {
    const place = places.get(key);
    if (place === undefined) throw new Error(`the list has no column "${key}"`);
    line[place] = content;
  }
  return line;
}

interface Standing {
  readonly all: readonly ListRow[];
  /** Those of the aircraft. */
  readonly own: readonly ListRow[];
  /** Those that new rows can take. */
  readonly free: readonly number[];
}

/** `keep`: the aircraft's rows stay, and the new ones stand below them. */
export function standing(list: ListNow, aircraft: CellValue, keep: boolean): Standing {
  const all = rowsOf(list);
  const isOwn = (row: ListRow): boolean => sameAircraft(valueAt(row, list, 'aircraft'), aircraft);
  const own = all.filter(isOwn);
  const lastKept = keep ? Math.max(0, ...own.map(({ row }) => row)) : 0;
  return { all, own, free: all.filter((row) => row.row > lastKept && (isBlankRow(row) || (!keep && isOwn(row)))).map(({ row }) => row) };
}

export const tooFewRows = (list: ListNow, needed: number, found: number, why = ''): Error =>
  new Error(
    `"${list.sheet.name}" has too few blank rows there: ${needed} needed, ${found} found. ${why}Put rows in above row ${list.last}, then ask again.`,
  );

export function listChange(list: ListNow, aircraft: CellValue, rows: readonly RowContents[], keep: boolean): ListChange {
  const { all, own, free } = standing(list, aircraft, keep);
  if (free.length < rows.length) throw tooFewRows(list, rows.length, free.length);
  const written = chosenRows(free, rows.length);
  const after = new Map(written.map((row, index) => [row, filled(list, aircraft, rows[index] ?? {})]));
  const emptied = Array<CellContent>(list.width).fill('');
  const touched = all.filter(({ row, contents }) => after.has(row) || (!keep && own.some((one) => one.row === row) && contents.length > 0));
  const kept = keep ? own.map(({ row, contents }) => ({ row, contents })) : [];
  return {
    changes: rectangles(
      list,
      touched.map(({ row, contents }) => ({ row, before: contents, after: after.get(row) ?? emptied })),
    ),
    rows: [...kept, ...[...after].map(([row, contents]) => ({ row, contents }))].sort((one, other) => one.row - other.row),
    written,
  };
}
