// A table of one aircraft before it is written: which cells change, what the whole table then is, and what its check says, read by the same
// reader as the briefs.
import { CoreError } from '../../../core/basics/errors';
import type { Verdict } from '../../../core/basics/verdict';
import { checkTyped } from '../../../core/manual/checkTyped';
import type { TypedTable } from '../../../core/manual/columns';
import { answersOf, figureOf } from '../../../core/manual/figure';
import { ArgumentError } from '../../../functions/registry/argumentError';
import { wordCore } from '../../../functions/registry/wordCoreError';
import { readTypedTable } from '../../../functions/manual/readTypedTable';
import { tableAnswer } from '../../../functions/manual/tableCheck';
import { areaText } from '../areas';
import type { CellContent, CellsChanged, RowsMoved } from '../cellChanges';
import type { TableKind } from '../pasted/tableKinds';
import type { TableRow } from '../pasted/tableRows';
import type { CellValue, SheetSnapshot } from '../snapshot';
import { listNow, rowsOf, sameAircraft, valueAt, type ListNow } from './aircraftLists';
import { listChangeWithRoom } from './listRoom';

export interface TablePlan {
  readonly changes: readonly CellsChanged[];
  /** Rows that the list lacks; undefined where it is long enough. */
  readonly rowsIn: RowsMoved | undefined;
  /** Where the new rows go: the cells, and how many of them. */
  readonly place: string;
  readonly rows: number;
  /** The headings of the list, then its rows of the aircraft as they will be. */
  readonly shown: readonly (readonly CellValue[])[];
  readonly verdict: Verdict;
  readonly reasons: string;
  /** Undefined where the table cannot be read. */
  readonly typed: TypedTable | undefined;
}

/** How many rows of the list the aircraft has now. */
export const ownRows = (sheet: SheetSnapshot, { list }: TableKind, aircraft: CellValue): number => {
  const now = listNow(sheet, list);
  return rowsOf(now).filter((row) => sameAircraft(valueAt(row, now, 'aircraft'), aircraft)).length;
};

/** A formula of the user's own is read by what it shows now. */
const shownValue = ({ sheet, column }: ListNow, row: number, content: CellContent, at: number): CellValue =>
  typeof content === 'object' ? (sheet.values[row - 1]?.[column - 1 + at] ?? '') : content;

function read(table: readonly (readonly CellValue[])[], rows: readonly number[]): Pick<TablePlan, 'verdict' | 'reasons' | 'typed'> {
  try {
    const typed = readTypedTable(table);
    // Every figure must be readable, which the check of a plain grid alone does not ask.
    for (const header of answersOf(typed.blocks)) figureOf(typed, header, 'by-heading');
    checkTyped(typed, 'by-heading');
    return {
      ...tableAnswer(
        typed,
        'by-heading',
        rows.map((row) => [row]),
      ),
      typed,
    };
  } catch (thrown) {
    if (thrown instanceof ArgumentError) return { verdict: 'NO', reasons: `it must be ${thrown.mustBe}; got ${thrown.got}`, typed: undefined };
    if (thrown instanceof CoreError) return { verdict: 'NO', reasons: wordCore(thrown), typed: undefined };
    throw thrown;
  }
}

const runsOf = (rows: readonly number[]): (readonly [number, number])[] => {
  const runs: [number, number][] = [];
  for (const row of rows) {
    const last = runs[runs.length - 1];
    if (last?.[1] === row - 1) last[1] = row;
    else runs.push([row, row]);
  }
  return runs;
};

export interface TableToWrite {
  readonly kind: TableKind;
  readonly aircraft: CellValue;
  readonly rows: readonly TableRow[];
  /** What the aircraft has there stays, and the new rows stand below it. */
  readonly keep: boolean;
}

export function tablePlan(sheet: SheetSnapshot, { kind, aircraft, rows, keep }: TableToWrite): TablePlan {
  const change = listChangeWithRoom(listNow(sheet, kind.list), aircraft, rows, keep);
  const { list } = change;
  const headings = rowsOf({ ...list, first: list.head, last: list.head })[0]?.values ?? [];
  const body = change.rows.map(({ row, contents }) => contents.map((content, at) => shownValue(list, row, content, at)));
  const shown = [headings, ...body];
  // The first column holds the names.
  const table = shown.map((line) => line.filter((_, at) => at !== list.places.get('aircraft')));
  const places = runsOf(change.written).map(([row, lastRow]) =>
    areaText({ row, column: list.column, lastRow, lastColumn: list.column + list.width - 1 }),
  );
  return {
    changes: change.changes,
    rowsIn: change.rowsIn,
    place: `${places.join(' and ')} of "${sheet.name}"`,
    rows: change.written.length,
    shown,
    ...read(table, [list.head, ...change.rows.map(({ row }) => row)]),
  };
}
