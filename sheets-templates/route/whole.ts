// What holds for the whole route: taken from the trip and its loading, and the few figures that are typed here.
import { address, cell, on } from '../build';
import { columnWithHead, listHeading } from '../lists';
import type { FormatName } from '../look';
import { flownBefore } from '../manual/flown';
import { ofAircraft } from '../manual/sheet';
import { balanceCells, sheetNames, tripCells } from '../places';
import type { TemplateCell } from '../template';
import { tripRows } from '../trip/rows';
import { workingRows } from '../working/rows';
import { answer, wholeRows as rows } from './rows';

export const onTrip = (row: number, column = 'B'): string => on(sheetNames.trip, `${column}${row}`);
export const onWorking = (row: number, column = 'B'): string => on(sheetNames.working, `${column}${row}`);
const onBalance = (place: string): string => on(sheetNames.balance, place);

const valueColumn = 4;
export const value = (row: number): string => address(row, valueColumn);

export const fuelUnit = `=IFERROR(${ofAircraft('fuel in')}&"","")`;
/** A label over three columns, a value, its unit. */
const whole = (row: number, label: string, content: string | number | undefined, unit: string, format: FormatName, note?: string): TemplateCell[] => {
  const computed = typeof content === 'string';
  const style = computed ? (format === 'text' ? 'computedText' : 'computed') : 'input';
  return [
    cell(row, 1, label, 'label'),
    cell(row, valueColumn, content, style, { format, ...(note !== undefined && { note }) }),
    cell(row, valueColumn + 1, unit, 'unit'),
  ];
};
const fuelLeft = `${onBalance(balanceCells.fuelOnBoard)}-${onBalance(balanceCells.taxiFuel)}`;
const reserveFuel = `${onTrip(tripRows.reserve)}*${onWorking(workingRows.flow)}/60`;

const parts = (letter: string): string => columnWithHead(answer, letter);
/** Formula text: the place of the last part of a leg that is so; 0 where there is none. */
const lastOf = (so: string): string => `SUMPRODUCT(MAX(ISNUMBER(${parts('A')})*${so}*(ROW(${parts('A')})-ROW(${address(answer.head, 1)})+1)))`;
const ofPart = (place: string, letter: string): string =>
  `=IFERROR(IF(${place}=0,"",IF(ISNUMBER(INDEX(${parts(letter)},${place})),INDEX(${parts(letter)},${place}),"")),"")`;

export const wholeCells: TemplateCell[] = [
  ...listHeading(rows.date - 3, 1, 5, '2  The whole route', 'From the trip; tinted cells are typed here.'),
  ...whole(
    rows.date,
    'date',
    `=IF(ISNUMBER(${on(sheetNames.trip, tripCells.firstDay)}),${on(sheetNames.trip, tripCells.firstDay)},"")`,
    '',
    'date',
    'First day of the trip.',
  ),
  ...whole(rows.takeoff, 'take-off', `=${onTrip(tripRows.takeoffTime)}&""`, 'UTC', 'text', 'From the Trip sheet.'),
  ...whole(
    rows.fuel,
    'fuel at take-off',
    `=IFERROR(IF(AND(ISNUMBER(${onBalance(balanceCells.fuelOnBoard)}),ISNUMBER(${onBalance(balanceCells.taxiFuel)})),${fuelLeft},""),"")`,
    fuelUnit,
    'one',
    'On board less taxi, from Weight and balance.',
  ),
  ...whole(
    rows.reserve,
    'final reserve',
    `=IFERROR(IF(AND(ISNUMBER(${onTrip(tripRows.reserve)}),ISNUMBER(${onWorking(workingRows.flow)})),${reserveFuel},""),"")`,
    fuelUnit,
    'one',
    'Minutes of the Trip sheet at the fuel flow of the trip.',
  ),
  ...whole(rows.alternate, 'alternate', `=${onTrip(tripRows.field, 'D')}&""`, '', 'text', 'From the Trip sheet; blank: none.'),
  ...whole(
    rows.weight,
    'take-off weight',
    `=IFERROR(IF(ISNUMBER(${onBalance(balanceCells.takeoffWeight)}),${onBalance(balanceCells.takeoffWeight)},""),"")`,
    `=IFERROR(${ofAircraft('weight in')}&"","")`,
    'whole',
    'For the climb table.',
  ),
  ...whole(
    rows.departureElevation,
    'departure elevation',
    `=IF(ISNUMBER(${onWorking(workingRows.elevation)}),${onWorking(workingRows.elevation)},"")`,
    'ft',
    'whole',
    'From Fields, for the profile.',
  ),
  cell(rows.climbHelp, 1, 'Climb by Manual tables, descent by the card', 'subtitle'),
  ...whole(rows.climbSpeed, 'climb speed', 85, 'kt indicated', 'whole', 'At which the rates of the climb table are flown.'),
  ...whole(rows.climbFlow, 'climb flow', 14, '=IFERROR(' + ofAircraft('fuel in') + '&" an hour","")', 'one'),
  ...whole(
    rows.descentFlow,
    'descent flow',
    undefined,
    '=IFERROR(' + ofAircraft('fuel in') + '&" an hour","")',
    'one',
    'Blank: that of the last leg.',
  ),
  ...whole(rows.arriveAbove, 'arrive above the field', 1000, 'ft', 'whole', 'Where the descent ends.'),
  cell(rows.levelHelp, 1, 'Legs that say nothing of their own', 'subtitle'),
  ...whole(
    rows.power,
    'power',
    65,
    'as the cruise table',
    'general',
    'Blank: speed and flow of the aircraft list, or as typed with each leg. A table without powers is always read.',
  ),
  cell(rows.judgeGround, 1, 'judge the ground', 'label'),
  cell(rows.judgeGround, valueColumn, 'yes', 'inputText', { note: 'no: the levels are not held against the ground, and the verdict says so.' }),
  cell(rows.judgeGround, valueColumn + 1, 'yes or no', 'unit'),
  ...whole(
    rows.clearance,
    'clearance',
    1000,
    'ft',
    'whole',
    'Wanted above the highest ground of each leg: your own, and no less than the rules of the airspace.',
  ),
  ...whole(
    rows.sourceElevation,
    "altimeter's source, elevation",
    undefined,
    'ft',
    'whole',
    'For cold air. Blank: the lower of departure and destination, which asks for more.',
  ),
  cell(rows.flownBefore, 1, flownBefore, 'computedText'),
  cell(rows.cardHelp, 1, 'For the descent card, where the trip goes by the route', 'subtitle'),
  ...whole(
    rows.lastGroundspeed,
    'groundspeed before the descent',
    ofPart(lastOf(`(${parts('B')}="cruise")`), 'M'),
    'kt',
    'whole',
    'Of the last cruise part of section 6.',
  ),
  ...whole(rows.lastCourse, 'true course of the last leg', ofPart(lastOf('1'), 'I'), 'deg true', 'degrees', 'In its middle, from section 6.'),
];
