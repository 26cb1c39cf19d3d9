// The medical in the pilot's list: what a certificate is good for and until when, and the way to do without one.
import { CoreError } from '../basics/errors';
import type { Verdict } from '../basics/verdict';
import { cannotTell, type ListItem } from './experience';
import { medicalPapers, type Gap, type Papers } from './papers';
import type { MedicalPeriod, MedicalRule } from './rules/rule';
import { countsThrough } from './window';
import { dueVerdict, hasReachedAge, medicalThrough, validThrough, type Medical, type MedicalClass } from './validity';

/** "2", "class 2", "second class", "LAPL". */
function medicalClassOf(text: string): MedicalClass | undefined {
  const plain = text.toLowerCase();
  const words: readonly (readonly [RegExp, MedicalClass])[] = [
    [/lapl/, 'LAPL'],
    [/\b1\b|first/, '1'],
    [/\b2\b|second/, '2'],
    [/\b3\b|third/, '3'],
  ];
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

/** By a table of periods, the first that fits the class and the age on the day of the examination. */
function throughOf(rules: MedicalRule['rules'], medical: Medical): number {
  if (typeof rules === 'string') return medicalThrough(medical, rules);
  const { examDay, birthDay, medicalClass, privilege } = medical;
  const fits = ({ medicalClass: own, youngerThan }: MedicalPeriod): boolean =>
    (own === '' || medicalClassOf(own) === medicalClass) && (youngerThan === undefined || !hasReachedAge(examDay, birthDay, youngerThan));
  const period = rules.find(fits);
  if (period === undefined) throw new CoreError('privilege-not-given', { medicalClass, privilege, rules: 'own' });
  const { within } = period;
  if ('months' in within) return validThrough(examDay, within.months, 'day');
  return countsThrough(within, examDay);
}

function certificateItems(rule: MedicalRule, papers: Papers, asOfDay: number): ListItem[] {
  const examDay = papers.done(medicalPapers.examination);
  const birthDay = papers.lastGood(medicalPapers.birth);
  const classText = papers.named(medicalPapers.class)[0]?.text ?? '';
  const medicalClass = medicalClassOf(classText);
  if (examDay === undefined || birthDay === undefined || medicalClass === undefined || !hasReachedAge(examDay, birthDay, youngestAge))
    return [cannotTell(rule, medicalGap(papers, examDay, birthDay, classText))];
  const given = rule.privileges.flatMap(({ privilege, name }): ListItem[] => {
    try {
      const goodThroughDay = throughOf(rule.rules, { examDay, birthDay, medicalClass, privilege });
      const verdict = dueVerdict(goodThroughDay - asOfDay, rule.warnDays);
      return [{ item: rule.item, about: name, verdict, goodThroughDay, citation: rule, ...examinationTodo(verdict, goodThroughDay, asOfDay) }];
    } catch (thrown) {
      if (thrown instanceof CoreError && thrown.code === 'privilege-not-given') return [];
      throw thrown;
    }
  });
  return given.length === 0 ? [cannotTell(rule, { remark: 'nothing-qualifies' })] : given;
}

function examinationTodo(verdict: Verdict, goodThroughDay: number, asOfDay: number): Pick<ListItem, 'todo'> {
  if (verdict === 'OK') return {};
  return { todo: { tasks: [], papers: [medicalPapers.examination], ...(goodThroughDay < asOfDay ? {} : { byDay: goodThroughDay }) } };
}

type Instead = NonNullable<MedicalRule['instead']>[number];
type InsteadItem = ListItem & { readonly freesFrom: string };

/** Another way to meet the medical, where something of it is written down: every one of its papers must be good. */
function insteadItem(rule: MedicalRule, instead: Instead, papers: Papers, asOfDay: number): InsteadItem | undefined {
  const done = instead.papers.map(({ paper, lasts }) => ({ paper, day: lasts === undefined ? papers.lastGood(paper) : papers.done(paper), lasts }));
  const missing = done.filter(({ day }) => day === undefined).map(({ paper }) => paper);
  const common = { item: rule.item, about: instead.name, citation: instead, freesFrom: instead.freesFrom };
  if (missing.length > 0) {
    const gap = papers.gap(missing, true);
    const nothing = missing.length === done.length && gap.remark === 'not-recorded';
    return nothing ? undefined : { ...common, verdict: 'UNKNOWN', ...gap };
  }
  const goodThroughDay = Math.min(
    ...done.flatMap(({ day, lasts }) => (day === undefined ? [] : [lasts === undefined ? day : validThrough(day, lasts.months, lasts.to)])),
  );
  const due = dueVerdict(goodThroughDay - asOfDay, rule.warnDays);
  const limited = instead.limited === true && due === 'OK';
  return { ...common, verdict: limited ? 'CHECK' : due, goodThroughDay, ...(limited ? { remark: 'within-limits' as const } : {}) };
}

/**
 * The certificate by what it is good for; the other way stands in the place of what it frees from, or of a certificate of which
 * nothing can be said, where it is good and lasts longer.
 */
export function medicalItems(rule: MedicalRule, papers: Papers, asOfDay: number): ListItem[] {
  const certificate = certificateItems(rule, papers, asOfDay);
  const others = (rule.instead ?? []).flatMap((instead) => insteadItem(rule, instead, papers, asOfDay) ?? []);
  const found = others.find(({ verdict }) => verdict === 'OK') ?? others.find(({ verdict }) => verdict === 'CHECK') ?? others[0];
  if (found === undefined) return certificate;
  const { freesFrom, ...other } = found;
  const [first] = certificate;
  const nothingSaid = first?.about === undefined;
  if (other.verdict === 'UNKNOWN' || other.verdict === 'NO') return nothingSaid && first?.remark === 'not-recorded' ? [other] : certificate;
  if (nothingSaid) return [other];
  const { goodThroughDay: until = -Infinity, verdict } = certificate.find(({ about }) => about === freesFrom) ?? {};
  // A good certificate is better than another way whose limits nobody can see here, however long that lasts.
  if (other.remark === 'within-limits' && (verdict === 'OK' || verdict === 'CHECK')) return certificate;
  return until >= (other.goodThroughDay ?? 0) ? certificate : [...certificate.filter(({ about }) => about !== freesFrom), other];
}
