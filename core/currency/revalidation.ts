// A class rating revalidated by experience: what was done in its last months, class by class, or in two classes together.
import { dayMonthsLater } from '../basics/calendarMonths';
import { cannotTell, countedTasks, lacksColumn, totalsOf, type ListItem, type Todo } from './experience';
import { checkNotRead } from './monthsExperience';
import { isEnough, sumOver } from './goodPeriods';
import { groupsOf, type Experience, type Group } from './groups';
import type { Key, Papers } from './papers';
import type { Citation, RevalidationRule } from './rules/rule';
import { firstCounted } from './window';

interface Revalidated {
  readonly group: Group;
  readonly citation: Citation;
}

/** Classes whose experience counts together are one where both are flown; every other class stands by itself. */
function together(rule: RevalidationRule, groups: readonly Group[], key: Key): Revalidated[] {
  const sides = rule.together?.classes.map((names) => groups.filter(({ classKey }) => names.map(key).includes(classKey))) ?? [];
  const joined = sides.every((side) => side.length > 0) ? sides.flat() : [];
  const alone = groups.filter((group) => !joined.includes(group)).map((group) => ({ group, citation: rule }));
  const [first] = joined;
  if (rule.together === undefined || first === undefined) return alone;
  const about = joined.flatMap((group) => group.about ?? []).join(' and ');
  const flights = [...new Set(joined.flatMap((group) => group.flights))];
  return [{ group: { ...first, about, flights }, citation: rule.together }, ...alone];
}

/** Rows for one class: each thing to be done before the rating's last day, and all of them. */
function revalidationOfClass(
  rule: RevalidationRule,
  { group, citation }: Revalidated,
  expiryDay: number,
  papers: Papers,
  experience: Experience,
): ListItem[] {
  const { asOfDay } = experience;
  const beginsFor = (months: number): number => firstCounted({ months }, expiryDay);
  const begins = beginsFor(rule.monthsBefore);
  const window = { first: begins, last: Math.min(expiryDay, asOfDay) };
  const lapsed = asOfDay > expiryDay;
  const verdictOf = (met: boolean): ListItem['verdict'] => (lapsed ? 'NO' : met ? 'OK' : 'CHECK');
  const { spared } = rule;
  const otherCheck = spared?.papers.some((paper) => papers.days(paper).some((day) => day >= window.first && day <= window.last)) === true;
  const tasks = countedTasks(rule.tasks, experience).map((task) => {
    const counted = sumOver(totalsOf(group, task.counts), { ...window, first: beginsFor(task.monthsBefore ?? rule.monthsBefore) });
    const name = task.name ?? rule.item;
    const byOther = otherCheck && name === spared?.task;
    const met = byOther || isEnough(counted, task.needed);
    return { name, counts: task.counts, counted, needed: task.needed, met, byOther };
  });
  const met = tasks.filter((task) => task.met).length;
  const checkedDay = papers.done(rule.check.paper);
  const checked = checkedDay !== undefined && checkedDay > dayMonthsLater(expiryDay, -rule.check.monthsBefore) && checkedDay <= expiryDay;
  const common = { ...(group.about === undefined ? {} : { about: group.about }), goodThroughDay: expiryDay, citation };
  const verdict = verdictOf(met === tasks.length || checked);
  const short = tasks
    .filter((task) => !task.met)
    .map(({ counts, counted, needed }) => ({ counts, more: Math.round((needed - counted) * 1e6) / 1e6 }));
  const todo: Todo = lapsed ? { tasks: [], papers: ['renewal'] } : { tasks: short, papers: [rule.check.paper], byDay: expiryDay };
  const whole: ListItem = { item: rule.item, counted: met, needed: tasks.length, verdict, ...common, ...(verdict === 'OK' ? {} : { todo }) };
  if (asOfDay < begins) return [{ ...whole, remark: 'window-not-begun' }];
  return [
    ...tasks.map(({ name, counted, needed, met: enough, byOther }): ListItem => ({
      ...{ item: name, counted, needed, verdict: verdictOf(enough), ...common },
      ...(byOther && !isEnough(counted, needed) ? { remark: 'by-other-check' as const } : {}),
    })),
    checked ? { ...whole, remark: 'by-check' } : whole,
  ];
}

export function revalidationItems(rule: RevalidationRule, papers: Papers, experience: Experience, key: Key): ListItem[] {
  const expiryDay = papers.lastGood(rule.paper);
  const classes = rule.classes.map(key);
  const groups = groupsOf(rule, experience).filter(({ classKey }) => classes.includes(classKey));
  if (groups.length === 0) return [];
  if (expiryDay === undefined) return [cannotTell(rule, papers.gap([rule.paper], false))];
  if (lacksColumn(rule.tasks, experience)) return [cannotTell(rule, { remark: 'no-column' })];
  return [
    ...together(rule, groups, key).flatMap((revalidated) => revalidationOfClass(rule, revalidated, expiryDay, papers, experience)),
    ...checkNotRead(rule.check.paper, rule, papers),
  ];
}
