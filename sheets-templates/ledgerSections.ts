// The sections of the Data ledger, each a block of rows below the one before; where they begin follows from their sizes.
import { cell, line, on } from './build';
import { demoCards, demoLicences, demoMembers } from './ledgerDemo';
import { column, entryList, helpUnlessBeside, listBelow, listHeading, listHeads, shownNumber, shownText, spillList, typedDate, typedNumber, typedText, type List, type Look } from './lists';
import { sheetNames, tripCells } from './places';
import { formulaCall, type TemplateCell } from './template';

/** How many rows each list has room for. */
export interface LedgerRoom {
  readonly cards: number;
  readonly fleet: number;
  readonly licences: number;
  readonly members: number;
  readonly diary: number;
}

export type LedgerPlaces = Readonly<Record<keyof LedgerRoom, List>>;

const summaryEnds = 6;
/** The fleet needs two lines more, for its days. */
const fleetDays = 1;

export function placesFor(room: LedgerRoom): LedgerPlaces {
  const cards = listBelow(summaryEnds, room.cards);
  const fleet = listBelow(cards.last, room.fleet, fleetDays);
  const licences = listBelow(fleet.last, room.licences);
  const members = listBelow(licences.last, room.members);
  return { cards, fleet, licences, members, diary: listBelow(members.last, room.diary) };
}

const licenceTable = ({ licences }: LedgerPlaces): string => `$A$${licences.first}:$G$${licences.last}`;

export function cardCells(places: LedgerPlaces): TemplateCell[] {
  const { cards } = places;
  const of = (letter: string): string => column(cards, letter);
  const call = formulaCall('LEDGER_STATUS', of('A'), of('C'), of('D'), of('E'), of('I'), 'as_of', licenceTable(places), '5', of('H'));
  const status: readonly Look[] = [
    ['verdict', undefined, 'LEDGER_STATUS, one call for all rows: the worst of what the reason says.'],
    ['computed', 'whole', 'Days from as_of (Start) to the day on which the data is out of date.'],
    ['computed', 'dateTime', "The moment of the change in this spreadsheet's own time zone: 0000Z by the ICAO annex (15, chapter 6), 0901Z for US products (from memory)."],
    ['computedText', undefined, 'Everything there is to say of the card.'],
  ];
  return [
    ...listHeading(cards.head - 2, 1, 13, '1  Cards: what is loaded, and how it stands', helpUnlessBeside(cards, 'A', 'A card', 'One row a card. To make a list longer, insert rows between its first and its last tinted row: every formula grows with it.')),
    ...listHeads(cards.head, 1, ['aircraft', 'box or card', 'database', 'series', 'data effective', 'loaded on', 'by', 'at, UTC', 'verified', 'verdict', 'days left', 'out of date from, sheet time', 'reason']),
    ...entryList(cards, 1, [typedText, typedText, typedText, typedText, typedDate, typedDate, typedText, typedText, typedText], demoCards),
    ...spillList(cards, 10, status, call),
  ];
}

export const fleetTop = ({ fleet }: LedgerPlaces): number => fleet.head - 2 - fleetDays;

export function fleetCells(places: LedgerPlaces): TemplateCell[] {
  const { cards, fleet } = places;
  const top = fleetTop(places);
  const call = formulaCall('LEDGER_FLEET', column(cards, 'A'), column(cards, 'D'), column(cards, 'E'), `$B$${top + 1}`, `$B$${top + 2}`, column(cards, 'H'));
  const days: readonly (readonly [string, string, string])[] = [
    ['first day', tripCells.firstDay, 'OK: in force to the end of the last day. CHECK: only for'],
    ['last day', tripCells.lastDay, 'part of the first or last day. Blank: no such card.'],
  ];
  const looks: readonly Look[] = [['computedText', undefined, 'LEDGER_FLEET: the worst of the cards of each series.'], ...Array.from({ length: 6 }, () => shownText)];
  return [
    ...listHeading(top, 1, 7, '2  Fleet on the days of a trip', ''),
    ...days.flatMap(([label, place, help], index) =>
      line(top + 1 + index, 1, [label, 'label'], [`=${on(sheetNames.trip, place)}`, 'input', { format: 'date', note: 'From the Trip sheet; type another day over it for another question.' }], [help, 'subtitle']),
    ),
    ...spillList({ ...fleet, first: fleet.head, last: fleet.head }, 1, looks.map(([, format, note]): Look => ['columnHead', format, note]), call),
    ...spillList(fleet, 1, looks.map((): Look => shownText), '').filter(({ formula }) => formula === undefined),
  ];
}

