// What the pilot types on the Route sheet: the legs, the pilot's own points, the air over them.
import { area, cell } from '../build';
import { demoAir, demoLegs, demoPoints } from '../demo/route';
import { entryList, listHeads, listHeading, typedNumber, typedText, type Look } from '../lists';
import type { TemplateCell } from '../template';
import { airFrom, airList, legColumns, legList, pointList } from './rows';

const legHeads = ['leg', 'from', 'to', 'altitude, ft', 'true airspeed', 'fuel flow', 'power', 'highest ground', 'clearance'];
const legLooks: readonly Look[] = [
  typedText,
  typedText,
  typedNumber('whole'),
  ['input', 'whole', 'Knots. Blank: by the cruise table, else that of the aircraft list; what was used stands at the right.'],
  ['input', 'one', 'An hour, in the fuel unit of the aircraft list. Blank: likewise.'],
  ['input', 'general', 'By which the cruise table is read. Blank: that of section 2.'],
  ['input', 'whole', 'Feet above sea level, from the chart, as wide beside the leg as you want it.'],
  ['input', 'whole', 'Feet above the highest ground. Blank: that of section 2.'],
];
const legRow = (row: number): string => `COUNTA(B${row}:D${row})=0`;
const legRows = Array.from({ length: legList.last - legList.first + 1 }, (_, index) => legList.first + index);
export const legCells: TemplateCell[] = [
  ...listHeading(
    legList.head - 2,
    1,
    20,
    '1  Legs',
    'Names of fields or own points, or positions. A blank "from" goes on from the leg before. Speed and flow: typed, else by the cruise table, else those of the aircraft.',
  ),
  ...listHeads(legList.head, 1, legHeads),
  ...entryList(legList, legColumns.from, legLooks, demoLegs),
  ...legRows.map((row) => cell(row, 1, `=IF(${legRow(row)},"",COUNTA(D$${legList.head}:D${row})-1)`, 'computed', { format: 'whole' })),
];

const airHeads = ['altitude, ft', 'wind from, true', 'wind, kt', 'temperature, C', 'place'];
const airLooks: readonly Look[] = [typedNumber('whole'), typedNumber('degrees'), typedNumber('whole'), typedNumber('whole'), typedText];
export const airCells: TemplateCell[] = [
  ...listHeading(airList.head - 2, airFrom, airFrom + 4, '3  Winds and temperatures', 'A place in every row, or in none.'),
  ...listHeads(airList.head, airFrom, airHeads),
  ...entryList(airList, airFrom, airLooks, demoAir),
];

const pointHeads = ['point', 'position'];
export const pointCells: TemplateCell[] = [
  ...listHeading(
    pointList.head - 2,
    1,
    5,
    '4  Own points',
    'Positions as charts have them, such as S30 42 W015 02. Fields are known by their names.',
  ),
  ...listHeads(pointList.head, 2, pointHeads),
  ...entryList(pointList, 2, [typedText, typedText], demoPoints),
];

/** Formula text: a list with its heads and the blank row below it. */
export const tableOf = (list: { readonly head: number; readonly last: number }, from: number, to: number): string =>
  area(list.head, from, list.last + 1, to);
