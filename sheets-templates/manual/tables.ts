// Sections 3 to 8 of Manual tables: take-off, landing, climb, arms of the fuel, corrections and cruise, several aircraft under each other.
import { inventedAircraft } from '../demo/aircraft';
import type { InventedAircraft, TableRow } from '../demo/aircraft/inventedAircraft';
import { area, cell, inputRows, line, on, type Content, type Field } from '../build';
import { columnsFrom, type KeyedList } from '../keys';
import type { FormatName } from '../look';
import { sheetNames } from '../places';
import type { TemplateCell } from '../template';

export const tableHead = 21;
/** Room for several aircraft; blank rows are passed over. */
const tableRows = 300;
export const lastRow = tableHead + tableRows;

interface Table {
  /** Keys of its columns after the aircraft, in the order of the headers. */
  readonly keys: readonly string[];
  readonly title: string;
  readonly unit: string;
  readonly column: number;
  readonly headers: readonly string[];
  readonly rowsOf: (aircraft: InventedAircraft) => readonly (TableRow | readonly Content[])[];
}

/** Corrections to the printed distances, as the manual gives them: one row each for take-off or landing. */
export const correctionList = { column: 42, headers: ['for', 'correction', 'percent', 'for each', 'amount'] } as const;
export const correctionsFor = ['take-off', 'landing'] as const;

/** Formula text: name, percent, for each and amount of the corrections of the aircraft in use; a blank where it has none. */
export function correctionsInUse(operation: (typeof correctionsFor)[number]): string {
  const { column } = correctionList;
  const of = (from: number, to = from): string => on(sheetNames.tables, area(tableHead, column + from, lastRow, column + to));
  return `IFERROR(FILTER(${of(2, 5)},(${of(0)}=aircraft_in_use)*(${of(1)}="${operation}")),"")`;
}

/** Columns that a two-way block takes for further values of what stands across; in brackets, so that nothing reads them without a row of words. */
const across = (from: number, to: number): readonly (readonly [key: string, header: string])[] =>
  Array.from({ length: to - from + 1 }, (_, index) => [`across${from + index}`, `(${from + index}th across)`] as const);
const spare = across(4, 8);

const distanceKeys = ['weight', 'pressureAltitude', 'temperature', 'groundRoll', 'over50Feet', ...spare.map(([key]) => key), 'note'];
const distanceHeaders = ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft', ...spare.map(([, header]) => header), 'note'];
const climbSpare = [['across3', '(3rd across)'] as const, ...across(4, 5)];

const tableForms =
  'Feet, degrees Celsius, and the units of the list, unless a row of words below an aircraft says otherwise. One row a point; what the manual does not print stays blank throughout.';

/** What may stand in a row of words, for the heads of the tables. */
const wordsHelp =
  'A row of words with the name of the aircraft, above its numbers, says what they are. Under weight: kg, lb, "up to" (the figures hold below it too) or "up to 2300 lb" (then the column stays blank). ' +
  'Under pressure altitude: m, "density altitude". Under temperature: °F, "ISA deviation". Under a figure: m or ft. "curve" where each curve has points of its own. ' +
  'Two-way block: "ground roll at 0", then "at 10", "at 20" across, altitudes down; below it "over 50 ft at 0" and so on begins the next. ' +
  'Chain of curves: "from" in place of an input, and the next input beside it. A note is printed beside the figure it stands with.';

const tables = {
  takeoff: {
    title: '3  Take-off distance',
    unit: tableForms,
    column: 1,
    keys: distanceKeys,
    headers: distanceHeaders,
    rowsOf: ({ takeoff }) => takeoff,
  },
  landing: {
    title: '4  Landing distance',
    unit: 'The same columns.',
    column: 14,
    keys: distanceKeys,
    headers: distanceHeaders,
    rowsOf: ({ landing }) => landing,
  },
  climb: {
    title: '5  Rate of climb',
    unit: 'Rate in feet a minute, unless a row of words says m/s.',
    column: 27,
    keys: [...distanceKeys.slice(0, 3), 'rateOfClimb', ...climbSpare.map(([key]) => key), 'note'],
    headers: [...distanceHeaders.slice(0, 3), 'rate of climb', ...climbSpare.map(([, header]) => header), 'note'],
    rowsOf: ({ climb }) => climb,
  },
  tankArms: {
    title: '6  Arms of the fuel',
    unit: 'Constant arm: one row with the usable fuel. Else two rows or more.',
    column: 37,
    keys: ['tank', 'quantity', 'arm'],
    headers: ['tank', 'quantity in it', 'arm'],
    rowsOf: ({ tankArms }) => tankArms,
  },
  cruise: {
    title: '8  Cruise',
    unit: 'True airspeed in knots, flow an hour in the fuel unit of the list, unless a row of words says km/h, mph, L or US gal. Power as the manual sets it; blank throughout where it has none.',
    column: correctionList.column + 7,
    keys: ['power', 'pressureAltitude', 'temperature', 'trueAirspeed', 'fuelFlow', 'note'],
    headers: ['power', 'pressure altitude', 'temperature', 'true airspeed', 'fuel flow', 'note'],
    rowsOf: ({ cruise }) => cruise,
  },
} as const satisfies Record<string, Table>;

