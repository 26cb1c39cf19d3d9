// A route of legs: each part with its heading, time and fuel, what is left and still wanted, and the way back and on to the alternate.
import { CoreError } from '../basics/errors';
import type { CivilDate } from '../basics/civilDate';
import type { Named } from '../basics/named';
import type { ScheduleRow } from '../descent/schedule';
import type { AircraftTable } from '../manual/openTable';
import { magneticVariationDegrees } from '../navigation/magnetism';
import { airColumns, nearestAir, type AirColumn, type AirLevel } from './air';
import { climbOf, cruiseOf, type Cruise, type CruiseFigures, type FlightFigures } from './figures';
import { legLine, minutesOver } from './leg';
import { placeOf, type ListedPlace, type Place } from './places';
import { profileOf, type Part, type PlannedLeg } from './profile';
import { equalTimeOnRoute, safeReturnOnRoute, type PointOnRoute } from './turnBack';

const minutesPerHour = 60;

/** A leg as its row says it; undefined is what the row leaves blank. */
export interface LegEntry {
  /** Blank: where the leg before ends. */
  readonly from: Named | undefined;
  readonly to: Named;
  readonly altitudeFeet: number;
  readonly trueAirspeedKnots: number | undefined;
  readonly flowPerHour: number | undefined;
  readonly power: number | undefined;
}

export interface RouteCase {
  /** Undefined where a row cannot be read. */
  readonly legs: readonly (LegEntry | undefined)[];
  readonly places: readonly ListedPlace[];
  readonly winds: readonly AirLevel[];
  readonly date: CivilDate;
  /** At take-off. */
  readonly fuel: number;
  /** Wanted on landing, wherever that is. */
  readonly reserve: number;
  readonly alternate: Named | undefined;
  readonly cruise: AircraftTable | undefined;
  readonly climb: AircraftTable | undefined;
  readonly figures: FlightFigures;
  readonly descent: readonly ScheduleRow[];
  readonly descentFlowPerHour: number | undefined;
  /** Above the destination, where the descent ends. */
  readonly arriveAboveFeet: number;
}

/** A leg that lies on the Earth; `planned` is missing where its flight cannot be worked out. */
interface Plotted {
  readonly from: Place;
  readonly to: Place;
  readonly variationDegrees: number;
  readonly planned: PlannedLeg;
}

export interface RouteLeg {
  readonly from: Place | undefined;
  readonly to: Place | undefined;
  readonly plotted: Plotted | undefined;
  /** Undefined where the row itself cannot be read, or nothing is wrong. */
  readonly failure: CoreError | undefined;
  readonly parts: readonly Part[];
}

export interface Alternate {
  readonly place: Place;
  readonly plotted: Plotted;
  readonly minutes: number;
  readonly fuel: number;
}

export interface Route {
  readonly legs: readonly RouteLeg[];
  /** From overhead the destination, at the level and the cruise of the last leg; undefined where none is planned. */
  readonly alternate: Alternate | CoreError | undefined;
  /** Undefined where a leg is missing, or where it is not before the destination. */
  readonly equalTime: PointOnRoute | undefined;
  readonly safeReturn: PointOnRoute | undefined;
  readonly climbs: boolean;
}

const caught = <Result>(make: () => Result): Result | CoreError => {
  try {
    return make();
  } catch (thrown) {
    if (thrown instanceof CoreError) return thrown;
    throw thrown;
  }
};

interface Means {
  readonly columns: readonly AirColumn[];
  readonly cruise: Cruise;
  readonly date: CivilDate;
}

function plot(from: Place, to: Place, { columns, cruise, date }: Means, asked: Omit<LegEntry, 'from' | 'to'>): Plotted {
  const line = legLine(from.position, to.position);
  const air = nearestAir(columns, line.middle);
  const { altitudeFeet } = asked;
  const temperatureCelsius = air.temperatureAt(altitudeFeet);
  // Asked for now, so that a level without a wind is told of its own leg.
  air.windAt(altitudeFeet);
  const planned = { line, air, altitudeFeet, cruise: cruise({ ...asked, temperatureCelsius }) };
  return { from, to, variationDegrees: magneticVariationDegrees(line.middle, date, altitudeFeet), planned };
}

interface Begun {
  readonly from: Place | CoreError;
  readonly to: Place | CoreError;
  readonly plotted: Plotted | CoreError;
}

