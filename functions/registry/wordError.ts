// Makes sentences of errors. FUNCTION: argument must be (what, unit, range); got this (row 3).
// What core could not answer is worded in wordCoreError.ts.
import { CoreError } from '../../core/basics/errors';
import type { ArgumentError } from './argumentError';
import { oneLine, sizeInWords } from './cellValues';
import { wordCore } from './wordCoreError';

/** Where in the given ranges the trouble lies, counted from 1. */
export interface Place {
  readonly row: number;
  readonly column?: number;
}

const placeInWords = (row: number, column?: number): string => (column === undefined ? `row ${row}` : `row ${row}, column ${column}`);

/** Thrown to the host as is: its message is the sentence. */
export class SheetError extends Error {}

export const wrongSize = (first: string, firstRows: number, firstColumns: number, other: string, otherRows: number, otherColumns: number): string =>
  `${other} must be a single cell or the same size as ${first} (${sizeInWords(firstRows, firstColumns)}); got ${sizeInWords(otherRows, otherColumns)}`;

export const wrongCount = (fewest: number, most: number, got: number): string =>
  `takes ${fewest === most ? fewest : `${fewest} to ${most}`} ${most === 1 ? 'argument' : 'arguments'}; got ${got}`;

/** On one line, whatever a header or a name in it holds. */
export const sentence = (functionName: string, body: string, place?: Place): string =>
  `${functionName}: ${oneLine(body)}${place === undefined ? '' : ` (${placeInWords(place.row, place.column)})`}.`;

/** Never expected; said plainly, so that nobody takes it for an answer. */
export const internalError = (what: string): string => `could not answer, which is a mistake in the function itself (${what})`;

/** An argument error, marked with the argument it belongs to. */
export class NamedArgumentError extends Error {
  readonly argument: string;
  readonly error: ArgumentError;

  constructor(argument: string, error: ArgumentError) {
    super(argument);
    this.argument = argument;
    this.error = error;
  }
}

/** The sentence for whatever was thrown while computing `functionName`. */
export function wordError(functionName: string, thrown: unknown, place?: Place): string {
  if (thrown instanceof NamedArgumentError) {
    const { argument, error } = thrown;
    const inside = error.row === undefined ? '' : ` (${placeInWords(error.row, error.column)} of ${argument})`;
    return sentence(functionName, `${argument} must be ${error.mustBe}; got ${error.got}${inside}`, place);
  }
  if (thrown instanceof CoreError) return sentence(functionName, wordCore(thrown), place);
  return sentence(functionName, internalError(thrown instanceof Error ? thrown.message : 'unknown'), place);
}
