// Sheet functions that say what the runway of a brief would still carry: how much to leave behind, how hot it may get.
import type { TableLimit } from '../../core/runway/tableLimit';
import { CoreError } from '../../core/basics/errors';
import { runwayLimits } from '../../core/runway/limits';
import { laying, result, type ResultCell } from '../registry/declaration';
import { tableReason, type NamedTable } from '../registry/wordCoreError';
import { briefParameters, caseOf, correctionsParameter, furtherParameters, tableOf, uncountedInWords, type BriefArguments } from './brief';
import { inventedCorrections, inventedTable } from './inventedExample';
import { landing, takeoff, type Operation } from './operation';

const subject = 'Runway';

const limitResults = {
  item: result('', 'What the row is.'),
  value: result('', 'Its value; NO where not even the lowest row of the table fits, UNKNOWN where the table does not cover the case.'),
  unit: result('', 'Its unit.'),
  note: result('', 'Why there is no value, or what limits it.'),
};

const wordOf = (error: CoreError): string => (error.code === 'table-none-fits' ? 'NO' : 'UNKNOWN');

/** A limit, and how far from it the case is: two rows. */
function limitRows(
  item: string,
  spareItem: string,
  unit: string,
  limit: TableLimit | CoreError,
  now: number,
  tailwind: string,
  table: NamedTable,
): ResultCell[][] {
  if (limit instanceof CoreError)
    return [
      [item, wordOf(limit), unit, tableReason(limit, table)],
      [spareItem, wordOf(limit), unit, ''],
    ];
  const notes = [limit.atTableEnd ? 'where the table ends; beyond it nothing is known' : '', tailwind];
  return [
    [item, limit.value, unit, notes.filter((note) => note !== '').join('; ')],
    [spareItem, limit.value - now, unit, ''],
  ];
}

function layLimits(given: BriefArguments, name: NamedTable['name']): ResultCell[][] {
  const table = tableOf(given, name);
  const { brief, weight, temperatureCelsius } = runwayLimits(caseOf(given));
  const tailwind = uncountedInWords(brief);
  const { distances } = brief;
  const needed =
    distances instanceof CoreError
      ? ['UNKNOWN', given.length_unit, tableReason(distances, table)]
      : [distances.factored, given.length_unit, tailwind];
  return [
    ...limitRows(
      'greatest weight',
      'weight to spare',
      given.weight_unit === '' ? 'as the table' : given.weight_unit,
      weight,
      given.weight,
      tailwind,
      table,
    ),
    ...limitRows('highest temperature', 'temperature to spare', 'degrees Celsius', temperatureCelsius, given.temperature_c, tailwind, table),
    ['runway needed', ...needed],
  ];
}

const limitNotes =
  'Rows: greatest weight, weight to spare (negative is what to leave behind), highest temperature, temperature to spare, runway needed (factor and corrections included). ' +
  'Arguments as in the brief; each limit lets one input go and holds the others, wind, corrections and factor. Solved inside the cell of the table, never beyond it.';

const limitsOf = ({ noun, table, factor, factorNote, factorSource }: Operation) => ({
  subject,
  summary: `What this ${noun} would still allow: the greatest weight, the highest temperature, the least runway.`,
  parameters: { ...briefParameters, factor, corrections: correctionsParameter, ...furtherParameters },
  results: limitResults,
  sources: ['phak', 'icao-7488', 'safety-sense-7', factorSource] as const,
  notes: `${limitNotes} ${factorNote}`,
  compute: (args: BriefArguments) => layLimits(args, table),
});

/** The rows of the invented case, in which only the runway needed depends on the factor. */
const inventedLimits = (needed: number) => [
  ['greatest weight', 900 + (200 * 100) / 120, 'as the table', ''],
  ['weight to spare', (200 * 100) / 120 - 100, 'as the table', ''],
  ['highest temperature', (30 * 40) / 70, 'degrees Celsius', ''],
  ['temperature to spare', (30 * 40) / 70, 'degrees Celsius', ''],
  ['runway needed', needed, 'as the table', ''],
];

export const TAKEOFF_LIMITS = laying({
  name: 'TAKEOFF_LIMITS',
  ...limitsOf(takeoff),
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 1000, 270, 648, 0, 1013.25, 0, 270, 9, undefined, inventedCorrections],
      gives: inventedLimits(360 * 0.9 * 1.2 * 1.5),
      tolerance: 1e-6,
      source: 'Invented table; by hand: 648 / (1.5 x 0.9 x 1.2) = 400, between 300 and 420 by weight, between 360 and 430 by temperature',
      formula: '=TAKEOFF_LIMITS(A1:D9, "over 50 ft", 1000, 270, 648, 0, 1013.25, 0, 270, 9, 1.5, F1:I3)',
    },
  ],
});

export const LANDING_LIMITS = laying({
  name: 'LANDING_LIMITS',
  ...limitsOf(landing),
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 1000, 270, 720, 0, 1013.25, 0, 270, 9, undefined, inventedCorrections],
      gives: inventedLimits((360 * 0.9 * 1.2) / 0.6),
      tolerance: 1e-6,
      source: 'Invented table; by hand: 720 x 0.6 / (0.9 x 1.2) = 400, between 300 and 420 by weight, between 360 and 430 by temperature',
      formula: '=LANDING_LIMITS(A1:D9, "over 50 ft", 1000, 270, 720, 0, 1013.25, 0, 270, 9, , F1:I3)',
    },
  ],
});
