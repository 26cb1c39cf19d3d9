// The sheet function of a whole route: legs, winds, times and fuel in one call.
import { routeOf } from '../../core/route/route';
import { aircraftTable, orNoTable } from '../manual/table';
import { schedule } from '../descent/plan';
import { laying, result } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { date, timeOfDayZulu } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { namedText } from '../registry/readText';
import { cruiseMeans, cruiseOfAll, cruiseTable, flow } from './cruiseParameters';
import { airRows, legRows, mostLegs, placeRows } from './readRoute';
import { routeRows } from './routeRows';

const most = 1_000_000;
const quantity = (help: string) => number({ unit: 'as the flow', minimum: 0, maximum: most, help });

export const ROUTE_LEGS = laying({
  name: 'ROUTE_LEGS',
  subject: 'Route',
  summary:
    'A whole route: course, distance, heading, groundspeed, time and fuel of each leg with its climb and descent, what is left and still wanted.',
  parameters: {
    legs: legRows(
      `Up to ${mostLegs} legs under one header row: from, to, altitude, true airspeed, fuel flow, power. Places by name or position; a blank "from" is where the leg before ends; a blank airspeed or flow is read in the cruise table, or is that of the aircraft.`,
    ),
    places: placeRows('Fields under one header row: field, latitude, longitude, elevation.'),
    winds: airRows(
      'Winds under one header row: place, altitude, wind from, wind, temperature (feet, degrees true, knots, Celsius). Without a place they hold everywhere; else those of the place nearest to the middle of a leg. They must reach every height flown.',
    ),
    date: date('Date of the flight, for the magnetic variation.'),
    off_z: timeOfDayZulu('Time of take-off, UTC.'),
    fuel: quantity('Usable fuel at take-off, after taxiing.'),
    reserve: quantity('Fuel to be left at the end: the final reserve and all else that is kept.'),
    points: optional(
      placeRows('Your own points, under one header row: point, position (as written on charts); latitude and longitude do as well.'),
      [],
      'none',
    ),
    cruise: cruiseTable,
    climb: optional(
      orNoTable(
        aircraftTable(
          'Climb table with its header row: first of weight, pressure altitude, temperature those it has; then minutes, fuel, distance from the first row up; or rate of climb, with indicated airspeed and fuel flow or the arguments below.',
        ),
      ),
      undefined,
      'the first leg is flown at its level from the start, and the total is CHECK',
    ),
    descent: optional(schedule, [], 'the last leg is flown at its level to the end'),
    alternate: optional(
      namedText({ mustBe: 'the name of a place in the lists, or a position', help: 'Flown to from overhead the destination at the last level.' }),
      undefined,
      'none',
    ),
    weight: optional(
      number({ unit: 'as the tables', minimum: 1, maximum: most, help: 'For tables that begin with a weight.' }),
      undefined,
      'the tables have none',
    ),
    climb_kt: optional(
      number({ unit: 'knots indicated', minimum: 20, maximum: 400, help: 'For a climb table without a speed.' }),
      undefined,
      'as the table',
    ),
    climb_flow: optional(flow('For a climb table without a flow.'), undefined, 'as the table'),
    descent_flow: optional(flow('Fuel flow in the descent.'), undefined, 'that of the cruise'),
    arrive_above_ft: optional(
      number({ unit: 'feet', minimum: 0, maximum: 10000, help: 'Height above the destination at which the descent ends.' }),
      1000,
      '1,000',
    ),
    headings: headingsAbove,
    ...cruiseOfAll,
  },
  results: {
    leg: result('', 'Number of the leg; then total, alternate, equal time, safe return.'),
    part: result('', 'climb, cruise, step down, descent.'),
    from: result('', 'Where it begins.'),
    to: result('', 'Where it ends.'),
    altitude_ft: result('feet', 'At its end.'),
    true_airspeed: result('knots', 'Mean.'),
    wind_from: result('degrees true', 'Mean.'),
    wind_kt: result('knots', 'Mean.'),
    true_course: result('degrees true', 'In the middle of the leg.'),
    variation: result('degrees', 'In the middle of the leg, east positive.'),
    magnetic_heading: result('degrees magnetic', 'In the middle of the leg.'),
    distance_nm: result('nautical miles', 'On the WGS84 ellipsoid; of the last two rows from the departure.'),
    groundspeed: result('knots', 'Distance over time.'),
    minutes: result('minutes', 'Time.'),
    fuel: result('as the flow', 'Fuel burned.'),
    time_over: result('UTC', 'At its end, as 1430Z, seconds dropped.'),
    fuel_left: result('as the flow', 'At its end.'),
    fuel_wanted: result('as the flow', 'The least that is wanted there: for the rest of the route, the alternate and the reserve.'),
    verdict: result('', 'OK; NO where less is left than wanted; CHECK, UNKNOWN.'),
    reason: result('', 'Why it is not OK.'),
  },
  sources: ['karney-2013', 'wmm-2025', 'phak', 'icao-7488', 'common-practice'],
  notes:
    'Times are integrated along the course, which turns on a long leg. A higher level is climbed to from the beginning of its leg, a lower one come down to from there, and the last descent ends above the destination (common practice). ' +
    'Altitudes are taken as pressure altitudes, indicated as calibrated airspeed; without temperatures the climb and descent are in standard air. Winds are interpolated by height as vectors, never beyond their rows. What is wrong with a leg stands in its row and makes the total UNKNOWN. ' +
    'Compass deviation is left out. The way back is flown at the level and cruise of each leg; no contingency is added. A wind of more than 100 NM away is CHECK (common practice, no source).',
  examples: [
    {
      arguments: [
        [
          ['from', 'to', 'altitude', 'true airspeed', 'fuel flow'],
          ['Alder', 'N0100 E00000', 3000, 120, 8],
        ],
        [
          ['field', 'latitude', 'longitude', 'elevation'],
          ['Alder', 0, 0, 200],
        ],
        [
          ['altitude', 'wind from', 'knots'],
          [3000, 360, 20],
        ],
        '2026-06-01',
        1200,
        20,
        5,
      ],
      gives: [
        [1, 'cruise', 'Alder', 'N0100 E00000', 3000, 120, 0, 20, 0, -3.684, 3.684, 59.705, 100, 35.82, 4.78, '1235Z', 15.22, 5, 'OK', ''],
        [
          'total',
          '',
          'Alder',
          'N0100 E00000',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          59.7,
          100,
          35.82,
          4.78,
          '1235Z',
          15.22,
          5,
          'CHECK',
          'no climb table: the climb is flown as cruise',
        ],
        [
          'equal time',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          34.83,
          '',
          20.9,
          2.79,
          '1220Z',
          17.21,
          '',
          '',
          'from here it takes as long to N0100 E00000 as back to Alder',
        ],
        [
          'safe return',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          'not before N0100 E00000: the fuel lasts for the way back from there',
        ],
      ],
      tolerance: 0.01,
      source: 'By hand: the first degree of the meridian is 110,574.4 m (GRS80), 59.705 NM, at 120 - 20 knots; the variation from the model',
      formula: '=ROUTE_LEGS(A1:E2, G1:J2, L1:N2, "2026-06-01", 1200, 20, 5)',
    },
  ],
  compute: (given) => {
    const { legs, off_z, fuel, reserve } = given;
    const route = routeOf({
      legs: legs.map(({ entry }) => entry),
      places: [...given.places, ...given.points],
      winds: given.winds,
      date: given.date,
      fuel,
      reserve,
      alternate: given.alternate,
      cruise: cruiseMeans(given),
      climb: given.climb,
      figures: { weight: given.weight, climbIndicatedKnots: given.climb_kt, climbFlowPerHour: given.climb_flow, fuelUnit: given.fuel_unit },
      descent: given.descent,
      descentFlowPerHour: given.descent_flow,
      arriveAboveFeet: given.arrive_above_ft,
    });
    return routeRows(route, { read: legs, offMinutes: off_z, fuel, reserve });
  },
});
