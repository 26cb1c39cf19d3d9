// One verdict of many: the worst of them, and the items that stand in the way.
import { CoreError } from './errors';
import { verdicts, worstVerdict, type Verdict } from './verdict';

export interface Item {
  readonly name: string;
  readonly verdict: Verdict;
}

export interface Readiness {
  readonly verdict: Verdict;
  /** Every item that is not OK, worst first, otherwise in the order given. */
  readonly hindrances: readonly Item[];
}

export function readiness(items: readonly Item[]): Readiness {
  if (items.length === 0) throw new CoreError('nothing-given', { what: 'items' });
  const hindrances = verdicts.filter((word) => word !== 'OK').flatMap((word) => items.filter(({ verdict }) => verdict === word));
  return { verdict: worstVerdict(items.map(({ verdict }) => verdict)), hindrances };
}
