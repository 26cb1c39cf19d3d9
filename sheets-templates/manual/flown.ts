// Section 9 of Manual tables: flights as they were planned beside how they were flown, and what they tell of the aircraft in use, by built-in
// formulas. Rows of an aircraft that is not listed do no harm here, so they are not told as strays.
import { area, cell, line, on, type Field } from '../build';
import { columnsFrom, type KeyedList } from '../keys';
import { entryList, listHeads, typedDate, typedNumber, typedText, type Look } from '../lists';
import { sheetNames } from '../places';
import type { TemplateCell, Validation } from '../template';
import { lastColumn, tableHead } from './tables';

export const flownFrom = lastColumn + 2;
const heads = ['aircraft', 'date', 'from', 'to', 'NM, planned', 'min, planned', 'fuel, planned', 'min, flown', 'fuel, used'];
export const flownTo = flownFrom + heads.length - 1;
const list = { head: tableHead, first: tableHead + 1, last: tableHead + 200 } as const;
const looks: readonly Look[] = [
  typedText,
  typedDate,
  typedText,
  typedText,
  typedNumber('one'),
  typedNumber('whole'),
  typedNumber('one'),
  typedNumber('whole'),
  typedNumber('one'),
];

const column = (across: number): string => area(list.first, flownFrom + across, list.last + 1, flownFrom + across);
const [names, miles, plannedMinutes, plannedFuel, minutes, fuel] = [0, 4, 5, 6, 7, 8].map(column) as [string, string, string, string, string, string];

/** Formula text: one number over another, of each flight of the aircraft in use that has both. */
function each(over: string, under: string, times: number): string {
  const isNumber = (one: string): string => `ISNUMBER(${one})`;
  return `FILTER(${over}/${under}*${times},(${names}=aircraft_in_use)*${isNumber(over)}*${isNumber(under)}*(${under}<>0))`;
}
const countOf = (values: string): string => `IFERROR(COUNT(${values}),0)`;
const meanOf = (values: string): string => `=IFERROR(IF(COUNT(${values})=0,"",AVERAGE(${values})),"")`;
/** The standard deviation of a sample, from two flights on. */
const spreadOf = (values: string): string =>
  `=IFERROR(IF(COUNT(${values})<2,"",MAX(0,(SUMPRODUCT(${values},${values})-COUNT(${values})*AVERAGE(${values})^2)/(COUNT(${values})-1))^(1/2)),"")`;

const minutesPerHour = 60;
const told = [
  { label: 'fuel flow, an hour', planned: each(plannedFuel, plannedMinutes, minutesPerHour), flown: each(fuel, minutes, minutesPerHour) },
  { label: 'NM an hour', planned: each(miles, plannedMinutes, minutesPerHour), flown: each(miles, minutes, minutesPerHour) },
  { label: 'time, % of planned', planned: undefined, flown: each(minutes, plannedMinutes, 100) },
  { label: 'fuel, % of planned', planned: undefined, flown: each(fuel, plannedFuel, 100) },
] as const;
const toldHead = tableHead - 3 - told.length;
const flow = told[0].flown;

/** Formula text: how the aircraft in use was flown before, for the next route; nothing where no flight is kept. */
export const flownBefore = `=IF(${countOf(onTables(flow))}=0,"",IFERROR("flown before: "&ROUND(AVERAGE(${onTables(flow)}),1)&" an hour in "&COUNT(${onTables(flow)})&" flights, see Manual tables",""))`;

/** The same from another sheet. */
function onTables(formula: string): string {
  return [...new Set([names, fuel, minutes])].reduce((text, range) => text.split(range).join(on(sheetNames.tables, range)), formula);
}

export const flownCells: TemplateCell[] = [
  ...line(
    toldHead - 1,
    flownFrom,
    ['of the aircraft in use', 'columnHead'],
    ...['planned', 'flown', 'spread', 'flights'].map((head): Field => [head, 'columnHead']),
  ),
  ...told.flatMap(({ label, planned, flown }, index) =>
    line(
      toldHead + index,
      flownFrom,
      [label, 'label'],
      [planned === undefined ? undefined : meanOf(planned), planned === undefined ? 'plain' : 'computed', { format: 'one' }],
      [
        meanOf(flown),
        'computed',
        { format: 'one', ...(index === 0 && { note: 'Means of the flights below, taxi left out: from take-off to landing.' }) },
      ],
      [spreadOf(flown), 'computed', { format: 'one', ...(index === 0 && { note: 'Standard deviation, from two flights on.' }) }],
      [`=${countOf(flown)}`, 'computed', { format: 'whole' }],
    ),
  ),
  ...line(tableHead - 2, flownFrom, ...heads.map((_, index): Field => [index === 0 ? '9  Planned and flown' : '', 'heading'])),
  cell(
    tableHead - 1,
    flownFrom,
    'A row a flight, take-off to landing; the panel writes it after the flight where the fuel used is given.',
    'subtitle',
  ),
  ...listHeads(tableHead, flownFrom, heads),
  ...entryList(list, flownFrom, looks, []),
];

export const flownKeys = ['aircraft', 'date', 'from', 'to', 'miles', 'plannedMinutes', 'plannedFuel', 'minutes', 'fuel'] as const;
export const flownList: KeyedList = {
  ...list,
  read: { first: list.first, last: list.last + 1 },
  columns: columnsFrom(flownFrom, ...flownKeys),
};

const numbers = (across: number, maximum: number, help: string): Validation => ({
  kind: 'number',
  range: area(list.first, flownFrom + across, list.last, flownFrom + across),
  minimum: 0,
  maximum,
  help,
});
export const flownValidations: readonly Validation[] = [
  numbers(4, 5000, 'Nautical miles.'),
  numbers(5, 2880, 'Minutes from take-off to landing.'),
  numbers(6, 10000, 'In the fuel unit of the aircraft list.'),
  numbers(7, 2880, 'Minutes from take-off to landing.'),
  numbers(8, 10000, 'In the fuel unit of the aircraft list.'),
];
