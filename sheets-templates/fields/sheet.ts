// Fields: where they lie, how high, and their runways, each length with its own unit; typed once and chosen by name on the trip.
import { address, area, caution, cell, filledOutside, on } from '../build';
import { demoFields, demoRunways } from '../demo/fields';
import {
  entryList,
  headWords,
  listHeads,
  listHeading,
  moveIntoList,
  shownNumber,
  spillList,
  spillRoom,
  typedNumber,
  typedText,
  type List,
  type Look,
} from '../lists';
import { columnsFrom } from '../keys';
import { sheetNames } from '../places';
import { formulaCall, type DeclaredSheet, type TemplateCell, type Validation } from '../template';
import { whileDemo } from '../demo/inUse';

export const fieldList: List = { head: 7, first: 8, last: 47 };
export const runwayList: List = { head: 52, first: 53, last: 132 };

const fieldHeads = ['field', 'station', 'latitude', 'longitude', 'elevation, ft', 'remark'];
const runwayHeads = ['field', 'runway', 'direction', 'take-off available', 'landing available', 'length in', 'surface', 'slope, %', 'remark'];

/** As written on the trip; the published factors know no other. */
export const surfaceChoices = ['paved, dry', 'paved, wet', 'grass, dry', 'grass, wet', 'grass, very short and wet', 'soft ground or snow'];

const whole = ({ head, last }: List, lastColumn: number): string => area(head, 1, last + 1, lastColumn);

const fieldLooks: readonly Look[] = [typedText, typedText, typedNumber('general'), typedNumber('general'), typedNumber('whole'), typedText];
const runwayLooks: readonly Look[] = [
  typedText,
  ['inputText', 'text'],
  typedNumber('degrees'),
  typedNumber('whole'),
  typedNumber('whole'),
  typedText,
  typedText,
  typedNumber('one'),
  typedText,
];

const entriesWords = ['verdict', 'complete? any slip?'];

const fieldCells: TemplateCell[] = [
  ...listHeading(
    fieldList.head - 2,
    1,
    9,
    '1  Fields',
    'Positions in degrees, south and west negative (POSITION_READ turns chart forms into degrees). From current official data.',
  ),
  ...listHeads(fieldList.head, 1, fieldHeads),
  ...entryList(fieldList, 1, fieldLooks, demoFields),
  ...spillList(
    fieldList,
    7,
    [
      ['verdict', undefined, 'FIELD_ENTRIES: what is missing, and what looks like a typing error. The Trip sheet hears the fields that it uses.'],
      ['computedText'],
    ],
    entriesWords,
    formulaCall('FIELD_ENTRIES', whole(fieldList, 6), whole(runwayList, 9), headWords(entriesWords)),
  ),
];

const directionHead = 'direction used';
/**
 * The direction that other sheets read: as typed, else ten times the number in the name. One formula in the row of the heads, so that a runway
 * put into the list has its direction too. A blank must not pass for 0.
 */
function directionUsed(): string {
  const [field, runway, direction] = [1, 2, 3].map((column) => area(runwayList.head, column, runwayList.last, column));
  const unnamed = `(${field}="")+(${runway}="")+(${direction}<>"")`;
  const row = `ROW(${field})-ROW(${address(runwayList.head, 1)})`;
  return `=ARRAYFORMULA(IF(${row}=0,"${directionHead}",IF(ISNUMBER(${direction}),${direction},IF(${unnamed}>0,"",IFERROR(VALUE(LEFT(${runway},2))*10,"")))))`;
}

const directionColumn = 10;
const directionCells: TemplateCell[] = [
  cell(runwayList.head, directionColumn, directionUsed(), 'columnHead', { shows: directionHead }),
  ...spillRoom(runwayList, directionColumn, [shownNumber('degrees')]),
];

const runwayCells: TemplateCell[] = [
  ...listHeading(
    runwayList.head - 2,
    1,
    10,
    '2  Runways',
    'Both ends of each, as painted: 03, 21L. Magnetic direction, or blank for ten times the number. Lengths as declared, in their own unit. Slope up positive.',
  ),
  ...listHeads(runwayList.head, 1, runwayHeads),
  ...entryList(runwayList, 1, runwayLooks, demoRunways),
  ...directionCells,
];

