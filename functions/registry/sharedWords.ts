// Words that stand both in the declarations of functions and in the sentences of errors.
import type { GridCoordinate } from '../../core/errors';
import { limitInWords } from './readNumber';

export const rounded = (value: number): string => limitInWords(Number(value.toPrecision(6)));

/** The first few of a list, and how many more there are; `count` where the list itself is cut short already. */
export function firstFew(items: readonly string[], most: number, { separator = ', ', before = ' ', count = items.length } = {}): string {
  const named = items.slice(0, most);
  return named.join(separator) + (count > named.length ? `${before}and ${limitInWords(count - named.length)} more` : '');
}

export const pointInWords = (point: readonly GridCoordinate[]): string => point.map(({ header, value }) => `${header} ${rounded(value)}`).join(', ');

export const positionMustBe = 'a latitude and a longitude, such as 3124N04112W, N31 24 36 W041 12 18 or 31.41, -41.205';

export const metarMustBe = 'one METAR or SPECI report, such as ABCD 011955Z 22015G25KT 9999 12/05 Q1013';
