// The aircraft's list: inspections, tests and papers by the rules of an authority, by calendar and by hours in service.
import type { Named } from '../basics/named';
import type { AircraftUse } from './aircraftUse';
import { isInForce } from './inForce';
import type { AircraftRule, Authority } from './rules/rule';
import { dueVerdict, validThrough } from './validity';
import { worstVerdict, type Verdict } from '../basics/verdict';

/** One row as written down; an interval of the owner's own comes on top of the rule's. */
export interface AircraftItem {
  readonly aircraft: Named;
  readonly item: Named;
  /** Done on; or the last good day, where neither the rule nor the owner gives an interval. */
  readonly day: number | undefined;
  readonly doneAtHours: number | undefined;
  /** The hours at which it had been due, where it was done late. */
  readonly wasDueAtHours: number | undefined;
  readonly everyMonths: number | undefined;
  readonly everyDays: number | undefined;
  readonly everyHours: number | undefined;
  /** Landings, or cycles where each landing is one. */
  readonly everyLandings?: number | undefined;
}

type Gap = 'no-landings' | 'no-date' | 'date-ahead' | 'no-hours' | 'no-hours-now' | 'hours-before-done';
export type AircraftRemark = 'own-row' | 'own-last-day' | 'by-other' | Gap;
/** Whether a remark says why nothing can be said. */
export const cannotTellFrom = (remark: AircraftRemark): remark is Gap => remark !== 'own-row' && remark !== 'own-last-day' && remark !== 'by-other';

export interface AircraftStanding {
  readonly verdict: Verdict;
  readonly goodThroughDay: number | undefined;
  readonly hoursLeft: number | undefined;
  /** Hours allowed between two times, the shortest that holds. */
  readonly hoursAllowed: number | undefined;
  readonly landingsLeft: number | undefined;
  /** The day on which its hours come up at the rate of the log; undefined without one. */
  readonly forecastDay: number | undefined;
  readonly rule: AircraftRule | undefined;
  readonly remarks: readonly AircraftRemark[];
}

/** CHECK when no more hours than this are left. Common practice, no source. */
export const warnHours = 10;
const ownWarnDays = 30;

interface Part {
  readonly verdict: Verdict;
  readonly throughDay?: number;
  readonly hoursLeft?: number;
  readonly landingsLeft?: number;
  readonly remark?: Gap;
}

const known = (value: number | undefined): number[] => (value === undefined ? [] : [value]);

/** The day it was done counts as the first of a number of days, the stricter reading. @source cfr-91-171, paragraph (a)(2). */
function calendarEnds(doneDay: number, rule: AircraftRule | undefined, item: AircraftItem): number[] {
  const { lasts } = rule ?? {};
  const byRule = lasts === undefined ? [] : ['days' in lasts ? doneDay + lasts.days - 1 : validThrough(doneDay, lasts.months, lasts.to)];
  const own = [
    ...known(item.everyMonths).map((months) => validThrough(doneDay, months, 'day')),
    ...known(item.everyDays).map((days) => doneDay + days - 1),
  ];
  return [...byRule, ...own];
}

function calendarPart(rule: AircraftRule | undefined, item: AircraftItem, asOfDay: number, hasInterval: boolean): Part {
  const { day } = item;
  if (day === undefined) return { verdict: 'UNKNOWN', remark: 'no-date' };
  const ends = hasInterval ? calendarEnds(day, rule, item) : [day];
  if (hasInterval && day > asOfDay) return { verdict: 'UNKNOWN', remark: 'date-ahead' };
  const throughDay = Math.min(...ends);
  return { verdict: dueVerdict(throughDay - asOfDay, rule?.warnDays ?? ownWarnDays), throughDay };
}

/**
 * Done late, the next counts from when it had been due; done early, from when it was done. @source cfr-91-409, paragraph
 * (b): the excess is included in computing the next 100 hours.
 */
function hoursPart(intervals: readonly number[], { doneAtHours, wasDueAtHours }: AircraftItem, hoursNow: number | undefined): Part {
  if (doneAtHours === undefined) return { verdict: 'UNKNOWN', remark: 'no-hours' };
  if (hoursNow === undefined) return { verdict: 'UNKNOWN', remark: 'no-hours-now' };
  if (hoursNow < doneAtHours) return { verdict: 'UNKNOWN', remark: 'hours-before-done' };
  const due = Math.min(doneAtHours, wasDueAtHours ?? doneAtHours) + Math.min(...intervals);
  const hoursLeft = Math.round((due - hoursNow) * 1e6) / 1e6;
  return { verdict: hoursLeft < 0 ? 'NO' : hoursLeft <= warnHours ? 'CHECK' : 'OK', hoursLeft };
}

