// A route of legs: each part with its heading, time and fuel, what is left and still wanted, and the way back and on to the alternate.
import { CoreError } from '../basics/errors';
import type { CivilDate } from '../basics/civilDate';
import type { Named } from '../basics/named';
import type { ScheduleRow } from '../descent/schedule';
import type { AircraftTable } from '../manual/openTable';
import { magneticVariationDegrees } from '../navigation/magnetism';
import { airColumns, type AirLevel } from './air';
import { cruiseOf, type CruiseMeans } from './cruise';
import { climbOf, type FlightFigures } from './figures';
import { minutesOver } from './leg';
import { beginLegs, caught, placed, type LegEntry, type Means, type Placed } from './placed';
import { placeOf, type ListedPlace, type Place } from './places';
import { profileOf, type Part } from './profile';
import { equalTimeOnRoute, safeReturnOnRoute, type PointOnRoute } from './turnBack';

const minutesPerHour = 60;

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
  readonly cruise: CruiseMeans;
  readonly climb: AircraftTable | undefined;
  readonly figures: FlightFigures;
  readonly descent: readonly ScheduleRow[];
  readonly descentFlowPerHour: number | undefined;
  /** Above the destination, where the descent ends. */
  readonly arriveAboveFeet: number;
}

export interface Plotted extends Placed {
  readonly variationDegrees: number;
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

const known = <Thing>(thing: Thing | CoreError | undefined): Thing | undefined => (thing instanceof CoreError ? undefined : thing);

const plottedAt = (leg: Placed, date: CivilDate): Plotted => ({
  ...leg,
  variationDegrees: magneticVariationDegrees(leg.planned.line.middle, date, leg.planned.altitudeFeet),
});

function alternateOf({ alternate, places, date }: RouteCase, means: Means, last: Plotted | undefined): Alternate | CoreError | undefined {
  if (alternate === undefined) return undefined;
  return caught(() => {
    const place = placeOf(alternate, places);
    if (last === undefined) throw new CoreError('leg-without-start', {});
    const { altitudeFeet, cruise } = last.planned;
    const plotted = plottedAt(placed(last.to, place, means, { altitudeFeet, ...cruise, power: undefined }), date);
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
    const { line, air, altitudeFeet, cruise } = leg;
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
  const means = { columns: airColumns(given.winds, given.places), cruise: cruiseOf(given.cruise) };
  const begun = beginLegs(given.legs, given.places, means);
  const onEarth = begun.map((leg) => {
    const laid = leg?.placed;
    return laid === undefined || laid instanceof CoreError ? laid : caught(() => plottedAt(laid, given.date));
  });
  const plotted = onEarth.map(known);
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
    const laid = onEarth[index];
    const failure = laid instanceof CoreError ? laid : failures.get(index);
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
