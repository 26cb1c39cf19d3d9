// Where the parts of the Route sheet stand: the legs across the whole sheet, below them what holds for all of them, then the flight.
import type { List } from '../lists';

export const legList: List = { head: 9, first: 10, last: 29 };
/** First column of the winds. */
export const airFrom = 11;
export const airList: List = { head: 34, first: 35, last: 46 };
/** The whole route: one value a row. */
export const wholeRows = {
  date: 35,
  takeoff: 36,
  fuel: 37,
  reserve: 38,
  alternate: 39,
  weight: 40,
  departureElevation: 41,
  climbHelp: 42,
  climbSpeed: 43,
  climbFlow: 44,
  descentFlow: 45,
  arriveAbove: 46,
  levelHelp: 47,
  power: 48,
  judgeGround: 49,
  clearance: 50,
  sourceElevation: 51,
  flownBefore: 52,
  cardHelp: 53,
  lastGroundspeed: 54,
  lastCourse: 55,
} as const;
export const pointList: List = { head: 58, first: 59, last: 68 };
/** Places whose sun is worked out: the three of the trip. */
export const sunRows = { heading: 58, first: 60, last: 62 } as const;
/** Twenty legs with their climbs and descents, the total, the alternate and the points of turning back. */
export const answer = { head: 73, first: 74, last: 121 } as const;
/** Where the sun is worked out, below what is read. */
export const sunWorkedRows = { head: 125, first: 126, last: 128 } as const;
export const routeLastRow = sunWorkedRows.last;
/** Columns of the legs: what is typed, and what is answered beside it. */
export const legColumns = { from: 2, altitude: 4, trueAirspeed: 5, fuelFlow: 6, power: 7, ground: 8, clearance: 9, levels: 10 } as const;
