// The entries of Weight and balance: stations, tanks, and the few weights that other sheets read.
import { inventedAircraft } from '../demo/aircraft';
import { cell, filledOutside, inputRows, line, on, type Content, type Field } from '../build';
import { callHeads, headWords } from '../lists';
import { aircraftNames, loadingWays, momentsInList, numberOfAircraft, ofAircraft } from '../manual/sheet';
import { tankArmColumns } from '../manual/tables';
import { sheetNames, tripCells } from '../places';
import { formulaCall, type TemplateCell } from '../template';

export const stationRows = { first: 8, last: 23 } as const;
export const tankRows = { first: 28, last: 33 } as const;
export const cornerRows = { first: 68, last: 97 } as const;
export const weighingRows = { first: 103, last: 122 } as const;

type Rows = { readonly first: number; readonly last: number };
export const block = ({ first, last }: Rows, from: string, to = from): string => `$${from}$${first}:$${to}$${last}`;

/**
 * The rows that formulas read: with the heads, which name no aircraft, and with the blank row below where there is one, so that a row put in
 * at either end of a list is read too.
 */
export const readRows = (rows: Rows): Rows => ({ first: rows.first - 1, last: rows === tankRows ? rows.last : rows.last + 1 });
const read = (rows: Rows, from: string, to = from): string => block(readRows(rows), from, to);

/** Formula text: columns of a table, only the rows of the aircraft in use. */
export const ofRows = (rows: Rows, from: string, to = from): string => `FILTER(${read(rows, from, to)},${read(rows, 'A')}=aircraft_in_use)`;

/** Formula text: the corners of the aircraft and category in use, arm and weight. */
export const envelopeInUse = `FILTER(${read(cornerRows, 'C', 'D')},(${read(cornerRows, 'A')}=aircraft_in_use)*(${read(cornerRows, 'B')}=$F$4))`;

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

/**
 * Formula text: no filled row whose aircraft is missing, or not one of the list. Such a row belongs to nobody, and a name with a slip of
 * typing would take its weight out of the sum unseen.
 */
function owned(rows: Rows): string {
  const filled = ['B', 'C', 'D'].map((column) => `(${read(rows, column)}<>"")`).join('+');
  return `SUMPRODUCT((${read(rows, 'A')}<>"aircraft")*(${filled}>0)*ISNA(MATCH(${read(rows, 'A')},${aircraftNames},0)))=0`;
}

/** Rows of the aircraft in use with a number in each of these columns, as many as it has rows; every row owned. */
function whole(rows: Rows, ...columns: readonly string[]): string {
  const names = read(rows, 'A');
  const numbers = columns.map((column) => `*ISNUMBER(${read(rows, column)})`).join('');
  return `COUNTIF(${names},aircraft_in_use)>0,SUMPRODUCT((${names}=aircraft_in_use)${numbers})=COUNTIF(${names},aircraft_in_use),${owned(rows)}`;
}

const inUseRow = (rows: Rows): string => `(${read(rows, 'A')}=aircraft_in_use)`;
/** A station has an arm or, in its place, a moment. */
const placeless = `${inUseRow(stationRows)}*(ISNUMBER(${read(stationRows, 'D')})+ISNUMBER(${read(stationRows, 'F')})=0)`;
const stationsWhole = `AND(${whole(stationRows, 'C')},SUMPRODUCT(${placeless})=0,${owned(weighingRows)})`;
/** Right below the tanks the sums begin, so that a row put in between is not read. */
const tanksWhole = `AND(${whole(tankRows, 'C', 'D')},${filledOutside(tankRows, 'A', 'B', { below: tankRows.last + 1 })}=0)`;
/** A category of fewer than three corners is a typing error, and one of another category lacks what it took. */
const lone = `(${read(cornerRows, 'A')}<>"aircraft")*(${read(cornerRows, 'C')}<>"")*(COUNTIFS(${read(cornerRows, 'A')},${read(cornerRows, 'A')},${read(cornerRows, 'B')},${read(cornerRows, 'B')})<3)`;
const ofCategory = `(${read(cornerRows, 'A')}=aircraft_in_use)*(${read(cornerRows, 'B')}=$F$4)`;
const numbersOf = (column: string): string => `ISNUMBER(${read(cornerRows, column)})`;
const cornersWhole = `AND(${owned(cornerRows)},SUMPRODUCT(${lone})=0,SUMPRODUCT(${ofCategory}*${numbersOf('C')}*${numbersOf('D')})=SUMPRODUCT(${ofCategory}))`;

/** Formula text: "no weight in row 9, row 12", where any row has what the mask says. */
function rowsWhere(rows: Rows, mask: string, words: string): string {
  const found = `TEXTJOIN(", ",TRUE,FILTER("row "&ROW(${read(rows, 'A')}),${mask}))`;
  return `IFERROR("${words} "&${found},"")`;
}
const lacks = (rows: Rows, column: string, what: string): string =>
  rowsWhere(rows, `${inUseRow(rows)}*(ISNUMBER(${read(rows, column)})=FALSE)`, `no ${what} in`);
