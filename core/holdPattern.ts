// The racetrack flown in a wind: the outbound heading and time that bring the aircraft back over the fix on the inbound
// course with the asked inbound leg, both turns drifting, and where the aircraft is at each moment of the lap.
// Still flight: constant wind, true airspeed and bank, turns begun and ended at once.
import { standardGravity } from './constants';
import { CoreError } from './errors';
import { asCourse, type TurnSide } from './holding';
import { degreesFromRadians, metresPerSecondFromKnots, nauticalMilesPerSecondFromKnots, radiansFromDegrees } from './units';
import { windComponents, windTriangle } from './wind';

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

/** What the inbound leg, from the end of the turn to the fix, must measure. */
export type HoldLeg = { readonly kind: 'time'; readonly seconds: number } | { readonly kind: 'distance'; readonly nauticalMiles: number };

export interface HoldFlight {
  readonly inboundDegrees: number;
  readonly turns: TurnSide;
  readonly trueAirspeedKnots: number;
  /** In the reference of the course. */
  readonly windFromDegrees: number;
  readonly windKnots: number;
  readonly bankLimitDegrees: number;
  readonly leg: HoldLeg;
}

/** One part of the lap: a turn, or straight. Angles from the inbound course, positive in the direction of the turns. */
interface Segment {
  readonly seconds: number;
  readonly startRadians: number;
  readonly radiansPerSecond: number;
}

/** Along the inbound course onward, and across it on the holding side; NM a second. */
interface Drift {
  readonly along: number;
  readonly across: number;
}

export interface HoldPattern {
  readonly flight: HoldFlight;
  readonly turn: TurnPerformance;
  readonly inboundHeadingDegrees: number;
  readonly outboundHeadingDegrees: number;
  readonly outboundSeconds: number;
  readonly inboundSeconds: number;
  readonly inboundNauticalMiles: number;
  readonly lapSeconds: number;
  /** False where the wind is so strong for this leg that the leg called outbound does not lead or point outbound. */
  readonly isRacetrack: boolean;
  /** Turn outbound, outbound, turn inbound, inbound. */
  readonly segments: readonly [Segment, Segment, Segment, Segment];
  readonly speed: number;
  readonly drift: Drift;
}

const wholeTurn = 2 * Math.PI;
const positiveTurn = (radians: number): number => ((radians % wholeTurn) + wholeTurn) % wholeTurn;
const signOf = (turns: TurnSide): 1 | -1 => (turns === 'right' ? 1 : -1);

/** Wind as seen along the inbound course, the holding side being positive whichever way the turns go. */
function driftOf({ inboundDegrees, turns, windFromDegrees, windKnots }: HoldFlight): Drift {
  const { headwindKnots, crosswindKnots } = windComponents(inboundDegrees, windFromDegrees, windKnots);
  return { along: -nauticalMilesPerSecondFromKnots(headwindKnots), across: -signOf(turns) * nauticalMilesPerSecondFromKnots(crosswindKnots) };
}

interface StraightLeg {
  readonly seconds: number;
  readonly headingRadians: number;
}

/**
 * Heading and time of the outbound leg. The two turns make one whole circle, whose path through the air closes, so over the
 * ground they displace the aircraft by the wind during that circle and by nothing else. What is left to reach the start of the
 * inbound leg, (-leg, 0) - wind x circle = d, is flown straight: |d - wind t| = speed x t, a quadratic in t with one root above
 * zero for a wind below the airspeed. No iteration, no approximation beyond the still flight named above.
 */
function outboundLeg(speed: number, drift: Drift, circleSeconds: number, inboundNauticalMiles: number): StraightLeg {
  const along = -inboundNauticalMiles - drift.along * circleSeconds;
  const across = -drift.across * circleSeconds;
  const squared = along ** 2 + across ** 2;
  if (squared === 0) return { seconds: 0, headingRadians: Math.PI };
  const margin = speed ** 2 - drift.along ** 2 - drift.across ** 2;
  const downwind = along * drift.along + across * drift.across;
  const root = Math.sqrt(downwind ** 2 + margin * squared);
  // Of two forms of the same root, the one that does not subtract near equals.
  const seconds = downwind > 0 ? squared / (downwind + root) : (root - downwind) / margin;
  return { seconds, headingRadians: Math.atan2(across - drift.across * seconds, along - drift.along * seconds) };
}

