// What was found against the weather, each in one sentence with its units.
import type { Finding, FindingKind } from '../../core/air/report/judge';
import type { CoreErrorDetails } from '../../core/basics/errors';
import { limitInWords } from '../registry/readNumber';
import { metarReasons, tafReasons } from '../registry/sharedWords';
import { dayZuluText } from '../registry/zuluText';
import { runwayStateInWords, weatherInWords } from './weatherWords';

export interface Told {
  readonly station: string | undefined;
  readonly role: string;
  /** Minutes of UTC since the beginning of 1970. */
  readonly use: number | undefined;
}

/** A value below its limit is never rounded up to it, nor one above down to it. */
const low = (value = 0): string => limitInWords(Math.floor(value + 1e-6));
const high = (value = 0): string => limitInWords(Math.ceil(value * 10 - 1e-6) / 10);
/** Converted feet and metres to the whole one. */
const limitOf = (limit = 0): string => limitInWords(limit < 100 ? Number(limit.toFixed(1)) : Math.round(limit));

const minutesOfTwoDays = 2880;
const ageInWords = (minutes = 0): string =>
  minutes < minutesOfTwoDays ? `${limitInWords(Math.round(minutes))} minutes` : `${limitInWords(Math.floor(minutes / 1440))} days`;

type Words = (finding: Finding, told: Told) => string;

const clouds: Readonly<Record<string, string>> = { CB: 'cumulonimbus (CB)', TCU: 'towering cumulus (TCU)' };
const reportOf = ({ where }: Finding): string => (where === '' ? 'METAR' : 'TAF');

const words: { readonly [Kind in FindingKind]: Words } = {
  ceiling: ({ value, limit }) => `ceiling ${low(value)} ft, below your minimum of ${limitOf(limit)} ft`,
  visibility: ({ value, limit }) => `visibility ${low(value)} m, below your minimum of ${limitOf(limit)} m`,
  'visibility-at-least': ({ value, limit }) => `visibility ${low(value)} m or more, which may be below your minimum of ${limitOf(limit)} m`,
  'visibility-towards': ({ value, limit, text }) => `visibility ${low(value)} m to the ${text ?? ''}, below your minimum of ${limitOf(limit)} m`,
  'runway-range': ({ value, limit, text }) =>
    `runway visual range ${low(value)} m on runway ${text ?? ''}, below your minimum visibility of ${limitOf(limit)} m`,
  'gust-spread': ({ value, limit }) => `gusts ${high(value)} kt above the wind, more than your maximum of ${limitOf(limit)} kt`,
  wind: ({ value, limit }) => `wind ${high(value)} kt, gusts included, more than your maximum of ${limitOf(limit)} kt`,
  crosswind: ({ value, limit }) => `crosswind ${high(value)} kt, more than your maximum of ${limitOf(limit)} kt`,
  tailwind: ({ value, limit }) => `tailwind ${high(value)} kt, more than your maximum of ${limitOf(limit)} kt`,
  weather: ({ text = '' }) => weatherInWords(text),
  recent: ({ text = '' }) => `in the past hour ${weatherInWords(text)}`,
  cloud: ({ text = '' }) => clouds[text] ?? text,
  'wind-shear': ({ text = '' }) => `wind shear (${text})`,
  'runway-state': ({ state, text = '' }) => (state === undefined ? text : runwayStateInWords(state)),
  missing: (finding) =>
    finding.text === 'ceiling'
      ? 'a cloud layer has no amount or no height, so the ceiling is not known'
      : `${finding.text ?? ''} is missing in the ${finding.where === '' ? 'report' : 'forecast'}`,
  unread: ({ text = '' }) => `cannot be read: ${text}`,
  'no-limit': ({ text = '' }) => `no ${text} among your limits`,
  'no-metar': ({ verdict }) => (verdict === 'UNKNOWN' ? 'no report' : 'no report (METAR), judged by the forecast alone'),
  'no-time': () => 'no date and time of use',
  'metar-unreadable': ({ text = '' }) => `the text given as METAR ${metarReasons[text as CoreErrorDetails['metar-unreadable']['reason']]}`,
  'taf-unreadable': ({ text = '' }) => `the text given as TAF ${tafReasons[text as CoreErrorDetails['taf-unreadable']['reason']]}`,
  station: (finding, { station }) =>
    station === undefined
      ? `${reportOf(finding)} is of ${finding.text ?? ''}, and the field has no station to compare it with: give the one whose reports it goes by`
      : `${reportOf(finding)} is of ${finding.text ?? ''}, not of ${station.trim().toUpperCase()}`,
  old: ({ value, limit }, { role }) => `METAR is ${ageInWords(value)} old at the ${role} time, more than ${ageInWords(limit)}`,
  'after-use': (finding, { role }) => `${reportOf(finding)} is of ${ageInWords(finding.value)} after the ${role} time`,
  'no-forecast': ({ value }, { role }) => `no forecast (TAF) for the ${role} time, when the METAR is ${ageInWords(value)} old`,
  'not-covered': ({ value = 0, limit = 0 }, { role, use = 0 }) =>
    `TAF is for ${dayZuluText(value)} to ${dayZuluText(limit)}, not for the ${role} time ${dayZuluText(use)}`,
  'ends-soon': ({ value = 0 }, { role }) => `TAF ends at ${dayZuluText(value)}, less than an hour after the ${role} time`,
};

/** These name the report or the forecast themselves. */
const namesItself: ReadonlySet<FindingKind> = new Set(['station', 'after-use', 'missing']);

export function findingInWords(finding: Finding, told: Told): string {
  const says = words[finding.kind](finding, told);
  return finding.where === '' || namesItself.has(finding.kind) ? says : `${finding.where}: ${says}`;
}
