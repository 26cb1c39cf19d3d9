// The trip on paper: one page of its own, from the cells of the Trip sheet as they stand now. The verdict, every item with its word and its
// reason across the page, then what was typed and worked out in three columns, then the weather reports. Nothing is smaller than 8 points.
import { element, escaped } from '../../pictures/svg';
import type { Area } from '../../workbook/areas';
import type { PlacedSheet } from '../../workbook/pocket/placedSheet';
import { isVerdict, typingHelp as hasPicker } from '../../workbook/pocket/verdictWords';
import { verdictTints } from '../../../sheets-templates/look';
import { tripLastRow, tripRows } from '../../../sheets-templates/trip/rows';
import { shownAt, type Skeleton } from './printLayout';

type RowName = keyof typeof tripRows;
interface Section {
  readonly heading: RowName;
  /** Of its first column and its last. */
  readonly from: string;
  readonly to: string;
  readonly until: RowName;
}

const left = (heading: RowName, until: RowName): Section => ({ heading, from: 'A', to: 'E', until });
const right = (heading: RowName, until: RowName): Section => ({ heading, from: 'G', to: 'I', until });
const columns: readonly (readonly Section[])[] = [
  [left('tripHeading', 'fieldsHeading'), left('climbHeading', 'typedHeading'), left('beforeHeading', 'reportsHeading')],
  [left('fieldsHeading', 'fuelHeading'), left('fuelHeading', 'climbHeading'), left('typedHeading', 'datesHeading')],
  [right('loadingHeading', 'cardHeading'), right('cardHeading', 'reportsHeading'), left('datesHeading', 'beforeHeading')],
];

/** Where cells of the template stand in the sheet, and what it shows there. */
interface Seen {
  readonly at: (place: string) => Area;
  readonly shown: (row: number, column: number) => string;
}

class Lost extends Error {}

const rowOf = ({ at }: Seen, name: RowName, column: string): number => {
  const row = tripRows[name];
  return at(`${column}${typeof row === 'number' ? row : row.first}`).row;
};
const td = (text: string, attributes: Readonly<Record<string, string | number>> = {}): string => element('td', attributes, escaped(text));
const range = (first: number, last: number): number[] => Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);

const tinted = (word: string): Record<string, string> =>
  isVerdict(word) ? { class: 'word', style: `background:${verdictTints[word]}` } : { class: 'word' };

function top(seen: Seen): string {
  const said = (place: string): string => {
    const { row, column } = seen.at(place);
    return seen.shown(row, column);
  };
  const verdict = said('B3');
  const beside = ['G3', 'A4', 'G4'].map(said).filter((text) => text !== '');
  const words = [
    td(said('A1'), { class: 'title' }),
    td(verdict, tinted(verdict)),
    element('td', { class: 'rest' }, beside.map((text) => element('div', {}, escaped(text))).join('')),
  ];
  return table('top', element('tr', {}, words.join(''))) + element('div', {}, escaped([said('A2'), said('G1')].join(' ')));
}

const table = (name: string, rows: string): string => element('table', { class: name }, element('tbody', {}, rows));

function items(seen: Seen): string {
  const { row, lastRow, column, lastColumn } = seen.at(`G${tripRows.judged.first}:I${tripRows.judged.last}`);
  const rows = range(row, lastRow).map((one) => {
    const [item = '', word = '', ...reason] = range(column, lastColumn).map((each) => seen.shown(one, each));
    return element('tr', {}, td(item) + td(word, tinted(word)) + td(reason.filter((text) => text !== '').join(' '), { class: 'rest' }));
  });
  return table('items', rows.join(''));
}

/** Words beside an entry that say how to type it, and tell nothing on paper. */
const typingHelp: ReadonlySet<string> = new Set([...hasPicker, 'Z, as 1430']);

