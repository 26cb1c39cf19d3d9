// The worst of several sets of conditions that can be in force together, element by element.
import type { Sector } from '../windWorst';
import { ceilingOf, type Ceiling, type Conditions, type SurfaceWind, type Visibility } from './conditions';
import { sectorOf } from './judge';

export interface WorstConditions {
  /** The strongest, with its gust. */
  readonly wind: SurfaceWind | undefined;
  readonly sector: Sector | undefined;
  readonly visibility: Visibility | undefined;
  /** Undefined where nothing is said of clouds. */
  readonly ceiling: Ceiling | undefined;
  readonly weather: readonly string[] | undefined;
  readonly windShear: readonly string[];
}

const strength = ({ wind }: Conditions): number => Math.max(wind?.knots ?? -1, wind?.gustKnots ?? -1);

/** Undefined where nobody says anything; each once. */
const united = (lists: readonly (readonly string[] | undefined)[]): readonly string[] | undefined =>
  lists.every((list) => list === undefined) ? undefined : [...new Set(lists.flatMap((list) => list ?? []))];

export function worstOf(all: readonly Conditions[]): WorstConditions {
  const windiest = all.reduce<Conditions | undefined>((most, one) => (most === undefined || strength(one) > strength(most) ? one : most), undefined);
  const seen = all.flatMap(({ visibility }) => visibility ?? []);
  const clouds = all.flatMap((one) => one.clouds ?? []);
  return {
    wind: windiest?.wind,
    sector: windiest === undefined ? undefined : sectorOf(windiest),
    visibility: seen.reduce<Visibility | undefined>((least, one) => (least === undefined || one.metres < least.metres ? one : least), undefined),
    ceiling: all.some((one) => one.clouds !== undefined) ? ceilingOf(clouds) : undefined,
    weather: united(all.map(({ weather }) => weather)),
    windShear: united(all.map(({ windShear }) => windShear)) ?? [],
  };
}
