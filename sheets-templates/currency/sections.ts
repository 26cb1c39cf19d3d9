// The cells of the sections of the Currency log.
import { cell, line, type Content } from '../build';
import { demoFleet, demoFlights, demoItems, demoOwnRules, demoPapers } from '../demo/currency';
import { itemsKnown, papersKnown } from '../../functions/facts';
import {
  entryList,
  headWords,
  listHeading,
  listHeads,
  shownNumber,
  shownText,
  spillList,
  typedDate,
  typedNumber,
  typedText,
  type Look,
} from '../lists';
import { formulaCall, type TemplateCell } from '../template';
import { fleetTable, logTable, ownRulesTable, pilotNamed, placesTable, rules, type CurrencyPlaces } from './places';

/** Text, so that 0930 keeps its nought. */
const typedTime: Look = ['inputText', 'text'];

/** A gap between two blocks of one table: no heading, so nothing is read there. */
const gap: Look = ['plain'];
const withoutGaps = (cells: readonly TemplateCell[]): TemplateCell[] => cells.filter(({ style, value }) => style !== 'plain' || value !== undefined);

export function paperCells({ papers }: CurrencyPlaces): TemplateCell[] {
  const fleet: readonly Look[] = [typedText, typedText, typedText, typedText, gap, typedText, typedText, gap, typedNumber('one'), typedDate];
  return [
    ...listHeading(papers.head - 2, 1, 3, '1  Certificates and reviews', ''),
    cell(papers.head - 1, 1, 'Own rows: the last good day, or done on, and months.', 'subtitle'),
    cell(papers.head, 1, 'paper', 'columnHead', {
      note: `Known by name: ${papersKnown}.`,
    }),
    ...listHeads(papers.head, 2, ['date', 'months']),
    ...entryList(papers, 1, [typedText, typedDate, typedNumber('whole')], demoPapers).map((entry) =>
      entry.column === 2 && typeof entry.value === 'number' ? { ...entry, format: 'whole' as const } : entry,
    ),
    ...listHeading(
      papers.head - 2,
      5,
      14,
      '2  The aircraft flown',
      'Class as you write it, such as SEL (single-engine land). Device: FFS, FTD, ATD, or blank.',
    ),
    ...listHeads(papers.head, 5, ['aircraft', 'tailwheel', 'category', 'device']),
    ...listHeads(papers.head, 10, ['type rating', 'class']),
    cell(papers.head, 13, 'hours', 'columnHead', {
      note: 'Hours in service now, or on the day beside them: those of the flights after it are added.',
    }),
    ...listHeads(papers.head, 14, ['read on']),
    ...withoutGaps(entryList(papers, 5, fleet, demoFleet)),
  ];
}

export function ownRuleCells({ ownRules }: CurrencyPlaces): TemplateCell[] {
  const looks: readonly Look[] = [
    ...[typedText, typedText, typedNumber('one'), ['input'] as const, typedText, typedText, typedText, typedText],
    ...[gap, typedText, typedText, gap, typedText],
  ];
  return [
    ...listHeading(
      ownRules.head - 2,
      1,
      14,
      '3  Rules of your own, a club, an insurer',
      'Such as 3 landings within 60 days, in one aircraft or class. Rows of one name are asked together; their window and "in" must be alike.',
    ),
    ...listHeads(ownRules.head, 1, ['rule', 'what', 'at least', 'within']),
    cell(ownRules.head, 5, 'of', 'columnHead', {
      note: 'days; months, to the day; calendar months, to the end of the last; since, with a date under "within".',
    }),
    cell(ownRules.head, 6, 'in', 'columnHead', {
      note: 'An aircraft, a class, a type rating or a category as in list 2; or: same class, same category, same aircraft. Blank: flights in all of them together.',
    }),
    ...listHeads(ownRules.head, 7, ['needed for', 'night']),
    ...listHeads(ownRules.head, 10, ['full stop', 'tailwheel']),
    ...listHeads(ownRules.head, 13, ['set by']),
    ...withoutGaps(entryList(ownRules, 1, looks, demoOwnRules)),
  ];
}

/** Formula text: whose flights are taken. */
export const whoseFlights = ({ flights }: CurrencyPlaces): string =>
  `=IF(COUNTA($P$${flights.first}:$P$${flights.last})=0,"No flight below names a pilot (column P): all are taken to be of one.",IF(${pilotNamed}="","Flights below name pilots. While this is blank they count only if all name the same one.","Only flights that name "&${pilotNamed}&" count; those that name nobody do not."))`;

