// Whether a rule is asked: law on that day, and of a pilot with those papers.
import { civilDateFromDayNumber, isoDate } from '../basics/civilDate';
import type { Papers } from './papers';
import type { InForce, PilotRule } from './rules/rule';

/** The last day counts as one on which the rule is law. */
export function isInForce({ inForce }: { readonly inForce?: InForce }, day: number): boolean {
  if (inForce === undefined) return true;
  const { from = '', until = '9999' } = inForce;
  const iso = isoDate(civilDateFromDayNumber(day));
  return iso >= from && iso <= until;
}

const isWritten = (papers: Papers, name: string): boolean => papers.named(name).some(({ day, text }) => day !== undefined || text !== '');

export function isAskedOf(rule: Pick<PilotRule, 'inForce' | 'onlyWith' | 'notWith'>, papers: Papers, day: number): boolean {
  const has = (names: readonly string[]): boolean => names.some((name) => isWritten(papers, name));
  return isInForce(rule, day) && (rule.onlyWith === undefined || has(rule.onlyWith)) && !has(rule.notWith ?? []);
}
