// The fuel of the climb beyond cruise, for the fuel rule and for what is left at landing.
import { on } from '../build';
import { numberOfAircraft } from '../manual/sheet';
import { routeCells, sheetNames } from '../places';
import { tripRows as trip } from '../trip/rows';
import { onTrip } from './places';

export const byRoute = `${onTrip('B', trip.timesFrom)}="route"`;
/** Formula text: the fuel of a route has its climb in it, where it has one. */
export const climbExtra = `IF(AND(${byRoute},COUNTIF(${on(sheetNames.route, routeCells.parts)},"climb")>0),0,${numberOfAircraft('climb fuel, extra').slice(1)})`;
