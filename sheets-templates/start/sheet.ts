// The Start sheet: what this is, the caution, the legend, the day on which everything is judged, the way to the other sheets.
import { asOfName } from '../asOf';
import { cell, caution, isDay, line } from '../build';
import { demoDay } from '../demo/day';
import { aircraftNames } from '../manual/sheet';
import { sheetNames, startCells } from '../places';
import { settingCells, settingKeys, settingValidations } from './settings';
import type { DeclaredSheet, SheetKey, TemplateCell } from '../template';
import { whileDemo } from '../demo/inUse';

/** The other sheets in their order, each with what it is for. */
const linked: readonly (readonly [SheetKey, string])[] = [
  ['trip', 'One trip judged: loading, runways, climb, fuel, descent, hold, data, papers. Prints on one page.'],
  ['working', 'Every step from the entries of the trip to its verdict: weather, runways, fuel, lists.'],
  ['route', 'Legs with winds, times and fuel, the climb and the descent set in; the sun at the places of the trip.'],
  ['card', 'Crossing restrictions, a descent by schedule and winds, and an unexpected hold; the panel draws both.'],
  ['balance', 'Stations, fuel, the envelope drawn, and the three points of the flight.'],
  ['day', 'Up to four trips of a day after one another: the verdict of each, and one for all.'],
  ['ledger', 'Which card in which aircraft must be loaded by when; what each load was; licences and what they cost.'],
  ['due', 'What to load now and at the next visit of each aircraft, with boxes to tick. Prints on one page.'],
  ['dues', 'Members, costs, payments and rates of exchange of a period, and what each member owes, to the cent.'],
  ['statement', 'The statement of one member, with nobody else on the page.'],
  ['currency', "A pilot's flights and papers and an aircraft's inspections, and the day on which each lapses."],
  ['fields', 'Fields and their runways, typed once; the trip chooses them by name.'],
  ['tables', "The aircraft's own take-off, landing and climb tables, typed in by its owner."],
];
const firstLink = 11;
const links: TemplateCell[] = linked.flatMap(([key, what], index) =>
  line(firstLink + index, 1, [sheetNames[key], 'link', { goesTo: key }], [what, 'text']),
);

const legendRow = firstLink + linked.length + 2;

const inWords = (day: string): string => `TEXT(${day},"d mmmm yyyy")`;

/** TODAY() stands here and nowhere else, in no function of ours: the one place where the workbook looks at the clock. */
const dayJudged: TemplateCell[] = line(
  8,
  1,
  [
    `=IF(${isDay('as_of')},IF(INT(as_of)=TODAY(),"OK","CHECK"),"UNKNOWN")`,
    'verdict',
    { note: 'CHECK where as_of is not today by the clock of this spreadsheet.' },
  ],
  [
    `=IF(${isDay('as_of')},"judged on "&${inWords('as_of')}&IF(INT(as_of)=TODAY(),"",", not on today, "&${inWords('TODAY()')}&": as_of on Start takes today, or =TODAY()"),"as_of on Start is no day such as 2026-11-28")`,
    'text',
  ],
);

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

export const startSheet: DeclaredSheet = {
  key: 'start',
  name: sheetNames.start,
  version: 6,
  rows: legendRow + 15,
  columns: 6,
  columnWidths: [190, 640, 20, 190, 84, 74],
  rowHeights: { 1: 32, 3: 40 },
  frozenRows: 0,
  cells: [
    cell(1, 1, 'Rampwright', 'title'),
    cell(2, 1, 'The arithmetic of getting a light aircraft ready to fly, in your own spreadsheet.', 'subtitle'),
    cell(3, 1, caution, 'caution'),
    cell(5, 1, 'Today, and the aircraft', 'heading'),
    cell(5, 2, undefined, 'heading'),
    ...line(
      6,
      1,
      [{ date: demoDay }, 'input', { format: 'date', note: 'The one clock of the workbook, named as_of. Type a date, or =TODAY(). Never NOW().' }],
      ['as_of: validity and currency are judged on this day.', 'text'],
    ),
    ...line(
      7,
      1,
      ['Quillon Four', 'inputText', { note: 'Named aircraft_in_use. Must be one of the aircraft in Manual tables.' }],
      ['aircraft_in_use: the aircraft that Weight and balance and the Trip sheet compute.', 'text'],
    ),
    ...dayJudged,
    ...settingCells,
    cell(9, 1, 'Sheets', 'heading'),
    cell(9, 2, undefined, 'heading'),
    ...links,
    cell(legendRow - 1, 1, 'How to read the sheets', 'heading'),
    cell(legendRow - 1, 2, undefined, 'heading'),
    ...legend,
    cell(legendRow + 7, 1, 'First time', 'heading'),
    cell(legendRow + 7, 2, undefined, 'heading'),
    ...steps.flatMap((step, index) => line(legendRow + 8 + index, 1, [`Step ${index + 1}`, 'label'], [step, 'text'])),
    cell(legendRow + 13, 1, whileDemo('The aircraft, fields, people, dates and tables in this workbook are invented for demonstration.'), 'subtitle'),
  ],
  // Other lines run over the blank cell beside them.
  merges: ['A3:B3'],
  validations: [
    { kind: 'date', range: 'A6', help: 'A date, such as 2026-11-25, or =TODAY().' },
    { kind: 'listFrom', range: 'A7', source: aircraftNames, help: 'One of the aircraft listed in Manual tables.' },
    ...settingValidations,
  ],
  verdictRanges: [startCells.dayVerdict, `A${legendRow + 2}:A${legendRow + 5}`],
  names: [
    { name: asOfName, range: 'A6' },
    { name: 'aircraft_in_use', range: 'A7' },
  ],
  keys: { entries: { asOf: 'A6', aircraftInUse: 'A7', sample: `A${legendRow}`, ...settingKeys }, lists: {} },
  charts: [],
  print: { landscape: false },
};
