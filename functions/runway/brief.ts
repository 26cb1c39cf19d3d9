// Sheet functions that lay out the whole runway section of a sheet: air, wind, distance, corrections, margin, verdict.
import { CoreError } from '../../core/basics/errors';
import { runwayBrief, type RunwayBrief, type RunwayCase } from '../../core/runway/brief';
import { directionOrVariable, directionsOf, mustReachWind } from '../air/wind';
import { unitNamed } from '../manual/columnWords';
import { aircraftTable, formsInWords, wantedHeader } from '../manual/table';
import { inventedCorrections, inventedTable } from './inventedExample';
import { basisInWords, uncountedTailwindInWords, uncountedWarmthInWords } from './basisWords';
import { laying, result, type ResultCell } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { altimeterSetting, direction, limitInWords, number } from '../registry/readNumber';
import { text } from '../registry/readText';
import { wholeDown, wholeUp } from '../registry/sharedWords';
import { tableReason, type NamedTable } from '../registry/wordCoreError';
import { takeoff, type Operation } from './operation';
import { correctionRows } from './readCorrections';

const subject = 'Runway';
const asTable = 'as the table';

export const briefParameters = {
  table: aircraftTable(
    'The whole table with its header row. Columns headed weight, pressure altitude or density altitude (feet), temperature (degrees Celsius) or ISA deviation, and headwind (knots), are its inputs; under other headings the first three are weight, pressure altitude and temperature.',
  ),
  wanted: wantedHeader('Header of the distance to read; capitals and spaces do not matter.'),
  weight: number({
    unit: 'pounds or kilograms',
    minimum: 0,
    maximum: 1_000_000,
    aboveMinimum: true,
    help: 'Weight of the aircraft, in weight_unit; where that is left out, in the unit of the table.',
  }),
  runway_deg: direction("The runway's direction, in the same reference as the wind."),
  available: number({
    unit: 'feet or metres',
    minimum: 0,
    maximum: 1_000_000,
    help: "Length of runway available, in length_unit; where that is left out, in the unit of the table's distances. 0 where the runway is closed.",
  }),
  elevation_ft: number({ unit: 'feet', minimum: -5000, maximum: 30000, help: 'Elevation of the field above mean sea level.' }),
  altimeter_setting: altimeterSetting('25 to 32.5 is read as inches of mercury, 850 to 1,090 as hectopascals.'),
  temperature_c: number({ unit: 'degrees Celsius', minimum: -90, maximum: 60, help: 'Outside air temperature.' }),
  wind_from_deg: directionOrVariable("Where the wind blows from, in the runway's reference; VRB for any direction; any direction for a calm."),
  wind_kt: number({ unit: 'knots', minimum: 0, maximum: 200, help: 'Wind speed.' }),
};

export const correctionsParameter = optional(
  correctionRows(
    'Four columns: name, percent, per amount, amount. The distance is multiplied by 1 + percent/100 x amount/per amount, row after row. ' +
      'In a row named headwind or tailwind (or "headwind 50 %", for a share of it) a blank amount is that part of the wind; in one named "above standard" it is the degrees Celsius above ISA. ' +
      'Behind a name "of ground roll" makes it a part of the ground roll, which lengthens the distance over 50 ft by as much; "ground roll only" and "over 50 ft only" are for one distance.',
  ),
  [],
  'the distance is taken as the book gives it, whatever the wind',
);

const unsteady = (help: string) => optional(direction(help), undefined, 'the direction is steady');

export const weightUnitParameter = optional(
  text({
    help: "Unit of weight, such as lb or kg. Where the table's heading says another one, it is converted.",
    mustBe: 'the name of a unit of weight, such as lb or kg',
  }),
  '',
  'the reasons give no unit of weight',
);

/** Behind the corrections: what makes the wind unsteady, and the names of the table's units. */
export const furtherParameters = {
  gust_kt: optional(
    number({ unit: 'knots', minimum: 0, maximum: 200, help: 'Gust, the whole speed and not the part above the wind.' }),
    undefined,
    'there is none',
  ),
  variable_from_deg: unsteady('Beginning of the range of directions, clockwise: 140 of 140V300.'),
  variable_to_deg: unsteady('End of the range: 300 of 140V300.'),
  length_unit: optional(
    text({
      help: "Unit of the runway available and of the answer, such as ft or m. Where the table's heading says another one, it is converted.",
      mustBe: 'the name of a unit of length, such as ft or m',
    }),
    asTable,
    '"as the table"',
  ),
  weight_unit: weightUnitParameter,
};

export const briefResults = {
  item: result('', 'What the row is.'),
  value: result('', 'Its value.'),
  unit: result('', 'Its unit; beside the verdict, the reason.'),
};

export const briefNotes =
  'Rows: pressure altitude, density altitude, headwind (negative is a tailwind), crosswind (positive from the right), book distance, one row for each correction, corrected distance, factored distance, available, margin, ratio (available over corrected), verdict. ' +
  'Verdict OK when the factored distance fits, NO when not, UNKNOWN when the table does not cover the case, CHECK when it fits but a tailwind, or for a table without temperatures a day warmer than standard, is counted by no correction. ' +
  'Corrections multiply one another (UK CAA Safety Sense Leaflet 7). Never extrapolates. ' +
  `${formsInWords} ` +
  'Of a wind whose direction varies, the least headwind and the greatest crosswind are taken; of gusts, the tailwind and the crosswind, but no headwind.';

