// The sheet function that looks over a table the owner typed, before anything is read from it.
import { checkTyped, type TypedCheck } from '../../core/manual/checkTyped';
import type { TypedTable } from '../../core/manual/columns';
import type { InputsAsked } from '../../core/manual/figure';
import type { BlankAnswers, RowOfTable, StepAgainst, TableCheck, ValueApart, ValueBeyond } from '../../core/manual/tableCheck';
import { worstVerdict, type Verdict } from '../../core/basics/verdict';
import { aircraftTable, formsInWords } from './table';
import { ArgumentError } from '../registry/argumentError';
import { quoted, shortened } from '../registry/cellValues';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { limitInWords, number } from '../registry/readNumber';
import { numberRows } from '../registry/readTable';
import { firstFew, pointInWords, rounded } from '../registry/sharedWords';
import { NamedArgumentError } from '../registry/wordError';

const mostNamed = 5;

const some = (items: readonly string[], separator: string, count = items.length): string =>
  firstFew(items, mostNamed, { separator, before: separator, count });

/** Where a row stands: in the sheet, where its rows are given; else in the table. */
type Place = (row: number) => string;

const atRow = ({ row, point }: RowOfTable, place: Place): string => (point.length === 0 ? place(row) : `${pointInWords(point)} (${place(row)})`);

const blankInWords = ({ header, rows }: BlankAnswers, place: Place): string =>
  `${quoted(header)} is blank at ${some(
    rows.map((row) => atRow(row, place)),
    '; ',
  )}`;

/** Which of the two is wrong, a step does not tell. */
const againstInWords = ({ header, along, from, to }: StepAgainst, place: Place): string =>
  `${quoted(header)} is ${rounded(from.value)} at ${atRow(from, place)} and ${rounded(to.value)} at ${atRow(to, place)}, out of line along ${quoted(along)}: a typing error?`;

const apartInWords = ({ header, at, value, expected }: ValueApart, place: Place): string =>
  `${quoted(header)} is ${rounded(value)} at ${atRow(at, place)}, where its neighbours make about ${rounded(Number(expected.toPrecision(2)))}: a typing error?`;

const beyondInWords = ({ header, at, value }: ValueBeyond, place: Place): string =>
  `${quoted(header)} is ${rounded(value)} at ${atRow(at, place)}: digits or unit?`;

function missingInWords({ missing, missingCount, axes }: TableCheck): string {
  const points = missing.map((point) => pointInWords(point));
  const grid = axes.map(({ lines }) => limitInWords(lines)).join(' x ');
  return `of the ${grid} grid ${missingCount === 1 ? '1 point is' : `${limitInWords(missingCount)} points are`} missing: ${some(points, '; ', missingCount)}`;
}

const sizeInWords = ({ axes, curves }: TableCheck): string =>
  `${curves ? 'curves' : 'grid'} whole: ${axes.map(({ header, lines }) => `${limitInWords(lines)} ${shortened(header)}`).join(' x ')}`;

function reasonsOf(check: TableCheck, place: Place): string[] {
  const rowsOf = (first: RowOfTable, second: RowOfTable): string =>
    `${place(first.row).replace('row', 'rows')} and ${second.row === 0 ? '' : place(second.row).replace(/^.*row /, '')}`;
  const repeated = check.repeated.map(({ first, second }) => `${pointInWords(first.point)} (${rowsOf(first, second)})`);
  const reasons = [
    repeated.length > 0 ? `given twice: ${some(repeated, '; ')}` : '',
    check.unplacedRows.length > 0
      ? `an input is blank at ${some(
          check.unplacedRows.map((row) => atRow(row, place)),
          '; ',
        )}`
      : '',
    check.missingCount > 0 ? missingInWords(check) : '',
    ...check.blanks.map((blank) => blankInWords(blank, place)),
    check.lone.length > 0
      ? `a curve has one point alone: ${some(
          check.lone.map((row) => atRow(row, place)),
          '; ',
        )}`
      : '',
    some(
      check.beyond.map((one) => beyondInWords(one, place)),
      '; ',
    ),
    // What stands apart is told with its row; a step against the others does not tell which of two rows is wrong.
    check.apart.length > 0
      ? some(
          check.apart.map((one) => apartInWords(one, place)),
          '; ',
        )
      : some(
          check.against.map((one) => againstInWords(one, place)),
          '; ',
        ),
  ];
  return reasons.filter((reason) => reason !== '');
}

