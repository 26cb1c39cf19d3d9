// Where the sections of the Data ledger stand, each a block of rows below the one before: it follows from their sizes.
import { on } from '../build';
import { columnWithHead, listBelow, type List } from '../lists';
import { sheetNames } from '../places';

/** How many rows each list has room for. */
export interface LedgerRoom {
  readonly cards: number;
  readonly fleet: number;
  readonly licences: number;
  readonly members: number;
  readonly diary: number;
  /** How far down the history is read. */
  readonly loads: number;
}

/** The renewals by month have rows of their own: beside a list, a row deleted from the list would take a month with it. */
export type LedgerPlaces = Readonly<Record<keyof LedgerRoom | 'renewals' | 'statement', List>>;

export const defaultRoom: LedgerRoom = { cards: 60, fleet: 50, licences: 60, members: 60, diary: 120, loads: 600 };
/** Rows of the history that are tinted. */
export const tintedLoads = 60;

export const summaryEnds = 6;

/** Rows of the statement beside the members: each of them may owe in two currencies, and the aircraft, the totals and what is unknown follow. */
const statementRows = ({ members, fleet }: LedgerRoom): number => 2 * members + fleet + 10;

/** The fleet needs two lines more, for its days. */
const fleetDays = 1;

/** Months whose renewals are added up: the one begun and the twelve after it. */
export const renewalMonths = 13;

export function placesFor(room: LedgerRoom): LedgerPlaces {
  const cards = listBelow(summaryEnds, room.cards);
  const fleet = listBelow(cards.last, room.fleet, fleetDays);
  const licences = listBelow(fleet.last, room.licences);
  // Those overdue, the months, and all together.
  const renewals = listBelow(licences.last, renewalMonths + 2);
  const members = listBelow(renewals.last + 2, room.members);
  const statement: List = { ...members, last: members.first + statementRows(room) - 1 };
  const loads = listBelow(statement.last, room.loads);
  // Last, since nobody knows how many rows it takes: what stands below it would take it away.
  return { cards, fleet, licences, renewals, members, statement, loads, diary: listBelow(loads.last, room.diary) };
}

/** With its heads, so that a row put in right below them is read too. */
export const licenceTable = ({ licences }: LedgerPlaces): string => `$A$${licences.head}:$J$${licences.last}`;

export const loadTable = ({ loads }: LedgerPlaces): string => `$A$${loads.head}:$I$${loads.last}`;

export const fleetTop = ({ fleet }: LedgerPlaces): number => fleet.head - 2 - fleetDays;

const defaultPlaces = placesFor(defaultRoom);

const ofCards = (letter: string): string => on(sheetNames.ledger, columnWithHead(defaultPlaces.cards, letter));

/** What other sheets read of the cards, the history and the licences: with the heads, which are the card of no aircraft flown. */
export const ledgerColumns = {
  aircraft: ofCards('A'),
  box: ofCards('B'),
  database: ofCards('C'),
  series: ofCards('D'),
  changesAt: ofCards('E'),
  who: ofCards('F'),
  loaded: ofCards('G'),
  loadedOn: ofCards('H'),
  verified: ofCards('I'),
  licences: on(sheetNames.ledger, licenceTable(defaultPlaces)),
  loads: on(sheetNames.ledger, loadTable(defaultPlaces)),
} as const;
