// One leg over the Earth: its length, its course anywhere on it, and the time that a stretch of it takes in a steady wind.
import { speedsAlong, type WindVector } from '../air/windsAloft';
import { asTrueDegrees, turnDegrees, type TrueDegrees } from '../basics/units';
import { geodesicLeg, pointOnLeg, type Position } from '../navigation/geodesy';

export interface LegLine {
  readonly distanceNauticalMiles: number;
  readonly middle: Position;
  /** The course in the middle, which is the one measured on a chart. */
  readonly middleCourse: TrueDegrees;
  readonly courseAt: (nauticalMiles: number) => TrueDegrees;
}

/** Of a leg that turns no more than this, the course between its ends and its middle is a parabola within 0.0001 degree. */
const gentleTurnDegrees = 3;

/** Throws for the same point twice. */
export function legLine(from: Position, to: Position): LegLine {
  const { distanceNauticalMiles, initialCourse, finalCourse } = geodesicLeg(from, to);
  const at = (nauticalMiles: number) => pointOnLeg(from, initialCourse, nauticalMiles);
  const middle = at(distanceNauticalMiles / 2);
  const [half, whole] = [turnDegrees(initialCourse, middle.course), turnDegrees(initialCourse, finalCourse)];
  const gentle = Math.abs(half) < gentleTurnDegrees && Math.abs(whole) < gentleTurnDegrees;
  return {
    distanceNauticalMiles,
    middle: middle.position,
    middleCourse: middle.course,
    courseAt: (nauticalMiles) => {
      if (!gentle) return at(Math.max(0, Math.min(distanceNauticalMiles, nauticalMiles))).course;
      const x = nauticalMiles / distanceNauticalMiles;
      return asTrueDegrees(initialCourse + x * (4 * half - whole) + x * x * (2 * whole - 4 * half));
    },
  };
}

/** What is flown over a stretch, the same all the way. */
export interface SteadyFlight {
  readonly trueAirspeedKnots: number;
  readonly wind: WindVector;
  readonly altitudeFeet: number;
  /** The leg flown from its end to its start. */
  readonly backwards?: boolean;
}

const minutesPerHour = 60;
/** Minutes by which halving the steps may still change the answer. */
const settledMinutes = 0.002;
const mostHalvings = 14;

/** Simpson's rule, the stretch halved until that changes nothing: only near a pole does a course turn fast. @source common-practice */
function simpson(of: (x: number) => number, from: number, to: number, ends: readonly [number, number, number], halvings: number): number {
  const [low, middle, high] = ends;
  const half = (from + to) / 2;
  const [lower, upper] = [of((from + half) / 2), of((half + to) / 2)];
  const whole = ((to - from) / 6) * (low + 4 * middle + high);
  const halved = ((to - from) / 12) * (low + 4 * lower + 2 * middle + 4 * upper + high);
  if (halvings >= mostHalvings || Math.abs(halved - whole) < settledMinutes) return halved + (halved - whole) / 15;
  return simpson(of, from, half, [low, lower, middle], halvings + 1) + simpson(of, half, to, [middle, upper, high], halvings + 1);
}

/** Minutes over the part of the leg between two distances from its start: the integral of 1 / groundspeed along the turning course. */
export function minutesOver(
  { courseAt }: LegLine,
  fromNauticalMiles: number,
  toNauticalMiles: number,
  { trueAirspeedKnots, wind, altitudeFeet, backwards = false }: SteadyFlight,
): number {
  if (toNauticalMiles <= fromNauticalMiles) return 0;
  const minutesPerMile = (nauticalMiles: number): number =>
    minutesPerHour / speedsAlong(trueAirspeedKnots, wind, courseAt(nauticalMiles) + (backwards ? 180 : 0), altitudeFeet).groundspeedKnots;
  const half = (fromNauticalMiles + toNauticalMiles) / 2;
  const ends = [minutesPerMile(fromNauticalMiles), minutesPerMile(half), minutesPerMile(toNauticalMiles)] as const;
  return simpson(minutesPerMile, fromNauticalMiles, toNauticalMiles, ends, 0);
}