/** The rule that knows an item by its name; `key` tells spellings of a name together. */
export const aircraftRule = (
  itemKey: string,
  chosen: readonly Authority[],
  key: (name: string) => string,
  asOfDay: number,
): AircraftRule | undefined =>
  chosen
    .flatMap(({ aircraft }) => aircraft.filter((rule) => isInForce(rule, asOfDay)))
    .find((one) => [one.item, ...(one.also ?? [])].some((name) => key(name) === itemKey));

/** CHECK when no more landings than this are left. Common practice, no source. */
const warnLandings = 10;

/** Counted by the log from the day after it was done. */
function landingsPart(every: number, { day }: AircraftItem, { landingsAfter }: AircraftUse): Part {
  if (day === undefined) return { verdict: 'UNKNOWN', remark: 'no-date' };
  if (landingsAfter === undefined) return { verdict: 'UNKNOWN', remark: 'no-landings' };
  const landingsLeft = every - landingsAfter(day);
  return { verdict: landingsLeft < 0 ? 'NO' : landingsLeft <= warnLandings ? 'CHECK' : 'OK', landingsLeft };
}

/** An inspection that is another one as well, where it was done at later hours. @source cfr-91-409, paragraph (b): an annual or 100-hour inspection. */
function laterDone(
  item: AircraftItem,
  rule: AircraftRule | undefined,
  siblings: readonly AircraftItem[],
  key: (name: string) => string,
): AircraftItem {
  const other = rule?.alsoDoneBy;
  if (other === undefined) return item;
  const hours = siblings.flatMap((one) => (one.aircraft.key === item.aircraft.key && one.item.key === key(other) ? known(one.doneAtHours) : []));
  const latest = Math.max(...hours, item.doneAtHours ?? -Infinity);
  return latest === -Infinity || latest === item.doneAtHours ? item : { ...item, doneAtHours: latest, wasDueAtHours: undefined };
}

/** `siblings` are the other rows of the list. */
export function aircraftStanding(
  written: AircraftItem,
  use: AircraftUse,
  asOfDay: number,
  chosen: readonly Authority[],
  key: (name: string) => string,
  siblings: readonly AircraftItem[] = [],
): AircraftStanding {
  const rule = aircraftRule(written.item.key, chosen, key, asOfDay);
  const item = laterDone(written, rule, siblings, key);
  const hours = [...known(rule?.hours), ...known(item.everyHours)];
  const byCalendar = rule?.lasts !== undefined || item.everyMonths !== undefined || item.everyDays !== undefined;
  const parts: Part[] = [
    ...(byCalendar || (hours.length === 0 && item.everyLandings === undefined) ? [calendarPart(rule, item, asOfDay, byCalendar)] : []),
    ...(hours.length > 0 ? [hoursPart(hours, item, use.hoursNow)] : []),
    ...known(item.everyLandings).map((every) => landingsPart(every, item, use)),
  ];
  const hoursLeft = parts.flatMap((part) => known(part.hoursLeft))[0];
  return {
    verdict: worstVerdict(parts.map(({ verdict }) => verdict)),
    goodThroughDay: parts.flatMap(({ throughDay }) => known(throughDay))[0],
    hoursLeft,
    landingsLeft: parts.flatMap((part) => known(part.landingsLeft))[0],
    forecastDay:
      hoursLeft === undefined || hoursLeft < 0 || use.hoursPerDay === undefined ? undefined : asOfDay + Math.floor(hoursLeft / use.hoursPerDay),
    hoursAllowed: hours.length === 0 ? undefined : Math.min(...hours),
    rule,
    remarks: [
      ...(item === written ? [] : ['by-other' as const]),
      ...parts.flatMap(({ remark }) => (remark === undefined ? [] : [remark])),
      ...(rule === undefined
        ? [
            byCalendar || hours.length > 0 || item.everyLandings !== undefined || item.day === undefined
              ? ('own-row' as const)
              : ('own-last-day' as const),
          ]
        : []),
    ],
  };
}
