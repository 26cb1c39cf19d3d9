// Holding patterns without wind: the inbound course, the entry, and the published speed limits.
// The pattern flown in a wind is in holdPattern.ts.
import { CoreError } from '../basics/errors';
import { turnDegrees, wrapDegrees } from '../basics/units';

export type TurnSide = 'right' | 'left';
export type HoldEntry = 'direct' | 'parallel' | 'teardrop';

/** A direction as a course is spoken: north is 360, never 0. */
export function asCourse(degrees: number): number {
  const wrapped = wrapDegrees(degrees);
  return wrapped === 0 ? 360 : wrapped;
}

/**
 * The inbound course of a hold that lies on this side of the fix: toward the fix, so the reciprocal. Over 0, up to 360.
 * @source aim, section 5-3-8, the holding pattern and its inbound leg.
 */
export const inboundCourseOfSide = (sideDegrees: number): number => asCourse(sideDegrees + 180);

/**
 * The side on which to hold where a compass point and a radial are both given ("west on the 086 radial"): of the two ends
 * of the radial's line through the fix, the one toward that compass point. A fix away from the station has both.
 * @source aim, section 5-3-8, content of a holding clearance. Refused where the point is over 45 degrees off the line.
 */
export function sideOnRadial(pointDegrees: number, radialDegrees: number): number {
  const away = Math.abs(turnDegrees(pointDegrees, radialDegrees));
  if (away > 45 && away < 135) {
    throw new CoreError('hold-side-off-radial', { point: pointDegrees, radial: radialDegrees });
  }
  return away <= 45 ? radialDegrees : wrapDegrees(radialDegrees + 180);
}

/** Widths of the teardrop and parallel sectors, degrees either side of the outbound course. @source aim, figure 5-3-4; usn-p821, figure 3-8. */
const teardropDegrees = 70;
const parallelDegrees = 110;
/** Within this of a sector line either entry is accepted. @source usn-p821, with figure 3-8. */
const eitherEntryDegrees = 5;
/** Far below what a heading can be read to: keeps 0.1 + 0.2 from deciding on which side of a line a heading lies. */
const roundingDegrees = 1e-9;

export interface EntryAdvice {
  readonly entry: HoldEntry;
  /** The entry across a sector line no more than 5 degrees away. */
  readonly other: HoldEntry | undefined;
}

/**
 * The entry. For right turns, by the turn from the heading at the fix to the outbound course: up to 70 degrees right of the
 * heading teardrop, up to 110 degrees left parallel, else direct; mirrored for left turns.
 * @source usn-p821, figure 3-8; aim, section 5-3-8 and figure 5-3-4.
 * On a line: teardrop before parallel (heading along the outbound course), direct before either of the others.
 */
export function holdEntry(headingDegrees: number, inboundDegrees: number, turns: TurnSide): EntryAdvice {
  const right = turnDegrees(headingDegrees, inboundDegrees + 180);
  const turn = turns === 'right' ? right : -right;
  const near = (line: number): boolean => Math.abs(turn - line) <= eitherEntryDegrees + roundingDegrees;
  if (turn >= -roundingDegrees && turn < teardropDegrees - roundingDegrees) {
    return { entry: 'teardrop', other: near(0) ? 'parallel' : near(teardropDegrees) ? 'direct' : undefined };
  }
  if (turn < 0 && turn > -parallelDegrees + roundingDegrees) {
    return { entry: 'parallel', other: near(0) ? 'teardrop' : near(-parallelDegrees) ? 'direct' : undefined };
  }
  return { entry: 'direct', other: near(teardropDegrees) ? 'teardrop' : near(-parallelDegrees) ? 'parallel' : undefined };
}

export type HoldRules = 'FAA' | 'ICAO' | 'ICAO_AB';
export type HoldSpeedLimit = { readonly kind: 'indicated'; readonly knots: number } | { readonly kind: 'mach'; readonly mach: number };

const indicated = (knots: number): HoldSpeedLimit => ({ kind: 'indicated', knots });

/** Above this the ICAO limit is a Mach number. @source icao-8168, volume I, holding speeds table. */
const icaoHighestIndicatedFeet = 34000;

function icaoUpperLimit(altitudeFeet: number): HoldSpeedLimit {
  if (altitudeFeet <= 20000) return indicated(240);
  return altitudeFeet <= icaoHighestIndicatedFeet ? indicated(265) : { kind: 'mach', mach: 0.83 };
}

/**
 * Highest holding speeds by altitude. The FAA bands are printed as "6,001 to 14,000": between 6,000 and 6,001 the lower
 * limit stands, so no altitude falls in a gap and none gets a higher limit than is printed for it.
 * @source aim, section 5-3-8, table of maximum holding airspeeds; icao-8168, volume I, holding speeds table (normal
 * conditions; ICAO_AB is the limit of a pattern published for categories A and B only).
 */
const speedLimits: Readonly<Record<HoldRules, (altitudeFeet: number) => HoldSpeedLimit>> = {
  FAA: (altitude) => indicated(altitude < 6001 ? 200 : altitude < 14001 ? 230 : 265),
  ICAO: (altitude) => (altitude <= 14000 ? indicated(230) : icaoUpperLimit(altitude)),
  ICAO_AB: (altitude) => (altitude <= 14000 ? indicated(170) : icaoUpperLimit(altitude)),
};

export const holdSpeedLimit = (altitudeFeet: number, rules: HoldRules): HoldSpeedLimit => speedLimits[rules](altitudeFeet);

/** The limit as an indicated airspeed, for those who need a number of knots. */
export function holdSpeedLimitKnots(altitudeFeet: number, rules: HoldRules): number {
  const limit = holdSpeedLimit(altitudeFeet, rules);
  if (limit.kind === 'mach')
    throw new CoreError('hold-limit-is-mach', { highestFeet: icaoHighestIndicatedFeet, mach: limit.mach, received: altitudeFeet });
  return limit.knots;
}

/**
 * The inbound leg where none is given: one minute up to 14,000 ft, one and a half above.
 * @source aim, section 5-3-8, timing of the inbound leg.
 */
export const standardLegSeconds = (altitudeFeet: number): number => (altitudeFeet <= 14000 ? 60 : 90);

/** Steepest bank in the hold. @source aim, section 5-3-8 (30 degrees); icao-8168, volume I (25 degrees). */
export const bankLimitDegrees = (rules: HoldRules): number => (rules === 'FAA' ? 30 : 25);
