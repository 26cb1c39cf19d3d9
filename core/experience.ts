// Recent experience by the rules of an authority: each rule counted for each category, class or type that the pilot flies.
import { lastDayOfItsMonth } from './calendarMonths';
import { civilDateFromDayNumber, dayNumber } from './civilDate';
import { columnsOf, type Flight, type FlightLog, type FlownAircraft, type Tally } from './flightLog';
import { goodStretches, inBoth, isEnough, sumOver, type Stretch } from './goodPeriods';
import type { Citation, DaysRule, MonthsRule, PilotRule, Task } from './rules/rule';
import { dueVerdict } from './validity';
import type { Verdict } from './verdict';

/** What else there is to say of a row. */
export type Remark =
  | 'no-column' | 'log-empty' | 'no-aircraft' | 'check-first' | 'by-paper' | 'by-check' | 'not-recorded' | 'no-date' | 'date-ahead' | 'no-class' | 'born-too-late' | 'nothing-qualifies'
  | 'window-not-begun' | 'own-row' | 'own-last-day' | 'not-listed';

/** One row of the pilot's list. */
export interface ListItem {
  readonly item: string;
  /** The category, class, type or aircraft it is about. */
  readonly about?: string;
  readonly counted?: number;
  readonly needed?: number;
  readonly verdict: Verdict;
  readonly goodThroughDay?: number;
  readonly citation?: Citation;
  readonly remark?: Remark;
  /** The papers that the remark is about. */
  readonly papers?: readonly string[];
}

/** The flights up to a day, sorted by the aircraft they were made in. */
export interface Experience {
  readonly log: FlightLog;
  readonly asOfDay: number;
  readonly flown: ReadonlyMap<FlownAircraft, readonly Flight[]>;
  /** Aircraft of flights that no row of the aircraft describes. */
  readonly unlisted: readonly string[];
}

export function experienceOf(log: FlightLog, fleet: readonly FlownAircraft[], asOfDay: number): Experience {
  const byKey = new Map(fleet.map((aircraft) => [aircraft.aircraft.key, aircraft]));
  const flown = new Map<FlownAircraft, Flight[]>(fleet.map((aircraft) => [aircraft, []]));
  const unlisted = new Map<string, string>();
  for (const flight of log.flights) {
    if (flight.day > asOfDay) continue;
    const aircraft = byKey.get(flight.aircraft.key);
    if (aircraft === undefined) unlisted.set(flight.aircraft.key, flight.aircraft.name);
    else flown.get(aircraft)?.push(flight);
  }
  return { log, asOfDay, flown, unlisted: [...unlisted.values()] };
}

/** Flights that count for one thing the pilot may fly. */
export interface Group {
  readonly about: string;
  readonly classKey: string;
  /** One list for each aircraft that counts. */
  readonly flights: readonly (readonly Flight[])[];
}

type CountingRule = Extract<PilotRule, { readonly same: string }>;

const classKey = ({ category, class: own }: FlownAircraft): string => `${category.key} / ${own?.key ?? ''}`;

function groupKey(rule: CountingRule, aircraft: FlownAircraft): string {
  if (rule.same === 'category') return aircraft.category.key;
  return aircraft.type === undefined ? classKey(aircraft) : `type ${aircraft.type.key}`;
}

/** Whether flights in `other` count for the group of `aircraft`. */
function countsFor(rule: CountingRule, aircraft: FlownAircraft, other: FlownAircraft): boolean {
  if (other.device !== undefined && !rule.devices.includes(other.device)) return false;
  if (rule.tailwheel === true && !other.tailwheel) return false;
  if (rule.same === 'category') return other.category.key === aircraft.category.key;
  if (aircraft.type !== undefined) return other.type?.key === aircraft.type.key && classKey(other) === classKey(aircraft);
  return classKey(other) === classKey(aircraft) && (other.type === undefined || rule.typesCountForClass);
}

