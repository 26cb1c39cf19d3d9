// Words that stand both in the declarations of functions and in the sentences of errors.
import type { GridCoordinate } from '../../core/errors';
import { limitInWords } from './readNumber';

export const rounded = (value: number): string => limitInWords(Number(value.toPrecision(6)));

export const pointInWords = (point: readonly GridCoordinate[]): string => point.map(({ header, value }) => `${header} ${rounded(value)}`).join(', ');

export const positionMustBe = 'a latitude and a longitude, such as 3124N04112W, N31 24 36 W041 12 18 or 31.41, -41.205';

export const metarMustBe = 'one METAR or SPECI report, such as ABCD 011955Z 22015G25KT 9999 12/05 Q1013';