/** A section of one value a line has its unit behind the value. */
function compact(head: readonly string[], filled: readonly (readonly string[])[]): (readonly string[])[] {
  const [value, unit] = [1, head.length - 1];
  const isSingle = head.slice(1).every((word) => word === '') && filled.every((line) => line.slice(value + 1, unit).every((text) => text === ''));
  const joined = (line: readonly string[]): string =>
    [line[value] ?? '', line[unit] ?? ''].filter((text) => text !== '' && !typingHelp.has(text)).join(' ');
  const lines = [head, ...filled];
  if (isSingle) return lines.map((line) => [line[0] ?? '', joined(line)]);
  const used = head.map((_, index) => index).filter((index) => filled.some((line) => line[index] !== ''));
  return lines.map((line) => used.map((index) => line[index] ?? ''));
}

/** A line is left out where nothing stands beside its label; what the user wrote into a row of their own never is. */
function lines(seen: Seen, { heading, from, to, until }: Section, known: ReadonlySet<number>): string {
  const { column, lastColumn } = seen.at(`${from}${tripRows[heading] as number}:${to}${tripRows[heading] as number}`);
  const texts = (row: number): string[] => range(column, lastColumn).map((one) => seen.shown(row, one));
  const first = rowOf(seen, heading, from);
  const isFilled = (line: readonly string[], index: number): boolean =>
    known.has(first + 1 + index) ? line.slice(1, from === 'A' ? -1 : undefined).some((text) => text !== '') : line.some((text) => text !== '');
  const filled = range(first + 1, rowOf(seen, until, 'A') - 1)
    .map(texts)
    .filter(isFilled);
  if (filled.length === 0) return '';
  const [head = [], ...body] = compact(texts(first), filled);
  const row = (line: readonly string[]): string => element('tr', {}, line.map((text) => td(text)).join(''));
  const isAlone = head.slice(1).every((word) => word === '');
  const headed = isAlone ? td(head[0] ?? '', { colspan: head.length }) : head.map((text) => td(text)).join('');
  return table('entries', element('tr', { class: 'head' }, headed) + body.map(row).join(''));
}

function reports(seen: Seen): string {
  const first = rowOf(seen, 'reportsHeading', 'A');
  const { column } = seen.at(`A${tripRows.reportsHeading}`);
  const texts = range(first, seen.at(`A${tripLastRow}`).row).map((row) => seen.shown(row, column));
  const [heading = '', , ...typed] = texts;
  const filled = typed.filter((text) => text !== '');
  return filled.length === 0 ? '' : table('reports', [heading, ...filled].map((text) => element('tr', {}, td(text))).join(''));
}

/** Undefined where it is not certain any more where everything stands: then the sheet is printed as it looks. */
export function tripOnPaper(sheet: Skeleton, { areaNow }: PlacedSheet): string | undefined {
  const at = (place: string): Area => {
    const now = areaNow(place);
    if (now === undefined) throw new Lost();
    return now;
  };
  const seen: Seen = { at, shown: (row, column) => shownAt(sheet, row - 1, column - 1).trim() };
  try {
    const known = new Set(range(1, tripLastRow).map((row) => at(`A${row}`).row));
    const sections = columns.map((column) => element('div', {}, column.map((section) => lines(seen, section, known)).join('')));
    return element('div', { class: 'trip' }, top(seen) + items(seen) + element('div', { class: 'columns' }, sections.join('')) + reports(seen));
  } catch (thrown) {
    if (thrown instanceof Lost) return undefined;
    throw thrown;
  }
}

/** Points: the largest that fits is taken, and the smallest where none does; then there is a second page. */
const sizes = [9.5, 9, 8.5, 8] as const;

/** Sizes the page that stands in `paper` to one sheet of so many pixels. */
export function fitTrip(paper: HTMLElement, across: number, down: number): void {
  const trip = paper.querySelector<HTMLElement>('.trip');
  if (trip === null) return;
  paper.classList.add('measured');
  paper.style.width = `${across}px`;
  for (const size of sizes) {
    trip.style.fontSize = `${size}pt`;
    if (paper.scrollHeight <= down && paper.scrollWidth <= across) break;
  }
  paper.classList.remove('measured');
  paper.style.width = '';
}
