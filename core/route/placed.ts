// Legs laid on the Earth: where each begins and ends, the air over its middle, and its cruise there.
import { CoreError } from '../basics/errors';
import type { Named } from '../basics/named';
import { nearestAir, type AirColumn } from './air';
import type { Cruise, CruiseUsed } from './cruise';
import { legLine } from './leg';
import { placeOf, type ListedPlace, type Place } from './places';
import type { PlannedLeg } from './profile';

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

export interface Placed {
  readonly from: Place;
  readonly to: Place;
  readonly planned: PlannedLeg & { readonly cruise: CruiseUsed };
}

/** What every leg is laid out with. */
export interface Means {
  readonly columns: readonly AirColumn[];
  readonly cruise: Cruise;
}

export const caught = <Result>(make: () => Result): Result | CoreError => {
  try {
    return make();
  } catch (thrown) {
    if (thrown instanceof CoreError) return thrown;
    throw thrown;
  }
};

export function placed(from: Place, to: Place, { columns, cruise }: Means, asked: Omit<LegEntry, 'from' | 'to'>): Placed {
  const line = legLine(from.position, to.position);
  const air = nearestAir(columns, line.middle);
  const { altitudeFeet } = asked;
  const temperatureCelsius = air.temperatureAt(altitudeFeet);
  // Asked for now, so that a level without a wind is told of its own leg.
  air.windAt(altitudeFeet);
  return { from, to, planned: { line, air, altitudeFeet, cruise: cruise({ ...asked, temperatureCelsius }) } };
}

export interface Begun {
  readonly from: Place | CoreError;
  readonly to: Place | CoreError;
  readonly placed: Placed | CoreError;
}

/** Undefined where a row cannot be read. */
export function beginLegs(legs: readonly (LegEntry | undefined)[], places: readonly ListedPlace[], means: Means): (Begun | undefined)[] {
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
    const laid = caught(() => {
      if (from instanceof CoreError) throw from;
      if (to instanceof CoreError) throw to;
      const gap =
        ended !== undefined &&
        (ended.position.latitudeDegrees !== from.position.latitudeDegrees || ended.position.longitudeDegrees !== from.position.longitudeDegrees);
      if (gap && index > 0) throw new CoreError('route-gap', { begins: from.name, ended: ended.name });
      return placed(from, to, means, entry);
    });
    return { from, to, placed: laid };
  });
}
