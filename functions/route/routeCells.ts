// One row of a route's answer: what a part of it may say, and its cells in the order of the columns. What is not known is blank, never 0.
import type { Verdict } from '../../core/basics/verdict';
import type { ResultCell } from '../registry/declaration';

export interface RouteRow {
  readonly leg: string | number;
  readonly part?: string;
  readonly from?: string;
  readonly to?: string;
  readonly altitudeFeet?: number;
  readonly trueAirspeedKnots?: number;
  readonly windFromDegrees?: number;
  readonly windKnots?: number;
  readonly trueCourse?: number;
  readonly variation?: number;
  readonly magneticHeading?: number;
  readonly nauticalMiles?: number | undefined;
  readonly groundspeedKnots?: number | undefined;
  readonly minutes?: number | undefined;
  readonly fuel?: number | undefined;
  readonly timeOver?: string | undefined;
  readonly fuelLeft?: number | undefined;
  readonly fuelWanted?: number | undefined;
  readonly verdict: Verdict | '';
  readonly reason: string;
}

export const routeCells = (row: RouteRow): ResultCell[] => [
  row.leg,
  row.part ?? '',
  row.from ?? '',
  row.to ?? '',
  row.altitudeFeet ?? '',
  row.trueAirspeedKnots ?? '',
  row.windFromDegrees ?? '',
  row.windKnots ?? '',
  row.trueCourse ?? '',
  row.variation ?? '',
  row.magneticHeading ?? '',
  row.nauticalMiles ?? '',
  row.groundspeedKnots ?? '',
  row.minutes ?? '',
  row.fuel ?? '',
  row.timeOver ?? '',
  row.fuelLeft ?? '',
  row.fuelWanted ?? '',
  row.verdict,
  row.reason,
];
