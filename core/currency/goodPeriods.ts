// When enough was done: the stretches of periods (days, or months) through which a window reaching back holds enough.
// core/recency.ts gives the last of them for one count; rules that ask several things at once need them all.

/** First and last good period, both included. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
}

/** Hours add up in binary fractions: twelve hours in tenths are not to be lost to the last bit. */
const slack = 1e-6;
export const isEnough = (sum: number, needed: number): boolean => sum >= needed - slack;
/** Without the last bits of that adding. */
const roundedSum = (sum: number): number => Math.round(sum / slack) / Math.round(1 / slack);

/** Stretches in order, those that meet or overlap made one. */
export function merged(stretches: readonly Stretch[]): Stretch[] {
  const inOrder = [...stretches].sort((one, other) => one.first - other.first);
  const out: Stretch[] = [];
  for (const stretch of inOrder) {
    const before = out[out.length - 1];
    if (before !== undefined && stretch.first <= before.last + 1)
      out[out.length - 1] = { first: before.first, last: Math.max(before.last, stretch.last) };
    else out.push(stretch);
  }
  return out;
}

/** Periods good in both. */
export function inBoth(one: readonly Stretch[], other: readonly Stretch[]): Stretch[] {
  const pairs = one.flatMap((a) => other.map((b) => ({ first: Math.max(a.first, b.first), last: Math.min(a.last, b.last) })));
  return merged(pairs.filter(({ first, last }) => first <= last));
}

/**
 * Periods for which enough was done. `countsThrough` is the last period for which what was done in one counts, the later the
 * later it was done. For each newest period the window's begin moves on as far as it can; that one tells how long it is good.
 */
export function goodStretches(totals: ReadonlyMap<number, number>, countsThrough: (period: number) => number, needed: number): Stretch[] {
  const periods = [...totals.keys()].sort((one, other) => one - other);
  const countAt = (index: number): number => totals.get(periods[index] ?? 0) ?? 0;
  const found: { first: number; last: number }[] = [];
  let sum = 0;
  let oldest = 0;
  periods.forEach((period, newest) => {
    sum += countAt(newest);
    while (oldest < newest && isEnough(sum - countAt(oldest), needed)) {
      sum -= countAt(oldest);
      oldest += 1;
    }
    const last = countsThrough(periods[oldest] ?? period);
    if (!isEnough(sum, needed) || last < period) return;
    const before = found[found.length - 1];
    if (before !== undefined && period <= before.last + 1) before.last = last;
    else found.push({ first: period, last });
  });
  return found;
}

export function sumOver(totals: ReadonlyMap<number, number>, { first, last }: Stretch): number {
  let sum = 0;
  totals.forEach((count, period) => {
    if (period >= first && period <= last) sum += count;
  });
  return roundedSum(sum);
}
