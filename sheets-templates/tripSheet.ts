// The Trip sheet: one trip, one verdict, every reason; prints on one page.
import { area, caution, cell } from './build';
import { sheetNames } from './places';
import type { SheetTemplate, Validation } from './template';
import { briefCells } from './tripBriefs';
import { leftHalf } from './tripEntries';
import { judgedCells, tripVerdictRanges } from './tripJudged';
import { blockRows, entryRows as rows } from './tripRows';

const numbers = (row: number, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range: `B${row}:C${row}`, minimum, maximum, help });
const single = (row: number, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range: `B${row}`, minimum, maximum, help });

const validations: readonly Validation[] = [
  { kind: 'date', range: `B${rows.firstDay}:B${rows.lastDay}`, help: 'A date, such as 2026-11-28.' },
  { kind: 'date', range: `C${blockRows.databases.first}:C${rows.medical}`, help: 'A date, such as 2026-11-26.' },
  numbers(rows.latitude, -90, 90, 'Latitude in degrees, south negative.'),
  numbers(rows.longitude, -180, 180, 'Longitude in degrees, west negative.'),
  numbers(rows.elevation, -2000, 20000, 'Elevation in feet.'),
  numbers(rows.altimeter, 25, 1090, 'Altimeter setting: 25 to 32.5 inches of mercury, or 850 to 1,090 hectopascals.'),
  numbers(rows.temperature, -60, 60, 'Temperature in degrees Celsius.'),
  numbers(rows.windFrom, 0, 360, 'Direction from which the wind blows, in the same reference as the runway (both magnetic, or both true).'),
  numbers(rows.wind, 0, 150, 'Wind speed in knots.'),
  numbers(rows.runway, 0, 360, 'Runway direction in degrees, in the same reference as the wind.'),
  numbers(rows.available, 0, 30000, 'Distance available, in the distance unit of the manual tables.'),
  numbers(rows.factor, 1, 5, 'The factored distance is the corrected distance times this.'),
  single(rows.gradient, 0, 3000, 'Climb gradient in feet a nautical mile.'),
  single(rows.fuelFlow, 0, 1000, 'Fuel flow an hour, in the fuel unit of the aircraft list.'),
  ...[blockRows.takeoffCorrections, blockRows.landingCorrections].map(({ first, last }): Validation => ({ kind: 'number', range: area(first, 2, last, 2), minimum: -1000, maximum: 1000, help: 'Percent of the distance for each so much. Name a row headwind or tailwind (or "headwind 50 %" and "tailwind 150 %", the careful credit) and leave its amount blank: it is filled from the wind.' })),
  { kind: 'list', range: area(blockRows.databases.first, 2, blockRows.databases.last, 2), choices: ['28-day', '56-day', '14-day'], help: 'How often the database is renewed.' },
];

const { judged } = blockRows;
const reasonMerges = Array.from({ length: judged.last - judged.first + 1 }, (_, index) => `H${judged.first + index}:I${judged.first + index}`);

/** Room for two lines of reason. */
const reasonHeights = Object.fromEntries(Array.from({ length: judged.last - judged.first + 1 }, (_, index) => [judged.first + index, 30]));

export const tripSheet: SheetTemplate = {
  key: 'trip',
  name: sheetNames.trip,
  version: 2,
  rows: 88,
  columns: 9,
  columnWidths: [166, 92, 92, 92, 34, 136, 92, 122, 290],
  rowHeights: { 1: 32, 3: 66, ...reasonHeights, [blockRows.databases.first - 1]: 34 },
  frozenRows: 3,
  cells: [
    cell(1, 1, 'Trip sheet', 'title'),
    cell(1, 6, 'Invented aircraft, fields and people, for demonstration.', 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    ...leftHalf,
    ...briefCells,
    ...judgedCells,
  ],
  merges: ['B3:D3', 'F3:I3', ...reasonMerges, ...[blockRows.reports.first, blockRows.reports.last].map((row) => `A${row}:I${row}`)],
  validations,
  verdictRanges: tripVerdictRanges,
  names: [
    { name: 'trip_verdict', range: 'B3' },
    { name: 'trip_reasons', range: area(judged.first, 6, judged.last, 8) },
  ],
  charts: [],
  print: { landscape: false },
};
