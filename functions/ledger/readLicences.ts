// Reader of the ledger's licences. A cell that cannot be read spoils only its own row: what could be read of it stands, and the rest is said.
import { dayNumber } from '../../core/basics/civilDate';
import type { DiaryLicence } from '../../core/ledger/diary';
import type { LicenceCover } from '../../core/ledger/licences';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { currencyFromCell, shareRule } from './readMoney';
import { dataSeriesFromCell } from './readSeries';
import { unreadableMeansUndefined } from '../registry/modifiers';
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

const rowsOf = 'rows of aircraft, database, licence end, renewed every so many months, cost, currency, shared by, starts, box or card, series';
/** With that many columns the list says what each licence covers. */
const columnsWithCover = 8;
const everyOne = 'all';
const endHead = 'licence end';

/** What a cell holds, with a slip where it holds something that cannot be read. */
function read<Value>(cell: CellValue, found: Value | undefined, mustBe: string): { readonly found: Value | undefined; readonly slip: string[] } {
  return { found, slip: found !== undefined || isBlank(cell) ? [] : [`${mustBe}; got ${inWords(cell)}`] };
}

const sharing = unreadableMeansUndefined(shareRule(''));
const isShareRule = (cell: CellValue, dates: DateHost): boolean => sharing.read(cell, dates) !== undefined;
const isMonths = (value: number): boolean => Number.isInteger(value) && value > 0 && value <= 600;
const numberThat = (cell: CellValue, fits: (value: number) => boolean): number | undefined => {
  const value = numberFromCell(cell);
  return value !== undefined && fits(value) ? value : undefined;
};

/** Several names in a cell, each by its key; undefined for every one, which a blank says too. */
function namesIn(cell: CellValue, between: RegExp): readonly string[] | undefined {
  const named = namedFromCell(cell);
  if (named === undefined || named.key === everyOne) return undefined;
  const each = String(cell).split(between).map(plainWords);
  return [...new Set([named.key, ...each.filter((one) => one !== '')])];
}

interface CoverRead {
  readonly cover: LicenceCover;
  readonly slips: readonly string[];
}

/** Databases with commas or semicolons between; boxes and series with semicolons, since both may hold commas. */
function coverOf(cells: readonly CellValue[], endDay: number | undefined, dates: DateHost): CoverRead {
  const [, database, , , , , sharedBy, starts, box, series] = cells;
  const day = civilDateFromCell(starts, dates);
  const start = read(starts, day === undefined ? undefined : dayNumber(day), 'starts must be a date');
  const boxes = read(box, namedFromCell(box), 'box or card must be in words');
  const each = isBlank(series) || (typeof series === 'string' && plainWords(series) === everyOne) ? [] : String(series).split(/\s*;\s*/);
  const known = each.flatMap((one) => dataSeriesFromCell(one, dates)?.name ?? []);
  const ofSeries = known.length < each.length ? [`series must be like that of a card, such as 28-day; got ${inWords(series)}`] : [];
  const rule = isBlank(sharedBy) || isShareRule(sharedBy, dates) ? [] : [`shared by must be equal, hours or share; got ${inWords(sharedBy)}`];
  const isTurned = start.found !== undefined && endDay !== undefined && endDay < start.found;
  const unclear = [...start.slip, ...boxes.slip, ...ofSeries, ...(isTurned ? ['it ends before it starts'] : [])];
  return {
    cover: {
      databases: namesIn(database, /[,;]/),
      boxes: namesIn(box, /;/),
      series: each.length === 0 || known.length < each.length ? undefined : known,
      startDay: start.found,
      isUnclear: unclear.length > 0,
    },
    slips: [...unclear, ...rule],
  };
}

/** Infinity for a licence without an end. */
function endFromCell(cell: CellValue, dates: DateHost): number | undefined {
  if (typeof cell === 'string' && plainWords(cell) === 'no end') return Infinity;
  const day = civilDateFromCell(cell, dates);
  return day === undefined ? undefined : dayNumber(day);
}

function licenceRow(cells: readonly CellValue[], row: number, width: number, dates: DateHost): LicenceRow {
  const [aircraft, database, end, months, cost, currency] = cells;
  const [named, data] = [namedFromCell(aircraft), namedFromCell(database)];
  const ends = read(end, endFromCell(end, dates), 'licence end must be a date, or no end');
  const every = read(months, numberThat(months, isMonths), 'months must be a whole number from 1 to 600');
  const costs = read(
    cost,
    numberThat(cost, (value) => Math.abs(value) <= 1e9),
    'cost must be a number',
  );
  const code = read(currency, currencyFromCell(currency), 'currency must be three letters, such as EUR');
  const covering = width < columnsWithCover ? undefined : coverOf(cells, ends.found, dates);
  const missing = named !== undefined && data !== undefined ? [] : [`${named === undefined ? 'aircraft' : 'database'} missing, or not in words`];
  return {
    row,
    licence:
      named === undefined || data === undefined
        ? undefined
        : {
            ...{ aircraft: named, database: data, endDay: ends.found, everyMonths: every.found, cost: costs.found, currency: code.found },
            cover: covering?.cover,
          },
    slips: [...missing, ...ends.slip, ...every.slip, ...costs.slip, ...code.slip, ...(covering?.slips ?? [])],
  };
}

const isEntry = (cells: readonly CellValue[]): boolean => ![...cells.slice(0, 6), ...cells.slice(7, 10)].every(isBlank);

/** Columns beyond the tenth are not read; those from the fourth on may be missing. A first row of heads is passed over. */
export function licenceRows(help: string): Parameter<readonly LicenceRow[]> & { readonly shape: 'table' } {
  const readRows = (raw: CellValue, dates: DateHost): readonly LicenceRow[] => {
    const given: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const head = given[0]?.[2];
    const range = typeof head === 'string' && plainWords(head) === endHead ? given.slice(1) : given;
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => isEntry(row));
    const width = given[0]?.length ?? 0;
    if (used.length > 0 && width < 3) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(given.length, width)}`);
    return used.map(({ row, place }) => licenceRow(row, place, width, dates));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read: readRows };
}

/** The licences of which aircraft and database are known. */
export const readable = (rows: readonly LicenceRow[]): DiaryLicence[] => rows.flatMap(({ licence }) => licence ?? []);
