// The groups of a report or a forecast, one reader each: a group is read whole, or it is named as unread.
// @source icao-annex-3, appendix 3, tables A3-2 and A3-5; wmo-306, FM 15 and FM 51; fmh-1, chapter 12.
import {
  asTrueDegrees,
  hectopascalsFromInchesOfMercury,
  knotsFromKilometresPerHour,
  knotsFromMetresPerSecond,
  metresFromFeet,
  metresFromStatuteMiles,
} from '../../basics/units';
import type { CloudLayer, Conditions, RunwayState, Visibility } from './conditions';
import { isRecentWeather, isWeather } from './weatherCode';
import { asWritten } from './words';

type Draft = { -readonly [Name in keyof Conditions]: Conditions[Name] };
type Match = readonly (string | undefined)[];
/** False where the group says what cannot be, or says it a second time. */
type Read = (match: Match, draft: Draft) => boolean;

const number = (text: string | undefined): number | undefined => (text === undefined || !/^\d+$/.test(text) ? undefined : Number(text));
const isDirection = (text: string | undefined): boolean => Number(text) <= 360;
const isRunway = (text = ''): boolean => text === '' || (Number(text.slice(0, 2)) >= 1 && Number(text.slice(0, 2)) <= 36);

const knotsFrom: Readonly<Record<string, (speed: number) => number>> = {
  KT: (speed) => speed,
  MPS: knotsFromMetresPerSecond,
  KMH: knotsFromKilometresPerHour,
};

/** A gust below the wind, a direction beyond 360, a direction 000 that blows: slips. */
const readWind: Read = ([, from = '', speed, gust, unit = ''], draft) => {
  const [wind, peak] = [number(speed), number(gust)];
  const cannotBe = (peak !== undefined && peak <= (wind ?? 0)) || (from === '000' && wind !== 0) || (/\d/.test(from) && !isDirection(from));
  if (draft.wind !== undefined || cannotBe) return false;
  const knots = (value: number | undefined): number | undefined => (value === undefined ? undefined : knotsFrom[unit]?.(value));
  draft.wind = {
    fromDegrees: /\d/.test(from) ? asTrueDegrees(Number(from)) : undefined,
    isVariable: from === 'VRB',
    knots: knots(wind),
    gustKnots: knots(peak),
  };
  return true;
};

const readVariation: Read = ([, from, to], draft) => {
  if (draft.variableFromDegrees !== undefined || !isDirection(from) || !isDirection(to)) return false;
  draft.variableFromDegrees = asTrueDegrees(Number(from));
  draft.variableToDegrees = asTrueDegrees(Number(to));
  return true;
};

function setVisibility(draft: Draft, visibility: Visibility): boolean {
  if (draft.visibility !== undefined) return false;
  draft.visibility = visibility;
  return true;
}

/** Metres are reported in steps of 50 below 800 and of 100 above; 9999 is 10 km or more. @source icao-annex-3, appendix 3, 4.2.4. */
const readMetres: Read = ([, digits = '', towards = ''], draft) => {
  const isMost = digits === '9999';
  const metres = isMost ? 10_000 : Number(digits);
  if (!isMost && metres % (metres < 800 ? 50 : 100) !== 0) return false;
  const visibility = { metres, orMore: isMost };
  if (towards === '' || towards === 'NDV') return setVisibility(draft, visibility);
  draft.directional = [...(draft.directional ?? []), { ...visibility, towards }];
  return draft.directional.length <= 2;
};

/** Whole miles, a fraction, or both, which were joined with a low line. M is less than, P more than. @source fmh-1, 12.6.6. */
const readMiles: Read = ([, bound, whole = '', above, below], draft) => {
  const fraction = above === undefined ? 0 : Number(above) / Number(below);
  if (fraction >= 1 || (whole === '' && above === undefined) || (bound === 'M' && whole !== '')) return false;
  const metres = bound === 'M' ? 0 : metresFromStatuteMiles(Number(whole) + fraction);
  return setVisibility(draft, { metres, orMore: bound === 'P' });
};

/** Visibility 10 km or more, no cloud of operational significance, no weather of significance. @source icao-annex-3, appendix 3, 2.2. */
const readCavok: Read = (_, draft) => {
  if (draft.clouds !== undefined || draft.weather !== undefined) return false;
  draft.clouds = [];
  draft.weather = [];
  return setVisibility(draft, { metres: 10_000, orMore: true });
};

