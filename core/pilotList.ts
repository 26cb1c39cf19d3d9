// The pilot's list: every rule of the chosen authorities worked out from the flights and from the papers written down.
import { dayMonthsLater } from './calendarMonths';
import { CoreError } from './errors';
import { cannotTell, countedTasks, daysItem, groupsOf, lacksColumn, missingFor, monthsItems, totalsOf, type Experience, type Group, type ListItem } from './experience';
import { isEnough, sumOver } from './goodPeriods';
import { medicalPapers, Papers, type Gap, type Key, type Paper } from './pilotPapers';
import type { Authority, Citation, MedicalRule, PaperRule, PilotRule, RevalidationRule } from './rules/rule';
import { dueVerdict, hasReachedAge, medicalThrough, validThrough, type MedicalClass } from './validity';

function paperItems(rule: PaperRule, papers: Papers, asOfDay: number): ListItem[] {
  const { lasts } = rule;
  const throughDays = rule.papers.flatMap((name) => {
    const day = lasts === undefined ? papers.lastGood(name) : papers.done(name);
    return day === undefined ? [] : [lasts === undefined ? day : validThrough(day, lasts.months, lasts.to)];
  });
  if (throughDays.length === 0) {
    const gap = papers.gap(rule.papers, lasts !== undefined);
    return rule.onlyIfRecorded === true && gap.remark === 'not-recorded' ? [] : [cannotTell(rule, gap)];
  }
  const goodThroughDay = Math.max(...throughDays);
  return [{ item: rule.item, verdict: dueVerdict(goodThroughDay - asOfDay, rule.warnDays), goodThroughDay, citation: rule }];
}

/** "2", "class 2", "second class", "LAPL". */
function medicalClassOf(text: string): MedicalClass | undefined {
  const plain = text.toLowerCase();
  const words: readonly (readonly [RegExp, MedicalClass])[] = [[/lapl/, 'LAPL'], [/\b1\b|first/, '1'], [/\b2\b|second/, '2'], [/\b3\b|third/, '3']];
  const found = words.filter(([pattern]) => pattern.test(plain)).map(([, medicalClass]) => medicalClass);
  return found.length === 1 ? found[0] : undefined;
}

/** No licence at all is given to anyone younger, so a nearer date of birth is a slip of the pen. */
const youngestAge = 14;

/** What keeps the medical from being worked out: whatever cannot be used before whatever is missing. */
function medicalGap(papers: Papers, examDay: number | undefined, birthDay: number | undefined, classText: string): Gap {
  const { examination, birth, class: classPaper } = medicalPapers;
  const gaps: Gap[] = [
    ...(examDay === undefined ? [papers.gap([examination], true)] : []),
    ...(birthDay === undefined ? [papers.gap([birth], false)] : []),
    ...(medicalClassOf(classText) === undefined ? [{ remark: classText === '' ? 'not-recorded' : 'no-class', papers: [classPaper] } as const] : []),
  ];
  if (gaps.length === 0) return { remark: 'born-too-late', papers: [birth] };
  return gaps.find(({ remark }) => remark !== 'not-recorded') ?? { remark: 'not-recorded', papers: gaps.flatMap((gap) => gap.papers ?? []) };
}

function medicalItems(rule: MedicalRule, papers: Papers, asOfDay: number): ListItem[] {
  const examDay = papers.done(medicalPapers.examination);
  const birthDay = papers.lastGood(medicalPapers.birth);
  const classText = papers.named(medicalPapers.class)[0]?.text ?? '';
  const medicalClass = medicalClassOf(classText);
  if (examDay === undefined || birthDay === undefined || medicalClass === undefined || !hasReachedAge(examDay, birthDay, youngestAge)) return [cannotTell(rule, medicalGap(papers, examDay, birthDay, classText))];
  const given = rule.privileges.flatMap(({ privilege, name }): ListItem[] => {
    try {
      const goodThroughDay = medicalThrough({ examDay, birthDay, medicalClass, privilege }, rule.rules);
      return [{ item: rule.item, about: name, verdict: dueVerdict(goodThroughDay - asOfDay, rule.warnDays), goodThroughDay, citation: rule }];
    } catch (thrown) {
      if (thrown instanceof CoreError && thrown.code === 'privilege-not-given') return [];
      throw thrown;
    }
  });
  return given.length === 0 ? [cannotTell(rule, { remark: 'nothing-qualifies' })] : given;
}

