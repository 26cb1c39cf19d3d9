// The legs of a route at their levels, with their air and their cruise, as ROUTE_LEGS flies them.
import type { CoreError } from '../basics/errors';
import { airColumns, type AirLevel } from './air';
import { cruiseOf, type CruiseMeans } from './cruise';
import { beginLegs, type LegEntry, type Placed } from './placed';
import type { ListedPlace } from './places';

export interface LevelsCase {
  /** Undefined where a row cannot be read. */
  readonly legs: readonly (LegEntry | undefined)[];
  readonly places: readonly ListedPlace[];
  readonly winds: readonly AirLevel[];
  readonly cruise: CruiseMeans;
}

/** Each leg, or why it cannot be flown; undefined where its row cannot be read. */
export const routeLevels = ({ legs, places, winds, cruise }: LevelsCase): (Placed | CoreError | undefined)[] =>
  beginLegs(legs, places, { columns: airColumns(winds, places), cruise: cruiseOf(cruise) }).map((leg) => leg?.placed);
