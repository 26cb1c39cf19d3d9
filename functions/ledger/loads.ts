// Sheet function of the history of loads: what is on every card of the fleet, and how it stands on a day.
import { civilDateFromDayNumber } from '../../core/basics/civilDate';
import { loadedOn, type Loaded } from '../../core/ledger/loads';
import { isInUse } from '../../core/ledger/series';
import type { LedgerCard } from '../../core/ledger/ledgerCard';
import { cardStandings, type CardStanding } from '../../core/ledger/states';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsOfRows } from '../registry/headings';
import { sheetDay } from '../registry/readSheetDay';
import { findingText, isoText, zoneNotes } from './findingWords';
import { cardAircraft, cardChangesAt, cardDatabase, cardLicences, cardSeries, cardUnit, cardWarnDays } from './readCards';
import { readable } from './readLicences';
import { loadRows } from './readLoads';

/** Shown as it is written down, or left blank. */
const dayCell = (day: number | undefined): ResultCell => (day === undefined ? '' : civilDateFromDayNumber(day));

function verifiedCell({ verified }: Loaded): ResultCell {
  if (verified === 'no') return '';
  return verified === 'without a day' ? 'yes' : dayCell(verified.day);
}

const loadsHelp =
  'The history: one line for each load, rows of aircraft, box or card, database, effective date of the data, loaded on, verified on, by, failed (blank or no where it went well); further columns may follow. Lines stay when the next load is written down below them.';
export const cardLoads = loadRows(loadsHelp);

function cardRow(loaded: Loaded, { verdict, daysLeft, lapses, findings }: CardStanding, series: LedgerCard['series']): ResultCell[] {
  const said = findings.map((finding) => findingText(finding, isoText));
  const inForce = series !== undefined && 'kind' in series && series.kind !== 'listed' ? `in force, ${series.name}` : 'in force';
  return [
    dayCell(loaded.loadedDay),
    dayCell(typeof loaded.loadedOnDay === 'number' ? loaded.loadedOnDay : undefined),
    verifiedCell(loaded),
    verdict,
    daysLeft ?? '',
    lapses ?? '',
    said.length === 0 ? inForce : said.join('; '),
  ];
}

const notInUse: readonly ResultCell[] = ['', '', '', '', '', '', 'not in use'];

export const LEDGER_CARDS = laying({
  name: 'LEDGER_CARDS',
  subject: 'Data ledger',
  summary: 'What is on every card by the history of its loads, and how it stands on a day, with every reason, in one call.',
  parameters: {
    aircraft: cardAircraft,
    box: cardUnit,
    database: cardDatabase,
    series: cardSeries,
    loads: cardLoads,
    as_of: sheetDay('The day in question. A load on a later day is refused.'),
    licences: cardLicences,
    warn_days: cardWarnDays,
    changes_at_z: cardChangesAt,
    headings: headingsOfRows,
  },
  results: {
    effective: result('date', 'Effective date of the data on the card; blank where the history does not tell.'),
    loaded_on: result('date', 'The day of that load.'),
    verified: result('date', 'The day on which somebody looked at the card after its last load, a failed one too.'),
    verdict: result('', 'OK, CHECK, NO, UNKNOWN: the worst of what is said in the reason; blank for a card not in use.'),
    days_left: result('days', 'Days from as_of to the day on which the card goes out of date; zero or less when it has.'),
    out_of_date_from: result('date and time', 'The moment at which the loaded data is out of date, in the time zone of the spreadsheet.'),
    reason: result('', 'Everything there is to say of the card.'),
  },
  sources: ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'],
  notes: `${zoneNotes} The words are those of LEDGER_STATUS. The last load that did not fail is what is on the card; loads of one day follow one another as their lines stand. UNKNOWN too: no load, a load on a day after as_of, a line without a date that can be read, or two cards of the same three names. CHECK after a load that failed, until somebody has looked at the card on that day or later. A series "as issued" or "no end" never goes out of date by a calendar; behind the last date of a list nothing is known. Common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['North'], ['South'], ['South']],
        [['left'], ['left'], ['panel'], ['tablet']],
        [['navigation'], ['terrain'], ['navigation'], ['charts']],
        [['28-day'], ['as issued'], ['28-day'], ['not in use']],
        [
          ['North', 'left', 'navigation', '2024-10-03', '2024-10-02', '2024-10-02', 'Ada', ''],
          ['North', 'left', 'navigation', '2024-10-31', '2024-10-30', '2024-10-30', 'Ada', ''],
          ['North', 'left', 'terrain', '2024-08-20', '2024-09-01', '2024-09-01', 'Ada', ''],
          ['South', 'panel', 'navigation', '2024-10-03', '2024-10-02', '2024-10-02', 'Bo', ''],
          ['South', 'panel', 'navigation', '2024-10-31', '2024-11-02', '', 'Bo', 'yes'],
        ],
        '2024-11-11',
      ],
      gives: [
        ['2024-10-31', '2024-10-30', '2024-10-30', 'OK', 17, '2024-11-28', 'in force'],
        ['2024-08-20', '2024-09-01', '2024-09-01', 'OK', '', '', 'in force, as issued'],
        [
          ...['2024-10-03', '2024-10-02', '', 'NO', -11, '2024-10-31'],
          'out of date; load of 2024-11-02 failed, the card is as it was and nobody has looked at it since',
        ],
        ['', '', '', '', '', '', 'not in use'],
      ],
      source: 'Dates from Airservices Australia, cycle identifiers 2024; the history by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_CARDS(A2:A5, B2:B5, C2:C5, D2:D5, H2:O6, "2024-11-11")',
    },
  ],
  compute: (given, { rows, height }) => {
    const { day, wallClock } = given.as_of;
    const named = given.aircraft.map((aircraft, index) => ({ aircraft, unit: given.box[index], database: given.database[index] }));
    const loaded = loadedOn(named, given.loads, day);
    const inUse = named.map((_, index) => index).filter((index) => isInUse(given.series[index]));
    const cards = inUse.map((index): LedgerCard => cardOf(given, index, loaded[index]));
    const cells = Array.from({ length: height }, (): ResultCell[] => ['', '', '', '', '', '', '']);
    rows.forEach((row, index) => {
      if (!isInUse(given.series[index])) cells[row - 1] = [...notInUse];
    });
    cardStandings(cards, readable(given.licences), day, given.warn_days, wallClock).forEach((standing, place) => {
      const index = inUse[place] ?? 0;
      const state = loaded[index];
      if (state !== undefined) cells[(rows[index] ?? 1) - 1] = cardRow(state, standing, given.series[index]);
    });
    // Blank rows below the last card would be written anew at each calculation.
    return cells.slice(0, rows[rows.length - 1] ?? 1);
  },
});

interface CardColumns {
  readonly box: readonly LedgerCard['unit'][];
  readonly aircraft: readonly LedgerCard['aircraft'][];
  readonly database: readonly LedgerCard['database'][];
  readonly series: readonly LedgerCard['series'][];
  readonly changes_at_z: readonly (number | undefined)[];
}

/** A card in the row of these columns, with what its history tells. */
export function cardOf({ aircraft, box, database, series, changes_at_z }: CardColumns, index: number, loaded: Loaded | undefined): LedgerCard {
  return {
    aircraft: aircraft[index],
    unit: box[index],
    database: database[index],
    series: series[index],
    loadedDay: loaded?.loadedDay,
    changesAtMinutes: changes_at_z[index],
    verified: loaded?.verified ?? 'no',
    loadedOnDay: loaded?.loadedOnDay ?? 'missing',
    told: loaded?.told ?? [],
  };
}
