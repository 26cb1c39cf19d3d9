// The history of loads in the Data ledger: one line for each load, and what is wrong with a line beside it.
import { area, cell } from '../build';
import { demoLoads } from '../demo/ledger';
import {
  besideList,
  column,
  columnWithHead,
  entryList,
  listHeading,
  listHeads,
  moveIntoList,
  shownText,
  spillRoom,
  typedDate,
  typedText,
  type List,
  type Look,
} from '../lists';
import type { TemplateCell, Validation } from '../template';
import { tintedLoads, type LedgerPlaces } from './places';

/** Formula text: names as our functions compare them. */
const plain = (range: string): string => `SUBSTITUTE(SUBSTITUTE(LOWER(TRIM(${range})),"-"," "),"_"," ")`;
const names = (list: List, columnOf: (list: List, letter: string) => string): string =>
  ['A', 'B', 'C'].map((letter) => plain(columnOf(list, letter))).join('&"|"&');

/** Formula text, for each row: whether something but the names of a card is written down. */
const isLoad = (loads: List, columnOf: (list: List, letter: string) => string): string =>
  `(${['D', 'E', 'F', 'G', 'H'].map((letter) => columnOf(loads, letter)).join('&')}<>"")`;

const hasFailed = (range: string): string => `(LOWER(${range}&"")<>"")*(LOWER(${range}&"")<>"no")*(LOWER(${range}&"")<>"false")`;

/** Formula text: how many loads name no card of the list. */
export const strangeLoads = ({ loads, cards }: LedgerPlaces): string =>
  `SUMPRODUCT(IFERROR(${isLoad(loads, column)}*ISNA(MATCH(${names(loads, column)},${names(cards, column)},0)),1))`;

/** What there is to say of each line, under a head of its own; the card that it names says it too. */
function lineSaid({ loads, cards }: LedgerPlaces): string {
  const of = (letter: string): string => columnWithHead(loads, letter);
  const said: readonly (readonly [string, string])[] = [
    // Counted in a column that nothing is compared with: the grid looks rows up among the values of their column.
    [`ROW(${of('I')})=ROW($A$${loads.head})`, 'look at'],
    [`NOT(${isLoad(loads, columnWithHead)})`, ''],
    [`ISNA(MATCH(${names(loads, columnWithHead)},${names(cards, column)},0))`, 'names no card of section 1'],
    [`NOT(ISNUMBER(${of('E')}))`, 'loaded on: not a day'],
    [`${of('E')}>as_of`, 'loaded on a day still to come: refused'],
    [`${hasFailed(of('H'))}>0`, 'failed: the card is as it was'],
    [`NOT(ISNUMBER(${of('D')}))`, 'data effective: not a date'],
    [`${of('F')}=""`, 'not verified'],
    [`NOT(ISNUMBER(${of('F')}))`, 'verified on: not a day'],
    [`${of('F')}>as_of`, 'verified on a day still to come'],
    [`${of('F')}<${of('E')}`, 'verified before it was loaded'],
  ];
  const text = said.reduceRight((rest, [condition, words]) => `IF(${condition},"${words}",${rest})`, '""');
  return `=ARRAYFORMULA(IFERROR(${text},"cannot be read"))`;
}

export function loadCells(places: LedgerPlaces): TemplateCell[] {
  const { loads } = places;
  const shown = { ...loads, last: loads.first + tintedLoads - 1 };
  const looks: readonly Look[] = [typedText, typedText, typedText, typedDate, typedDate, typedDate, typedText, typedText, typedText];
  const help = `"One line a load, in any order; lines stay. Read down to row "&ROW($A$${loads.last})&": for more, insert rows before that one."`;
  return [
    ...listHeading(loads.head - 2, 1, 13, '8  History of loads', `=IF(${besideList(loads, 'A')},"${moveIntoList('A load')}",${help})`),
    ...listHeads(loads.head, 1, ['aircraft', 'box or card', 'database', 'data effective', 'loaded on', 'verified on', 'by']),
    cell(loads.head, 8, 'failed', 'columnHead', {
      note: 'yes where the load did not end well: the card is then as it was. Blank where it went well.',
    }),
    ...listHeads(loads.head, 9, ['remark']),
    ...entryList(shown, 1, looks, demoLoads),
    cell(loads.head, 10, lineSaid(places), 'columnHead', { note: 'What there is to say of the line; the reason of its card says it too.' }),
    ...spillRoom(shown, 10, [shownText]),
  ];
}

export function loadValidations({ loads }: LedgerPlaces): Validation[] {
  const last = loads.first + tintedLoads - 1;
  return [
    { kind: 'date', range: area(loads.first, 4, last, 4), help: 'A date, such as 2026-10-29: the effective date on the card, one of its series.' },
    { kind: 'date', range: area(loads.first, 5, last, 5), help: 'The day on which it was loaded, such as 2026-10-28.' },
    {
      kind: 'date',
      range: area(loads.first, 6, last, 6),
      help: 'The day on which somebody looked at the card after loading it; blank where nobody did.',
    },
    { kind: 'list', range: area(loads.first, 8, last, 8), choices: ['yes', 'no'], help: 'yes where the load failed: the card is then as it was.' },
  ];
}
