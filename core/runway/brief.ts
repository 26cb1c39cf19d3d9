// Everything of one take-off or landing on one runway: air, wind, the manual's distance, its corrections, the margin.
import { leavesUnknown, readOrReason, type AircraftTable, type ReadyFigure } from '../manual/openTable';
import { converted, type TableUnit } from '../manual/tableUnits';
import { densityAltitudeFeet, pressureAltitudeFeet } from '../air/atmosphere';
import { CoreError } from '../basics/errors';
import { aboveStandardCelsius, basisOf, conditionFor, leastWarmthCelsius, rolesOf, type Conditions, type TableBasis } from './conditions';
import { correctedDistance, countsTwice, effectOf, rollNeededFor, type Correction, type CorrectionEffect } from './distanceCorrections';
import { runwayMargin, type RunwayMargin } from './margin';
import { leastTailwindKnots } from './winds';
import type { Verdict } from '../basics/verdict';
import type { WindComponents } from '../air/wind';
import { windWorst, type Sector } from '../air/windWorst';

export interface RunwayCase {
  /** Read by the columns whose headings say what they are, else by its first three: weight, pressure altitude and temperature. */
  readonly table: AircraftTable;
  /** Header of the distance's column. */
  readonly wanted: string;
  readonly weight: number;
  readonly runwayDegrees: number;
  /** In lengthUnit; where that is not known, in the unit of the table's distances. */
  readonly available: number;
  readonly weightUnit?: TableUnit | undefined;
  readonly lengthUnit?: TableUnit | undefined;
  readonly elevationFeet: number;
  readonly altimeterSettingHectopascals: number;
  readonly temperatureCelsius: number;
  /** In the reference of runwayDegrees; undefined where the wind comes from any direction, or from the sector alone. */
  readonly windFromDegrees: number | undefined;
  readonly windKnots: number;
  readonly gustKnots?: number | undefined;
  /** The directions between which the wind varies. */
  readonly windSector?: Sector | undefined;
  readonly factor: number;
  readonly corrections: readonly Correction[];
}

export interface BriefDistances extends RunwayMargin {
  readonly book: number;
  readonly corrected: number;
  readonly basis: TableBasis;
}

export interface RunwayBrief extends WindComponents {
  readonly pressureAltitudeFeet: number;
  readonly densityAltitudeFeet: number;
  readonly corrections: readonly CorrectionEffect[];
  /** Or why the table has no answer for this case. */
  readonly distances: BriefDistances | CoreError;
  /** A tailwind for which no correction stands in the list, so that the distance takes no account of it; else 0. */
  readonly uncountedTailwindKnots: number;
  /** So much warmer than the standard of a table without temperatures, and no correction counts it; else 0. */
  readonly uncountedWarmthCelsius: number;
  readonly verdict: Verdict;
}

export interface DistanceReader {
  readonly book: number;
  readonly corrected: number;
  readonly basis: TableBasis;
}

/** The figure in the case's unit of length at these conditions, and corrected. Throws where the table has no answer. */
export function distanceAt(
  runwayCase: RunwayCase,
  figure: ReadyFigure,
  conditions: Conditions,
  effects: readonly CorrectionEffect[],
): DistanceReader {
  const { table, wanted, lengthUnit } = runwayCase;
  const read = (one: ReadyFigure) => {
    const reading = readOrReason(one, 'distance', (input) => conditionFor(input, conditions));
    if (reading instanceof CoreError) throw reading;
    return { ...reading, value: converted(reading.value, one.unit, lengthUnit) };
  };
  const reading = read(figure);
  const roll = rollNeededFor(table, wanted, effects);
  const ground = roll === undefined ? undefined : roll === 'the figure itself' ? reading.value : read(roll).value;
  return {
    book: reading.value,
    corrected: correctedDistance(reading.value, effects, ground, roll === 'the figure itself'),
    basis: basisOf(figure, reading, runwayCase.weightUnit ?? ''),
  };
}

