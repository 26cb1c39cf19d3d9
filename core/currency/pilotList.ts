// The pilot's list: every rule of the chosen authorities worked out from the flights and from the papers written down.
import type { Verdict } from '../basics/verdict';
import { cannotTell, classMissing, daysItem, missingFor, type ListItem, type Todo } from './experience';
import { checkNotRead, monthsItems } from './monthsExperience';
import { asked, groupsOf, isNamed, type Experience, type Group } from './groups';
import { isAskedOf } from './inForce';
import { medicalItems } from './medicalItems';
import { medicalPapers, Papers, type Key, type Paper } from './papers';
import { revalidationItems } from './revalidation';
import type { Authority, Citation, DaysRule, PaperRule, PilotRule } from './rules/rule';
import { dueVerdict, validThrough } from './validity';
import { countsThrough } from './window';

/** What never lapses is good from the day it was given. */
function everGood(rule: PaperRule, papers: Papers, asOfDay: number): ListItem[] {
  const written = rule.papers.filter((name) => papers.named(name).length > 0);
  if (written.length === 0 && rule.onlyIfRecorded === true) return [];
  const given = written.some((name) => papers.days(name).some((day) => day <= asOfDay));
  if (!given) return [cannotTell(rule, papers.gap(written.length > 0 ? written : rule.papers, true))];
  return [{ item: written[0] ?? rule.item, verdict: 'OK', citation: rule, remark: 'never-lapses' }];
}

function paperItems(rule: PaperRule, papers: Papers, asOfDay: number): ListItem[] {
  const { lasts } = rule;
  if (rule.neverLapses === true) return rule.papers.flatMap((name) => everGood({ ...rule, papers: [name] }, papers, asOfDay));
  const throughDays = [...rule.papers, ...(rule.also ?? [])].flatMap((name) => {
    const day = lasts === undefined ? papers.lastGood(name) : papers.done(name);
    return day === undefined ? [] : [lasts === undefined ? day : validThrough(day, lasts.months, lasts.to)];
  });
  if (throughDays.length === 0) {
    const other = papers.gap(rule.also ?? [], lasts !== undefined);
    const gap = other.remark === 'not-recorded' ? papers.gap(rule.papers, lasts !== undefined) : other;
    return rule.onlyIfRecorded === true && gap.remark === 'not-recorded' ? [] : [cannotTell(rule, gap)];
  }
  const goodThroughDay = Math.max(...throughDays);
  const verdict = dueVerdict(goodThroughDay - asOfDay, rule.warnDays);
  const wanted = lasts === undefined ? `renewal of ${rule.item}` : (rule.papers[0] ?? rule.item);
  return [{ item: rule.item, verdict, goodThroughDay, citation: rule, ...paperTodo(verdict, goodThroughDay, asOfDay, wanted) }];
}

/** A paper that ends is made good by the same paper anew. */
export function paperTodo(verdict: Verdict, goodThroughDay: number, asOfDay: number, wanted: string): { readonly todo?: Todo } {
  if (verdict === 'OK') return {};
  return { todo: { tasks: [], papers: [wanted], ...(goodThroughDay < asOfDay ? {} : { byDay: goodThroughDay }) } };
}

export function ruleItems(rule: PilotRule, papers: Papers, experience: Experience, key: Key): ListItem[] {
  const { asOfDay } = experience;
  if (!isAskedOf(rule, papers, asOfDay)) return [];
  if (rule.kind === 'unreadable') return [cannotTell(rule, { remark: 'unreadable' })];
  if (rule.kind === 'paper') return paperItems(rule, papers, asOfDay);
  if (rule.kind === 'medical') return medicalItems(rule, papers, asOfDay);
  const { flown } = rule;
  if (flown !== undefined && ![...experience.flown.keys()].some((aircraft) => isNamed(aircraft, flown)))
    return [{ ...cannotTell(rule, { remark: 'nothing-named' }), about: flown.name }];
  const missing = missingFor(rule, experience);
  if (missing !== undefined) return rule.tailwheel === true && !asked(experience).some(({ tailwheel }) => tailwheel) ? [] : [missing];
  const groups = groupsOf(rule, experience);
  const unplaced = classMissing(rule, experience);
  if (rule.kind === 'revalidation') return [...revalidationItems(rule, papers, experience, key), ...unplaced];
  if (rule.kind === 'months')
    return [
      ...unplaced,
      ...groups.flatMap((group) =>
        rule.notFor?.categories.map(key).includes(group.classKey) === true
          ? [notJudged(rule, rule.notFor, group)]
          : monthsItems(rule, group, experience, papers.doneDays(rule.check.paper)),
      ),
      ...checkNotRead(rule.check.paper, rule.check, papers),
    ];
  const paperDay = freeThrough(rule, papers);
  return [...groups.map((group) => daysItem(rule, group, experience, paperDay)), ...unplaced];
}

