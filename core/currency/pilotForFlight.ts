// The pilot's list for one flight: only what this flight needs, counted for the aircraft flown, judged to the last day of the trip.
import { knownTo, type FlightRow, type TripDays } from '../basics/flightRows';
import type { Named } from '../basics/named';
import { verdicts, worstVerdict } from '../basics/verdict';
import { countedTasks, type ListItem } from './experience';
import type { FlightLog, FlownAircraft, Tally } from './flightLog';
import { experienceOf, isNamed, type Experience } from './groups';
import { isInForce } from './inForce';
import { Papers, type Key, type Paper } from './papers';
import { ownItems, ruleItems } from './pilotList';
import type { Authority, FlightNeed, PilotRule } from './rules/rule';
import { neverWarns } from './validity';

export interface PilotFlight extends TripDays {
  readonly flown: Named;
  readonly passengers: boolean;
  readonly night: boolean;
  readonly instrument: boolean;
}

export interface PilotRow extends FlightRow {
  readonly listed: ListItem;
  /** Whose rule it is; undefined for a paper of the owner's own and for the aircraft. */
  readonly authority?: string;
  readonly rule?: PilotRule;
  /** The day whose word is the worse, of the first and the last. */
  readonly judgedDay: number;
  /** Tasks of the rule of which too little was done. */
  readonly short: readonly ListItem[];
  /** What a rule by days counts in this log. */
  readonly counts: readonly Tally[];
}

/** What the list is worked out from. */
export interface PilotRecords {
  readonly log: FlightLog;
  readonly fleet: readonly FlownAircraft[];
  readonly papers: readonly Paper[];
  /** Why nobody knows whose flights those are. */
  readonly wrong?: readonly ListItem[];
}

/** A row that no rule makes. */
const plainRow = (listed: ListItem, { lastDay }: PilotFlight): PilotRow => ({
  ...{ listed, verdict: listed.verdict, goodThroughDay: listed.goodThroughDay },
  ...{ judgedDay: lastDay, short: [], counts: [] },
});

const needsOf = ({ passengers, night, instrument }: PilotFlight): FlightNeed[] => [
  'every flight',
  ...(passengers ? (['passengers'] as const) : []),
  ...(passengers && night ? (['passengers at night'] as const) : []),
  ...(night ? (['night'] as const) : []),
  ...(instrument ? (['instrument flight'] as const) : []),
];

/** No near end is CHECK here. A paper that only some flights need is asked for on these, though a list for all flights names it only where recorded. */
function forThisFlight(rule: PilotRule): PilotRule {
  if (rule.kind !== 'paper' || rule.neededFor === 'every flight') return { ...rule, warnDays: neverWarns };
  return { ...rule, onlyIfRecorded: false, warnDays: neverWarns };
}

/** Of all that the list says of a rule, what decides, and the tasks that fall short. */
function deciding(rule: PilotRule, listed: readonly ListItem[]): { readonly rows: readonly ListItem[]; readonly short: readonly ListItem[] } {
  if (rule.kind === 'medical') {
    const serving = listed.filter(
      ({ about }) => about === rule.least || (about !== undefined && rule.instead?.some(({ name }) => name === about) === true),
    );
    return { rows: serving.length > 0 ? serving : listed, short: [] };
  }
  if (rule.kind !== 'months') return { rows: listed, short: [] };
  const isTask = ({ item }: ListItem): boolean => item !== rule.item && rule.tasks.some(({ name }) => name === item);
  return {
    rows: listed.filter((one) => !isTask(one) && one.item !== rule.check.item),
    short: listed.filter((one) => isTask(one) && (one.counted ?? 0) < (one.needed ?? 0)),
  };
}

const place = (rows: readonly PilotRow[]): number => verdicts.indexOf(worstVerdict(rows.flatMap(({ verdict }) => verdict ?? [])));

