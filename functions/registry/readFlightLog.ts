// Reader of a pilot's log: a header row in any order of columns, then one row a flight. Read once, fast enough for 20,000 flights.
import { dayNumber } from '../../core/civilDate';
import { logHeadings, nothingDone, undividedHeadings, type Flight, type FlightLog, type LogColumn } from '../../core/flightLog';
import type { Named } from '../../core/named';
import { ArgumentError } from './argumentError';
import { inWords, isBlank, isRange, type CellValue, type RangeValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';
import { civilDateFromCell, durationMinutes } from './readDate';
import { columnPlaces } from './readHeadings';
import { numberFromCell } from './readNumber';
import { namedFromCell, plainWords } from './readText';

const mustBe = 'a log of flights under one header row';
const most = 1000;
const noAircraft: Named = { name: 'no aircraft', key: '' };
const timed: ReadonlySet<LogColumn> = new Set(['hours', 'commandHours', 'trainingHours']);
const duration = durationMinutes({ help: '', maximum: most * 60 });

type Places = ReadonlyMap<LogColumn | 'date' | 'aircraft', number>;

/** A bare "landings" is the day's only where no column of the night stands beside it. */
function placesOf(header: readonly CellValue[]): Places {
  const places = new Map(columnPlaces(header, logHeadings, ['date', 'aircraft'], mustBe));
  for (const { day, night, words } of undividedHeadings) {
    const at = header.findIndex((cell) => typeof cell === 'string' && words.includes(plainWords(cell)));
    if (at < 0 || places.has(day)) continue;
    if (places.has(night)) throw new ArgumentError(`${mustBe} ("${logHeadings[day][0] ?? day}" beside "${logHeadings[night][0] ?? night}")`, `${inWords(header[at])}, which could be both together`, 1, at + 1);
    places.set(day, at);
  }
  return places;
}

/** A count or hours; a tick box or "yes" is one. Hours that slipped into a column of counts would pass for a hold: no count is broken. */
function amount(cell: CellValue, column: LogColumn, dates: DateHost): number | undefined {
  const fits = (value: number): boolean => value >= 0 && value <= most && (Number.isInteger(value) || timed.has(column));
  if (typeof cell === 'number') return fits(cell) ? cell : undefined;
  if (cell === true) return 1;
  if (cell === false) return 0;
  const plain = numberFromCell(cell);
  if (plain !== undefined) return fits(plain) ? plain : undefined;
  if (typeof cell === 'string' && plainWords(cell) === 'yes') return 1;
  if (typeof cell === 'string' && plainWords(cell) === 'no') return 0;
  if (!timed.has(column)) return undefined;
  try {
    return duration.read(cell, dates) / 60;
  } catch {
    return undefined;
  }
}

const limits: readonly (readonly [part: LogColumn, whole: LogColumn])[] = [['dayFullStops', 'dayLandings'], ['nightFullStops', 'nightLandings']];

function flightOf(row: readonly CellValue[], place: number, places: Places, columns: readonly (readonly [LogColumn, number])[], nameOf: (cell: CellValue) => Named, dates: DateHost): Flight {
  const dateAt = places.get('date') ?? 0;
  const date = civilDateFromCell(row[dateAt], dates);
  if (date === undefined) throw new ArgumentError(`${mustBe} (a date in each row)`, inWords(row[dateAt]), place, dateAt + 1);
  const done = nothingDone();
  for (const [column, at] of columns) {
    const cell = row[at];
    if (cell === '' || isBlank(cell)) continue;
    const value = amount(cell, column, dates);
    if (value === undefined) throw new ArgumentError(`${mustBe} (${timed.has(column) ? '' : 'whole, '}0 to 1,000 under "${logHeadings[column][0] ?? column}")`, inWords(cell), place, at + 1);
    done[column] = value;
  }
  for (const [part, whole] of limits) {
    if (done[part] > done[whole]) throw new ArgumentError(`${mustBe} (no more landings to a full stop than landings)`, `${done[part]} of ${done[whole]}`, place, (places.get(part) ?? 0) + 1);
  }
  return { day: dayNumber(date), aircraft: nameOf(row[places.get('aircraft') ?? 0]), done };
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
    const places = placesOf(range[0] ?? []);
    const columns = [...places].filter((entry): entry is [LogColumn, number] => entry[0] !== 'date' && entry[0] !== 'aircraft');
    const used = [...places.values()];
    const flights: Flight[] = [];
    const nameOf = aircraftReader();
    for (let index = 1; index < range.length; index += 1) {
      const row = range[index] ?? [];
      if (used.every((at) => isBlank(row[at]))) continue;
      flights.push(flightOf(row, index + 1, places, columns, nameOf, dates));
    }
    return { flights, columns: new Set(columns.map(([column]) => column)) };
  };
  return { shape: 'table', unit: 'table', mustBe, help, optional: undefined, read };
}
