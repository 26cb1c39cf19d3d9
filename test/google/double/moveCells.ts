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

/** Rows that hold nothing but cells: rows below move up with their merges, heights and conditional formats. */
export function removeRows(sheet: FakeSheet, start: number, count: number): void {
  const last = start + count - 1;
  if (start < 1 || count < 1 || last > sheet.rows || count === sheet.rows) throw new Error('those rows cannot be deleted');
  const named = sheet.document.names.some(({ range }) => range.sheet === sheet && range.area.lastRow >= start);
  if (named || sheet.protections.length > 0 || sheet.charts.length > 0)
    throw new Error('the double deletes no rows at or above a named range, and none of a sheet with a chart or a protection');
  const moved = (row: number): number => (row > last ? row - count : row);
  const isGone = (row: number): boolean => row >= start && row <= last;
  /** What of an area is left. */
  const left = (area: Area): Area | undefined => {
    const lastRow = area.lastRow > last ? area.lastRow - count : Math.min(area.lastRow, start - 1);
    const row = isGone(area.row) ? start : moved(area.row);
    return row <= lastRow ? { ...area, row, lastRow } : undefined;
  };
  const cells = [...sheet.cells]
    .map(([place, cell]) => ({ place: place.split('-').map(Number), cell }))
    .filter(({ place: [row = 0] }) => !isGone(row));
  sheet.cells.clear();
  for (const {
    place: [row = 0, column = 0],
    cell,
  } of cells)
    sheet.cells.set(`${moved(row)}-${column}`, cell);
  const merges = sheet.merges.map(left).filter((one) => one !== undefined);
  sheet.merges.splice(0, sheet.merges.length, ...merges);
  const heights = [...sheet.heights].filter(([row]) => !isGone(row));
  sheet.heights.clear();
  for (const [row, height] of heights) sheet.heights.set(moved(row), height);
  sheet.rules = sheet.rules.flatMap(({ facts }) => {
    const ranges = facts.ranges.map(({ area }) => left(area)).filter((one) => one !== undefined);
    return ranges.length === 0 ? [] : [new FakeConditionalFormatRule({ ...facts, ranges: ranges.map((area) => new FakeRange(sheet, area)) })];
  });
  sheet.rows -= count;
}
