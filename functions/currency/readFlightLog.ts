// Reader of a pilot's log: a header row in any order of columns, then one row a flight. Read once, fast enough for 20,000 flights.
import { dayNumber } from '../../core/basics/civilDate';
import {
  hourColumns,
  logHeadings,
  nothingDone,
  partsOfLandings,
  passedOverHeadings,
  undividedHeadings,
  type Flight,
  type FlightLog,
  type LogColumn,
} from '../../core/currency/flightLog';
import { saidHeadings, type SaidColumn } from '../../core/currency/logColumns';
import type { Named } from '../../core/basics/named';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell, durationMinutes } from '../registry/readDate';
import { columnPlaces } from '../registry/readHeadings';
import { numberFromCell, numberInWords } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';
import { isSaid, saidOf } from './readSaid';

const mustBe = 'a log of flights under one header row';
const most = 1000;
const noAircraft: Named = { name: 'no aircraft', key: '' };
const duration = durationMinutes({ help: '', maximum: most * 60 });

type Column = LogColumn | 'date' | 'aircraft' | SaidColumn;
type Places = ReadonlyMap<Column, number>;
const headings = { ...logHeadings, ...saidHeadings };

/** A bare "landings" is the day's only where no column of the night stands beside it. */
function placesOf(range: RangeValue): Places {
  const [header = []] = range;
  const passedOver = [...passedOverHeadings, ...undividedHeadings.flatMap(({ words }) => words)];
  const places = new Map(columnPlaces(range, { headings, needed: ['date', 'aircraft'], mustBe, passedOver }));
  for (const { day, night, words } of undividedHeadings) {
    const at = header.findIndex((cell) => typeof cell === 'string' && words.includes(plainWords(cell)));
    if (at < 0 || places.has(day)) continue;
    if (places.has(night))
      throw new ArgumentError(
        `${mustBe} ("${logHeadings[day][0] ?? day}" beside "${logHeadings[night][0] ?? night}")`,
        `${inWords(header[at])}, which could be both together`,
        1,
        at + 1,
      );
    places.set(day, at);
  }
  return places;
}

/** A count or hours; a tick box or "yes" is one. Hours that slipped into a column of counts would pass for a hold: no count is broken. */
function amount(cell: CellValue, column: LogColumn, dates: DateHost): number | undefined {
  const fits = (value: number): boolean => value >= 0 && value <= most && (Number.isInteger(value) || hourColumns.has(column));
  if (typeof cell === 'number') return fits(cell) ? cell : undefined;
  if (cell === true) return 1;
  if (cell === false) return 0;
  const plain = numberFromCell(cell);
  if (plain !== undefined) return fits(plain) ? plain : undefined;
  if (typeof cell === 'string' && plainWords(cell) === 'yes') return 1;
  if (typeof cell === 'string' && plainWords(cell) === 'no') return 0;
  if (!hourColumns.has(column)) return undefined;
  try {
    return duration.read(cell, dates) / 60;
  } catch {
    return undefined;
  }
}

function flightOf(
  row: readonly CellValue[],
  place: number,
  places: Places,
  columns: readonly (readonly [LogColumn, number])[],
  said: ReadonlyMap<SaidColumn, number>,
  nameOf: (cell: CellValue) => Named,
  dates: DateHost,
): Flight {
  const dateAt = places.get('date') ?? 0;
  const date = civilDateFromCell(row[dateAt], dates);
  if (date === undefined) throw new ArgumentError(`${mustBe} (a date in each row)`, inWords(row[dateAt]), place, dateAt + 1);
  const done = nothingDone();
  for (const [column, at] of columns) {
    const cell = row[at];
    if (cell === '' || isBlank(cell)) continue;
    const value = amount(cell, column, dates);
    if (value === undefined)
      throw new ArgumentError(
        `${mustBe} (${hourColumns.has(column) ? '' : 'whole, '}0 to 1,000 under "${logHeadings[column][0] ?? column}")`,
        numberInWords(cell),
        place,
        at + 1,
      );
    done[column] = value;
  }
  for (const [part, whole] of partsOfLandings) {
    if (done[part] > done[whole])
      throw new ArgumentError(
        `${mustBe} (no more landings to a full stop than landings)`,
        `${done[part]} of ${done[whole]}`,
        place,
        (places.get(part) ?? 0) + 1,
      );
  }
  return { day: dayNumber(date), aircraft: nameOf(row[places.get('aircraft') ?? 0]), done, ...saidOf(row, place, said, mustBe, dates) };
}

/** A log names few aircraft many times, so each name is read once. */
function aircraftReader(): (cell: CellValue) => Named {
  const known = new Map<CellValue, Named>();
  return (cell) => {
    const found = known.get(cell) ?? namedFromCell(cell) ?? noAircraft;
    known.set(cell, found);
    return found;
  };
}

export function flightLog(help: string): Parameter<FlightLog> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): FlightLog => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const places = placesOf(range);
    const said = new Map([...places].filter((entry): entry is [SaidColumn, number] => isSaid(entry[0])));
    const counted = [...places].filter(([column]) => !isSaid(column));
    const columns = counted.filter((entry): entry is [LogColumn, number] => entry[0] !== 'date' && entry[0] !== 'aircraft');
    const used = counted.map(([, at]) => at);
    const flights: Flight[] = [];
    const nameOf = aircraftReader();
    for (let index = 1; index < range.length; index += 1) {
      const row = range[index] ?? [];
      if (used.every((at) => isBlank(row[at]))) continue;
      flights.push(flightOf(row, index + 1, places, columns, said, nameOf, dates));
    }
    return { flights, columns: new Set(columns.map(([column]) => column)) };
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}

/** For the aircraft's list: a slip in the log is told in the pilot's, and leaves here what does not hang on it. */
export function flightLogIfReadable(help: string): Parameter<FlightLog | 'unreadable'> & { readonly shape: 'table' } {
  const log = flightLog(help);
  const read = (raw: CellValue, dates: DateHost): FlightLog | 'unreadable' => {
    try {
      return log.read(raw, dates);
    } catch (thrown) {
      if (thrown instanceof ArgumentError) return 'unreadable';
      throw thrown;
    }
  };
  return { ...log, read };
}