function distancesOf(runwayCase: RunwayCase, conditions: Conditions, effects: readonly CorrectionEffect[]): BriefDistances | CoreError {
  try {
    const figure = runwayCase.table.figure(runwayCase.wanted, 'by-heading');
    const twice = countsTwice(figure, runwayCase.corrections);
    if (twice !== undefined) return twice;
    const distance = distanceAt(runwayCase, figure, conditions, effects);
    return { ...distance, ...runwayMargin(runwayCase.available, distance.corrected, runwayCase.factor) };
  } catch (thrown) {
    if (thrown instanceof CoreError && (leavesUnknown.includes(thrown.code) || thrown.code === 'correction-needs-roll')) return thrown;
    throw thrown;
  }
}

/** A fit that leaves a tailwind or a hot day out of the distance has to be looked at. */
function verdictOf(distances: BriefDistances | CoreError, uncounted: number): Verdict {
  if (distances instanceof CoreError) return 'UNKNOWN';
  return distances.verdict === 'OK' && uncounted > 0 ? 'CHECK' : distances.verdict;
}

/** What the table and the corrections leave out; where the table itself takes the wind, no tailwind is left out. */
function uncountedOf(
  { table, wanted, corrections }: RunwayCase,
  conditions: Conditions,
  distances: BriefDistances | CoreError,
): readonly [number, number] {
  const has = (from: 'behind' | 'above standard'): boolean => corrections.some(({ amount }) => typeof amount === 'object' && amount.from === from);
  const known = !(distances instanceof CoreError);
  const inTable = known && rolesOf(table.figure(wanted, 'by-heading')).has('headwind');
  const { headwindKnots } = conditions;
  const warmth = aboveStandardCelsius(conditions);
  return [
    !inTable && !has('behind') && headwindKnots <= -leastTailwindKnots ? -headwindKnots : 0,
    known && distances.basis.noTemperature && !has('above standard') && warmth > leastWarmthCelsius ? warmth : 0,
  ];
}

export function conditionsOf(runwayCase: RunwayCase, headwindKnots: number): Conditions {
  const { weight, weightUnit, elevationFeet, altimeterSettingHectopascals, temperatureCelsius } = runwayCase;
  return {
    weight,
    weightUnit,
    pressureAltitudeFeet: pressureAltitudeFeet(elevationFeet, altimeterSettingHectopascals),
    temperatureCelsius,
    headwindKnots,
  };
}

/**
 * The worst that the wind can do: no more headwind than its steady part gives from the worst direction, the tailwind and the crosswind of
 * its gusts. @source common-practice: a gust from ahead is not to be counted on, one from behind or across is.
 */
function worstWind({ runwayDegrees, windFromDegrees, windSector, windKnots, gustKnots }: RunwayCase): WindComponents {
  const steady = windWorst(runwayDegrees, windFromDegrees, windSector, windKnots);
  if (gustKnots === undefined) return steady;
  const gusting = windWorst(runwayDegrees, windFromDegrees, windSector, gustKnots);
  return { headwindKnots: Math.min(steady.headwindKnots, gusting.headwindKnots), crosswindKnots: gusting.crosswindKnots };
}

export function runwayBrief(runwayCase: RunwayCase): RunwayBrief {
  const wind = worstWind(runwayCase);
  const conditions = conditionsOf(runwayCase, wind.headwindKnots);
  const { pressureAltitudeFeet: altitudeFeet, temperatureCelsius } = conditions;
  const effects = runwayCase.corrections.map((correction) => effectOf(correction, wind.headwindKnots, aboveStandardCelsius(conditions)));
  const distances = distancesOf(runwayCase, conditions, effects);
  const [uncountedTailwindKnots, uncountedWarmthCelsius] = uncountedOf(runwayCase, conditions, distances);
  return {
    ...wind,
    pressureAltitudeFeet: altitudeFeet,
    densityAltitudeFeet: densityAltitudeFeet(altitudeFeet, temperatureCelsius),
    corrections: effects,
    distances,
    uncountedTailwindKnots,
    uncountedWarmthCelsius,
    verdict: verdictOf(distances, uncountedTailwindKnots + uncountedWarmthCelsius),
  };
}
