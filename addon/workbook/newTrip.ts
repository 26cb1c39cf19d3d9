// A new trip in the sheets of the last one, and the next leg of a trip: which entries are emptied, which move, and how much fuel was planned to
// be left. Entries are found by their keys. What belongs to the aircraft and the pilot stays. What is emptied makes the trip UNKNOWN until it is
// typed again, never an old answer.
import type { SheetTemplate } from '../../sheets-templates/template';
import { workingRows } from '../../sheets-templates/working/rows';
import { isoFromSerial } from './serialDates';
import { readArea } from './areas';
import { placesNow } from './placesNow';
import { valuesIn } from './readPlace';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';
import { aircraftInUse, cellsOf, companion, eachRow, tripOf, valueAt, type EntryWritten } from './tripEntries';

export interface TripChange {
  /** The Trip sheet that it is about. */
  readonly sheet: string;
  readonly entries: readonly EntryWritten[];
  /** For the user, before and after, in sentences. */
  readonly said: string;
  /** First day of the trip that is there, such as 2026-11-25; undefined where it is no day. */
  readonly day: string | undefined;
}

const places = ['departure', 'destination', 'alternate'] as const;
const ofPlaces = (...keys: readonly string[]): string[] => keys.flatMap((key) => places.map((place) => `${key}.${place}`));
const typedWeather = ofPlaces('altimeter', 'temperature', 'windFrom', 'wind', 'gust');
const ofWay = ofPlaces('field', 'runwayName', 'groundspeed', 'minutesTyped');
/** The pilot, the climb speed, contingency, reserve and the last good days stay. */
const ofTrip = ['firstDay', 'lastDay', 'passengers', 'night', 'instrument', 'judgeDescent', 'judgeHold', 'fuelFlow', 'holding'];
/** What belongs to one flight. Of the flight before it nothing is known to a trip that is begun anew. */
export const ofLeg = ['takeoffTime', 'gradient', ...ofWay, ...typedWeather];
const ofFlightBefore = ['beforeTo', 'beforeLands', 'beforeFuel', 'beforeMinutes', 'takenOn'];

const emptied = (sheet: SheetSnapshot, keys: readonly string[]): EntryWritten[] =>
  cellsOf(sheet, keys)
    .flatMap(eachRow)
    .map((place) => ({ sheet: sheet.name, ...place, content: '' }));

function dayOf(trip: SheetSnapshot): string | undefined {
  const [place] = cellsOf(trip, ['firstDay']);
  const day = place === undefined ? '' : valueAt(trip, place);
  return typeof day === 'number' && day > 0 ? isoFromSerial(day) : undefined;
}

const holding = (entries: readonly EntryWritten[], values: readonly EntryWritten[]): EntryWritten[] => [
  ...entries.filter(({ row, column }) => !values.some((one) => one.row === row && one.column === column)),
  ...values,
];

export function newTrip(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): TripChange {
  const trip = tripOf(workbook, templates);
  return {
    sheet: trip.name,
    day: dayOf(trip),
    entries: emptied(trip, [...ofTrip, ...ofLeg, ...ofFlightBefore, 'metars.report', 'tafs.report']),
    said: `Emptied on "${trip.name}": days, times, fields, runways, groundspeeds, typed weather, reports, and every yes or no. The pilot, the climb speed, contingency, reserve and last good days stay, and so do the loads and the fuel on Weight and balance: look at them.`,
  };
}

/** What the brief of fuel says, by the words of its rows. */
function briefOf(working: SheetSnapshot, templates: readonly SheetTemplate[]): Map<string, { readonly value: CellValue; readonly unit: string }> {
  const template = templates.find(({ key }) => key === 'working');
  const { first, last } = workingRows.fuelBrief;
  const range = template && placesNow(template, working)?.range(`A${first}:C${last}`);
  const lines = range === undefined ? [] : valuesIn({ sheet: working, area: readArea(range) });
  return new Map(lines.map(([item = '', value = '', unit = '']) => [String(item), { value, unit: String(unit) }]));
}

/** What the plan leaves at landing, in words: taxi, climb and trip off what was on board; undefined where one of them is not known. */
function plannedLeft(working: SheetSnapshot | undefined, templates: readonly SheetTemplate[]): string | undefined {
  if (working === undefined) return undefined;
  const brief = briefOf(working, templates);
  const [onBoard, ...burned] = ['on board', 'taxi', 'climb', 'trip'].map((item) => brief.get(item));
  if (onBoard === undefined || typeof onBoard.value !== 'number' || burned.some((one) => typeof one?.value !== 'number')) return undefined;
  const left = burned.reduce((rest, one) => rest - Number(one?.value), onBoard.value);
  // Rounded down: never more than the plan leaves.
  return `${Math.floor(left * 10 + 1e-6) / 10} ${onBoard.unit}`;
}

/** The tanks of the aircraft in use: what is in them after a flight is for the pilot to look at, not for this plan to write. */
function tanksEmptied(balance: SheetSnapshot, aircraft: CellValue): EntryWritten[] {
  const [names, onBoard] = ['tanks.aircraft', 'tanks.onBoard'].map((key) => cellsOf(balance, [key])[0]);
  if (names === undefined || onBoard === undefined) throw new Error(`The tanks of "${balance.name}" were not found. Nothing was changed.`);
  return eachRow(names)
    .filter((place) => valueAt(balance, { ...names, ...place }) === aircraft)
    .map(({ row }) => ({ sheet: balance.name, row, column: onBoard.column, content: '' }));
}

export function nextLeg(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): TripChange {
  const trip = tripOf(workbook, templates);
  const [departure, destination] = cellsOf(trip, ['field.departure', 'field.destination']);
  const arrived = destination === undefined ? '' : valueAt(trip, destination);
  if (departure === undefined || arrived === '')
    throw new Error('The trip has no destination from which the next leg could begin. Nothing was changed.');
  const balance = companion(workbook, trip, 'balance');
  if (balance === undefined) throw new Error('Weight and balance of this trip was not found. Nothing was changed.');
  const moved = cellsOf(trip, ['metars.report', 'tafs.report']).map((list) => ({
    sheet: trip.name,
    row: list.row,
    column: list.column,
    content: valueAt(trip, { ...list, row: list.row + 1 }),
  }));
  const entries = holding(emptied(trip, [...ofLeg, ...ofFlightBefore, 'metars.report', 'tafs.report']), [
    { sheet: trip.name, row: departure.row, column: departure.column, content: arrived },
    ...moved,
  ]);
  const left = plannedLeft(companion(workbook, trip, 'working'), templates);
  const fuel = left === undefined ? 'What the plan leaves of the fuel is not known' : `The plan leaves ${left}`;
  return {
    sheet: trip.name,
    day: dayOf(trip),
    entries: [...entries, ...tanksEmptied(balance, aircraftInUse(workbook, trip))],
    said: `From ${String(arrived)}, with its reports. Emptied: destination, alternate, runways, times, climb gradient, groundspeeds, typed weather, and the fuel in the tanks. ${fuel}: look into the tanks, and type what they hold.`,
  };
}
