// The Start sheet: what this is, the caution, the legend, the day on which everything is judged, the way to the other sheets.
import { asOfName } from './asOf';
import { cell, caution, line } from './build';
import { sheetNames } from './places';
import type { SheetKey, SheetTemplate, TemplateCell } from './template';

/** The other sheets in their order, each with what it is for. */
const linked: readonly (readonly [SheetKey, string])[] = [
  ['trip', 'One trip judged: loading, runways, climb, fuel, descent, hold, data, papers. Prints on one page.'],
  ['card', 'Crossing restrictions, a descent by schedule and winds, and an unexpected hold; the panel draws both.'],
  ['balance', 'Stations, fuel, the envelope drawn, and the three points of the flight.'],
  ['ledger', 'Which card in which aircraft must be loaded by when; licences, what they cost, and who owes what.'],
  ['currency', "A pilot's flights and papers and an aircraft's inspections, and the day on which each lapses."],
  ['tables', "The aircraft's own take-off, landing and climb tables, typed in by its owner."],
];
const firstLink = 11;
const links: TemplateCell[] = linked.flatMap(([key, what], index) => line(firstLink + index, 1, [sheetNames[key], 'link', { goesTo: key }], [what, 'text']));

const legendRow = firstLink + linked.length + 2;

const steps: readonly string[] = [
  'Type today above (or =TODAY()), and choose the aircraft.',
  'Type your own aircraft into Manual tables from its approved manual, and its stations into Weight and balance.',
  'Fill the loads and the fuel on Weight and balance.',
  'Fill the Trip sheet, read its verdict and every reason, and decide.',
];

const legend: TemplateCell[] = [
  ...line(legendRow, 1, ['you type here', 'input'], ['Entries have this tint. Everything else is computed or text.', 'text']),
  ...line(legendRow + 1, 1, ['computed', 'computed'], ['Plain cells are computed; hover a cell with a mark for its source.', 'text']),
  ...line(legendRow + 2, 1, ['OK', 'verdict'], ['It fits, with the numbers beside it.', 'text']),
  ...line(legendRow + 3, 1, ['CHECK', 'verdict'], ['It fits, but look at the reason.', 'text']),
  ...line(legendRow + 4, 1, ['NO', 'verdict'], ['It does not fit.', 'text']),
  ...line(legendRow + 5, 1, ['UNKNOWN', 'verdict'], ['Something is missing, unreadable or beyond the tables. Never take it for OK.', 'text']),
];

export const startSheet: SheetTemplate = {
  key: 'start',
  name: sheetNames.start,
  version: 1,
  rows: legendRow + 15,
  columns: 2,
  columnWidths: [190, 700],
  rowHeights: { 1: 32, 3: 40 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Rampwright', 'title'),
    cell(2, 1, 'The arithmetic of getting a light aircraft ready to fly, in your own spreadsheet.', 'subtitle'),
    cell(3, 1, caution, 'caution'),
    cell(5, 1, 'Today, and the aircraft', 'heading'),
    cell(5, 2, undefined, 'heading'),
    ...line(6, 1, [{ date: '2026-11-25' }, 'input', { format: 'date', note: 'The one clock of the workbook, named as_of. Type a date, or =TODAY(). Never NOW().' }], ['as_of: validity and currency are judged on this day.', 'text']),
    ...line(7, 1, ['Quillon Four', 'inputText', { note: 'Named aircraft_in_use. Must be one of the aircraft in Manual tables.' }], ['aircraft_in_use: the aircraft that Weight and balance and the Trip sheet compute.', 'text']),
    cell(9, 1, 'Sheets', 'heading'),
    cell(9, 2, undefined, 'heading'),
    ...links,
    cell(legendRow - 1, 1, 'How to read the sheets', 'heading'),
    cell(legendRow - 1, 2, undefined, 'heading'),
    ...legend,
    cell(legendRow + 7, 1, 'First time', 'heading'),
    cell(legendRow + 7, 2, undefined, 'heading'),
    ...steps.flatMap((step, index) => line(legendRow + 8 + index, 1, [`Step ${index + 1}`, 'label'], [step, 'text'])),
    cell(legendRow + 13, 1, 'The aircraft, fields, people, dates and tables in this workbook are invented for demonstration.', 'subtitle'),
  ],
  // Other lines run over the blank cell beside them.
  merges: ['A3:B3'],
  validations: [
    { kind: 'date', range: 'A6', help: 'A date, such as 2026-11-25, or =TODAY().' },
    { kind: 'listFrom', range: 'A7', source: `'${sheetNames.tables}'!$A$6:$A$9`, help: 'One of the aircraft listed in Manual tables.' },
  ],
  verdictRanges: [`A${legendRow + 2}:A${legendRow + 5}`],
  names: [
    { name: asOfName, range: 'A6' },
    { name: 'aircraft_in_use', range: 'A7' },
  ],
  charts: [],
  print: { landscape: false },
};