/** The last day through which a paper does for the flights. A check counts on the day after the same date no more, as flights do not. */
function freeThrough({ unlessValid, afterCheck }: DaysRule, papers: Papers): number | undefined {
  if (unlessValid !== undefined) return papers.lastGood(unlessValid);
  const done = afterCheck === undefined ? undefined : papers.done(afterCheck.paper);
  return afterCheck === undefined || done === undefined ? undefined : countsThrough({ months: afterCheck.months }, done);
}

const notJudged = (rule: PilotRule, citation: Citation, { about }: Group): ListItem => ({
  ...cannotTell(rule, { remark: 'not-judged' }),
  ...(about === undefined ? {} : { about }),
  citation,
});

export function papersNamedBy({ pilot }: Authority): string[] {
  return pilot.flatMap((rule) => [...papersOf(rule), ...(rule.onlyWith ?? []), ...(rule.notWith ?? [])]);
}

function papersOf(rule: PilotRule): readonly string[] {
  if (rule.kind === 'paper') return [...rule.papers, ...(rule.also ?? [])];
  if (rule.kind === 'months') return [rule.check.paper];
  if (rule.kind === 'revalidation') return [rule.paper, rule.check.paper, ...(rule.spared?.papers ?? [])];
  if (rule.kind === 'days') return [rule.unlessValid, rule.afterCheck?.paper].flatMap((name) => name ?? []);
  return rule.kind === 'medical'
    ? [...Object.values(medicalPapers), ...(rule.instead ?? []).flatMap(({ papers }) => papers.map(({ paper }) => paper))]
    : [];
}

function ownItem({ item, day, text, months }: Paper, { asOfDay, doneTo = asOfDay, warnDays = ownWarnDays }: OwnOn): ListItem {
  if (day === undefined) return { item: item.name, verdict: 'UNKNOWN', remark: text === '' ? 'not-recorded' : 'no-date' };
  if (months !== undefined && day > doneTo) return { item: item.name, verdict: 'UNKNOWN', remark: 'date-ahead' };
  const goodThroughDay = months === undefined ? day : validThrough(day, months, 'day');
  const verdict = dueVerdict(goodThroughDay - asOfDay, warnDays);
  const remark = months === undefined ? 'own-last-day' : 'own-row';
  return { item: item.name, verdict, goodThroughDay, remark, ...paperTodo(verdict, goodThroughDay, doneTo, item.name) };
}
const ownWarnDays = 30;

/** The day judged, and the last day on which something can have been done, where that is another. */
export interface OwnOn {
  readonly asOfDay: number;
  readonly doneTo?: number;
  readonly warnDays?: number;
}

/** Papers that no rule of any known authority names. */
export function ownItems(papers: readonly Paper[], known: readonly Authority[], key: Key, on: OwnOn): ListItem[] {
  const taken = new Set(known.flatMap((authority) => papersNamedBy(authority).flatMap((name) => [key(name), key(`${authority.name} ${name}`)])));
  return papers.filter(({ item }) => !taken.has(item.key)).map((paper) => ownItem(paper, on));
}

/** `known` are all authorities, so that a paper of one not chosen is no row of the owner's own. `key` tells spellings of a name together. */
export function pilotList(
  chosen: readonly Authority[],
  known: readonly Authority[],
  experience: Experience,
  papers: readonly Paper[],
  key: Key,
): ListItem[] {
  const { asOfDay, unlisted } = experience;
  const ruled = chosen.flatMap((authority) =>
    authority.pilot.flatMap((rule) => ruleItems(rule, new Papers(papers, authority.name, key, asOfDay), experience, key)),
  );
  const own = ownItems(papers, known, key, { asOfDay });
  const strangers: ListItem[] =
    unlisted.length === 0 ? [] : [{ item: 'flights not counted', about: unlisted.join(', '), verdict: 'CHECK', remark: 'not-listed' }];
  return [...ruled, ...own, ...strangers];
}
