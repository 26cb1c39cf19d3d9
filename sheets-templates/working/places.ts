// The three places of a trip as the Fields sheet knows them: found by name, lengths turned into the unit of the aircraft's tables.
import { area, cell, line, on, type Field } from '../build';
import { fieldColumns, runwayColumns } from '../fields/sheet';
import type { FormatName, StyleName } from '../look';
import { ofAircraft } from '../manual/sheet';
import { sheetNames } from '../places';
import { formulaCall, type TemplateCell } from '../template';
import { placeColumns, placeNames, tripRows as trip, type PlaceColumn } from '../trip/rows';
import { workingRows as rows } from './rows';

export const onTrip = (column: PlaceColumn | 'A', row: number): string => on(sheetNames.trip, `${column}${row}`);

/** One row with a value for each place. */
export function placeLine(
  row: number,
  label: string,
  formula: (column: PlaceColumn) => string | undefined,
  unit: string,
  format: FormatName,
  note = '',
): TemplateCell[] {
  const style: StyleName = format === 'text' ? 'computedText' : 'computed';
  return [
    cell(row, 1, label, 'label'),
    ...placeColumns.flatMap((column, index) => {
      const written = formula(column);
      return written === undefined ? [] : [cell(row, 2 + index, written, style, { format, ...(index === 0 && note !== '' && { note }) })];
    }),
    cell(row, 5, unit, 'unit'),
  ];
}

export const placeHeads = (title: string): Field[] => [
  [title, 'heading'],
  ...placeColumns.map((column): Field => [placeNames[column], 'columnHead']),
  ['unit', 'columnHead'],
];

const at = (column: PlaceColumn, row: number): string => `${column}${row}`;
/** A blank cell must not pass for 0. */
const numberAt = (range: string, index: string): string => `=IFERROR(IF(ISNUMBER(INDEX(${range},${index})),INDEX(${range},${index}),""),"")`;
const textAt = (range: string, index: string): string => `=IFERROR(INDEX(${range},${index})&"","")`;

/** The place in the list of a runway that is listed once; blank where it is not, or twice. */
function runwayRow(column: PlaceColumn): string {
  const same = `(${runwayColumns.field}=${onTrip(column, trip.field)})*(${runwayColumns.name}&""=${onTrip(column, trip.runwayName)}&"")`;
  const first = `MIN(ROW(${runwayColumns.field}))`;
  return `=IF(OR(${onTrip(column, trip.field)}="",${onTrip(column, trip.runwayName)}=""),"",IF(SUMPRODUCT(${same})=1,SUMPRODUCT(${same}*ROW(${runwayColumns.field}))-${first}+1,""))`;
}

const tableUnit = ofAircraft('distance in');
/** The declared length in the unit of the aircraft's tables. */
function available(column: PlaceColumn): string {
  const index = at(column, rows.runwayRow);
  const length = `INDEX(${column === 'B' ? runwayColumns.takeoffAvailable : runwayColumns.landingAvailable},${index})`;
  const unit = `INDEX(${runwayColumns.unit},${index})`;
  const converted = `IF(${unit}=${tableUnit},${length},IF(AND(${unit}="m",${tableUnit}="ft"),${length}/$B$${rows.metresPerFoot},IF(AND(${unit}="ft",${tableUnit}="m"),${length}*$B$${rows.metresPerFoot},"")))`;
  return `=IFERROR(IF(ISNUMBER(${length}),${converted},""),"")`;
}

/** A time of day as 1430, 14:30 or "1430Z", in minutes; blank for anything else. */
function minutesOfDay(entry: string): string {
  const number = `IF(ISNUMBER(${entry}),${entry},VALUE(SUBSTITUTE(SUBSTITUTE(UPPER(${entry}),"Z",""),":","")))`;
  return `IFERROR(IF(${entry}="","",IF(${number}<0,"",IF(${number}<1,ROUND(${number}*1440,0),IF(AND(MOD(${number},100)<60,${number}<2400),INT(${number}/100)*60+MOD(${number},100),"")))),"")`;
}

