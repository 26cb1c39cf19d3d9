// Where the sections of the Currency log stand, each a block of rows below the one before, and what formulas and the trip read of them. The flights
// come last, so that they can grow.
import { area, on } from '../build';
import { fieldList } from '../fields/sheet';
import { listBelow, type List } from '../lists';
import { sheetNames } from '../places';

/** How many rows each list has room for; `flights` is how far down the log is read, `tinted` how many of its rows are tinted. */
export interface CurrencyRoom {
  readonly papers: number;
  readonly ownRules: number;
  readonly pilot: number;
  readonly items: number;
  readonly flights: number;
  readonly tinted: number;
}

export interface CurrencyPlaces {
  readonly papers: List;
  readonly ownRules: List;
  readonly pilot: List;
  readonly items: List;
  readonly flights: List;
}

export const usualRoom: CurrencyRoom = { papers: 14, ownRules: 8, pilot: 36, items: 24, flights: 1000, tinted: 60 };

export const summaryEnds = 7;
export const rulesCell = 'B5';
export const rules = '$B$5';
export const pilotCell = 'B6';
export const pilotNamed = '$B$6';

export function placesFor(room: CurrencyRoom): CurrencyPlaces {
  const papers = listBelow(summaryEnds, room.papers);
  const ownRules = listBelow(papers.last, room.ownRules);
  const pilot = listBelow(ownRules.last, room.pilot);
  const items = listBelow(pilot.last, room.items);
  return { papers, ownRules, pilot, items, flights: listBelow(items.last, room.flights) };
}

/** From E to N, the gaps among them. */
export const fleetTable = ({ papers }: CurrencyPlaces): string => `$E$${papers.head}:$N$${papers.last}`;

/** From A to M, the gaps among them. */
export const ownRulesTable = ({ ownRules }: CurrencyPlaces): string => `$A$${ownRules.head}:$M$${ownRules.last}`;

/** From A to T, the gaps and the remark among them. */
export const logTable = ({ flights }: CurrencyPlaces): string => `$A$${flights.head}:$T$${flights.last}`;
/** Where the places of the flights lie. */
export const placesTable = on(sheetNames.fields, area(fieldList.head, 1, fieldList.last + 1, 6));

const usualPlaces = placesFor(usualRoom);
const onCurrency = (range: string): string => on(sheetNames.currency, range);
/** What the trip reads: the log, the fleet and the items with their heads, the papers without; and whose rules. */
export const currencyTables = {
  log: onCurrency(logTable(usualPlaces)),
  fleet: onCurrency(fleetTable(usualPlaces)),
  papers: onCurrency(`$A$${usualPlaces.papers.first}:$C$${usualPlaces.papers.last}`),
  ownRules: onCurrency(ownRulesTable(usualPlaces)),
  items: onCurrency(`$A$${usualPlaces.items.head}:$H$${usualPlaces.items.last}`),
} as const;
export const rulesChosen = onCurrency(rulesCell);
export const pilotOfLog = onCurrency(pilotCell);
export const placesOfLog = placesTable;
