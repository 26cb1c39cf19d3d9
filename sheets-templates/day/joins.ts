// Whether each flight of the day can be read, and begins where, when and with what the one before it ends.
import { fuelUnit, moment } from '../trip/flightBefore';
import { flightColumns, flightList, flightsFrom, type FlightColumn } from './places';

export const letterOf = (column: FlightColumn): string => String.fromCharCode(64 + flightsFrom + flightColumns.indexOf(column));
const at = (column: FlightColumn, row: number): string => `${letterOf(column)}${row}`;

/** Formula text: whether anything stands in the row of a flight. */
export const isListed = (row: number): string => `COUNTA(${at('trip', row)}:${at('reason', row)})>0`;

const numbers = [
  ['takeoff', 'take-off'],
  ['landing', 'landing'],
  ['fuelAtStart', 'fuel at start'],
  ['takenOn', 'fuel taken on'],
  ['fuelLeft', 'fuel at landing'],
] as const;

/** Formula text: what of a flight cannot be read, by its words. */
const unread = (row: number): string =>
  `TEXTJOIN(", ",TRUE,${[
    ...(['from', 'to'] as const).map((column) => `IFERROR(IF(${at(column, row)}="","${column}",""),"${column}")`),
    ...numbers.map(([column, words]) => `IF(ISNUMBER(${at(column, row)}),"","${words}")`),
    `IFERROR(IF(OR(${['OK', 'CHECK', 'NO', 'UNKNOWN'].map((word) => `${at('verdict', row)}="${word}"`).join(',')}),"","verdict"),"verdict")`,
  ].join(',')})`;

/** In tenths of a unit: no tank is known better. */
const over = (row: number): string => `ROUND((${at('fuelAtStart', row)}-${at('fuelLeft', row - 1)}-${at('takenOn', row)})*10,0)`;
const fuelSaid = (row: number): string =>
  `ROUND(${at('fuelAtStart', row)},1)&" "&${fuelUnit}&" at start, but "&ROUND(${at('fuelLeft', row - 1)},1)&" left and "&ROUND(${at('takenOn', row)},1)&" taken on"`;

/** Formula text: what makes the flight impossible after the one before it. */
const impossible = (row: number): string =>
  `TEXTJOIN("; ",TRUE,${[
    `IF(${at('from', row)}=${at('to', row - 1)},"","leaves "&${at('from', row)}&", but the flight before ends at "&${at('to', row - 1)})`,
    `IF(ROUND((${at('takeoff', row)}-${at('landing', row - 1)})*1440,0)<0,"take-off "&${moment(at('takeoff', row))}&" is before the landing "&${moment(at('landing', row - 1))}&" of the flight before","")`,
    `IF(${over(row)}>0,${fuelSaid(row)},"")`,
  ].join(',')})`;

/** What is said where nothing is wrong. */
const fits = 'begins with what the one before leaves';
const first = 'the first flight';

/** The reason comes first; the word is read from how it begins. */
export function joinReason(row: number): string {
  const readable = `IF(${unread(row)}<>"","cannot be read: "&${unread(row)}`;
  const after =
    row === flightList.first
      ? `"${first}"`
      : `IF(NOT(${isListed(row - 1)}),"cannot be judged: the row above is blank",IF(${unread(row - 1)}<>"","cannot be judged: the flight above cannot be read",IF(${impossible(row)}<>"","does not follow: "&${impossible(row)},IF(${over(row)}<0,"look: "&${fuelSaid(row)}&", so it is weighed with too little","${fits}"))))`;
  return `=IFERROR(IF(NOT(${isListed(row)}),"",${readable},${after})),"cannot be read: an error stands in the row")`;
}
const begins = (place: string, words: string): string => `LEFT(${place},${words.length})="${words}"`;
export const joinWord = (row: number, reason: string): string =>
  `=IFERROR(IF(${reason}="",IF(${isListed(row)},"UNKNOWN",""),IF(${begins(reason, 'does not follow')},"NO",IF(${begins(reason, 'look: ')},"CHECK",IF(OR(${reason}="${fits}",${reason}="${first}"),"OK","UNKNOWN")))),"UNKNOWN")`;
