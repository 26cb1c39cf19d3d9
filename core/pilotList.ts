// The pilot's list: every rule of the chosen authorities worked out from the flights and from the papers written down.
import { dayMonthsLater } from './calendarMonths';
import { CoreError } from './errors';
import { cannotTell, countedTasks, daysItem, groupsOf, lacksColumn, missingFor, monthsItems, totalsOf, type Experience, type Group, type ListItem } from './experience';
import { isEnough, sumOver } from './goodPeriods';
import type { Named } from './named';
import type { Authority, MedicalRule, PaperRule, PilotRule, RevalidationRule } from './rules/rule';
import { dueVerdict, hasReachedAge, medicalThrough, validThrough, type MedicalClass } from './validity';

/** One line of the pilot's papers: a date, or a word such as the class of a medical. */
export interface Paper {
  readonly item: Named;
  readonly day: number | undefined;
  readonly text: string;
  /** For an item of the owner's own: how long it lasts; undefined where the date is the last good day. */
  readonly months: number | undefined;
}

/** Papers that rules need beside those they name. */
export const medicalPapers = { examination: 'medical examination', birth: 'birth date', class: 'medical class' } as const;

type Key = (name: string) => string;

/** Finds papers of one authority; one written "FAA flight review" goes before a plain "flight review". */
class Papers {
  private readonly found: ReadonlyMap<string, readonly Paper[]>;

  constructor(papers: readonly Paper[], private readonly authority: string, private readonly key: Key, private readonly asOfDay: number) {
    const found = new Map<string, Paper[]>();
    for (const paper of papers) found.set(paper.item.key, [...(found.get(paper.item.key) ?? []), paper]);
    this.found = found;
  }

  named(name: string): readonly Paper[] {
    return this.found.get(this.key(`${this.authority} ${name}`)) ?? this.found.get(this.key(name)) ?? [];
  }

  days(name: string): number[] {
    return this.named(name).flatMap(({ day }) => (day === undefined ? [] : [day]));
  }

  /** Latest day on which something was done; what lies after the day asked has not been done. */
  done(name: string): number | undefined {
    const past = this.days(name).filter((day) => day <= this.asOfDay);
    return past.length === 0 ? undefined : Math.max(...past);
  }

  lastGood(name: string): number | undefined {
    const days = this.days(name);
    return days.length === 0 ? undefined : Math.max(...days);
  }
}

function paperItems(rule: PaperRule, papers: Papers, asOfDay: number): ListItem[] {
  const { lasts } = rule;
  const throughDays = rule.papers.flatMap((name) => {
    const day = lasts === undefined ? papers.lastGood(name) : papers.done(name);
    return day === undefined ? [] : [lasts === undefined ? day : validThrough(day, lasts.months, lasts.to)];
  });
  if (throughDays.length === 0) return rule.onlyIfRecorded === true ? [] : [cannotTell(rule, 'not-recorded')];
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

function medicalItems(rule: MedicalRule, papers: Papers, asOfDay: number): ListItem[] {
  const examDay = papers.done(medicalPapers.examination);
  const birthDay = papers.lastGood(medicalPapers.birth);
  const medicalClass = medicalClassOf(papers.named(medicalPapers.class)[0]?.text ?? '');
  if (examDay === undefined || birthDay === undefined || medicalClass === undefined || !hasReachedAge(examDay, birthDay, youngestAge)) return [cannotTell(rule, 'not-recorded')];
  const given = rule.privileges.flatMap(({ privilege, name }): ListItem[] => {
    try {
      const goodThroughDay = medicalThrough({ examDay, birthDay, medicalClass, privilege }, rule.rules);
      return [{ item: rule.item, about: name, verdict: dueVerdict(goodThroughDay - asOfDay, rule.warnDays), goodThroughDay, citation: rule }];
    } catch (thrown) {
      if (thrown instanceof CoreError && thrown.code === 'privilege-not-given') return [];
      throw thrown;
    }
  });
  return given.length === 0 ? [cannotTell(rule, 'nothing-qualifies')] : given;
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

function revalidationItems(rule: RevalidationRule, papers: Papers, experience: Experience, key: Key): ListItem[] {
  const expiryDay = papers.lastGood(rule.paper);
  const classes = rule.classes.map(key);
  const groups = groupsOf(rule, experience).filter(({ classKey }) => classes.includes(classKey));
  if (groups.length === 0) return [];
  if (expiryDay === undefined) return [cannotTell(rule, 'not-recorded')];
  if (lacksColumn(rule.tasks, experience)) return [cannotTell(rule, 'no-column')];
  return groups.flatMap((group) => revalidationOfClass(rule, group, expiryDay, papers, experience));
}

function ruleItems(rule: PilotRule, papers: Papers, experience: Experience, key: Key): ListItem[] {
  const { asOfDay } = experience;
  if (rule.kind === 'paper') return paperItems(rule, papers, asOfDay);
  if (rule.kind === 'medical') return medicalItems(rule, papers, asOfDay);
  const missing = missingFor(rule, experience);
  if (missing !== undefined) return rule.tailwheel === true ? [] : [missing];
  const groups = groupsOf(rule, experience);
  if (rule.kind === 'revalidation') return revalidationItems(rule, papers, experience, key);
  if (rule.kind === 'months') return groups.flatMap((group) => monthsItems(rule, group, experience, papers.days(rule.check.paper)));
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

function ownItem({ item, day, months }: Paper, asOfDay: number): ListItem {
  if (day === undefined || (months !== undefined && day > asOfDay)) return { item: item.name, verdict: 'UNKNOWN', remark: 'not-recorded' };
  const goodThroughDay = months === undefined ? day : validThrough(day, months, 'day');
  return { item: item.name, verdict: dueVerdict(goodThroughDay - asOfDay, ownWarnDays), goodThroughDay, remark: 'own-row' };
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
