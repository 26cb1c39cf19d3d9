// The Trip sheet: one trip, one verdict, every reason. Its steps stand on Trip working.
import { area, caution, cell, judgedOnTop, line, on, type Field } from '../build';
import { entriesIn, type TemplateKeys } from '../keys';
import { ofAircraft } from '../manual/sheet';
import { balanceCells, cardCells, sheetNames } from '../places';
import type { DeclaredSheet, TemplateCell, Validation } from '../template';
import { workingRows } from '../working/rows';
import { computedCellsItem } from './computedCells';
import { byRoute, fieldNames, leftHalf, ofRoute, runwayNames, summaryLine, timesFromChoices, working } from './entries';
import { judgedCells, tripVerdictRanges } from './judged';
import { overallCells } from './overall';
import { flightBeforeCells } from './flightBefore';
import { reportCells } from './reports';
import { tripEntryRows, tripLastRow, tripRows as rows } from './rows';
import { whileDemo } from '../demo/inUse';

const number = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });
const places = (row: number): string => `B${row}:D${row}`;

const validations: readonly Validation[] = [
  { kind: 'date', range: `B${rows.firstDay}:B${rows.lastDay}`, help: 'A date, such as 2026-11-28.' },
  { kind: 'date', range: `B${rows.landingsRecent}:B${rows.data}`, help: 'The last good day, such as 2026-11-28.' },
  { kind: 'list', range: `B${rows.passengers}:B${rows.judgeHold}`, choices: ['yes', 'no'], help: 'yes or no.' },
  { kind: 'listFrom', range: places(rows.field), source: fieldNames, help: 'A field of the Fields sheet; blank for no alternate.' },
  { kind: 'listFrom', range: places(rows.runwayName), source: runwayNames, help: 'A runway of this field on the Fields sheet.' },
  number(places(rows.groundspeed), 1, 600, 'Groundspeed in knots.'),
  number(places(rows.minutesTyped), 0, 2880, 'Minutes from take-off to landing.'),
  { kind: 'list', range: `B${rows.timesFrom}`, choices: timesFromChoices, help: 'typed or route.' },
  number(`B${rows.fuelFlow}`, 0, 1000, 'Fuel flow an hour, in the fuel unit of the aircraft list.'),
  number(`B${rows.contingency}`, 0, 100, 'Percent of the trip fuel.'),
  number(`B${rows.holding}:B${rows.reserve}`, 0, 600, 'Minutes.'),
  number(`B${rows.gradient}`, 0, 3000, 'Climb gradient in feet a nautical mile.'),
  number(`B${rows.climbSpeed}`, 1, 400, 'Groundspeed in knots.'),
  number(places(rows.altimeter), 25, 1090, 'Altimeter setting: 25 to 32.5 inches of mercury, or 850 to 1,090 hectopascals.'),
  number(places(rows.temperature), -60, 60, 'Temperature in degrees Celsius.'),
  number(`B${rows.wind}:D${rows.gust}`, 0, 150, 'Knots.'),
  number(`B${rows.takenOn}`, 0, 10000, 'Fuel taken on since the flight before, in the fuel unit of the aircraft list; blank: none.'),
];

const { judged } = rows;
/** Room for one line of reason; a longer one makes its row higher. */
const reasonHeights = Object.fromEntries(Array.from({ length: judged.last - judged.first + 1 }, (_, index) => [judged.first + index, 24]));

const balance = (place: string): string => `=IFERROR(${on(sheetNames.balance, place)},"")`;
const unitOf = (header: 'weight in' | 'fuel in'): string => `=IFERROR(${ofAircraft(header)}&"","")`;
const heading = (row: number, title: string): TemplateCell[] =>
  line(row, 7, [title, 'heading'], ...Array.from({ length: 2 }, (): Field => ['', 'heading']));
const ofFuel = (item: string): string =>
  `=IFERROR(INDEX(${working(`B${workingRows.fuelBrief.first}:B${workingRows.fuelBrief.last}`)},MATCH("${item}",${working(`A${workingRows.fuelBrief.first}:A${workingRows.fuelBrief.last}`)},0)),"")`;