const minutesOn = (column: PlaceColumn): string => onTrip(column, trip.timeEnRoute);
/** Day and time in UTC at which each place is used; an alternate after the destination. */
function moment(column: PlaceColumn): string {
  if (column === 'B')
    return `=IFERROR(IF(ISNUMBER(${onTrip('B', trip.firstDay)}),${onTrip('B', trip.firstDay)}+${minutesOfDay(onTrip('B', trip.takeoffTime))}/1440,""),"")`;
  const [before, minutes] = column === 'C' ? [at('B', rows.moment), minutesOn('B')] : [at('C', rows.moment), minutesOn('D')];
  return `=IFERROR(IF(AND(ISNUMBER(${before}),ISNUMBER(${minutes}),${onTrip(column, trip.field)}<>""),${before}+${minutes}/1440,""),"")`;
}

const acrossPlaces = (row: number): string => area(row, 2, row, 4);
const variationCall = formulaCall('MAGNETIC_VARIATION', acrossPlaces(rows.latitude), acrossPlaces(rows.longitude), onTrip('B', trip.firstDay));

export const placeCells: TemplateCell[] = [
  ...line(rows.constantsHeading, 1, ['Constants', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading']),
  ...line(
    rows.metresPerFoot,
    1,
    ['metres in a foot', 'label'],
    ['=3048/10000', 'computed', { format: 'general', note: 'Exact: NIST SP 811, appendix B.8.' }],
  ),
  ...line(
    rows.hectopascalsPerInch,
    1,
    ['hPa in an inch of mercury', 'label'],
    ['=3386389/100000', 'computed', { format: 'general', note: 'NIST SP 811, appendix B.8, to seven figures.' }],
  ),
  ...line(rows.placesHeading, 1, ...placeHeads('1  The places, from Fields')),
  ...placeLine(
    rows.fieldRow,
    'row in the list of fields',
    (column) => `=IFERROR(IF(${onTrip(column, trip.field)}="","",MATCH(${onTrip(column, trip.field)},${fieldColumns.names},0)),"")`,
    '',
    'whole',
  ),
  ...placeLine(rows.station, 'station', (column) => textAt(fieldColumns.station, at(column, rows.fieldRow)), '', 'text'),
  ...placeLine(rows.latitude, 'latitude', (column) => numberAt(fieldColumns.latitude, at(column, rows.fieldRow)), 'degrees', 'general'),
  ...placeLine(rows.longitude, 'longitude', (column) => numberAt(fieldColumns.longitude, at(column, rows.fieldRow)), 'degrees', 'general'),
  ...placeLine(rows.elevation, 'elevation', (column) => numberAt(fieldColumns.elevation, at(column, rows.fieldRow)), 'ft', 'whole'),
  ...line(
    rows.variation,
    1,
    ['variation, east positive', 'label'],
    [`=${variationCall}`, 'computed', { format: 'one', note: 'MAGNETIC_VARIATION: World Magnetic Model 2025, on the first day.' }],
    [undefined, 'computed', { format: 'one' }],
    [undefined, 'computed', { format: 'one' }],
    ['degrees', 'unit'],
  ),
  ...placeLine(rows.runwayRow, 'row in the list of runways', runwayRow, '', 'whole', 'Blank where the runway is not listed, or listed twice.'),
  ...placeLine(rows.runway, 'runway direction', (column) => numberAt(runwayColumns.direction, at(column, rows.runwayRow)), 'deg magnetic', 'degrees'),
  ...placeLine(
    rows.available,
    'available: take-off, landing, landing',
    available,
    `=IFERROR(${tableUnit}&"","")`,
    'whole',
    "In the unit of the aircraft's tables.",
  ),
  ...placeLine(rows.surface, 'surface', (column) => textAt(runwayColumns.surface, at(column, rows.runwayRow)), '', 'text'),
  ...placeLine(rows.slope, 'slope, up positive', (column) => numberAt(runwayColumns.slope, at(column, rows.runwayRow)), 'percent', 'one'),
  ...placeLine(
    rows.moment,
    'used at',
    moment,
    'UTC',
    'dateTime',
    'Take-off from the Trip sheet; then the time en route, then that to the alternate.',
  ),
];
