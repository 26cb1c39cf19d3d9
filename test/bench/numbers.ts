// Medians, means, and numbers that look random and are the same at every run.

export const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

export const geometricMean = (values: readonly number[]): number => Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);

/** A fixed sequence from 0 up to 1: the linear congruence of Numerical Recipes, modulo 2^32. */
export function evenNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}

/** So many numbers from low to high, at steps. */
export function spread(seed: number, count: number, low: number, high: number, step: number): number[] {
  const next = evenNumbers(seed);
  return Array.from({ length: count }, () => low + Math.floor((next() * (high - low)) / step) * step);
}
