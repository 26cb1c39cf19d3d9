// The climb out of one field today: what the manual gives against what the departure needs.
import { readOrReason, type AircraftTable } from './aircraftTable';
import { pressureAltitudeFeet } from './atmosphere';
import { climbGradientFeetPerNauticalMile, climbRateFeetPerMinute } from './climb';
import { CoreError } from './errors';
import type { Verdict } from './verdict';

export interface ClimbCase {
  /** Its first three columns are weight, pressure altitude and temperature. */
  readonly table: AircraftTable;
  /** Header of the rate's column, feet per minute. */
  readonly wanted: string;
  readonly weight: number;
  readonly elevationFeet: number;
  readonly altimeterSettingHectopascals: number;
  readonly temperatureCelsius: number;
  readonly gradientFeetPerNauticalMile: number;
  readonly groundspeedKnots: number;
}

export interface ClimbBrief {
  readonly pressureAltitudeFeet: number;
  readonly rateNeededFeetPerMinute: number;
  /** Or why the table has no answer. */
  readonly book: { readonly rateFeetPerMinute: number; readonly gradientFeetPerNauticalMile: number } | CoreError;
  readonly verdict: Verdict;
}

/** A rate this little below the one needed, relative to it, is the same: binary rounding. */
const roundingShare = 1e-9;

/** The rate at the field, the thickest air of the climb; it falls with height, so look at the table higher up too. @source terminal-procedures, climb table. */
export function climbBrief(climb: ClimbCase): ClimbBrief {
  const altitudeFeet = pressureAltitudeFeet(climb.elevationFeet, climb.altimeterSettingHectopascals);
  const needed = climbRateFeetPerMinute(climb.gradientFeetPerNauticalMile, climb.groundspeedKnots);
  const rate = readOrReason(climb.table, climb.wanted, 'number', [climb.weight, altitudeFeet, climb.temperatureCelsius]);
  if (rate instanceof CoreError) return { pressureAltitudeFeet: altitudeFeet, rateNeededFeetPerMinute: needed, book: rate, verdict: 'UNKNOWN' };
  const book = { rateFeetPerMinute: rate, gradientFeetPerNauticalMile: climbGradientFeetPerNauticalMile(rate, climb.groundspeedKnots) };
  return { pressureAltitudeFeet: altitudeFeet, rateNeededFeetPerMinute: needed, book, verdict: rate >= needed * (1 - roundingShare) ? 'OK' : 'NO' };
}