const onFields = (list: List, column: number): string => on(sheetNames.fields, area(list.first, column, list.last, column));

/** Ranges of the Fields sheet that other sheets read. */
export const fieldColumns = {
  names: onFields(fieldList, 1),
  station: onFields(fieldList, 2),
  latitude: onFields(fieldList, 3),
  longitude: onFields(fieldList, 4),
  elevation: onFields(fieldList, 5),
  verdict: onFields(fieldList, 7),
  reason: onFields(fieldList, 8),
} as const;

export const runwayColumns = {
  field: onFields(runwayList, 1),
  name: onFields(runwayList, 2),
  takeoffAvailable: onFields(runwayList, 4),
  landingAvailable: onFields(runwayList, 5),
  unit: onFields(runwayList, 6),
  surface: onFields(runwayList, 7),
  slope: onFields(runwayList, 8),
  direction: onFields(runwayList, directionColumn),
} as const;

/** Formula text: rows filled beside a list, where they are not read. */
const outside = (list: List, lastColumn: string): string => filledOutside(list, 'A', lastColumn, { above: list.head, below: list.last + 1 });
const warning = `=IF(${outside(fieldList, 'F')}+${outside(runwayList, 'I')}>0,"${moveIntoList('A field or a runway')}","")`;

const number = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });
const runwayColumn = (column: number): string => area(runwayList.first, column, runwayList.last, column);
const fieldColumn = (column: number): string => area(fieldList.first, column, fieldList.last, column);

export const fieldsSheet: DeclaredSheet = {
  key: 'fields',
  name: sheetNames.fields,
  version: 2,
  rows: runwayList.last + 2,
  columns: 10,
  columnWidths: [130, 74, 92, 92, 92, 92, 140, 92, 300, 74],
  rowHeights: { 1: 32, [fieldList.head]: 34, [runwayList.head]: 34 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Fields', 'title'),
    cell(
      2,
      1,
      whileDemo('Invented fields, for demonstration.', 'Type your own from current official data; the trip chooses them by name.'),
      'subtitle',
    ),
    cell(3, 1, caution, 'subtitle'),
    cell(4, 1, warning, 'plain'),
    ...fieldCells,
    ...runwayCells,
  ],
  merges: [],
  validations: [
    number(fieldColumn(3), -90, 90, 'Latitude in degrees, south negative.'),
    number(fieldColumn(4), -180, 180, 'Longitude in degrees, west negative.'),
    number(fieldColumn(5), -2000, 20000, 'Elevation in feet.'),
    { kind: 'listFrom', range: runwayColumn(1), source: fieldColumns.names, help: 'A field of the list above.' },
    number(runwayColumn(3), 0, 360, 'Magnetic direction in degrees.'),
    number(area(runwayList.first, 4, runwayList.last, 5), 0, 30000, 'Declared length, in the unit beside it; 0 where it may not be used.'),
    { kind: 'list', range: runwayColumn(6), choices: ['ft', 'm'], help: 'Unit of the two lengths.' },
    {
      kind: 'list',
      range: runwayColumn(7),
      choices: surfaceChoices,
      help: 'Surface and state. Nothing is published for slush, standing water or ice.',
    },
    number(runwayColumn(8), -10, 10, 'Slope in percent, up positive in the direction of this runway; 0 where it is level.'),
  ],
  verdictRanges: [area(fieldList.first, 7, fieldList.last, 7)],
  names: [],
  keys: {
    entries: {},
    lists: {
      fields: { ...fieldList, columns: columnsFrom(1, 'field', 'station', 'latitude', 'longitude', 'elevation', 'remark') },
      runways: {
        ...runwayList,
        columns: columnsFrom(1, 'field', 'runway', 'direction', 'takeoffAvailable', 'landingAvailable', 'lengthIn', 'surface', 'slope', 'remark'),
      },
    },
  },
  charts: [],
  print: { landscape: true },
};
