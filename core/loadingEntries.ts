// Entries of a loading that look wrong: swapped, in the other unit, a moment for an arm, a station twice.
// Common practice, no source: each is a guess from sizes, so its verdict is CHECK at the most.
import type { Envelope } from './balance';
import { kilogramsFromPounds, poundsFromKilograms } from './units';

export interface StationEntry {
  readonly name: string;
  readonly weight: number;
  readonly arm: number;
}

export type EntryDoubt =
  | { readonly kind: 'repeated'; readonly firstRow: number }
  | { readonly kind: 'moment'; readonly arm: number }
  | { readonly kind: 'swapped' }
  | { readonly kind: 'far'; readonly reach: number };

export type TotalDoubt = { readonly kind: 'pounds-for-kilograms' | 'kilograms-for-pounds'; readonly total: number; readonly converted: number };

/** No station of a light aircraft lies further from the datum than this many times the furthest limit of its centre of gravity. */
const reachOfLimits = 5;
/** For a datum inside the limits, whose arms are small: longest arm in inches that is not doubted. */
const leastReach = 400;

interface Span {
  readonly low: number;
  readonly high: number;
}

function spanOf(values: readonly number[]): Span {
  return { low: Math.min(...values), high: Math.max(...values) };
}

const within = ({ low, high }: Span, value: number): boolean => value >= low && value <= high;

/** Arms that a station can plausibly have, from the limits of the centre of gravity. */
function plausibleReach({ low, high }: Span): number {
  return Math.max(leastReach, reachOfLimits * Math.max(Math.abs(low), Math.abs(high)));
}

function doubtOf(entry: StationEntry, arms: Span, firstRow: number | undefined): EntryDoubt | undefined {
  if (firstRow !== undefined) return { kind: 'repeated', firstRow };
  const reach = plausibleReach(arms);
  if (Math.abs(entry.arm) <= reach) return undefined;
  const asMoment = entry.weight === 0 ? Number.POSITIVE_INFINITY : entry.arm / entry.weight;
  // A swapped pair has its arm's size in the weight; a moment divided by its weight is an arm again.
  if (within(arms, entry.weight)) return { kind: 'swapped' };
  return Math.abs(asMoment) <= reach ? { kind: 'moment', arm: asMoment } : { kind: 'far', reach };
}

/** One doubt or none for each row. */
export function doubtsOfEntries(entries: readonly StationEntry[], envelope: Envelope): (EntryDoubt | undefined)[] {
  const arms = spanOf(envelope.byWeight.corners.map(({ x }) => x));
  const plain = entries.map(({ name }) => name.trim().toLowerCase());
  return entries.map((entry, row) => {
    const first = plain.indexOf(plain[row] ?? '');
    return doubtOf(entry, arms, first < row ? first : undefined);
  });
}

/** The total against the envelope's weights, as typed and in the other unit. */
export function doubtOfTotal(entries: readonly StationEntry[], envelope: Envelope): TotalDoubt | undefined {
  const weights = spanOf(envelope.byWeight.corners.map(({ y }) => y));
  const total = entries.reduce((sum, { weight }) => sum + weight, 0);
  if (within(weights, total)) return undefined;
  const [pounds, kilograms] = [poundsFromKilograms(total), kilogramsFromPounds(total)];
  if (within(weights, pounds) && total < weights.low) return { kind: 'kilograms-for-pounds', total, converted: pounds };
  if (within(weights, kilograms) && total > weights.high) return { kind: 'pounds-for-kilograms', total, converted: kilograms };
  return undefined;
}
