// The sense of a formula, so that two ways to write it are one text: separators, blanks and case outside strings are made
// alike, and its names and ranges are put as the reader wants them.
import { tokensOf, type Reference } from './formulaReading';

export interface SenseOf {
  readonly word: (text: string) => string;
  readonly reference: (reference: Reference) => string;
}

export const formulaSense = (formula: string, { word, reference }: SenseOf): string =>
  tokensOf(formula)
    .map((token) => {
      if (token.kind === 'text' || token.kind === 'closing') return token.text;
      if (token.kind === 'space') return '';
      if (token.kind === 'separator') return ',';
      if (token.kind === 'opening') return `${token.name}(`;
      if (token.kind === 'reference') return reference(token.reference);
      return (token.kind === 'word' ? word(token.text) : token.text).toUpperCase();
    })
    .join('');

/** The same text for two formulas that differ in their ranges and names only. */
export const formulaShape = (formula: string): string => formulaSense(formula, { word: () => '@', reference: () => '@' });
