// What the two calls on the legs are given alike: the legs, the places, the air over them, and the cruise of the aircraft.
import { area, on } from '../build';
import { fieldList } from '../fields/sheet';
import { numberOfAircraft, wordOfAircraft } from '../manual/sheet';
import { tableInUse } from '../manual/tables';
import { sheetNames } from '../places';
import { tableOf } from './entries';
import { airFrom, airList, legColumns, legList, pointList, wholeRows as rows } from './rows';
import { value } from './whole';

export const legsHere = area(legList.head, legColumns.from, legList.last + 1, legColumns.clearance);
export const fieldsHere = on(sheetNames.fields, area(fieldList.head, 1, fieldList.last + 1, 6));
export const windsHere = tableOf(airList, airFrom, airFrom + 4);
export const pointsHere = tableOf(pointList, 2, 3);
export const cruiseHere = tableInUse('cruise');
const ofAircraft = (header: 'cruise true airspeed, kt' | 'cruise fuel flow, an hour'): string => numberOfAircraft(header).slice(1);
/** Power, true airspeed, flow and unit of fuel for legs that say nothing of their own. */
export const cruiseOfAll = [
  value(rows.power),
  ofAircraft('cruise true airspeed, kt'),
  ofAircraft('cruise fuel flow, an hour'),
  wordOfAircraft('fuel in'),
] as const;
