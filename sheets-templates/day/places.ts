// Where the flights of a day stand, and what is read of each trip. "Add a flight" in the panel writes the same formulas for the next one.
import type { List } from '../lists';
import { toldName, toldWords, type Told } from '../working/told';

export const flightList: List = { head: 9, first: 10, last: 13 };

/** Columns of a flight, in their order. */
export const flightColumns = ['trip', 'from', 'to', 'takeoff', 'landing', 'fuelAtStart', 'takenOn', 'fuelLeft', 'verdict', 'reason'] as const;
export type FlightColumn = (typeof flightColumns)[number];
/** The column of the first of them; the number of the flight stands before it. */
export const flightsFrom = 2;

/** The names by which a trip is read; each trip has its own. */
export interface TripNames {
  readonly told: string;
  readonly verdict: string;
  readonly reasons: string;
}
export const firstTripNames: TripNames = { told: toldName, verdict: 'trip_verdict', reasons: 'trip_reasons' };

/** Formula: what a flight tells under a word; nothing where it cannot be read. A cell that was emptied must not pass for 0. */
export function toldOf(told: string, word: Told): string {
  const found = `VLOOKUP("${toldWords[word]}",${told},2,FALSE)`;
  return word === 'from' || word === 'to' ? `=IFERROR(${found}&"","")` : `=IFERROR(IF(ISNUMBER(${found}),${found},""),"")`;
}
/** Formula: what a tank holds at the landing of a flight; `tank` is the cell with its name. */
export const toldOfTank = (told: string, tank: string): string => {
  const found = `VLOOKUP("in "&${tank},${told},2,FALSE)`;
  return `=IFERROR(IF(ISNUMBER(${found}),${found},""),"")`;
};

/** The formulas of a flight, by their columns. */
export function flightFormulas({ told, verdict, reasons }: TripNames): Readonly<Record<Exclude<FlightColumn, 'trip'>, string>> {
  const place = `MATCH(${verdict},INDEX(${reasons},0,2),0)`;
  const of = (word: Told): string => toldOf(told, word);
  return {
    from: of('from'),
    to: of('to'),
    takeoff: of('takeoff'),
    landing: of('landing'),
    fuelAtStart: of('fuelAtStart'),
    takenOn: of('takenOn'),
    fuelLeft: of('fuelLeft'),
    verdict: `=IFERROR(${verdict}&"","")`,
    reason: `=IFERROR(IF(${verdict}="OK","",INDEX(${reasons},${place},1)&": "&INDEX(${reasons},${place},3)),"")`,
  };
}
