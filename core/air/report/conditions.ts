// What a report or a forecast says of the weather at a field, as numbers and code words.
import type { TrueDegrees } from '../../basics/units';

export interface SurfaceWind {
  /** Undefined where it is variable or was not measured; 0 in a calm. */
  readonly fromDegrees: TrueDegrees | undefined;
  /** VRB: from any side. */
  readonly isVariable: boolean;
  readonly knots: number | undefined;
  readonly gustKnots: number | undefined;
}

export interface Visibility {
  /** The least that the group can mean: 0 for M1/4SM. */
  readonly metres: number;
  /** It may be more: 9999, CAVOK, P6SM. */
  readonly orMore: boolean;
}

export interface CloudLayer {
  /** Undefined where the amount was not seen (///). */
  readonly amount: 'FEW' | 'SCT' | 'BKN' | 'OVC' | 'VV' | undefined;
  /** Base above the field; undefined where it was not measured. */
  readonly feet: number | undefined;
  /** CB or TCU. */
  readonly kind: string;
}

export interface RunwayVisualRange {
  readonly runway: string;
  readonly metres: number;
  readonly orMore: boolean;
}

/** Digits of the code tables 0919, 0519, 1079 and 0366; undefined where not reported. @source wmo-306, FM 15. */
export interface RunwayState {
  /** Empty for the whole field. */
  readonly runway: string;
  readonly written: string;
  readonly isClosed: boolean;
  readonly deposit: number | undefined;
  readonly extent: number | undefined;
  readonly depth: number | undefined;
  readonly friction: number | undefined;
}

/** Undefined means not said, or reported as missing. */
export interface Conditions {
  readonly wind?: SurfaceWind;
  readonly variableFromDegrees?: TrueDegrees;
  readonly variableToDegrees?: TrueDegrees;
  readonly visibility?: Visibility;
  /** Lower visibility in a direction, with the direction. */
  readonly directional?: readonly (Visibility & { readonly towards: string })[];
  readonly runwayRanges?: readonly RunwayVisualRange[];
  /** Groups of code table 4678 as written; none for NSW. */
  readonly weather?: readonly string[];
  /** Reported as missing by a station that would report it (//). */
  readonly weatherMissing?: boolean;
  /** Without the RE in front. */
  readonly recent?: readonly string[];
  /** None for NSC, NCD, SKC, CLR and CAVOK. */
  readonly clouds?: readonly CloudLayer[];
  /** As written. */
  readonly windShear?: readonly string[];
  readonly runwayStates?: readonly RunwayState[];
  readonly temperatureCelsius?: number;
  readonly dewPointCelsius?: number;
  readonly altimeterHectopascals?: number;
  /** What could not be read, as written. */
  readonly unread: readonly string[];
}

export interface Ceiling {
  /** Undefined where there is none, or none that was measured. */
  readonly feet: number | undefined;
  /** A layer that may be one has no amount or no height, so the ceiling may be lower. */
  readonly isDoubtful: boolean;
}

const isCeiling = ({ amount }: CloudLayer): boolean => amount === 'BKN' || amount === 'OVC' || amount === 'VV';

/** The lowest broken or overcast layer, or the vertical visibility. @source aim, 7-1, and 14 CFR 1.1, ceiling. */
export function ceilingOf(clouds: readonly CloudLayer[]): Ceiling {
  const heights = clouds.filter(isCeiling).flatMap(({ feet }) => feet ?? []);
  return {
    feet: heights.length === 0 ? undefined : Math.min(...heights),
    isDoubtful: clouds.some((layer) => layer.amount === undefined || (isCeiling(layer) && layer.feet === undefined)),
  };
}
