// Where the parts of the Route sheet stand.
import type { List } from '../lists';

export const legList: List = { head: 9, first: 10, last: 29 };
export const airList: List = { head: 9, first: 10, last: 21 };
export const pointList: List = { head: 34, first: 35, last: 44 };
/** Places whose sun is worked out: the three of the trip. */
export const sunRows = { head: 35, first: 36, last: 38 } as const;
/** The whole route: one value a row. */
export const wholeRows = {
  date: 10,
  takeoff: 11,
  fuel: 12,
  reserve: 13,
  alternate: 14,
  weight: 15,
  climbSpeed: 17,
  climbFlow: 18,
  descentFlow: 19,
  arriveAbove: 20,
} as const;
/** Twenty legs with their climbs and descents, the total, the alternate and the points of turning back. */
export const answer = { head: 49, first: 50, last: 97 } as const;
export const routeLastRow = answer.last;
