// Reader of the ledger's licences. A cell that cannot be read spoils only its own row: what could be read of it stands, and the rest is said.
import { dayNumber } from '../../core/basics/civilDate';
import type { DiaryLicence } from '../../core/ledger/diary';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { currencyFromCell } from './readMoney';
import { numberFromCell } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';

export interface LicenceRow {
  /** From 1, below the heads where they are given. */
  readonly row: number;
  /** Undefined where its aircraft or its database cannot be read. */
  readonly licence: DiaryLicence | undefined;
  /** What cannot be read of it, in words. */
  readonly slips: readonly string[];
}

const rowsOf = 'rows of aircraft, database, licence end, renewed every so many months, cost, currency';
const endHead = 'licence end';

/** What a cell holds, with a slip where it holds something that cannot be read. */
function read<Value>(cell: CellValue, found: Value | undefined, mustBe: string): { readonly found: Value | undefined; readonly slip: string[] } {
  return { found, slip: found !== undefined || isBlank(cell) ? [] : [`${mustBe}; got ${inWords(cell)}`] };
}

const isMonths = (value: number): boolean => Number.isInteger(value) && value > 0 && value <= 600;
const numberThat = (cell: CellValue, fits: (value: number) => boolean): number | undefined => {
  const value = numberFromCell(cell);
  return value !== undefined && fits(value) ? value : undefined;
};

function licenceRow([aircraft, database, end, months, cost, currency]: readonly CellValue[], row: number, dates: DateHost): LicenceRow {
  const day = civilDateFromCell(end, dates);
  const [named, data] = [namedFromCell(aircraft), namedFromCell(database)];
  const ends = read(end, day === undefined ? undefined : dayNumber(day), 'licence end must be a date');
  const every = read(months, numberThat(months, isMonths), 'months must be a whole number from 1 to 600');
  const costs = read(
    cost,
    numberThat(cost, (value) => Math.abs(value) <= 1e9),
    'cost must be a number',
  );
  const code = read(currency, currencyFromCell(currency), 'currency must be three letters, such as EUR');
  const missing = named !== undefined && data !== undefined ? [] : [`${named === undefined ? 'aircraft' : 'database'} missing, or not in words`];
  return {
    row,
    licence:
      named === undefined || data === undefined
        ? undefined
        : { aircraft: named, database: data, endDay: ends.found, everyMonths: every.found, cost: costs.found, currency: code.found },
    slips: [...missing, ...ends.slip, ...every.slip, ...costs.slip, ...code.slip],
  };
}

/** Columns beyond the sixth are not read; the fourth to the sixth may be missing. A first row of heads is passed over. */
export function licenceRows(help: string): Parameter<readonly LicenceRow[]> & { readonly shape: 'table' } {
  const readRows = (raw: CellValue, dates: DateHost): readonly LicenceRow[] => {
    const given: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const head = given[0]?.[2];
    const range = typeof head === 'string' && plainWords(head) === endHead ? given.slice(1) : given;
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.slice(0, 6).every(isBlank));
    const width = given[0]?.length ?? 0;
    if (used.length > 0 && width < 3) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(given.length, width)}`);
    return used.map(({ row, place }) => licenceRow(row, place, dates));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read: readRows };
}

/** The licences of which aircraft and database are known. */
export const readable = (rows: readonly LicenceRow[]): DiaryLicence[] => rows.flatMap(({ licence }) => licence ?? []);
