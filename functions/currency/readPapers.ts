// Readers of the pilot's papers, and of the choice of whose rules.
import { dayNumber } from '../../core/basics/civilDate';
import type { Paper } from '../../core/currency/papers';
import { authorities } from '../../core/currency/rules';
import type { Authority } from '../../core/currency/rules/rule';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { numberFromCell } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';

/** Filled rows with their places, from 1. Fewer columns than `fewest` cannot hold the table. */
function filledRows(raw: CellValue, mustBe: string, fewest: number): { readonly row: readonly CellValue[]; readonly place: number }[] {
  const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
  const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
  const width = range[0]?.length ?? 0;
  if (used.length > 0 && width < fewest) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, width)}`);
  return used;
}

const papersMustBe = 'rows of paper, date or word, months';
/** A date of birth may lie long before any date of flying. */
const earliestYear = 1900;

const isMonths = (value: number | undefined): value is number => value !== undefined && Number.isInteger(value) && value > 0 && value <= 600;

export function paperRows(help: string): Parameter<readonly Paper[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): readonly Paper[] =>
    filledRows(raw, papersMustBe, 2).map(({ row: [item, value, months], place }) => {
      const named = namedFromCell(item);
      if (named === undefined) throw new ArgumentError(`${papersMustBe} (paper in words)`, inWords(item), place, 1);
      const lasts = numberFromCell(months);
      if (!isBlank(months) && !isMonths(lasts)) throw new ArgumentError(`${papersMustBe} (whole months 1 to 600)`, inWords(months), place, 3);
      const date = civilDateFromCell(value, dates, earliestYear);
      return {
        item: named,
        day: date === undefined ? undefined : dayNumber(date),
        text: typeof value === 'string' || typeof value === 'number' ? String(value).trim() : '',
        months: lasts,
      };
    });
  return { shape: 'table', unit: 'rows', mustBe: papersMustBe, help, optional: undefined, read };
}

/** One authority or several: "FAA", "FAA, EASA". */
export function chosenAuthorities(help: string): Parameter<readonly Authority[]> & { readonly shape: 'cell' } {
  const names = authorities.map(({ name }) => name);
  const mustBe = `${names.join(', ')}, or several of them`;
  const read = (raw: CellValue): readonly Authority[] => {
    const words =
      typeof raw === 'string'
        ? raw
            .split(/[,;+&]|\band\b/i)
            .map(plainWords)
            .filter((word) => word !== '')
        : [];
    const found = words.map((word) => authorities.find(({ name }) => plainWords(name) === word));
    const known = found.filter((authority) => authority !== undefined);
    if (words.length === 0 || known.length < found.length) throw new ArgumentError(mustBe, inWords(raw));
    return [...new Set(known)];
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}
