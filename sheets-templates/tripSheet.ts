// The Trip sheet: one trip, one verdict, every reason; prints on one page.
import { area, caution, cell } from './build';
import { sheetNames } from './places';
import type { SheetTemplate, Validation } from './template';
import { leftHalf } from './tripEntries';
import { judgedRows, rightHalf, tripVerdictRanges } from './tripJudged';

const numbers = (range: string, minimum: number, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum, maximum, help });

const validations: readonly Validation[] = [
  { kind: 'date', range: 'B8:B9', help: 'A date, such as 2026-11-28.' },
  { kind: 'date', range: 'C71:C76', help: 'A date, such as 2026-11-26.' },
  numbers('B12:C12', -90, 90, 'Latitude in degrees, south negative.'),
  numbers('B13:C13', -180, 180, 'Longitude in degrees, west negative.'),
  numbers('B14:C14', -2000, 20000, 'Elevation in feet.'),
  numbers('B15:C15', 25, 1090, 'Altimeter setting: 25 to 32.5 inches of mercury, or 850 to 1,090 hectopascals.'),
  numbers('B16:C16', -60, 60, 'Temperature in degrees Celsius.'),
  numbers('B17:C17', 0, 360, 'Direction from which the wind blows, in the same reference as the runway (both magnetic, or both true).'),
  numbers('B18:C18', 0, 150, 'Wind speed in knots.'),
  numbers('B19:C19', 0, 360, 'Runway direction in degrees, in the same reference as the wind.'),
  numbers('B20:C20', 0, 30000, 'Distance available, in the distance unit of the manual tables.'),
  numbers('B21:C21', 1, 5, 'The factored distance is the corrected distance times this.'),
  { kind: 'list', range: 'B62', choices: ['right', 'left'], help: 'Direction of the turns in the hold.' },
  { kind: 'list', range: 'B71:B74', choices: ['28-day', '56-day', '14-day'], help: 'How often the database is renewed.' },
];

export const tripSheet: SheetTemplate = {
  key: 'trip',
  name: sheetNames.trip,
  version: 1,
  rows: 78,
  columns: 8,
  columnWidths: [178, 88, 88, 92, 12, 150, 92, 300],
  rowHeights: { 1: 32, 3: 52 },
  frozenRows: 3,
  cells: [
    cell(1, 1, 'Trip sheet', 'title'),
    cell(1, 6, 'Invented aircraft, fields and people, for demonstration.', 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    ...leftHalf,
    ...rightHalf,
  ],
  merges: ['B3:D3', 'F3:H3'],
  validations,
  verdictRanges: tripVerdictRanges,
  names: [
    { name: 'trip_verdict', range: 'B3' },
    { name: 'trip_reasons', range: area(judgedRows.first, 6, judgedRows.last, 8) },
  ],
  charts: [],
  print: { landscape: false },
};
