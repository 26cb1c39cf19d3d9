// The track over the ground of a hold and of its entry, flown step by step with the headings, times and turn radius of a brief.
// Nautical miles east and north of the fix, in the reference of the courses.
import type { Point } from './svg';

export type Side = 'right' | 'left';
export type EntryKind = 'direct' | 'parallel' | 'teardrop';

export interface HoldBriefing {
  readonly headingAtFixDegrees: number;
  readonly inboundDegrees: number;
  readonly turns: Side;
  readonly windFromDegrees: number;
  readonly windKnots: number;
  readonly entry: EntryKind;
  readonly firstHeadingDegrees: number;
  readonly firstTurn: Side;
  readonly secondHeadingDegrees: number;
  readonly secondTurn: Side;
  readonly outboundHeadingDegrees: number;
  readonly outboundSeconds: number;
  /** Straight from the fix to where the outbound leg ends. */
  readonly outboundEndNauticalMiles: number;
  readonly inboundHeadingDegrees: number;
  readonly inboundSeconds: number;
  readonly trueAirspeedKnots: number;
  readonly turnRadiusNauticalMiles: number;
}

export interface HoldPath {
  /** From the fix round and back to it. */
  readonly lap: readonly Point[];
  /** Places in the lap where the outbound leg begins and ends, and where the inbound leg begins. */
  readonly marks: { readonly outboundFrom: Point; readonly outboundTo: Point; readonly inboundFrom: Point };
  /** From the fix to the fix. */
  readonly entry: readonly Point[];
  /** Toward the fix, before it. */
  readonly arrival: readonly Point[];
}

const stepSeconds = 1;
const fix: Point = { x: 0, y: 0 };
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const turned = (degrees: number): number => ((degrees % 360) + 360) % 360;
const toward = (degrees: number, length: number): Point => ({ x: length * Math.sin(radians(degrees)), y: length * Math.cos(radians(degrees)) });

/** A flight that leaves its track behind. */
class Flight {
  readonly track: Point[];
  heading: number;
  private readonly speed: number;
  private readonly degreesPerSecond: number;
  private readonly wind: Point;

  constructor(from: Point, heading: number, { trueAirspeedKnots, turnRadiusNauticalMiles, windFromDegrees, windKnots }: HoldBriefing) {
    this.track = [from];
    this.heading = heading;
    this.speed = trueAirspeedKnots / 3600;
    this.degreesPerSecond = ((this.speed / turnRadiusNauticalMiles) * 180) / Math.PI;
    this.wind = toward(windFromDegrees + 180, windKnots / 3600);
  }

  get place(): Point {
    return this.track[this.track.length - 1] ?? fix;
  }

  /** Ground velocity, NM a second. */
  get velocity(): Point {
    const air = toward(this.heading, this.speed);
    return { x: air.x + this.wind.x, y: air.y + this.wind.y };
  }

  private drift(seconds: number): void {
    const { x, y } = this.velocity;
    this.track.push({ x: this.place.x + x * seconds, y: this.place.y + y * seconds });
  }

  straight(seconds: number): void {
    const steps = Math.max(1, Math.ceil(seconds / stepSeconds));
    for (let step = 0; step < steps; step += 1) this.drift(seconds / steps);
  }

  /** Turns by an angle, in steps; the heading of each step is that of its middle. */
  turnBy(degrees: number, side: Side, until: () => boolean = () => false): void {
    const steps = Math.ceil(degrees / (this.degreesPerSecond * stepSeconds) - 1e-9);
    const half = ((side === 'right' ? 1 : -1) * degrees) / steps / 2;
    for (let step = 0; step < steps && !until(); step += 1) {
      this.heading += half;
      this.drift(degrees / steps / this.degreesPerSecond);
      this.heading += half;
    }
  }

  /** The angle of a turn to this heading. */
  angleTo(heading: number, side: Side): number {
    return turned(side === 'right' ? heading - this.heading : this.heading - heading);
  }

  turnTo(heading: number, side: Side): void {
    this.turnBy(this.angleTo(heading, side), side);
  }

  /** Turns until the track over the ground leads to the fix, one full circle at most, and flies there. */
  home(side: Side): void {
    const across = (): number => this.velocity.x * -this.place.y - this.velocity.y * -this.place.x;
    const ahead = (): boolean => this.velocity.x * -this.place.x + this.velocity.y * -this.place.y > 0;
    let before = across();
    let begun = false;
    this.turnBy(360, side, () => {
      const now = across();
      const passed = begun && ahead() && now * before <= 0;
      before = now;
      begun = true;
      return passed;
    });
    this.track.push(fix);
  }
}

function lapOf(briefing: HoldBriefing): Pick<HoldPath, 'lap' | 'marks'> {
  const { turns, outboundHeadingDegrees, outboundSeconds, inboundHeadingDegrees, inboundSeconds } = briefing;
  const flight = new Flight(fix, inboundHeadingDegrees, briefing);
  const turnOutbound = flight.angleTo(outboundHeadingDegrees, turns);
  flight.turnBy(turnOutbound, turns);
  const outboundFrom = flight.place;
  flight.straight(outboundSeconds);
  const outboundTo = flight.place;
  // Both turns make one whole circle, also where the wind lets the first be none at all.
  flight.turnBy(360 - turnOutbound, turns);
  const inboundFrom = flight.place;
  flight.straight(inboundSeconds);
  return { lap: flight.track, marks: { outboundFrom, outboundTo, inboundFrom } };
}

/** How far before the fix, along the inbound course, this place and track would cut that course; undefined where they do not. */
function cutBeforeFix({ place, velocity }: Flight, inboundDegrees: number): { readonly seconds: number; readonly before: number } | undefined {
  const course = toward(inboundDegrees, 1);
  const across = (point: Point): number => point.x * course.y - point.y * course.x;
  const along = (point: Point): number => point.x * course.x + point.y * course.y;
  const seconds = -across(place) / across(velocity);
  const before = -along({ x: place.x + velocity.x * seconds, y: place.y + velocity.y * seconds });
  return Number.isFinite(seconds) && seconds > 0 && before > 0 ? { seconds, before } : undefined;
}

/**
 * The entry: the first turn, as long outbound as the pattern's outbound leg, and back to the fix; parallel by the intercept of the
 * inbound course where that lies before the fix, else straight to the fix. A sketch of the usual way: the pilot adjusts.
 */
function entryOf(briefing: HoldBriefing): Point[] {
  const flight = new Flight(fix, briefing.headingAtFixDegrees, briefing);
  flight.turnTo(briefing.firstHeadingDegrees, briefing.firstTurn);
  flight.straight(briefing.outboundSeconds);
  if (briefing.entry === 'parallel') {
    flight.turnTo(briefing.secondHeadingDegrees, briefing.secondTurn);
    const cut = cutBeforeFix(flight, briefing.inboundDegrees);
    if (cut !== undefined) {
      flight.straight(cut.seconds);
      return [...flight.track, fix];
    }
  }
  flight.home(briefing.secondTurn);
  return flight.track;
}

export function holdPath(briefing: HoldBriefing): HoldPath {
  const arriving = new Flight(fix, briefing.headingAtFixDegrees, briefing).velocity;
  const length = 2.5 * briefing.turnRadiusNauticalMiles;
  const speed = Math.hypot(arriving.x, arriving.y);
  const arrival = [{ x: (-arriving.x / speed) * length, y: (-arriving.y / speed) * length }, fix];
  return { ...lapOf(briefing), entry: entryOf(briefing), arrival };
}
