// The history of loads: each load of a card is one line that stays, and the state of a card follows from its lines.
import type { Named } from '../basics/named';
import type { Finding, LedgerCard, Verification } from './ledgerCard';

/** A card by the three names that tell it from others; a blank name is a name too. */
export interface CardNames {
  readonly aircraft: Named | undefined;
  readonly unit: Named | undefined;
  readonly database: Named | undefined;
}

export interface LoadLine extends CardNames {
  /** Place in the list, from 1. */
  readonly row: number;
  /** Effective date of the data loaded. */
  readonly effectiveDay: number | undefined;
  /** Missing where nobody wrote it down, unreadable where it is no day. */
  readonly loadedOnDay: number | 'missing' | 'unreadable';
  readonly verified: Verification;
  readonly failed: boolean;
}

/** What is on a card as its lines tell it; unknown where they do not. */
export interface Loaded extends Pick<LedgerCard, 'loadedDay' | 'loadedOnDay' | 'verified'> {
  readonly told: readonly Finding[];
}

export const namesKey = ({ aircraft, unit, database }: CardNames): string =>
  JSON.stringify([aircraft?.key ?? '', unit?.key ?? '', database?.key ?? '']);

const unknown = (...told: readonly Finding[]): Loaded => ({ loadedDay: undefined, loadedOnDay: 'missing', verified: 'no', told });

const dayOf = ({ loadedOnDay }: LoadLine): number | undefined => (typeof loadedOnDay === 'number' ? loadedOnDay : undefined);

/** Later days after earlier ones; on one day the lines follow one another as they stand. */
const inTime = (lines: readonly LoadLine[]): LoadLine[] =>
  [...lines].sort((one, other) => (dayOf(one) ?? 0) - (dayOf(other) ?? 0) || one.row - other.row);

/** A line that cannot be placed in time, or does not say what was loaded. The only line of a card needs no day: it is the last one. */
const cannotBePlaced = (line: LoadLine, isOnly: boolean): boolean =>
  line.loadedOnDay === 'unreadable' || (line.loadedOnDay === 'missing' && !isOnly) || (!line.failed && line.effectiveDay === undefined);

/**
 * After a load that failed the card is as it was: what somebody saw on it before that says nothing any more, what somebody saw on that day or
 * later says that it is as it was. Common practice, no source.
 */
function afterFailures(good: LoadLine, failures: readonly LoadLine[]): Pick<Loaded, 'verified' | 'told'> {
  const last = failures[failures.length - 1];
  const day = last === undefined ? undefined : dayOf(last);
  if (last === undefined || day === undefined) return { verified: good.verified, told: [] };
  const seen = [good.verified, ...failures.map(({ verified }) => verified)].flatMap((one) => (typeof one === 'object' && one.day >= day ? one : []));
  const latest = seen[seen.length - 1];
  return latest === undefined ? { verified: 'no', told: [{ kind: 'load-failed', verdict: 'CHECK', day }] } : { verified: latest, told: [] };
}

function stateOf(lines: readonly LoadLine[], asOfDay: number): Loaded {
  const unplaced = lines.find((line) => cannotBePlaced(line, lines.length === 1));
  if (unplaced !== undefined) return unknown({ kind: 'load-unplaced', verdict: 'UNKNOWN', row: unplaced.row });
  const past = inTime(lines.filter((line) => (dayOf(line) ?? -Infinity) <= asOfDay));
  // Somebody has mistyped the day of a load: what is on the card now is not known before it is put right.
  const ahead = inTime(lines).find((line) => (dayOf(line) ?? -Infinity) > asOfDay);
  if (ahead !== undefined) return unknown({ kind: 'load-refused', verdict: 'UNKNOWN', day: dayOf(ahead) ?? asOfDay });
  const at = past.map(({ failed }) => failed).lastIndexOf(false);
  const good = past[at];
  const failures = past.slice(at + 1);
  const failedDay = failures.length === 0 ? undefined : dayOf(failures[failures.length - 1] as LoadLine);
  const failed: Finding[] = failedDay === undefined ? [] : [{ kind: 'load-failed', verdict: 'CHECK', day: failedDay }];
  if (good === undefined) return unknown({ kind: 'no-load', verdict: 'UNKNOWN' }, ...failed);
  return {
    loadedDay: good.effectiveDay,
    loadedOnDay: typeof good.loadedOnDay === 'number' ? good.loadedOnDay : 'missing',
    ...afterFailures(good, failures),
  };
}

/** What is on each card on a day. Cards of the same three names cannot be told apart, so nothing is known of any of them. */
export function loadedOn(cards: readonly CardNames[], lines: readonly LoadLine[], asOfDay: number): Loaded[] {
  const linesOf = new Map<string, LoadLine[]>();
  for (const line of lines) linesOf.set(namesKey(line), [...(linesOf.get(namesKey(line)) ?? []), line]);
  const counted = new Map<string, number>();
  for (const card of cards) counted.set(namesKey(card), (counted.get(namesKey(card)) ?? 0) + 1);
  return cards.map((card) => {
    const key = namesKey(card);
    if ((counted.get(key) ?? 0) > 1) return unknown({ kind: 'named-twice', verdict: 'UNKNOWN' });
    return stateOf(linesOf.get(key) ?? [], asOfDay);
  });
}