/** @source aim, section 5-3-8: the inbound leg is the one that is timed or measured, and the outbound is adjusted for it. */
export function holdPattern(flight: HoldFlight): HoldPattern {
  const { inboundDegrees, trueAirspeedKnots, windFromDegrees, windKnots, leg } = flight;
  if (windKnots >= trueAirspeedKnots) throw new CoreError('hold-wind-too-strong', { windKnots, trueAirspeedKnots });
  const turn = turnPerformance(trueAirspeedKnots, flight.bankLimitDegrees);
  const inbound = windTriangle(inboundDegrees, trueAirspeedKnots, windFromDegrees, windKnots);
  const groundspeed = nauticalMilesPerSecondFromKnots(inbound.groundspeedKnots);
  const inboundSeconds = leg.kind === 'time' ? leg.seconds : leg.nauticalMiles / groundspeed;
  const inboundNauticalMiles = groundspeed * inboundSeconds;
  const [speed, drift, rate] = [nauticalMilesPerSecondFromKnots(trueAirspeedKnots), driftOf(flight), radiansFromDegrees(turn.degreesPerSecond)];
  const outbound = outboundLeg(speed, drift, wholeTurn / rate, inboundNauticalMiles);
  const startRadians = signOf(flight.turns) * radiansFromDegrees(inbound.correctionDegrees);
  const turned = positiveTurn(outbound.headingRadians - startRadians);
  return {
    flight,
    turn,
    inboundHeadingDegrees: asCourse(inbound.headingDegrees),
    outboundHeadingDegrees: asCourse(inboundDegrees + signOf(flight.turns) * degreesFromRadians(outbound.headingRadians)),
    outboundSeconds: outbound.seconds,
    inboundSeconds,
    inboundNauticalMiles,
    lapSeconds: wholeTurn / rate + outbound.seconds + inboundSeconds,
    isRacetrack: inboundNauticalMiles + (drift.along * wholeTurn) / rate > 0 && Math.cos(outbound.headingRadians) < 0,
    segments: [
      { seconds: turned / rate, startRadians, radiansPerSecond: rate },
      { seconds: outbound.seconds, startRadians: outbound.headingRadians, radiansPerSecond: 0 },
      { seconds: (wholeTurn - turned) / rate, startRadians: outbound.headingRadians, radiansPerSecond: rate },
      { seconds: inboundSeconds, startRadians, radiansPerSecond: 0 },
    ],
    speed,
    drift,
  };
}

export interface HoldPlace {
  /** Past the fix along the inbound course; negative before it. */
  readonly alongNauticalMiles: number;
  /** From the inbound course, positive on the holding side. */
  readonly acrossNauticalMiles: number;
  readonly headingDegrees: number;
}

/** Where the aircraft is this long after the fix, within one lap. */
export function placeAfter({ flight, segments, speed, drift }: HoldPattern, seconds: number): HoldPlace {
  let [left, along, across, heading] = [seconds, drift.along * seconds, drift.across * seconds, segments[0].startRadians];
  for (const segment of segments) {
    const flown = Math.min(left, segment.seconds);
    const [start, rate] = [segment.startRadians, segment.radiansPerSecond];
    heading = start + rate * flown;
    if (rate === 0) {
      along += speed * flown * Math.cos(start);
      across += speed * flown * Math.sin(start);
    } else {
      along += (speed / rate) * (Math.sin(heading) - Math.sin(start));
      across -= (speed / rate) * (Math.cos(heading) - Math.cos(start));
    }
    left -= flown;
    if (left <= 0) break;
  }
  return {
    alongNauticalMiles: along,
    acrossNauticalMiles: across,
    headingDegrees: asCourse(flight.inboundDegrees + signOf(flight.turns) * degreesFromRadians(heading)),
  };
}
