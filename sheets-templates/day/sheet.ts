// Flights of the day: up to four trips after one another, with the verdict of each and the worst of all. No call of ours: each trip is read by the names of its own sheets.
import { capped, caution, cell, filledOutside, judgedOnTop, line, typedOver, unlessFormula } from '../build';
import { whileDemo } from '../demo/inUse';
import { columnsFrom } from '../keys';
import { listHeading, listHeads } from '../lists';
import type { FormatName, StyleName } from '../look';
import { sheetNames } from '../places';
import type { DeclaredSheet, TemplateCell } from '../template';
import { fuelUnit } from '../trip/flightBefore';
import { isListed, joinReason, joinWord, letterOf } from './joins';
import { firstTripNames, flightColumns, flightFormulas, flightList, flightsFrom, type FlightColumn } from './places';

const { head, first, last } = flightList;
const rows = Array.from({ length: last - first + 1 }, (_, index) => first + index);
const looks: Readonly<Record<FlightColumn, readonly [head: string, style: StyleName, format: FormatName]>> = {
  trip: ['Trip sheet', 'inputText', 'general'],
  from: ['from', 'inputText', 'general'],
  to: ['to', 'inputText', 'general'],
  takeoff: ['take-off, UTC', 'input', 'dateTime'],
  landing: ['landing, UTC', 'input', 'dateTime'],
  fuelAtStart: ['fuel at start', 'input', 'one'],
  takenOn: ['of it taken on', 'input', 'one'],
  fuelLeft: ['fuel at landing', 'input', 'one'],
  verdict: ['its verdict', 'inputText', 'general'],
  reason: ['its first reason', 'inputText', 'general'],
};
const formulas = flightFormulas(firstTripNames);
const joinColumn = flightsFrom + flightColumns.length;
const [joinLetter, reasonLetter] = [String.fromCharCode(64 + joinColumn), String.fromCharCode(65 + joinColumn)];

const flightCells: TemplateCell[] = rows.flatMap((row, index) => [
  cell(row, 1, index + 1, 'label'),
  ...line(
    row,
    flightsFrom,
    ...flightColumns.map((column) => {
      const [, style, format] = looks[column];
      const content = index > 0 ? undefined : column === 'trip' ? sheetNames.trip : formulas[column];
      return [content, style, { format }] as const;
    }),
  ),
  ...line(row, joinColumn, [joinWord(row, `${reasonLetter}${row}`), 'verdict'], [joinReason(row), 'reason']),
]);

const of = (letter: string): string => `${letter}${first}:${letter}${last}`;
const [verdicts, joins] = [of(letterOf('verdict')), of(joinLetter)];
const listed = `(${rows.map((row) => `IF(${isListed(row)},1,0)`).join('+')})`;
const [fromLetter, toLetter] = [letterOf('trip'), letterOf('reason')];
/** Rows put in at either end of the list, and the one right below it. */
const beside = `${filledOutside(flightList, fromLetter, toLetter, { above: head, below: last + 1 })}+COUNTA($${fromLetter}$${last + 1}:$${toLetter}$${last + 1})>0`;
const count = (word: string): string => `(COUNTIF(${verdicts},"${word}")+COUNTIF(${joins},"${word}"))`;
const typed = `$A$5<>""`;

/** Each flight has two words: its own, and that of its place after the one before. */
const overall = `=IFERROR(IF(${count('NO')}>0,"NO",IF(OR(${listed}=0,${beside},${count('OK')}+${count('CHECK')}<2*${listed}),"UNKNOWN",IF(OR(${count('CHECK')}>0,${typed}),"CHECK","OK"))),"UNKNOWN")`;

/** What a flight says where it is of the word of the day: what is wrong with its place in the day, and its own first reason. */
const saidBy = (row: number, index: number): string => {
  const [verdict, own] = [`${letterOf('verdict')}${row}`, `${letterOf('reason')}${row}`];
  const flight = `flight ${index + 1}`;
  return `IF(${joinLetter}${row}=B3,"${flight} "&${reasonLetter}${row},""),IF(${verdict}=B3,"${flight}: "&IF(${own}="","no reason is told",${own}),"")`;
};
const said = `TEXTJOIN("; ",TRUE,IF(${typed},$A$5,""),${rows.map(saidBy).join(',')})`;
const allWell = 'every flight is OK, and begins where, when and with what the one before it ends';
const reason = `=IFERROR(IF(${beside},"A flight stands in a row beside the list, where it is not read.",IF(${listed}=0,"no flight is listed",IF(B3="OK","${allWell}",${capped(said, 420)}))),"not judged: an error stands in the list")`;

const typedOverCell = `=${typedOver(
  flightCells,
  ...rows.map((row) => unlessFormula(`${reasonLetter}${row}`, `why flight ${row - first + 1} follows the one before, or not`)),
)}`;

const topCells: TemplateCell[] = [
  cell(1, 1, 'Flights of the day', 'title'),
  cell(1, 7, whileDemo('Invented, for demonstration.'), 'subtitle'),
  cell(2, 1, caution, 'subtitle'),
  cell(3, 1, 'Verdict', 'label'),
  cell(3, 2, overall, 'bigVerdict', { note: 'The worst of all flights, and of how each follows the one before it.' }),
  cell(3, 4, reason, 'reason'),
  cell(4, 1, judgedOnTop, 'subtitle'),
  cell(4, 7, `="fuel in "&${fuelUnit}`, 'subtitle'),
  cell(5, 1, typedOverCell, 'reason', { note: 'Results that were typed over; blank where none was.' }),
  ...listHeading(
    head - 2,
    1,
    joinColumn + 1,
    '1  Flights, one after another',
    'Written by "Add a flight" in the panel. Each row reads the sheets of its own trip, whatever they are called by now; the name beside it is a note.',
  ),
  cell(head, 1, 'flight', 'columnHead'),
  ...listHeads(
    head,
    flightsFrom,
    flightColumns.map((column) => looks[column][0]),
  ),
  ...listHeads(head, joinColumn, ['follows', 'why']),
];

export const daySheet: DeclaredSheet = {
  key: 'day',
  name: sheetNames.day,
  version: 1,
  rows: last + 6,
  columns: joinColumn + 1,
  columnWidths: [52, 96, 88, 88, 112, 112, 58, 58, 58, 76, 190, 72, 180],
  rowHeights: { 1: 32, 3: 56, [head]: 34, ...Object.fromEntries(rows.map((row) => [row, 48])) },
  frozenRows: 0,
  cells: [...topCells, ...flightCells],
  merges: ['B3:C3', `D3:${reasonLetter}3`],
  validations: [],
  verdictRanges: ['B3', verdicts, joins],
  names: [{ name: 'day_verdict', range: 'B3' }],
  keys: { entries: {}, lists: { flights: { ...flightList, columns: columnsFrom(flightsFrom, ...flightColumns) } } },
  charts: [],
  print: { landscape: true },
};
