// A descent flown by a schedule of speeds and rates through winds that change with height: time and distance of each band.
// Heights are pressure altitudes; a rate is what the altimeter unwinds.
import { CoreError } from '../basics/errors';
import { speedLimit, stretchesOf, stretchTrueAirspeedKnots, type ScheduleRow, type Stretch } from './schedule';
import { tropopauseMetres } from '../basics/constants';
import { feetFromMetres, minutesPerHour } from '../basics/units';
import { mustReach, speedsAlong, windAt, windsAloft, type WindLevel, type WindsAloft } from '../air/windsAloft';

export interface DescentCase {
  readonly fromFeet: number;
  readonly toFeet: number;
  readonly schedule: readonly ScheduleRow[];
  readonly winds: readonly WindLevel[];
  readonly courseTrueDegrees: number;
  /** How much warmer than standard the air is, at every height. */
  readonly isaDeviationCelsius: number;
  /** The crossing point lies this far before the fix; negative is beyond it. */
  readonly beforeFixNauticalMiles: number;
  /** Hold the speed limit below 10,000 ft, slowing down level at 10,000 ft over this distance. Undefined: no speed limit. */
  readonly slowDownNauticalMiles: number | undefined;
}

/** Speeds are means over the band's time. */
export interface DescentBand {
  readonly fromFeet: number;
  readonly toFeet: number;
  readonly trueAirspeedKnots: number;
  readonly headwindKnots: number;
  readonly groundspeedKnots: number;
  /** 0 in a level band. */
  readonly rateFeetPerMinute: number;
  readonly minutes: number;
  readonly nauticalMiles: number;
}

export interface DescentPlan {
  readonly bands: readonly DescentBand[];
  /** All bands together; undefined where there is no height to lose. */
  readonly whole: DescentBand | undefined;
  /** Where the descent starts, before the fix; negative is beyond it. */
  readonly startNauticalMiles: number;
}

/** At one height, or the means over a band. */
type Speeds = Pick<DescentBand, 'trueAirspeedKnots' | 'headwindKnots' | 'groundspeedKnots'>;

/** Adds speeds, each counted so many times. */
const weighted = (parts: readonly (readonly [Speeds, number])[]): Speeds => {
  const sum = (of: (speeds: Speeds) => number): number => parts.reduce((total, [speeds, weight]) => total + of(speeds) * weight, 0);
  return {
    trueAirspeedKnots: sum((one) => one.trueAirspeedKnots),
    headwindKnots: sum((one) => one.headwindKnots),
    groundspeedKnots: sum((one) => one.groundspeedKnots),
  };
};

/** Heights from one to another, lower, no step larger than `stepFeet`, with one at each bend of wind or temperature. */
function heights(fromFeet: number, toFeet: number, bendsFeet: readonly number[], stepFeet: number): number[] {
  const bends = [fromFeet, ...bendsFeet.filter((feet) => feet < fromFeet && feet > toFeet).sort((one, other) => other - one), toFeet];
  return bends.slice(1).reduce<number[]>(
    (found, lower, index) => {
      const upper = bends[index] ?? fromFeet;
      const steps = Math.max(1, Math.ceil((upper - lower) / stepFeet));
      return [...found, ...Array.from({ length: steps }, (_, step) => upper + ((lower - upper) * (step + 1)) / steps)];
    },
    [fromFeet],
  );
}

/** Means over the height by Simpson's rule on each step. @source common-practice: Simpson's rule, exact for cubics. */
function means(fromFeet: number, toFeet: number, bendsFeet: readonly number[], stepFeet: number, at: (feet: number) => Speeds): Speeds {
  const edges = heights(fromFeet, toFeet, bendsFeet, stepFeet);
  return weighted(
    edges.slice(1).flatMap((lower, index) => {
      const upper = edges[index] ?? fromFeet;
      const share = (upper - lower) / (fromFeet - toFeet);
      return [
        [at(upper), share / 6],
        [at((upper + lower) / 2), (share * 4) / 6],
        [at(lower), share / 6],
      ] as const;
    }),
  );
}

/** Halving this changes the distance by far less than 0.05 NM. */
const defaultStepFeet = 500;

interface Air {
  readonly winds: WindsAloft;
  readonly courseTrueDegrees: number;
  readonly isaDeviationCelsius: number;
  readonly stepFeet: number;
}

