// The next flight of the day: which entries of a copied trip are emptied, which read the flight before, and its row on Flights of the day. What
// reads the flight before are formulas by the names of its ranges, so that they follow a change of its plan, a new name of its sheets and an update,
// and are UNKNOWN when its sheets are gone; a value would go on looking true.
import { flightColumns, flightFormulas, type TripNames } from '../../sheets-templates/day/places';
import { toldName } from '../../sheets-templates/working/told';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { areaOfCell } from './areas';
import { emptied, reading, tanksReading } from './flightEntries';
import { referencesOf, rewriteFormula, type NewNames } from './formulaText';
import type { SheetSnapshot, WorkbookSnapshot } from './snapshot';
import { aircraftInUse, cellsOf, companion, eachRow, tripOf, valueAt, type EntryWritten } from './tripEntries';

export interface FlightPlan {
  /** The Trip sheet of the flight before. */
  readonly sheet: string;
  /** For the copies, by the names of the sheets that are copied. */
  readonly entries: readonly EntryWritten[];
  /** For Flights of the day, by the names of the sheets and ranges that are copied. */
  readonly listed: readonly EntryWritten[];
  /** For the user, before and after, in sentences. */
  readonly said: string;
}

function namesOf(workbook: WorkbookSnapshot, trip: SheetSnapshot): TripNames {
  const told = companion(workbook, trip, 'working')?.mark?.names[toldName];
  const [verdict, reasons] = [trip.mark?.names['trip_verdict'], trip.mark?.names['trip_reasons']];
  if (told === undefined || verdict === undefined || reasons === undefined)
    throw new Error(`The names by which "${trip.name}" is read are gone. Bring the sheets up to date first. Nothing was changed.`);
  return { told, verdict, reasons };
}

/** The day sheet, where there is one: that of the set, else the only one. */
function daySheetOf({ sheets }: WorkbookSnapshot, trip: SheetSnapshot, templates: readonly SheetTemplate[]): SheetSnapshot | undefined {
  const found = sheets.filter(({ mark }) => mark?.key === 'day');
  const day = found.find(({ mark }) => mark?.set === trip.mark?.set) ?? (found.length === 1 ? found[0] : undefined);
  if (day !== undefined && day.mark?.version !== templates.find(({ key }) => key === 'day')?.version)
    throw new Error(`"${day.name}" is of another version of Rampwright. Bring the sheets up to date first. Nothing was changed.`);
  return day;
}

/** The row for the flight after this trip: right below the trip's own, which must be the last one listed. */
function rowOnDay(day: SheetSnapshot, trip: SheetSnapshot, { told }: TripNames): { readonly row: number; readonly columns: readonly number[] } {
  const columns = flightColumns.map((column) => cellsOf(day, [`flights.${column}`])[0]);
  const [list] = columns;
  if (list === undefined || columns.includes(undefined)) throw new Error(`The list of "${day.name}" was not found. Nothing was changed.`);
  const rows = eachRow(list).map(({ row }) => row);
  const filled = rows.filter((row) =>
    columns.some((one) => one !== undefined && (valueAt(day, areaOfCell({ row, column: one.column })) !== '' || hasFormula(day, row, one.column))),
  );
  const own = rows.find((row) => day.formulas.some((cell) => cell.row === row && referencesOf(cell.text).words.has(told)));
  if (own === undefined)
    throw new Error(
      `"${trip.name}" is not on "${day.name}". Show the Trip sheet of the last flight there, or empty the row of every flight first. Nothing was changed.`,
    );
  const row = own + 1;
  if (!rows.includes(row)) throw new Error(`"${day.name}" has room for ${rows.length} flights, and all are taken. Nothing was changed.`);
  if (filled.some((one) => one > own))
    throw new Error(
      `On "${day.name}" a flight stands after that of "${trip.name}". Show the Trip sheet of the last one, then ask again. Nothing was changed.`,
    );
  return { row, columns: columns.map((one) => one?.column ?? 0) };
}
const hasFormula = ({ formulas }: SheetSnapshot, row: number, column: number): boolean =>
  formulas.some((cell) => cell.row === row && cell.column === column);

function listedOn(day: SheetSnapshot, trip: SheetSnapshot, names: TripNames): EntryWritten[] {
  const { row, columns } = rowOnDay(day, trip, names);
  const formulas = flightFormulas(names);
  return flightColumns.map((name, index) => ({
    sheet: day.name,
    row,
    column: columns[index] ?? 0,
    ...(name === 'trip' ? { content: trip.name } : { content: formulas[name], formula: true as const }),
  }));
}

export function addFlight(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): FlightPlan {
  const trip = tripOf(workbook, templates);
  const of = (key: SheetKey): SheetSnapshot => {
    const sheet = key === 'trip' ? trip : companion(workbook, trip, key);
    if (sheet === undefined)
      throw new Error(`Of the trip of "${trip.name}" a sheet is missing. Bring the sheets up to date first. Nothing was changed.`);
    return sheet;
  };
  const names = namesOf(workbook, trip);
  const [departure, destination] = cellsOf(trip, ['field.departure', 'field.destination']);
  const arrived = destination === undefined ? '' : valueAt(trip, destination);
  if (departure === undefined || arrived === '')
    throw new Error('The trip has no destination from which the next flight could begin. Nothing was changed.');
  const day = daySheetOf(workbook, trip, templates);
  const written = [
    ...reading(trip, names.told),
    ...tanksReading(of('balance'), names.told, aircraftInUse(workbook, trip)),
    { sheet: trip.name, row: departure.row, column: departure.column, content: arrived },
  ];
  const isWritten = ({ sheet, row, column }: EntryWritten): boolean =>
    written.some((one) => one.sheet === sheet && one.row === row && one.column === column);
  const empty = (['trip', 'route', 'card'] as const).flatMap((key) => emptied(of(key), key)).filter((one) => !isWritten(one));
  const list = day === undefined ? 'There is no sheet "Flights of the day" to list it on.' : `"${day.name}" lists it.`;
  return {
    sheet: trip.name,
    entries: [...empty, ...written],
    listed: day === undefined ? [] : listedOn(day, trip, names),
    said: `The sheets of "${trip.name}" are copied for a flight from ${String(arrived)}, with the same aircraft, people and loads. The fuel in its tanks is what "${trip.name}" leaves there, read by formulas: type over them what the tanks hold, and beside "fuel taken on since" what you took on. Emptied on the copies: destination, runways, times, weather, route, crossings, hold, and every yes or no but that of passengers. ${list}`,
  };
}

/** The entries of a plan where they go, once it is known what the copies are called. */
export const placedOnCopies = ({ entries, listed }: Pick<FlightPlan, 'entries' | 'listed'>, names: NewNames): EntryWritten[] => [
  ...entries.map((one) => ({ ...one, sheet: names.sheets.get(one.sheet) ?? one.sheet })),
  ...listed.map((one) => ({
    ...one,
    content: one.formula === true ? rewriteFormula(String(one.content), names, ',') : (names.sheets.get(String(one.content)) ?? one.content),
  })),
];
