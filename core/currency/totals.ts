// What a log comes to, by class, by year and so on, as forms of insurers and authorities ask for it.
import type { Flight, FlightLog, LogColumn } from './flightLog';

export interface LogTotal {
  /** Undefined for the sum of all. */
  readonly group: string | undefined;
  readonly flights: number;
  /** Undefined where the log has no such column: nothing is known of it, which is not 0. */
  readonly done: Readonly<Partial<Record<LogColumn, number>>>;
}

/** Decimals that hours are kept to: a long sum of tenths is else not one of tenths. */
const kept = 1e6;

function totalOf(group: string | undefined, flights: readonly Flight[], columns: ReadonlySet<LogColumn>): LogTotal {
  const sum = (column: LogColumn): number => Math.round(flights.reduce((all, { done }) => all + done[column], 0) * kept) / kept;
  return { group, flights: flights.length, done: Object.fromEntries([...columns].map((column) => [column, sum(column)])) };
}

/** Each group in the order of its words, then the sum of all; `groupOf` is undefined where only the sum is asked for. */
export function logTotals({ flights, columns }: FlightLog, groupOf?: (flight: Flight) => string): LogTotal[] {
  const groups = new Map<string, Flight[]>();
  if (groupOf !== undefined)
    for (const flight of flights) {
      const group = groupOf(flight);
      const before = groups.get(group);
      if (before === undefined) groups.set(group, [flight]);
      else before.push(flight);
    }
  const named = [...groups].sort(([one], [other]) => one.localeCompare(other, 'en'));
  return [...named.map(([group, of]) => totalOf(group, of, columns)), totalOf(undefined, flights, columns)];
}
