// The turns of a hold: how fast and how tight they are flown.
import { standardGravity } from '../basics/constants';
import type { TurnSide } from './entry';
import { degreesFromRadians, metresPerSecondFromKnots, nauticalMilesPerSecondFromKnots, radiansFromDegrees } from '../basics/units';

export interface TurnPerformance {
  readonly bankDegrees: number;
  readonly degreesPerSecond: number;
  /** Through the air. */
  readonly radiusNauticalMiles: number;
}

/** Turns are made at 3 degrees a second, or at the bank limit where that turns slower. @source aim, section 5-3-8; icao-8168, volume I, holding. */
const standardRateDegreesPerSecond = 3;

/**
 * tan(bank) = rate x speed / g; radius = speed / rate. Level, balanced turn.
 * @source icao-8168, volume II, turn parameters (there as 6355 tan(bank) / (pi V)); g of icao-7488.
 */
export function turnPerformance(trueAirspeedKnots: number, bankLimitDegrees: number): TurnPerformance {
  const metresPerSecond = metresPerSecondFromKnots(trueAirspeedKnots);
  const standardBank = degreesFromRadians(Math.atan((radiansFromDegrees(standardRateDegreesPerSecond) * metresPerSecond) / standardGravity));
  const limitedRate = degreesFromRadians((standardGravity * Math.tan(radiansFromDegrees(bankLimitDegrees))) / metresPerSecond);
  const degreesPerSecond = standardBank <= bankLimitDegrees ? standardRateDegreesPerSecond : limitedRate;
  return {
    bankDegrees: Math.min(standardBank, bankLimitDegrees),
    degreesPerSecond,
    radiusNauticalMiles: nauticalMilesPerSecondFromKnots(trueAirspeedKnots) / radiansFromDegrees(degreesPerSecond),
  };
}

export const wholeTurn = 2 * Math.PI;

export const signOf = (turns: TurnSide): 1 | -1 => (turns === 'right' ? 1 : -1);
