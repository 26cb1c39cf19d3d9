// Entries of a loading that look wrong: swapped, in the other unit, a moment for an arm, a station twice, nobody at the controls.
// Common practice, no source: each is a guess from sizes, so its verdict is CHECK at the most.
import type { Envelope } from './balance';
import { kilogramsFromPounds, poundsFromKilograms } from '../basics/units';
import { doubtOfOrder, doubtsOfSeats, type OrderDoubt, type SeatDoubt, type StationEntry, type WeightUnit } from './seats';
import { spanOf, within, type Span } from './span';

export type EntryDoubt =
  | { readonly kind: 'repeated'; readonly firstRow: number }
  | { readonly kind: 'moment'; readonly arm: number }
  | { readonly kind: 'swapped' }
  | { readonly kind: 'far'; readonly reach: number }
  | SeatDoubt
  | OrderDoubt;

export type TotalDoubt =
  | { readonly kind: 'pounds-for-kilograms' | 'kilograms-for-pounds'; readonly total: number; readonly converted: number }
  | { readonly kind: 'far-total'; readonly total: number };

/**
 * No station of a light aircraft lies further from the datum than this many times the furthest limit of its centre of
 * gravity; where the datum lies among the limits, than this many times their width, which no choice of datum changes.
 */
const reaches = { far: { ofLimit: 5, ofWidth: 40 }, swapped: { ofLimit: 3, ofWidth: 12 } } as const;

/** Arms that a station can plausibly have, in whatever unit the limits of the centre of gravity are. */
function plausibleReach({ low, high }: Span, { ofLimit, ofWidth }: { readonly ofLimit: number; readonly ofWidth: number }): number {
  return Math.max(ofLimit * Math.max(Math.abs(low), Math.abs(high)), ofWidth * (high - low));
}

/** Less than half the lowest limit or more than twice the highest. */
const farFrom = ({ low, high }: Span, arm: number): boolean => arm < low - Math.abs(low) / 2 || arm > high + Math.abs(high);

/** Everything as typed: what one row is compared with. */
interface Whole {
  readonly arms: Span;
  readonly weights: Span;
  readonly total: number;
}

/** The weight has the size of an arm, and either no arm is as long as this one, or swapping this row alone mends the total. */
function isSwapped({ weight, arm }: StationEntry, { arms, weights, total }: Whole): boolean {
  if (weight === 0 || !within(arms, weight)) return false;
  const mends = !within(weights, total) && within(weights, total - weight + arm);
  return Math.abs(arm) > plausibleReach(arms, reaches.swapped) || (farFrom(arms, arm) && mends);
}

function doubtOf(entry: StationEntry, whole: Whole, firstRow: number | undefined): EntryDoubt | undefined {
  if (firstRow !== undefined) return { kind: 'repeated', firstRow };
  if (isSwapped(entry, whole)) return { kind: 'swapped' };
  const reach = plausibleReach(whole.arms, reaches.far);
  if (Math.abs(entry.arm) <= reach) return undefined;
  // A moment divided by its weight is an arm again.
  const asMoment = entry.weight === 0 ? Number.POSITIVE_INFINITY : entry.arm / entry.weight;
  return Math.abs(asMoment) <= reach ? { kind: 'moment', arm: asMoment } : { kind: 'far', reach };
}

const weightOf = (entries: readonly StationEntry[]): number => entries.reduce((sum, { weight }) => sum + weight, 0);

/** One doubt or none for each row; `unit` is that of the weights, where it is told. */
export function doubtsOfEntries(entries: readonly StationEntry[], envelope: Envelope, unit?: WeightUnit): (EntryDoubt | undefined)[] {
  const { corners } = envelope;
  const whole = { arms: spanOf(corners.map(({ arm }) => arm)), weights: spanOf(corners.map(({ weight }) => weight)), total: weightOf(entries) };
  const plain = entries.map(({ name }) => name.trim().toLowerCase());
  const seats = doubtsOfSeats(entries, whole.weights.low, unit);
  return entries.map((entry, row) => {
    const first = plain.indexOf(plain[row] ?? '');
    return doubtOf(entry, whole, first < row ? first : undefined) ?? doubtOfOrder(entries, row) ?? seats[row];
  });
}

/** The total against the envelope's weights, as typed and in the other unit. */
export function doubtOfTotal(entries: readonly StationEntry[], envelope: Envelope): TotalDoubt | undefined {
  const weights = spanOf(envelope.corners.map(({ weight }) => weight));
  const total = weightOf(entries);
  if (within(weights, total)) return undefined;
  const [pounds, kilograms] = [poundsFromKilograms(total), kilogramsFromPounds(total)];
  if (within(weights, pounds) && total < weights.low) return { kind: 'kilograms-for-pounds', total, converted: pounds };
  if (within(weights, kilograms) && total > weights.high) return { kind: 'pounds-for-kilograms', total, converted: kilograms };
  return total < 0.6 * weights.low || total > 1.5 * weights.high ? { kind: 'far-total', total } : undefined;
}
