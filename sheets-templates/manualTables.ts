// Manual tables: the aircraft list and each aircraft's own take-off, landing and climb tables, as its owner types them in.
import { area, caution, cell, columnLetter, inputRows, line, on, type Content, type Field } from './build';
import type { FormatName } from './look';
import { climbRows, landingRows, takeoffRows, type TableRow } from './quillonTables';
import { sheetNames } from './places';
import type { SheetTemplate, TemplateCell } from './template';

export const invented = 'Quillon Four';

const listHead = 5;
const listRows = 4;
const tableHead = 13;
/** Room for several aircraft; blank rows are passed over. */
const tableRows = 160;

const listHeaders = ['aircraft', 'weight in', 'arm in', 'distance in', 'fuel in', 'fuel weight, each', 'fuel arm', 'usable fuel', 'most zero-fuel weight', 'most take-off weight', 'most landing weight'] as const;
type ListHeader = (typeof listHeaders)[number];
const listValues: readonly Content[] = [invented, 'lb', 'in', 'ft', 'US gal', 6, 95, 60, 2500, 2650, 2650];

/** Formula text: the list's value for the aircraft in use. */
export function ofAircraft(header: ListHeader): string {
  const letter = columnLetter(listHeaders.indexOf(header) + 1);
  const rows = (column: string): string => on(sheetNames.tables, `${column}${listHead + 1}:${column}${listHead + listRows}`);
  return `INDEX(${rows(letter)},MATCH(aircraft_in_use,${rows('A')},0))`;
}

interface Table {
  readonly title: string;
  readonly column: number;
  readonly headers: readonly string[];
  readonly rows: readonly TableRow[];
}

const tables = {
  takeoff: { title: '2  Take-off distance', column: 1, headers: ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'], rows: takeoffRows },
  landing: { title: '3  Landing distance', column: 8, headers: ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'], rows: landingRows },
  climb: { title: '4  Rate of climb', column: 15, headers: ['weight', 'pressure altitude', 'temperature', 'rate of climb'], rows: climbRows },
} as const satisfies Record<string, Table>;

/** Formula text: a table with its header row, only the rows of the aircraft in use. */
export function tableInUse(name: keyof typeof tables): string {
  const { column, headers }: Table = tables[name];
  const names = on(sheetNames.tables, area(tableHead, column, tableHead + tableRows, column));
  const body = on(sheetNames.tables, area(tableHead, column + 1, tableHead + tableRows, column + headers.length));
  return `FILTER(${body},(${names}=aircraft_in_use)+(${names}="aircraft"))`;
}

function tableCells({ title, column, headers, rows }: Table): TemplateCell[] {
  const head: Field[] = ['aircraft', ...headers].map((header) => [header, 'columnHead'] as const);
  const blanks = Array.from({ length: tableRows - rows.length }, () => Array<Content>(headers.length + 1).fill(undefined));
  const whole: FormatName = 'whole';
  return [cell(tableHead - 2, column, title, 'heading'), ...line(tableHead, column, ...head), ...inputRows(tableHead + 1, column, [...rows.map((row) => [invented, ...row]), ...blanks], () => whole)];
}

const listCells: TemplateCell[] = [
  cell(4, 1, '1  Aircraft', 'heading'),
  ...line(listHead, 1, ...listHeaders.map((header): Field => [header, 'columnHead'])),
  ...inputRows(listHead + 1, 1, [listValues, ...Array.from({ length: listRows - 1 }, () => listHeaders.map((): Content => undefined))], (index) => (index === 5 || index === 6 ? 'two' : 'whole')),
];

const unitLine = (column: number, text: string): TemplateCell => cell(tableHead - 1, column, text, 'subtitle');

export const manualTablesSheet: SheetTemplate = {
  key: 'tables',
  name: sheetNames.tables,
  version: 1,
  rows: tableHead + tableRows,
  columns: 19,
  columnWidths: [110, 76, 76, 90, 90, 90, 76, 110, 76, 90, 90, 90, 90, 24, 110, 76, 90, 90, 90],
  rowHeights: { 1: 32, 2: 21, 5: 44, 13: 32 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Manual tables', 'title'),
    cell(2, 1, 'Invented demonstration aircraft. Replace every number by those of your own approved manual; add rows for more aircraft below.', 'subtitle'),
    cell(3, 1, caution, 'subtitle'),
    ...listCells,
    unitLine(1, 'Distance in the unit of the list; pressure altitude in feet, temperature in degrees Celsius. A whole grid, rows in any order.'),
    unitLine(8, 'The same columns.'),
    unitLine(15, 'Rate of climb in feet a minute.'),
    ...Object.values(tables).flatMap(tableCells),
  ],
  merges: [],
  validations: [
    { kind: 'number', range: area(tableHead + 1, 4, tableHead + tableRows, 4), minimum: -60, maximum: 60, help: 'Temperature in degrees Celsius, -60 to 60.' },
    { kind: 'number', range: area(tableHead + 1, 3, tableHead + tableRows, 3), minimum: -2000, maximum: 30000, help: 'Pressure altitude in feet, -2,000 to 30,000.' },
    { kind: 'number', range: area(tableHead + 1, 5, tableHead + tableRows, 6), minimum: 1, maximum: 20000, help: 'Distance from the manual, in the unit of the aircraft list.' },
  ],
  verdictRanges: [],
  names: [],
  charts: [],
  print: { landscape: true },
};
