// The Data ledger: cards, fleet, licences, costs and the diary, for whoever keeps the data of a fleet current.
import type { DiaryDoing } from '../../functions/facts';
import { area, capped, caution, cell, judgedOnTop, line, namedFor, otherDaySaid, otherThanToday, typedOver, worstOf } from '../build';
import { diaryGoesOn, forecastCells, recordCells, recordMerges, recordValidation } from './record';
import { loadCells, loadValidations, strangeLoads } from './loads';
import { cardCells, fleetCells, sectionsLine } from './cards';
import { diaryCells, licenceCells, memberCells } from './costs';
import { fleetTop, placesFor, summaryEnds, defaultRoom, type LedgerPlaces, type LedgerRoom } from './places';
import { columnsFrom, type TemplateKeys } from '../keys';
import { column, withNeighbours } from '../lists';
import { sheetNames, typedOverCells } from '../places';
import type { DeclaredSheet, TemplateCell, Validation } from '../template';
import { whileDemo } from '../demo/inUse';

/** How many rows of cards in use are filled in, on the rows next to the list too; the heads are one row of it. */
function filledCards({ cards }: LedgerPlaces): string {
  const entries = [...'ABCDEF'].map((letter) => withNeighbours(cards, letter));
  const isInUse = `(LOWER(TRIM(${withNeighbours(cards, 'D')}))<>"not in use")`;
  return `(SUMPRODUCT(IFERROR((${entries.join('&')}<>"")*${isInUse},1))-1)`;
}

/** The next load and the next renewal, or why there is none. */
function nextCells({ diary, cards }: LedgerPlaces): TemplateCell[] {
  const gone = `COUNTIF(${column(cards, 'K')},"<=0")`;
  const overdue = `IF(${gone}=0,"",${gone}&" out of date now, see the Load list; then ")`;
  const next = (what: DiaryDoing, letter: string): string => `INDEX(${column(diary, letter)},MATCH("${what}",${column(diary, 'A')},0))`;
  const none = `IF(COUNT(${column(diary, 'C')})=0,"the diary is empty, or cannot be read",IF(${diaryGoesOn(diary)},"none in the rows of the diary that are read","none in the diary"))`;
  return [
    ...line(
      4,
      1,
      ['Next load', 'label'],
      [undefined, 'plain'],
      [`=${overdue}&IFERROR(TEXT(${next('load', 'B')},"yyyy-mm-dd hh:mm")&"  "&${capped(next('load', 'G'), 130)},${none})`, 'computedText'],
    ),
    ...line(
      5,
      1,
      ['Next renewal', 'label'],
      [undefined, 'plain'],
      [`=IFERROR(TEXT(${next('renew', 'C')},"yyyy-mm-dd")&"  "&${next('renew', 'G')},${none})`, 'computedText'],
    ),
  ];
}

function summaryCells(places: LedgerPlaces): TemplateCell[] {
  const { cards } = places;
  const of = (letter: string): string => column(cards, letter);
  const named = (letter: string): string => `IFERROR(${of(letter)},"?")`;
  const filled = filledCards(places);
  const strange = strangeLoads(places);
  const card = `${named('A')}&" "&${named('B')}&", "&${named('C')}`;
  const withReason = `${card}&" ("&${of('M')}&")"`;
  const inWords = `${namedFor('NO', of('J'), withReason)}&${namedFor('UNKNOWN', of('J'), withReason)}&${namedFor('CHECK', of('J'), card)}`;
  const judged = ['OK', 'CHECK', 'NO', 'UNKNOWN'].map((word) => `COUNTIF(${of('J')},"${word}")`).join('+');
  const notJudged = 'A card has no verdict: give its aircraft, box, database and series in one row, between the first and the last tinted row. ';
  return [
    cell(1, 1, 'Data ledger', 'title'),
    cell(1, 4, whileDemo('Invented club, aircraft, cards, licences, prices and people, for demonstration.'), 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    cell(3, 1, 'All cards', 'title'),
    cell(1, 12, judgedOnTop, 'subtitle'),
    cell(3, 3, worstOf(of('J'), filled, [otherThanToday, `${typedOverCells.ledger}<>""`, `${strange}>0`]), 'bigVerdict', {
      note: 'The worst of the cards on the day as_of of the Start sheet: NO, then UNKNOWN, then CHECK, then OK.',
    }),
    cell(
      3,
      5,
      `=${otherDaySaid}&IF(${typedOverCells.ledger}="","","CHECK: see the line below. ")&IF(${strange}=0,"","CHECK: "&${strange}&" of the loads name no card of section 1, see the history. ")&IF(C3="OK","Every card is in force and verified. No licence written down for one of them has ended or ends within 30 days.",IF(${judged}=0,"The cards below cannot be judged, or there are none.",IFERROR(IF(${judged}<${filled},"${notJudged}","")&${capped(inWords, 500)},"The reasons below cannot be read.")))`,
      'reason',
    ),
    ...nextCells(places),
    cell(6, 1, 'Further down, from row', 'label'),
    sectionsLine(places),
  ];
}

const dates = (range: string, help: string): Validation => ({ kind: 'date', range, help });
const list = (range: string, choices: readonly string[], help: string): Validation => ({ kind: 'list', range, choices, help });
const numbers = (range: string, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum: 0, maximum, help });

