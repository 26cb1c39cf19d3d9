// Readers of the data ledger: its card columns, in which a cell that cannot be read spoils only its own card, and its licences.
import type { DiaryLicence } from '../../core/ledgerDiary';
import { dayNumber } from '../../core/civilDate';
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';
import { column, optional, unreadableMeansUndefined } from './modifiers';
import { civilDateFromCell, date, timeOfDayZulu } from './readDate';
import { currencyCode } from './readMoney';
import { numberFromCell } from './readNumber';
import { cycleSeries } from './readSeries';
import { namedFromCell, namedText } from './readText';

export const cardAircraft = column(unreadableMeansUndefined(namedText({ mustBe: 'the name of the aircraft', help: 'The aircraft of each card, one card a row.' })));
export const cardDatabase = column(unreadableMeansUndefined(namedText({ mustBe: 'the name of the database', help: 'The database of each card, such as navigation; cards of the same one in one aircraft are compared.' })));
export const cardSeries = column(unreadableMeansUndefined(cycleSeries('How often the data of each card changes, and on which days.')));
export const cardLoaded = column(unreadableMeansUndefined(date('Effective date of the data on each card (not the day somebody loaded it).')));
export const cardChangesAt = optional(
  column(unreadableMeansUndefined(timeOfDayZulu('When on its effective date the data of each card changes: 0000Z by the ICAO annex, 0901Z for US products (from memory).'))),
  0,
  '0000Z',
);

const rowsOf = 'rows of aircraft, database, licence end, renewed every so many months, cost, currency';

function readOr<Value>(cell: CellValue, found: Value | undefined, what: string, row: number, place: number): Value {
  if (found === undefined) throw new ArgumentError(`${rowsOf} (${what})`, inWords(cell), row, place);
  return found;
}

const unlessBlank = <Value>(cell: CellValue, read: () => Value): Value | undefined => (isBlank(cell) ? undefined : read());

/** So that the sentence names the row, which the reader of a lone cell does not know. */
function currencyOf(cell: CellValue, dates: DateHost): string | undefined {
  try {
    return currencyCode('').read(cell, dates);
  } catch (thrown) {
    if (thrown instanceof ArgumentError) return undefined;
    throw thrown;
  }
}

function licence([aircraft, database, end, months, cost, currency]: readonly CellValue[], row: number, dates: DateHost): DiaryLicence {
  const monthCount = numberFromCell(months);
  const amount = numberFromCell(cost);
  return {
    aircraft: readOr(aircraft, namedFromCell(aircraft), 'aircraft in words', row, 1),
    database: readOr(database, namedFromCell(database), 'database in words', row, 2),
    endDay: unlessBlank(end, () => dayNumber(readOr(end, civilDateFromCell(end, dates), 'licence end as a date', row, 3))),
    everyMonths: unlessBlank(months, () => readOr(months, monthCount !== undefined && Number.isInteger(monthCount) && monthCount > 0 && monthCount <= 600 ? monthCount : undefined, 'whole months 1 to 600', row, 4)),
    cost: unlessBlank(cost, () => readOr(cost, amount !== undefined && Math.abs(amount) <= 1e9 ? amount : undefined, 'cost as a number', row, 5)),
    currency: unlessBlank(currency, () => readOr(currency, currencyOf(currency, dates), 'currency as three letters, such as EUR', row, 6)),
  };
}

/** Columns beyond the sixth are not read; the fourth to the sixth may be missing. */
export function licenceRows(help: string): Parameter<readonly DiaryLicence[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): readonly DiaryLicence[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.slice(0, 6).every(isBlank));
    const width = range[0]?.length ?? 0;
    if (used.length > 0 && width < 3) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(range.length, width)}`);
    return used.map(({ row, place }) => licence(row, place, dates));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read };
}
