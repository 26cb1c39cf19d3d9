// One set of conditions against the pilot's own limits: everything found against it, each with its word.
import type { Verdict } from '../../basics/verdict';
import { everyDirection, windWorst } from '../windWorst';
import { ceilingOf, type Conditions, type RunwayState, type SurfaceWind } from './conditions';
import { recentSignificance, significance, surfaceSignificance } from './significant';

/** The pilot's own; undefined where there is none. */
export interface WeatherLimits {
  readonly ceilingFeet: number | undefined;
  readonly visibilityMetres: number | undefined;
  readonly gustSpreadKnots: number | undefined;
  readonly windKnots: number | undefined;
  readonly crosswindKnots: number | undefined;
  readonly tailwindKnots: number | undefined;
}

export type FindingKind =
  // Against a limit: `value` and `limit`.
  | 'ceiling'
  | 'visibility'
  | 'visibility-at-least'
  | 'visibility-towards'
  | 'runway-range'
  | 'gust-spread'
  | 'wind'
  | 'crosswind'
  | 'tailwind'
  // By themselves: `text` as written.
  | 'weather'
  | 'recent'
  | 'cloud'
  | 'wind-shear'
  | 'runway-state'
  // Not known: `text` names what.
  | 'missing'
  | 'unread'
  | 'no-limit'
  // Of the report or the forecast itself.
  | 'no-metar'
  | 'no-time'
  | 'metar-unreadable'
  | 'taf-unreadable'
  | 'station'
  | 'old'
  | 'after-use'
  | 'no-forecast'
  | 'not-covered'
  | 'ends-soon';

export interface Finding {
  readonly kind: FindingKind;
  readonly verdict: Verdict;
  /** The forecast's or trend's group; empty for the observation. */
  readonly where: string;
  readonly value?: number;
  readonly limit?: number;
  readonly text?: string;
  readonly state?: RunwayState;
}

/** Binary rounding alone must not tell two equal numbers apart. */
const slack = 1e-6;

type Found = Omit<Finding, 'where'>;

function beyond(kind: FindingKind, value: number, limit: number | undefined, isBeyond: boolean, verdict: Verdict = 'NO'): Found[] {
  return limit !== undefined && isBeyond ? [{ kind, verdict, value, limit }] : [];
}
const below = (kind: FindingKind, value: number, limit = -Infinity, verdict?: Verdict, text?: string): Found[] =>
  beyond(kind, value, limit, value < limit - slack, verdict).map((found) => (text === undefined ? found : { ...found, text }));
const above = (kind: FindingKind, value: number, limit = Infinity): Found[] => beyond(kind, value, limit, value > limit + slack);

function visibilityFound({ visibility, directional = [], runwayRanges = [] }: Conditions, { visibilityMetres: limit }: WeatherLimits): Found[] {
  return [
    ...(visibility === undefined
      ? []
      : visibility.orMore
        ? below('visibility-at-least', visibility.metres, limit, 'CHECK')
        : below('visibility', visibility.metres, limit)),
    ...directional.flatMap(({ metres, towards }) => below('visibility-towards', metres, limit, 'CHECK', towards)),
    ...runwayRanges.flatMap(({ metres, orMore, runway }) => (orMore ? [] : below('runway-range', metres, limit, 'CHECK', runway))),
  ];
}

function cloudsFound({ clouds = [] }: Conditions, { ceilingFeet }: WeatherLimits): Found[] {
  const { feet, isDoubtful } = ceilingOf(clouds);
  const low = feet === undefined ? [] : below('ceiling', feet, ceilingFeet);
  const kinds = [...new Set(clouds.flatMap(({ kind }) => (kind === '' ? [] : kind)))];
  return [
    ...low,
    ...(isDoubtful && low.length === 0 ? [{ kind: 'missing', verdict: 'UNKNOWN', text: 'ceiling' } as const] : []),
    ...kinds.map((text): Found => ({ kind: 'cloud', verdict: 'CHECK', text })),
  ];
}

