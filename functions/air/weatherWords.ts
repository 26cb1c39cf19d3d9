// Weather in words: groups of code, clouds, the state of a runway.
import type { Ceiling, CloudLayer, RunwayState, SurfaceWind, Visibility } from '../../core/air/report/conditions';
import type { DayTime } from '../../core/air/report/changes';
import { weatherGroup } from '../../core/air/report/significant';
import { limitInWords } from '../registry/readNumber';
import { zuluText } from '../registry/zuluText';

/** @source wmo-306, code table 4678. */
const codes: Readonly<Record<string, string>> = {
  DZ: 'drizzle',
  RA: 'rain',
  SN: 'snow',
  SG: 'snow grains',
  PL: 'ice pellets',
  GR: 'hail',
  GS: 'small hail',
  UP: 'unknown precipitation',
  IC: 'ice crystals',
  BR: 'mist',
  FG: 'fog',
  FU: 'smoke',
  VA: 'volcanic ash',
  DU: 'dust',
  SA: 'sand',
  HZ: 'haze',
  PY: 'spray',
  PO: 'dust whirls',
  SQ: 'squall',
  FC: 'funnel cloud',
  SS: 'sandstorm',
  DS: 'duststorm',
  MI: 'shallow',
  BC: 'patches of',
  PR: 'partial',
  DR: 'low drifting',
  BL: 'blowing',
  FZ: 'freezing',
};
const strengths = { '': '', '-': 'light ', '+': 'heavy ' } as const;

/** "+TSRA" as "thunderstorm with heavy rain (+TSRA)". */
export function weatherInWords(written: string): string {
  const { intensity, isNear, codes: all } = weatherGroup(written);
  const [first] = all;
  const rest = first === 'TS' || first === 'SH' ? all.slice(1) : all;
  const isTornado = written === '+FC';
  const names = rest.map((code) => codes[code] ?? code);
  const joint = /^(MI|BC|PR|DR|BL|FZ)$/.test(first ?? '') ? `${names[0] ?? ''} ${names.slice(1).join(' and ')}` : names.join(' and ');
  const strong = isTornado ? 'tornado or waterspout' : `${strengths[intensity]}${joint}`;
  const kind = first === 'TS' ? `thunderstorm${rest.length === 0 ? '' : ` with ${strong}`}` : first === 'SH' ? `${strong} showers`.trim() : strong;
  return `${kind}${isNear ? ' in the vicinity' : ''} (${written})`;
}

/** Blank where it is not known. */
export const orBlank = (value: number | undefined): number | string => value ?? '';

/** "281350Z"; the end of a day as 282400Z. */
export const dayTimeInWords = ({ day, minutes }: DayTime): string =>
  `${String(day).padStart(2, '0')}${minutes === 1440 ? '2400Z' : zuluText(minutes)}`;

/** Blank where it is not known, "none" where there is none. */
export const listInWords = (list: readonly string[] | undefined): string =>
  list === undefined ? '' : list.length === 0 ? 'none' : list.map(weatherInWords).join(', ');

/** Blank where it is not known, "none" where there is none. */
export function ceilingCell(ceiling: Ceiling | undefined): number | string {
  if (ceiling === undefined || ceiling.isDoubtful) return '';
  return ceiling.feet ?? 'none';
}

/** The least that the report can mean, in whole metres. */
export const visibilityCell = (visibility: Visibility | undefined): number | string =>
  visibility === undefined ? '' : Math.floor(visibility.metres);

const layerInWords = ({ amount, feet, kind }: CloudLayer): string =>
  [amount ?? 'unknown amount', feet === undefined ? 'unknown height' : `${limitInWords(feet)} ft`, kind].filter((part) => part !== '').join(' ');

export const cloudsInWords = (clouds: readonly CloudLayer[] | undefined): string =>
  clouds === undefined ? '' : clouds.length === 0 ? 'none' : clouds.map(layerInWords).join(', ');

export interface ConditionsTold {
  readonly wind?: SurfaceWind | undefined;
  readonly visibility?: Visibility | undefined;
  readonly ceiling: Ceiling | undefined;
}

/** What is observed or forecast, in one line. */
export function conditionsInWords({ wind, visibility, ceiling }: ConditionsTold): string {
  const from = wind?.fromDegrees === undefined ? 'variable' : String(wind.fromDegrees).padStart(3, '0');
  const gust = wind?.gustKnots === undefined ? '' : ` gusting ${tenth(wind.gustKnots)}`;
  const blows = wind?.knots === 0 ? 'calm' : `wind ${from} at ${tenth(wind?.knots ?? 0)}${gust} kt`;
  const sees = `visibility ${limitInWords(Math.floor(visibility?.metres ?? 0))} m${visibility?.orMore === true ? ' or more' : ''}`;
  return `${blows}, ${sees}, ${ceiling?.feet === undefined ? 'no ceiling' : `ceiling ${limitInWords(ceiling.feet)} ft`}`;
}

export const tenth = (value: number): string => limitInWords(Number(value.toFixed(1)));

/** @source wmo-306, code table 0919. */
const deposits = ['dry', 'damp', 'wet', 'rime or frost', 'dry snow', 'wet snow', 'slush', 'ice', 'compacted snow', 'frozen ruts'];
/** @source wmo-306, code table 0519. */
const extents: Readonly<Record<number, string>> = { 1: '10 % or less', 2: '11 to 25 %', 5: '26 to 50 %', 9: '51 to 100 %' };
/** In centimetres. @source wmo-306, code table 1079. */
const deepCentimetres: Readonly<Record<number, number>> = { 92: 10, 93: 15, 94: 20, 95: 25, 96: 30, 97: 35, 98: 40 };
/** @source wmo-306, code table 0366. */
const brakings: Readonly<Record<number, string>> = {
  91: 'braking poor',
  92: 'braking medium to poor',
  93: 'braking medium',
  94: 'braking medium to good',
  95: 'braking good',
  99: 'braking unreliable',
};

function depthInWords(depth: number | undefined): string {
  const centimetres = deepCentimetres[depth ?? 0];
  if (centimetres !== undefined) return `${centimetres} cm${depth === 98 ? ' or more' : ''} deep`;
  return depth === undefined || depth > 90 ? '' : depth === 0 ? 'less than 1 mm deep' : `${depth} mm deep`;
}

export function runwayStateInWords({ runway, written, isClosed, deposit, extent, depth, friction }: RunwayState): string {
  const where = runway === '' || runway === '88' ? 'all runways' : `runway ${runway}`;
  const what =
    deposit === undefined ? 'deposit not reported' : `${deposits[deposit] ?? ''}${extent === undefined ? '' : ` on ${extents[extent] ?? ''}`}`;
  const braking = friction === undefined ? '' : (brakings[friction] ?? `friction coefficient 0.${String(friction).padStart(2, '0')}`);
  const parts = isClosed ? ['closed by snow, slush or ice'] : [what, depthInWords(depth), braking].filter((part) => part !== '');
  return `${where} ${parts.join(', ')} (${written})`;
}
