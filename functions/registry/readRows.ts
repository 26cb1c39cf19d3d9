// Reader of a small table without a header: rows of numbers, each column with its own unit and limits.
import { ArgumentError } from './argumentError';
import { isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';

export interface ColumnOptions {
  readonly name: string;
  /** Reads a cell of the column. */
  readonly cell: Pick<Parameter<number>, 'read'>;
}

/** Blank rows are passed over; a partly blank row is an error. */
export function limitedRows(options: {
  readonly help: string;
  readonly columns: readonly ColumnOptions[];
}): Parameter<readonly (readonly number[])[]> & { readonly shape: 'table' } {
  const { columns } = options;
  const mustBe = `rows of ${columns.map(({ name }) => name).join(', ')}`;
  const readRow = (row: readonly CellValue[], place: number, dates: DateHost): number[] =>
    columns.map(({ name, cell }, index) => {
      try {
        return cell.read(row[index], dates);
      } catch (thrown) {
        if (!(thrown instanceof ArgumentError)) throw thrown;
        throw new ArgumentError(`${mustBe} (${name} ${thrown.mustBe})`, thrown.got, place, index + 1);
      }
    });
  const read = (raw: CellValue, dates: DateHost): readonly (readonly number[])[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const width = range[0]?.length ?? 0;
    if (width !== columns.length) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, width)}`);
    return range.flatMap((row, index) => (row.every(isBlank) ? [] : [readRow(row, index + 1, dates)]));
  };
  return { shape: 'table', unit: 'rows', mustBe, help: options.help, optional: undefined, read };
}
