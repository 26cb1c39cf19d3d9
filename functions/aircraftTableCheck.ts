// The sheet function that looks over a table the owner typed, before anything is read from it.
import { checkTable, type BlankAnswers, type StepAgainst, type TableCheck } from '../core/aircraftTableCheck';
import type { NumberTable } from '../core/tableGrid';
import type { Verdict } from '../core/verdict';
import { aircraftTable } from './aircraftTable';
import { mapping, result } from './registry/declaration';
import { limitInWords, number } from './registry/readNumber';
import { firstFew, pointInWords } from './registry/sharedWords';

const mostNamed = 5;

const some = (items: readonly string[], separator: string, count = items.length): string => firstFew(items, mostNamed, { separator, before: separator, count });

const rowsInWords = (rows: readonly number[]): string => `${rows.length === 1 ? 'row' : 'rows'} ${some(rows.map(String), ', ')}`;

const blankInWords = ({ header, rows }: BlankAnswers): string => `"${header}" is blank in ${rowsInWords(rows)}`;

const againstInWords = ({ header, along, fromRow, toRow }: StepAgainst): string =>
  `"${header}" from row ${fromRow} to row ${toRow} goes against its other steps along "${along}"`;

function missingInWords({ missing, missingCount, axes }: TableCheck): string {
  const points = missing.map((point) => pointInWords(point));
  const grid = axes.map(({ lines }) => limitInWords(lines)).join(' x ');
  return `of the ${grid} grid ${missingCount === 1 ? '1 point is' : `${limitInWords(missingCount)} points are`} missing: ${some(points, '; ', missingCount)}`;
}

function reasonsOf(check: TableCheck): string {
  const size = check.axes.map(({ header, lines }) => `${limitInWords(lines)} ${header}`).join(' x ');
  if (check.verdict === 'OK') return `grid whole: ${size}`;
  const repeated = check.repeated.map(({ firstRow, secondRow }) => `${firstRow} and ${secondRow}`);
  const reasons = [
    repeated.length > 0 ? `the same grid point is given twice in rows ${some(repeated, ', ')}` : '',
    check.unplacedRows.length > 0 ? `an input is blank in ${rowsInWords(check.unplacedRows)}` : '',
    check.missingCount > 0 ? missingInWords(check) : '',
    ...check.blanks.map(blankInWords),
    some(check.against.map(againstInWords), '; '),
  ];
  return reasons.filter((reason) => reason !== '').join('. ');
}

interface Answer {
  readonly verdict: Verdict;
  readonly reasons: string;
}

/** A table is looked over once for each number of inputs, however many rows ask. */
const answers = new WeakMap<NumberTable, Map<number, Answer>>();

function answerFor(table: NumberTable, inputs: number): Answer {
  const ofTable = answers.get(table) ?? new Map<number, Answer>();
  answers.set(table, ofTable);
  const known = ofTable.get(inputs);
  if (known !== undefined) return known;
  const check = checkTable(table, inputs);
  const answer = { verdict: check.verdict, reasons: reasonsOf(check) };
  ofTable.set(inputs, answer);
  return answer;
}

export const AFM_CHECK = mapping({
  name: 'AFM_CHECK',
  subject: 'Aircraft tables',
  summary: 'Whether a typed table is whole: no grid point missing or given twice, no cell blank, no value out of line.',
  parameters: {
    table: aircraftTable('The whole table with its header row.'),
    inputs: number({ unit: '', minimum: 1, maximum: 3, whole: true, help: 'How many of its first columns are inputs.' }),
  },
  results: {
    verdict: result('', 'OK where the grid is whole; CHECK where parts of it cannot be read or look wrong; NO where nothing can be read from it.'),
    reasons: result('', 'What is missing or wrong, rows counted with the header as row 1.'),
  },
  sources: ['common-practice'],
  notes:
    'A value is out of line when a step to it goes down while nine tenths or more of the steps of its column along that input go up, or the other way round, among ten steps or more: a slip of typing, most likely. ' +
    'Common practice, no source. It cannot see a slip that keeps the order: compare the table with the manual.',
  examples: [
    {
      arguments: [[['weight', 'temperature', 'distance'], [900, 0, 300], [900, 30, 360], [1100, 0, 420]], 2],
      gives: [['CHECK', 'of the 2 x 2 grid 1 point is missing: weight 1,100, temperature 30']],
      source: 'Invented table, by hand',
      formula: '=AFM_CHECK(A1:C4, 2)',
    },
  ],
  compute: ({ table, inputs }) => answerFor(table.table, inputs),
});