/** Undefined where one direction holds. VRB has every direction. */
export function sectorOf({ wind, variableFromDegrees, variableToDegrees }: Conditions) {
  if (wind?.isVariable === true) return everyDirection;
  return variableFromDegrees === undefined || variableToDegrees === undefined
    ? undefined
    : { fromDegrees: variableFromDegrees, toDegrees: variableToDegrees };
}

const strongest = ({ knots = 0, gustKnots = 0 }: SurfaceWind): number => Math.max(knots, gustKnots);

/** The gust is judged where there is one. */
function windFound(conditions: Conditions, limits: WeatherLimits, runwayDegrees: number | undefined): Found[] {
  const { wind } = conditions;
  if (wind?.knots === undefined) return [];
  const spread = wind.gustKnots === undefined ? [] : above('gust-spread', wind.gustKnots - wind.knots, limits.gustSpreadKnots);
  const found = [...spread, ...above('wind', strongest(wind), limits.windKnots)];
  if (runwayDegrees === undefined || (wind.fromDegrees === undefined && !wind.isVariable)) return found;
  const { headwindKnots, crosswindKnots } = windWorst(runwayDegrees, wind.fromDegrees, sectorOf(conditions), strongest(wind));
  return [
    ...found,
    ...above('crosswind', Math.abs(crosswindKnots), limits.crosswindKnots),
    ...above('tailwind', Math.max(0, -headwindKnots), limits.tailwindKnots),
  ];
}

function bySelf(kind: FindingKind, groups: readonly string[], verdictOf: (group: string) => Verdict): Found[] {
  return groups.map((text): Found => ({ kind, verdict: verdictOf(text), text })).filter(({ verdict }) => verdict !== 'OK');
}

/** What speaks against these conditions. What they do not say is for the caller: a change of a forecast need not say everything. */
export function found(conditions: Conditions, limits: WeatherLimits, runwayDegrees: number | undefined): Found[] {
  return [
    ...cloudsFound(conditions, limits),
    ...visibilityFound(conditions, limits),
    ...bySelf('weather', conditions.weather ?? [], significance),
    ...windFound(conditions, limits, runwayDegrees),
    ...(conditions.runwayStates ?? []).flatMap((state) =>
      bySelf('runway-state', [state.written], () => surfaceSignificance(state)).map((one) => ({ ...one, state })),
    ),
    ...bySelf('wind-shear', conditions.windShear ?? [], () => 'CHECK'),
    ...bySelf('recent', conditions.recent ?? [], recentSignificance),
  ];
}

type Element = 'wind' | 'visibility' | 'cloud' | 'weather';

/** What these conditions leave unsaid. */
export const unsaid = ({ wind, visibility, clouds, weather }: Conditions): Element[] => [
  ...(wind?.knots === undefined || (wind.fromDegrees === undefined && !wind.isVariable) ? (['wind'] as const) : []),
  ...(visibility === undefined ? (['visibility'] as const) : []),
  ...(clouds === undefined ? (['cloud'] as const) : []),
  ...(weather === undefined ? (['weather'] as const) : []),
];

/** Limits that are needed and not there. */
export function missingLimits(limits: WeatherLimits, runwayDegrees: number | undefined): Finding[] {
  const needed = {
    'minimum ceiling': limits.ceilingFeet,
    'minimum visibility': limits.visibilityMetres,
    'maximum gust spread': limits.gustSpreadKnots,
    ...(runwayDegrees === undefined ? {} : { 'maximum crosswind': limits.crosswindKnots, 'maximum tailwind': limits.tailwindKnots }),
  };
  return Object.entries(needed).flatMap(([text, limit]) =>
    limit === undefined ? [{ kind: 'no-limit', verdict: 'UNKNOWN', where: '', text } as const] : [],
  );
}
