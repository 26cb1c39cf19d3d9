// Reads an owner's corrections to a book distance: rows of name, percent, per amount, amount.
import type { Correction, WindAmount } from '../../core/runwayBrief';
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isErrorText, isRange, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { Parameter } from './declaration';
import { numberFromCell } from './readNumber';
import { plainWords } from './readText';

const rowsOf = 'rows of name, percent, per amount, amount';
const columns = 4;
const largest = 1_000_000;

function readNumberCell(cell: CellValue, mustBe: string, fits: (value: number) => boolean, row: number, column: number): number {
  const value = numberFromCell(cell);
  if (value === undefined || !fits(value)) throw new ArgumentError(`${rowsOf} (${mustBe})`, inWords(cell), row, column);
  return value;
}

/** "headwind", "tailwind", or a share of either: "headwind 50 %", "tailwind 150 percent". */
const windName = /^(headwind|tailwind)(?: (\d{1,3}) ?(?:%|percent))?$/;

function windOf(name: string): WindAmount | undefined {
  const found = windName.exec(plainWords(name));
  if (found === null) return undefined;
  return { from: found[1] === 'headwind' ? 'ahead' : 'behind', share: Number(found[2] ?? 100) / 100 };
}

function readName(cell: CellValue, row: number): string {
  if (typeof cell !== 'string' || isBlank(cell) || isErrorText(cell)) throw new ArgumentError(`${rowsOf} (name in words)`, inWords(cell), row, 1);
  return cell.trim();
}

/** The wrong sign would turn the wind round, so it is refused. */
function readPercent(cell: CellValue, wind: WindAmount | undefined, row: number): number {
  const inRange = (value: number): boolean => Math.abs(value) <= 1000;
  if (wind === undefined) return readNumberCell(cell, 'percent -1,000 to 1,000', inRange, row, 2);
  if (wind.from === 'ahead') return readNumberCell(cell, 'percent of a headwind -1,000 to 0, since it shortens', (value) => inRange(value) && value <= 0, row, 2);
  return readNumberCell(cell, 'percent of a tailwind 0 to 1,000, since it lengthens', (value) => inRange(value) && value >= 0, row, 2);
}

function readAmount(cell: CellValue, wind: WindAmount | undefined, row: number): number | WindAmount {
  if (isBlank(cell) && wind !== undefined) return wind;
  return readNumberCell(cell, 'amount 0 to 1,000,000, blank only for headwind and tailwind', (value) => value >= 0 && value <= largest, row, 4);
}

function readRow([name, percent, perAmount, amount]: readonly CellValue[], row: number): Correction {
  const words = readName(name, row);
  const wind = windOf(words);
  return {
    name: words,
    percent: readPercent(percent, wind, row),
    perAmount: readNumberCell(perAmount, 'per amount more than 0 and at most 1,000,000', (value) => value > 0 && value <= largest, row, 3),
    amount: readAmount(amount, wind, row),
  };
}

/** One headwind is one correction, under whatever share it is counted. */
const kindOf = ({ name }: Correction): string => windOf(name)?.from ?? plainWords(name);

/** Left out, or all blank, there are none. */
export function correctionRows(help: string): Parameter<readonly Correction[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue): readonly Correction[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
    const width = range[0]?.length ?? 0;
    if (used.length > 0 && width !== columns) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(range.length, width)}`);
    const kinds = new Set<string>();
    return used.map(({ row, place }) => {
      const correction = readRow(row, place);
      if (kinds.has(kindOf(correction))) throw new ArgumentError(`${rowsOf} (each correction once)`, `${inWords(correction.name)} again`, place, 1);
      kinds.add(kindOf(correction));
      return correction;
    });
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read };
}
