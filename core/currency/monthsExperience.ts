// Recent experience by calendar months: each task, all of them, and what a check restores.
import { allOf, byMonth, lastDayOfMonth, lastOf, stillNeeded, throughVerdict, todoFor, totalsOf, type ListItem } from './experience';
import { goodStretches, isEnough, sumOver, type Stretch } from './goodPeriods';
import type { Experience, Group } from './groups';
import type { Papers } from './papers';
import type { Citation, MonthsRule } from './rules/rule';

/**
 * Good months in which nothing had lapsed too long before. Tasks done later than `further` months after the last good
 * month restore nothing by themselves: only from the month of a check on do they count. @source cfr-61-57, paragraph (d)(1).
 */
export function unbroken(byTasks: readonly Stretch[], checkMonths: readonly number[], months: number, further: number): Stretch[] {
  const candidates = [
    ...byTasks.map((stretch) => ({ ...stretch, check: false })),
    ...checkMonths.map((month) => ({ first: month, last: month + months, check: true })),
  ];
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

const monthsRemark = (notRestored: boolean, byCheck: boolean): Pick<ListItem, 'remark'> =>
  notRestored ? { remark: 'check-first' } : byCheck ? { remark: 'by-check' } : {};

const monthsRow =
  ({ about }: Group, asOfDay: number) =>
  (item: string, counted: number, needed: number, met: boolean, lastMonth: number | undefined, citation: Citation, warnDays: number): ListItem => {
    const throughDay = lastMonth === undefined ? undefined : lastDayOfMonth(lastMonth);
    const verdict = throughVerdict(throughDay, asOfDay, warnDays);
    return {
      item,
      ...(about === undefined ? {} : { about }),
      counted,
      needed,
      verdict: verdict === 'OK' && !met ? 'CHECK' : verdict,
      ...(throughDay === undefined ? {} : { goodThroughDay: throughDay }),
      citation,
    };
  };

/** Rows of a rule by calendar months: each task, all of them, and until when no check is needed. `checkDays` are those of checks passed. */
export function monthsItems(rule: MonthsRule, group: Group, experience: Experience, checkDays: readonly number[]): ListItem[] {
  const { asOfDay } = experience;
  const month = byMonth(asOfDay);
  const preceding = { first: month - rule.months, last: month - 1 };
  const tasks = rule.tasks.map((task) => {
    const totals = totalsOf(group, task.counts, byMonth);
    const stretches = goodStretches(totals, (at) => at + rule.months, task.needed);
    return { task, counts: task.counts, needed: task.needed, totals, stretches, counted: sumOver(totals, preceding) };
  });
  const row = monthsRow(group, asOfDay);
  const checks = checkDays.map(byMonth);
  const byTasks = allOf(tasks.map(({ stretches }) => stretches));
  const latest = unbroken(byTasks, checks, rule.months, rule.check.furtherMonths).reduce<number | undefined>(
    (most, { last }) => Math.max(most ?? last, last),
    undefined,
  );
  const met = tasks.filter(({ task, counted }) => isEnough(counted, task.needed)).length;
  const checked = checks.some((done) => done >= month - rule.months && done <= month);
  const whole = row(rule.item, met, tasks.length, met === tasks.length || checked, latest, rule, rule.warnDays);
  const notRestored = whole.verdict === 'NO' && (lastOf(byTasks) ?? -Infinity) >= month;
  const noCheck = row(
    rule.check.item,
    met,
    tasks.length,
    true,
    latest === undefined ? undefined : latest + rule.check.furtherMonths,
    rule.check,
    rule.warnDays,
  );
  const lapsedLong = notRestored || (latest !== undefined && month > latest + rule.check.furtherMonths);
  // What only this month makes enough is enough by itself from the next month on: nothing is to be done.
  const isFar = throughVerdict(whole.goodThroughDay, asOfDay, rule.warnDays) === 'OK';
  const todo = todoFor(
    isFar ? 'OK' : whole.verdict,
    whole.goodThroughDay,
    experience,
    (day) => (lapsedLong ? [] : stillNeeded(tasks, { first: byMonth(day) - rule.months, last: byMonth(day) })),
    lapsedLong || whole.verdict === 'NO' ? [rule.check.paper] : [],
  );
  return [
    ...tasks.map(({ task, stretches, counted }) =>
      row(task.name ?? rule.item, counted, task.needed, isEnough(counted, task.needed), lastOf(stretches), rule, 0),
    ),
    { ...whole, ...monthsRemark(notRestored, checked && met < tasks.length), ...todo },
    noCheck,
  ];
}

/** A check that was written down so that it cannot be used is not left out without a word. */
export function checkNotRead(paper: string, citation: Citation, papers: Papers): ListItem[] {
  const gap = papers.gap([paper], false);
  return papers.days(paper).length > 0 || gap.remark === 'not-recorded' ? [] : [{ item: paper, verdict: 'UNKNOWN', citation, ...gap }];
}