function beginLegs({ legs, places }: RouteCase, means: Means): (Begun | undefined)[] {
  let before: Place | undefined;
  return legs.map((entry, index) => {
    const ended = before;
    before = undefined;
    if (entry === undefined) return undefined;
    const to = caught(() => placeOf(entry.to, places));
    const from = caught(() => {
      if (entry.from !== undefined) return placeOf(entry.from, places);
      if (ended === undefined) throw new CoreError('leg-without-start', {});
      return ended;
    });
    before = to instanceof CoreError ? undefined : to;
    const plotted = caught(() => {
      if (from instanceof CoreError) throw from;
      if (to instanceof CoreError) throw to;
      const gap =
        ended !== undefined &&
        (ended.position.latitudeDegrees !== from.position.latitudeDegrees || ended.position.longitudeDegrees !== from.position.longitudeDegrees);
      if (gap && index > 0) throw new CoreError('route-gap', { begins: from.name, ended: ended.name });
      return plot(from, to, means, entry);
    });
    return { from, to, plotted };
  });
}

const known = <Thing>(thing: Thing | CoreError | undefined): Thing | undefined => (thing instanceof CoreError ? undefined : thing);

function alternateOf({ alternate, places }: RouteCase, means: Means, last: Plotted | undefined): Alternate | CoreError | undefined {
  if (alternate === undefined) return undefined;
  return caught(() => {
    const place = placeOf(alternate, places);
    if (last === undefined) throw new CoreError('leg-without-start', {});
    const { altitudeFeet, cruise } = last.planned;
    const plotted = plot(last.to, place, means, { altitudeFeet, ...cruise, power: undefined });
    const { line, air } = plotted.planned;
    const steady = { trueAirspeedKnots: cruise.trueAirspeedKnots, wind: air.windAt(altitudeFeet), altitudeFeet };
    const minutes = minutesOver(line, 0, line.distanceNauticalMiles, steady);
    return { place, plotted, minutes, fuel: (cruise.flowPerHour * minutes) / minutesPerHour };
  });
}

/** Each part, and its ground flown back at the level and cruise of its leg. */
function thereAndBack(parts: readonly Part[], plotted: readonly (Plotted | undefined)[]) {
  return parts.map((part) => {
    const leg = plotted[part.leg]?.planned;
    if (leg === undefined) throw new Error('a part has its leg');
    const { line, air, altitudeFeet, cruise }: PlannedLeg & { readonly cruise: CruiseFigures } = leg;
    const steady = { trueAirspeedKnots: cruise.trueAirspeedKnots, wind: air.windAt(altitudeFeet), altitudeFeet, backwards: true };
    const minutesBack = minutesOver(line, part.fromNauticalMiles, part.toNauticalMiles, steady);
    return {
      nauticalMiles: part.toNauticalMiles - part.fromNauticalMiles,
      minutes: part.minutes,
      fuel: part.fuel,
      minutesBack,
      fuelBack: (cruise.flowPerHour * minutesBack) / minutesPerHour,
    };
  });
}

/** The arguments of the whole route throw; what is wrong with one leg stands in that leg. */
export function routeOf(given: RouteCase): Route {
  const means = { columns: airColumns(given.winds, given.places), cruise: cruiseOf(given.cruise, given.figures.weight), date: given.date };
  const begun = beginLegs(given, means);
  const plotted = begun.map((leg) => known(leg?.plotted));
  const climb = climbOf(given.climb, given.figures);
  const elevationOf = (place: Place | undefined): number => {
    if (place?.elevationFeet === undefined) throw new CoreError('place-without-elevation', { name: place?.name ?? '' });
    return place.elevationFeet;
  };
  const last = plotted[plotted.length - 1];
  const { parts, failures } = profileOf({
    legs: plotted.map((leg) => leg?.planned),
    climb,
    departureFeet: () => elevationOf(plotted[0]?.from),
    descent: given.descent,
    descentFlowPerHour: given.descentFlowPerHour,
    arrivalFeet: () => elevationOf(last?.to) + given.arriveAboveFeet,
  });
  const legs = begun.map((leg, index): RouteLeg => {
    const failure = leg?.plotted instanceof CoreError ? leg.plotted : failures.get(index);
    return { from: known(leg?.from), to: known(leg?.to), plotted: plotted[index], failure, parts: parts.filter((part) => part.leg === index) };
  });
  const whole = legs.length > 0 && legs.every(({ plotted: place, failure }) => place !== undefined && failure === undefined);
  const both = whole ? caught(() => thereAndBack(parts, plotted)) : [];
  const ways = both instanceof CoreError ? [] : both;
  return {
    legs,
    alternate: alternateOf(given, means, last),
    equalTime: ways.length === 0 ? undefined : equalTimeOnRoute(ways),
    safeReturn: ways.length === 0 ? undefined : safeReturnOnRoute(ways, given.fuel - given.reserve),
    climbs: climb !== undefined,
  };
}