function validationsOf(places: LedgerPlaces): Validation[] {
  const { licences, members } = places;
  const days = fleetTop(places) + 1;
  return [
    dates(area(days, 2, days + 1, 2), 'A date, such as 2026-11-28.'),
    dates(area(licences.first, 8, licences.last, 8), 'First day of the licence, such as 2026-04-01; blank where it has been held ever since.'),
    numbers(area(licences.first, 4, licences.last, 4), 600, 'Whole months from one renewal to the next; blank where it is not renewed.'),
    numbers(area(licences.first, 5, licences.last, 5), 1000000, 'Cost of one renewal.'),
    list(area(licences.first, 7, licences.last, 7), ['equal', 'hours', 'share'], 'In equal parts, by hours flown, or by the shares agreed on.'),
    numbers(area(members.first, 3, members.last, 4), 1000000, 'Hours flown, or the share agreed on.'),
    ...loadValidations(places),
    recordValidation(places),
  ];
}

function keysOf(places: LedgerPlaces): TemplateKeys {
  const { cards, licences, members, renewals, loads } = places;
  const fleet = fleetTop(places);
  return {
    entries: {
      firstDay: `B${fleet + 1}`,
      lastDay: `B${fleet + 2}`,
      recordRow: `L${fleet + 1}`,
      recordFor: `L${fleet + 2}`,
      firstCurrency: `B${renewals.head}`,
      secondCurrency: `C${renewals.head}`,
    },
    lists: {
      cards: {
        ...cards,
        columns: columnsFrom(1, 'aircraft', 'card', 'database', 'series', 'changesAt', 'who'),
      },
      licences: {
        ...licences,
        columns: columnsFrom(1, 'aircraft', 'database', 'endsOn', 'months', 'cost', 'currency', 'sharedBy', 'startsOn', 'card', 'series'),
      },
      members: { ...members, columns: columnsFrom(1, 'member', 'aircraft', 'hours', 'share') },
      loads: {
        ...loads,
        read: { first: loads.head, last: loads.last },
        columns: columnsFrom(1, 'aircraft', 'card', 'database', 'effective', 'loadedOn', 'verified', 'loadedBy', 'failed', 'remark'),
      },
    },
  };
}

/** The sheet with room for so many rows; longer ones serve the tests of scale. */
export function dataLedgerWith(room: LedgerRoom): DeclaredSheet {
  const places = placesFor(room);
  const { cards, fleet, diary, loads } = places;
  const worked = [...cardCells(places), ...fleetCells(places), ...licenceCells(places), ...memberCells(places), ...diaryCells(places)];
  return {
    key: 'ledger',
    name: sheetNames.ledger,
    version: 5,
    rows: diary.last + 2,
    columns: 18,
    columnWidths: [88, 108, 74, 74, 74, 74, 74, 74, 74, 74, 32, 108, 84, 100, 100, 100, 100, 100],
    rowHeights: { 1: 32, 3: 96, [cards.head]: 34, [places.licences.head]: 34, [places.diary.head]: 34, [loads.head]: 34 },
    frozenRows: 0,
    cells: [
      ...summaryCells(places),
      cell(summaryEnds + 1, 1, `=${typedOver(worked)}`, 'computedText'),
      ...worked,
      ...recordCells(places),
      ...forecastCells(places),
      ...loadCells(places),
    ],
    merges: ['C3:D3', 'E3:M3', ...recordMerges(places)],
    validations: validationsOf(places),
    verdictRanges: ['C3', area(cards.first, 10, cards.last, 10), area(fleet.head, 2, fleet.last, 7)],
    names: [{ name: 'ledger_verdict', range: 'C3' }],
    keys: keysOf(places),
    charts: [],
    print: { landscape: true },
  };
}

export const dataLedgerSheet = dataLedgerWith(defaultRoom);
