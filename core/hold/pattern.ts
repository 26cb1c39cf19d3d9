// The racetrack flown in a wind: the outbound heading and time that bring the aircraft back over the fix on the inbound
// course with the asked leg, both turns drifting.
// Still flight: constant wind, true airspeed and bank, turns begun and ended at once.
import { CoreError } from '../basics/errors';
import { asCourse, type TurnSide } from './entry';
import { degreesFromRadians, nauticalMilesPerSecondFromKnots, radiansFromDegrees } from '../basics/units';
import { windComponents, windTriangle } from '../air/wind';
import { type Air, type Drift, flown, type Lap, lapOf, outboundEndNauticalMiles } from './lap';
import { signOf, type TurnPerformance, turnPerformance, wholeTurn } from './turn';

/**
 * What is asked of the legs. time: the inbound leg, from the end of the turn to the fix, takes so long. outbound: the outbound
 * leg ends so far from the fix, which is how a controller or a chart gives miles. inbound: the inbound leg itself is so long.
 * @source aim, section 5-3-8, DME and along-track distance: the controller or the chart specifies the length of the outbound leg,
 * and its end is determined by the DME or along-track readout; Pilot/Controller Glossary: along-track distance is the horizontal
 * distance between the aircraft and a fix, so it is taken straight from the fix and not along the course. With the DME station
 * at the fix the two readouts are one; a station farther off shows the same leg a little later, by about across^2 / (2 x leg).
 */
export type HoldLeg =
  | { readonly kind: 'time'; readonly seconds: number }
  | { readonly kind: 'outbound'; readonly nauticalMiles: number }
  | { readonly kind: 'inbound'; readonly nauticalMiles: number };

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

export interface HoldPattern extends Lap {
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
}

/** Wind as seen along the inbound course, the holding side being positive whichever way the turns go. */
function driftOf({ inboundDegrees, turns, windFromDegrees, windKnots }: HoldFlight): Drift {
  const { headwindKnots, crosswindKnots } = windComponents(inboundDegrees, windFromDegrees, windKnots);
  return { along: -nauticalMilesPerSecondFromKnots(headwindKnots), across: -signOf(turns) * nauticalMilesPerSecondFromKnots(crosswindKnots) };
}

const searchSteps = 256;

/**
 * The longest inbound leg with which the outbound leg ends this far from the fix. Beyond the span searched, the end is farther
 * than asked whatever the wind: two turns displace the aircraft by their diameters and by the wind during a circle at the most.
 */
function inboundForOutboundEnd(air: Air, asked: number): number {
  const { speed, drift, radiansPerSecond } = air;
  const end = (inbound: number): number => outboundEndNauticalMiles(lapOf(air, inbound, 0));
  const span = asked + (4 * speed + wholeTurn * Math.hypot(drift.along, drift.across)) / radiansPerSecond;
  let [least, far] = [end(span), span];
  for (let step = searchSteps - 1; step >= 0; step -= 1) {
    const near = (span * step) / searchSteps;
    const reached = end(near);
    least = Math.min(least, reached);
    if (reached <= asked) return halved((inbound) => end(inbound) > asked, near, far);
    far = near;
  }
  throw new CoreError('hold-leg-within-turn', { nauticalMiles: asked, leastNauticalMiles: least });
}

/** Where something begins to hold, between a place where it does not and one where it does: halved until no two numbers are left apart. */
function halved(holds: (value: number) => boolean, not: number, does: number): number {
  let [low, high] = [not, does];
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return low;
}

function inboundMiles(leg: HoldLeg, air: Air, groundspeed: number): number {
  if (leg.kind === 'time') return groundspeed * leg.seconds;
  return leg.kind === 'inbound' ? leg.nauticalMiles : inboundForOutboundEnd(air, leg.nauticalMiles);
}

/** @source aim, section 5-3-8: of a timed hold it is the inbound leg that is timed, and the outbound is adjusted for it. */
export function holdPattern(flight: HoldFlight): HoldPattern {
  const { inboundDegrees, trueAirspeedKnots, windFromDegrees, windKnots, leg } = flight;
  if (windKnots >= trueAirspeedKnots) throw new CoreError('hold-wind-too-strong', { windKnots, trueAirspeedKnots });
  const turn = turnPerformance(trueAirspeedKnots, flight.bankLimitDegrees);
  const inbound = windTriangle(inboundDegrees, trueAirspeedKnots, windFromDegrees, windKnots);
  const groundspeed = nauticalMilesPerSecondFromKnots(inbound.groundspeedKnots);
  const air: Air = {
    speed: nauticalMilesPerSecondFromKnots(trueAirspeedKnots),
    drift: driftOf(flight),
    radiansPerSecond: radiansFromDegrees(turn.degreesPerSecond),
    startRadians: signOf(flight.turns) * radiansFromDegrees(inbound.correctionDegrees),
  };
  const inboundNauticalMiles = inboundMiles(leg, air, groundspeed);
  const inboundSeconds = leg.kind === 'time' ? leg.seconds : inboundNauticalMiles / groundspeed;
  const lap = lapOf(air, inboundNauticalMiles, inboundSeconds);
  const [, outbound] = lap.segments;
  const circleSeconds = wholeTurn / air.radiansPerSecond;
  return {
    ...lap,
    flight,
    turn,
    inboundHeadingDegrees: asCourse(inbound.headingDegrees),
    outboundHeadingDegrees: asCourse(inboundDegrees + signOf(flight.turns) * degreesFromRadians(outbound.startRadians)),
    outboundSeconds: outbound.seconds,
    inboundSeconds,
    inboundNauticalMiles,
    lapSeconds: circleSeconds + outbound.seconds + inboundSeconds,
    isRacetrack: inboundNauticalMiles + air.drift.along * circleSeconds > 0 && Math.cos(outbound.startRadians) < 0,
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
export function placeAfter(pattern: HoldPattern, seconds: number): HoldPlace {
  const { along, across, heading } = flown(pattern, seconds);
  const { inboundDegrees, turns } = pattern.flight;
  return {
    alongNauticalMiles: along,
    acrossNauticalMiles: across,
    headingDegrees: asCourse(inboundDegrees + signOf(turns) * degreesFromRadians(heading)),
  };
}