/** What a whole table does without, and how it is used. */
function formInWords({ upTo, absent }: TypedCheck): string[] {
  return [...upTo.map(({ header }) => `used below the least ${header} too`), ...absent.map(({ header }) => `no ${header}`)];
}

interface Answer {
  readonly verdict: Verdict;
  readonly reasons: string;
}

/** A table is looked over once for each number of inputs, however many rows ask. */
const answers = new WeakMap<TypedTable, Map<InputsAsked, Answer>>();

/** Sheet rows, one for each row of the table and its heading. */
export type SheetRows = readonly (readonly number[])[] | undefined;

function madeAnswer(table: TypedTable, inputs: InputsAsked, rows: SheetRows): Answer {
  const checked = checkTyped(table, inputs);
  const place: Place = (row) => (rows === undefined ? `row ${row}` : `sheet row ${rows[row - 1]?.[0] ?? '?'}`);
  const verdict = worstVerdict(checked.checks.map((check) => check.verdict));
  const said =
    verdict === 'OK' ? [...checked.checks.map(sizeInWords), ...formInWords(checked)] : checked.checks.flatMap((check) => reasonsOf(check, place));
  return { verdict, reasons: [...new Set(said)].join(verdict === 'OK' ? '; ' : '. ') };
}

/** The check of a table, in words. */
export function tableAnswer(table: TypedTable, inputs: InputsAsked, rows: SheetRows = undefined): Answer {
  if (rows !== undefined) return madeAnswer(table, inputs, rows);
  const ofTable = answers.get(table) ?? new Map<InputsAsked, Answer>();
  answers.set(table, ofTable);
  const answer = ofTable.get(inputs) ?? madeAnswer(table, inputs, undefined);
  ofTable.set(inputs, answer);
  return answer;
}

/** The rows of the sheet in which the table stands, so that what is wrong is found there. */
export const sheetRows = (help: string) =>
  optional(numberRows({ columns: ['row of the sheet'], help }), undefined, 'rows are counted within the table');

/** As many as the table has rows at the least, or they would name others. */
export function mustCover(argument: string, table: TypedTable, rows: SheetRows): SheetRows {
  const last = Math.max(...table.blocks.flatMap(({ places }) => places));
  if (rows !== undefined && rows.length < last)
    throw new NamedArgumentError(
      argument,
      new ArgumentError(`a row of the sheet for each of the ${limitInWords(last)} rows of the table, its headings included`, `${rows.length}`),
    );
  return rows;
}

export const AFM_CHECK = mapping({
  name: 'AFM_CHECK',
  subject: 'Aircraft tables',
  summary: 'Whether a typed table is whole: no grid point missing or given twice, no cell blank, no value out of line.',
  parameters: {
    table: aircraftTable('The whole table with its header row.'),
    inputs: number({
      unit: '',
      minimum: 1,
      maximum: 4,
      whole: true,
      help: 'How many of its first columns are inputs; where a row of words says what they are, that counts.',
    }),
    rows: sheetRows('The rows of the sheet that the table stands in, its headings included: ROW(...) of the same cells.'),
  },
  results: {
    verdict: result('', 'OK where the grid is whole; CHECK where parts of it cannot be read or look wrong; NO where nothing can be read from it.'),
    reasons: result('', 'What is missing or wrong: each row by its inputs, and by its place in the table, the header being row 1.'),
  },
  sources: ['common-practice'],
  notes:
    'A value is out of line when a step to it goes down while nine tenths or more of the steps of its column along that input go up, or the other way round, among ten steps or more: a typing error, most likely. ' +
    'A value also stands apart when, along every input, the straight line through its neighbours misses it by more than 7 percent and by four times what is usual in its column, in a table of 12 rows or more. ' +
    'Common practice, no source. It cannot see a smaller slip: compare the table with the manual. ' +
    `${formsInWords} Curves are looked over each for itself, and need no grid.`,
  examples: [
    {
      arguments: [
        [
          ['weight', 'temperature', 'distance'],
          [900, 0, 300],
          [900, 30, 360],
          [1100, 0, 420],
        ],
        2,
      ],
      gives: [['CHECK', 'of the 2 x 2 grid 1 point is missing: weight 1,100, temperature 30']],
      source: 'Invented table, by hand',
      formula: '=AFM_CHECK(A1:C4, 2)',
    },
  ],
  compute: ({ table, inputs, rows }) => tableAnswer(table.typed, inputs, mustCover('rows', table.typed, rows)),
});
