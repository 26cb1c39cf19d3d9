// The Route: legs, the pilot's own points, the air over them, every leg worked out in one call, and the sun of the three places.
import { area, caution, cell, filledOutside, line, readTripInWords, typedOver, verdictOf, worstOfWords } from '../build';
import { whileDemo } from '../demo/inUse';
import { columnsFrom } from '../keys';
import { columnWithHead, moveIntoList } from '../lists';
import type { FormatName } from '../look';
import { sheetNames } from '../places';
import type { DeclaredSheet, TemplateCell, Validation } from '../template';
import { answerCells } from './answer';
import { airCells, legCells, pointCells } from './entries';
import { groundReason, groundWord, levelCells } from './levels';
import { airFrom, airList, answer, legColumns, legList, pointList, routeLastRow, sunWorkedRows, wholeRows as rows } from './rows';
import { sunCells } from './sun';
import { fuelUnit, value, wholeCells } from './whole';

const column = (letter: string): string => columnWithHead(answer, letter).replace(/\$/g, '');
const ofTotal = (letter: string, leg = 'total'): string => `INDEX(${column(letter)},MATCH("${leg}",${column('A')},0))`;
/** A number of the row of the whole; a blank must not pass for 0. */
const totalNumber = (letter: string): string => `=IFERROR(IF(ISNUMBER(${ofTotal(letter)}),${ofTotal(letter)},""),"")`;
const totalText = (letter: string): string => `=IFERROR(${ofTotal(letter)}&"","")`;
const legsTyped = `COUNTA($B$${legList.first}:$D$${legList.last + 1})`;
/** Formula text: rows filled beside a list, where they are not read. */
const beside = (list: typeof legList, from: string, to: string): string => filledOutside(list, from, to, { above: list.head, below: list.last + 1 });
const stray = `${beside(legList, 'B', 'I')}+${beside(airList, 'K', 'O')}+${beside(pointList, 'B', 'C')}>0`;
/** The worst of the fuel and the ground. */
const fuelWord = verdictOf(ofTotal('S')).slice(1);
const routeVerdict = `=IF(${stray},"UNKNOWN",${worstOfWords([fuelWord, groundWord])})`;
const fuelReason = `IFERROR(IF(${ofTotal('T')}="","every leg has its fuel",${ofTotal('T')}),"not worked out: see the head of section 6")`;
const routeReason = `=IF(${stray},"${moveIntoList('A leg, a wind or a point')}",IF(${legsTyped}=0,"no leg is typed",${fuelReason}&"; "&${groundReason}))`;

const summary: readonly (readonly [label: string, formula: string, unit: string, format: FormatName])[] = [
  ['distance', totalNumber('L'), 'NM', 'one'],
  ['time', totalNumber('N'), 'min', 'whole'],
  ['fuel', totalNumber('O'), fuelUnit, 'one'],
  ['fuel left', totalNumber('Q'), fuelUnit, 'one'],
];
const summaryCells: TemplateCell[] = [
  ...line(
    2,
    1,
    ['Verdict', 'label'],
    [routeVerdict, 'bigVerdict', { note: 'The worst of all legs; section 6 says of which and why.' }],
    [routeReason, 'computedText'],
  ),
  ...line(3, 1, [totalText('C'), 'computedText'], [totalText('D'), 'computedText']),
  ...summary.flatMap(([label, formula, unit, format], index) =>
    line(3, 3 + index * 3 + (index > 0 ? 1 : 0), [label, 'label'], [formula, 'computed', { format }], [unit, 'unit']),
  ),
];

const worked: readonly TemplateCell[] = [
  ...summaryCells,
  ...legCells,
  ...levelCells,
  ...wholeCells,
  ...airCells,
  ...pointCells,
  ...sunCells,
  ...answerCells,
];

const number = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });
const inLegs = (across: number): string => area(legList.first, across, legList.last, across);
const inAir = (across: number): string => area(airList.first, airFrom + across, airList.last, airFrom + across);

