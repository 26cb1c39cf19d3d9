// The parts of a route by height: the climb from the field, steps between levels, the cruise, the descent to the circuit.
import { speedsAlong, type WindVector } from '../air/windsAloft';
import { CoreError } from '../basics/errors';
import type { ScheduleRow } from '../descent/schedule';
import type { AirOfLeg } from './air';
import type { CruiseFigures } from './cruise';
import { descentOf, type VerticalFlight } from './figures';
import { minutesOver, type LegLine } from './leg';

export interface PlannedLeg {
  readonly line: LegLine;
  readonly air: AirOfLeg;
  readonly altitudeFeet: number;
  readonly cruise: CruiseFigures;
}

export type PartKind = 'climb' | 'cruise' | 'step down' | 'descent';

export interface Part {
  /** Place of its leg among the legs. */
  readonly leg: number;
  readonly kind: PartKind;
  /** Distances from the start of the leg. */
  readonly fromNauticalMiles: number;
  readonly toNauticalMiles: number;
  readonly toFeet: number;
  readonly minutes: number;
  readonly fuel: number;
  /** Means over its time. */
  readonly trueAirspeedKnots: number;
  readonly wind: WindVector;
}

export interface ProfileCase {
  /** In order; undefined where a leg cannot be planned. */
  readonly legs: readonly (PlannedLeg | undefined)[];
  /** Undefined: the first leg is flown at its level from the start. */
  readonly climb: VerticalFlight | undefined;
  readonly departureFeet: () => number;
  /** Empty: the last leg is flown at its level to the end. */
  readonly descent: readonly ScheduleRow[];
  readonly descentFlowPerHour: number | undefined;
  readonly arrivalFeet: () => number;
}

export interface Profile {
  readonly parts: readonly Part[];
  /** Legs whose profile could not be worked out, and why. */
  readonly failures: ReadonlyMap<number, CoreError>;
}

const minutesPerHour = 60;
/** Nobody levels off more exactly. */
const sameLevelFeet = 0.5;
/** Halving this moves no time by a hundredth of a minute. */
const stepFeet = 500;

/** From one height to another, cut at the bends between them and into even steps. */
function heights(fromFeet: number, toFeet: number, bendsFeet: readonly number[]): number[] {
  const inside = bendsFeet.filter((feet) => (feet - fromFeet) * (feet - toFeet) < 0);
  const cuts = [...new Set(inside), toFeet].sort((one, other) => (toFeet > fromFeet ? one - other : other - one));
  let last = fromFeet;
  return cuts.flatMap((cut) => {
    const begin = last;
    last = cut;
    const steps = Math.max(1, Math.ceil(Math.abs(cut - begin) / stepFeet));
    return Array.from({ length: steps }, (_, step) => begin + ((cut - begin) * (step + 1)) / steps);
  });
}

/** `room` is how far it may go; `backwards` goes back from a point, against the direction of flight, to where it was higher. */
interface Slope {
  readonly fromFeet: number;
  readonly toFeet: number;
  readonly atNauticalMiles: number;
  readonly room: number;
  readonly backwards?: boolean;
}

interface Flown {
  readonly nauticalMiles: number;
  readonly feet: number;
  readonly minutes: number;
  readonly fuel: number;
  readonly trueAirspeedKnots: number;
  readonly wind: WindVector;
}

