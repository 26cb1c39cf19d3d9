// Everything of one take-off or landing on one runway: air, wind, the manual's distance, its corrections, the margin.
import { readOrReason, type AircraftTable } from './aircraftTable';
import { densityAltitudeFeet, pressureAltitudeFeet } from './atmosphere';
import { CoreError } from './errors';
import { runwayMargin, type RunwayMargin } from './runway';
import { leastTailwindKnots } from './runwayWinds';
import type { Verdict } from './verdict';
import { windComponents, type WindComponents } from './wind';

/** An amount that the wind of the day gives: this share of the knots from ahead, or of those from behind. */
export interface WindAmount {
  readonly from: 'ahead' | 'behind';
  readonly share: number;
}

/** `percent` more distance for each `perAmount` of `amount`. */
export interface Correction {
  readonly name: string;
  readonly percent: number;
  readonly perAmount: number;
  readonly amount: number | WindAmount;
}

export interface RunwayCase {
  /** Its first three columns are weight, pressure altitude and temperature. */
  readonly table: AircraftTable;
  /** Header of the distance's column. */
  readonly wanted: string;
  readonly weight: number;
  readonly runwayDegrees: number;
  /** In the unit of the table's distances. */
  readonly available: number;
  readonly elevationFeet: number;
  readonly altimeterSettingHectopascals: number;
  readonly temperatureCelsius: number;
  /** In the reference of runwayDegrees. */
  readonly windFromDegrees: number;
  readonly windKnots: number;
  readonly factor: number;
  readonly corrections: readonly Correction[];
}

export interface BriefDistances extends RunwayMargin {
  readonly book: number;
  readonly corrected: number;
}

export interface CorrectionEffect {
  readonly name: string;
  readonly percent: number;
}

export interface RunwayBrief extends WindComponents {
  readonly pressureAltitudeFeet: number;
  readonly densityAltitudeFeet: number;
  readonly corrections: readonly CorrectionEffect[];
  /** Or why the table has no answer for this case. */
  readonly distances: BriefDistances | CoreError;
  /** A tailwind for which no correction stands in the list, so that the distance takes no account of it; else 0. */
  readonly uncountedTailwindKnots: number;
  readonly verdict: Verdict;
}

function amountOf({ amount }: Correction, headwindKnots: number): number {
  if (typeof amount === 'number') return amount;
  return amount.share * Math.max(0, amount.from === 'ahead' ? headwindKnots : -headwindKnots);
}

function effectOf(correction: Correction, headwindKnots: number): CorrectionEffect {
  const percent = (correction.percent * amountOf(correction, headwindKnots)) / correction.perAmount + 0;
  if (percent <= -100) throw new CoreError('correction-too-large', { name: correction.name, percent });
  return { name: correction.name, percent };
}

/** The corrections multiply one another. @source safety-sense-7, worked example: each condition's factor is applied to the last. */
export const correctedDistance = (book: number, effects: readonly CorrectionEffect[]): number =>
  effects.reduce((distance, { percent }) => distance * (1 + percent / 100), book);

function distancesOf(runwayCase: RunwayCase, altitudeFeet: number, effects: readonly CorrectionEffect[]): BriefDistances | CoreError {
  const { table, wanted, weight, temperatureCelsius } = runwayCase;
  const book = readOrReason(table, wanted, 'distance', [weight, altitudeFeet, temperatureCelsius]);
  if (book instanceof CoreError) return book;
  const corrected = correctedDistance(book, effects);
  return { book, corrected, ...runwayMargin(runwayCase.available, corrected, runwayCase.factor) };
}

/** A fit that leaves a tailwind out of the distance has to be looked at. */
function verdictOf(distances: BriefDistances | CoreError, uncountedTailwindKnots: number): Verdict {
  if (distances instanceof CoreError) return 'UNKNOWN';
  return distances.verdict === 'OK' && uncountedTailwindKnots > 0 ? 'CHECK' : distances.verdict;
}

export function runwayBrief(runwayCase: RunwayCase): RunwayBrief {
  const { corrections, elevationFeet, altimeterSettingHectopascals, temperatureCelsius } = runwayCase;
  const wind = windComponents(runwayCase.runwayDegrees, runwayCase.windFromDegrees, runwayCase.windKnots);
  const altitudeFeet = pressureAltitudeFeet(elevationFeet, altimeterSettingHectopascals);
  const effects = corrections.map((correction) => effectOf(correction, wind.headwindKnots));
  const distances = distancesOf(runwayCase, altitudeFeet, effects);
  const counted = corrections.some(({ amount }) => typeof amount === 'object' && amount.from === 'behind');
  const uncountedTailwindKnots = !counted && wind.headwindKnots <= -leastTailwindKnots ? -wind.headwindKnots : 0;
  return {
    ...wind,
    pressureAltitudeFeet: altitudeFeet,
    densityAltitudeFeet: densityAltitudeFeet(altitudeFeet, temperatureCelsius),
    corrections: effects,
    distances,
    uncountedTailwindKnots,
    verdict: verdictOf(distances, uncountedTailwindKnots),
  };
}