/** An aircraft of which nothing is known, or that is none. */
function aircraftRow(flight: PilotFlight, found: FlownAircraft | undefined): PilotRow[] {
  if (found !== undefined && found.device === undefined) return [];
  const remark = found === undefined ? 'not-listed' : 'is-device';
  return [plainRow({ item: 'aircraft', about: flight.flown.name, verdict: 'UNKNOWN', remark }, flight)];
}

/** Of night without passengers no authority here asks anything. */
function noRuleRow({ name, pilot, own }: Authority, needs: readonly FlightNeed[], flight: PilotFlight): PilotRow[] {
  if (own === true) return [];
  const without = needs.filter((need) => need !== 'night' && !pilot.some((rule) => rule.neededFor === need && isInForce(rule, flight.lastDay)));
  if (without.length === 0) return [];
  return [plainRow({ item: `${name} rules`, about: without.join(', '), verdict: 'UNKNOWN', remark: 'no-rule' }, flight)];
}

/** A rule for other aircraft is not asked; one that names nothing in the list must be heard, since nobody knows for what it is. */
function concernsFlown({ flown }: { readonly flown?: Named }, only: FlownAircraft, [experience]: readonly Experience[]): boolean {
  if (flown === undefined || isNamed(only, flown)) return true;
  return experience !== undefined && ![...experience.flown.keys()].some((aircraft) => isNamed(aircraft, flown));
}

/** `known` and `key` as for the pilot's list. */
export function pilotForFlight(
  chosen: readonly Authority[],
  known: readonly Authority[],
  { log, fleet, papers, wrong = [] }: PilotRecords,
  flight: PilotFlight,
  key: Key,
): PilotRow[] {
  const { lastDay } = flight;
  const doneTo = knownTo(flight);
  // Days of the trip that are past serve nobody any more.
  const firstDay = Math.max(flight.firstDay, doneTo);
  const needs = needsOf(flight);
  const found = fleet.find(({ aircraft }) => aircraft.key === flight.flown.key);
  const only = found?.device === undefined ? found : undefined;
  // With calendar months the first day can be worse than the last: what only its own month makes enough is enough in the next.
  const days = firstDay < lastDay ? [lastDay, firstDay] : [lastDay];
  const experiences = days.map((day) => experienceOf(log, fleet, day, { madeTo: doneTo, ...(only === undefined ? {} : { only }) }));

  const rowsOn = (rule: PilotRule, authority: string, experience: Experience): PilotRow[] => {
    const listed = ruleItems(forThisFlight(rule), new Papers(papers, authority, key, doneTo), experience, key);
    const { rows, short } = deciding(rule, listed);
    const counts = rule.kind === 'days' ? countedTasks(rule.tasks, experience).map((task) => task.counts) : [];
    const common = { authority, rule, judgedDay: experience.asOfDay, short, counts };
    return rows.map((row) => ({ listed: row, verdict: row.verdict, goodThroughDay: row.goodThroughDay, ...common }));
  };
  const isAsked = (rule: PilotRule): boolean => {
    if (!needs.includes(rule.neededFor)) return false;
    if (rule.kind === 'paper') return rule.classes === undefined || rule.classes.map(key).includes(only?.class?.key ?? '');
    return !('same' in rule) || (only !== undefined && (rule.tailwheel !== true || only.tailwheel) && concernsFlown(rule, only, experiences));
  };

  const ruled = chosen.flatMap((authority) => [
    ...noRuleRow(authority, needs, flight),
    ...authority.pilot.filter(isAsked).flatMap((rule) => {
      const byDay = experiences.map((experience) => rowsOn(rule, authority.name, experience));
      return byDay
        .filter((rows) => rows.length > 0)
        .reduce<PilotRow[]>((worst, rows) => (worst.length === 0 || place(rows) < place(worst) ? rows : worst), []);
    }),
  ]);
  const own = ownItems(papers, known, key, { asOfDay: lastDay, doneTo, warnDays: neverWarns });
  return [...wrong.map((item) => plainRow(item, flight)), ...aircraftRow(flight, found), ...ruled, ...own.map((item) => plainRow(item, flight))];
}
