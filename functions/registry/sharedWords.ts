// Words that stand both in the declarations of functions and in the sentences of errors.
import type { CoreErrorDetails, GridCoordinate } from '../../core/basics/errors';
import { shortened } from './cellValues';
import { limitInWords } from './readNumber';

export const rounded = (value: number): string => limitInWords(Number(value.toPrecision(6)));

/** To the careful side, whole: down what is left, up what is missing or needed. Within an epsilon of a whole number it is that. */
export const wholeDown = (value: number): number => Math.floor(value + 1e-6);
export const wholeUp = (value: number): number => Math.ceil(value - 1e-6);
/** The first few of a list, and how many more there are; `count` where the list itself is cut short already. */
export function firstFew(items: readonly string[], most: number, { separator = ', ', before = ' ', count = items.length } = {}): string {
  const named = items.slice(0, most);
  return named.join(separator) + (count > named.length ? `${before}and ${limitInWords(count - named.length)} more` : '');
}

export const pointInWords = (point: readonly GridCoordinate[]): string =>
  point.map(({ header, value }) => `${shortened(header)} ${rounded(value)}`).join(', ');

export const positionMustBe = 'a latitude and a longitude, such as 3124N04112W, N31 24 36 W041 12 18 or 31.41, -41.205';

export const metarMustBe = 'one METAR or SPECI report, such as ABCD 011955Z 22015G25KT 9999 12/05 Q1013';

export const tafMustBe = 'one TAF, such as TAF ABCD 011700Z 0118/0224 22015KT 9999 SCT030 TEMPO 0120/0124 4000 SHRA BKN012';

/** Why a text is no report, behind "which" or a name of it. */
export const metarReasons: Readonly<Record<CoreErrorDetails['metar-unreadable']['reason'], string>> = {
  'not-a-report': 'does not begin as a report does',
  forecast: 'is a forecast',
  time: 'has no day and time behind its station, such as 011955Z',
  several: 'is more than one report',
  nil: 'reports nothing',
  group: 'holds a group that cannot be read',
  'dew-point': 'has a dew point above its temperature',
};

export const tafReasons: Readonly<Record<CoreErrorDetails['taf-unreadable']['reason'], string>> = {
  'not-a-forecast': 'does not begin with TAF and a station',
  several: 'is more than one forecast',
  nil: 'forecasts nothing (NIL)',
  cancelled: 'is cancelled (CNL)',
  validity: 'has no validity that can be read, such as 0118/0224',
};
