// What a pilot needs to know of a hold besides the pattern itself: headings of the entry, when it is abeam, how wide it is.
import { asCourse, holdEntry, type EntryAdvice, type HoldEntry, type TurnSide } from './entry';
import { outboundEndNauticalMiles } from './lap';
import { placeAfter, type HoldFlight, type HoldPattern } from './pattern';
import { turnDegrees } from '../basics/units';
import { windTriangle } from '../air/wind';

/** @source usn-p821 and aim, section 5-3-8: the teardrop is flown 30 degrees off the outbound course, on the holding side. */
const teardropOffsetDegrees = 30;
/** Angle at which the parallel entry comes back to the inbound course. Common practice, no source. */
const interceptDegrees = 45;

export interface EntryHeadings {
  readonly advice: EntryAdvice;
  readonly firstTurn: TurnSide;
  readonly firstHeadingDegrees: number;
  readonly secondTurn: TurnSide;
  readonly secondHeadingDegrees: number;
}

const opposite = (side: TurnSide): TurnSide => (side === 'right' ? 'left' : 'right');
const shorterTurn = (fromDegrees: number, toDegrees: number): TurnSide => (turnDegrees(fromDegrees, toDegrees) >= 0 ? 'right' : 'left');

/**
 * Headings of the entry, with the wind in those that make good a track: parallel along the outbound course, teardrop 30 degrees
 * from it toward the holding side, direct the outbound leg of the pattern. Then inward: direct and teardrop onto the inbound heading
 * in the direction of the hold; parallel the other way, toward the holding side, to cut the inbound course at 45 degrees.
 * @source icao-8168, volume I, entry sectors (tracks made good); aim, section 5-3-8; the 45 degrees common practice.
 */
export function entryHeadings(headingAtFixDegrees: number, pattern: HoldPattern): EntryHeadings {
  const { inboundDegrees, turns, trueAirspeedKnots, windFromDegrees, windKnots } = pattern.flight;
  const advice = holdEntry(headingAtFixDegrees, inboundDegrees, turns);
  const toHoldingSide = turns === 'right' ? -1 : 1;
  const holdingTrack = (courseDegrees: number): number =>
    asCourse(windTriangle(courseDegrees, trueAirspeedKnots, windFromDegrees, windKnots).headingDegrees);
  const first: Readonly<Record<HoldEntry, () => number>> = {
    direct: () => pattern.outboundHeadingDegrees,
    teardrop: () => holdingTrack(inboundDegrees + 180 + toHoldingSide * teardropOffsetDegrees),
    parallel: () => holdingTrack(inboundDegrees + 180),
  };
  const firstHeadingDegrees = first[advice.entry]();
  const parallel = advice.entry === 'parallel';
  return {
    advice,
    firstTurn: advice.entry === 'direct' ? turns : shorterTurn(headingAtFixDegrees, firstHeadingDegrees),
    firstHeadingDegrees,
    secondTurn: parallel ? opposite(turns) : turns,
    secondHeadingDegrees: parallel ? asCourse(inboundDegrees + toHoldingSide * interceptDegrees) : pattern.inboundHeadingDegrees,
  };
}

/**
 * Outbound heading by the rule of thumb: three times the inbound correction, to the other side of the nose.
 * @source aim, section 5-3-8: triple the inbound wind correction on the outbound leg.
 */
export function tripleCorrectionHeading({ inboundDegrees, trueAirspeedKnots, windFromDegrees, windKnots }: HoldFlight): number {
  const { correctionDegrees } = windTriangle(inboundDegrees, trueAirspeedKnots, windFromDegrees, windKnots);
  return asCourse(inboundDegrees + 180 - 3 * correctionDegrees);
}

/** Moments of the lap, seconds after the fix. */
const endOfFirstTurn = ({ segments }: HoldPattern): number => segments[0].seconds;
const endOfOutbound = ({ segments }: HoldPattern): number => segments[0].seconds + segments[1].seconds;

/** When the aircraft passes abeam the fix on its way outbound, seconds after the fix; undefined where it never does. */
function abeamSeconds(pattern: HoldPattern): number | undefined {
  const along = (seconds: number): number => placeAfter(pattern, seconds).alongNauticalMiles;
  const { drift, speed, segments } = pattern;
  // In the turn the aircraft goes on past the fix until its heading makes no headway, and only then comes back.
  const farthest = Math.min(
    (Math.acos(Math.min(1, Math.max(-1, -drift.along / speed))) - segments[0].startRadians) / segments[0].radiansPerSecond,
    endOfFirstTurn(pattern),
  );
  let [before, after] = [farthest, endOfOutbound(pattern)];
  if (along(before) < 0 || along(after) > 0) return undefined;
  // Halved until no two moments are left apart.
  while ((before + after) / 2 > before && (before + after) / 2 < after) {
    const middle = (before + after) / 2;
    if (along(middle) > 0) before = middle;
    else after = middle;
  }
  return after;
}

export interface HoldMeasures {
  /** From abeam the fix to the turn inbound; undefined where the fix is never abeam. */
  readonly outboundFromAbeamSeconds: number | undefined;
  /** Straight from the fix to where the turn inbound begins, as a distance readout shows it. */
  readonly outboundEndNauticalMiles: number;
  /** Farthest from the inbound course on the holding side. */
  readonly widthNauticalMiles: number;
}

/** When, after the start, a turn from this heading takes the aircraft no farther across: its track is parallel to the course. */
function widestSeconds({ drift, speed, segments }: HoldPattern): number {
  const [turnOut, outbound] = segments;
  const parallelHeading = Math.PI + Math.asin(drift.across / speed);
  const turning = (parallelHeading - turnOut.startRadians) / turnOut.radiansPerSecond;
  return turning <= turnOut.seconds ? turning : turning + outbound.seconds;
}

export function holdMeasures(pattern: HoldPattern): HoldMeasures {
  const abeam = abeamSeconds(pattern);
  const moments = [endOfFirstTurn(pattern), endOfOutbound(pattern), widestSeconds(pattern)];
  return {
    outboundFromAbeamSeconds: abeam === undefined ? undefined : endOfOutbound(pattern) - abeam,
    outboundEndNauticalMiles: outboundEndNauticalMiles(pattern),
    widthNauticalMiles: Math.max(...moments.map((seconds) => placeAfter(pattern, seconds).acrossNauticalMiles)),
  };
}
