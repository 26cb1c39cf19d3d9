// The entries of Weight and balance: stations, tanks, and the few weights that other sheets read.
import { inventedAircraft } from '../demo/aircraft';
import { cell, inputRows, line, on, type Content, type Field } from '../build';
import { callHeads, headWords } from '../lists';
import { aircraftNames, loadingWays, momentsInList, numberOfAircraft, ofAircraft } from '../manual/sheet';
import { sheetNames, tripCells } from '../places';
import { formulaCall, type TemplateCell } from '../template';
import { cornerRows, envelopeInUse, ofRows, read, stationRows, tankRows, weighingRows, type Rows } from './rows';
import { fuelSaid, stationsSaid, stationsWhole, tanksWhole } from './whole';

const drawnRows = `(${read(cornerRows, 'A')}=aircraft_in_use)*(${read(cornerRows, 'B')}=$F$4)+(ROW(${read(cornerRows, 'A')})=ROW($A$${cornerRows.first - 1}))`;
const [cornerX, cornerWeight] = [read(cornerRows, 'C'), read(cornerRows, 'D')];
const { envelopeIn, leadingEdge, chord } = loadingWays;
/** What the moments of an envelope are divided by. */
const envelopeDivisor = `IFERROR(VALUE(MID(${envelopeIn},8,5)),1)`;
/** Formula text: the corners as arms, below their head, so that no corner that is deleted takes the formula away. */
const armsDrawn = `FILTER(IF(ISNUMBER(${cornerX}),IF(LEFT(${envelopeIn},6)="moment",${cornerX}*${envelopeDivisor}/${cornerWeight},IF(${envelopeIn}="% MAC",${leadingEdge}+${cornerX}*${chord}/100,${cornerX})),${cornerX}),${drawnRows})`;
const weightsDrawn = `FILTER(${cornerWeight},${drawnRows})`;

const padded = (rows: Rows, values: readonly (readonly Content[])[], width: number): readonly (readonly Content[])[] => [
  ...values,
  ...Array.from({ length: rows.last - rows.first + 1 - values.length }, () => Array<Content>(width).fill(undefined)),
];

const entryWords = ['station', 'verdict', 'possible error'];
const entriesCall = formulaCall(
  'LOADING_ENTRIES',
  ofRows(stationRows, 'B'),
  ofRows(stationRows, 'C'),
  ofRows(stationRows, 'D'),
  envelopeInUse,
  headWords(entryWords),
  'C4',
  numberOfAircraft('maximum take-off weight').slice(1),
  ofRows(stationRows, 'F'),
  ...Object.values(loadingWays),
  `IFERROR(${ofRows(weighingRows, 'B', 'F')},"")`,
  'as_of',
);

/** In the row of the heads, where no station that is deleted takes it away. */
const entryHeads = callHeads(stationRows.first - 1, 7, entryWords, entriesCall, [
  'LOADING_ENTRIES: guesses from sizes (common practice, no source): swapped, in the other unit, a moment for an arm, twice; and the empty aircraft beside its weighing record.',
]);

const entrySpill = Array.from({ length: stationRows.last - stationRows.first + 1 }, (_, index) => index).flatMap((index) =>
  line(stationRows.first + index, 7, [undefined, 'computedText'], [undefined, 'verdict'], [undefined, 'reason']),
);

const heads = (...words: readonly string[]): Field[] => words.map((word) => [word, 'columnHead'] as const);

export const lateralHelp =
  'Right positive, 0 on the centre line. Needed where the aircraft list gives lateral limits: while one is blank there, lateral balance is UNKNOWN.';
const lateralHead: Field = ['lateral arm', 'columnHead', { note: lateralHelp }];

/** What the moments of a row's aircraft are divided by before they are printed. */
const divisorOf = (row: number): string => `IFERROR(VALUE(MID(INDEX(${momentsInList},MATCH(A${row},${aircraftNames},0)),8,5)),1)`;
export const momentHelp =
  'The moment as the manual prints it, in place of an arm, where the manual or the weighing gives no arm; divided as the aircraft list says under "moments in".';
export const momentColumn = 10;
const moments = Array.from({ length: stationRows.last - stationRows.first + 1 }, (_, index) => stationRows.first + index).map((row) =>
  cell(
    row,
    momentColumn,
    `=IF(AND(ISNUMBER(C${row}),ISNUMBER(D${row})),C${row}*D${row}/${divisorOf(row)},IF(ISNUMBER(F${row}),F${row},""))`,
    'computed',
    {
      format: 'whole',
    },
  ),
);

export const stationCells: TemplateCell[] = [
  ...line(6, 1, ['1  Stations', 'heading'], ...Array.from({ length: 9 }, (): Field => ['', 'heading'])),
  ...line(7, 1, ...heads('aircraft', 'station', 'weight', 'arm'), lateralHead, ['or its moment', 'columnHead', { note: momentHelp }]),
  cell(7, momentColumn, 'moment', 'columnHead'),
  ...entryHeads,
  ...inputRows(
    stationRows.first,
    1,
    padded(
      stationRows,
      inventedAircraft.flatMap(({ name, stations }) => stations.map((row): readonly Content[] => [name, ...row, undefined])),
      6,
    ),
    (index) => (index === 3 || index === 4 || index === 5 ? 'one' : 'whole'),
  ),
  ...moments,
  ...entrySpill,
  cell(25, 1, stationsSaid, 'subtitle'),
];

