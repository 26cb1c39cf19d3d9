// A METAR or SPECI report, whole: the observation, the trend behind it, and of the remarks the temperature in tenths.
import { CoreError, type CoreErrorDetails } from '../../basics/errors';
import { changeKind, dayHourMinute, partsAt, type ChangeKind, type DayTime } from './changes';
import type { Conditions } from './conditions';
import { readGroups } from './groups';
import { asWritten, wordsOf } from './words';

/** Times of the clock as minutes after 0000 UTC; where none is given the change is within the two hours of the trend. */
export interface Trend {
  readonly kind: ChangeKind;
  readonly written: string;
  readonly fromClock: number | undefined;
  readonly conditions: Conditions;
}

export interface Metar {
  readonly station: string;
  readonly time: DayTime;
  readonly observed: Conditions;
  /** Undefined without a trend; empty for NOSIG. */
  readonly trends: readonly Trend[] | undefined;
}

type Reason = CoreErrorDetails['metar-unreadable']['reason'];

const unreadable = (text: string, reason: Reason, group = ''): CoreError => new CoreError('metar-unreadable', { text, reason, group });

const beginsTrend = /^(NOSIG|TEMPO|BECMG|INTER|PROB[34]0.*)$/;
/** Words before the station. */
const titles: ReadonlySet<string> = new Set(['METAR', 'SPECI', 'COR', 'AUTO', 'AMD']);

/** Station and time, and where the groups begin. */
function headOf(text: string, words: readonly string[]): { readonly station: string; readonly time: DayTime; readonly first: number } {
  const at = words.findIndex((word) => !titles.has(word));
  if (words[at] === 'TAF') throw unreadable(text, 'forecast');
  const [station = '', stamp = ''] = [words[at], words[at + 1]];
  if (!/^[A-Z][A-Z0-9]{3}$/.test(station)) throw unreadable(text, 'not-a-report');
  const time = stamp.endsWith('Z') ? dayHourMinute(stamp.slice(0, -1)) : undefined;
  if (time === undefined) throw unreadable(text, 'time');
  return { station, time, first: at + 2 };
}

/** Tenths from the remarks, where they are those of the body: a remark that differs more is of something else. */
function tenths(body: number | undefined, sign: string | undefined, digits: string | undefined): number | undefined {
  const sameDegrees = 0.6;
  const precise = digits === undefined ? undefined : (Number(digits) / 10) * (sign === '1' ? -1 : 1) + 0;
  return body !== undefined && precise !== undefined && Math.abs(body - precise) <= sameDegrees ? precise : body;
}

/** The group of tenths, such as T00781018: a 1 is a minus. @source fmh-1, chapter 12, hourly temperature and dew point. */
function withTenths(observed: Conditions, remarks: readonly string[]): Conditions {
  const group = remarks.map((word) => /^T([01])(\d{3})(?:([01])(\d{3}))?$/.exec(word)).find((match) => match !== null);
  if (group === undefined) return observed;
  const temperature = tenths(observed.temperatureCelsius, group[1], group[2]);
  const dewPoint = tenths(observed.dewPointCelsius, group[3], group[4]);
  return {
    ...observed,
    ...(temperature === undefined ? {} : { temperatureCelsius: temperature }),
    ...(dewPoint === undefined ? {} : { dewPointCelsius: dewPoint }),
  };
}

const clock = /^(FM|TL|AT)([01]\d|2[0-3])([0-5]\d)$|^TL2400$/;

function readTrend([keyword = '', ...rest]: readonly string[]): Trend {
  const times = rest.filter((word) => clock.test(word));
  const from = times.map((word) => clock.exec(word)).find((match) => match?.[1] === 'FM' || match?.[1] === 'AT');
  return {
    kind: changeKind(keyword),
    written: [asWritten(keyword), ...times].join(' '),
    fromClock: from === undefined ? undefined : Number(from?.[2]) * 60 + Number(from?.[3]),
    conditions: readGroups(rest.filter((word) => !clock.test(word))),
  };
}

/** NOSIG stands alone: what is behind it is unread. */
function trendsOf(parts: readonly string[][]): Trend[] | undefined {
  if (parts.length === 0) return undefined;
  return parts.filter(([keyword, ...rest]) => keyword !== 'NOSIG' || rest.length > 0).map(readTrend);
}

/** Reads one report; throws where it is none. What it holds and cannot be read stands in `unread`. */
export function readMetar(text: string): Metar {
  const words = wordsOf(text);
  const { station, time, first } = headOf(text, words);
  const remark = words.indexOf('RMK');
  const end = remark < 0 ? words.length : remark;
  const [body = [], ...trends] = partsAt(words.slice(first, end), beginsTrend);
  if (body.some((word) => /^\d{6}Z$/.test(word))) throw unreadable(text, 'several');
  if (body.includes('NIL')) throw unreadable(text, 'nil');
  const observed = withTenths(readGroups(body), words.slice(end));
  const { temperatureCelsius, dewPointCelsius } = observed;
  if (temperatureCelsius !== undefined && dewPointCelsius !== undefined && dewPointCelsius > temperatureCelsius) throw unreadable(text, 'dew-point');
  // In a report weather is said where there is any.
  const weather = observed.weather ?? (observed.weatherMissing === true ? undefined : []);
  return { station, time, observed: weather === undefined ? observed : { ...observed, weather }, trends: trendsOf(trends) };
}

/** Groups of wind, temperature and pressure by their looks, however written. */
const measured = /(KT|MPS|KMH|KPH)$|^(\d{5,6}|VRB\d\d)(G\d\d)?$|^(?!R\d)[M\d]?\d+\/[M\d/]*\d*$|^[MX\d]{2,3}\/[MX\d]{2,3}$|^[AQ](NH)?[\d.]/;

/** The report, where every group of wind, temperature and pressure in it can be read. */
export function readMeasured(text: string): Metar {
  const metar = readMetar(text);
  const wrong = metar.observed.unread.find((word) => measured.test(word));
  if (wrong !== undefined) throw unreadable(text, 'group', wrong);
  return metar;
}
