// A simulated aircraft that flies a hold as it is briefed: headings, times and bank in, path out. It knows north, east and
// seconds, and nothing of how the brief was computed; fourth-order Runge-Kutta steps, headings turned by the bank.

export interface BriefedHold {
  readonly turns: 'right' | 'left';
  readonly inboundCourse: number;
  readonly inboundHeading: number;
  readonly outboundHeading: number;
  readonly outboundSeconds: number;
  readonly trueAirspeedKnots: number;
  readonly bankDegrees: number;
  readonly windFromDegrees: number;
  readonly windKnots: number;
}

export interface FlownLap {
  /** Distance of the aircraft right of the inbound course where the turn inbound ends, and where it passes the fix. */
  readonly offCourseAtRollout: number;
  readonly offCourseAtFix: number;
  readonly inboundSeconds: number;
  readonly inboundMiles: number;
  readonly lapSeconds: number;
  readonly widestMiles: number;
  readonly outboundEndMiles: number;
  /** From abeam the fix, going outbound, to the turn inbound. */
  readonly outboundFromAbeamSeconds: number | undefined;
  /** Track over the ground where the inbound leg begins, against the inbound course. */
  readonly trackError: number;
}

interface State {
  readonly east: number;
  readonly north: number;
  readonly heading: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const signedAngle = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;

export function flyHold(hold: BriefedHold, stepSeconds = 0.25): FlownLap {
  const turnSign = hold.turns === 'right' ? 1 : -1;
  const gravity = 9.80665;
  const rate = (turnSign * ((gravity * Math.tan(radians(hold.bankDegrees))) / ((hold.trueAirspeedKnots * 1852) / 3600)) * 180) / Math.PI;
  const wind = { east: -hold.windKnots * Math.sin(radians(hold.windFromDegrees)), north: -hold.windKnots * Math.cos(radians(hold.windFromDegrees)) };
  const velocity = (heading: number) => ({
    east: (hold.trueAirspeedKnots * Math.sin(radians(heading)) + wind.east) / 3600,
    north: (hold.trueAirspeedKnots * Math.cos(radians(heading)) + wind.north) / 3600,
  });
  const course = { east: Math.sin(radians(hold.inboundCourse)), north: Math.cos(radians(hold.inboundCourse)) };
  const beyondFix = ({ east, north }: State): number => east * course.east + north * course.north;
  const rightOfCourse = ({ east, north }: State): number => east * course.north - north * course.east;

  let state: State = { east: 0, north: 0, heading: hold.inboundHeading };
  let clock = 0;
  let widest = 0;
  let abeam: number | undefined;
  /** Advances in steps no longer than asked, and looks at each. */
  const fly = (seconds: number, turnRate: number, watchAbeam: boolean): void => {
    const steps = Math.max(1, Math.ceil(seconds / stepSeconds));
    const step = seconds / steps;
    for (let index = 0; index < steps; index++) {
      const [start, middle, end] = [0, step / 2, step].map((after) => velocity(state.heading + turnRate * after));
      if (start === undefined || middle === undefined || end === undefined) throw new Error('no velocity');
      const before = state;
      state = {
        east: state.east + (step / 6) * (start.east + 4 * middle.east + end.east),
        north: state.north + (step / 6) * (start.north + 4 * middle.north + end.north),
        heading: state.heading + turnRate * step,
      };
      if (watchAbeam && abeam === undefined && beyondFix(before) > 0 && beyondFix(state) <= 0) {
        abeam = clock + (step * beyondFix(before)) / (beyondFix(before) - beyondFix(state));
      }
      clock += step;
      widest = Math.max(widest, turnSign * rightOfCourse(state));
    }
  };
  /** The turn in the direction of the hold that ends on this heading. */
  const turnTo = (heading: number, watchAbeam: boolean): void => {
    const turned = (((turnSign * (heading - state.heading)) % 360) + 360) % 360;
    fly(turned / Math.abs(rate), rate, watchAbeam);
  };

  turnTo(hold.outboundHeading, true);
  fly(hold.outboundSeconds, 0, true);
  const outboundEnd = { clock, miles: Math.hypot(state.east, state.north) };
  turnTo(hold.inboundHeading, false);
  const rollout = { clock, state };
  const inbound = velocity(state.heading);
  const closing = inbound.east * course.east + inbound.north * course.north;
  fly(Math.max(0, -beyondFix(state) / closing), 0, false);
  return {
    offCourseAtRollout: rightOfCourse(rollout.state),
    offCourseAtFix: rightOfCourse(state),
    inboundSeconds: clock - rollout.clock,
    inboundMiles: Math.hypot(rollout.state.east - state.east, rollout.state.north - state.north),
    lapSeconds: clock,
    widestMiles: widest,
    outboundEndMiles: outboundEnd.miles,
    outboundFromAbeamSeconds: abeam === undefined ? undefined : outboundEnd.clock - abeam,
    trackError: signedAngle((Math.atan2(inbound.east, inbound.north) * 180) / Math.PI - hold.inboundCourse),
  };
}