export function pilotCells(places: CurrencyPlaces): TemplateCell[] {
  const { pilot, papers } = places;
  const words = ['item', 'counted', 'needed', 'verdict', 'good through', 'days left', 'rule'];
  const call = formulaCall(
    'PILOT_STATUS',
    logTable(places),
    fleetTable(places),
    `$A$${papers.first}:$C$${papers.last}`,
    'as_of',
    rules,
    headWords(words),
    ownRulesTable(places),
    pilotNamed,
    placesTable,
  );
  const looks: readonly Look[] = [
    [
      'computedText',
      undefined,
      'PILOT_STATUS, one call over the whole log. Each rule with its paragraph; where it can be read two ways, the stricter reading.',
    ],
    ['computed', undefined, 'What counts on the day as_of. Calendar months leave out the month of as_of.'],
    ['computed'],
    ['computedText', undefined, 'CHECK: lapses soon, or holds in one reading only.'],
    ['computed', 'date', 'The last good day without anything further.'],
    shownNumber('whole'),
    shownText,
  ];
  return [
    ...listHeading(
      pilot.head - 2,
      1,
      14,
      "4  The pilot's list",
      'Landings in one class do not count for another; a tailwheel and the night need a full stop. Take-offs are taken to be as many as landings.',
    ),
    ...spillList({ ...pilot, last: pilot.last + 1 }, 1, looks, words, call),
  ];
}

export function itemCells(places: CurrencyPlaces): TemplateCell[] {
  const { items } = places;
  const words = ['verdict', 'good through', 'days left', 'hours left', 'rule'];
  const call = formulaCall(
    'AIRCRAFT_STATUS',
    `$A$${items.head}:$H$${items.last}`,
    fleetTable(places),
    'as_of',
    rules,
    headWords(words),
    logTable(places),
  );
  const looks: readonly Look[] = [
    ['verdict', undefined, 'AIRCRAFT_STATUS, one call for all rows.'],
    ['computed', 'date', 'The last good day by the calendar.'],
    shownNumber('whole'),
    ['computed', 'one', 'Hours in service left.'],
    shownText,
  ];
  const hours = typedNumber('one');
  const whole = typedNumber('whole');
  const every: Look = ['input', 'shown'];
  return [
    ...listHeading(
      items.head - 2,
      1,
      14,
      "5  The aircraft's list",
      'The note of "item" tells the names that the rules know. An item of your own: an interval, or its last good day under done on.',
    ),
    cell(items.head, 1, 'item', 'columnHead', {
      note: `Known by name: ${itemsKnown}.`,
    }),
    ...listHeads(items.head, 2, ['aircraft', 'done at, h', 'was due at, h', 'done on', 'every months', 'every days']),
    cell(items.head, 8, 'every hours', 'columnHead', {
      note: 'Hours in service, such as 50; or 300 landings, or 300 cycles, counted in the flights after "done on".',
    }),
    ...entryList(items, 1, [typedText, typedText, hours, hours, typedDate, whole, whole, every], demoItems),
    ...spillList(items, 10, looks, words, call),
  ];
}

export function flightCells({ flights }: CurrencyPlaces, tinted: number): TemplateCell[] {
  const count = typedNumber('whole');
  const hours = typedNumber('one');
  const looks: readonly Look[] = [typedText, typedDate, count, count, count, count, count, count, gap, count, hours, gap, hours, hours, typedText];
  const said: readonly Look[] = [typedText, typedText, typedText, typedTime, typedTime];
  const shown = { ...flights, last: flights.first + tinted - 1 };
  const heads: readonly Content[] = [
    'aircraft',
    'date',
    'day landings',
    'day full stop',
    'night landings',
    'night full stop',
    'approaches',
    'holds',
    undefined,
    'tracking',
    'hours',
    undefined,
    'PIC',
    'with instructor',
    'remark',
    'pilot',
    'from',
    'to',
    'take-off, UTC',
    'landing, UTC',
  ];
  return [
    ...listHeading(
      flights.head - 2,
      1,
      20,
      '6  The flights',
      `="The log is read down to row "&ROW($A$${flights.last})&", in any order; type or paste on below the tint. For more flights insert rows before that one. With fields and both times the Sun tells night."`,
    ),
    ...line(flights.head, 1, ...heads.map((head) => [head, head === undefined ? 'plain' : 'columnHead'] as const)).filter(
      ({ value }) => value !== undefined,
    ),
    ...withoutGaps(entryList(shown, 1, [...looks, ...said], demoFlights)),
  ];
}
