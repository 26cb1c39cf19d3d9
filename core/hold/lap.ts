// The four parts of one lap, turn, outbound, turn, inbound, and where the aircraft is at each moment of it.
import { wholeTurn } from './turn';

/** One part of the lap: a turn, or straight. Angles from the inbound course, positive in the direction of the turns. */
interface Segment {
  readonly seconds: number;
  readonly startRadians: number;
  readonly radiansPerSecond: number;
}

/** Along the inbound course onward, and across it on the holding side; NM a second. */
export interface Drift {
  readonly along: number;
  readonly across: number;
}

export interface Lap {
  /** Turn outbound, outbound, turn inbound, inbound. */
  readonly segments: readonly [Segment, Segment, Segment, Segment];
  readonly speed: number;
  readonly drift: Drift;
}

const positiveTurn = (radians: number): number => ((radians % wholeTurn) + wholeTurn) % wholeTurn;

interface StraightLeg {
  readonly seconds: number;
  readonly headingRadians: number;
}

/** What does not change with the length of the legs. Angles from the inbound course, distances in NM, times in seconds. */
export interface Air {
  readonly speed: number;
  readonly drift: Drift;
  readonly radiansPerSecond: number;
  /** Heading of the inbound leg. */
  readonly startRadians: number;
}

/**
 * Heading and time of the outbound leg. The two turns make one whole circle, whose path through the air closes, so over the
 * ground they displace the aircraft by the wind during that circle and by nothing else. What is left to reach the start of the
 * inbound leg, (-leg, 0) - wind x circle = d, is flown straight: |d - wind t| = speed x t, a quadratic in t with one root above
 * zero for a wind below the airspeed. No iteration, no approximation beyond the still flight named above.
 */
function outboundLeg({ speed, drift, radiansPerSecond }: Air, inboundNauticalMiles: number): StraightLeg {
  const circleSeconds = wholeTurn / radiansPerSecond;
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

/** The four parts of a lap with so long an inbound leg. */
export function lapOf(air: Air, inboundNauticalMiles: number, inboundSeconds: number): Lap {
  const { speed, drift, radiansPerSecond, startRadians } = air;
  const { seconds, headingRadians } = outboundLeg(air, inboundNauticalMiles);
  const turned = positiveTurn(headingRadians - startRadians);
  return {
    speed,
    drift,
    segments: [
      { seconds: turned / radiansPerSecond, startRadians, radiansPerSecond },
      { seconds, startRadians: headingRadians, radiansPerSecond: 0 },
      { seconds: (wholeTurn - turned) / radiansPerSecond, startRadians: headingRadians, radiansPerSecond },
      { seconds: inboundSeconds, startRadians, radiansPerSecond: 0 },
    ],
  };
}

/** Straight from the fix to where the turn inbound begins. */
export function outboundEndNauticalMiles(lap: Lap): number {
  const [turnOut, outbound] = lap.segments;
  const { along, across } = flown(lap, turnOut.seconds + outbound.seconds);
  return Math.hypot(along, across);
}

/** Over the ground from the fix after so many seconds of a lap, and the heading then. */
export function flown({ segments, speed, drift }: Lap, seconds: number): Drift & { readonly heading: number } {
  let [left, along, across, heading] = [seconds, drift.along * seconds, drift.across * seconds, segments[0].startRadians];
  for (const segment of segments) {
    const spent = Math.min(left, segment.seconds);
    const [start, rate] = [segment.startRadians, segment.radiansPerSecond];
    heading = start + rate * spent;
    if (rate === 0) {
      along += speed * spent * Math.cos(start);
      across += speed * spent * Math.sin(start);
    } else {
      along += (speed / rate) * (Math.sin(heading) - Math.sin(start));
      across -= (speed / rate) * (Math.cos(heading) - Math.cos(start));
    }
    left -= spent;
    if (left <= 0) break;
  }
  return { along, across, heading };
}
