// The aircraft's list: inspections, tests and papers by the rules of an authority, by calendar and by hours in service.
import type { Named } from './named';
import type { AircraftRule, Authority } from './rules/rule';
import { dueVerdict, validThrough } from './validity';
import { worstVerdict, type Verdict } from './verdict';

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
}

export type AircraftRemark = 'own-row' | 'own-last-day' | 'no-date' | 'date-ahead' | 'no-hours' | 'no-hours-now' | 'hours-before-done';

export interface AircraftStanding {
  readonly verdict: Verdict;
  readonly goodThroughDay: number | undefined;
  readonly hoursLeft: number | undefined;
  /** Hours allowed between two times, the shortest that holds. */
  readonly hoursAllowed: number | undefined;
  readonly rule: AircraftRule | undefined;
  readonly remarks: readonly AircraftRemark[];
}

/** CHECK when no more hours than this are left. Common practice, no source. */
const warnHours = 10;
const ownWarnDays = 30;

interface Part {
  readonly verdict: Verdict;
  readonly throughDay?: number;
  readonly hoursLeft?: number;
  readonly remark?: AircraftRemark;
}

const known = (value: number | undefined): number[] => (value === undefined ? [] : [value]);

/** The day it was done counts as the first of a number of days, the stricter reading. @source cfr-91-171, paragraph (a)(2). */
function calendarEnds(doneDay: number, rule: AircraftRule | undefined, item: AircraftItem): number[] {
  const { lasts } = rule ?? {};
  const byRule = lasts === undefined ? [] : ['days' in lasts ? doneDay + lasts.days - 1 : validThrough(doneDay, lasts.months, lasts.to)];
  const own = [...known(item.everyMonths).map((months) => validThrough(doneDay, months, 'day')), ...known(item.everyDays).map((days) => doneDay + days - 1)];
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

/** `key` tells spellings of a name together. */
export function aircraftStanding(item: AircraftItem, hoursNow: number | undefined, asOfDay: number, chosen: readonly Authority[], key: (name: string) => string): AircraftStanding {
  const rule = chosen.flatMap(({ aircraft }) => aircraft).find((one) => [one.item, ...(one.also ?? [])].some((name) => key(name) === item.item.key));
  const hours = [...known(rule?.hours), ...known(item.everyHours)];
  const byCalendar = rule?.lasts !== undefined || item.everyMonths !== undefined || item.everyDays !== undefined;
  const parts: Part[] = [
    ...(byCalendar || hours.length === 0 ? [calendarPart(rule, item, asOfDay, byCalendar)] : []),
    ...(hours.length > 0 ? [hoursPart(hours, item, hoursNow)] : []),
  ];
  return {
    verdict: worstVerdict(parts.map(({ verdict }) => verdict)),
    goodThroughDay: parts.flatMap(({ throughDay }) => known(throughDay))[0],
    hoursLeft: parts.flatMap(({ hoursLeft }) => known(hoursLeft))[0],
    hoursAllowed: hours.length === 0 ? undefined : Math.min(...hours),
    rule,
    remarks: [...parts.flatMap(({ remark }) => (remark === undefined ? [] : [remark])), ...(rule === undefined ? [byCalendar || hours.length > 0 || item.day === undefined ? ('own-row' as const) : ('own-last-day' as const)] : [])],
  };
}
