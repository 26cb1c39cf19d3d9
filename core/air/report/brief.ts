// The weather of one field at the time it is used: the report, the forecast, their age, and the pilot's own limits.
import { CoreError } from '../../basics/errors';
import { verdicts, worstVerdict, type Verdict } from '../../basics/verdict';
import type { Change } from './changes';
import { inForce } from './inForce';
import { found, missingLimits, unsaid, type Finding, type WeatherLimits } from './judge';
import { readMetar, type Metar } from './metar';
import { endOfDayAnywhere, nearestMoment, placeTaf, trendChanges, trendMinutes, type PlacedTaf } from './moments';
import { readTaf } from './taf';

export interface WeatherUse {
  readonly station: string | undefined;
  readonly metar: string | undefined;
  readonly taf: string | undefined;
  /** Minutes of UTC since the beginning of 1970; undefined where the day or the time is missing. */
  readonly use: number | undefined;
  readonly role: 'departure' | 'arrival' | 'alternate';
  readonly limits: WeatherLimits;
  /** The day it is judged on, as a day number: no report can be of a later one. */
  readonly asOfDay: number | undefined;
  /** True direction of the runway to be used; undefined where the crosswind is judged elsewhere. */
  readonly runwayDegrees: number | undefined;
}

export interface WeatherBrief {
  readonly verdict: Verdict;
  /** What is not OK, worst first. */
  readonly findings: readonly Finding[];
  readonly metar: Metar | undefined;
  readonly ageMinutes: number | undefined;
  /** Of the forecast, what can be in force; empty without one. */
  readonly forecast: readonly Change[];
}

/** A report is of use for so long. Common practice, no source: reports come each half hour or hour. */
export const freshMinutes = 90;
/** A report this old says nothing beside a forecast. Common practice, no source. */
const staleMinutes = 720;
/** The forecast is judged from so long before the time of use to so long after. @source cfr-91-169, paragraph (b): one hour before to one hour after. */
export const marginMinutes = 60;

const finding = (kind: Finding['kind'], verdict: Verdict, more: Partial<Finding> = {}): Finding => ({ kind, verdict, where: '', ...more });

/** Whatever is not sure to come is no more than a CHECK. */
const softened = (one: Finding): Finding => (one.verdict === 'OK' ? one : { ...one, verdict: 'CHECK' });

function ofChange({ kind, conditions, written }: Change, given: WeatherUse, source: string): Finding[] {
  const where = [source, written].filter((part) => part !== '').join(' ');
  const findings = found(conditions, given.limits, given.runwayDegrees).map((one): Finding => ({ ...one, where }));
  return kind === 'PROBABLE' ? findings.map(softened) : findings;
}

const unreadFindings = (unread: readonly string[], where: string): Finding[] =>
  unread.length === 0 ? [] : [finding('unread', 'UNKNOWN', { where, text: unread.join(' ') })];

interface Read<Thing> {
  readonly thing: Thing | undefined;
  readonly findings: readonly Finding[];
}

function attempt<Thing>(kind: 'metar-unreadable' | 'taf-unreadable', read: () => Thing): Read<Thing> {
  try {
    return { thing: read(), findings: [] };
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    return { thing: undefined, findings: [finding(kind, 'UNKNOWN', { text: (thrown.detail as { readonly reason: string }).reason })] };
  }
}

/** Of another station than expected, or of one that nothing is known of. */
function stationFindings(expected: string | undefined, got: string, where: string): Finding[] {
  return expected?.trim().toUpperCase() === got ? [] : [finding('station', 'CHECK', { where, text: got })];
}

const missing = (elements: readonly string[], where: string): Finding[] => elements.map((text) => finding('missing', 'UNKNOWN', { where, text }));

interface Placed {
  readonly use: number;
  /** No report or forecast is of later. */
  readonly latest: number;
  /** The report serves the time of use without any forecast. */
  readonly reportServes: boolean;
}

/** What the forecast leaves unsaid. The weather need not be said: none is none. */
function unsaidBy(held: readonly Change[]): Finding[] {
  const lasting = held.filter(({ kind }) => kind === 'FROM' || kind === 'BECOMING').map(({ conditions }) => unsaid(conditions));
  return missing(
    (['wind', 'visibility', 'cloud'] as const).filter((element) => lasting.every((elements) => elements.includes(element))),
    'TAF',
  );
}

/** The groups for the time of use. Where the report serves, a forecast that begins later or ends sooner is not wanted. */
function judgeGroups({ from, to, changes, issued }: PlacedTaf, { use, reportServes }: Placed, given: WeatherUse): TafJudged {
  // A departure with a report of the hour is not early or late by an hour without a newer one.
  const margin = reportServes && given.role === 'departure' ? 0 : marginMinutes;
  const [start, end] = [Math.max(from, use - margin), Math.min(to, use + margin)];
  const isCovered = use >= from && use <= to;
  const held = start <= end ? inForce(changes, start, end) : [];
  const late = issued !== undefined && issued > use ? [finding('after-use', 'CHECK', { where: 'TAF', value: issued - use })] : [];
  const notCovered =
    isCovered || (reportServes && use < from) ? [] : [finding('not-covered', reportServes ? 'CHECK' : 'UNKNOWN', { value: from, limit: to })];
  const endsSoon = isCovered && !reportServes && use + margin > to ? [finding('ends-soon', 'CHECK', { value: to })] : [];
  const groups = isCovered || reportServes ? [...unsaidBy(held), ...held.flatMap((change) => ofChange(change, given, 'TAF'))] : [];
  return { findings: [...late, ...notCovered, ...endsSoon, ...(held.length === 0 ? [] : groups)], held: isCovered ? held : [] };
}