function fuelLine(row: number, label: string, content: Content, unit: string, note: string): TemplateCell[] {
  const style = typeof content === 'number' ? 'input' : 'computed';
  return line(row, 1, [label, 'label'], [undefined, 'plain'], [content, style, { format: 'one', note }], [`=IFERROR(${unit},"")`, 'unit']);
}

const fuelUnit = ofAircraft('fuel in');
const weightUnit = ofAircraft('weight in');
const numbers = (...cells: readonly string[]): string => cells.map((place) => `ISNUMBER(${place})`).join(',');
const fuelled = (fuel: string, ...needed: readonly string[]): string =>
  `=IF(AND(${numbers('C38', 'C37', ...needed)}),IF(${fuel}<0,"",C38+(${fuel})*C37),"")`;

export const fuelCells: TemplateCell[] = [
  ...line(26, 1, ['2  Fuel', 'heading'], ...Array.from({ length: 4 }, (): Field => ['', 'heading'])),
  ...line(27, 1, ...heads('aircraft', 'tank', 'on board', 'burned, in order'), lateralHead),
  ...inputRows(
    tankRows.first,
    1,
    padded(
      tankRows,
      inventedAircraft.flatMap(({ name, tanks }) => tanks.map((row): readonly Content[] => [name, ...row])),
      5,
    ),
    (index) => (index === 2 ? 'one' : 'whole'),
  ),
  ...fuelLine(
    34,
    'fuel on board at start',
    `=IF(${tanksWhole},SUMIF(${read(tankRows, 'A')},aircraft_in_use,${read(tankRows, 'C')}),"")`,
    fuelUnit,
    'Sum of the tanks of the aircraft in use.',
  ),
  ...fuelLine(35, 'taxi and run-up', numberOfAircraft('taxi fuel'), fuelUnit, 'From the aircraft list. Burned before take-off.'),
  ...fuelLine(
    36,
    'trip fuel',
    `=${on(sheetNames.trip, tripCells.tripFuel)}`,
    fuelUnit,
    'From the Trip sheet: time en route x fuel flow, or the fuel of the route.',
  ),
  ...fuelLine(
    37,
    'weight of one unit of fuel',
    numberOfAircraft('fuel weight, each'),
    weightUnit,
    'From the aircraft list. Avgas: 6.0 lb a US gallon (FAA-H-8083-1B), 0.72 kg a litre.',
  ),
  ...fuelLine(
    38,
    'zero-fuel weight',
    `=IF(${stationsWhole},SUMIF(${read(stationRows, 'A')},aircraft_in_use,${read(stationRows, 'C')}),"")`,
    weightUnit,
    'Sum of the stations.',
  ),
  ...fuelLine(39, 'take-off weight', fuelled('C34-C35', 'C34', 'C35'), weightUnit, 'For the runway and the climb.'),
  ...fuelLine(40, 'landing weight', fuelled('C34-C35-C36', 'C34', 'C35', 'C36'), weightUnit, 'For the landing runway.'),
  cell(41, 1, fuelSaid, 'subtitle'),
];

/** Weight times arm is linear in the arm for one weight only, so a straight line of moments is a curve of arms. */
export const momentsHelp =
  'Where the manual prints moment (or moment/100, moment/1000) or % MAC against weight, say so in the aircraft list under "envelope in" and type the corners as printed: a line between two corners is straight in what the manual prints, and is judged so.';
const momentsSaid =
  'Type the corners as printed; what they are (arm, moment/1000, % MAC) stands in the aircraft list. Drawn as arms, corner to corner.';

export const cornerCells: TemplateCell[] = [
  ...line(66, 1, ['4  Envelope', 'heading'], ...Array.from({ length: 3 }, (): Field => ['', 'heading'])),
  cell(66, 6, momentsSaid, 'subtitle'),
  ...line(67, 1, ...heads('aircraft', 'category'), ['arm', 'columnHead', { note: momentsHelp }], ['weight', 'columnHead']),
  ...inputRows(
    cornerRows.first,
    1,
    padded(
      cornerRows,
      inventedAircraft.flatMap(({ name, corners }) => corners.map((row): readonly Content[] => [name, ...row])),
      4,
    ),
    (index) => (index === 2 ? 'one' : 'whole'),
  ),
  cell(cornerRows.first - 1, 6, `=${armsDrawn}`, 'columnHead', {
    shows: 'arm',
    note: 'The corners of the aircraft and category in use, for the drawing. End with the first corner again, so that it closes.',
  }),
  cell(cornerRows.first - 1, 7, `=${weightsDrawn}`, 'columnHead', { shows: 'weight' }),
  ...Array.from({ length: cornerRows.last - cornerRows.first + 1 }, (_, index) => cornerRows.first + index).map((row) =>
    cell(row, 6, undefined, 'computed', { format: 'one' }),
  ),
  ...Array.from({ length: cornerRows.last - cornerRows.first + 1 }, (_, index) => cornerRows.first + index).map((row) =>
    cell(row, 7, undefined, 'computed', { format: 'whole' }),
  ),
];