/** Step by step, each at the figures and the wind of its middle, over the course where it is. */
function flownSlope({ line, air }: PlannedLeg, flight: VerticalFlight, { fromFeet, toFeet, atNauticalMiles, room, backwards = false }: Slope): Flown {
  const sums = { nauticalMiles: 0, feet: fromFeet, minutes: 0, fuel: 0, airMiles: 0, north: 0, east: 0 };
  for (const next of heights(fromFeet, toFeet, [...flight.bendsFeet, ...air.levelsFeet])) {
    const middle = (sums.feet + next) / 2;
    const { rateFeetPerMinute, trueAirspeedKnots, flowPerHour } = flight.at(middle, air);
    const minutes = Math.abs(next - sums.feet) / rateFeetPerMinute;
    const wind = air.windAt(middle);
    const gone = sums.nauticalMiles + (trueAirspeedKnots * minutes) / minutesPerHour / 2;
    const course = line.courseAt(atNauticalMiles + (backwards ? -gone : gone));
    const miles = (speedsAlong(trueAirspeedKnots, wind, course, middle).groundspeedKnots * minutes) / minutesPerHour;
    const left = room - sums.nauticalMiles;
    const share = miles > left ? left / miles : 1;
    sums.nauticalMiles += miles * share;
    sums.feet += (next - sums.feet) * share;
    sums.minutes += minutes * share;
    sums.fuel += ((flowPerHour * minutes) / minutesPerHour) * share;
    sums.airMiles += ((trueAirspeedKnots * minutes) / minutesPerHour) * share;
    sums.north += wind.toNorthKnots * minutes * share;
    sums.east += wind.toEastKnots * minutes * share;
    if (share < 1) break;
  }
  const { nauticalMiles, feet, minutes, fuel, airMiles, north, east } = sums;
  const mean = (sum: number): number => (minutes > 0 ? sum / minutes : 0);
  const wind = { toNorthKnots: mean(north), toEastKnots: mean(east) };
  return { nauticalMiles, feet, minutes, fuel, trueAirspeedKnots: mean(airMiles * minutesPerHour), wind };
}

const partOf = (leg: number, kind: PartKind, fromNauticalMiles: number, toNauticalMiles: number, toFeet: number, flown: Flown): Part => ({
  leg,
  kind,
  fromNauticalMiles,
  toNauticalMiles,
  toFeet,
  minutes: flown.minutes,
  fuel: flown.fuel,
  trueAirspeedKnots: flown.trueAirspeedKnots,
  wind: flown.wind,
});

/** The descent, from its end back to where it begins; nothing before `begins` is part of it. */
interface LastDescent {
  readonly parts: readonly Part[];
  readonly begins: { readonly leg: number; readonly nauticalMiles: number };
}

const noRoom = (altitudeFeet: number): CoreError => new CoreError('route-too-short', { altitudeFeet });

function descentFrom({ descent, descentFlowPerHour }: ProfileCase, { altitudeFeet, cruise }: PlannedLeg, toFeet: number): VerticalFlight {
  return descentOf(descent, altitudeFeet, toFeet, descentFlowPerHour ?? cruise.flowPerHour);
}

function lastDescent(given: ProfileCase): LastDescent {
  const last = given.legs.length - 1;
  const end = { parts: [], begins: { leg: last, nauticalMiles: given.legs[last]?.line.distanceNauticalMiles ?? 0 } };
  if (given.descent.length === 0) return end;
  let feet = given.arrivalFeet();
  const parts: Part[] = [];
  for (let leg = last; leg >= 0; leg -= 1) {
    const planned = given.legs[leg];
    // Nobody knows the height before it: the leg is told, and the route has no total.
    if (planned === undefined) return { parts, begins: { leg: leg + 1, nauticalMiles: 0 } };
    const { altitudeFeet, line } = planned;
    const whole = line.distanceNauticalMiles;
    if (feet > altitudeFeet + sameLevelFeet) {
      if (leg === last) return end;
      throw noRoom(given.legs[leg + 1]?.altitudeFeet ?? altitudeFeet);
    }
    if (feet >= altitudeFeet - sameLevelFeet) return { parts, begins: { leg, nauticalMiles: whole } };
    const flight = descentFrom(given, planned, feet);
    const flown = flownSlope(planned, flight, { fromFeet: feet, toFeet: altitudeFeet, atNauticalMiles: whole, room: whole, backwards: true });
    const begin = whole - flown.nauticalMiles;
    parts.unshift(partOf(leg, 'descent', begin, whole, feet, flown));
    feet = flown.feet;
    if (feet >= altitudeFeet - sameLevelFeet) return { parts, begins: { leg, nauticalMiles: begin } };
  }
  throw noRoom(given.legs[0]?.altitudeFeet ?? feet);
}

