// The climb out of one field today: what the manual gives against what the departure needs.
import { readOrReason, type AircraftTable } from '../manual/openTable';
import { converted, type TableUnit } from '../manual/tableUnits';
import { pressureAltitudeFeet } from '../air/atmosphere';
import { climbGradientFeetPerNauticalMile, climbRateFeetPerMinute } from './climb';
import { CoreError } from '../basics/errors';
import { aboveStandardCelsius, basisOf, conditionFor, leastWarmthCelsius, type TableBasis } from './conditions';
import type { Verdict } from '../basics/verdict';
import { roundingShare } from '../basics/constants';

export interface ClimbCase {
  /** Read by its headings, else by its first three columns: weight, pressure altitude and temperature. */
  readonly table: AircraftTable;
  /** Header of the rate's column, feet per minute where the table says no other unit. */
  readonly wanted: string;
  readonly weight: number;
  readonly weightUnit?: TableUnit | undefined;
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
  readonly book: { readonly rateFeetPerMinute: number; readonly gradientFeetPerNauticalMile: number; readonly basis: TableBasis } | CoreError;
  /** So much warmer than the standard of a table without temperatures; else 0. */
  readonly uncountedWarmthCelsius: number;
  readonly verdict: Verdict;
}

/** The rate at the field, the thickest air of the climb; it falls with height, so look at the table higher up too. @source terminal-procedures, climb table. */
export function climbBrief(climb: ClimbCase): ClimbBrief {
  const altitudeFeet = pressureAltitudeFeet(climb.elevationFeet, climb.altimeterSettingHectopascals);
  const needed = climbRateFeetPerMinute(climb.gradientFeetPerNauticalMile, climb.groundspeedKnots);
  const known = { pressureAltitudeFeet: altitudeFeet, rateNeededFeetPerMinute: needed };
  const conditions = {
    weight: climb.weight,
    weightUnit: climb.weightUnit,
    pressureAltitudeFeet: altitudeFeet,
    temperatureCelsius: climb.temperatureCelsius,
    headwindKnots: 0,
  };
  const figure = climb.table.figure(climb.wanted, 'by-heading');
  const reading = readOrReason(figure, 'number', (input) => conditionFor(input, conditions));
  if (reading instanceof CoreError) return { ...known, book: reading, uncountedWarmthCelsius: 0, verdict: 'UNKNOWN' };
  const rate = converted(reading.value, figure.unit, 'ft/min');
  const basis = basisOf(figure, reading, climb.weightUnit ?? '');
  const book = { rateFeetPerMinute: rate, gradientFeetPerNauticalMile: climbGradientFeetPerNauticalMile(rate, climb.groundspeedKnots), basis };
  const warmth = aboveStandardCelsius(conditions);
  const uncountedWarmthCelsius = basis.noTemperature && warmth > leastWarmthCelsius ? warmth : 0;
  const reaches = rate >= needed * (1 - roundingShare);
  return { ...known, book, uncountedWarmthCelsius, verdict: !reaches ? 'NO' : uncountedWarmthCelsius > 0 ? 'CHECK' : 'OK' };
}
