// The rows of a table under one header row, each as a reader of its columns.
import { isBlank, isRange, type CellValue, type RangeValue } from './cellValues';
import { columnPlaces, type HeadingsOptions } from './readHeadings';

export interface HeadedRow<Column extends string> {
  /** Place within the table, the header being row 1. */
  readonly row: number;
  readonly cell: (column: Column) => CellValue;
}

/** A wholly blank row is undefined, so that places are kept. */
export function headedRows<Column extends string>(raw: CellValue, options: HeadingsOptions<Column>): (HeadedRow<Column> | undefined)[] {
  const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
  const places = columnPlaces(range, options);
  return range.slice(1).map((row, index) => {
    if ([...places.values()].every((at) => isBlank(row[at]))) return undefined;
    return { row: index + 2, cell: (column: Column): CellValue => row[places.get(column) ?? -1] };
  });
}
