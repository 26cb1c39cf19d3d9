// The sections of the Data ledger, each a block of rows below the one before; where they begin follows from their sizes.
import { cell, line, on } from '../build';
import { demoCards } from '../demo/ledger';
import {
  callHeads,
  column,
  columnWithHead,
  entryList,
  headWords,
  helpUnlessBeside,
  listHeading,
  listHeads,
  shownText,
  spillList,
  spillRoom,
  typedText,
  type Look,
} from '../lists';
import { sheetNames, tripCells } from '../places';
import { formulaCall, type TemplateCell } from '../template';
import { fleetTop, type LedgerPlaces, licenceTable, loadTable, summaryEnds } from './places';

export function cardCells(places: LedgerPlaces): TemplateCell[] {
  const { cards } = places;
  const of = (letter: string): string => columnWithHead(cards, letter);
  const words = ['data effective', 'loaded on', 'verified on', 'verdict', 'days left', 'out of date from, sheet time', 'reason'];
  const call = formulaCall(
    'LEDGER_CARDS',
    ...['A', 'B', 'C', 'D'].map(of),
    loadTable(places),
    'as_of',
    licenceTable(places),
    '5',
    of('E'),
    headWords(words),
  );
  const status: readonly Look[] = [
    ['computed', 'date', 'LEDGER_CARDS, one call for all rows: the last load of the history that did not fail.'],
    ['computed', 'date'],
    ['computed', 'date', 'The day on which somebody looked at the card, if that was after its last load.'],
    ['verdict', undefined, 'The worst of what the reason says.'],
    ['computed', 'whole', 'Days from as_of (Start) to the day on which the data is out of date.'],
    [
      'computed',
      'dateTime',
      "The moment of the change in this spreadsheet's own time zone: 0000Z by the ICAO annex (15, chapter 6), 0901Z for US products (from memory).",
    ],
    ['computedText', undefined, 'Everything there is to say of the card.'],
  ];
  return [
    ...listHeading(
      cards.head - 2,
      1,
      13,
      '1  Cards, and how they stand by the history of their loads',
      helpUnlessBeside(
        cards,
        'A',
        'A card',
        'One row a card; each load is a line of the history, section 8. For a longer list insert rows between its first and its last tinted row.',
      ),
    ),
    ...listHeads(cards.head, 1, ['aircraft', 'box or card', 'database']),
    cell(cards.head, 4, 'series', 'columnHead', {
      note: '28-day, 56-day, 14-day, or 28 from 2026-01-22; dates of your own with commas between, words and a colon before them; as issued; no end; not in use.',
    }),
    ...listHeads(cards.head, 5, ['at, UTC', 'who']),
    ...entryList(cards, 1, [typedText, typedText, typedText, typedText, typedText, typedText], demoCards),
    ...spillList(cards, 7, status, words, call),
  ];
}

export function fleetCells(places: LedgerPlaces): TemplateCell[] {
  const { cards, fleet } = places;
  const top = fleetTop(places);
  const call = formulaCall(
    'LEDGER_FLEET',
    column(cards, 'A'),
    column(cards, 'D'),
    column(cards, 'G'),
    `$B$${top + 1}`,
    `$B$${top + 2}`,
    column(cards, 'E'),
  );
  const days: readonly (readonly [string, string, string])[] = [
    ['first day', tripCells.firstDay, 'OK: in force to the end of the last day. CHECK: only for'],
    ['last day', tripCells.lastDay, 'part of the first or last day. Blank: no such card.'],
  ];
  const looks: readonly Look[] = [
    ['computedText', undefined, 'LEDGER_FLEET: the worst of the cards of each series.'],
    ...Array.from({ length: 6 }, () => shownText),
  ];
  return [
    ...listHeading(top, 1, 7, '2  Fleet on the days of a trip', ''),
    ...days.flatMap(([label, place, help], index) =>
      line(
        top + 1 + index,
        1,
        [label, 'label'],
        [`=${on(sheetNames.trip, place)}`, 'input', { format: 'date', note: 'From the Trip sheet; type another day over it for another question.' }],
        [help, 'subtitle'],
      ),
    ),
    // Its own heads: the aircraft, the worst of all, and the series there are.
    ...callHeads(
      fleet.head,
      1,
      looks.map(() => ''),
      call,
      looks.map(([, , note]) => note),
    ),
    ...spillRoom(
      fleet,
      1,
      looks.map((): Look => shownText),
    ),
  ];
}

/** Where each section begins, said by formulas so that it stays true when rows are inserted. */
export const sectionsLine = (places: LedgerPlaces): TemplateCell =>
  cell(
    summaryEnds,
    3,
    `="fleet and record entry "&ROW($A$${fleetTop(places)})&", licences "&ROW($A$${places.licences.head - 2})&", renewals by month "&ROW($A$${places.renewals.head - 2})&", members and statement "&ROW($A$${places.members.head - 2})&", history of loads "&ROW($A$${places.loads.head - 2})&", diary "&ROW($A$${places.diary.head - 2})`,
    'unit',
  );