const card = (place: string): string => on(sheetNames.card, place);
const ofHold = (item: string): string => `=IFERROR(INDEX(${card(cardCells.briefValues)},MATCH("${item}",${card(cardCells.briefItems)},0)),"")`;

const flow = working(`B${workingRows.flow}`);
const minutes = `B${rows.timeEnRoute}`;

const summaryCells: TemplateCell[] = [
  ...heading(rows.loadingHeading, 'Loading and fuel'),
  ...summaryLine(rows.takeoffWeight, 'take-off weight', balance(balanceCells.takeoffWeight), unitOf('weight in'), 'whole'),
  ...summaryLine(rows.landingWeight, 'landing weight', balance(balanceCells.landingWeight), unitOf('weight in'), 'whole'),
  ...summaryLine(rows.fuelOnBoard, 'fuel on board', balance(balanceCells.fuelOnBoard), unitOf('fuel in'), 'one'),
  ...summaryLine(rows.fuelRequired, 'fuel required', ofFuel('required'), unitOf('fuel in'), 'one'),
  ...summaryLine(
    rows.tripFuel,
    'trip fuel',
    `=IF(${byRoute},IF(ISNUMBER(${ofRoute('fuel')}),${ofRoute('fuel')},""),IF(AND(ISNUMBER(${minutes}),ISNUMBER(${flow})),${flow}*${minutes}/60,""))`,
    unitOf('fuel in'),
    'one',
  ),
  ...heading(rows.cardHeading, 'Descent and hold, from the card'),
  ...summaryLine(rows.startDown, 'start down in', `=${card(cardCells.startDown)}`, 'NM', 'one'),
  ...summaryLine(rows.startDecided, 'decided by', `=${card(cardCells.startDecided)}`, '', 'text'),
  ...summaryLine(rows.holdEntry, 'hold entry', ofHold('entry'), '', 'text'),
  ...summaryLine(rows.holdInbound, 'inbound heading', ofHold('inbound heading'), 'deg magnetic', 'degrees'),
  ...summaryLine(rows.holdOutbound, 'outbound heading', ofHold('outbound heading'), 'deg magnetic', 'degrees'),
  ...summaryLine(rows.holdOutboundTime, 'outbound time', ofHold('outbound time'), 'seconds', 'whole'),
  ...summaryLine(rows.holdLimit, 'hold speed limit', ofHold('speed limit'), 'kt indicated', 'whole'),
];

const worked = [...leftHalf, ...flightBeforeCells, ...summaryCells, ...judgedCells, ...reportCells];

const keys: TemplateKeys = {
  entries: entriesIn(worked, tripEntryRows, { 2: 'departure', 3: 'destination', 4: 'alternate' }),
  lists: {
    metars: { head: rows.reportsHelp, ...rows.metars, columns: { report: 1 } },
    tafs: { head: rows.reportsHelp, ...rows.tafs, columns: { report: 1 } },
  },
};

export const tripSheet: DeclaredSheet = {
  key: 'trip',
  name: sheetNames.trip,
  version: 7,
  rows: tripLastRow + 1,
  columns: 9,
  columnWidths: [176, 96, 96, 96, 86, 12, 128, 80, 448],
  rowHeights: { 1: 32, 3: 80, ...reasonHeights },
  frozenRows: 4,
  cells: [
    cell(1, 1, 'Trip sheet', 'title'),
    cell(1, 7, whileDemo('Invented aircraft, fields and people, for demonstration.'), 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    ...overallCells,
    cell(4, 7, judgedOnTop, 'subtitle'),
    ...worked,
    ...computedCellsItem(worked),
  ],
  merges: ['B3:E3', 'G3:I3', ...Array.from({ length: 6 }, (_, index) => `A${rows.metars.first + index}:I${rows.metars.first + index}`)],
  validations,
  verdictRanges: tripVerdictRanges,
  names: [
    { name: 'trip_verdict', range: 'B3' },
    { name: 'trip_reasons', range: area(judged.first, 7, judged.last, 9) },
  ],
  keys,
  charts: [],
  print: { landscape: false },
};
