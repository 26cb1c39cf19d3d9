// A METAR or SPECI report as numbers. The parser is metar-taf-parser; around it stand the checks that it leaves out: it passes
// over a group it cannot make out, and a group half read would be a wrong number that looks right.
import { parseMetar, type IMetar } from 'metar-taf-parser';
import { CoreError, type CoreErrorDetails } from './errors';
import { asTrueDegrees, hectopascalsFromInchesOfMercury, knotsFromMetresPerSecond, type TrueDegrees } from './units';

export interface Metar {
  readonly station: string;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  /** Undefined where it is variable or missing; 0 in a calm. */
  readonly windFromDegrees: TrueDegrees | undefined;
  readonly windKnots: number | undefined;
  readonly gustKnots: number | undefined;
  readonly temperatureCelsius: number | undefined;
  readonly dewPointCelsius: number | undefined;
  readonly altimeterHectopascals: number | undefined;
}

type Reason = CoreErrorDetails['metar-unreadable']['reason'];

function unreadable(text: string, reason: Reason, group = ''): CoreError {
  return new CoreError('metar-unreadable', { text, reason, group });
}

/** What ends the observation: remarks and the trend forecast. @source icao-annex-3, appendix 3; fmh-1, chapter 12. */
const endOfBody = /^(RMK|TEMPO|BECMG|NOSIG|INTER|PROB\d\d)$/;

interface Group {
  readonly looks: RegExp;
  readonly written: RegExp;
  readonly once: boolean;
}

/** Words of the beginning that say nothing of the weather. */
const passedOver: ReadonlySet<string> = new Set(['METAR', 'SPECI', 'COR', 'AUTO', 'AMD']);

/** Groups that must be read: how one is known by its looks, how it must be written, and whether once. @source icao-annex-3, appendix 3; fmh-1. */
const groups: readonly Group[] = [
  { looks: /(KT|MPS|KMH|KPH)$|^(\d{5}|VRB\d\d)(G\d\d)?$/, written: /^((?:[0-2]\d\d|3[0-5]\d|360|VRB)\d\d(G\d\d)?|\/{5})(KT|MPS)$/, once: true },
  { looks: /^(?!R\d)[M\d]?\d+\/[M\d/]*\d*$|^[MX\d]{2,3}\/[MX\d]{2,3}$|^\/{5}$/, written: /^((M?[0-6]\d)\/(M?[0-6]\d|\/\/|XX)?|(\/\/|XX)\/(M?[0-6]\d|\/\/|XX))$/, once: true },
  { looks: /^(A|Q)(NH)?[\d.]/, written: /^(Q(0[89]\d\d|10\d\d)|A(2[5-9]|3[0-2])\d\d)$/, once: false },
];

/** The groups of the observation, and those of the remarks. */
function partsOf(words: readonly string[]): { readonly body: readonly string[]; readonly remarks: readonly string[] } {
  const [end, remarks] = [words.findIndex((word) => endOfBody.test(word)), words.indexOf('RMK')];
  return { body: end < 0 ? words : words.slice(0, end), remarks: remarks < 0 ? [] : words.slice(remarks + 1) };
}

/** Words of a group, in order; throws where one of them cannot be read, or where there is more than may be. */
function wordsOf(text: string, { looks, written, once }: Group, rest: readonly string[]): string[] {
  const found = rest.filter((word) => looks.test(word));
  const wrong = found.find((word, index) => !written.test(word) || (once && index > 0));
  if (wrong !== undefined) throw unreadable(text, 'group', wrong);
  return found;
}

/** Station, time, and the words of the groups that must be read. */
function statedIn(text: string, body: readonly string[]): string[] {
  const stated = body.filter((word) => !passedOver.has(word));
  if (stated[0] === 'TAF') throw unreadable(text, 'forecast');
  const [station = '', time = '', ...rest] = stated;
  if (!/^[A-Z][A-Z0-9]{3}$/.test(station)) throw unreadable(text, 'not-a-report');
  if (!/^(0[1-9]|[12]\d|3[01])([01]\d|2[0-3])[0-5]\dZ$/.test(time)) throw unreadable(text, 'time');
  if (rest.some((word) => /^\d{6}Z$/.test(word))) throw unreadable(text, 'several');
  if (rest.includes('NIL')) throw unreadable(text, 'nil');
  return [station, time, ...groups.flatMap((group) => wordsOf(text, group, rest))];
}

