// Sheet functions that turn a distance table round: how heavy, how hot may it get for the runway to be long enough?
import { keyOfInput } from '../../core/manual/columns';
import { CoreError } from '../../core/basics/errors';
import { inOrder, type AircraftTable } from '../../core/manual/openTable';
import { bendsAlong, readFigure } from '../../core/manual/readFigure';
import { largestFitting, type TableLimit } from '../../core/runway/tableLimit';
import { aircraftTable, wantedHeader } from '../manual/table';
import { ArgumentError } from '../registry/argumentError';
import { quoted } from '../registry/cellValues';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { NamedArgumentError } from '../registry/wordError';
import { inventedTable } from './inventedExample';
import { landing, takeoff, type Operation } from './operation';

const subject = 'Aircraft tables';

const inputNumber = (help: string): ReturnType<typeof number> => number({ unit: '', minimum: -1e6, maximum: 1e9, help });
const common = {
  table: aircraftTable('The whole table with its header row; the first columns are the inputs, in order, and the rows may come in any order.'),
  wanted: wantedHeader('Header of the distance; capitals and spaces do not matter.'),
  available: number({
    unit: 'feet or metres',
    minimum: 0,
    maximum: 1_000_000,
    help: "Length of runway available, in the unit of the table's distances.",
  }),
};

const weightParameters = {
  ...common,
  input_2: inputNumber("Value of the table's second column, in its unit."),
  input_3: optional(inputNumber("Value of the table's third column."), undefined, 'the table has two input columns'),
};
const weightResults = { weight: result('as the table', 'The largest value of the first column whose factored distance fits.') };

const limitNotes =
  'Solved inside the cell of the table, exact for its straight lines. Never beyond the table: when its last row still fits, that row is the answer, also where heavier or hotter rows are blank. ' +
  'When not even the first row fits, or less of the input needs more distance than there is while more of it fits, it says so. ' +
  'Wind and corrections are not in it: multiply them into the factor, or use TAKEOFF_LIMITS or LANDING_LIMITS.';

/** A temperature cell left blank must not turn a table of one temperature into one of none. */
function mustBeTwoInputs({ typed: { plain: table } }: AircraftTable): void {
  const first = table?.rows[0]?.[2];
  if (table === undefined || first === undefined || table.rows.length < 2 || table.rows.some((row) => row[2] !== first)) return;
  const must = `given, since column 3 of the table, ${quoted(table.headers[2] ?? '')}, holds ${first} in every row and so looks like an input (if it is none, another column can stand third)`;
  throw new NamedArgumentError('input_3', new ArgumentError(must, 'a blank'));
}

interface LimitAsked {
  readonly table: AircraftTable;
  readonly wanted: string;
  /** Which input is asked for, from 0; its own entry in `inputs` is not read. */
  readonly input: number;
  readonly inputs: readonly number[];
  readonly available: number;
  readonly factor: number;
}

function limitOf({ table, wanted, input, inputs, available, factor }: LimitAsked): TableLimit {
  const figure = table.figure(wanted, inputs.length);
  const asked = figure.inputs[input];
  const values = asked === undefined ? [] : bendsAlong(figure, keyOfInput(asked));
  if (asked === undefined || values.length === 0) throw new CoreError('table-no-input', { input: asked?.header ?? `input ${input + 1}` });
  const distanceAt = (value: number): number =>
    readFigure(
      figure,
      'distance',
      inOrder(
        figure,
        inputs.map((given, index) => (index === input ? value : given)),
      ),
    ).value;
  return largestFitting({ header: asked.header, values, distanceAt, straight: figure.steps.length === 0, available, factor });
}

interface WeightArguments {
  readonly table: AircraftTable;
  readonly wanted: string;
  readonly available: number;
  readonly input_2: number;
  readonly input_3: number | undefined;
  readonly factor: number;
}

function greatestWeight({ table, wanted, available, input_2, input_3, factor }: WeightArguments): { readonly weight: number } {
  if (input_3 === undefined) mustBeTwoInputs(table);
  const inputs = [0, input_2, ...(input_3 === undefined ? [] : [input_3])];
  return { weight: limitOf({ table, wanted, input: 0, inputs, available, factor }).value };
}

const greatestWeightOf = ({ noun, factor, factorNote, factorSource }: Operation) => ({
  subject,
  summary: `The greatest weight at which the ${noun} still fits the runway, out of the aircraft's own table.`,
  parameters: { ...weightParameters, factor },
  results: weightResults,
  sources: ['phak', factorSource] as const,
  notes: `${limitNotes} ${factorNote}`,
  compute: greatestWeight,
});

export const TAKEOFF_MAX_WEIGHT = mapping({
  name: 'TAKEOFF_MAX_WEIGHT',
  ...greatestWeightOf(takeoff),
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 540, 0, 0],
      gives: 1000,
      source: 'Invented table; by hand: 540 / 1.5 = 360, halfway from 300 at 900 to 420 at 1,100',
      formula: '=TAKEOFF_MAX_WEIGHT(A1:D9, "over 50 ft", 540, 0, 0)',
    },
  ],
});

export const LANDING_MAX_WEIGHT = mapping({
  name: 'LANDING_MAX_WEIGHT',
  ...greatestWeightOf(landing),
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 600, 0, 0],
      gives: 1000,
      source: 'Invented table; by hand: 600 x 0.6 = 360, halfway from 300 at 900 to 420 at 1,100',
      formula: '=LANDING_MAX_WEIGHT(A1:D9, "over 50 ft", 600, 0, 0)',
    },
  ],
});

export const TAKEOFF_MAX_TEMPERATURE = mapping({
  name: 'TAKEOFF_MAX_TEMPERATURE',
  subject,
  summary: "The highest temperature at which the take-off still fits the runway, out of the aircraft's own table.",
  parameters: {
    ...common,
    input_1: inputNumber("Value of the table's first column, the weight."),
    input_2: inputNumber("Value of the table's second column, the pressure altitude."),
    factor: takeoff.factor,
  },
  results: { temperature: result('as the table', 'The highest value of the third column whose factored distance fits.') },
  sources: ['phak', 'common-practice'],
  notes: `The table's first three columns are weight, pressure altitude and temperature. ${limitNotes} ${takeoff.factorNote}`,
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 690, 1100, 0],
      gives: 15,
      source: 'Invented table; by hand: 690 / 1.5 = 460, halfway from 420 at 0 to 500 at 30',
      formula: '=TAKEOFF_MAX_TEMPERATURE(A1:D9, "over 50 ft", 690, 1100, 0)',
    },
  ],
  compute: ({ table, wanted, available, input_1, input_2, factor }) => ({
    temperature: limitOf({ table, wanted, input: 2, inputs: [input_1, input_2, 0], available, factor }).value,
  }),
});
