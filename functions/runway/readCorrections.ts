// Reads an owner's corrections to a book distance: rows of name, percent, per amount, amount.
import type { Correction, CorrectionOf, WarmthAmount, WindAmount } from '../../core/runway/distanceCorrections';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isErrorText, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { numberFromCell, numberInWords } from '../registry/readNumber';
import { plainWords } from '../registry/readText';

const rowsOf = 'rows of name, percent, per amount, amount';
const columns = 4;
const largest = 1_000_000;

function readNumberCell(cell: CellValue, mustBe: string, fits: (value: number) => boolean, row: number, column: number): number {
  const value = numberFromCell(cell);
  if (value === undefined || !fits(value)) throw new ArgumentError(`${rowsOf} (${mustBe})`, numberInWords(cell), row, column);
  return value;
}

/** "headwind", "tailwind", or a share of either: "headwind 50 %", "tailwind 150 percent". */
const windName = /^(headwind|tailwind)(?: (\d{1,3}) ?(?:%|percent))?$/;
/** Behind a name: what the percentage is of, where it is not of the distance read. */
const ofName = /[,(]? *(?:(?:percent|%) )?(?:of (?:the )?)?(ground roll|ground run|over 50 ft)( only)? *\)?$/i;

export interface CorrectionName {
  readonly name: string;
  readonly of: CorrectionOf | undefined;
}

/** "dry grass, of ground roll" is dry grass, and a part of the ground roll. */
export function correctionNamed(words: string): CorrectionName {
  const found = ofName.exec(words);
  if (found === null || found.index === 0) return { name: words, of: undefined };
  return {
    name: words.slice(0, found.index).trim(),
    of: /50/.test(found[1] ?? '') ? 'over 50 ft' : found[2] === undefined ? 'ground roll' : 'ground roll only',
  };
}

/** Warmer than standard, for a table without temperatures. */
const isWarmth = (name: string): boolean => /^(temperature )?above (standard|isa)( temperature)?$/.test(plainWords(name));

export function windOf(name: string): WindAmount | undefined {
  const found = windName.exec(plainWords(correctionNamed(name).name));
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
  if (wind.from === 'ahead')
    return readNumberCell(cell, 'percent of a headwind -1,000 to 0, since it shortens', (value) => inRange(value) && value <= 0, row, 2);
  return readNumberCell(cell, 'percent of a tailwind 0 to 1,000, since it lengthens', (value) => inRange(value) && value >= 0, row, 2);
}

/** What a blank amount stands for in a row of this name, other than the wind; undefined where a blank is a mistake. */
export type BlankAmount = (name: string) => number | undefined;

function readAmount(cell: CellValue, given: WindAmount | WarmthAmount | undefined, blank: number | undefined, row: number): Correction['amount'] {
  const meant = isBlank(cell) ? (given ?? blank) : undefined;
  if (meant !== undefined) return meant;
  return readNumberCell(
    cell,
    'amount 0 to 1,000,000, blank only for headwind, tailwind and above standard',
    (value) => value >= 0 && value <= largest,
    row,
    4,
  );
}

function readRow([named, percent, perAmount, amount]: readonly CellValue[], blank: BlankAmount, row: number): Correction {
  const words = readName(named, row);
  const { name, of } = correctionNamed(words);
  const wind = windOf(words);
  return {
    name: words,
    percent: readPercent(percent, wind, row),
    perAmount: readNumberCell(perAmount, 'per amount more than 0 and at most 1,000,000', (value) => value > 0 && value <= largest, row, 3),
    amount: readAmount(amount, wind ?? (isWarmth(name) ? { from: 'above standard' } : undefined), blank(name), row),
    of,
  };
}

/** One headwind is one correction, under whatever share it is counted. */
const kindOf = ({ name }: Correction): string => windOf(name)?.from ?? plainWords(correctionNamed(name).name);

/** Both count for one distance: the same thing twice. */
const overlap = (one: Correction, other: Correction): boolean =>
  kindOf(one) === kindOf(other) && (one.of === other.of || ![one.of, other.of].every((of) => of === 'over 50 ft' || of === 'ground roll only'));

/** Left out, or all blank, there are none. */
export function correctionRows(help: string, blank: BlankAmount = () => undefined): Parameter<readonly Correction[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue): readonly Correction[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
    const width = range[0]?.length ?? 0;
    if (used.length > 0 && width !== columns) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(range.length, width)}`);
    const before: Correction[] = [];
    return used.map(({ row, place }) => {
      const correction = readRow(row, blank, place);
      if (before.some((one) => overlap(one, correction)))
        throw new ArgumentError(`${rowsOf} (each correction once)`, `${inWords(correction.name)} again`, place, 1);
      before.push(correction);
      return correction;
    });
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read };
}
