// The Load list: what to load now and at the next visit of each aircraft, as a page to take to the hangar.
import { area, caution, cell, judgedOnTop, line, typedOver } from '../build';
import { whileDemo } from '../demo/inUse';
import { ledgerColumns } from '../ledger/places';
import { column, columnWithHead, headWords, shownNumber, shownText, spillList, spillRoom, type List, type Look } from '../lists';
import { sheetNames } from '../places';
import { formulaCall, type DeclaredSheet, type TemplateCell } from '../template';

/** Each card may be due now and at the next visit. */
const roomFor = 160;
const list: List = { head: 9, first: 10, last: 9 + roomFor };

const words = ['when', 'aircraft', 'who', 'box or card', 'database', 'do', 'cycle', 'effective', 'in force from, sheet time', 'on it now', 'why'];

const { aircraft, box, database, series, loads, who, licences, changesAt } = ledgerColumns;
const call = formulaCall('LEDGER_DUE', aircraft, box, database, series, loads, 'as_of', who, licences, changesAt, headWords(words));

const looks: readonly Look[] = [
  ['computedText', undefined, 'LEDGER_DUE: overdue; now, for whatever else is to be done today; next, the next visit of that aircraft.'],
  shownText,
  shownText,
  shownText,
  shownText,
  shownText,
  ['computedText', undefined, 'AIRAC identifier; blank where the series has none.'],
  shownNumber('date'),
  [
    'computed',
    'dateTime',
    "In this spreadsheet's own time zone. Load before the first flight after it, not before it, unless the box holds two cycles.",
  ],
  ['computed', 'date', 'Effective date of the data that is on the card now.'],
  shownText,
];

/** Boxes for the pen, beside every row of the list. */
const tick = (across: number, head: string, box: string, note: string): TemplateCell =>
  cell(
    list.head,
    across,
    `=ARRAYFORMULA(IF(ROW(${columnWithHead(list, 'K')})=ROW($A$${list.head}),"${head}",IF(${columnWithHead(list, 'E')}="","","${box}")))`,
    'columnHead',
    { note },
  );

const ticks: TemplateCell[] = [
  tick(1, 'loaded', '[   ]', 'Tick when the unit says that it is done.'),
  tick(3, 'verified how', '__________', 'Where on the unit the new dates were read, such as its start-up page.'),
  tick(2, 'old card kept', '[   ]', 'Until the new data has been seen in force.'),
];

const count = (what: string): string => `COUNTIF(${column(list, 'D')},"${what}")`;
const visits = `IFERROR(TEXT(MIN(FILTER(${column(list, 'L')},${column(list, 'D')}="next",ISNUMBER(${column(list, 'L')}))),"yyyy-mm-dd hh:mm"),"none")`;
const summary = `=IF(AND($E$${list.first}="",$I$${list.first}<>"nothing to load"),"UNKNOWN: the list is empty, or cannot be read: see the Data ledger.",${count('overdue')}&" overdue, "&${count('now')}&" more to do now, "&${count('next')}&" at the next visits; the first of them from "&${visits}&"."&IF(${count('look')}=0,""," CHECK: "&${count('look')}&" of the loads name no card."))`;

const signature = '______________________________';

const worked: readonly TemplateCell[] = [
  ...spillList(list, 4, looks, words, call),
  ...ticks,
  ...spillRoom(list, 1, [shownText, shownText, shownText]),
];

/** In this order for each card. Common practice, no source. */
const order =
  'For each card, in this order: the card and its unit; the database; the cycle and the day from which it is effective; keep the old card until the new data has been seen in force; look at the unit and write down how you saw it. Then one line a load in the history of the Data ledger, a load that failed too.';

export const loadListSheet: DeclaredSheet = {
  key: 'due',
  name: sheetNames.due,
  version: 2,
  rows: list.last + 1,
  columns: 14,
  columnWidths: [64, 56, 88, 60, 92, 50, 92, 78, 108, 40, 74, 110, 74, 300],
  rowHeights: { 1: 32, 4: 34, [list.head]: 34 },
  frozenRows: list.head,
  cells: [
    cell(1, 1, 'Load list', 'title'),
    cell(1, 4, whileDemo('Invented club, aircraft and cards, for demonstration.'), 'subtitle'),
    cell(1, 9, judgedOnTop, 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    cell(3, 1, summary, 'computedText'),
    cell(4, 1, order, 'text'),
    ...line(6, 1, ['loaded by', 'label'], [signature, 'computedText']),
    ...line(6, 5, ['date', 'label'], ['____________', 'computedText']),
    ...line(6, 8, ['signature', 'label'], [signature, 'computedText']),
    cell(7, 1, `=${typedOver(worked)}`, 'computedText'),
    ...line(8, 1, ['To load and to look at', 'heading'], ...Array.from({ length: 13 }, () => ['', 'heading'] as const)),
    ...worked,
  ],
  merges: [area(4, 1, 4, 14)],
  validations: [],
  verdictRanges: [],
  names: [],
  keys: { entries: {}, lists: {} },
  charts: [],
  print: { landscape: true },
};
