// Readers of whole ranges: a table under a header row, and a plain block of numbers.
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, isRange, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { Parameter } from './declaration';
import { numberFromCell } from './readNumber';

/** A table as typed by its owner: the header, then rows of numbers or undefined where a cell is blank. */
export interface HeadedTable {
  readonly headers: readonly string[];
  readonly rows: readonly (readonly (number | undefined)[])[];
  /** Place of each row in the range, the header being row 1; blank rows are left out of `rows`. */
  readonly places: readonly number[];
}

const asRange = (raw: CellValue): RangeValue => (isRange(raw) ? (raw as RangeValue) : [[raw]]);

function numberOrBlank(cell: CellValue, mustBe: string, row: number, column: number): number | undefined {
  if (isBlank(cell)) return undefined;
  const value = numberFromCell(cell);
  if (value === undefined) throw new ArgumentError(`${mustBe} (numbers below the header)`, inWords(cell), row, column);
  return value;
}

function readHeaders(header: readonly CellValue[], mustBe: string): string[] {
  return header.map((cell, index) => {
    if (isErrorText(cell) || typeof cell === 'boolean' || cell instanceof Date) {
      throw new ArgumentError(`${mustBe} (words in the header)`, inWords(cell), 1, index + 1);
    }
    return isBlank(cell) ? '' : String(cell).trim();
  });
}

/** Columns to the right of the last header are not part of the table. */
const lastHeader = (headers: readonly string[]): number => headers.reduce((last, header, index) => (header === '' ? last : index + 1), 0);

export function headedTable(help: string): Parameter<HeadedTable> & { readonly shape: 'table' } {
  const mustBe = 'a table of numbers under one header row';
  const read = (raw: CellValue): HeadedTable => {
    const range = asRange(raw);
    const first = range[0] ?? [];
    const headers = readHeaders(first, mustBe);
    const width = lastHeader(headers);
    const bodyRows = range.slice(1).map((row) => row.slice(0, width));
    const used = bodyRows.map((row, index) => ({ row, place: index + 2 })).filter(({ row }) => !row.every(isBlank));
    if (width < 2 || used.length === 0) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, first.length)}`);
    const rows = used.map(({ row, place }) => row.map((cell, index) => numberOrBlank(cell, mustBe, place, index + 1)));
    return { headers: headers.slice(0, width), rows, places: used.map(({ place }) => place) };
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}

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
        if (value === undefined) throw new ArgumentError(mustBe, inWords(cell), place, index + 1);
        return value;
      }),
    );
  };
  return { shape: 'table', unit: 'rows', mustBe, help: options.help, optional: undefined, read };
}
