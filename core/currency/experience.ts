// Recent experience by the rules of an authority: each rule counted for each category, class or type that the pilot flies.
import { lastDayOfItsMonth } from '../basics/calendarMonths';
import { civilDateFromDayNumber, dayNumber } from '../basics/civilDate';
import { amountIn, columnsOf, type Tally } from './flightLog';
import { withoutClass, type CountingRule, type Experience, type Group } from './groups';
import { goodStretches, inBoth, isEnough, sumOver, type Stretch } from './goodPeriods';
import { countsThrough, firstCounted, type Window } from './window';
import type { Citation, DaysRule, PilotRule, Task } from './rules/rule';
import { dueVerdict } from './validity';
import type { Verdict } from '../basics/verdict';

/** What else there is to say of a row. */
export type Remark =
  | 'no-column'
  | 'log-empty'
  | 'no-aircraft'
  | 'class-missing'
  | 'check-first'
  | 'by-paper'
  | 'by-check'
  | 'by-other-check'
  | 'not-recorded'
  | 'no-date'
  | 'date-ahead'
  | 'no-class'
  | 'born-too-late'
  | 'nothing-qualifies'
  | 'window-not-begun'
  | 'own-row'
  | 'own-last-day'
  | 'not-listed'
  | 'is-device'
  | 'no-rule'
  | 'nothing-named'
  | 'unreadable'
  | 'not-judged'
  | 'never-lapses'
  | 'within-limits'
  | 'pilot-not-said'
  | 'pilot-not-in-log'
  | 'names-nobody'
  | 'place-not-listed'
  | 'against-the-sun';

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
  readonly todo?: Todo;
}

/** The shortest way to make good what is not OK: so much more of each task, or one of these papers. */
export interface Todo {
  readonly tasks: readonly { readonly counts: Tally; readonly more: number }[];
  readonly papers: readonly string[];
  /** The last day on which that keeps it good without a break; left out where it is not good any more. */
  readonly byDay?: number;
}

type PeriodOf = (day: number) => number;
const byDay: PeriodOf = (day) => day;
export const byMonth: PeriodOf = (day) => {
  const { year, month } = civilDateFromDayNumber(day);
  return year * 12 + month - 1;
};
export const lastDayOfMonth = (month: number): number =>
  lastDayOfItsMonth(dayNumber({ year: Math.floor(month / 12), month: (month % 12) + 1, day: 1 }));

export function totalsOf({ flights }: Group, tally: Tally, periodOf: PeriodOf = byDay): Map<number, number> {
  const columns = columnsOf(tally);
  const totals = new Map<number, number>();
  for (const made of flights) {
    for (const flight of made) {
      const count = amountIn(tally, columns, flight);
      if (count === 0) continue;
      const period = periodOf(flight.day);
      totals.set(period, (totals.get(period) ?? 0) + count);
    }
  }
  return totals;
}

function isInLog({ log }: Experience, { counts }: Task): boolean {
  const columns = columnsOf(counts);
  return columns.length === 0 || columns.some((column) => log.columns.has(column));
}

/** Where the log does not tell an hour after sunset apart, its night is taken; where it does in part, what is missing is missing. */
function withNightOfLog<T extends Task>(task: T, { log: { columns } }: Experience): T {
  const { late, ...counts } = task.counts;
  const told = counts.of === 'takeoffs' ? columns.has('lateTakeoffs') : columns.has('lateLandings') || columns.has('lateFullStops');
  return late === undefined || told ? task : { ...task, counts };
}

/** A log without any column of take-offs is taken to have as many as landings: its help says so. */
export function countedTasks<T extends Task>(tasks: readonly T[], experience: Experience): readonly T[] {
  const landingsAsked = tasks.some(({ counts }) => counts.of === 'landings');
  return tasks.flatMap((asked) => {
    const task = withNightOfLog(asked, experience);
    if (task.counts.of !== 'takeoffs' || isInLog(experience, task)) return [task];
    return landingsAsked ? [] : [{ ...task, counts: { ...task.counts, of: 'landings' as const } }];
  });
}
export const lacksColumn = (tasks: readonly Task[], experience: Experience): boolean =>
  countedTasks(tasks, experience).some((task) => !isInLog(experience, task));

export const lastOf = (stretches: readonly Stretch[]): number | undefined => stretches[stretches.length - 1]?.last;
export const allOf = (stretches: readonly (readonly Stretch[])[]): readonly Stretch[] => stretches.reduce((one, other) => inBoth(one, other));

