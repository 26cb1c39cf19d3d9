// The flight afterwards: the row that belongs into the Currency log, from its times. Nothing is guessed: what cannot be told is asked for.
import { stopsByNight } from '../../core/currency/nightOfFlight';
import { numberFromCell } from '../../functions/registry/readNumber';
import { zuluText } from '../../functions/registry/zuluText';
import type { SheetTemplate } from '../../sheets-templates/template';
import type { Area } from './areas';
import { lightsOf, positionOf, timesOf, type FlownTimes, type Lights } from './flownLight';
import { isoFromSerial } from './serialDates';
import type { SheetSnapshot, WorkbookSnapshot } from './snapshot';
import { aircraftInUse, cellsOf, companion, eachRow, tripOf, valueAt, type EntryWritten } from './tripEntries';

/** What the pilot says of a flight, as typed. */
export interface Flown extends FlownTimes {
  readonly landings: string;
  /** Of the landings, to a full stop. */
  readonly fullStops: string;
  /** Of the landings, by night; blank where the Sun is to tell. */
  readonly byNight: string;
  readonly approaches: string;
  readonly flownAs: 'in command' | 'with instructor' | 'neither';
  readonly remark: string;
}

export interface FlightRow {
  readonly sheet: string;
  readonly row: number;
  readonly entries: readonly EntryWritten[];
  /** For the user: each column of the log with what would stand in it. */
  readonly shown: readonly (readonly [heading: string, text: string])[];
  /** How it was worked out, in sentences. */
  readonly said: string;
}

const mostOfOneFlight = 99;
const headings = {
  aircraft: 'aircraft',
  date: 'date',
  dayLandings: 'landings by day',
  dayFullStops: 'to a full stop by day',
  nightLandings: 'landings by night',
  nightFullStops: 'to a full stop by night',
  approaches: 'approaches',
  hours: 'hours, block to block',
  inCommand: 'hours in command',
  withInstructor: 'hours with instructor',
  remark: 'remark',
  pilot: 'pilot',
  from: 'from',
  to: 'to',
  takeOff: 'take-off, UTC',
  landing: 'landing, UTC',
} as const;
type LogKey = keyof typeof headings;
const logKeys = Object.keys(headings) as LogKey[];
/** Columns that a log of an earlier version has not. */
const newer: ReadonlySet<LogKey> = new Set(['pilot', 'from', 'to', 'takeOff', 'landing']);

function countOf(text: string, name: string): number {
  const count = text.trim() === '' ? 0 : numberFromCell(text.trim());
  if (count === undefined || !Number.isInteger(count) || count < 0 || count > mostOfOneFlight)
    throw new Error(`The number of ${name} must be a whole number from 0 to ${mostOfOneFlight}.`);
  return count;
}

function byNightOf({ byNight }: Flown, landings: number, lights: Lights | undefined): number {
  if (byNight.trim() !== '') return countOf(byNight, 'landings by night');
  if (lights === undefined)
    throw new Error('A field of the trip has no position on Fields, so the Sun cannot tell. Say how many of the landings were by night.');
  const count = lights.landingsByNight(landings);
  if (count === undefined)
    throw new Error(
      `The flight began by ${lights.takeOff} and ended by ${lights.landing}, with ${landings} landings. Say how many of them were by night.`,
    );
  return count;
}

interface Landings {
  readonly day: number;
  readonly dayStops: number;
  readonly night: number;
  readonly nightStops: number;
}

function landingsOf(flown: Flown, lights: Lights | undefined): Landings {
  const [all, stops] = [countOf(flown.landings, 'landings'), countOf(flown.fullStops, 'landings to a full stop')];
  const night = byNightOf(flown, all, lights);
  if (stops > all || night > all) throw new Error('More landings to a full stop, or by night, than landings.');
  const nightStops = stopsByNight(night, all, stops);
  if (nightStops === undefined)
    throw new Error(
      'Some landings were by night, and some not to a full stop: which was which cannot be told. Write this flight into the log by hand.',
    );
  return { day: all - night, dayStops: stops - nightStops, night, nightStops };
}