function speedsOn(stretch: Stretch, altitudeFeet: number, { winds, courseTrueDegrees, isaDeviationCelsius }: Air): Speeds {
  const trueAirspeedKnots = stretchTrueAirspeedKnots(stretch, altitudeFeet, isaDeviationCelsius);
  return speedsAlong(trueAirspeedKnots, windAt(winds, altitudeFeet), courseTrueDegrees, altitudeFeet);
}

function bandOf(stretch: Stretch, air: Air): DescentBand {
  const { fromFeet, toFeet, rateFeetPerMinute } = stretch;
  const bends = [...air.winds.altitudesFeet, feetFromMetres(tropopauseMetres)];
  const speeds = means(fromFeet, toFeet, bends, air.stepFeet, (feet) => speedsOn(stretch, feet, air));
  const minutes = (fromFeet - toFeet) / rateFeetPerMinute;
  return { fromFeet, toFeet, ...speeds, rateFeetPerMinute, minutes, nauticalMiles: (speeds.groundspeedKnots * minutes) / minutesPerHour };
}

/**
 * The level band at 10,000 ft between a faster stretch and a limited one. At a steady slowing the mean speed is half of both
 * together; how far it takes is the aircraft's own. @source cfr-91-117, paragraph (a), for the limit.
 */
function levelBand(faster: Stretch, limited: Stretch, nauticalMiles: number, air: Air): DescentBand {
  const speeds = weighted([
    [speedsOn(faster, faster.toFeet, air), 0.5],
    [speedsOn(limited, limited.fromFeet, air), 0.5],
  ]);
  return {
    fromFeet: faster.toFeet,
    toFeet: limited.fromFeet,
    ...speeds,
    rateFeetPerMinute: 0,
    minutes: (nauticalMiles / speeds.groundspeedKnots) * minutesPerHour,
    nauticalMiles,
  };
}

function bandsOf(stretches: readonly Stretch[], slowDownNauticalMiles: number, air: Air): DescentBand[] {
  return stretches.flatMap((stretch, index) => {
    const before = stretches[index - 1];
    const slowing =
      before !== undefined && stretch.limited && !before.limited && stretch.fromFeet === speedLimit.belowFeet && slowDownNauticalMiles > 0;
    const tooFast =
      slowing &&
      stretchTrueAirspeedKnots(before, stretch.fromFeet, air.isaDeviationCelsius) >
        stretchTrueAirspeedKnots(stretch, stretch.fromFeet, air.isaDeviationCelsius);
    return tooFast ? [levelBand(before, stretch, slowDownNauticalMiles, air), bandOf(stretch, air)] : [bandOf(stretch, air)];
  });
}

function wholeOf(bands: readonly DescentBand[]): DescentBand | undefined {
  const [first, last] = [bands[0], bands[bands.length - 1]];
  if (first === undefined || last === undefined) return undefined;
  const minutes = bands.reduce((total, band) => total + band.minutes, 0);
  const nauticalMiles = bands.reduce((total, band) => total + band.nauticalMiles, 0);
  const speeds = weighted(bands.map((band) => [band, band.minutes / minutes] as const));
  const { fromFeet } = first;
  const { toFeet } = last;
  return { fromFeet, toFeet, ...speeds, rateFeetPerMinute: (fromFeet - toFeet) / minutes, minutes, nauticalMiles };
}

/**
 * Distance = integral of groundspeed over rate, from the lower to the higher altitude; in still air at a steady speed that is
 * speed x height / rate. `stepFeet` is for tests of the integration.
 */
export function descentPlan(given: DescentCase, stepFeet = defaultStepFeet): DescentPlan {
  const { fromFeet, toFeet, courseTrueDegrees, isaDeviationCelsius, beforeFixNauticalMiles, slowDownNauticalMiles } = given;
  if (toFeet > fromFeet)
    throw new CoreError('outside-range', { quantity: 'toFeet', unit: 'feet, no higher than from_ft', low: -5000, high: fromFeet, received: toFeet });
  const winds = windsAloft(given.winds);
  mustReach(winds, toFeet, fromFeet);
  const stretches = stretchesOf(given.schedule, fromFeet, toFeet, slowDownNauticalMiles !== undefined);
  const bands = bandsOf(stretches, slowDownNauticalMiles ?? 0, { winds, courseTrueDegrees, isaDeviationCelsius, stepFeet });
  const whole = wholeOf(bands);
  return { bands, whole, startNauticalMiles: (whole?.nauticalMiles ?? 0) + beforeFixNauticalMiles };
}