/** Rows for one class: each thing to be done before the rating's last day, and all of them. */
function revalidationOfClass(rule: RevalidationRule, group: Group, expiryDay: number, papers: Papers, experience: Experience): ListItem[] {
  const { asOfDay } = experience;
  const begins = dayMonthsLater(expiryDay, -rule.monthsBefore) + 1;
  const window = { first: begins, last: Math.min(expiryDay, asOfDay) };
  const lapsed = asOfDay > expiryDay;
  const verdictOf = (met: boolean): ListItem['verdict'] => (lapsed ? 'NO' : met ? 'OK' : 'CHECK');
  const tasks = countedTasks(rule.tasks, experience).map((task) => {
    const counted = sumOver(totalsOf(group, task.counts), window);
    return { name: task.name ?? rule.item, counted, needed: task.needed, met: isEnough(counted, task.needed) };
  });
  const met = tasks.filter((task) => task.met).length;
  const checkedDay = papers.done(rule.check.paper);
  const checked = checkedDay !== undefined && checkedDay > dayMonthsLater(expiryDay, -rule.check.monthsBefore) && checkedDay <= expiryDay;
  const common = { about: group.about, goodThroughDay: expiryDay, citation: rule };
  const whole: ListItem = { item: rule.item, counted: met, needed: tasks.length, verdict: verdictOf(met === tasks.length || checked), ...common };
  if (asOfDay < begins) return [{ ...whole, remark: 'window-not-begun' }];
  return [
    ...tasks.map(({ name, counted, needed, met: enough }): ListItem => ({ item: name, counted, needed, verdict: verdictOf(enough), ...common })),
    checked ? { ...whole, remark: 'by-check' } : whole,
  ];
}

/** A check that was written down so that it cannot be used is not left out without a word. */
function checkNotRead(paper: string, citation: Citation, papers: Papers): ListItem[] {
  const gap = papers.gap([paper], false);
  return papers.days(paper).length > 0 || gap.remark === 'not-recorded' ? [] : [{ item: paper, verdict: 'UNKNOWN', citation, ...gap }];
}

function revalidationItems(rule: RevalidationRule, papers: Papers, experience: Experience, key: Key): ListItem[] {
  const expiryDay = papers.lastGood(rule.paper);
  const classes = rule.classes.map(key);
  const groups = groupsOf(rule, experience).filter(({ classKey }) => classes.includes(classKey));
  if (groups.length === 0) return [];
  if (expiryDay === undefined) return [cannotTell(rule, papers.gap([rule.paper], false))];
  if (lacksColumn(rule.tasks, experience)) return [cannotTell(rule, { remark: 'no-column' })];
  return [...groups.flatMap((group) => revalidationOfClass(rule, group, expiryDay, papers, experience)), ...checkNotRead(rule.check.paper, rule, papers)];
}

function ruleItems(rule: PilotRule, papers: Papers, experience: Experience, key: Key): ListItem[] {
  const { asOfDay } = experience;
  if (rule.kind === 'paper') return paperItems(rule, papers, asOfDay);
  if (rule.kind === 'medical') return medicalItems(rule, papers, asOfDay);
  const missing = missingFor(rule, experience);
  if (missing !== undefined) return rule.tailwheel === true ? [] : [missing];
  const groups = groupsOf(rule, experience);
  if (rule.kind === 'revalidation') return revalidationItems(rule, papers, experience, key);
  if (rule.kind === 'months') return [...groups.flatMap((group) => monthsItems(rule, group, experience, papers.days(rule.check.paper))), ...checkNotRead(rule.check.paper, rule.check, papers)];
  const paperDay = rule.unlessValid === undefined ? undefined : papers.lastGood(rule.unlessValid);
  return groups.map((group) => daysItem(rule, group, experience, paperDay));
}

function papersNamedBy({ pilot }: Authority): string[] {
  return pilot.flatMap((rule) => {
    if (rule.kind === 'paper') return rule.papers;
    if (rule.kind === 'months') return [rule.check.paper];
    if (rule.kind === 'revalidation') return [rule.paper, rule.check.paper];
    return rule.kind === 'medical' ? Object.values(medicalPapers) : [];
  });
}

function ownItem({ item, day, text, months }: Paper, asOfDay: number): ListItem {
  if (day === undefined) return { item: item.name, verdict: 'UNKNOWN', remark: text === '' ? 'not-recorded' : 'no-date' };
  if (months !== undefined && day > asOfDay) return { item: item.name, verdict: 'UNKNOWN', remark: 'date-ahead' };
  const goodThroughDay = months === undefined ? day : validThrough(day, months, 'day');
  return { item: item.name, verdict: dueVerdict(goodThroughDay - asOfDay, ownWarnDays), goodThroughDay, remark: months === undefined ? 'own-last-day' : 'own-row' };
}
const ownWarnDays = 30;

/** `known` are all authorities, so that a paper of one not chosen is no row of the owner's own. `key` tells spellings of a name together. */
export function pilotList(chosen: readonly Authority[], known: readonly Authority[], experience: Experience, papers: readonly Paper[], key: Key): ListItem[] {
  const { asOfDay, unlisted } = experience;
  const ruled = chosen.flatMap((authority) => authority.pilot.flatMap((rule) => ruleItems(rule, new Papers(papers, authority.name, key, asOfDay), experience, key)));
  const taken = new Set(known.flatMap((authority) => papersNamedBy(authority).flatMap((name) => [key(name), key(`${authority.name} ${name}`)])));
  const own = papers.filter(({ item }) => !taken.has(item.key)).map((paper) => ownItem(paper, asOfDay));
  const strangers: ListItem[] = unlisted.length === 0 ? [] : [{ item: 'flights not counted', about: unlisted.join(', '), verdict: 'CHECK', remark: 'not-listed' }];
  return [...ruled, ...own, ...strangers];
}
