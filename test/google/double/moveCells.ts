// What copying a range and deleting rows do to a sheet of the double. Stricter than the platform: what would shift or
// tear something that the add-on does not mean to shift is refused.
import { areaText, type Area } from '../../../addon/workbook/areas';
import { FakeConditionalFormatRule } from './builders';
import { FakeRange } from './range';
import type { FakeSheet } from './sheet';

const within = (inner: Area, outer: Area): boolean =>
  inner.row >= outer.row && inner.column >= outer.column && inner.lastRow <= outer.lastRow && inner.lastColumn <= outer.lastColumn;

function shared(one: Area, other: Area): Area | undefined {
  const area = {
    row: Math.max(one.row, other.row),
    column: Math.max(one.column, other.column),
    lastRow: Math.min(one.lastRow, other.lastRow),
    lastColumn: Math.min(one.lastColumn, other.lastColumn),
  };
  return area.row <= area.lastRow && area.column <= area.lastColumn ? area : undefined;
}

const shifted = ({ row, column, lastRow, lastColumn }: Area, down: number, across: number): Area => ({
  row: row + down,
  column: column + across,
  lastRow: lastRow + down,
  lastColumn: lastColumn + across,
});

/** One copy of the source with its top left cell `down` and `across` from where it stands. */
function copyOnce(source: FakeRange, onto: FakeSheet, down: number, across: number): void {
  const { sheet: from, area } = source;
  for (let { row } = area; row <= area.lastRow; row += 1) {
    for (let { column } = area; column <= area.lastColumn; column += 1) {
      const cell = from.cell(row, column);
      if (cell.formula !== '') throw new Error('the double copies no formula: its references would shift');
      const { note } = onto.cell(row + down, column + across);
      Object.assign(onto.cell(row + down, column + across), cell, from.document.pastesAll ? {} : { note });
    }
  }
  for (const merge of from.merges.filter((one) => shared(one, area) !== undefined)) {
    if (!within(merge, area)) throw new Error(`the copied range cuts the merged range ${areaText(merge)}`);
    onto.addMerge(shifted(merge, down, across));
  }
  if (!from.document.pastesAll) return;
  const rules = from.rules.flatMap(({ facts }) => {
    const ranges = facts.ranges.map((range) => shared(range.area, area)).filter((one) => one !== undefined);
    return ranges.length === 0
      ? []
      : [new FakeConditionalFormatRule({ ...facts, ranges: ranges.map((one) => new FakeRange(onto, shifted(one, down, across))) })];
  });
  onto.rules = [...onto.rules, ...rules];
}

/**
 * A paste of everything: values, number formats, looks, borders, validations, merges; notes and conditional formats only where
 * the document pastes all, for the reference of CopyPasteType does not promise them; never widths, heights, frozen rows,
 * protections, names, developer metadata. A smaller source fills the destination by repeating.
 */
export function pasteAll(source: FakeRange, destination: FakeRange): void {
  const [rows, columns] = [source.getNumRows(), source.getNumColumns()];
  if (destination.getNumRows() % rows !== 0 || destination.getNumColumns() % columns !== 0)
    throw new Error('the destination is no whole number of copies of the source');
  if (source.sheet === destination.sheet && shared(source.area, destination.area) !== undefined) throw new Error('a range is not copied over itself');
  for (let { row } = destination.area; row <= destination.area.lastRow; row += rows) {
    for (let { column } = destination.area; column <= destination.area.lastColumn; column += columns) {
      copyOnce(source, destination.sheet, row - source.area.row, column - source.area.column);
    }
  }
}

/** What becomes of an area when rows are put in or taken out; undefined where nothing of it is left. */
type Moved = (area: Area) => Area | undefined;

const reference = /"(?:[^"]|"")*"|((?:'(?:[^']|'')*'|[A-Za-z_]\w*)!)?(?<![\w.$])(\$?[A-Z]{1,3}\$?)(\d+)(?::(\$?[A-Z]{1,3}\$?)(\d+))?(?![\w(.])/g;

