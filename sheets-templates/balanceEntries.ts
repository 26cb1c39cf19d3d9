// The entries of Weight and balance: stations, tanks, and the few weights that other sheets read.
import { inventedAircraft } from './aircraft';
import { cell, filledOutside, inputRows, line, on, type Content, type Field } from './build';
import { aircraftNames, numberOfAircraft, ofAircraft } from './manualTables';
import { sheetNames, tripCells } from './places';
import { formulaCall, type TemplateCell } from './template';

export const stationRows = { first: 8, last: 23 } as const;
export const tankRows = { first: 28, last: 33 } as const;
export const cornerRows = { first: 68, last: 97 } as const;

type Rows = { readonly first: number; readonly last: number };
export const block = ({ first, last }: Rows, from: string, to = from): string => `$${from}$${first}:$${to}$${last}`;

/**
 * The rows that formulas read: with the heads, which name no aircraft, and with the blank row below where there is one, so that a row put in
 * at either end of a list is read too.
 */
const readRows = (rows: Rows): Rows => ({ first: rows.first - 1, last: rows === tankRows ? rows.last : rows.last + 1 });
const read = (rows: Rows, from: string, to = from): string => block(readRows(rows), from, to);

/** Formula text: columns of a table, only the rows of the aircraft in use. */
export const ofRows = (rows: Rows, from: string, to = from): string => `FILTER(${read(rows, from, to)},${read(rows, 'A')}=aircraft_in_use)`;

/** Formula text: the corners of the aircraft and category in use, arm and weight. */
export const envelopeInUse = `FILTER(${read(cornerRows, 'C', 'D')},(${read(cornerRows, 'A')}=aircraft_in_use)*(${read(cornerRows, 'B')}=$F$4))`;

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

const stationsWhole = `AND(${whole(stationRows, 'C', 'D')})`;
/** Right below the tanks the sums begin, so that a row put in between is not read. */
const tanksWhole = `AND(${whole(tankRows, 'C', 'D')},${filledOutside(tankRows, 'A', 'B', { below: tankRows.last + 1 })}=0)`;
/** A category of fewer than three corners is a slip of typing, and one of another category lacks what it took. */
const loneCorners = `SUMPRODUCT((${read(cornerRows, 'A')}<>"aircraft")*(${read(cornerRows, 'C')}<>"")*(COUNTIFS(${read(cornerRows, 'A')},${read(cornerRows, 'A')},${read(cornerRows, 'B')},${read(cornerRows, 'B')})<3))`;
const cornersWhole = `AND(${owned(cornerRows)},${loneCorners}=0)`;

const tanksNotWhole = '"A tank lacks its fuel, its order or an aircraft of Manual tables, or stands below the list: the points stay UNKNOWN."';
const cornersNotWhole = '"A corner lacks an aircraft of Manual tables, or its category has fewer than three: the points stay UNKNOWN."';

/** Begins the line below the fuel where nothing is wrong with tanks and corners. */
const everyOne = 'Every';
/**
 * Formula text: the weight of a unit of fuel; words instead, which no brief takes for a number, while a list of entries is not whole: then the
 * fuel on board or the zero-fuel weight is not there, or the line below them tells what is wrong.
 */
export const fuelWeightOfWhole = `IF(AND(ISNUMBER(C34),ISNUMBER(C38),LEFT($A$41,${everyOne.length})="${everyOne}"),C37,"nothing: a row of stations, tanks or corners is not whole")`;

const entriesCall = formulaCall('LOADING_ENTRIES', ofRows(stationRows, 'B'), ofRows(stationRows, 'C'), ofRows(stationRows, 'D'), envelopeInUse);

const entrySpill = Array.from({ length: stationRows.last - stationRows.first + 1 }, (_, index) => index).flatMap((index) =>
  line(stationRows.first + index, 7,
    [index === 0 ? `=${entriesCall}` : undefined, 'computedText', index === 0 ? { note: 'LOADING_ENTRIES: guesses from sizes (common practice, no source): swapped, in the other unit, a moment for an arm, twice.' } : {}],
    [undefined, 'verdict'], [undefined, 'reason']),
);

const heads = (...words: readonly string[]): Field[] => words.map((word) => [word, 'columnHead'] as const);

export const lateralHelp = 'Right positive, 0 on the centre line. Needed where the aircraft list gives lateral limits: while one is blank there, lateral balance is UNKNOWN.';
const lateralHead: Field = ['lateral arm', 'columnHead', { note: lateralHelp }];

const moments = Array.from({ length: stationRows.last - stationRows.first + 1 }, (_, index) => stationRows.first + index).map((row) =>
  cell(row, 6, `=IF(AND(ISNUMBER(C${row}),ISNUMBER(D${row})),C${row}*D${row},"")`, 'computed', { format: 'whole' }),
);