export type TableName = keyof typeof tables;
export const lastColumn = tables.cruise.column + tables.cruise.headers.length;

/** Formula text: a table, only the rows of the aircraft in use; with the header row where the function wants one. */
export function tableInUse(name: TableName): string {
  const { column, headers }: Table = tables[name];
  const names = on(sheetNames.tables, area(tableHead, column, lastRow, column));
  const body = on(sheetNames.tables, area(tableHead, column + 1, lastRow, column + headers.length));
  const header = name === 'tankArms' ? '' : `+(${names}="aircraft")`;
  return `FILTER(${body},(${names}=aircraft_in_use)${header})`;
}

/** Formula text: the rows of the sheet in which `tableInUse` stands. */
export function rowsInUse(name: TableName): string {
  const { column }: Table = tables[name];
  const names = area(tableHead, column, lastRow, column);
  return `FILTER(ROW(${names}),(${names}=aircraft_in_use)+(${names}="aircraft"))`;
}

/** Columns of the arms of the fuel, with the head. */
export const tankArmColumns = {
  aircraft: on(sheetNames.tables, area(tableHead, tables.tankArms.column, lastRow, tables.tankArms.column)),
  tank: on(sheetNames.tables, area(tableHead, tables.tankArms.column + 1, lastRow, tables.tankArms.column + 1)),
  quantity: on(sheetNames.tables, area(tableHead, tables.tankArms.column + 2, lastRow, tables.tankArms.column + 2)),
} as const;

/** Every section with its first column, which holds the names of the aircraft. */
export const titledSections: readonly { readonly title: string; readonly column: number }[] = [
  ...Object.values(tables).map(({ title, column }: Table) => ({ title, column })),
  { title: '7  Corrections', column: correctionList.column },
];

function tableCells({ title, unit, column, headers, rowsOf }: Table): TemplateCell[] {
  const head: Field[] = ['aircraft', ...headers].map(
    (header) => [header, 'columnHead', header === 'weight' || header === 'power' ? { note: wordsHelp } : {}] as const,
  );
  const rows = inventedAircraft.flatMap((aircraft) =>
    rowsOf(aircraft).map((row): readonly Content[] => [aircraft.name, ...row, ...Array<Content>(headers.length - row.length).fill(undefined)]),
  );
  const formatOf = (index: number): FormatName => (headers[index - 1] === 'fuel flow' ? 'one' : 'whole');
  return [
    ...line(tableHead - 2, column, ...head.map((_, index): Field => [index === 0 ? title : '', 'heading'])),
    cell(tableHead - 1, column, unit, 'subtitle'),
    ...line(tableHead, column, ...head),
    ...inputRows(tableHead + 1, column, rows, formatOf).map((one) =>
      headers[one.column - column - 1] === 'note' ? { ...one, style: 'inputText' as const } : one,
    ),
  ];
}

function correctionCells(): TemplateCell[] {
  const { column, headers } = correctionList;
  const rows = inventedAircraft.flatMap(({ name, corrections }) => corrections.map((row): readonly Content[] => [name, ...row]));
  return [
    ...line(tableHead - 2, column, ...['7  Corrections', ...headers].map((text, index): Field => [index === 0 ? text : '', 'heading'])),
    cell(
      tableHead - 1,
      column,
      'Percent of the distance for each so much; wind, surface, slope and "above standard" come from the trip. "dry grass, of ground roll" is a part of the roll.',
      'subtitle',
    ),
    ...line(tableHead, column, ...['aircraft', ...headers].map((head): Field => [head, 'columnHead'])),
    ...inputRows(tableHead + 1, column, rows, (index) => (index === 3 || index === 4 ? 'one' : 'whole')),
  ];
}

/** The heads are read with the rows. */
const keyed = (column: number, keys: readonly string[]): KeyedList => ({
  head: tableHead,
  first: tableHead + 1,
  last: lastRow,
  read: { first: tableHead, last: lastRow },
  columns: columnsFrom(column, 'aircraft', ...keys),
});
export const tableLists = {
  ...Object.fromEntries(Object.entries(tables).map(([name, { column, keys }]) => [name, keyed(column, keys)])),
  corrections: keyed(correctionList.column, ['for', 'correction', 'percent', 'each', 'amount']),
};

export const tableSections: readonly TemplateCell[] = [...Object.values(tables).flatMap(tableCells), ...correctionCells()];
