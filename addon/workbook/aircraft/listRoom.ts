// Rows for a list that is too short: they are put in above its last row, in the step that writes, so that every range of the list grows with them.
import type { RowsMoved } from '../cellChanges';
import { keysIn } from '../keys';
import type { CellValue, SheetSnapshot } from '../snapshot';
import type { ListNow, ListRow } from './aircraftLists';
import { listChange, standing, tooFewRows, type ListChange, type RowContents } from './listChange';

/** As the list stands once the rows are in. */
export interface ListWithRoom extends ListChange {
  readonly list: ListNow;
  /** Undefined where the list is long enough. */
  readonly rowsIn: RowsMoved | undefined;
}

/** Blank rows beyond those that are needed: what is typed below the last row of a list is not read. */
const spare = 10;

function withBlankRows(sheet: SheetSnapshot, above: number, count: number): SheetSnapshot {
  const blank = Array.from({ length: sheet.values.length < above ? 0 : count }, () => (sheet.values[0] ?? []).map((): CellValue => ''));
  return {
    ...sheet,
    values: [...sheet.values.slice(0, above - 1), ...blank, ...sheet.values.slice(above - 1)],
    formulas: sheet.formulas.map((one) => (one.row < above ? one : { ...one, row: one.row + count })),
  };
}

/** By the keys of the columns; a formula cannot go to another row unseen. */
function contentsByKey({ contents }: ListRow, { places }: ListNow): RowContents {
  return Object.fromEntries([...places].flatMap(([key, at]) => (contents[at] === undefined || contents[at] === '' ? [] : [[key, contents[at]]])));
}

/** Above the last row are rows only for what may stand above it: where the last row is kept, all that is kept moves up with the new rows below it. */
function changeIn(list: ListNow, aircraft: CellValue, rows: readonly RowContents[], keep: boolean): ListChange {
  const { own, free } = standing(list, aircraft, keep);
  if (free.length >= rows.length) return listChange(list, aircraft, rows, keep);
  return listChange(list, aircraft, [...own.map((row) => contentsByKey(row, list)), ...rows], false);
}

export function listChangeWithRoom(list: ListNow, aircraft: CellValue, rows: readonly RowContents[], keep: boolean): ListWithRoom {
  const { free } = standing(list, aircraft, keep);
  if (free.length >= rows.length) return { ...listChange(list, aircraft, rows, keep), list, rowsIn: undefined };
  const keys = keysIn(list.sheet)?.cell;
  if (keys === undefined) throw tooFewRows(list, rows.length, free.length);
  const count = rows.length - free.length + spare;
  const longer: ListNow = { ...list, sheet: withBlankRows(list.sheet, list.last, count), last: list.last + count };
  const change = changeIn(longer, aircraft, rows, keep);
  // Their ranges change with the rows, so neither the writing nor the taking back could tell whether they are the same.
  if (change.changes.some(({ before, after }) => [...before, ...after].flat().some((content) => typeof content === 'object')))
    throw tooFewRows(list, rows.length, free.length, 'Formulas are among what would change, so no rows are put in for it. ');
  return { ...change, list: longer, rowsIn: { sheet: list.sheet.name, row: list.last, count, keys } };
}
