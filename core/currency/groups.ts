// The flights up to a day, by the aircraft they were made in, and which of them count together: those of a category, a class or a type.
import type { Named } from '../basics/named';
import type { Flight, FlightLog, FlownAircraft } from './flightLog';
import type { PilotRule } from './rules/rule';

/** The flights up to a day, sorted by the aircraft they were made in. */
export interface Experience {
  readonly log: FlightLog;
  /** The day judged. */
  readonly asOfDay: number;
  readonly flown: ReadonlyMap<FlownAircraft, readonly Flight[]>;
  /** Aircraft of flights that no row of the aircraft describes. */
  readonly unlisted: readonly string[];
  /** The last day whose flights count. */
  readonly madeTo: number;
  /** The one aircraft asked about; left out, every aircraft flown. */
  readonly only?: FlownAircraft;
}

/** `madeTo` is the last day whose flights count, where it is not the day judged itself. */
export function experienceOf(
  log: FlightLog,
  fleet: readonly FlownAircraft[],
  asOfDay: number,
  { madeTo = asOfDay, only }: { readonly madeTo?: number; readonly only?: FlownAircraft } = {},
): Experience {
  const byKey = new Map(fleet.map((aircraft) => [aircraft.aircraft.key, aircraft]));
  const flown = new Map<FlownAircraft, Flight[]>(fleet.map((aircraft) => [aircraft, []]));
  const unlisted = new Map<string, string>();
  for (const flight of log.flights) {
    if (flight.day > madeTo) continue;
    const aircraft = byKey.get(flight.aircraft.key);
    if (aircraft === undefined) unlisted.set(flight.aircraft.key, flight.aircraft.name);
    else flown.get(aircraft)?.push(flight);
  }
  return { log, asOfDay, madeTo, flown, unlisted: [...unlisted.values()], ...(only === undefined ? {} : { only }) };
}

/** The aircraft asked about; training devices make no group of their own. */
export const asked = ({ flown, only }: Experience): FlownAircraft[] =>
  (only === undefined ? [...flown.keys()] : [only]).filter(({ device }) => device === undefined);

/** Whether an aircraft is what a rule names: itself, its class, its type rating or its category. */
export const isNamed = ({ aircraft, category, class: own, type }: FlownAircraft, { key }: Named): boolean =>
  [aircraft, category, own, type].some((named) => named?.key === key);

const concerns = (rule: CountingRule, aircraft: FlownAircraft): boolean =>
  (rule.tailwheel !== true || aircraft.tailwheel) && (rule.flown === undefined || isNamed(aircraft, rule.flown));

/** Flights that count for one thing the pilot may fly. */
export interface Group {
  /** Left out where a rule asks the same of all. */
  readonly about?: string;
  readonly classKey: string;
  /** One list for each aircraft that counts. */
  readonly flights: readonly (readonly Flight[])[];
}

export type CountingRule = Extract<PilotRule, { readonly same: string }>;

const classKey = ({ category, class: own }: FlownAircraft): string => `${category.key} / ${own?.key ?? ''}`;

function groupKey(rule: CountingRule, aircraft: FlownAircraft): string {
  if (rule.same === 'all') return '';
  if (rule.same === 'aircraft') return aircraft.aircraft.key;
  if (rule.same === 'category') return aircraft.category.key;
  return aircraft.type === undefined ? classKey(aircraft) : `type ${aircraft.type.key}`;
}

/**
 * Categories within which there are no classes, or that are classes by their own name. @source 14 CFR 61.5(b): airplane, rotorcraft,
 * lighter-than-air, powered parachute and weight-shift control have classes, glider and powered-lift none.
 */
const withoutClasses: ReadonlySet<string> = new Set(['glider', 'sailplane', 'powered lift', 'helicopter', 'gyroplane', 'airship', 'balloon']);

/** Blank where there should be a class: of two such aircraft nobody knows whether they are of one class. */
const lacksClass = (rule: CountingRule, { category, class: own, type }: FlownAircraft): boolean =>
  rule.same === 'class' && own === undefined && type === undefined && !withoutClasses.has(category.key);

/** Aircraft that a rule by classes cannot place, training devices aside. */
export const withoutClass = (rule: CountingRule, experience: Experience): FlownAircraft[] =>
  asked(experience).filter((aircraft) => concerns(rule, aircraft) && lacksClass(rule, aircraft));

/** Whether flights in `other` count for the group of `aircraft`. */
function countsFor(rule: CountingRule, aircraft: FlownAircraft, other: FlownAircraft): boolean {
  if (other.device !== undefined && !rule.devices.includes(other.device)) return false;
  if (!concerns(rule, other)) return false;
  if (rule.same === 'all') return true;
  if (rule.same === 'aircraft') return other.aircraft.key === aircraft.aircraft.key;
  if (rule.same === 'category') return other.category.key === aircraft.category.key;
  if (aircraft.type !== undefined) return other.type?.key === aircraft.type.key && classKey(other) === classKey(aircraft);
  return classKey(other) === classKey(aircraft) && (other.type === undefined || rule.typesCountForClass);
}

function aboutOf({ same, flown }: CountingRule, { aircraft, category, class: own, type }: FlownAircraft): string | undefined {
  if (same === 'all') return flown?.name;
  if (same === 'aircraft') return aircraft.name;
  return (same === 'category' ? category : (type ?? own ?? category)).name;
}

/** Every category, class or type of the aircraft asked about, once. */
export function groupsOf(rule: CountingRule, experience: Experience): Group[] {
  const { flown } = experience;
  const groups = new Map<string, Group>();
  for (const aircraft of asked(experience)) {
    const key = groupKey(rule, aircraft);
    if (!concerns(rule, aircraft) || lacksClass(rule, aircraft) || groups.has(key)) continue;
    const flights = [...flown].flatMap(([other, made]) => (countsFor(rule, aircraft, other) ? [made] : []));
    const about = aboutOf(rule, aircraft);
    groups.set(key, { ...(about === undefined ? {} : { about }), classKey: aircraft.class?.key ?? aircraft.category.key, flights });
  }
  return [...groups.values()];
}
