// What holds for the whole route: taken from the trip and its loading, and the few figures that are typed here.
import { address, cell, on } from '../build';
import { listHeading } from '../lists';
import type { FormatName } from '../look';
import { ofAircraft } from '../manual/sheet';
import { balanceCells, sheetNames, tripCells } from '../places';
import type { TemplateCell } from '../template';
import { tripRows } from '../trip/rows';
import { workingRows } from '../working/rows';
import { legList, wholeRows as rows } from './rows';

export const onTrip = (row: number, column = 'B'): string => on(sheetNames.trip, `${column}${row}`);
export const onWorking = (row: number, column = 'B'): string => on(sheetNames.working, `${column}${row}`);
const onBalance = (place: string): string => on(sheetNames.balance, place);

const valueColumn = 13;
export const value = (row: number): string => address(row, valueColumn);

export const fuelUnit = `=IFERROR(${ofAircraft('fuel in')}&"","")`;
/** A label over three columns, a value, its unit. */
const whole = (row: number, label: string, content: string | number | undefined, unit: string, format: FormatName, note?: string): TemplateCell[] => {
  const computed = typeof content === 'string';
  const style = computed ? (format === 'text' ? 'computedText' : 'computed') : 'input';
  return [
    cell(row, 10, label, 'label'),
    cell(row, valueColumn, content, style, { format, ...(note !== undefined && { note }) }),
    cell(row, valueColumn + 1, unit, 'unit'),
  ];
};
const fuelLeft = `${onBalance(balanceCells.fuelOnBoard)}-${onBalance(balanceCells.taxiFuel)}`;
const reserveFuel = `${onTrip(tripRows.reserve)}*${onWorking(workingRows.flow)}/60`;

export const wholeCells: TemplateCell[] = [
  ...listHeading(legList.head - 2, 10, 14, '2  The whole route', 'From the trip; tinted cells are typed here.'),
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
  cell(rows.climbSpeed - 1, 10, 'Climb by Manual tables, descent by the card', 'subtitle'),
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
];