/** What the distance takes no account of, in words; '' where that is nothing. */
export const uncountedInWords = ({ uncountedTailwindKnots, uncountedWarmthCelsius }: RunwayBrief): string =>
  [
    ...(uncountedTailwindKnots === 0 ? [] : [uncountedTailwindInWords(uncountedTailwindKnots)]),
    ...(uncountedWarmthCelsius === 0 ? [] : [uncountedWarmthInWords(uncountedWarmthCelsius)]),
  ].join('; ');

function reasonOf(brief: RunwayBrief, { factor, available }: RunwayCase, unit: string, table: NamedTable): string {
  const { distances, verdict } = brief;
  if (distances instanceof CoreError) return tableReason(distances, table);
  const lengthUnit = unit === asTable ? '' : ` ${unit}`;
  const factorText = `the factor ${Number(factor.toPrecision(4))}`;
  const has = wholeDown(available);
  // What is short is never nothing.
  const short = Math.max(1, wholeUp(distances.factored) - has);
  if (verdict === 'NO')
    return `${limitInWords(short)}${lengthUnit} short with ${factorText} (needs ${limitInWords(has + short)}${lengthUnit}, has ${limitInWords(has)}${lengthUnit})${basisInWords(distances.basis)}`;
  const fits = `${limitInWords(wholeDown(distances.margin))}${lengthUnit} to spare with ${factorText}`;
  const uncounted = uncountedInWords(brief);
  return `${uncounted === '' ? fits : `${fits}, but ${uncounted}`}${basisInWords(distances.basis)}`;
}

function briefRows(given: RunwayCase, unit: string, table: NamedTable): ResultCell[][] {
  const brief = runwayBrief(given);
  const known = brief.distances instanceof CoreError ? undefined : brief.distances;
  const distance = (value: number | undefined): number | string => value ?? 'UNKNOWN';
  return [
    ['pressure altitude', brief.pressureAltitudeFeet, 'ft'],
    ['density altitude', brief.densityAltitudeFeet, 'ft'],
    ['headwind', brief.headwindKnots, 'kt'],
    ['crosswind', brief.crosswindKnots, 'kt'],
    ['book distance', distance(known?.book), unit],
    ...brief.corrections.map(({ name, percent, of }) => [
      name,
      percent,
      of === undefined ? 'percent' : of === 'ground roll' ? 'percent of the ground roll' : `percent, ${of}`,
    ]),
    ['corrected distance', distance(known?.corrected), unit],
    ['factored distance', distance(known?.factored), unit],
    ['available', given.available, unit],
    ['margin', distance(known?.margin), unit],
    ['ratio', distance(known?.ratio), 'available / corrected'],
    ['verdict', brief.verdict, reasonOf(brief, given, unit, table)],
  ];
}

export type BriefArguments = Pick<RunwayCase, 'table' | 'wanted' | 'weight' | 'available' | 'factor' | 'corrections'> & {
  readonly [Name in 'runway_deg' | 'elevation_ft' | 'altimeter_setting' | 'temperature_c' | 'wind_kt']: number;
} & {
  readonly wind_from_deg: number | 'VRB' | undefined;
  readonly gust_kt: number | undefined;
  readonly variable_from_deg: number | undefined;
  readonly variable_to_deg: number | undefined;
  readonly length_unit: string;
  readonly weight_unit: string;
};

export const tableOf = ({ weight_unit, length_unit }: BriefArguments, name: NamedTable['name']): NamedTable => ({
  name,
  weightUnit: weight_unit,
  lengthUnit: length_unit === asTable ? '' : length_unit,
});

export function caseOf(given: BriefArguments): RunwayCase {
  if (given.gust_kt !== undefined) mustReachWind(given.gust_kt, given.wind_kt);
  const { from, sector } = directionsOf(given.wind_from_deg, given.variable_from_deg, given.variable_to_deg);
  return {
    ...given,
    runwayDegrees: given.runway_deg,
    elevationFeet: given.elevation_ft,
    altimeterSettingHectopascals: given.altimeter_setting,
    temperatureCelsius: given.temperature_c,
    windFromDegrees: from,
    windKnots: given.wind_kt,
    gustKnots: given.gust_kt,
    windSector: sector,
    weightUnit: unitNamed(given.weight_unit),
    lengthUnit: unitNamed(given.length_unit),
  };
}

export const atSeaLevel = [
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

/** What the take-off and the landing have alike. */
export const briefOf = ({ noun, table, factor, factorNote, factorSource }: Operation) => ({
  subject,
  summary: `Everything of one ${noun} on one runway, from the aircraft's own table to the verdict.`,
  parameters: { ...briefParameters, factor, corrections: correctionsParameter, ...furtherParameters },
  results: briefResults,
  sources: ['phak', 'icao-7488', 'safety-sense-7', factorSource] as const,
  notes: `${briefNotes} ${factorNote}`,
  compute: (args: BriefArguments) => briefRows(caseOf(args), args.length_unit, tableOf(args, table)),
});

export const TAKEOFF_BRIEF = laying({
  name: 'TAKEOFF_BRIEF',
  ...briefOf(takeoff),
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 1000, 270, 800, 0, 1013.25, 15, 270, 9, undefined, inventedCorrections],
      gives: [
        ...atSeaLevel,
        ['factored distance', 639.9, asTable],
        ['available', 800, asTable],
        ['margin', 160.1, asTable],
        ['ratio', 800 / 426.6, 'available / corrected'],
        ['verdict', 'OK', '160 to spare with the factor 1.5'],
      ],
      tolerance: 1e-6,
      source: 'Invented table; by hand: 395 x 0.9 x 1.2 = 426.6, x 1.5 = 639.9',
      formula: '=TAKEOFF_BRIEF(A1:D9, "over 50 ft", 1000, 270, 800, 0, 1013.25, 15, 270, 9, 1.5, F1:I3)',
    },
  ],
});
