// The flight before this one on the same day: where it ends, when, with how much fuel, and whether this one can begin from there.
// "Add a flight" writes formulas that read the sheets of that flight; a pilot may as well type the figures.
import { cell, line, on, type Content, type Field } from '../build';
import type { FormatName, StyleName } from '../look';
import { ofAircraft } from '../manual/sheet';
import { balanceCells, sheetNames } from '../places';
import type { TemplateCell } from '../template';
import { workingRows } from '../working/rows';
import type { Item } from './item';
import { tripRows as rows } from './rows';

const at = (row: number): string => `B${row}`;
/** Formula text. */
export const fuelUnit = `IFERROR(${ofAircraft('fuel in')}&"","units")`;

const asked = (row: number, label: string, unit: Content, style: StyleName, format: FormatName, note: string): TemplateCell[] => [
  ...line(row, 1, [label, 'label'], [undefined, style, { format, note }]),
  cell(row, 5, unit, 'unit'),
];

export const flightBeforeCells: TemplateCell[] = [
  ...line(rows.beforeHeading, 1, ['7  The flight before this one', 'heading'], ...Array.from({ length: 4 }, (): Field => ['', 'heading'])),
  ...asked(
    rows.beforeTo,
    'it ends at',
    '',
    'inputText',
    'general',
    'The field, by its name. All of this section stays blank for the first flight; "Add a flight" in the panel fills it from the sheets of that flight.',
  ),
  ...asked(rows.beforeLands, 'its landing, UTC', '', 'input', 'dateTime', 'Day and time.'),
  ...asked(
    rows.beforeFuel,
    'its fuel at landing',
    `=${fuelUnit}`,
    'input',
    'one',
    'Of all tanks: on board less taxi, climb and trip, as planned; after the landing what the tanks hold.',
  ),
  ...asked(
    rows.beforeMinutes,
    'flown before this one',
    'minutes',
    'input',
    'whole',
    'Of this day, by the same aircraft: its inspections by hours are judged with them.',
  ),
  ...asked(rows.takenOn, 'fuel taken on since', `=${fuelUnit}`, 'input', 'one', 'Blank: none.'),
];

const section = `B${rows.beforeTo}:B${rows.takenOn}`;
const departure = at(rows.field);
const takeoff = on(sheetNames.working, `B${workingRows.moment}`);
const onBoard = on(sheetNames.balance, balanceCells.fuelOnBoard);
const [endsAt, lands, left, minutes, taken] = [rows.beforeTo, rows.beforeLands, rows.beforeFuel, rows.beforeMinutes, rows.takenOn].map(at) as [
  string,
  string,
  string,
  string,
  string,
];

const needs = (place: string, words: string): string => `IF(ISNUMBER(${place}),"","${words}")`;
/** Minutes below 0 would give hours back to the aircraft. */
const needsAmount = (place: string, words: string): string => `IF(ISNUMBER(${place}),IF(${place}<0,"${words} (below 0)",""),"${words}")`;
const missing = `TEXTJOIN(", ",TRUE,${[
  `IF(${endsAt}="","where it ends","")`,
  needs(lands, 'its landing'),
  needsAmount(left, 'its fuel at landing'),
  needsAmount(minutes, 'the minutes flown before'),
  `IF(${taken}="","",${needs(taken, 'fuel taken on (no number)')})`,
  `IF(${departure}="","the departure of this flight","")`,
  needs(takeoff, 'the take-off of this flight'),
  needs(onBoard, 'the fuel on board of this flight'),
].join(',')})`;

/** Formula text: a day with its time, such as 2026-11-25 14:30Z. */
export const moment = (place: string): string => `TEXT(${place},"yyyy-mm-dd hh:mm")&"Z"`;
const there = `${left}+IF(${taken}="",0,${taken})`;
/** In tenths of a unit: no tank is known better. */
const over = `ROUND((${onBoard}-(${there}))*10,0)`;
const fuelSaid = `ROUND(${onBoard},1)&" "&${fuelUnit}&" at start, but "&ROUND(${left},1)&" "&${fuelUnit}&" left and "&ROUND(${there}-${left},1)&" "&${fuelUnit}&" taken on"`;
/** A minute is lost in the adding up of days. */
const tooEarly = `ROUND((${takeoff}-${lands})*1440,0)<0`;
const impossible = `TEXTJOIN("; ",TRUE,${[
  `IF(${departure}=${endsAt},"","it ends at "&${endsAt}&", this one leaves "&${departure})`,
  `IF(${tooEarly},"take-off "&${moment(takeoff)}&" is before its landing "&${moment(lands)},"")`,
  `IF(${over}>0,${fuelSaid},"")`,
].join(',')})`;
/** Fuel that is left out weighs nothing on Weight and balance. */
const lighter = `IF(${over}<0,${fuelSaid}&": weighed with too little","")`;
const none = `COUNTA(${section})=0`;
const unread = '"cannot be read: its sheets are gone, or an error stands in section 7"';

export const flightBeforeItem: Item = [
  'Flight before',
  `=IFERROR(IF(${none},"OK",IF(${missing}<>"","UNKNOWN",IF(${impossible}<>"","NO",IF(${lighter}<>"","CHECK","OK")))),"UNKNOWN")`,
  `=IFERROR(IF(${none},"none is named: the first flight",IF(${missing}<>"","missing: "&${missing},IF(${impossible}<>"",${impossible}&IF(${lighter}="","","; "&${lighter}),IF(${lighter}<>"",${lighter},"it ends at "&${endsAt}&" at "&${moment(lands)}&", with the fuel that this one begins with")))),${unread})`,
];