/** The first row below the last that holds anything. */
function freeRow(log: SheetSnapshot, columns: readonly Area[]): number {
  const rows = columns[0] === undefined ? [] : eachRow(columns[0]).map(({ row }) => row);
  const filled = rows.filter((row) => columns.some((area) => valueAt(log, { ...area, row }) !== ''));
  const row = (filled[filled.length - 1] ?? (rows[0] ?? 1) - 1) + 1;
  if (!rows.includes(row))
    throw new Error(`There is no room below the last flight on "${log.name}". Insert rows above its last row, then ask again.`);
  return row;
}

function columnsOf(log: SheetSnapshot): ReadonlyMap<LogKey, Area> {
  const columns = new Map(logKeys.flatMap((key) => cellsOf(log, [`flights.${key}`]).map((area) => [key, area] as const)));
  if (logKeys.some((key) => !columns.has(key) && !newer.has(key)))
    throw new Error(`A column of the flights on "${log.name}" was taken out, so no row can be written there.`);
  return columns;
}

/** The day, the aircraft and the fields of the trip. */
function plannedOf(workbook: WorkbookSnapshot, trip: SheetSnapshot) {
  const [dayCell, from, to] = ['firstDay', 'field.departure', 'field.destination'].map((key) => cellsOf(trip, [key])[0]);
  const day = dayCell === undefined ? '' : valueAt(trip, dayCell);
  if (typeof day !== 'number' || day <= 0) throw new Error('The first day of the trip is no date. Type it on the Trip sheet first.');
  const aircraft = String(aircraftInUse(workbook, trip));
  if (aircraft === '') throw new Error('No aircraft is in use on Start.');
  const fields = companion(workbook, trip, 'fields');
  const [leftName = '', reachedName = ''] = [from, to].map((cell) => (cell === undefined ? '' : valueAt(trip, cell)));
  const [left, reached] = [leftName, reachedName].map((name) => (fields === undefined ? undefined : positionOf(fields, name)));
  return { day, aircraft, left, reached, ends: { from: String(leftName), to: String(reachedName) } };
}

export function flightRow(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], flown: Flown): FlightRow {
  const trip = tripOf(workbook, templates);
  const log = companion(workbook, trip, 'currency');
  if (log === undefined) throw new Error('The Currency log of this trip was not found. Insert it first.');
  const { day, aircraft, left, reached, ends } = plannedOf(workbook, trip);
  const times = timesOf(flown);
  const [rules, pilot] = ['rules', 'pilot'].map((key) => cellsOf(log, [key])[0]);
  const lights = left && reached && lightsOf(left, reached, times, day, rules === undefined ? '' : String(valueAt(log, rules)));
  const landings = landingsOf(flown, lights);
  const hours = Math.round((times.blockMinutes / 60) * 100) / 100;
  const values: Readonly<Record<LogKey, string | number>> = {
    ...{ aircraft, date: day, approaches: countOf(flown.approaches, 'approaches'), hours, remark: flown.remark.trim() },
    ...{ dayLandings: landings.day, dayFullStops: landings.dayStops, nightLandings: landings.night, nightFullStops: landings.nightStops },
    ...{ inCommand: flown.flownAs === 'in command' ? hours : 0, withInstructor: flown.flownAs === 'with instructor' ? hours : 0 },
    ...{ ...ends, pilot: pilot === undefined ? '' : String(valueAt(log, pilot)).trim() },
    ...{ takeOff: zuluText(times.takeOffMinutes), landing: zuluText(times.landingMinutes) },
  };
  const columns = columnsOf(log);
  const row = freeRow(log, [...columns.values()]);
  const written = logKeys.filter((key) => columns.has(key) && values[key] !== 0 && values[key] !== '');
  const sun =
    lights === undefined || flown.byNight.trim() !== ''
      ? 'Day and night as you said.'
      : `Take-off by ${lights.takeOff}, landing by ${lights.landing}; night is ${lights.rule}.`;
  return {
    sheet: log.name,
    row,
    entries: written.map((key) => ({
      ...{ sheet: log.name, row, column: columns.get(key)?.column ?? 0, content: values[key] },
      ...(key === 'date' && { numberFormat: 'yyyy-mm-dd' }),
    })),
    shown: written.map((key) => [headings[key], key === 'date' ? isoFromSerial(day) : String(values[key])]),
    said: `Block ${times.blockMinutes} minutes, in the air ${times.flightMinutes} minutes. ${sun} The hours of the aircraft's list count on from the log.`,
  };
}
