// The sheet function of each leg at its level: the cruise figures used, and how far the level clears the highest ground.
import { routeLevels } from '../../core/route/levels';
import { laying, result } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { yesNo } from '../registry/readText';
import { cruiseMeans, cruiseOfAll, cruiseTable } from './cruiseParameters';
import { levelRows } from './levelRows';
import { airRows, legRows, placeRows } from './readRoute';

export const ROUTE_LEVELS = laying({
  name: 'ROUTE_LEVELS',
  subject: 'Route',
  summary:
    'Each leg of a route at its level: the true airspeed and fuel flow used and where they come from, and how far it clears the highest ground, cold air counted.',
  parameters: {
    legs: legRows(
      'The legs as ROUTE_LEGS takes them, with two columns more: highest ground, clearance (feet). The answers stand beside the rows, blank ones too.',
    ),
    places: placeRows('Fields, as ROUTE_LEGS takes them.'),
    winds: airRows('Winds and temperatures, likewise.'),
    clearance_ft: optional(
      number({ unit: 'feet', minimum: 0, maximum: 10_000, help: 'Wanted above the highest ground of legs without a clearance of their own.' }),
      undefined,
      'each leg says it',
    ),
    judge_ground: optional(yesNo('With no the ground is not judged.'), true, 'yes'),
    source_ft: optional(
      number({ unit: 'feet', minimum: -1500, maximum: 10_000, help: "Elevation of the altimeter's source, for cold air." }),
      undefined,
      'the lower of departure and destination, by the list of fields',
    ),
    points: optional(placeRows('Your own points, as ROUTE_LEGS takes them.'), [], 'none'),
    cruise: cruiseTable,
    weight: optional(
      number({ unit: 'as the table', minimum: 1, maximum: 1_000_000, help: 'For a cruise table that begins with a weight.' }),
      undefined,
      'the table has none',
    ),
    ...cruiseOfAll,
    headings: headingsAbove,
  },
  results: {
    true_airspeed: result('knots', 'Used on the leg.'),
    fuel_flow: result('an hour', 'Used on the leg.'),
    cold_ft: result('feet', 'What cold air asks for beyond ground and clearance.'),
    spare_ft: result('feet', 'The level above ground, clearance and cold_ft; negative is what is missing.'),
    verdict: result('', 'NO where the level lies below them; CHECK, UNKNOWN; "not judged" where that is asked for.'),
    reason: result('', 'Why, and where speed and flow come from.'),
  },
  sources: ['icao-8168', 'icao-7488', 'cfr-91-119', 'phak', 'common-practice'],
  notes:
    'A typed airspeed or flow goes first; then the cruise table, read at the power, level and temperature of the leg, never beyond its rows; then cruise_kt and cruise_flow. With a cruise table that has powers, a leg without one is flown at cruise_kt and cruise_flow. ' +
    'The level is judged, not the climb to it nor the descent from it. Levels count as altitudes on the setting of the source. The correction for cold air is that of COLD_TEMPERATURE_CORRECTION, taken with the coldest deviation from standard given at the level or below it (the careful reading); no further than it is published. ' +
    'CHECK: a clearance of less than 500 ft (14 CFR 91.119(c)), or a highest ground below a field at the end of the leg.',
  examples: [
    {
      arguments: [
        [
          ['from', 'to', 'altitude', 'true airspeed', 'fuel flow', 'highest ground'],
          ['Alder', 'N0100 E00000', 3000, 120, 8, 1000],
        ],
        [
          ['field', 'latitude', 'longitude', 'elevation'],
          ['Alder', 0, 0, 0],
        ],
        [
          ['altitude', 'wind from', 'knots', 'temperature'],
          [0, 360, 20, -10],
          [3000, 360, 20, -10],
        ],
        1000,
      ],
      gives: [[120, 8, 191.56, 808.44, 'OK', '808 ft more than wanted, 192 counted for cold air; speed and flow typed']],
      tolerance: 0.05,
      source: 'By hand, ICAO Doc 8168: 2,000 x 25 / (263 - 0.00099 x 2,000) = 191.6; printed for 2,000 ft at -10: 200, rounded up',
      formula: '=ROUTE_LEVELS(A1:F2, H1:K2, M1:P3, 1000)',
    },
  ],
  compute: (given) => {
    const { legs, places, points, winds } = given;
    const levels = routeLevels({ legs: legs.map(({ entry }) => entry), places: [...places, ...points], winds, cruise: cruiseMeans(given) });
    return levelRows(levels, { read: legs, judged: given.judge_ground, clearanceFeet: given.clearance_ft, sourceFeet: given.source_ft });
  },
});
