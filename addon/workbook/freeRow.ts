// Where the next row of a list of flights goes.
import type { Area } from './areas';
import type { SheetSnapshot } from './snapshot';
import { eachRow, valueAt } from './tripEntries';

/** The first row below the last that holds anything. */
export function freeRow(log: SheetSnapshot, columns: readonly Area[]): number {
  const rows = columns[0] === undefined ? [] : eachRow(columns[0]).map(({ row }) => row);
  const filled = rows.filter((row) => columns.some((area) => valueAt(log, { ...area, row }) !== ''));
  const row = (filled[filled.length - 1] ?? (rows[0] ?? 1) - 1) + 1;
  if (!rows.includes(row))
    throw new Error(`There is no room below the last flight on "${log.name}". Insert rows above its last row, then ask again.`);
  return row;
}