export const routeSheet: DeclaredSheet = {
  key: 'route',
  name: sheetNames.route,
  version: 3,
  rows: routeLastRow + 2,
  columns: 20,
  // Widths side by side that are equal take one call of the platform.
  columnWidths: [84, 100, 124, 100, ...Array<number>(9).fill(60), 82, 50, 54, 54, 54, 82, 300],
  rowHeights: { 1: 32, 2: 32, [legList.head]: 46, [airList.head]: 46, [sunWorkedRows.head]: 34, [answer.head]: 34 },
  frozenRows: 3,
  cells: [
    cell(1, 1, 'Route', 'title'),
    cell(1, 3, readTripInWords, 'subtitle'),
    cell(1, 10, whileDemo('Invented places, winds and numbers.'), 'subtitle'),
    cell(4, 1, caution, 'subtitle'),
    cell(5, 1, `=${typedOver(worked)}`, 'computedText'),
    ...worked,
  ],
  merges: [],
  validations: [
    number(inLegs(legColumns.altitude), -1500, 60000, 'Level of the leg in feet.'),
    number(inLegs(legColumns.trueAirspeed), 20, 600, 'True airspeed in knots; blank: by the cruise table, or that of the aircraft list.'),
    number(inLegs(legColumns.fuelFlow), 0, 1000, 'Fuel flow an hour; blank: by the cruise table, or that of the aircraft list.'),
    number(inLegs(legColumns.power), 0, 10000, 'Power as the cruise table has it.'),
    number(inLegs(legColumns.ground), -1500, 30000, 'Highest ground beside the leg, in feet above sea level.'),
    number(inLegs(legColumns.clearance), 0, 10000, 'Feet above the highest ground.'),
    number(value(rows.power), 0, 10000, 'Power as the cruise table has it.'),
    { kind: 'list', range: value(rows.judgeGround), choices: ['yes', 'no'], help: 'yes or no.' },
    number(value(rows.clearance), 0, 10000, 'Feet above the highest ground.'),
    number(value(rows.sourceElevation), -1500, 10000, "Elevation of the altimeter's source in feet."),
    number(value(rows.climbSpeed), 20, 400, 'Knots indicated.'),
    number(`${value(rows.climbFlow)}:${value(rows.descentFlow)}`, 0, 1000, 'Fuel flow an hour, in the fuel unit of the aircraft list.'),
    number(value(rows.arriveAbove), 0, 10000, 'Feet above the destination.'),
    number(inAir(0), -1500, 60000, 'Altitude in feet.'),
    number(inAir(1), 0, 360, 'Where the wind blows from, degrees true.'),
    number(inAir(2), 0, 300, 'Wind in knots.'),
    number(inAir(3), -90, 60, 'Temperature in degrees Celsius.'),
  ],
  verdictRanges: ['B2', inLegs(legColumns.levels + 4), area(answer.first, 19, answer.last, 19)],
  names: [{ name: 'route_verdict', range: 'B2' }],
  keys: {
    entries: {
      climbSpeed: value(rows.climbSpeed),
      climbFlow: value(rows.climbFlow),
      descentFlow: value(rows.descentFlow),
      arriveAbove: value(rows.arriveAbove),
      power: value(rows.power),
      judgeGround: value(rows.judgeGround),
      clearance: value(rows.clearance),
      sourceElevation: value(rows.sourceElevation),
    },
    lists: {
      legs: {
        ...legList,
        read: { first: legList.head, last: legList.last + 1 },
        columns: columnsFrom(legColumns.from, 'from', 'to', 'altitude', 'trueAirspeed', 'fuelFlow', 'power', 'highestGround', 'clearance'),
      },
      air: {
        ...airList,
        read: { first: airList.head, last: airList.last + 1 },
        columns: columnsFrom(airFrom, 'altitude', 'windFrom', 'wind', 'temperature', 'place'),
      },
      points: { ...pointList, read: { first: pointList.head, last: pointList.last + 1 }, columns: columnsFrom(2, 'point', 'position') },
    },
  },
  charts: [],
  pictures: [
    {
      title: 'Route',
      row: 32,
      column: 16,
      width: 540,
      height: 204,
      drawn: { kind: 'route', from: { parts: area(answer.first, 1, answer.last, 14) } },
    },
    {
      title: 'Route from the side',
      row: 43,
      column: 16,
      width: 540,
      height: 270,
      drawn: {
        kind: 'routeProfile',
        from: {
          parts: area(answer.first, 1, answer.last, 14),
          levels: area(legList.first, 1, legList.last, legColumns.levels + 4),
          departure: value(rows.departureElevation),
        },
      },
    },
  ],
  print: { landscape: true },
};