const ownerless = (rows: Rows): string =>
  rowsWhere(
    rows,
    `(${read(rows, 'A')}<>"aircraft")*((${['B', 'C', 'D'].map((column) => `(${read(rows, column)}<>"")`).join('+')})>0)*ISNA(MATCH(${read(rows, 'A')},${aircraftNames},0))`,
    'no aircraft of Manual tables in',
  );
/** Formula text: the rows that are not whole, each kind by its words. */
const inRows = (...kinds: readonly string[]): string => `TEXTJOIN("; ",TRUE,${kinds.join(',')})`;

const stationsLack = inRows(
  lacks(stationRows, 'C', 'weight'),
  rowsWhere(stationRows, placeless, 'no arm or moment in'),
  ownerless(stationRows),
  ownerless(weighingRows),
);
const stationsNotWhole = `"A station lacks a weight, an arm (or its moment), or a station or a weighing its aircraft of Manual tables ("&${stationsLack}&"): the points stay UNKNOWN. An empty seat weighs 0."`;
const tanksLack = inRows(lacks(tankRows, 'C', 'fuel on board'), lacks(tankRows, 'D', 'order'), ownerless(tankRows));
const tanksNotWhole = `"A tank lacks its fuel, its order or an aircraft of Manual tables, or stands below the list ("&${tanksLack}&"): the points stay UNKNOWN."`;
const cornersLack = inRows(
  lacks(cornerRows, 'C', 'arm'),
  lacks(cornerRows, 'D', 'weight'),
  ownerless(cornerRows),
  rowsWhere(cornerRows, lone, 'fewer than three of the category in'),
);
const cornersNotWhole = `"A corner lacks its arm, its weight or an aircraft of Manual tables, or its category has fewer than three ("&${cornersLack}&"): the points stay UNKNOWN."`;

const envelopeThere = `COUNTIFS(${read(cornerRows, 'A')},aircraft_in_use,${read(cornerRows, 'B')},$F$4)>0`;
const noEnvelope = '"No envelope named "&$F$4&" for this aircraft in section 4: the points stay UNKNOWN."';
/** Formula text: the tanks of the aircraft in use for which Manual tables has no arm. */
const armless = `IFERROR(TEXTJOIN(", ",TRUE,FILTER(${read(tankRows, 'B')},(${read(tankRows, 'A')}=aircraft_in_use)*ISNA(MATCH(${read(tankRows, 'B')},FILTER(${tankArmColumns.tank},${tankArmColumns.aircraft}=aircraft_in_use),0)))),"")`;
const armlessSaid = `"No fuel arm for "&${armless}&": add it in section 6 of Manual tables. The points stay UNKNOWN."`;

/**
 * Formula text: the tanks of the aircraft in use with more fuel than their arms reach, or with less than nothing. Row by row, since not every
 * engine counts by a comparison with a whole column; a row that was taken away leaves the rest unsaid, and the points UNKNOWN all the same.
 */
function tankBeyondArms(row: number): string {
  const arms = (quantity: string): string =>
    `COUNTIFS(${tankArmColumns.aircraft},$A$${row},${tankArmColumns.tank},$B$${row},${tankArmColumns.quantity},${quantity})=0`;
  // One row alone is of a tank of constant arm: it reaches from nothing to what is usable.
  const several = `COUNTIFS(${tankArmColumns.aircraft},$A$${row},${tankArmColumns.tank},$B$${row})>1`;
  const beyond = `OR($C$${row}<0,${arms(`">="&$C$${row}`)},AND(${several},${arms('"<=0"')}))`;
  return `IF(AND($A$${row}=aircraft_in_use,ISNUMBER($C$${row})),IF(${beyond},$C$${row}&" in "&$B$${row},""),"")`;
}
const tankRowNumbers = Array.from({ length: tankRows.last - tankRows.first + 1 }, (_, index) => tankRows.first + index);
const beyondArms = `IFERROR(TEXTJOIN(", ",TRUE,${tankRowNumbers.map(tankBeyondArms).join(',')}),"")`;
const beyondSaid = `"The fuel arms in section 6 of Manual tables do not reach "&${beyondArms}&": type no more than is usable, or their further rows. The points stay UNKNOWN."`;

/** Begins the line below the fuel where nothing is wrong with tanks and corners. */
const everyOne = 'Every';
/**
 * Formula text: the weight of a unit of fuel; words instead, which no brief takes for a number, while a list of entries is not whole: then the
 * fuel on board or the zero-fuel weight is not there, or the line below them tells what is wrong.
 */
export const fuelWeightOfWhole = `IF(AND(ISNUMBER(C34),ISNUMBER(C38),LEFT($A$41,${everyOne.length})="${everyOne}"),C37,"nothing: a row of stations, tanks or corners is not whole")`;

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
  cell(25, 1, `=IF(${stationsWhole},"",${stationsNotWhole})`, 'subtitle'),
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
  cell(
    41,
    1,
    `=IF(${tanksWhole},IF(${cornersWhole},IF(${envelopeThere},IF(${armless}="",IF(${beyondArms}="","${everyOne} tank and every corner belongs to an aircraft of Manual tables.",${beyondSaid}),${armlessSaid}),${noEnvelope}),${cornersNotWhole}),${tanksNotWhole})`,
    'subtitle',
  ),
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
