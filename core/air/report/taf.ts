// An aerodrome forecast (TAF): its groups, one after the other, and where each begins and ends.
// @source icao-annex-3, appendix 5, table A5-1; wmo-306, FM 51; aim, 7-1, key to the forecast.
import { CoreError, type CoreErrorDetails } from '../../basics/errors';
import { changeKind, dayHour, dayHourMinute, partsAt, type ChangeKind, type DayTime } from './changes';
import { readGroups } from './groups';
import type { Conditions } from './conditions';
import { wordsOf } from './words';

export interface TafGroup {
  readonly kind: ChangeKind;
  /** FM, BECMG, TEMPO, PROB30 TEMPO and so on; empty for the beginning. */
  readonly name: string;
  /** As it begins in the text, such as "TEMPO 1608/1612". */
  readonly written: string;
  readonly from: DayTime;
  readonly to: DayTime;
  readonly conditions: Conditions;
}

export interface Taf {
  readonly station: string;
  /** Undefined where the text does not say it. */
  readonly issued: DayTime | undefined;
  readonly from: DayTime;
  readonly to: DayTime;
  readonly groups: readonly TafGroup[];
  /** Groups that say no time that can be read, whole. */
  readonly withoutTimes: readonly string[];
  /** Of all groups, in order, and those without times. */
  readonly unread: readonly string[];
}

export const tafUnreadable = (text: string, reason: CoreErrorDetails['taf-unreadable']['reason']): CoreError =>
  new CoreError('taf-unreadable', { text, reason });

const beginsChange = /^(FM\d{6}|BECMG|TEMPO|INTER|PROB[34]0(_TEMPO|_INTER)?)$/;
/** Highest and lowest temperature with their hours, which nothing here uses. */
const extreme = /^T[XN]M?\d\d\/\d{4}Z$/;
/** When there will be no amendment, or to what, at the end of forecasts of the United States. @source aim, 7-1, TAF. */
const unamended = /\sAMD\s(?:NOT\sSKED|LTD\sTO(?:\s(?:CLD|VIS|AND|WIND))+)(?:\s(?:AFT|TIL)\s\d{6}Z?|\s\d{4}\/\d{4})*\s*=?\s*$/i;
const titles: ReadonlySet<string> = new Set(['TAF', 'AMD', 'COR']);

interface Period {
  readonly from: DayTime;
  readonly to: DayTime;
}

function period(word = ''): Period | undefined {
  const [from, to] = /^\d{4}\/\d{4}$/.test(word) ? word.split('/').map(dayHour) : [];
  return from === undefined || to === undefined ? undefined : { from, to };
}

/** A group that says when; undefined where its times cannot be read. FM holds until the next FM, which `until` says. */
function changeOf([keyword = '', ...rest]: readonly string[], until: DayTime): TafGroup | undefined {
  const kind = changeKind(keyword);
  const start = kind === 'FROM' ? dayHourMinute(keyword.slice(2)) : undefined;
  const times = start === undefined ? period(rest[0]) : { from: start, to: until };
  if (times === undefined) return undefined;
  const name = kind === 'FROM' ? 'FM' : keyword.replace('_', ' ');
  const written = kind === 'FROM' ? keyword : `${name} ${rest[0] ?? ''}`;
  return { kind, name, written, ...times, conditions: readGroups(start === undefined ? rest.slice(1) : rest) };
}

interface Head extends Period {
  readonly station: string;
  readonly issued: DayTime | undefined;
  readonly rest: readonly string[];
}

/** Some sources leave out the word TAF: then the validity tells a forecast. */
function headOf(text: string, words: readonly string[]): Head {
  const at = words.findIndex((word) => !titles.has(word));
  const [station = '', ...behind] = words.slice(at);
  const issued = /^\d{6}Z$/.test(behind[0] ?? '') ? dayHourMinute((behind[0] ?? '').slice(0, -1)) : undefined;
  const rest = issued === undefined ? behind : behind.slice(1);
  const times = period(rest[0]);
  if (!/^[A-Z][A-Z0-9]{3}$/.test(station) || (words[0] !== 'TAF' && times === undefined)) throw tafUnreadable(text, 'not-a-forecast');
  if (rest.includes('NIL')) throw tafUnreadable(text, 'nil');
  if (rest.includes('CNL')) throw tafUnreadable(text, 'cancelled');
  if (times === undefined) throw tafUnreadable(text, 'validity');
  return { station, issued, ...times, rest: rest.slice(1) };
}

/** When the next FM begins, or the forecast ends. */
function nextFrom(parts: readonly string[][], after: number, end: DayTime): DayTime {
  const next = parts.slice(after + 1).find(([keyword = '']) => keyword.startsWith('FM'))?.[0];
  return (next === undefined ? undefined : dayHourMinute(next.slice(2))) ?? end;
}

/** Reads one forecast; throws where it is none. What it holds and cannot be read stands in `unread`. */
export function readTaf(text: string): Taf {
  const all = wordsOf(text.replace(unamended, ''));
  const remark = all.indexOf('RMK');
  const { station, issued, from, to, rest } = headOf(text, remark < 0 ? all : all.slice(0, remark));
  if (rest.some((word) => word === 'TAF' || /^\d{6}Z$/.test(word))) throw tafUnreadable(text, 'several');
  const parts = partsAt(
    rest.filter((word) => !extreme.test(word)),
    beginsChange,
  );
  const changes = parts.map((part, place) => (place === 0 ? undefined : changeOf(part, nextFrom(parts, place, to))));
  const beginning: TafGroup = { kind: 'FROM', name: '', written: '', from, to: nextFrom(parts, 0, to), conditions: readGroups(parts[0] ?? []) };
  const groups = [beginning, ...changes.filter((change) => change !== undefined)];
  const withoutTimes = parts.filter((_, place) => place > 0 && changes[place] === undefined).map((part) => part.join(' ').replace(/_/g, ' '));
  return { station, issued, from, to, groups, withoutTimes, unread: [...groups.flatMap(({ conditions }) => conditions.unread), ...withoutTimes] };
}