export function licenceCells({ licences }: LedgerPlaces): TemplateCell[] {
  return [
    ...listHeading(licences.head - 2, 1, 7, '4  Licences and what they cost', helpUnlessBeside(licences, 'A', 'A licence', 'For one aircraft or "all"; renewed every so many months; shared by: equal, hours, share.')),
    ...listHeads(licences.head, 1, ['aircraft', 'database', 'licence end', 'months', 'cost', 'currency', 'shared by']),
    ...entryList(licences, 1, [typedText, typedText, typedDate, typedNumber('whole'), typedNumber('two'), typedText, typedText], demoLicences),
  ];
}

/** An aircraft spelled otherwise among the members leaves its whole cost to the others: that is said. Spellings as our functions compare them. */
function statementHelp({ members, licences }: Pick<LedgerPlaces, 'members' | 'licences'>): string {
  const plain = (range: string): string => `SUBSTITUTE(SUBSTITUTE(LOWER(TRIM(${range})),"-"," "),"_"," ")`;
  const aircraft = column(members, 'B');
  const strangers = `SUMPRODUCT((${aircraft}<>"")*(${plain(aircraft)}<>"all")*ISNA(MATCH(${plain(aircraft)},${plain(column(licences, 'A'))},0)))`;
  const help = 'At the next renewal of every licence, once each.';
  return `=IFERROR("${help}"&IF(${strangers}=0,""," Rows of members in an aircraft that no licence names: "&${strangers}&". Where it is only spelled otherwise, the others bear its cost alone."),"${help}")`;
}

export function memberCells({ members, licences }: LedgerPlaces): TemplateCell[] {
  const of = (letter: string): string => column(licences, letter);
  const call = formulaCall('COST_STATEMENT', of('A'), of('E'), of('F'), of('G'), `$A$${members.first}:$D$${members.last}`);
  const looks: readonly Look[] = [
    ['computedText', undefined, 'COST_STATEMENT: shares by the largest remainder, so that they add up to the cent; currencies are never added.'],
    shownText, shownText, shownNumber('two'), shownText,
  ];
  return [
    ...listHeading(members.head - 2, 1, 7, '6  Who takes part in which aircraft', helpUnlessBeside(members, 'A', 'A member', 'Hours flown and agreed shares; aircraft "all" takes part in every one.')),
    ...listHeads(members.head, 1, ['member', 'aircraft', 'hours', 'share']),
    ...entryList(members, 1, [typedText, typedText, typedNumber('one'), typedNumber('one')], demoMembers),
    ...listHeading(members.head - 2, 9, 13, '7  What each member owes, and each aircraft costs', statementHelp({ members, licences })),
    ...listHeads(members.head, 9, ['by', 'name', '', 'amount', 'of which']),
    ...spillList(members, 9, looks, call),
  ];
}

export function diaryCells(places: LedgerPlaces): TemplateCell[] {
  const { diary, cards } = places;
  const call = formulaCall('LEDGER_DIARY', column(cards, 'A'), column(cards, 'C'), column(cards, 'D'), 'as_of', '12', licenceTable(places), column(cards, 'H'));
  const looks: readonly Look[] = [
    ['computedText', undefined, 'LEDGER_DIARY: AIRAC dates from the ICAO annex, the 56-day series from the FAA cut-off dates; 14-day is common practice, no source.'],
    shownNumber('dateTime'), shownNumber('date'), shownText, shownNumber('two'), shownText, shownText,
  ];
  return [
    ...listHeading(diary.head - 2, 1, 13, '8  Diary of the next 12 months: visits with what changes on each, and renewals', 'Load before the first flight after the moment shown, not before it, unless the box holds two cycles and changes over by itself.'),
    ...listHeads(diary.head, 1, ['do', 'from, sheet time', 'date', 'at, UTC', 'cost', 'currency', 'what']),
    ...spillList(diary, 1, looks, call),
  ];
}

/** Where each section begins, said by formulas so that it stays true when rows are inserted. */
export const sectionsLine = (places: LedgerPlaces): TemplateCell =>
  cell(
    summaryEnds, 3,
    `="fleet and record entry "&ROW($A$${fleetTop(places)})&", licences and renewals "&ROW($A$${places.licences.head - 2})&", members and statement "&ROW($A$${places.members.head - 2})&", diary "&ROW($A$${places.diary.head - 2})`,
    'unit',
  );