const readRange: Read = ([, runway = '', missing, bound, low, feet], draft) => {
  if (!isRunway(runway)) return false;
  const value = feet === undefined ? Number(low) : metresFromFeet(Number(low));
  const range = { runway, metres: bound === 'M' ? 0 : value, orMore: bound === 'P' };
  draft.runwayRanges = [...(draft.runwayRanges ?? []), ...(missing === undefined ? [range] : [])];
  return true;
};

const readWeather: Read = ([word = ''], draft) => {
  if (!isWeather(word)) return false;
  draft.weather = [...(draft.weather ?? []), word];
  return draft.weather.length <= 3;
};

const readRecent: Read = ([word = ''], draft) => {
  if (!isRecentWeather(word)) return false;
  draft.recent = [...(draft.recent ?? []), word.slice(2)];
  return true;
};

/** No significant weather any more, in a forecast. */
const readNoWeather: Read = (_, draft) => {
  if (draft.weather !== undefined) return false;
  draft.weather = [];
  return true;
};

const readCloud: Read = ([, amount, height, kind = ''], draft) => {
  const isKindAlone = amount === '///' && height === '///' && /CB|TCU/.test(kind);
  const layer = {
    amount: amount === '///' ? undefined : (amount as CloudLayer['amount']),
    feet: height === '///' ? undefined : Number(height) * 100,
    kind: kind.replace(/\//g, ''),
  };
  // A CB or TCU that a machine has seen without amount and height stands beside the layers, and is none.
  const clouds = isKindAlone ? [{ ...layer, amount: 'FEW' as const }] : [layer];
  draft.clouds = [...(draft.clouds ?? []), ...clouds];
  return true;
};

const readNoCloud: Read = (_, draft) => {
  if ((draft.clouds ?? []).some(({ amount }) => amount !== 'FEW')) return false;
  draft.clouds ??= [];
  return true;
};

/** M is below zero; M00 is just below, and zero here. */
const celsius = (text: string | undefined): number | undefined =>
  text === undefined || !/\d/.test(text) ? undefined : Number(text.replace('M', '')) * (text.startsWith('M') ? -1 : 1) + 0;

const readTemperature: Read = ([, temperature, dewPoint], draft) => {
  if (draft.temperatureCelsius !== undefined || draft.dewPointCelsius !== undefined) return false;
  const [air, dew] = [celsius(temperature), celsius(dewPoint)];
  if (air !== undefined) draft.temperatureCelsius = air;
  if (dew !== undefined) draft.dewPointCelsius = dew;
  return true;
};

/** Both units may stand in one report; more than a hectopascal apart they are two settings. */
const readAltimeter: Read = ([, hectopascals, hundredths], draft) => {
  const value = hectopascals === undefined ? hectopascalsFromInchesOfMercury(Number(hundredths) / 100) : Number(hectopascals);
  const before = draft.altimeterHectopascals;
  draft.altimeterHectopascals = value;
  return before === undefined || Math.abs(before - value) <= 1;
};

const readWindShear: Read = ([word = ''], draft) => {
  draft.windShear = [...(draft.windShear ?? []), word.replace(/_/g, ' ')];
  return true;
};

function addRunwayState(draft: Draft, state: Partial<RunwayState> & { readonly written: string }): boolean {
  const none = { runway: '', isClosed: false, deposit: undefined, extent: undefined, depth: undefined, friction: undefined };
  draft.runwayStates = [...(draft.runwayStates ?? []), { ...none, ...state }];
  return true;
}

const isRunwayOrAll = (runway: string): boolean => /^(5[1-9]|[67]\d|8[0-68]|99)$/.test(runway) || isRunway(runway);

/** Eight figures without the R are the older form. A right runway is 50 more there; 88 is all of them, 99 the last report once more. */
const readRunwayState: Read = ([written = '', named, older, deposit, extent, depth, friction], draft) => {
  const runway = named ?? older ?? '';
  if (!isRunwayOrAll(runway) || depth === '91' || /9[678]/.test(friction ?? '')) return false;
  const state = { deposit: number(deposit), extent: number(extent), depth: number(depth), friction: number(friction) };
  return addRunwayState(draft, { runway, written, isClosed: state.depth === 99, ...state });
};

const readCleared: Read = ([written = '', runway = '', friction], draft) =>
  isRunwayOrAll(runway) && addRunwayState(draft, { written, runway, deposit: 0, friction: number(friction) });

const pass: Read = () => true;

/** The letters with which a group begins, how it is written, and what it says. The first that fits reads it. */
const readers: readonly (readonly [beginnings: string, looks: RegExp, read: Read])[] = [
  ['0123V/', /^(\d{3}|VRB|\/\/\/)(\d\d|1\d\d|\/\/)(?:G(\d\d|1\d\d))?(KT|MPS|KMH)$/, readWind],
  ['FSBO/', /^(FEW|SCT|BKN|OVC|\/\/\/)(\d{3}|\/\/\/)(CB|TCU|\/\/\/)?$/, readCloud],
  ['0123456789', /^(\d{4})(NDV|N|NE|E|SE|S|SW|W|NW)?$/, readMetres],
  ['M0123456/X', /^(M?[0-6]\d|\/\/|XX)\/(M?[0-6]\d|\/\/|XX)?$/, readTemperature],
  ['QA', /^(?:Q(0[89]\d\d|10\d\d)|A((?:2[5-9]|3[0-2])\d\d))$/, readAltimeter],
  ['0123', /^(\d{3})V(\d{3})$/, readVariation],
  ['0123456789MP', /^([MP])?(?:(0|[1-9]\d?)(?=_|SM))?_?(?:([13579]|1[135])\/(2|4|8|16))?SM$/, readMiles],
  ['C', /^CAVOK$/, readCavok],
  ['V', /^(VV)(\d{3}|\/\/\/)$/, readCloud],
  ['NSC', /^(NSC|NCD|SKC|CLR)$/, readNoCloud],
  ['N', /^NSW$/, readNoWeather],
  ['/', /^\/\/$/, (_, draft) => (draft.weatherMissing = true)],
  ['R', /^R(\d\d[LCR]?)\/(?:(\/{4})|([PM])?(\d{4})(?:V[PM]?\d{4})?)(FT)?\/?[UDN]?$/, readRange],
  ['W', /^WS(?:_ALL_RWY|_(?:(?:TKOF|LDG)_)?R(?:WY)?\d\d[LCR]?|\d{3}\/\d{3}\d\d\d?(?:KT|MPS))$/, readWindShear],
  ['R0123456789', /^(?:R(\d\d[LCR]?)\/|(\d\d))([\d/])([1259/])(\d\d|\/\/)(\d\d|\/\/)$/, readRunwayState],
  ['R', /^R(\d\d[LCR]?)\/CLRD(\d\d|\/\/)$/, readCleared],
  ['RS', /^(?:R(\d\d[LCR]?)?\/)?SNOCLO$/, ([written = '', runway = ''], draft) => addRunwayState(draft, { written, runway, isClosed: true })],
  // Read as well, and nothing of the weather: what is missing, sea, the pressure of military forecasts, their colours, words on the report itself.
  ['AQ/RW', /^(?:[AQ]\/{4}|\/{4}|RE\/\/|W(?:M?\d\d|\/\/)\/(?:S[\d/]|H(?:\d{1,3}|\/\/\/))|QNH\d{4}INS)$/, pass],
  ['BWGYARC', /^(?:BLU\+?|WHT|GRN|YLO[12]?|AMB|RED|AUTO|COR|CC[A-C]|RTD)$/, pass],
  ['R', /^RE[A-Z]+$/, readRecent],
  ['', /^[-+A-Z]+$/, readWeather],
];

function isRead(word: string, draft: Draft): boolean {
  const [first = ''] = word;
  for (const [beginnings, looks, read] of readers) {
    const match = beginnings === '' || beginnings.includes(first) ? looks.exec(word) : null;
    if (match !== null) return read(match, draft);
  }
  return false;
}

/** Every word is read, or stands in `unread`. */
export function readGroups(words: readonly string[]): Conditions {
  const draft: Draft = { unread: [] };
  const unread = words.filter((word) => !isRead(word, draft)).map(asWritten);
  draft.unread = unread;
  return draft;
}
