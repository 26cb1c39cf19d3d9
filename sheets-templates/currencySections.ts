// The sections of the Currency log, each a block of rows below the one before; the flights come last, so that they can grow.
import { cell, line, type Content } from './build';
import { demoFleet, demoFlights, demoItems, demoPapers } from './currencyDemo';
import { entryList, listBelow, listHeading, listHeads, shownNumber, shownText, spillList, typedDate, typedNumber, typedText, type List, type Look } from './lists';
import { formulaCall, type TemplateCell } from './template';

/** How many rows each list has room for; `flights` is how far down the log is read, `tinted` how many of its rows are tinted. */
export interface CurrencyRoom {
  readonly papers: number;
  readonly pilot: number;
  readonly items: number;
  readonly flights: number;
  readonly tinted: number;
}

export interface CurrencyPlaces {
  readonly papers: List;
  readonly pilot: List;
  readonly items: List;
  readonly flights: List;
}

const summaryEnds = 6;
export const rulesCell = 'B5';
const rules = '$B$5';

export function placesFor(room: CurrencyRoom): CurrencyPlaces {
  const papers = listBelow(summaryEnds, room.papers);
  const pilot = listBelow(papers.last, room.pilot);
  const items = listBelow(pilot.last, room.items);
  return { papers, pilot, items, flights: listBelow(items.last, room.flights) };
}

/** From E to M, the gaps among them. */
const fleetTable = ({ papers }: CurrencyPlaces): string => `$E$${papers.head}:$M$${papers.last}`;

/** A gap between two blocks of one table: no heading, so nothing is read there. */
const gap: Look = ['plain'];
const withoutGaps = (cells: readonly TemplateCell[]): TemplateCell[] => cells.filter(({ style, value }) => style !== 'plain' || value !== undefined);

export function paperCells({ papers }: CurrencyPlaces): TemplateCell[] {
  const fleet: readonly Look[] = [typedText, typedText, typedText, typedText, gap, typedText, typedText, gap, typedNumber('one')];
  return [
    ...listHeading(papers.head - 2, 1, 3, '1  The papers', ''),
    cell(papers.head - 1, 1, 'Own rows: the last good day, or done on, and months.', 'subtitle'),
    cell(papers.head, 1, 'paper', 'columnHead', { note: 'Known by name: flight review, practical test, pilot proficiency check, instrument proficiency check, medical examination, medical class, birth date, BasicMed course, BasicMed examination (FAA); class rating valid to, class rating proficiency check, instrument rating valid to, medical examination, medical class, birth date, medical valid to (EASA).' }),
    ...listHeads(papers.head, 2, ['date', 'months']),
    ...entryList(papers, 1, [typedText, typedDate, typedNumber('whole')], demoPapers).map((entry) => (entry.column === 2 && typeof entry.value === 'number' ? { ...entry, format: 'whole' as const } : entry)),
    ...listHeading(papers.head - 2, 5, 14, '2  The aircraft flown', 'Class as you write it, such as SEL (single-engine land). Device: FFS, FTD, ATD, or blank.'),
    ...listHeads(papers.head, 5, ['aircraft', 'tailwheel', 'category', 'device']),
    ...listHeads(papers.head, 10, ['type rating', 'class']),
    ...listHeads(papers.head, 13, ['hours']),
    ...withoutGaps(entryList(papers, 5, fleet, demoFleet)),
  ];
}

const logTable = ({ flights }: CurrencyPlaces): string => `$A$${flights.head}:$N$${flights.last}`;

export function pilotCells(places: CurrencyPlaces): TemplateCell[] {
  const { pilot, papers } = places;
  const call = formulaCall('PILOT_STATUS', logTable(places), fleetTable(places), `$A$${papers.first}:$C$${papers.last}`, 'as_of', rules);
  const looks: readonly Look[] = [
    ['computedText', undefined, 'PILOT_STATUS, one call over the whole log. Each rule with its paragraph; where it can be read two ways, the stricter reading.'],
    ['computed', undefined, 'What counts on the day as_of. Calendar months leave out the month of as_of.'],
    ['computed'],
    ['computedText', undefined, 'CHECK: lapses soon, or holds in one reading only.'],
    ['computed', 'date', 'The last good day without anything further.'],
    shownNumber('whole'),
    shownText,
  ];
  return [
    ...listHeading(pilot.head - 2, 1, 14, "3  The pilot's list", 'Landings in one class do not count for another; a tailwheel and the night need a full stop. Take-offs are taken to be as many as landings.'),
    ...listHeads(pilot.head, 1, ['item', 'counted', 'needed', 'verdict', 'good through', 'days left', 'rule']),
    ...spillList({ ...pilot, last: pilot.last + 1 }, 1, looks, call),
  ];
}

export function itemCells(places: CurrencyPlaces): TemplateCell[] {
  const { items } = places;
  const call = formulaCall('AIRCRAFT_STATUS', `$A$${items.head}:$H$${items.last}`, fleetTable(places), 'as_of', rules);
  const looks: readonly Look[] = [
    ['verdict', undefined, 'AIRCRAFT_STATUS, one call for all rows.'],
    ['computed', 'date', 'The last good day by the calendar.'],
    shownNumber('whole'),
    ['computed', 'one', 'Hours in service left.'],
    shownText,
  ];
  const hours = typedNumber('one');
  const whole = typedNumber('whole');
  return [
    ...listHeading(items.head - 2, 1, 14, "4  The aircraft's list", 'The note of "item" tells the names that the rules know. A row of your own: an interval, or its last good day under done on.'),
    cell(items.head, 1, 'item', 'columnHead', { note: 'Known by name: annual inspection, 100 hour inspection, altimeter and static system, transponder, VOR check, ELT inspection, ELT battery, oxygen bottle 3AA, oxygen bottle 3HT (FAA); airworthiness review certificate (EASA).' }),
    ...listHeads(items.head, 2, ['aircraft', 'done at, h', 'was due at, h', 'done on', 'every months', 'every days', 'every hours']),
    ...listHeads(items.head, 10, ['verdict', 'good through', 'days left', 'hours left', 'rule']),
    ...entryList(items, 1, [typedText, typedText, hours, hours, typedDate, whole, whole, hours], demoItems),
    ...spillList(items, 10, looks, call),
  ];
}

export function flightCells({ flights }: CurrencyPlaces, tinted: number): TemplateCell[] {
  const count = typedNumber('whole');
  const hours = typedNumber('one');
  const looks: readonly Look[] = [typedText, typedDate, count, count, count, count, count, count, gap, count, hours, gap, hours, hours, typedText];
  const shown = { ...flights, last: flights.first + tinted - 1 };
  const heads: readonly Content[] = ['aircraft', 'date', 'day landings', 'day full stop', 'night landings', 'night full stop', 'approaches', 'holds', undefined, 'tracking', 'hours', undefined, 'PIC', 'with instructor', 'remark'];
  return [
    ...listHeading(flights.head - 2, 1, 14, '5  The flights', `="The log is read down to row "&ROW($A$${flights.last})&", in any order; type or paste on below the tint. For more flights insert rows before that one."`),
    ...line(flights.head, 1, ...heads.map((head) => [head, head === undefined ? 'plain' : 'columnHead'] as const)).filter(({ value }) => value !== undefined),
    ...withoutGaps(entryList(shown, 1, looks, demoFlights)),
  ];
}