/** Every category, class or type of the aircraft flown, once; training devices make none of their own. */
export function groupsOf(rule: CountingRule, { flown }: Experience): Group[] {
  const groups = new Map<string, Group>();
  for (const aircraft of flown.keys()) {
    const key = groupKey(rule, aircraft);
    const concerned = aircraft.device === undefined && (rule.tailwheel !== true || aircraft.tailwheel);
    if (!concerned || groups.has(key)) continue;
    const named = rule.same === 'category' ? aircraft.category : (aircraft.type ?? aircraft.class ?? aircraft.category);
    const flights = [...flown].flatMap(([other, made]) => (countsFor(rule, aircraft, other) ? [made] : []));
    groups.set(key, { about: named.name, classKey: aircraft.class?.key ?? aircraft.category.key, flights });
  }
  return [...groups.values()];
}

type PeriodOf = (day: number) => number;
const byDay: PeriodOf = (day) => day;
const byMonth: PeriodOf = (day) => {
  const { year, month } = civilDateFromDayNumber(day);
  return year * 12 + month - 1;
};
const lastDayOfMonth = (month: number): number => lastDayOfItsMonth(dayNumber({ year: Math.floor(month / 12), month: (month % 12) + 1, day: 1 }));

export function totalsOf({ flights }: Group, tally: Tally, periodOf: PeriodOf = byDay): Map<number, number> {
  const columns = columnsOf(tally);
  const totals = new Map<number, number>();
  for (const made of flights) {
    for (const { day, done } of made) {
      let count = 0;
      for (const column of columns) count += done[column];
      if (count === 0) continue;
      const period = periodOf(day);
      totals.set(period, (totals.get(period) ?? 0) + count);
    }
  }
  return totals;
}

const isInLog = ({ log }: Experience, { counts }: Task): boolean => columnsOf(counts).some((column) => log.columns.has(column));

/** A log without any column of take-offs is taken to have as many as landings: its help says so. */
export const countedTasks = (tasks: readonly Task[], experience: Experience): readonly Task[] => tasks.filter((task) => task.counts.of !== 'takeoffs' || isInLog(experience, task));
export const lacksColumn = (tasks: readonly Task[], experience: Experience): boolean => countedTasks(tasks, experience).some((task) => !isInLog(experience, task));

const lastOf = (stretches: readonly Stretch[]): number | undefined => stretches[stretches.length - 1]?.last;
const allOf = (stretches: readonly (readonly Stretch[])[]): readonly Stretch[] => stretches.reduce((one, other) => inBoth(one, other));

/** Verdict of a last good day; none at all is NO, since the log shows that it was never enough. */
const throughVerdict = (throughDay: number | undefined, asOfDay: number, warnDays: number): Verdict => (throughDay === undefined ? 'NO' : dueVerdict(throughDay - asOfDay, warnDays));

export const cannotTell = (rule: PilotRule, why: Pick<ListItem, 'remark' | 'papers'>): ListItem => ({ item: rule.item, verdict: 'UNKNOWN', citation: rule, ...why });

/** Why nothing can be said of a rule that counts flights. */
export function missingFor(rule: CountingRule, experience: Experience): ListItem | undefined {
  if (experience.log.flights.length === 0) return cannotTell(rule, { remark: 'log-empty' });
  if (![...experience.flown.keys()].some(({ device }) => device === undefined)) return cannotTell(rule, { remark: 'no-aircraft' });
  return lacksColumn(rule.tasks, experience) ? cannotTell(rule, { remark: 'no-column' }) : undefined;
}

/** `paperDay` is the last good day of a paper that frees from the rule. */
export function daysItem(rule: DaysRule, group: Group, experience: Experience, paperDay: number | undefined): ListItem {
  const { asOfDay } = experience;
  const tasks = countedTasks(rule.tasks, experience).map(({ counts, needed }) => ({ totals: totalsOf(group, counts), needed }));
  const window = { first: asOfDay - rule.days + 1, last: asOfDay };
  const byFlights = lastOf(allOf(tasks.map(({ totals, needed }) => goodStretches(totals, rule.days - 1, needed))));
  const byPaper = paperDay !== undefined && paperDay >= asOfDay && paperDay > (byFlights ?? -Infinity);
  const throughDay = byPaper ? paperDay : byFlights;
  return {
    item: rule.item,
    about: group.about,
    counted: Math.min(...tasks.map(({ totals }) => sumOver(totals, window))),
    needed: rule.tasks[0]?.needed ?? 0,
    verdict: throughVerdict(throughDay, asOfDay, rule.warnDays),
    ...(throughDay === undefined ? {} : { goodThroughDay: throughDay }),
    citation: rule,
    ...(byPaper ? { remark: 'by-paper' as const } : {}),
  };
}

