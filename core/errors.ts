// What core throws: a code and the values that belong to it, never a sentence.
// functions/registry/wordError.ts is the one place that turns these into words for people.

/** One named coordinate of a grid point in an aircraft table. */
export interface GridCoordinate {
  readonly header: string;
  readonly value: number;
}

/** Every code core can throw, with the values that go with it. */
export interface CoreErrorDetails {
  /** A quantity left the range in which its formula holds; `quantity` is its core name, such as dewPointCelsius. */
  'outside-range': { readonly quantity: string; readonly unit: string; readonly low: number; readonly high: number; readonly received: number };
  /** An input lies beyond the table's own rows; `inputNumber` counts from 1. */
  'table-outside': { readonly inputNumber: number; readonly header: string; readonly low: number; readonly high: number; readonly received: number };
  /** The table does not hold a grid point that the interpolation needs. */
  'table-missing-point': { readonly point: readonly GridCoordinate[] };
  /** Two rows of the table give the same grid point. Rows count from 1, below the header. */
  'table-repeated-row': { readonly firstRow: number; readonly secondRow: number };
  /** A cell of the table that the answer needs is not a number. */
  'table-bad-cell': { readonly header: string; readonly row: number; readonly received: unknown };
  /** The wanted column, or the number of input columns, does not fit the table's header. */
  'table-header-unknown': { readonly wanted: string; readonly headers: readonly string[] };
  /** The table's first columns must be the inputs; there are too few columns, or the header repeats or is blank. */
  'table-header-bad': { readonly reason: 'too-few-columns' | 'blank' | 'repeated' | 'wanted-is-input'; readonly headers: readonly string[]; readonly inputs: number };
  /** No row was given at all. */
  'nothing-given': { readonly what: string };
  /** A polygon that is not one closed area. */
  'envelope-bad': { readonly reason: 'too-few-points' | 'no-area' | 'self-crossing'; readonly points: number };
  /** Weights that add up to nothing have no centre of gravity. */
  'no-weight': { readonly total: number };
  /** A cycle identifier that names no cycle, such as a fourteenth cycle in a year of thirteen. */
  'cycle-unknown': { readonly identifier: string; readonly cyclesInYear: number };
  /** Two points so placed that the asked direction does not exist (the same point, or a pole). */
  'no-direction': { readonly reason: 'same-point' };
}

export type CoreErrorCode = keyof CoreErrorDetails;

export class CoreError<Code extends CoreErrorCode = CoreErrorCode> extends Error {
  readonly code: Code;
  readonly detail: CoreErrorDetails[Code];

  constructor(code: Code, detail: CoreErrorDetails[Code]) {
    super(code);
    this.name = 'CoreError';
    this.code = code;
    this.detail = detail;
  }
}
