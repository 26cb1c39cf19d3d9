// Sheet functions that read the aircraft's own tables, as typed from its manual.
import { columnOf, openTable, readGrid, type AircraftTable } from '../core/aircraftTable';
import { ArgumentError } from './registry/argumentError';
import { mapping, result, type Parameter } from './registry/declaration';
import { mayBeLeftOut } from './registry/modifiers';
import { number } from './registry/readNumber';
import { headedTable } from './registry/readTable';
import { text } from './registry/readText';
import { NamedArgumentError } from './registry/wordError';

const subject = 'Aircraft tables';

/** The owner's table, opened once for all rows of a call. */
export function aircraftTable(help: string): Parameter<AircraftTable> & { readonly shape: 'table' } {
  const base = headedTable(help);
  return { ...base, optional: undefined, read: (raw, dates) => openTable(base.read(raw, dates)) };
}

export const wantedHeader = (help: string): Parameter<string> & { readonly shape: 'cell' } => text({ mustBe: 'the header of a column of the table', help });

const inputOf = (help: string): Parameter<number> & { readonly shape: 'cell' } => number({ unit: '', minimum: -1e6, maximum: 1e9, help });

/** The inputs given, without a gap between them. */
function inputsGiven(first: number, second: number | undefined, third: number | undefined): number[] {
  if (second === undefined && third !== undefined) throw new NamedArgumentError('input_2', new ArgumentError('a number, since input_3 is given', 'a blank'));
  return [first, second, third].filter((input) => input !== undefined);
}

export const AFM_READ = mapping({
  name: 'AFM_READ',
  subject,
  summary: "One value out of a table of the aircraft's manual, between its rows where the inputs lie between them.",
  parameters: {
    table: aircraftTable('The whole table with its header row; the first columns are the inputs, in order, and the rows may come in any order.'),
    wanted: wantedHeader('Header of the column to read; capitals and spaces do not matter.'),
    input_1: inputOf("Value of the table's first column, in its unit."),
    input_2: mayBeLeftOut(inputOf("Value of the table's second column."), 'the table has one input column'),
    input_3: mayBeLeftOut(inputOf("Value of the table's third column."), 'the table has no third input column'),
  },
  results: { value: result('as the table', 'The value, by straight lines along each input.') },
  sources: ['phak'],
  notes:
    'As many inputs as are given, so many first columns of the table are inputs. Straight lines between the rows (multilinear). Never extrapolates, and never fills in a row that is not there: ' +
    'beyond the table, or where a grid point it needs is missing, blank or given twice, it says so. Exactly on a row it needs no other row. An input cell left blank is a mistake, not an input left out.',
  examples: [
    {
      arguments: [[['pressure altitude', 'ground roll'], [2000, 1115], [3000, 1230]], 'ground roll', 2500],
      gives: 1172.5,
      source: 'FAA-H-8083-25A, page 10-19: halfway between 1,115 and 1,230 feet, printed as 1,173',
      formula: '=AFM_READ(A1:B3, "ground roll", 2500)',
    },
    {
      arguments: [[['weight', 'temperature', 'distance'], [900, 0, 300], [900, 30, 360], [1100, 0, 420], [1100, 30, 500]], 'distance', 1000, 15],
      gives: 395,
      source: 'Invented table; by hand, the mean of its four corners',
      formula: '=AFM_READ(A1:C5, "distance", 1000, 15)',
    },
  ],
  compute: ({ table, wanted, input_1, input_2, input_3 }) => {
    const inputs = inputsGiven(input_1, input_2, input_3);
    const grid = table.withInputs(inputs.length);
    return { value: readGrid(grid, columnOf(grid, wanted, 'number'), inputs) };
  },
});
