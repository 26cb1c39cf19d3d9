// Readers of the currency log's other tables: the aircraft flown, the pilot's papers, the aircraft's inspections; and whose rules.
import type { AircraftItem } from '../../core/aircraftList';
import { dayNumber } from '../../core/civilDate';
import type { FlownAircraft, TrainingDevice } from '../../core/flightLog';
import type { Paper } from '../../core/pilotList';
import { authorities } from '../../core/rules';
import type { Authority } from '../../core/rules/rule';
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';
import { civilDateFromCell } from './readDate';
import { numberFromCell } from './readNumber';
import { namedFromCell, plainWords, yesNo } from './readText';

type Table<Value> = Parameter<Value> & { readonly shape: 'table' };

/** Filled rows with their places, from 1. Fewer columns than `fewest` cannot hold the table. */
function filledRows(raw: CellValue, mustBe: string, fewest: number): { readonly row: readonly CellValue[]; readonly place: number }[] {
  const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
  const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.every(isBlank));
  const width = range[0]?.length ?? 0;
  if (used.length > 0 && width < fewest) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, width)}`);
  return used;
}

const fleetMustBe = 'rows of aircraft, category, class, type rating, tailwheel, device, hours now';
const devices: readonly TrainingDevice[] = ['FFS', 'FTD', 'ATD'];
const tick = yesNo('');

export type FleetRow = Omit<FlownAircraft, 'category'> & Partial<Pick<FlownAircraft, 'category'>>;

function fleetRow([aircraft, category, ownClass, type, tailwheel, device, hours]: readonly CellValue[], place: number, dates: DateHost): FleetRow {
  const named = namedFromCell(aircraft);
  if (named === undefined) throw new ArgumentError(`${fleetMustBe} (aircraft in words)`, inWords(aircraft), place, 1);
  const known = devices.find((word) => typeof device === 'string' && plainWords(device) === word.toLowerCase());
  if (known === undefined && !isBlank(device)) throw new ArgumentError(`${fleetMustBe} (device FFS, FTD, ATD, or blank for an aircraft)`, inWords(device), place, 6);
  const hoursNow = numberFromCell(hours);
  if (!isBlank(hours) && (hoursNow === undefined || hoursNow < 0)) throw new ArgumentError(`${fleetMustBe} (hours now as a number)`, inWords(hours), place, 7);
  const categoryNamed = namedFromCell(category);
  let tailed = false;
  try {
    tailed = !isBlank(tailwheel) && tick.read(tailwheel, dates);
  } catch {
    throw new ArgumentError(`${fleetMustBe} (tailwheel yes or no)`, inWords(tailwheel), place, 5);
  }
  return { aircraft: named, ...(categoryNamed === undefined ? {} : { category: categoryNamed }), class: namedFromCell(ownClass), type: namedFromCell(type), tailwheel: tailed, device: known, hoursNow };
}

export function fleetRows(help: string): Table<readonly FleetRow[]> {
  const read = (raw: CellValue, dates: DateHost): readonly FleetRow[] => {
    const seen = new Set<string>();
    return filledRows(raw, fleetMustBe, 2).map(({ row, place }) => {
      const found = fleetRow(row, place, dates);
      if (seen.has(found.aircraft.key)) throw new ArgumentError(`${fleetMustBe} (each aircraft once)`, `${inWords(found.aircraft.name)} again`, place, 1);
      seen.add(found.aircraft.key);
      return found;
    });
  };
  return { shape: 'table', unit: 'rows', mustBe: fleetMustBe, help, optional: undefined, read };
}

const papersMustBe = 'rows of paper, date or word, months';
/** A date of birth may lie long before any date of flying. */
const earliestYear = 1900;

const isMonths = (value: number | undefined): value is number => value !== undefined && Number.isInteger(value) && value > 0 && value <= 600;

export function paperRows(help: string): Table<readonly Paper[]> {
  const read = (raw: CellValue, dates: DateHost): readonly Paper[] =>
    filledRows(raw, papersMustBe, 2).map(({ row: [item, value, months], place }) => {
      const named = namedFromCell(item);
      if (named === undefined) throw new ArgumentError(`${papersMustBe} (paper in words)`, inWords(item), place, 1);
      const lasts = numberFromCell(months);
      if (!isBlank(months) && !isMonths(lasts)) throw new ArgumentError(`${papersMustBe} (whole months 1 to 600)`, inWords(months), place, 3);
      const date = civilDateFromCell(value, dates, earliestYear);
      return { item: named, day: date === undefined ? undefined : dayNumber(date), text: typeof value === 'string' || typeof value === 'number' ? String(value) : '', months: lasts };
    });
  return { shape: 'table', unit: 'rows', mustBe: papersMustBe, help, optional: undefined, read };
}

const itemsMustBe = 'rows of aircraft, item, done on, done at hours, was due at hours, months, days, hours';

/** A row of the aircraft's list, why it cannot be read, or undefined where it is blank. */
export type ItemRow = AircraftItem | { readonly unreadable: string } | undefined;

function itemRow(row: readonly CellValue[], dates: DateHost): ItemRow {
  const [aircraft, item, doneOn, doneAt, wasDueAt, months, days, hours] = row;
  if (row.every(isBlank)) return undefined;
  const bad: string[] = [];
  const read = <Value>(cell: CellValue, value: Value | undefined, what: string): Value | undefined => {
    if (!isBlank(cell) && value === undefined) bad.push(`${what} cannot be read: ${inWords(cell)}`);
    return value;
  };
  const at = (cell: CellValue, what: string): number | undefined => {
    const value = numberFromCell(cell);
    return read(cell, value !== undefined && value >= 0 && value <= 1e6 ? value : undefined, what);
  };
  const interval = (cell: CellValue, what: string): number | undefined => {
    const value = numberFromCell(cell);
    return read(cell, value !== undefined && value > 0 && value <= 36_600 && (what === 'hours' || Number.isInteger(value)) ? value : undefined, what);
  };
  const done = civilDateFromCell(doneOn, dates);
  const found = {
    aircraft: namedFromCell(aircraft),
    item: namedFromCell(item),
    day: read(doneOn, done === undefined ? undefined : dayNumber(done), 'date'),
    doneAtHours: at(doneAt, 'done at hours'),
    wasDueAtHours: at(wasDueAt, 'was due at hours'),
    everyMonths: interval(months, 'months'),
    everyDays: interval(days, 'days'),
    everyHours: interval(hours, 'hours'),
  };
  const { aircraft: named, item: what } = found;
  if (named === undefined) bad.push('aircraft missing');
  if (what === undefined) bad.push('item missing');
  return named === undefined || what === undefined || bad.length > 0 ? { unreadable: bad.join('; ') } : { ...found, aircraft: named, item: what };
}

/** Every row of the range, so that the answers can stand beside them. */
export function itemRows(help: string): Table<readonly ItemRow[]> {
  const read = (raw: CellValue, dates: DateHost): readonly ItemRow[] => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    filledRows(raw, itemsMustBe, 3);
    return range.map((row) => itemRow(row, dates));
  };
  return { shape: 'table', unit: 'rows', mustBe: itemsMustBe, help, optional: undefined, read };
}

/** One authority or several: "FAA", "FAA, EASA". */
export function chosenAuthorities(help: string): Parameter<readonly Authority[]> & { readonly shape: 'cell' } {
  const names = authorities.map(({ name }) => name);
  const mustBe = `${names.join(', ')}, or several of them`;
  const read = (raw: CellValue): readonly Authority[] => {
    const words = typeof raw === 'string' ? raw.split(/[,;+&]|\band\b/i).map(plainWords).filter((word) => word !== '') : [];
    const found = words.map((word) => authorities.find(({ name }) => plainWords(name) === word));
    const known = found.filter((authority) => authority !== undefined);
    if (words.length === 0 || known.length < found.length) throw new ArgumentError(mustBe, inWords(raw));
    return [...new Set(known)];
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}
