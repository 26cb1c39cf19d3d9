// Whose flights a list is made of. Other people's landings counted as one's own would look like recent experience.
import { byName, type Named } from '../basics/named';
import type { Flight, FlightLog } from './flightLog';
import type { ListItem } from './experience';

export interface FlightsOfPilot {
  /** Of the pilot only; empty where nobody knows of whom. */
  readonly log: FlightLog;
  /** Everybody whom the log names, once each, in its order; nobody where it is one pilot's. */
  readonly named: readonly Named[];
  /** Undefined where the log names several and none was chosen. */
  readonly pilot: Named | undefined;
  /** Flights that name nobody, in a log that names pilots: nobody's. */
  readonly unnamed: readonly Flight[];
}

/**
 * A log that names nobody is taken to be all of one pilot. One that names a single pilot is that pilot's where none is chosen; of several,
 * nothing counts until one is.
 */
export function flightsOfPilot(log: FlightLog, chosen: Named | undefined): FlightsOfPilot {
  const named = byName(
    log.flights.flatMap(({ pilot }) => pilot ?? []),
    (pilot) => pilot,
  ).map((group) => group.named);
  if (named.length === 0) return { log, named, pilot: chosen, unnamed: [] };
  const pilot = chosen ?? (named.length === 1 ? named[0] : undefined);
  const flights = pilot === undefined ? [] : log.flights.filter((flight) => flight.pilot?.key === pilot.key);
  const unnamed = log.flights.filter((flight) => flight.pilot === undefined);
  return { log: { ...log, flights }, named, pilot, unnamed };
}

const notCounted = 'flights not counted';

/** The log names several pilots and none is chosen, or has no flight of the chosen one. */
export const isUnclear = ({ log, named }: FlightsOfPilot): boolean => named.length > 0 && log.flights.length === 0;

/** A row where nobody can tell whose flights count. */
export function wrongPilot(own: FlightsOfPilot): ListItem[] {
  if (!isUnclear(own)) return [];
  const { named, pilot } = own;
  const names = named.map(({ name }) => name).join(', ');
  return [{ item: notCounted, about: names, verdict: 'UNKNOWN', remark: pilot === undefined ? 'pilot-not-said' : 'pilot-not-in-log' }];
}

/** A row for the flights that name nobody. */
export const unnamedFlights = ({ unnamed }: FlightsOfPilot): ListItem[] =>
  unnamed.length === 0 ? [] : [{ item: notCounted, counted: unnamed.length, verdict: 'CHECK', remark: 'names-nobody' }];