/** The parser gets what is wanted of it alone: it takes twenty microseconds to make out a group of clouds or weather that nothing here reads. */
function parsed(text: string, stated: readonly string[]): IMetar {
  try {
    return parseMetar(stated.join(' '));
  } catch {
    throw unreadable(text, 'not-a-report');
  }
}

/** Tenths from the remarks, where they are those of the body: a remark that differs more is of something else. */
function tenths(body: number | undefined, remark: number | undefined): number | undefined {
  const sameDegrees = 0.6;
  return body !== undefined && remark !== undefined && Math.abs(body - remark) <= sameDegrees ? remark : body;
}

/** The group of tenths, such as T00781018: a 1 is a minus. @source fmh-1, chapter 12, hourly temperature and dew point. */
function tenthsGroup(remarks: readonly string[]): readonly [temperature: number | undefined, dewPoint: number | undefined] {
  const digits = remarks.map((word) => /^T([01])(\d{3})(?:([01])(\d{3}))?$/.exec(word)).find((match) => match !== null);
  const value = (sign = '', tens = ''): number | undefined => (tens === '' ? undefined : (Number(tens) / 10) * (sign === '1' ? -1 : 1));
  return [value(digits?.[1], digits?.[2]), value(digits?.[3], digits?.[4])];
}

/** A temperature without a dew point, which the parser passes over. */
function loneTemperature(body: readonly string[]): number | undefined {
  const digits = body.map((word) => /^(M?)(\d\d)\/(\/\/|XX)?$/.exec(word)).find((match) => match !== null);
  return digits === undefined ? undefined : Number(digits[2]) * (digits[1] === 'M' ? -1 : 1);
}

/** Adding 0 turns the M00 that is just below zero, a negative zero to the parser, into 0. */
const plainZero = (value: number | undefined): number | undefined => (value === undefined ? undefined : value + 0);

function temperaturesOf({ temperature, dewPoint }: IMetar, body: readonly string[], remarks: readonly string[]): Pick<Metar, 'temperatureCelsius' | 'dewPointCelsius'> {
  const [preciseTemperature, preciseDewPoint] = tenthsGroup(remarks);
  return {
    temperatureCelsius: plainZero(tenths(temperature ?? loneTemperature(body), preciseTemperature)),
    dewPointCelsius: plainZero(tenths(dewPoint, preciseDewPoint)),
  };
}

function windOf({ wind }: IMetar): Pick<Metar, 'windFromDegrees' | 'windKnots' | 'gustKnots'> {
  if (wind === undefined) return { windFromDegrees: undefined, windKnots: undefined, gustKnots: undefined };
  const knots = (speed: number): number => (String(wind.unit) === 'MPS' ? knotsFromMetresPerSecond(speed) : speed);
  return {
    windFromDegrees: wind.degrees === undefined ? undefined : asTrueDegrees(wind.degrees),
    windKnots: knots(wind.speed),
    gustKnots: wind.gust === undefined ? undefined : knots(wind.gust),
  };
}

function altimeterOf({ altimeter }: IMetar): number | undefined {
  if (altimeter === undefined) return undefined;
  return String(altimeter.unit) === 'inHg' ? hectopascalsFromInchesOfMercury(altimeter.value) : altimeter.value;
}

/** Reads one report; throws where it is none, or where a group of wind, temperature or pressure cannot be read. */
export function readMetar(text: string): Metar {
  const plain = text.trim().toUpperCase().replace(/\s+/g, ' ').replace(/ ?=$/, '');
  const { body, remarks } = partsOf(plain.split(' '));
  const report = parsed(text, statedIn(text, body));
  const { station, day = 0, hour = 0, minute = 0 } = report;
  const temperatures = temperaturesOf(report, body, remarks);
  const { temperatureCelsius, dewPointCelsius } = temperatures;
  if (temperatureCelsius !== undefined && dewPointCelsius !== undefined && dewPointCelsius > temperatureCelsius) throw unreadable(text, 'dew-point');
  return { station, day, hour, minute, ...windOf(report), ...temperatures, altimeterHectopascals: altimeterOf(report) };
}
