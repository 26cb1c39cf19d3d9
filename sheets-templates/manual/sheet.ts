// Manual tables: the aircraft list and each aircraft's own take-off, landing, climb and tank tables, as its owner types them.
import { inventedAircraft } from '../demo/aircraft';
import { area, caution, cell, inputRows, line, on, type Content, type Field } from '../build';
import { listKeys } from './listKeys';
import { strays } from './strays';
import { correctionList, correctionsFor, lastRow, rowsInUse, tableHead, tableInUse, tableLists, tableSections, titledSections } from './tables';
import { flownCells, flownList, flownTo, flownValidations } from './flown';
import { sheetNames } from '../places';
import { formulaCall, type DeclaredSheet, type TemplateCell, type Validation } from '../template';
import { whileDemo } from '../demo/inUse';

export const aircraftList = { head: 5, first: 6, last: 11 } as const;
const listHeaders = [
  'aircraft',
  'weight in',
  'arm in',
  'distance in',
  'fuel in',
  'fuel weight, each',
  'usable fuel',
  'demonstrated crosswind, kt',
  'maximum zero-fuel weight',
  'maximum take-off weight',
  'maximum landing weight',
  'lateral limit left',
  'lateral limit right',
  'cruise true airspeed, kt',
  'cruise fuel flow, an hour',
  'taxi fuel',
  'climb fuel, extra',
  'moments in',
  'envelope in',
  'leading edge of MAC',
  'MAC',
] as const;
type ListHeader = (typeof listHeaders)[number];

const listColumn = (from: ListHeader, to: ListHeader = from): string =>
  on(sheetNames.tables, area(aircraftList.first, listHeaders.indexOf(from) + 1, aircraftList.last, listHeaders.indexOf(to) + 1));

export const aircraftNames = on(sheetNames.tables, area(aircraftList.first, 1, aircraftList.last, 1));

/** Formula text: the list's value for the aircraft in use. */
export const ofAircraft = (header: ListHeader): string => `INDEX(${listColumn(header)},MATCH(aircraft_in_use,${aircraftNames},0))`;

/** Formula text: the same where it is a number; a blank cell must not pass for 0. */
export const numberOfAircraft = (header: ListHeader): string => `=IFERROR(IF(ISNUMBER(${ofAircraft(header)}),${ofAircraft(header)},""),"")`;

/** Formula text: the list's word for the aircraft in use, nothing where the cell is blank. */
export const wordOfAircraft = (header: ListHeader): string => `IFERROR(${ofAircraft(header)}&"","")`;
const valueOfAircraft = (header: ListHeader): string => numberOfAircraft(header).slice(1);

/** Formula texts: what the moments and the envelope of the aircraft in use are printed as, and its chord. */
export const loadingWays = {
  momentsIn: wordOfAircraft('moments in'),
  envelopeIn: wordOfAircraft('envelope in'),
  leadingEdge: valueOfAircraft('leading edge of MAC'),
  chord: valueOfAircraft('MAC'),
} as const;
/** The columns of names and of what moments are printed as, for a row of any aircraft. */
export const momentsInList = listColumn('moments in');

export const usableFuel = numberOfAircraft('usable fuel');

/** Formula text: the five limits of the aircraft in use, in one row. */
export const limitsInUse = `FILTER(${listColumn('maximum zero-fuel weight', 'lateral limit right')},${aircraftNames}=aircraft_in_use)`;

/** Where rows of no aircraft are told, above the check of the entries. */
const straysRow = 12;
const straysFormula = strays({
  lists: titledSections,
  rows: { first: tableHead + 1, last: lastRow },
  aircraft: area(aircraftList.first, 1, aircraftList.last, 1),
  corrections: correctionList.column,
  operations: correctionsFor,
});
export const straysSaid = on(sheetNames.tables, `A${straysRow}`);

const listCells: TemplateCell[] = [
  ...line(aircraftList.head - 1, 1, ...listHeaders.map((_, index): Field => [index === 0 ? '1  Aircraft' : '', 'heading'])),
  ...line(aircraftList.head, 1, ...listHeaders.map((header): Field => [header, 'columnHead'])),
  ...inputRows(
    aircraftList.first,
    1,
    [
      ...inventedAircraft.map(({ name, list }): readonly Content[] => [name, ...list]),
      ...Array.from({ length: aircraftList.last - aircraftList.first + 1 - inventedAircraft.length }, () =>
        listHeaders.map((): Content => undefined),
      ),
    ],
    (index) => (index === 5 ? 'two' : index >= 14 ? 'one' : 'whole'),
  ),
];

const measured = ['takeoff', 'landing', 'climb'] as const;

