// Which flights of a file stand in the log already, however either of them writes a day, hours or the aircraft. What agrees only in part is
// neither added nor left out here: it is listed, and asked about.
import { hourColumns } from '../../core/currency/flightLog';
import { plainWords } from '../../functions/registry/readText';
import { isoFromSerial } from '../workbook/serialDates';
import type { CellValue } from '../workbook/snapshot';
import { isoOf } from '../workbook/typed/writtenDays';
import { amountOf, pilotPlace, placesIn, type ImportedFlight } from './importLog';
import type { Column } from './namedColumns';

/** Half of a tenth of an hour, the coarsest in which hours are written, and half a minute. Common practice, no source. */
const hoursApart = 1 / 20 + 1 / 120;

interface Known {
  readonly flight: ImportedFlight;
  /** Row of the log, from 0 below its headings. */
  readonly row: number;
}

export interface Doubtful {
  /** Index of the flight in the file. */
  readonly index: number;
  /** Row of the log, from 0 below its headings. */
  readonly row: number;
  /** In which columns the two differ. */
  readonly columns: readonly Column[];
}

export interface Compared {
  /** Indexes of the flights that the log does not have. */
  readonly fresh: readonly number[];
  readonly known: number;
  readonly doubtful: readonly Doubtful[];
}

/** Letters and digits only, so that a hyphen or a space does not make another aircraft. */
const plainAircraft = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
const placeOf = ({ date, aircraft }: ImportedFlight): string => `${date} ${plainAircraft(aircraft)}`;

/** A row of the log as a flight; undefined where it has no day. */
function flightIn(row: readonly CellValue[], places: ReadonlyMap<Column, number>, pilotAt: number): ImportedFlight | undefined {
  const cell = (column: Column): CellValue => row[places.get(column) ?? -1] ?? '';
  const day = cell('date');
  const date = typeof day === 'number' && day > 0 ? isoFromSerial(Math.floor(day)) : isoOf(String(day), 'day first');
  if (date === undefined) return undefined;
  const amounts = [...places.keys()].flatMap((column): [Column, number][] => {
    if (column === 'date' || column === 'aircraft') return [];
    const value = cell(column);
    const amount = typeof value === 'number' ? value : amountOf(String(value), hourColumns.has(column));
    return amount === undefined ? [] : [[column, amount]];
  });
  const pilot = String(row[pilotAt] ?? '').trim();
  return { ...Object.fromEntries(amounts), date, aircraft: String(cell('aircraft')), ...(pilot === '' ? {} : { pilot }) };
}

/** Two pilots' flights are two flights; one that names nobody may be either's. */
const mayBeSame = ({ pilot: one }: ImportedFlight, { pilot: other }: ImportedFlight): boolean =>
  one === undefined || other === undefined || plainWords(one) === plainWords(other);

/** The columns of the file in which two flights of one day and aircraft differ; none is as good as a blank. */
const apart = (one: ImportedFlight, other: ImportedFlight, columns: readonly Column[]): Column[] =>
  columns.filter((column) => {
    if (column === 'date' || column === 'aircraft') return false;
    return Math.abs((one[column] ?? 0) - (other[column] ?? 0)) > (hourColumns.has(column) ? hoursApart : 0);
  });

/** Takes out of the log's flights of that day and aircraft the one that is most alike, if it differs in no more columns than allowed. */
function takeLike(rest: Known[], flight: ImportedFlight, columns: readonly Column[], most: number): Doubtful | undefined {
  const alike = rest.flatMap(({ flight: other, row }, place) =>
    mayBeSame(flight, other) ? [{ place, row, columns: apart(flight, other, columns) }] : [],
  );
  const [nearest] = alike.sort((one, other) => one.columns.length - other.columns.length);
  if (nearest === undefined || nearest.columns.length > most) return undefined;
  rest.splice(nearest.place, 1);
  return { index: -1, row: nearest.row, columns: nearest.columns };
}

/** A flight twice in the file and once in the log is new once; `columns` are those of the file that the log has too. */
export function compareFlights(
  headings: readonly string[],
  log: readonly (readonly CellValue[])[],
  file: readonly ImportedFlight[],
  columns: readonly Column[],
): Compared {
  const [places, pilotAt] = [placesIn(headings), pilotPlace(headings)];
  const there = new Map<string, Known[]>();
  log.forEach((cells, row) => {
    const flight = flightIn(cells, places, pilotAt);
    if (flight !== undefined) there.set(placeOf(flight), [...(there.get(placeOf(flight)) ?? []), { flight, row }]);
  });
  const matching = (indexes: readonly number[], most: number): { readonly found: Doubtful[]; readonly left: number[] } => {
    const found: Doubtful[] = [];
    const left = indexes.filter((index) => {
      const flight = file[index];
      const like = flight === undefined ? undefined : takeLike(there.get(placeOf(flight)) ?? [], flight, columns, most);
      if (like !== undefined) found.push({ ...like, index });
      return like === undefined;
    });
    return { found, left };
  };
  const same = matching([...file.keys()], 0);
  const partly = matching(same.left, Infinity);
  return { fresh: partly.left, known: same.found.length, doubtful: partly.found };
}
