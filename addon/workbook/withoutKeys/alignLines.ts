// Which lines (rows or columns) of today are which lines of before, when some were inserted and some removed between them.

/**
 * Keeps the order, and makes the sum of the scores as large as it can be. A line is answered only where every best
 * alignment agrees on it; the others are left out. Lines are counted from 0; a score of 0 is no match.
 */
export function alignLines(before: number, now: number, score: (before: number, now: number) => number): Map<number, number> {
  const scores = Array.from({ length: before }, (_, one) => Array.from({ length: now }, (__, other) => score(one, other)));
  const grid = (): number[][] => Array.from({ length: before + 1 }, () => Array<number>(now + 1).fill(0));
  const at = (lines: readonly (readonly number[])[], one: number, other: number): number => lines[one]?.[other] ?? 0;
  const set = (lines: number[][], one: number, other: number, value: number): void => {
    const line = lines[one];
    if (line !== undefined) line[other] = value;
  };
  const [above, below] = [grid(), grid()];
  for (let one = 0; one < before; one += 1)
    for (let other = 0; other < now; other += 1)
      set(above, one + 1, other + 1, Math.max(at(above, one, other + 1), at(above, one + 1, other), at(above, one, other) + at(scores, one, other)));
  for (let one = before - 1; one >= 0; one -= 1)
    for (let other = now - 1; other >= 0; other -= 1)
      set(below, one, other, Math.max(at(below, one + 1, other), at(below, one, other + 1), at(below, one + 1, other + 1) + at(scores, one, other)));
  const best = at(below, 0, 0);
  const certain = new Map<number, number>();
  for (let one = 0; one < before; one += 1) {
    const fits = (scores[one] ?? []).flatMap((value, other) =>
      value > 0 && at(above, one, other) + value + at(below, one + 1, other + 1) === best ? [other] : [],
    );
    const dispensable = above[one]?.some((value, other) => value + at(below, one + 1, other) === best) ?? false;
    const [only] = fits;
    if (only !== undefined && fits.length === 1 && !dispensable) certain.set(one, only);
  }
  return certain;
}
