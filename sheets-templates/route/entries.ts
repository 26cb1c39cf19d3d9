// What the pilot types on the Route sheet: the legs, the pilot's own points, the air over them.
import { area, cell, line } from '../build';
import { demoAir, demoLegs, demoPoints } from '../demo/route';
import { entryList, listHeads, listHeading, typedNumber, typedText, type Look } from '../lists';
import { numberOfAircraft } from '../manual/sheet';
import type { TemplateCell } from '../template';
import { airList, legList, pointList } from './rows';

const legHeads = ['leg', 'from', 'to', 'altitude, ft', 'true airspeed', 'fuel flow', 'kt, typed', 'flow, typed'];
const legLooks: readonly Look[] = [typedText, typedText, typedNumber('whole')];
const typedLooks: readonly Look[] = [typedNumber('whole'), typedNumber('one')];
const legRow = (row: number): string => `COUNTA(B${row}:D${row})=0`;
/** As typed, else that of the aircraft list; nothing where the leg is blank. */
const orOfAircraft = (row: number, column: 'G' | 'H', header: 'cruise true airspeed, kt' | 'cruise fuel flow, an hour'): string =>
  `=IF(${legRow(row)},"",IF(${column}${row}<>"",${column}${row},${numberOfAircraft(header).slice(1)}))`;

const legRows = Array.from({ length: legList.last - legList.first + 1 }, (_, index) => legList.first + index);
export const legCells: TemplateCell[] = [
  ...listHeading(legList.head - 2, 1, 8, '1  Legs', 'Names of fields or own points, or positions. A blank "from" goes on from the leg before.'),
  ...listHeads(legList.head, 1, legHeads),
  ...entryList(
    legList,
    2,
    legLooks,
    demoLegs.map((leg) => leg.slice(0, 3)),
  ),
  ...entryList(
    legList,
    7,
    typedLooks,
    demoLegs.map((leg) => leg.slice(3)),
  ),
  ...legRows.flatMap((row, index) => [
    cell(row, 1, `=IF(${legRow(row)},"",COUNTA(D$${legList.head}:D${row})-1)`, 'computed', { format: 'whole' }),
    ...line(
      row,
      5,
      [
        orOfAircraft(row, 'G', 'cruise true airspeed, kt'),
        'computed',
        { format: 'whole', ...(index === 0 && { note: 'As typed at the right; else the cruise true airspeed of the aircraft list.' }) },
      ],
      [
        orOfAircraft(row, 'H', 'cruise fuel flow, an hour'),
        'computed',
        { format: 'one', ...(index === 0 && { note: 'As typed at the right; else the cruise fuel flow of the aircraft list.' }) },
      ],
    ),
  ]),
];

const airHeads = ['altitude, ft', 'wind from, true', 'wind, kt', 'temperature, C', 'place'];
const airLooks: readonly Look[] = [typedNumber('whole'), typedNumber('degrees'), typedNumber('whole'), typedNumber('whole'), typedText];
export const airFrom = 16;
export const airCells: TemplateCell[] = [
  ...listHeading(airList.head - 2, airFrom, airFrom + 4, '3  Winds and temperatures', 'From the ground up; a place in every row, or in none.'),
  ...listHeads(airList.head, airFrom, airHeads),
  ...entryList(airList, airFrom, airLooks, demoAir),
];

const pointHeads = ['point', 'position'];
export const pointCells: TemplateCell[] = [
  ...listHeading(
    pointList.head - 2,
    1,
    8,
    '4  Own points',
    'Positions as charts have them, such as S30 42 W015 02. Fields are known by their names.',
  ),
  ...listHeads(pointList.head, 2, pointHeads),
  ...entryList(pointList, 2, [typedText, typedText], demoPoints),
];

/** Formula text: a list with its heads and the blank row below it. */
export const tableOf = (list: { readonly head: number; readonly last: number }, from: number, to: number): string =>
  area(list.head, from, list.last + 1, to);
