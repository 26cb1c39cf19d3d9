// The weather of the three places: the reports judged in one call, and the numbers that runways and climb are worked out with.
import type { RunwayItem } from '../../functions/facts';
import { area, cell, line, on } from '../build';
import { listHeads, spillBlock, type Look } from '../lists';
import { pilotLimits } from '../start/settings';
import { sheetNames } from '../places';
import { formulaCall, type TemplateCell } from '../template';
import { placeColumns, placeNames, tripRows as trip, type PlaceColumn } from '../trip/rows';
import { limitsSaid } from './limitsSaid';
import { onTrip, placeHeads, placeLine } from './places';
import { workingRows as rows } from './rows';
import { differs } from './typedAgainstReport';
import { usedOf, variable, windFromUsed, windOf } from './usedWeather';
import { answers, type Answer } from './weatherAnswers';

const roles: Readonly<Record<PlaceColumn, string>> = { B: 'departure', C: 'arrival', D: 'alternate' };
const inputs = (column: PlaceColumn, index: number): TemplateCell[] => {
  const row = rows.weatherIn.first + index;
  const place = (of: number): string => `${column}${of}`;
  const known = `${place(rows.fieldRow)}<>""`;
  const minutes = `MOD(ROUND((${place(rows.moment)}-INT(${place(rows.moment)}))*1440,0),1440)`;
  return line(
    row,
    1,
    [placeNames[column], 'label'],
    [`=IF(${onTrip(column, trip.field)}="","",${place(rows.station)})`, 'computedText'],
    [`=IF(ISNUMBER(${place(rows.moment)}),INT(ROUND(${place(rows.moment)}*1440,0)/1440),"")`, 'computed', { format: 'date' }],
    [`=IF(ISNUMBER(${place(rows.moment)}),INT(${minutes}/60)*100+MOD(${minutes},60),"")`, 'computed', { format: 'clock' }],
    [`=IF(${onTrip(column, trip.field)}="","","${roles[column]}")`, 'computedText'],
    [
      `=IF(AND(${known},ISNUMBER(${place(rows.runway)}),ISNUMBER(${place(rows.variation)})),MOD(${place(rows.runway)}+${place(rows.variation)}+360,360),"")`,
      'computed',
      { format: 'degrees' },
    ],
  );
};

const input = (column: number): string => area(rows.weatherIn.first, column, rows.weatherIn.last, column);
const reports = ({ first, last }: { readonly first: number; readonly last: number }): string => on(sheetNames.trip, area(first, 1, last, 1));
const weatherCall = formulaCall(
  'WEATHER_BRIEF',
  input(2),
  reports(trip.metars),
  reports(trip.tafs),
  input(3),
  input(4),
  input(5),
  pilotLimits,
  'as_of',
  input(6),
);

function lookOf(answer: Answer): Look {
  if (answer === 'verdict') return ['verdict', undefined, 'WEATHER_BRIEF: what is missing or cannot be read is UNKNOWN, never fair weather.'];
  if (answer === 'reason') return ['reason'];
  if (answer.includes('from') || answer.includes('to')) return ['computed', 'degrees'];
  // What has a unit in its head is a number.
  return [answer.includes(', ') ? 'computed' : 'computedText'];
}
const looks: readonly Look[] = answers.map(lookOf);

/** Where the brief of each place stands: that of the alternate at the right of the destination's. */
const brief = {
  B: { block: rows.takeoffBrief, items: 'A', values: 'B' },
  C: { block: rows.landingBrief, items: 'A', values: 'B' },
  D: { block: rows.landingBrief, items: 'D', values: 'E' },
} as const;
const ofBrief = (column: PlaceColumn, item: RunwayItem): string => {
  const { block, items, values } = brief[column];
  const of = (letter: string): string => `${letter}${block.first}:${letter}${block.last}`;
  return `INDEX(${of(values)},MATCH("${item}",${of(items)},0))`;
};
/** Rounded to the careful side, within an epsilon; blank where it is not known. */
const wholeKnots = (knots: string): string => `=IFERROR(ROUNDUP(ROUND(${knots},6),0),"")`;
const onRunway =
  (knots: (column: PlaceColumn) => string) =>
  (column: PlaceColumn): string =>
    wholeKnots(knots(column));

export const weatherCells: TemplateCell[] = [
  ...line(
    rows.weatherHeading,
    1,
    ['2  Weather, decoded and judged', 'heading'],
    ['', 'heading'],
    ['', 'heading'],
    ['', 'heading'],
    ['', 'heading'],
    ['', 'heading'],
  ),
  cell(rows.weatherHelp, 1, "Reports are pasted on the Trip sheet; the limits are the pilot's own, on Start.", 'subtitle'),
  ...line(rows.limitsSaid, 1, ['limits that cannot be used', 'label'], [limitsSaid(), 'computedText']),
  ...listHeads(rows.weatherInHeads, 1, ['place', 'station', 'date, UTC', 'time, UTC', 'used for', 'runway, true']),
  ...placeColumns.flatMap(inputs),
  ...listHeads(rows.weatherHeads, 1, answers),
  ...spillBlock(rows.weather, 1, looks, weatherCall),
  ...line(rows.usedHeading, 1, ...placeHeads('3  Typed, else reported')),
  ...placeLine(rows.altimeter, 'altimeter setting', usedOf(trip.altimeter, 'altimeter, hPa'), 'hPa or inHg', 'general'),
  ...placeLine(rows.temperature, 'temperature', usedOf(trip.temperature, 'temperature, C'), 'degrees C', 'general'),
  ...placeLine(
    rows.windFrom,
    'wind from',
    windFromUsed,
    'deg magnetic',
    'degrees',
    'Magnetic is true less easterly variation. VRB is every direction.',
  ),
  ...placeLine(rows.wind, 'wind', windOf('wind'), 'kt', 'whole'),
  ...placeLine(rows.gust, 'gust', windOf('gust'), 'kt', 'whole'),
  ...placeLine(rows.variableFrom, 'variable from', variable('from'), 'deg magnetic', 'degrees'),
  ...placeLine(rows.variableTo, 'variable to', variable('to'), 'deg magnetic', 'degrees'),
  ...placeLine(
    rows.differs,
    'typed against the report',
    differs,
    '',
    'text',
    'More than 3 C, 2 hPa, 5 kt or 30 degrees apart (common practice, no source).',
  ),
  ...placeLine(
    rows.crosswind,
    'crosswind on the runway',
    onRunway((column) => `ABS(${ofBrief(column, 'crosswind')})`),
    'kt',
    'whole',
    'The greatest: of the gust, and of the range of directions.',
  ),
  ...placeLine(
    rows.tailwind,
    'tailwind on the runway',
    onRunway((column) => `MAX(0,-${ofBrief(column, 'headwind')})`),
    'kt',
    'whole',
    'The greatest.',
  ),
  ...placeLine(
    rows.gustSpread,
    'gust over the wind',
    onRunway(
      (column) =>
        `IF(ISNUMBER(${column}${rows.gust}),${column}${rows.gust}-${column}${rows.wind},${column === 'D' ? `IF(${onTrip('D', trip.field)}="","",0)` : '0'})`,
    ),
    'kt',
    'whole',
  ),
];