const checkRows = { first: 14, last: 18 } as const;
export const aircraftEntryCount = checkRows.last - checkRows.first + 1;
const listInUse = on(sheetNames.tables, area(aircraftList.head, 1, aircraftList.last, listHeaders.length));
const entriesCall = formulaCall(
  'AIRCRAFT_ENTRIES',
  listInUse,
  'aircraft_in_use',
  ...measured.map(tableInUse),
  ...measured.map(rowsInUse),
  tableInUse('cruise'),
  rowsInUse('cruise'),
);

/** What the trip hears of the aircraft's own entries. */
export const aircraftEntryVerdicts = on(sheetNames.tables, area(checkRows.first, 2, checkRows.last, 2));
export const aircraftEntryNames = on(sheetNames.tables, area(checkRows.first, 1, checkRows.last, 1));
export const aircraftEntryReasons = on(sheetNames.tables, area(checkRows.first, 3, checkRows.last, 3));

const checkCells: TemplateCell[] = [
  ...line(13, 1, ['2  Are the entries and tables complete?', 'heading'], ...Array.from({ length: 7 }, (): Field => ['', 'heading'])),
  ...Array.from({ length: checkRows.last - checkRows.first + 1 }, (_, index) => index).flatMap((index) =>
    line(
      checkRows.first + index,
      1,
      [
        index === 0 ? `=${entriesCall}` : undefined,
        'computedText',
        index === 0 ? { note: 'AIRCRAFT_ENTRIES: what is missing, and what looks like a typing error. The Trip sheet hears it.' } : {},
      ],
      [undefined, 'verdict'],
      [undefined, 'computedText'],
    ),
  ),
];

const limits = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });

export const manualTablesSheet: DeclaredSheet = {
  key: 'tables',
  name: sheetNames.tables,
  version: 4,
  rows: lastRow,
  columns: flownTo,
  columnWidths: [
    ...[104, 82, 82, 82, 82, 82, 82, 94, 82, 82, 82, 140, 82],
    ...[104, 82, 82, 82, 82, 82, 82, 82, 74, 74, 74, 140, 23],
    ...[104, 82, 82, 82, 82, 74, 74, 74, 140, 23],
    ...[104, 104, 82, 82, 23],
    ...[104, 74, 180, 74, 74, 74, 23],
    ...[104, 74, 82, 82, 82, 82, 140, 23],
    ...[140, 82, 104, 104, 82, 82, 82, 82, 82],
  ],
  rowHeights: { 1: 32, [aircraftList.head]: 46, [tableHead]: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Manual tables', 'title'),
    cell(
      2,
      1,
      whileDemo(
        'Invented demonstration aircraft.',
        'Every number comes from the approved manual of your own aircraft: replace those of the demonstration, add rows for more aircraft below.',
      ),
      'subtitle',
    ),
    cell(3, 1, caution, 'subtitle'),
    ...listCells,
    cell(straysRow, 1, straysFormula, 'subtitle'),
    ...checkCells,
    ...tableSections,
    ...flownCells,
  ],
  merges: [],
  validations: [
    limits(area(aircraftList.first, 6, aircraftList.last, 6), 0, 100, 'Weight of one unit of fuel: avgas 6.0 lb a US gallon, 0.72 kg a litre.'),
    limits(area(aircraftList.first, 14, aircraftList.last, 17), 0, 1000, 'Cruise true airspeed in knots; fuel in the fuel unit of this list.'),
    {
      kind: 'list',
      range: area(aircraftList.first, listHeaders.indexOf('moments in') + 1, aircraftList.last, listHeaders.indexOf('moments in') + 1),
      choices: ['moment', 'moment/100', 'moment/1000'],
      help: 'What the moments of the stations are printed as. Blank: weight x arm.',
    },
    {
      kind: 'list',
      range: area(aircraftList.first, listHeaders.indexOf('envelope in') + 1, aircraftList.last, listHeaders.indexOf('envelope in') + 1),
      choices: ['arm', 'moment', 'moment/100', 'moment/1000', '% MAC'],
      help: 'What the corners of the envelope are, against weight. Blank: arms.',
    },
    {
      kind: 'list',
      range: area(tableHead + 1, correctionList.column + 1, lastRow, correctionList.column + 1),
      choices: correctionsFor,
      help: 'Which distance the correction is for.',
    },
    limits(
      area(tableHead + 1, correctionList.column + 3, lastRow, correctionList.column + 3),
      -1000,
      1000,
      'Percent of the distance; negative where it shortens.',
    ),
    ...flownValidations,
    limits(
      area(tableHead + 1, correctionList.column + 4, lastRow, correctionList.column + 5),
      0,
      1000000,
      'For each so much: knots, percent of slope, or 1. Amount: blank for wind, surface and slope.',
    ),
  ],
  verdictRanges: [area(checkRows.first, 2, checkRows.last, 2)],
  names: [],
  keys: { entries: {}, lists: { aircraft: { ...aircraftList, columns: listKeys }, ...tableLists, flown: flownList } },
  charts: [],
  print: { landscape: true },
};
