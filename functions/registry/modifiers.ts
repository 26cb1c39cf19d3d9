// What can be said of any parameter: that it may be left out, and that a whole column of it folds into one answer.
import { ArgumentError } from './argumentError';
import { isBlank, type CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';

/** May be left out; `words` says what happens then. */
export function optional<P extends Parameter<unknown>, Default>(
  parameter: P,
  value: Default,
  words: string,
): Omit<P, 'read' | 'optional'> & Parameter<(P extends Parameter<infer Value> ? Value : never) | Default> {
  type Value = (P extends Parameter<infer V> ? V : never) | Default;
  return { ...parameter, optional: { value, words }, read: parameter.read as Parameter<Value>['read'] };
}

/** May be left out of the call, but a blank cell given for it is a mistake: the answer would be that of another question. */
export function omittable<Value>(
  parameter: Parameter<Value> & { readonly shape: 'cell' },
  words: string,
): Parameter<Value | undefined> & { readonly shape: 'cell' } {
  return { ...parameter, shape: 'cell', optional: { value: undefined, words, blankIsMistake: true }, read: parameter.read };
}

/** A whole column of the same thing. */
export function column<P extends Parameter<unknown> & { readonly shape: 'cell' }>(parameter: P): Omit<P, 'shape'> & { readonly shape: 'column' } {
  return { ...parameter, shape: 'column' };
}

/** Blank is an answer of its own here (nothing recorded), not a mistake. */
export function blankMeansUndefined<Value>(
  parameter: Parameter<Value> & { readonly shape: 'cell' },
): Parameter<Value | undefined> & { readonly shape: 'cell' } {
  return { ...parameter, shape: 'cell', optional: undefined, read: (raw, dates) => (isBlank(raw) ? undefined : parameter.read(raw, dates)) };
}

/** Whatever cannot be read (a blank, an error, the wrong thing) is simply not known here, and stops nothing else. */
export function unreadableMeansUndefined<Value>(
  parameter: Parameter<Value> & { readonly shape: 'cell' },
): Parameter<Value | undefined> & { readonly shape: 'cell' } {
  const read: Parameter<Value | undefined>['read'] = (raw, dates) => {
    try {
      return parameter.read(raw, dates);
    } catch (thrown) {
      if (thrown instanceof ArgumentError) return undefined;
      throw thrown;
    }
  };
  return { ...parameter, shape: 'cell', optional: undefined, read };
}

/** What could not be read, in words: the answer tells it in a row of its own, and the rest of the answer stands. */
export class Unread {
  readonly reason: string;

  constructor(reason: string) {
    this.reason = reason;
  }
}

type Read<P> = P extends Parameter<infer Value> ? Value : never;

/** Reads as the parameter does, or tells in the answer what cannot be read. */
export function orUnread<P extends Parameter<unknown>>(
  parameter: P,
  wordsOf: (error: ArgumentError, raw: CellValue) => string,
): Omit<P, 'read' | 'optional'> & Parameter<Read<P> | Unread> {
  const read = (raw: CellValue, dates: DateHost): Read<P> | Unread => {
    try {
      return parameter.read(raw, dates) as Read<P>;
    } catch (thrown) {
      if (thrown instanceof ArgumentError) return new Unread(wordsOf(thrown, raw));
      throw thrown;
    }
  };
  return { ...parameter, optional: undefined, read };
}
