// From the least to the greatest of some numbers.

export interface Span {
  readonly low: number;
  readonly high: number;
}

export const spanOf = (values: readonly number[]): Span => ({ low: Math.min(...values), high: Math.max(...values) });

export const within = ({ low, high }: Span, value: number): boolean => value >= low && value <= high;
