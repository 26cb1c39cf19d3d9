// Trip working: every step between the entries of the Trip sheet and its verdict. Nothing is typed here.
import { area, caution, cell, on, readTripInWords, tripEntriesText, typedOver } from '../build';
import { sheetNames } from '../places';
import type { DeclaredSheet } from '../template';
import { placeColumns } from '../trip/rows';
import { listCells } from './lists';
import { placeCells } from './places';
import { workingLastRow, workingRows as rows } from './rows';
import { runwayCells } from './runways';
import { weatherCells } from './weather';

const worked = [...placeCells, ...weatherCells, ...listCells, ...runwayCells];
const ofColumn = (column: number, { first, last }: { readonly first: number; readonly last: number }): string => area(first, column, last, column);
/** Room for six lines of reason in a narrow column. */
const reasonHeights = Object.fromEntries(placeColumns.map((_, index) => [rows.weather.first + index, 92]));

export const workingSheet: DeclaredSheet = {
  key: 'working',
  name: sheetNames.working,
  version: 4,
  rows: workingLastRow + 1,
  columns: 23,
  columnWidths: [220, 112, 112, 112, 92, 92, ...Array.from({ length: 17 }, () => 92)],
  rowHeights: { 1: 32, [rows.weatherHeads]: 34, [rows.weatherInHeads]: 21, ...reasonHeights },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Trip working', 'title'),
    cell(1, 3, readTripInWords, 'subtitle'),
    cell(2, 1, 'Every step between the entries of the Trip sheet and its verdict. Nothing is typed here.', 'subtitle'),
    cell(3, 1, caution, 'subtitle'),
    cell(4, 1, `=${typedOver(worked)}`, 'reason', { note: 'Results that were typed over; blank where none was.' }),
    cell(4, 23, `=${tripEntriesText((range) => on(sheetNames.trip, range))}`, 'unit', {
      note: 'What is typed on the Trip sheet that this sheet reads.',
    }),
    ...worked,
  ],
  merges: [],
  validations: [],
  verdictRanges: [
    ofColumn(1, rows.weather),
    ofColumn(5, rows.takeoffWinds),
    ofColumn(5, rows.landingWinds),
    ofColumn(5, rows.takeoffCorrections),
    ofColumn(5, rows.landingCorrections),
    ofColumn(11, rows.landingCorrections),
    ofColumn(5, rows.landingBrief),
    ...[
      rows.takeoffBrief,
      rows.takeoffLimits,
      rows.climbBrief,
      rows.landingBrief,
      rows.landingLimits,
      rows.fuelBrief,
      rows.pilot,
      rows.aircraft,
      rows.data,
    ].map((block) => ofColumn(2, block)),
  ],
  names: [],
  // Nothing is typed here.
  keys: { entries: {}, lists: {} },
  charts: [],
  print: { landscape: true },
};