export const stationCells: TemplateCell[] = [
  ...line(6, 1, ['1  Stations', 'heading'], ...Array.from({ length: 8 }, (): Field => ['', 'heading'])),
  ...line(7, 1, ...heads('aircraft', 'station', 'weight', 'arm'), lateralHead, ...heads('moment', 'entry looked at', 'verdict', 'what looks wrong')),
  ...inputRows(stationRows.first, 1, padded(stationRows, inventedAircraft.flatMap(({ name, stations }) => stations.map((row): readonly Content[] => [name, ...row])), 5), (index) => (index === 3 || index === 4 ? 'one' : 'whole')),
  ...moments,
  ...entrySpill,
  cell(25, 1, `=IF(${stationsWhole},"Every station of the aircraft in use has a weight and an arm.","A station lacks a weight, an arm or an aircraft of Manual tables: the points stay UNKNOWN. An empty seat weighs 0.")`, 'subtitle'),
];

function fuelLine(row: number, label: string, content: Content, unit: string, note: string): TemplateCell[] {
  const style = typeof content === 'number' ? 'input' : 'computed';
  return line(row, 1, [label, 'label'], [undefined, 'plain'], [content, style, { format: 'one', note }], [`=IFERROR(${unit},"")`, 'unit']);
}

const fuelUnit = ofAircraft('fuel in');
const weightUnit = ofAircraft('weight in');
const numbers = (...cells: readonly string[]): string => cells.map((place) => `ISNUMBER(${place})`).join(',');
const fuelled = (fuel: string, ...needed: readonly string[]): string => `=IF(AND(${numbers('C38', 'C37', ...needed)}),IF(${fuel}<0,"",C38+(${fuel})*C37),"")`;

export const fuelCells: TemplateCell[] = [
  ...line(26, 1, ['2  Fuel', 'heading'], ...Array.from({ length: 4 }, (): Field => ['', 'heading'])),
  ...line(27, 1, ...heads('aircraft', 'tank', 'on board', 'burned, in order'), lateralHead),
  ...inputRows(tankRows.first, 1, padded(tankRows, inventedAircraft.flatMap(({ name, tanks }) => tanks.map((row): readonly Content[] => [name, ...row])), 5), (index) => (index === 2 ? 'one' : 'whole')),
  ...fuelLine(34, 'fuel on board at start', `=IF(${tanksWhole},SUMIF(${read(tankRows, 'A')},aircraft_in_use,${read(tankRows, 'C')}),"")`, fuelUnit, 'Sum of the tanks of the aircraft in use.'),
  ...fuelLine(35, 'taxi and run-up', 1.4, fuelUnit, 'Burned before take-off.'),
  ...fuelLine(36, 'trip fuel', `=${on(sheetNames.trip, tripCells.tripFuel)}`, fuelUnit, 'From the Trip sheet: time en route x fuel flow.'),
  ...fuelLine(37, 'weight of one unit of fuel', numberOfAircraft('fuel weight, each'), weightUnit, 'From the aircraft list. Avgas: 6.0 lb a US gallon (FAA-H-8083-1B), 0.72 kg a litre.'),
  ...fuelLine(38, 'zero-fuel weight', `=IF(${stationsWhole},SUMIF(${read(stationRows, 'A')},aircraft_in_use,${read(stationRows, 'C')}),"")`, weightUnit, 'Sum of the stations.'),
  ...fuelLine(39, 'take-off weight', fuelled('C34-C35', 'C34', 'C35'), weightUnit, 'For the runway and the climb.'),
  ...fuelLine(40, 'landing weight', fuelled('C34-C35-C36', 'C34', 'C35', 'C36'), weightUnit, 'For the landing runway.'),
  cell(41, 1, `=IF(${tanksWhole},IF(${cornersWhole},"${everyOne} tank and every corner belongs to an aircraft of Manual tables.",${cornersNotWhole}),${tanksNotWhole})`, 'subtitle'),
];

export const cornerCells: TemplateCell[] = [
  ...line(66, 1, ['4  Envelope', 'heading'], ...Array.from({ length: 3 }, (): Field => ['', 'heading'])),
  ...line(67, 1, ...heads('aircraft', 'category', 'arm', 'weight')),
  ...inputRows(cornerRows.first, 1, padded(cornerRows, inventedAircraft.flatMap(({ name, corners }) => corners.map((row): readonly Content[] => [name, ...row])), 4), (index) => (index === 2 ? 'one' : 'whole')),
  ...line(67, 6, ...heads('drawn: arm', 'drawn: weight')),
  cell(cornerRows.first, 6, `=${envelopeInUse}`, 'computed', { format: 'one', note: 'The corners of the aircraft and category in use, for the drawing. End with the first corner again, so that it closes.' }),
  ...Array.from({ length: cornerRows.last - cornerRows.first }, (_, index) => cornerRows.first + 1 + index).map((row) => cell(row, 6, undefined, 'computed', { format: 'one' })),
  ...Array.from({ length: cornerRows.last - cornerRows.first + 1 }, (_, index) => cornerRows.first + index).map((row) => cell(row, 7, undefined, 'computed', { format: 'whole' })),
];

