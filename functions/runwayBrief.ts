// Sheet functions that lay out the whole runway section of a sheet: air, wind, distance, corrections, margin, verdict.
import { CoreError } from '../core/errors';
import { runwayBrief, type RunwayBrief, type RunwayCase } from '../core/runwayBrief';
import { aircraftTable, wantedHeader } from './aircraftTable';
import { laying, result, type ResultCell } from './registry/declaration';
import { optional } from './registry/modifiers';
import { correctionRows } from './registry/readCorrections';
import { altimeterSetting, direction, limitInWords, number } from './registry/readNumber';
import { tableReason } from './registry/wordCoreError';
import { landingFactorParameter, takeoffFactorParameter } from './runway';

const subject = 'Runway';
const asTable = 'as the table';

export const briefParameters = {
  table: aircraftTable('The whole table with its header row; its first three columns are weight, pressure altitude (feet) and temperature (degrees Celsius).'),
  wanted: wantedHeader('Header of the distance to read; capitals and spaces do not matter.'),
  weight: number({ unit: 'pounds or kilograms', minimum: 0, maximum: 1_000_000, aboveMinimum: true, help: 'Weight of the aircraft, in the unit of the table.' }),
  runway_deg: direction("The runway's direction, in the same reference as the wind."),
  available: number({ unit: 'feet or metres', minimum: 0, maximum: 1_000_000, help: "Length of runway available, in the unit of the table's distances; 0 where the runway is closed." }),
  elevation_ft: number({ unit: 'feet', minimum: -5000, maximum: 30000, help: 'Elevation of the field above mean sea level.' }),
  altimeter_setting: altimeterSetting('25 to 32.5 is read as inches of mercury, 850 to 1,090 as hectopascals.'),
  temperature_c: number({ unit: 'degrees Celsius', minimum: -90, maximum: 60, help: 'Outside air temperature.' }),
  wind_from_deg: direction("Where the wind blows from, in the runway's reference; any direction for a calm."),
  wind_kt: number({ unit: 'knots', minimum: 0, maximum: 200, help: 'Wind speed.' }),
};

export const correctionsParameter = optional(
  correctionRows(
    'Four columns: name, percent, per amount, amount. The distance is multiplied by 1 + percent/100 x amount/per amount, row after row. ' +
      'In a row named headwind or tailwind (or "headwind 50 %", for a share of it) a blank amount is that part of the wind.',
  ),
  [],
  'the distance is taken as the book gives it, whatever the wind',
);

const briefResults = {
  item: result('', 'What the row is.'),
  value: result('', 'Its value.'),
  unit: result('', 'Its unit; beside the verdict, the reason.'),
};

const briefNotes =
  "Rows: pressure altitude, density altitude, headwind (negative is a tailwind), crosswind (positive from the right), book distance, one row for each correction, corrected distance, factored distance, available, margin, ratio (available over corrected), verdict. " +
  'Verdict OK when the factored distance fits, NO when not, UNKNOWN when the table does not cover the case, CHECK when it fits but there is a tailwind and no tailwind row with a blank amount among the corrections. ' +
  'Corrections multiply one another (UK CAA Safety Sense Leaflet 7). Never extrapolates.';

export const inputNames = ['weight', 'pressure altitude', 'temperature_c'];

/** Rounded to the careful side, so that nothing is made to look longer than it is; a hair of binary rounding aside. */
const spare = (margin: number): string => limitInWords(Math.floor(margin + 1e-6));
const excess = (margin: number): string => limitInWords(Math.ceil(-margin - 1e-6));

export const uncountedInWords = (knots: number): string => `${Number(knots.toPrecision(2))} kt of tailwind is not counted: corrections has no tailwind row`;

function reasonOf({ distances, uncountedTailwindKnots, verdict }: RunwayBrief, factor: number): string {
  if (distances instanceof CoreError) return tableReason(distances, inputNames);
  if (verdict === 'NO') return `factored distance is ${excess(distances.margin)} too long`;
  const fits = `${spare(distances.margin)} to spare after the factor ${Number(factor.toPrecision(4))}`;
  return uncountedTailwindKnots === 0 ? fits : `${fits}, but ${uncountedInWords(uncountedTailwindKnots)}`;
}

function briefRows(given: RunwayCase): ResultCell[][] {
  const brief = runwayBrief(given);
  const known = brief.distances instanceof CoreError ? undefined : brief.distances;
  const distance = (value: number | undefined): number | string => value ?? 'UNKNOWN';
  return [
    ['pressure altitude', brief.pressureAltitudeFeet, 'ft'],
    ['density altitude', brief.densityAltitudeFeet, 'ft'],
    ['headwind', brief.headwindKnots, 'kt'],
    ['crosswind', brief.crosswindKnots, 'kt'],
    ['book distance', distance(known?.book), asTable],
    ...brief.corrections.map(({ name, percent }) => [name, percent, 'percent']),
    ['corrected distance', distance(known?.corrected), asTable],
    ['factored distance', distance(known?.factored), asTable],
    ['available', given.available, asTable],
    ['margin', distance(known?.margin), asTable],
    ['ratio', distance(known?.ratio), 'available / corrected'],
    ['verdict', brief.verdict, reasonOf(brief, given.factor)],
  ];
}

