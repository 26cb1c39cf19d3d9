// A list of a sheet sorted by one of its columns, as a change of cells: whole rows of entries, values only, so that no formula, no key and no other
// list of the sheet moves. Only lists in which the order of the rows says nothing.
import type { SheetKey } from '../../sheets-templates/template';
import { listNow, rowsOf, isBlankRow, type ListNow, type ListRow } from './aircraft/aircraftLists';
import type { CellsChanged } from './cellChanges';
import type { CellValue, SheetSnapshot } from './snapshot';

/** Elsewhere the order counts: points of a table, legs of a route, members among whom a last cent is given. */
const sortable: Partial<Readonly<Record<SheetKey, Readonly<Record<string, string>>>>> = {
  currency: { flights: 'Flights' },
  dues: { payments: 'Payments' },
  ledger: { licences: 'Licences' },
};

export interface SortableList {
  readonly list: ListNow;
  readonly name: string;
  /** As they are headed now; columns without a heading are left out. */
  readonly columns: readonly { readonly heading: string; readonly place: number }[];
}

const headingsOf = ({ sheet, head, column, width }: ListNow): SortableList['columns'] =>
  Array.from({ length: width }, (_, place) => ({ heading: String(sheet.values[head - 1]?.[column - 1 + place] ?? '').trim(), place })).filter(
    ({ heading }) => heading !== '',
  );

/** The lists of a sheet that can be sorted, where they stand now; none of a sheet whose hidden keys are gone. */
export function sortableLists(sheet: SheetSnapshot): SortableList[] {
  const names = sheet.mark === undefined ? undefined : sortable[sheet.mark.key];
  return Object.entries(names ?? {}).flatMap(([key, name]) => {
    try {
      const list = listNow(sheet, key);
      return [{ list, name, columns: headingsOf(list) }];
    } catch {
      return [];
    }
  });
}

const kind = (value: CellValue): number => (value === '' ? 2 : typeof value === 'string' ? 1 : 0);

/** Numbers and days first, then words, blanks last whichever way; what is alike keeps its order. */
function compared(one: CellValue, other: CellValue, turn: 1 | -1): number {
  const [kindOfOne, kindOfOther] = [kind(one), kind(other)];
  if (kindOfOne !== kindOfOther) return kindOfOne === 2 || kindOfOther === 2 ? kindOfOne - kindOfOther : turn * (kindOfOne - kindOfOther);
  if (kindOfOne === 2) return 0;
  return (
    turn * (kindOfOne === 0 ? Number(one) - Number(other) : String(one).localeCompare(String(other), 'en', { numeric: true, sensitivity: 'base' }))
  );
}

function checkRows(rows: readonly ListRow[], { list: { sheet }, name }: SortableList): void {
  const withFormula = rows.find(({ contents }) => contents.some((content) => typeof content === 'object'));
  if (withFormula !== undefined)
    throw new Error(
      `Row ${withFormula.row} of the list "${name}" on "${sheet.name}" holds a formula, which would read other cells in another row. Put its value in its place first. Nothing was changed.`,
    );
}

export interface Sorted {
  readonly changes: readonly CellsChanged[];
  /** Rows with anything in them. */
  readonly rows: number;
}

/** `place`: of a column of the list. Throws a sentence, with nothing changed. Blank rows go below the filled ones. */
export function sortedList(sortable: SortableList, place: number, direction: 'up' | 'down'): Sorted {
  const { list } = sortable;
  const rows = rowsOf(list);
  checkRows(rows, sortable);
  const filled = rows.filter((row) => !isBlankRow(row));
  const turn = direction === 'up' ? 1 : -1;
  const order = [...filled].sort((one, other) => compared(one.values[place] ?? '', other.values[place] ?? '', turn));
  const blank = Array.from({ length: list.width }, () => '');
  const after = rows.map((_, index) => order[index]?.contents ?? blank);
  const last = rows.reduce((most, row, index) => (isBlankRow(row) ? most : index), 0);
  const change = {
    sheet: list.sheet.name,
    row: list.first,
    column: list.column,
    before: rows.slice(0, last + 1).map(({ contents }) => contents),
    after: after.slice(0, last + 1),
  };
  const isMoved = JSON.stringify(change.before) !== JSON.stringify(change.after);
  return { changes: isMoved ? [change] : [], rows: filled.length };
}
