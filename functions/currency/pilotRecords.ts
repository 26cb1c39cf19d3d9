// The flights that a list of a pilot is made of: the pilot's own, with the night from their times where there are any.
import { CoreError } from '../../core/basics/errors';
import type { Named } from '../../core/basics/named';
import type { FlightLog } from '../../core/currency/flightLog';
import type { ListItem } from '../../core/currency/experience';
import { flightsOfPilot, isUnclear, unnamedFlights, wrongPilot } from '../../core/currency/pilots';
import { nightRemarks, nightsFromTimes, type NightsFromTimes } from '../../core/currency/nightsFromTimes';
import type { ListedPlace } from '../../core/route/places';
import { placeRows } from '../route/readRoute';
import { optional } from '../registry/modifiers';
import { namedText } from '../registry/readText';

const pilotHelp =
  'Whose flights count, where the log has a column "pilot". A log in which no row names anybody is taken to be all of one pilot; in one that names pilots, a row that names nobody counts for nobody.';
const placesHelp =
  'The places of the log with their positions, under one header row: field, latitude, longitude (south and west negative). Where the log has columns from, to, "take-off, UTC" and "landing, UTC", day and night of the landings are worked out from them, one hour after sunset and end of civil twilight told apart.';

/** Two parameters of every function that reads a pilot's log. */
export const pilotChosen = optional(namedText({ mustBe: 'the name of a pilot', help: pilotHelp }), undefined, 'the one pilot whom the log names');
export const placesOfLog = optional(placeRows(placesHelp), undefined, 'night as written in the log');

export interface PilotRecords {
  readonly log: FlightLog;
  /** Whose flights they are is not known: for every list. */
  readonly wrong: readonly ListItem[];
  /** What was left out, or goes against something: for the list of all that the pilot has. */
  readonly leftOut: readonly ListItem[];
}

const withNights = (log: FlightLog, places: readonly ListedPlace[] | undefined): NightsFromTimes =>
  places === undefined ? { log, unplaced: [], against: [] } : nightsFromTimes(log, places);

export function pilotRecords(whole: FlightLog, pilot: Named | undefined, places: readonly ListedPlace[] | undefined): PilotRecords {
  const own = flightsOfPilot(whole, pilot);
  const nights = withNights(own.log, places);
  return { log: nights.log, wrong: wrongPilot(own), leftOut: [...unnamedFlights(own), ...nightRemarks(nights)] };
}

/** What is added up: flights of the pilot, or of everybody each for himself; and those that name nobody, who are in no sum of a pilot's. */
export function flightsToSum(
  whole: FlightLog,
  pilot: Named | undefined,
  places: readonly ListedPlace[] | undefined,
  eachPilot: boolean,
): { readonly log: FlightLog; readonly unnamed: FlightLog } {
  const own = flightsOfPilot(whole, pilot);
  const everybody = eachPilot && pilot === undefined;
  if (!everybody && isUnclear(own)) throw new CoreError('pilot-unclear', { chosen: pilot?.name, names: own.named.map(({ name }) => name) });
  const nights = withNights(everybody ? whole : own.log, places);
  return { log: nights.log, unnamed: { columns: whole.columns, flights: everybody ? [] : own.unnamed } };
}
