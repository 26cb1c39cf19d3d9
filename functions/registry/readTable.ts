// Readers of whole ranges: the parts of a table under a header row, and a plain block of numbers.
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, isRange, quoted, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { Parameter } from './declaration';
import { limitInWords, numberFromCell, numberInWords } from './readNumber';

const asRange = (raw: CellValue): RangeValue => (isRange(raw) ? (raw as RangeValue) : [[raw]]);

/** How its owner finds a row: by the numbers it begins with. */
function beginning(row: readonly CellValue[]): string {
  const shown = row.slice(0, 3).filter((cell) => numberFromCell(cell) !== undefined);
  return shown.length === 0 ? '' : ` in the row that begins ${shown.map((cell) => limitInWords(numberFromCell(cell) ?? 0)).join(', ')}`;
}

export function numberOrBlank(
  cells: readonly CellValue[],
  index: number,
  headers: readonly string[],
  mustBe: string,
  row: number,
): number | undefined {
  const cell = cells[index];
  if (isBlank(cell)) return undefined;
  const value = numberFromCell(cell);
  if (value !== undefined) return value;
  const where = headers[index] === '' ? '' : ` under ${quoted(headers[index] ?? '')}`;
  throw new ArgumentError(`${mustBe} (numbers below the header)`, `${numberInWords(cell)}${where}${beginning(cells)}`, row, index + 1);
}

export function readHeaders(header: readonly CellValue[], mustBe: string): string[] {
  return header.map((cell, index) => {
    if (isErrorText(cell) || typeof cell === 'boolean' || cell instanceof Date || (typeof cell === 'number' && !Number.isFinite(cell))) {
      throw new ArgumentError(`${mustBe} (words in the header)`, inWords(cell), 1, index + 1);
    }
    return isBlank(cell) ? '' : String(cell).trim();
  });
}

/** Columns to the right of the last header are not part of the table. */
export const lastHeader = (headers: readonly string[]): number => headers.reduce((last, header, index) => (header === '' ? last : index + 1), 0);

/** Rows of exactly `columns` numbers each. Blank rows are passed over; a partly blank row is an error. */
export function numberRows(options: {
  readonly help: string;
  readonly columns: readonly string[];
}): Parameter<readonly (readonly number[])[]> & { readonly shape: 'table' } {
  const mustBe = `rows of ${options.columns.length} numbers: ${options.columns.join(', ')}`;
  const read = (raw: CellValue): readonly (readonly number[])[] => {
    const range = asRange(raw);
    const width = range[0]?.length ?? 0;
    if (width !== options.columns.length) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, width)}`);
    const rows = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
    return rows.map(({ row, place }) =>
      row.map((cell, index) => {
        const value = numberFromCell(cell);
        if (value === undefined) throw new ArgumentError(mustBe, numberInWords(cell), place, index + 1);
        return value;
      }),
    );
  };
  return { shape: 'table', unit: 'rows', mustBe, help: options.help, optional: undefined, read };
}
