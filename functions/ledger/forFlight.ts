// The sheet function by which a trip hears the data ledger: the cards of the aircraft flown, through every day of the trip.
import { dayNumber } from '../../core/basics/civilDate';
import { tripDays, type TripDays } from '../../core/basics/flightRows';
import { cardsForFlight, type FlightCard } from '../../core/ledger/cardsForFlight';
import { isInUse } from '../../core/ledger/series';
import type { Finding } from '../../core/ledger/ledgerCard';
import { laying } from '../registry/declaration';
import { isBlank, type CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import { dayInWords } from '../registry/dayWords';
import { flightResults, layFlightRows, pastRows, type WordedRow } from '../registry/flightRows';
import { date } from '../registry/readDate';
import { sheetDay } from '../registry/readSheetDay';
import { namedText } from '../registry/readText';
import { clockText, findingText, momentText, zoneNotes } from './findingWords';
import { cardAircraft, cardBox, cardChangesAt, cardDatabase, cardLoaded, cardLoadedOn, cardSeries, cardVerified, ledgerCards } from './readCards';
import { licenceRows, readable, type LicenceRow } from './readLicences';

/** As in LEDGER_STATUS, blank is 0000Z; here others must follow it, so it cannot be left out. */
const changesAt = { ...cardChangesAt, optional: undefined, read: unlessBlank };
function unlessBlank(raw: CellValue, dates: DateHost): number | undefined {
  return isBlank(raw) ? 0 : cardChangesAt.read(raw, dates);
}

/** Said of a trip where it is said of one day elsewhere. */
function textOf(finding: Finding): string {
  switch (finding.kind) {
    case 'out-of-date':
      return `out of date from ${momentText(finding.at, dayInWords)}`;
    case 'ends-today':
      return `out of date from ${clockText(finding.at.minutes)} on the last day of the trip`;
    case 'begins-today':
      return `in force only from ${clockText(finding.at.minutes)} on the first day of the trip`;
    case 'ahead':
      return `loaded ahead, in force only from ${momentText(finding.at, dayInWords)}`;
    default:
      return findingText(finding, dayInWords);
  }
}

function wordedRow({ card, findings, verdict, goodThroughDay }: FlightCard): WordedRow {
  const whose = card.aircraft === undefined ? ['no aircraft is written beside this card'] : [];
  return {
    item: card.database?.name ?? 'card without a database',
    verdict: card.aircraft === undefined ? 'UNKNOWN' : verdict,
    goodThroughDay,
    why: [...whose, ...(verdict === 'OK' ? ['in force'] : findings.map(textOf))].join(', '),
  };
}

/** A licence of which aircraft or database cannot be read might be that of a card here. */
const unreadLicences = (licences: readonly LicenceRow[]): WordedRow[] =>
  licences.flatMap(({ row, licence, slips }) =>
    licence === undefined
      ? [{ item: 'licences', verdict: 'CHECK' as const, goodThroughDay: undefined, why: `licence in row ${row} of the list: ${slips.join(', ')}` }]
      : [],
  );

export const LEDGER_FOR_FLIGHT = laying({
  name: 'LEDGER_FOR_FLIGHT',
  subject: 'Data ledger',
  summary: 'The cards of the aircraft flown, judged through every day of the trip, in one call.',
  parameters: {
    aircraft: cardAircraft,
    database: cardDatabase,
    series: cardSeries,
    loaded_effective: cardLoaded,
    verified: cardVerified,
    licences: licenceRows('Rows of aircraft (or "all"), database, last day of the licence; further columns may follow. Blank where there are none.'),
    changes_at_z: changesAt,
    flown: namedText({ mustBe: 'the name of the aircraft of this flight', help: 'The aircraft of this flight; only its cards are judged.' }),
    first_day: sheetDay('The first day of the trip.'),
    last_day: date('The last day of the trip, itself included; not before the first.'),
    as_of: date('The day of the list. Nothing after it has been loaded or verified.'),
    loaded_on: cardLoadedOn,
    box: cardBox,
  },
  results: flightResults,
  sources: ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'],
  notes: `${zoneNotes} NO: out of date on a day of the trip. UNKNOWN: something of the card is missing or cannot be read, it is loaded ahead of the first day, no card is listed for this aircraft, or the last day is before as_of. A card without an aircraft is UNKNOWN too, since nobody knows whose it is. CHECK: in force for a part of the first or of the last day only, not verified on the day of its load or later, differs from another card of its database in this aircraft, its licence ends before the last day or has no end written down, or, where the list says what each covers, none covers it on the first day, the last day and the day of its cycle. good_through is the last day wholly in force. Common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['North'], ['South']],
        [['navigation'], ['obstacles'], ['navigation']],
        [['28-day'], ['56-day'], ['28-day']],
        [['2024-10-31'], ['2024-10-31'], ['2024-10-03']],
        [['2024-10-31'], ['no'], ['2024-10-02']],
        [['all', 'navigation', '2025-06-30']],
        [['0000Z'], ['0000Z'], ['0000Z']],
        'North',
        '2024-11-27',
        '2024-11-28',
        '2024-11-11',
        [['2024-10-30'], ['2024-10-30'], ['2024-10-02']],
      ],
      gives: [
        ['all', 'NO', '2024-11-27', 'navigation: out of date from 28 November 2024 00:00; obstacles: not verified'],
        ['navigation', 'NO', '2024-11-27', 'out of date from 28 November 2024 00:00'],
        ['obstacles', 'CHECK', '2024-12-25', 'not verified'],
      ],
      source: 'Dates from Airservices Australia, cycle identifiers 2024, and FAA cut-off dates; days by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_FOR_FLIGHT(A2:A4, B2:B4, C2:C4, D2:D4, E2:E4, H2:J2, G2:G4, "North", "2024-11-27", "2024-11-28", "2024-11-11", F2:F4)',
    },
  ],
  compute: (given) => {
    const { day: firstDay, wallClock } = given.first_day;
    const trip: TripDays = tripDays(firstDay, dayNumber(given.last_day), dayNumber(given.as_of));
    const cards = ledgerCards(given).filter(
      ({ aircraft, series }) => isInUse(series) && (aircraft === undefined || aircraft.key === given.flown.key),
    );
    const none: WordedRow[] = cards.some(({ aircraft }) => aircraft !== undefined)
      ? []
      : [{ item: 'cards', verdict: 'UNKNOWN', goodThroughDay: undefined, why: `no card is listed for ${given.flown.name}` }];
    const rows = cardsForFlight(cards, readable(given.licences), trip, wallClock).map(wordedRow);
    return layFlightRows([...pastRows(trip), ...none, ...rows, ...unreadLicences(given.licences)]);
  },
});
