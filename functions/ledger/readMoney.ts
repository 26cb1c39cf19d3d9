// Readers of the treasurer's cells: a currency, and the rows that say who takes part in which aircraft.
import type { Participation, ShareRule } from '../../core/ledger/shares';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { numberFromCell, numberInWords } from '../registry/readNumber';
import { choice, namedFromCell } from '../registry/readText';

/** Three letters, in capitals. */
export function currencyFromCell(cell: CellValue): string | undefined {
  const code = typeof cell === 'string' ? cell.trim().toUpperCase() : '';
  return /^[A-Z]{3}$/.test(code) ? code : undefined;
}

export function currencyCode(help: string): Parameter<string> & { readonly shape: 'cell' } {
  const mustBe = 'a currency as three letters, such as EUR';
  const read = (raw: CellValue): string => {
    const code = currencyFromCell(raw);
    if (code === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return code;
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}

/** How a cost is shared. */
export const shareRule = (help: string) =>
  choice<ShareRule>({
    words: ['equal', 'hours', 'share'],
    also: { 'equal parts': 'equal', 'equal part': 'equal', 'hours flown': 'hours', 'named share': 'share', shares: 'share' },
    help,
  });

const rowsOf = 'rows of member, aircraft, hours, share';
const columns = 4;
const max = 1_000_000;

function part(cell: CellValue, row: number, column: number): number {
  const value = isBlank(cell) ? 0 : numberFromCell(cell);
  if (value === undefined || value < 0 || value > max)
    throw new ArgumentError(`${rowsOf} (hours and share 0 to 1,000,000)`, numberInWords(cell), row, column);
  return value;
}

function participation([member, aircraft, hours, share]: readonly CellValue[], row: number): Participation {
  const name = (cell: CellValue, column: number) => {
    const named = namedFromCell(cell);
    if (named === undefined) throw new ArgumentError(`${rowsOf} (names in words)`, inWords(cell), row, column);
    return named;
  };
  return { member: name(member, 1), aircraft: name(aircraft, 2), hours: part(hours, row, 3), share: part(share, row, 4) };
}

export function participationRows(help: string): Parameter<readonly Participation[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue): readonly Participation[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const width = range[0]?.length ?? 0;
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
    if (width !== columns) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(range.length, width)}`);
    return used.map(({ row, place }) => participation(row, place));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read };
}
