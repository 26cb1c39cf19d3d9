// Readers of the club's dues. A member that cannot be read stops the whole, since it would change what everybody else pays; a cost, a payment or
// a rate that cannot be read spoils itself alone, and is told.
import { dayNumber } from '../../core/basics/civilDate';
import type { Named } from '../../core/basics/named';
import { partsOfHour, type DuesMember, type DuesRule } from '../../core/ledger/dues';
import { minorUnits } from '../../core/ledger/shares';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell, minutesFromDurationCell } from '../registry/readDate';
import { numberFromCell, numberInWords } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';
import { currencyFromCell } from './readMoney';

type Row = readonly CellValue[];
interface Placed<Value> {
  readonly row: number;
  readonly value: Value;
}

/** The rows of a table in which something stands, below its heads where it has them. */
function tableOf<Value>(
  rowsOf: string,
  head: string,
  width: number,
  help: string,
  read: (cells: Row, row: number, dates: DateHost) => Value,
): Parameter<readonly Placed<Value>[]> & { readonly shape: 'table' } {
  const readRows = (raw: CellValue, dates: DateHost): readonly Placed<Value>[] => {
    const given: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const first = given[0]?.[0];
    const range = typeof first === 'string' && plainWords(first) === head ? given.slice(1) : given;
    const used = range.map((cells, index) => ({ cells, row: index + 1 })).filter(({ cells }) => !cells.slice(0, width).every(isBlank));
    const across = given[0]?.length ?? 0;
    if (used.length > 0 && across < width) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(given.length, across)}`);
    return used.map(({ cells, row }) => ({ row, value: read(cells, row, dates) }));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read: readRows };
}

function dayOf(cell: CellValue, dates: DateHost): number | undefined {
  const found = civilDateFromCell(cell, dates);
  return found === undefined ? undefined : dayNumber(found);
}

const most = 1_000_000;

/** Whole thousandths of a number up to a million. */
function thousandths(cell: CellValue): number | undefined {
  const value = isBlank(cell) ? 0 : numberFromCell(cell);
  return value === undefined || value < 0 || value > most ? undefined : minorUnits(value, 3);
}

/** Hours as a number to three decimals, or as hours and minutes. */
function hourParts(cell: CellValue, dates: DateHost): number | undefined {
  const decimal = thousandths(cell);
  if (decimal !== undefined) return (decimal * partsOfHour) / 1000;
  // No other words: "12.30 h" may be either.
  if (typeof cell === 'number' || (typeof cell === 'string' && !/^\s*\d+:\d{2}\s*$/.test(cell))) return undefined;
  const minutes = minutesFromDurationCell(cell, dates);
  // A duration of a cell comes as a fraction of a day.
  const whole = minutes === undefined ? undefined : Math.round(minutes);
  if (minutes === undefined || whole === undefined || whole < 0 || whole > most || Math.abs(minutes - whole) > 1e-3) return undefined;
  return (whole * partsOfHour) / 60;
}

const membersOf = 'rows of member, joined, left, share, hours, brought forward';

/** A member, what is owed from before still as an amount. */
export type MemberRow = Omit<DuesMember, 'forward'> & { readonly forwardAmount: number };

/** Words that the answer has lines of its own for. */
const reserved: ReadonlySet<string> = new Set(['all', 'nobody', 'unknown']);

function memberRow(cells: Row, row: number, dates: DateHost): MemberRow {
  const [member, joined, left, share, hours, forward] = cells;
  const named = namedFromCell(member);
  if (named === undefined) throw new ArgumentError(`${membersOf} (member in words)`, inWords(member), row, 1);
  if (reserved.has(named.key)) throw new ArgumentError(`${membersOf} (a member not called all, nobody or unknown)`, inWords(member), row, 1);
  const day = (cell: CellValue, column: number): number | undefined => {
    const found = dayOf(cell, dates);
    if (found === undefined && !isBlank(cell))
      throw new ArgumentError(`${membersOf} (joined and left are dates, or blank)`, inWords(cell), row, column);
    return found;
  };
  const parts = thousandths(share);
  if (parts === undefined) throw new ArgumentError(`${membersOf} (share 0 to 1,000,000, to three decimals)`, numberInWords(share), row, 4);
  const flown = hourParts(hours, dates);
  if (flown === undefined)
    throw new ArgumentError(`${membersOf} (hours 0 to 1,000,000, to three decimals, or as 12:30)`, numberInWords(hours), row, 5);
  const forwardAmount = isBlank(forward) ? 0 : numberFromCell(forward);
  if (forwardAmount === undefined || Math.abs(forwardAmount) > most)
    throw new ArgumentError(`${membersOf} (brought forward is an amount of the club's currency)`, numberInWords(forward), row, 6);
  return { named, joinedDay: day(joined, 2), leftDay: day(left, 3), share: parts, hours: flown, forwardAmount };
}

export const duesMembers = (help: string) => tableOf(membersOf, 'member', 6, help, memberRow);

/** What could be read of a row, with what could not. */
interface Read {
  readonly slips: readonly string[];
}

const rules: Readonly<Record<string, DuesRule>> = { equal: 'equal', share: 'share', hours: 'hours', 'per hour': 'per hour' };

export interface CostRow extends Read {
  readonly name: string;
  readonly amount: number | undefined;
  readonly currency: string | undefined;
  readonly fromDay: number | undefined;
  readonly everyMonths: number | undefined;
  readonly toDay: number | undefined;
  readonly rule: DuesRule | undefined;
}

const slip = (isMissing: boolean, words: string): string[] => (isMissing ? [words] : []);

function costRow([name, amount, currency, from, months, to, shared]: Row, _row: number, dates: DateHost): CostRow {
  const value = numberFromCell(amount);
  const isAmount = value !== undefined && Math.abs(value) <= most;
  const code = currencyFromCell(currency);
  const [fromDay, toDay] = [dayOf(from, dates), dayOf(to, dates)];
  const every = numberFromCell(months);
  const isEvery = every !== undefined && Number.isInteger(every) && every >= 1 && every <= 600;
  const rule = typeof shared === 'string' ? rules[plainWords(shared)] : undefined;
  return {
    name: namedFromCell(name)?.name ?? 'a cost without a name',
    ...{ amount: isAmount ? value : undefined, currency: code, fromDay, toDay, rule, everyMonths: isEvery ? every : undefined },
    slips: [
      ...slip(!isAmount, 'no amount up to 1,000,000'),
      ...slip(code === undefined, 'no currency in three letters'),
      ...slip(fromDay === undefined && !isBlank(from), 'from is no date'),
      ...slip(!isEvery && !isBlank(months), 'months is no whole number from 1 to 600'),
      ...slip(toDay === undefined && !isBlank(to), 'to is no date'),
      ...slip(rule === undefined, 'shared by is none of equal, share, hours, per hour'),
    ],
  };
}

export const duesCosts = (help: string) =>
  tableOf('rows of cost, amount, currency, from, every so many months, to, shared by', 'cost', 7, help, costRow);

export interface PaymentRow extends Read {
  readonly member: Named | undefined;
  readonly day: number | undefined;
  readonly amount: number | undefined;
  readonly currency: string | undefined;
  readonly remark: string;
}

function paymentRow([day, member, amount, currency, remark]: Row, _row: number, dates: DateHost): PaymentRow {
  const value = numberFromCell(amount);
  const isAmount = value !== undefined && Math.abs(value) <= most;
  const [on, named, code] = [dayOf(day, dates), namedFromCell(member), currencyFromCell(currency)];
  return {
    ...{ member: named, day: on, amount: isAmount ? value : undefined, currency: code },
    remark: namedFromCell(remark)?.name ?? '',
    slips: [
      ...slip(on === undefined, 'no day'),
      ...slip(named === undefined, 'no member'),
      ...slip(!isAmount, 'no amount up to 1,000,000'),
      ...slip(code === undefined, 'no currency in three letters'),
    ],
  };
}

export const duesPayments = (help: string) => tableOf('rows of day, member, amount, currency, remark', 'day', 4, help, paymentRow);

export interface RateRow {
  readonly currency: string | undefined;
  /** Millionths of a unit of the club's currency for one of this. */
  readonly millionths: number | undefined;
  readonly day: number | undefined;
  readonly source: string;
}

function rateRow([currency, rate, day, source]: Row, _row: number, dates: DateHost): RateRow {
  const value = numberFromCell(rate);
  const isRate = value !== undefined && value > 0 && value <= 100_000;
  return {
    currency: currencyFromCell(currency),
    millionths: isRate ? minorUnits(value, 6) : undefined,
    day: dayOf(day, dates),
    source: namedFromCell(source)?.name ?? '',
  };
}

export const duesRates = (help: string) => tableOf('rows of currency, rate, day, source', 'currency', 3, help, rateRow);
