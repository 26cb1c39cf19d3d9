// Manual tables: the aircraft list and each aircraft's own take-off, landing, climb and tank tables, as its owner types them.
import { inventedAircraft } from './aircraft';
import type { InventedAircraft, TableRow } from './aircraft/inventedAircraft';
import { area, caution, cell, inputRows, line, on, type Content, type Field } from './build';
import type { FormatName } from './look';
import { sheetNames } from './places';
import { formulaCall, type SheetTemplate, type TemplateCell, type Validation } from './template';

export const aircraftList = { head: 5, first: 6, last: 11 } as const;
const tableHead = 20;
/** Room for several aircraft; blank rows are passed over. */
const tableRows = 300;
const lastRow = tableHead + tableRows;

const listHeaders = [
  'aircraft', 'weight in', 'arm in', 'distance in', 'fuel in', 'fuel weight, each', 'usable fuel', 'crosswind shown, kt',
  'most zero-fuel weight', 'most take-off weight', 'most landing weight', 'lateral limit left', 'lateral limit right',
] as const;
type ListHeader = (typeof listHeaders)[number];

const listColumn = (from: ListHeader, to: ListHeader = from): string =>
  on(sheetNames.tables, area(aircraftList.first, listHeaders.indexOf(from) + 1, aircraftList.last, listHeaders.indexOf(to) + 1));

export const aircraftNames = on(sheetNames.tables, area(aircraftList.first, 1, aircraftList.last, 1));

/** Formula text: the list's value for the aircraft in use. */
export const ofAircraft = (header: ListHeader): string => `INDEX(${listColumn(header)},MATCH(aircraft_in_use,${aircraftNames},0))`;

/** Formula text: the same where it is a number; a blank cell must not pass for 0. */
export const numberOfAircraft = (header: ListHeader): string => `=IFERROR(IF(ISNUMBER(${ofAircraft(header)}),${ofAircraft(header)},""),"")`;

/** Formula text: the five limits of the aircraft in use, in one row. */
export const limitsInUse = `FILTER(${listColumn('most zero-fuel weight', 'lateral limit right')},${aircraftNames}=aircraft_in_use)`;

interface Table {
  readonly title: string;
  readonly unit: string;
  readonly column: number;
  readonly headers: readonly string[];
  readonly rowsOf: (aircraft: InventedAircraft) => readonly (TableRow | readonly Content[])[];
}

const distanceHeaders = ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'];

const tables = {
  takeoff: { title: '3  Take-off distance', unit: 'Distance in the unit of the list, altitude in feet, temperature in degrees Celsius.', column: 1, headers: distanceHeaders, rowsOf: ({ takeoff }) => takeoff },
  landing: { title: '4  Landing distance', unit: 'The same columns.', column: 8, headers: distanceHeaders, rowsOf: ({ landing }) => landing },
  climb: { title: '5  Rate of climb', unit: 'Rate in feet a minute.', column: 15, headers: [...distanceHeaders.slice(0, 3), 'rate of climb'], rowsOf: ({ climb }) => climb },
  tankArms: { title: '6  Arms of the fuel', unit: 'For each tank two rows or more.', column: 21, headers: ['tank', 'quantity in it', 'arm'], rowsOf: ({ tankArms }) => tankArms },
} as const satisfies Record<string, Table>;

type TableName = keyof typeof tables;

/** Formula text: a table, only the rows of the aircraft in use; with the header row where the function wants one. */
export function tableInUse(name: TableName): string {
  const { column, headers }: Table = tables[name];
  const names = on(sheetNames.tables, area(tableHead, column, lastRow, column));
  const body = on(sheetNames.tables, area(tableHead, column + 1, lastRow, column + headers.length));
  const header = name === 'tankArms' ? '' : `+(${names}="aircraft")`;
  return `FILTER(${body},(${names}=aircraft_in_use)${header})`;
}

function tableCells({ title, unit, column, headers, rowsOf }: Table): TemplateCell[] {
  const head: Field[] = ['aircraft', ...headers].map((header) => [header, 'columnHead'] as const);
  const rows = inventedAircraft.flatMap((aircraft) => rowsOf(aircraft).map((row): readonly Content[] => [aircraft.name, ...row]));
  const whole: FormatName = 'whole';
  return [
    ...line(tableHead - 2, column, ...head.map((_, index): Field => [index === 0 ? title : '', 'heading'])),
    cell(tableHead - 1, column, unit, 'subtitle'),
    ...line(tableHead, column, ...head),
    ...inputRows(tableHead + 1, column, rows, () => whole),
  ];
}

