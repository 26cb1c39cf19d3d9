// Sheet functions that read the aircraft's own tables, as typed from its manual.
import { inOrder, openTable, type AircraftTable } from '../../core/manual/openTable';
import { readFigure } from '../../core/manual/readFigure';
import { ArgumentError } from '../registry/argumentError';
import { isBlank, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import { mapping, result, type Parameter } from '../registry/declaration';
import { omittable } from '../registry/modifiers';
import { number } from '../registry/readNumber';
import { text } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';
import { typedTable } from './readTypedTable';

const subject = 'Aircraft tables';

/** The owner's table, opened once for all rows of a call. */
export function aircraftTable(help: string): Parameter<AircraftTable> & { readonly shape: 'table' } {
  const base = typedTable(help);
  return { ...base, optional: undefined, read: (raw, dates) => openTable(base.read(raw, dates)) };
}

export const isHeadsOnly = (raw: CellValue): boolean => isRange(raw) && (raw as RangeValue).slice(1).every((row) => row.every(isBlank));

/** Headings with nothing below them are no table: an aircraft has none of that kind. */
export function orNoTable(
  table: Parameter<AircraftTable> & { readonly shape: 'table' },
): Parameter<AircraftTable | undefined> & { readonly shape: 'table' } {
  return { ...table, optional: undefined, read: (raw, dates) => (isHeadsOnly(raw) ? undefined : table.read(raw, dates)) };
}

export const wantedHeader = (help: string): Parameter<string> & { readonly shape: 'cell' } =>
  text({ mustBe: 'the header of a column of the table', help });

/** How a table says what it is, for the help of every function that reads one. */
export const formsInWords =
  'A row of words below the headings (or further down, for the rows below it) says more of each column: a unit; "up to" under weight where the figures hold for lighter weights too, or "up to 2300 lb" for one weight; ' +
  '"ISA deviation"; "density altitude"; "curve" where each curve has points of its own (straight lines along a curve, then between neighbouring curves); "ground roll at 20 °C", then "at 30 °C", for a two-way block; ' +
  '"from" for a further curve of a chain, which is entered with the answer before it. A column that is blank in every row is no input.';

const inputOf = (help: string): Parameter<number> & { readonly shape: 'cell' } => number({ unit: '', minimum: -1e6, maximum: 1e9, help });

/** The inputs given, without a gap between them. */
function inputsGiven(...given: readonly (number | undefined)[]): number[] {
  const inputs = given.filter((input) => input !== undefined);
  const gap = given.indexOf(undefined);
  if (gap >= 0 && gap < inputs.length) {
    const next = given.findIndex((input, index) => index > gap && input !== undefined);
    throw new NamedArgumentError(`input_${gap + 1}`, new ArgumentError(`a number, since input_${next + 1} is given`, 'a blank'));
  }
  return inputs;
}

export const AFM_READ = mapping({
  name: 'AFM_READ',
  subject,
  summary: "One value out of a table of the aircraft's manual, between its rows where the inputs lie between them.",
  parameters: {
    table: aircraftTable('The whole table with its header row; the first columns are the inputs, in order, and the rows may come in any order.'),
    wanted: wantedHeader('Header of the column to read; capitals and spaces do not matter.'),
    input_1: inputOf("Value of the table's first column, in its unit."),
    input_2: omittable(inputOf("Value of the table's second column."), 'the table has one input column'),
    input_3: omittable(inputOf("Value of the table's third column."), 'the table has no third input column'),
    input_4: omittable(inputOf('Value of a fourth input, such as the headwind of a chain of curves.'), 'the table has no fourth input'),
  },
  results: { value: result('as the table', 'The value, by straight lines along each input.') },
  sources: ['phak'],
  notes:
    'As many inputs as are given, so many first columns of the table are inputs. Straight lines between the rows (multilinear). Never extrapolates, and never fills in a row that is not there: ' +
    'beyond the table, or where a grid point it needs is missing, blank or given twice, it says so. Exactly on a row it needs no other row. An input cell left blank is a mistake, not an input left out. ' +
    formsInWords,
  examples: [
    {
      arguments: [
        [
          ['pressure altitude', 'ground roll'],
          [2000, 1115],
          [3000, 1230],
        ],
        'ground roll',
        2500,
      ],
      gives: 1172.5,
      source: 'FAA-H-8083-25A, page 10-19: halfway between 1,115 and 1,230 feet, printed as 1,173',
      formula: '=AFM_READ(A1:B3, "ground roll", 2500)',
    },
    {
      arguments: [
        [
          ['weight', 'temperature', 'distance'],
          [900, 0, 300],
          [900, 30, 360],
          [1100, 0, 420],
          [1100, 30, 500],
        ],
        'distance',
        1000,
        15,
      ],
      gives: 395,
      source: 'Invented table; by hand, the mean of its four corners',
      formula: '=AFM_READ(A1:C5, "distance", 1000, 15)',
    },
  ],
  compute: ({ table, wanted, input_1, input_2, input_3, input_4 }) => {
    const inputs = inputsGiven(input_1, input_2, input_3, input_4);
    const figure = table.figure(wanted, inputs.length);
    return { value: readFigure(figure, 'number', inOrder(figure, inputs)).value };
  },
});