interface TafJudged {
  readonly findings: readonly Finding[];
  readonly held: readonly Change[];
}

function judgeTaf(text: string, at: Placed, given: WeatherUse): TafJudged {
  const { thing: taf, findings: bad } = attempt('taf-unreadable', () => readTaf(text));
  if (taf === undefined) return { findings: [...bad], held: [] };
  const station = stationFindings(given.station, taf.station, 'TAF');
  const placed = placeTaf(taf, at.use, at.latest);
  if (placed === undefined) return { findings: [...station, finding('taf-unreadable', 'UNKNOWN', { text: 'validity' })], held: [] };
  const { findings, held } = judgeGroups(placed, at, given);
  return { findings: [...station, ...unreadFindings([...taf.unread, ...placed.outside], 'TAF'), ...findings], held };
}

/** How long a report serves: two hours where a trend goes with it, but for a departure. */
const servesFor = ({ role }: WeatherUse, { trends }: Metar): number => (role !== 'departure' && trends !== undefined ? trendMinutes : freshMinutes);

/** How old the report is, whether it may be, and whether a forecast is wanted. */
function ageFindings(age: number, given: WeatherUse, metar: Metar): Finding[] {
  if (age < 0) return [finding('after-use', 'CHECK', { value: -age })];
  if (age <= servesFor(given, metar)) return [];
  if (given.role === 'departure') return [finding('old', 'CHECK', { value: age, limit: freshMinutes })];
  if (given.taf === undefined) return [finding('no-forecast', 'CHECK', { value: age })];
  return age > staleMinutes ? [finding('old', 'CHECK', { value: age, limit: staleMinutes })] : [];
}

function judgeMetar(metar: Metar, reported: number, use: number, given: WeatherUse, isForecast: boolean): Finding[] {
  const age = use - reported;
  const trends = trendChanges(metar, reported).filter(({ from }) => from <= use);
  const observed: Change = { kind: 'FROM', written: '', from: reported, to: reported, conditions: metar.observed };
  const unread = [metar.observed, ...trends.map(({ conditions }) => conditions)].flatMap((conditions) => conditions.unread);
  const weather = [
    ...unreadFindings(unread, ''),
    ...missing(unsaid(metar.observed), ''),
    ...ofChange(observed, given, ''),
    ...(age <= trendMinutes ? trends.flatMap((change) => ofChange(change, given, 'METAR trend')) : []),
  ];
  // Hours before an arrival that a forecast covers, the report says how it is now and not how it will be; of another day it says nothing at all.
  const isPast = (isForecast && given.role !== 'departure' && age > freshMinutes) || Math.abs(age) > staleMinutes;
  return [...ageFindings(age, given, metar), ...stationFindings(given.station, metar.station, ''), ...(isPast ? weather.map(softened) : weather)];
}

/** Said of the report and of the forecast apart. */
const ofText: ReadonlySet<Finding['kind']> = new Set(['unread', 'station', 'after-use', 'missing']);

const severity = ({ value = 0, limit = 0 }: Finding): number => Math.abs(value - limit);

/** Of the same thing found more than once the worst; all of them worst first. */
function worstFirst(findings: readonly Finding[]): Finding[] {
  const worst = new Map<string, Finding>();
  const rank = ({ verdict }: Finding): number => verdicts.indexOf(verdict);
  for (const one of findings) {
    const key = `${one.kind} ${one.limit === undefined ? `${one.text ?? ''} ${ofText.has(one.kind) ? one.where : ''}` : ''}`;
    const other = worst.get(key);
    if (other === undefined || rank(one) < rank(other) || (rank(one) === rank(other) && severity(one) > severity(other))) worst.set(key, one);
  }
  return [...worst.values()].sort((one, other) => rank(one) - rank(other));
}

function withoutMetar({ role, taf }: WeatherUse): Finding[] {
  if (role === 'departure' || taf === undefined) return [finding('no-metar', 'UNKNOWN')];
  return role === 'arrival' ? [finding('no-metar', 'CHECK')] : [];
}

/** The date nearest to the time of use; a report is never of a day after the one it is judged on. */
export function weatherBrief(given: WeatherUse): WeatherBrief {
  const { use, asOfDay } = given;
  const { thing: metar, findings: bad } =
    given.metar === undefined ? { thing: undefined, findings: withoutMetar(given) } : attempt('metar-unreadable', () => readMetar(given.metar ?? ''));
  const limits = missingLimits(given.limits, given.runwayDegrees);
  if (use === undefined) {
    const findings = worstFirst([finding('no-time', 'UNKNOWN'), ...bad, ...limits]);
    return { verdict: 'UNKNOWN', findings, metar, ageMinutes: undefined, forecast: [] };
  }
  const latest = asOfDay === undefined ? Infinity : endOfDayAnywhere(asOfDay);
  const reported = metar === undefined ? undefined : nearestMoment(metar.time, use, latest);
  const reportServes = metar !== undefined && reported !== undefined && reported <= use && use - reported <= servesFor(given, metar);
  const taf = given.taf === undefined ? { findings: [], held: [] } : judgeTaf(given.taf, { use, latest, reportServes }, given);
  const report = metar === undefined || reported === undefined ? [] : judgeMetar(metar, reported, use, given, taf.held.length > 0);
  const findings = worstFirst([...bad, ...limits, ...report, ...taf.findings]);
  return {
    verdict: findings.length === 0 ? 'OK' : worstVerdict(findings.map(({ verdict }) => verdict)),
    findings,
    metar,
    ageMinutes: reported === undefined ? undefined : use - reported,
    forecast: taf.held,
  };
}