/**
 * Good months in which nothing had lapsed too long before. Tasks done later than `further` months after the last good
 * month restore nothing by themselves: only from the month of a check on do they count. @source cfr-61-57, paragraph (d)(1).
 */
export function unbroken(byTasks: readonly Stretch[], checkMonths: readonly number[], months: number, further: number): Stretch[] {
  const candidates = [...byTasks.map((stretch) => ({ ...stretch, check: false })), ...checkMonths.map((month) => ({ first: month, last: month + months, check: true }))];
  candidates.sort((one, other) => one.first - other.first || Number(other.check) - Number(one.check));
  const good: Stretch[] = [];
  let last: number | undefined;
  for (const { first, last: end, check } of candidates) {
    const restored = checkMonths.filter((month) => month >= first && month <= end);
    const begin = check || last === undefined || first <= last + further ? first : Math.min(...restored);
    if (begin > end) continue;
    good.push({ first: begin, last: end });
    last = Math.max(last ?? end, end);
  }
  return good;
}

/** Rows of a rule by calendar months: each task, all of them, and until when no check is needed. `checkDays` are those of checks passed. */
export function monthsItems(rule: MonthsRule, group: Group, experience: Experience, checkDays: readonly number[]): ListItem[] {
  const { asOfDay } = experience;
  const month = byMonth(asOfDay);
  const preceding = { first: month - rule.months, last: month - 1 };
  const tasks = rule.tasks.map((task) => {
    const totals = totalsOf(group, task.counts, byMonth);
    const stretches = goodStretches(totals, rule.months, task.needed);
    return { task, stretches, counted: sumOver(totals, preceding) };
  });
  const row = (item: string, counted: number, needed: number, met: boolean, lastMonth: number | undefined, citation: Citation, warnDays: number): ListItem => {
    const throughDay = lastMonth === undefined ? undefined : lastDayOfMonth(lastMonth);
    const verdict = throughVerdict(throughDay, asOfDay, warnDays);
    return { item, about: group.about, counted, needed, verdict: verdict === 'OK' && !met ? 'CHECK' : verdict, ...(throughDay === undefined ? {} : { goodThroughDay: throughDay }), citation };
  };
  const checks = checkDays.filter((day) => day <= asOfDay).map(byMonth);
  const byTasks = allOf(tasks.map(({ stretches }) => stretches));
  const latest = unbroken(byTasks, checks, rule.months, rule.check.furtherMonths).reduce<number | undefined>((most, { last }) => Math.max(most ?? last, last), undefined);
  const met = tasks.filter(({ task, counted }) => isEnough(counted, task.needed)).length;
  const checked = checks.some((done) => done >= month - rule.months && done <= month);
  const whole = row(rule.item, met, tasks.length, met === tasks.length || checked, latest, rule, rule.warnDays);
  const notRestored = whole.verdict === 'NO' && (lastOf(byTasks) ?? -Infinity) >= month;
  const noCheck = row(rule.check.item, met, tasks.length, true, latest === undefined ? undefined : latest + rule.check.furtherMonths, rule.check, rule.warnDays);
  return [
    ...tasks.map(({ task, stretches, counted }) => row(task.name ?? rule.item, counted, task.needed, isEnough(counted, task.needed), lastOf(stretches), rule, 0)),
    notRestored ? { ...whole, remark: 'check-first' } : { ...whole, ...(checked && met < tasks.length ? { remark: 'by-check' as const } : {}) },
    noCheck,
  ];
}