/** The parts of one leg up to where the last descent begins or the leg ends, and the height reached there. */
function partsOfLeg(given: ProfileCase, leg: number, planned: PlannedLeg, fromFeet: number, endNauticalMiles: number, mustLevel: boolean) {
  const { line, air, altitudeFeet, cruise } = planned;
  const parts: Part[] = [];
  let [at, feet] = [0, fromFeet];
  const slope = (kind: PartKind, flight: VerticalFlight): void => {
    const flown = flownSlope(planned, flight, { fromFeet: feet, toFeet: altitudeFeet, atNauticalMiles: 0, room: endNauticalMiles });
    parts.push(partOf(leg, kind, 0, flown.nauticalMiles, flown.feet, flown));
    [at, feet] = [flown.nauticalMiles, flown.feet];
  };
  if (feet < altitudeFeet - sameLevelFeet && given.climb !== undefined) slope('climb', given.climb);
  else if (feet > altitudeFeet + sameLevelFeet && given.descent.length > 0) {
    const { descentFlowPerHour } = given;
    slope('step down', descentOf(given.descent, feet, altitudeFeet, descentFlowPerHour ?? cruise.flowPerHour));
  } else feet = altitudeFeet;
  const level = Math.abs(feet - altitudeFeet) <= sameLevelFeet;
  if (mustLevel && !level) throw noRoom(altitudeFeet);
  if (level && endNauticalMiles > at) {
    const wind = air.windAt(altitudeFeet);
    const minutes = minutesOver(line, at, endNauticalMiles, { trueAirspeedKnots: cruise.trueAirspeedKnots, wind, altitudeFeet });
    const fuel = (cruise.flowPerHour * minutes) / minutesPerHour;
    const { trueAirspeedKnots } = cruise;
    parts.push({
      leg,
      kind: 'cruise',
      fromNauticalMiles: at,
      toNauticalMiles: endNauticalMiles,
      toFeet: altitudeFeet,
      minutes,
      fuel,
      trueAirspeedKnots,
      wind,
    });
  }
  return { parts, feet };
}

function orFailure<Result>(leg: number, failures: Map<number, CoreError>, make: () => Result): Result | undefined {
  try {
    return make();
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    failures.set(leg, thrown);
    return undefined;
  }
}

/**
 * Flies the legs in order. A higher level is climbed to from the beginning of its leg, a lower one come down to from there; the last
 * descent ends at the destination. After a leg that cannot be planned the next begins at its own level. @source common-practice
 */
export function profileOf(given: ProfileCase): Profile {
  const { legs } = given;
  const failures = new Map<number, CoreError>();
  const parts: Part[] = [];
  const last = legs.length - 1;
  const ending = legs[last] === undefined ? undefined : orFailure(last, failures, () => lastDescent(given));
  const begins = ending?.begins ?? { leg: legs.length, nauticalMiles: 0 };
  let feet = given.climb === undefined || legs[0] === undefined ? undefined : orFailure(0, failures, given.departureFeet);
  legs.forEach((planned, leg) => {
    if (planned === undefined) feet = undefined;
    if (planned === undefined || leg > begins.leg) return;
    const end = leg === begins.leg ? begins.nauticalMiles : planned.line.distanceNauticalMiles;
    const mustLevel = leg === begins.leg && (ending?.parts.length ?? 0) > 0;
    const flown = orFailure(leg, failures, () => partsOfLeg(given, leg, planned, feet ?? planned.altitudeFeet, end, mustLevel));
    feet = flown?.feet ?? planned.altitudeFeet;
    parts.push(...(flown?.parts ?? []));
  });
  const descending = (ending?.parts ?? []).filter(({ leg }) => !failures.has(leg));
  return { parts: [...parts.filter(({ leg }) => !failures.has(leg)), ...descending].sort((one, other) => one.leg - other.leg), failures };
}