const listCells: TemplateCell[] = [
  ...line(aircraftList.head - 1, 1, ...listHeaders.map((_, index): Field => [index === 0 ? '1  Aircraft' : '', 'heading'])),
  ...line(aircraftList.head, 1, ...listHeaders.map((header): Field => [header, 'columnHead'])),
  ...inputRows(aircraftList.first, 1, [
    ...inventedAircraft.map(({ name, list }): readonly Content[] => [name, ...list]),
    ...Array.from({ length: aircraftList.last - aircraftList.first + 1 - inventedAircraft.length }, () => listHeaders.map((): Content => undefined)),
  ], (index) => (index === 5 ? 'two' : 'whole')),
];

const gridTables = ['takeoff', 'landing', 'climb'] as const;

/** One call for each table would be three; AFM_CHECK answers for one, so the three stand in a row. */
const checkCells: TemplateCell[] = [
  ...line(13, 1, ['2  Is each grid whole, for the aircraft in use?', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading']),
  ...gridTables.flatMap((name, index) => {
    const row = 14 + index;
    const words = { takeoff: 'take-off', landing: 'landing', climb: 'climb' }[name];
    return line(row, 1, [words, 'label'], [`=${formulaCall('AFM_CHECK', tableInUse(name), '$B$17')}`, 'verdict', { note: 'AFM_CHECK: OK when every combination of weight, pressure altitude and temperature has a row.' }], [undefined, 'computedText']);
  }),
  ...line(17, 1, ['inputs', 'label'], [3, 'input', { format: 'whole', note: 'The tables have three inputs: weight, pressure altitude, temperature.' }]),
];

const limits = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });

export const manualTablesSheet: SheetTemplate = {
  key: 'tables',
  name: sheetNames.tables,
  version: 1,
  rows: lastRow,
  columns: 24,
  columnWidths: [104, 82, 82, 82, 82, 82, 82, 104, 82, 82, 82, 82, 82, 23, 104, 82, 82, 82, 82, 23, 104, 104, 82, 82],
  rowHeights: { 1: 32, [aircraftList.head]: 46, [tableHead]: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Manual tables', 'title'),
    cell(2, 1, 'Invented demonstration aircraft. Replace every number by those of your own approved manual; add rows for more aircraft below.', 'subtitle'),
    cell(3, 1, caution, 'subtitle'),
    ...listCells,
    ...checkCells,
    ...Object.values(tables).flatMap(tableCells),
  ],
  merges: [],
  validations: [
    limits(area(aircraftList.first, 6, aircraftList.last, 6), 0, 100, 'Weight of one unit of fuel: avgas 6.0 lb a US gallon, 0.72 kg a litre.'),
    limits(area(tableHead + 1, 2, lastRow, 2), 1, 1000000, 'Weight, in the unit of the aircraft list.'),
    limits(area(tableHead + 1, 3, lastRow, 3), -2000, 30000, 'Pressure altitude in feet, -2,000 to 30,000.'),
    limits(area(tableHead + 1, 4, lastRow, 4), -60, 60, 'Temperature in degrees Celsius, -60 to 60.'),
    limits(area(tableHead + 1, 5, lastRow, 6), 1, 20000, 'Distance from the manual, in the unit of the aircraft list.'),
    limits(area(tableHead + 1, 9, lastRow, 9), 1, 1000000, 'Weight, in the unit of the aircraft list.'),
    limits(area(tableHead + 1, 10, lastRow, 10), -2000, 30000, 'Pressure altitude in feet, -2,000 to 30,000.'),
    limits(area(tableHead + 1, 11, lastRow, 11), -60, 60, 'Temperature in degrees Celsius, -60 to 60.'),
    limits(area(tableHead + 1, 12, lastRow, 13), 1, 20000, 'Distance from the manual, in the unit of the aircraft list.'),
  ],
  verdictRanges: ['B14:B16'],
  names: [],
  charts: [],
  print: { landscape: true },
};