/** A formula's ranges on the sheet follow its rows. */
function followed(formula: string, isOwn: boolean, name: string, moved: Moved): string {
  return formula.replace(reference, (whole: string, sheet?: string, from?: string, row?: string, to?: string, lastRow?: string) => {
    const there = sheet === undefined ? isOwn : sheet.slice(0, -1).replace(/^'|'$/g, '').replace(/''/g, "'") === name;
    if (from === undefined || !there) return whole;
    const area = moved({ row: Number(row), column: 1, lastRow: Number(lastRow ?? row), lastColumn: 1 });
    if (area === undefined) return `${sheet ?? ''}#REF!`;
    return `${sheet ?? ''}${from}${area.row}${to === undefined ? '' : `:${to}${area.lastRow}`}`;
  });
}

/** Everything of the sheet and every formula of the document goes with its rows. New rows are bare: nobody promises more. */
function moveRows(sheet: FakeSheet, moved: Moved): void {
  const here = (row: number): number | undefined => moved({ row, column: 1, lastRow: row, lastColumn: 1 })?.row;
  const rangesOf = (ranges: readonly FakeRange[]): FakeRange[] =>
    ranges.flatMap(({ area }) => {
      const left = moved(area);
      return left === undefined ? [] : [new FakeRange(sheet, left)];
    });
  const cells = [...sheet.cells].map(([place, cell]) => ({ place: place.split('-').map(Number), cell }));
  sheet.cells.clear();
  for (const {
    place: [row = 0, column = 0],
    cell,
  } of cells)
    if (here(row) !== undefined) sheet.cells.set(`${here(row)}-${column}`, cell);
  const merges = sheet.merges.map(moved).filter((one) => one !== undefined);
  sheet.merges.splice(0, sheet.merges.length, ...merges);
  const heights = [...sheet.heights];
  sheet.heights.clear();
  for (const [row, height] of heights) if (here(row) !== undefined) sheet.heights.set(here(row) ?? 0, height);
  sheet.rules = sheet.rules.flatMap(({ facts }) => {
    const ranges = rangesOf(facts.ranges);
    return ranges.length === 0 ? [] : [new FakeConditionalFormatRule({ ...facts, ranges })];
  });
  for (const protection of sheet.protections) {
    if (protection.range !== undefined) throw new Error('the double moves no protected range');
    protection.free = rangesOf(protection.free);
  }
  for (const other of sheet.document.sheets)
    for (const cell of other.cells.values()) cell.formula = followed(cell.formula, other === sheet, sheet.name, moved);
}

function refuseBelow(sheet: FakeSheet, row: number): void {
  const named = sheet.document.names.some(({ range }) => range.sheet === sheet && range.area.lastRow >= row);
  if (named || sheet.charts.length > 0) throw new Error('the double moves no rows at or above a named range, and none of a sheet with a chart');
}

/** Rows below move up; a range loses the rows that go. */
export function removeRows(sheet: FakeSheet, start: number, count: number): void {
  const last = start + count - 1;
  if (start < 1 || count < 1 || last > sheet.rows || count === sheet.rows) throw new Error('those rows cannot be deleted');
  refuseBelow(sheet, start);
  moveRows(sheet, (area) => {
    const lastRow = area.lastRow > last ? area.lastRow - count : Math.min(area.lastRow, start - 1);
    const row = area.row > last ? area.row - count : Math.min(area.row, start);
    return row <= lastRow ? { ...area, row, lastRow } : undefined;
  });
  sheet.rows -= count;
}

/** Rows below move down; a range with rows on both sides grows. */
export function putRowsIn(sheet: FakeSheet, after: number, count: number): void {
  if (after < 1 || after > sheet.rows || count < 1) throw new Error('those rows cannot be inserted');
  const atEnd = after === sheet.rows;
  sheet.rows += count;
  if (atEnd) return;
  refuseBelow(sheet, after + 1);
  const moved = (row: number): number => (row > after ? row + count : row);
  moveRows(sheet, (area) => ({ ...area, row: moved(area.row), lastRow: moved(area.lastRow) }));
}