export type BriefArguments = Pick<RunwayCase, 'table' | 'wanted' | 'weight' | 'available' | 'factor' | 'corrections'> & {
  readonly [Name in 'runway_deg' | 'elevation_ft' | 'altimeter_setting' | 'temperature_c' | 'wind_from_deg' | 'wind_kt']: number;
};

export const caseOf = (given: BriefArguments): RunwayCase => ({
  ...given,
  runwayDegrees: given.runway_deg,
  elevationFeet: given.elevation_ft,
  altimeterSettingHectopascals: given.altimeter_setting,
  temperatureCelsius: given.temperature_c,
  windFromDegrees: given.wind_from_deg,
  windKnots: given.wind_kt,
});

const layBrief = (given: BriefArguments): ResultCell[][] => briefRows(caseOf(given));

export const inventedTable = [
  ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
  [900, 0, 0, 300], [900, 0, 30, 360], [900, 2000, 0, 360], [900, 2000, 30, 430],
  [1100, 0, 0, 420], [1100, 0, 30, 500], [1100, 2000, 0, 500], [1100, 2000, 30, 600],
];
export const inventedCorrections = [['headwind', -10, 9, ''], ['tailwind', 10, 2, ''], ['dry grass', 20, 1, 1]];

const atSeaLevel = [
  ['pressure altitude', 0, 'ft'],
  ['density altitude', 0, 'ft'],
  ['headwind', 9, 'kt'],
  ['crosswind', 0, 'kt'],
  ['book distance', 395, asTable],
  ['headwind', -10, 'percent'],
  ['tailwind', 0, 'percent'],
  ['dry grass', 20, 'percent'],
  ['corrected distance', 426.6, asTable],
];

export const TAKEOFF_BRIEF = laying({
  name: 'TAKEOFF_BRIEF',
  subject,
  summary: "Everything of one take-off on one runway, from the aircraft's own table to the verdict.",
  parameters: { ...briefParameters, factor: takeoffFactorParameter, corrections: correctionsParameter },
  results: briefResults,
  sources: ['phak', 'icao-7488', 'safety-sense-7', 'common-practice'],
  notes: `${briefNotes} The factor 1.5 is common practice, no source.`,
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 1000, 270, 800, 0, 1013.25, 15, 270, 9, undefined, inventedCorrections],
      gives: [
        ...atSeaLevel,
        ['factored distance', 639.9, asTable],
        ['available', 800, asTable],
        ['margin', 160.1, asTable],
        ['ratio', 800 / 426.6, 'available / corrected'],
        ['verdict', 'OK', '160 to spare after the factor 1.5'],
      ],
      tolerance: 1e-6,
      source: 'Invented table; by hand: 395 x 0.9 x 1.2 = 426.6, x 1.5 = 639.9',
      formula: '=TAKEOFF_BRIEF(A1:D9, "over 50 ft", 1000, 270, 800, 0, 1013.25, 15, 270, 9, 1.5, F1:I3)',
    },
  ],
  compute: layBrief,
});

export const LANDING_BRIEF = laying({
  name: 'LANDING_BRIEF',
  subject,
  summary: "Everything of one landing on one runway, from the aircraft's own table to the verdict.",
  parameters: { ...briefParameters, factor: landingFactorParameter, corrections: correctionsParameter },
  results: briefResults,
  sources: ['phak', 'icao-7488', 'safety-sense-7', 'cfr-135-385'],
  notes: `${briefNotes} The factor 1/0.6 is a rule for carriers, advisory for private flight.`,
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 1000, 270, 700, 0, 1013.25, 15, 270, 9, undefined, inventedCorrections],
      gives: [
        ...atSeaLevel,
        ['factored distance', 711, asTable],
        ['available', 700, asTable],
        ['margin', -11, asTable],
        ['ratio', 700 / 426.6, 'available / corrected'],
        ['verdict', 'NO', 'factored distance is 11 too long'],
      ],
      tolerance: 1e-6,
      source: 'Invented table; by hand: 395 x 0.9 x 1.2 = 426.6, / 0.6 = 711',
      formula: '=LANDING_BRIEF(A1:D9, "over 50 ft", 1000, 270, 700, 0, 1013.25, 15, 270, 9, , F1:I3)',
    },
  ],
  compute: layBrief,
});
