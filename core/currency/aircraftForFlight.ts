// The aircraft's list for one flight: its rows judged to the last day of the trip and by the hours of the flight, and what must be listed and is not.
import { knownTo, type FlightRow, type TripDays } from '../basics/flightRows';
import { worstVerdict, type Verdict } from '../basics/verdict';
import { aircraftStanding, cannotTellFrom, warnHours, type AircraftItem, type AircraftStanding } from './aircraftList';
import type { AircraftUse } from './aircraftUse';
import type { AircraftRule, Authority } from './rules/rule';

export interface AircraftFlight extends TripDays {
  /** Undefined where nobody has said how long the flight is. */
  readonly flightHours: number | undefined;
  readonly instrument: boolean;
}

export interface AircraftRow extends FlightRow {
  readonly standing: AircraftStanding;
}

/** Whether this flight needs an item at all. */
export const isNeeded = (rule: AircraftRule | undefined, { instrument }: AircraftFlight): boolean =>
  instrument || rule?.neededFor !== 'instrument flight';

/** Hours that add up in binary fractions are not to be lost to the last bit. */
const slack = 1e-6;

/** Without the hours of the flight, few hours left are CHECK as in the list for all flights. */
function hoursVerdict(hoursLeft: number, flightHours: number | undefined): Verdict {
  if (flightHours !== undefined) return hoursLeft < flightHours - slack ? 'NO' : 'OK';
  if (hoursLeft <= 0) return 'NO';
  return hoursLeft <= warnHours ? 'CHECK' : 'OK';
}

export function itemForFlight(
  item: AircraftItem,
  use: AircraftUse,
  flight: AircraftFlight,
  chosen: readonly Authority[],
  key: (name: string) => string,
  siblings: readonly AircraftItem[] = [],
): AircraftRow {
  const standing = aircraftStanding(item, use, knownTo(flight), chosen, key, siblings);
  const { goodThroughDay, hoursLeft, landingsLeft, rule, remarks } = standing;
  if (!isNeeded(rule, flight)) return { standing, goodThroughDay, verdict: undefined };
  const parts: Verdict[] = [
    ...(goodThroughDay === undefined ? [] : [goodThroughDay < flight.lastDay ? ('NO' as const) : ('OK' as const)]),
    ...(hoursLeft === undefined ? [] : [hoursVerdict(hoursLeft, flight.flightHours)]),
    // How many landings a flight makes nobody says: one at least.
    ...(landingsLeft === undefined ? [] : [landingsLeft < 1 ? ('NO' as const) : landingsLeft <= warnHours ? ('CHECK' as const) : ('OK' as const)]),
    ...(remarks.some(cannotTellFrom) ? (['UNKNOWN'] as const) : []),
  ];
  return { standing, goodThroughDay, verdict: worstVerdict(parts) };
}

/** Rules for every aircraft of which the list names neither the item nor what may take its place. */
export const missingRules = (
  listed: readonly string[],
  { aircraft }: Authority,
  key: (name: string) => string,
): (AircraftRule & { readonly everyAircraft: NonNullable<AircraftRule['everyAircraft']> })[] =>
  aircraft.flatMap((rule) => {
    const { everyAircraft } = rule;
    if (everyAircraft === undefined) return [];
    const names = [rule.item, ...(rule.also ?? []), ...everyAircraft.orInstead].map(key);
    return listed.some((name) => names.includes(name)) ? [] : [{ ...rule, everyAircraft }];
  });