/** Verdict of a last good day; none at all is NO, since the log shows that it was never enough. */
export const throughVerdict = (throughDay: number | undefined, asOfDay: number, warnDays: number): Verdict =>
  throughDay === undefined ? 'NO' : dueVerdict(throughDay - asOfDay, warnDays);

export const cannotTell = (rule: PilotRule, why: Pick<ListItem, 'remark' | 'papers'>): ListItem => ({
  item: rule.item,
  verdict: 'UNKNOWN',
  citation: rule,
  ...why,
});

/** A row for the aircraft of which nobody can say with which others they count. */
export function classMissing(rule: CountingRule, experience: Experience): ListItem[] {
  const names = withoutClass(rule, experience).map(({ aircraft }) => aircraft.name);
  return names.length === 0 ? [] : [{ ...cannotTell(rule, { remark: 'class-missing' }), about: names.join(', ') }];
}

/** Why nothing can be said of a rule that counts flights. */
export function missingFor(rule: CountingRule, experience: Experience): ListItem | undefined {
  if (experience.log.flights.length === 0) return cannotTell(rule, { remark: 'log-empty' });
  if (![...experience.flown.keys()].some(({ device }) => device === undefined)) return cannotTell(rule, { remark: 'no-aircraft' });
  return lacksColumn(rule.tasks, experience) ? cannotTell(rule, { remark: 'no-column' }) : undefined;
}

const inWindow = (totals: Map<number, number>, within: Window): Map<number, number> =>
  'sinceDay' in within ? new Map([...totals].filter(([day]) => day >= within.sinceDay)) : totals;

/** What falls shortest of what is needed, for the two numbers of a row. */
function leastOf(tasks: readonly { readonly done: number; readonly needed: number }[]): { readonly done: number; readonly needed: number } {
  return tasks.reduce((least, task) => (task.done / task.needed < least.done / least.needed ? task : least), tasks[0] ?? { done: 0, needed: 0 });
}

type Totalled = { readonly counts: Tally; readonly totals: ReadonlyMap<number, number>; readonly needed: number };

export const stillNeeded = (tasks: readonly Totalled[], window: Stretch): Todo['tasks'] =>
  tasks.flatMap(({ counts, totals, needed }) => {
    const done = sumOver(totals, window);
    return isEnough(done, needed) ? [] : [{ counts, more: Math.round((needed - done) * 1e6) / 1e6 }];
  });

/** Of what is NO, what is missing on the day; of what ends soon, what is missing on the day after it ends. */
export function todoFor(
  verdict: Verdict,
  throughDay: number | undefined,
  { asOfDay, madeTo }: Pick<Experience, 'asOfDay' | 'madeTo'>,
  shortOn: (day: number) => Todo['tasks'],
  papers: Todo['papers'] = [],
): { readonly todo?: Todo } {
  if (verdict === 'OK' || verdict === 'UNKNOWN') return {};
  const tasks = shortOn(verdict === 'NO' || throughDay === undefined ? asOfDay : throughDay + 1);
  if (tasks.length === 0 && papers.length === 0) return {};
  return { todo: { tasks, papers, ...(throughDay === undefined || throughDay < madeTo ? {} : { byDay: throughDay }) } };
}

/** `paperDay` is the last good day of a paper that frees from the rule. */
export function daysItem(rule: DaysRule, group: Group, experience: Experience, paperDay: number | undefined): ListItem {
  const { asOfDay } = experience;
  const { within } = rule;
  const tasks = countedTasks(rule.tasks, experience).map(({ counts, needed }) => ({
    counts,
    totals: inWindow(totalsOf(group, counts), within),
    needed,
  }));
  const windowOn = (day: number): Stretch => ({ first: firstCounted(within, day), last: day });
  const byFlights = lastOf(allOf(tasks.map(({ totals, needed }) => goodStretches(totals, (day) => countsThrough(within, day), needed))));
  const byPaper = paperDay !== undefined && paperDay >= asOfDay && paperDay > (byFlights ?? -Infinity);
  const throughDay = byPaper ? paperDay : byFlights;
  const verdict = throughVerdict(throughDay, asOfDay, rule.warnDays);
  const least = leastOf(tasks.map(({ totals, needed }) => ({ done: sumOver(totals, windowOn(asOfDay)), needed })));
  return {
    item: rule.item,
    ...(group.about === undefined ? {} : { about: group.about }),
    counted: least.done,
    needed: least.needed,
    verdict,
    ...(throughDay === undefined || throughDay === Infinity ? {} : { goodThroughDay: throughDay }),
    citation: rule,
    ...todoFor(verdict, throughDay, experience, (day) => stillNeeded(tasks, windowOn(day))),
    ...(byPaper ? { remark: 'by-paper' as const } : {}),
  };
}
