// Sheet functions of the data ledger: how every card stands on a day, and the fleet on some days as a matrix.
import { dayNumber } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { fleetThroughDays } from '../../core/ledger/fleet';
import { isInUse } from '../../core/ledger/series';
import { cardStandings, type CardStanding } from '../../core/ledger/states';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsOfRows } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { findingText, isoText, zoneNotes } from './findingWords';
import {
  cardAircraft,
  cardBox,
  cardChangesAt,
  cardDatabase,
  cardLicences,
  cardLoaded,
  cardLoadedOn,
  cardSeries,
  cardVerified,
  cardWarnDays,
  ledgerCards,
} from './readCards';
import { readable } from './readLicences';
import { sheetDay } from '../registry/readSheetDay';

const subject = 'Data ledger';
const sources = ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'] as const;
const standingRow = ({ verdict, daysLeft, lapses, findings }: CardStanding): ResultCell[] => [
  verdict,
  daysLeft ?? '',
  lapses ?? '',
  findings.length === 0 ? 'in force' : findings.map((finding) => findingText(finding, isoText)).join('; '),
];

export const LEDGER_STATUS = laying({
  name: 'LEDGER_STATUS',
  subject,
  summary: 'How every card of the fleet stands on a day, with the moment it goes out of date and every reason, in one call.',
  parameters: {
    aircraft: cardAircraft,
    database: cardDatabase,
    series: cardSeries,
    loaded_effective: cardLoaded,
    verified: cardVerified,
    as_of: sheetDay('The day in question.'),
    licences: cardLicences,
    warn_days: cardWarnDays,
    changes_at_z: cardChangesAt,
    loaded_on: cardLoadedOn,
    headings: headingsOfRows,
    box: cardBox,
  },
  results: {
    verdict: result('', 'OK, CHECK, NO, UNKNOWN: the worst of what is said in the reason. A blank row stays blank.'),
    days_left: result('days', 'Days from as_of to the day on which the card goes out of date; zero or less when it has.'),
    out_of_date_from: result('date and time', 'The moment at which the loaded data is out of date, in the time zone of the spreadsheet.'),
    reason: result('', 'Everything there is to say of the card.'),
  },
  sources,
  notes: `${zoneNotes} NO: out of date, or another card of the same database in the same aircraft holds another date. UNKNOWN: something is missing, the date is none of its series, or the card is loaded ahead, since nothing then tells what serves until that moment. UNKNOWN too: loaded on a day after as_of. CHECK: in force for a part of the day only, about to lapse, not verified on the day of its load or later, loaded more than a cycle before its data comes into force (that is the day of another load), or its licence has ended, ends within 30 days or has no end written down; where the list says what each covers, no licence covers it today or held on the day of its cycle. A cell that cannot be read spoils only its own card. What counts for which word is common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['North'], ['South'], ['']],
        [['navigation'], ['obstacles'], ['navigation'], ['']],
        [['28-day'], ['56-day'], ['28-day'], ['']],
        [['2024-10-31'], ['2024-10-31'], ['2024-10-03'], ['']],
        [['2024-10-31'], ['no'], ['2024-10-02'], ['']],
        '2024-11-11',
        [['all', 'navigation', '2025-06-30']],
        5,
        '0000Z',
        [['2024-10-30'], ['2024-10-30'], ['2024-10-02'], ['']],
      ],
      gives: [
        ['OK', 17, '2024-11-28', 'in force'],
        ['CHECK', 45, '2024-12-26', 'not verified'],
        ['NO', -11, '2024-10-31', 'out of date'],
        ['', '', '', ''],
      ],
      source: 'Dates from Airservices Australia, cycle identifiers 2024, and FAA cut-off dates; days by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_STATUS(A2:A5, B2:B5, C2:C5, D2:D5, E2:E5, "2024-11-11", H2:J2, 5, "0000Z", F2:F5)',
    },
  ],
  compute: (given, { rows, height }) => {
    const { day, wallClock } = given.as_of;
    const cells = Array.from({ length: height }, (): ResultCell[] => ['', '', '', '']);
    const inUse = rows.filter((_, index) => isInUse(given.series[index]));
    rows.forEach((row) => (cells[row - 1] = ['', '', '', 'not in use']));
    const cards = ledgerCards(given).filter(({ series }) => isInUse(series));
    cardStandings(cards, readable(given.licences), day, given.warn_days, wallClock).forEach(
      (standing, index) => (cells[(inUse[index] ?? 1) - 1] = standingRow(standing)),
    );
    return cells;
  },
});

export const LEDGER_FLEET = laying({
  name: 'LEDGER_FLEET',
  subject,
  summary: 'The fleet on a day, or on the days of a trip, as a matrix: one row an aircraft, one column a series of data.',
  parameters: {
    aircraft: cardAircraft,
    series: cardSeries,
    loaded_effective: cardLoaded,
    first_day: sheetDay('The day in question, or the first day of the trip.'),
    last_day: optional(date('The last day of the trip, itself included; not before the first.'), undefined, 'first_day alone'),
    changes_at_z: cardChangesAt,
  },
  results: {
    aircraft: result('', 'The aircraft; the first row holds the headings.'),
    all: result('', "The worst of the aircraft's cards."),
    series: result('', 'One column for each series, shortest first: the worst of the cards of that series, blank where there is none.'),
  },
  sources,
  notes: `${zoneNotes} OK when in force through every day, CHECK when only for a part of the first or of the last day, else NO; UNKNOWN where nothing is known of a card. A card without a readable aircraft stands under "no aircraft". Verification, licences and disagreements are not looked at here: see LEDGER_STATUS. Common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['North'], ['South']],
        [['28-day'], ['56-day'], ['28-day']],
        [['2024-10-31'], ['2024-10-31'], ['2024-10-03']],
        '2024-11-20',
        '2024-11-27',
      ],
      gives: [
        ['aircraft', 'all', '28-day', '56-day'],
        ['North', 'OK', 'OK', 'OK'],
        ['South', 'NO', 'NO', ''],
      ],
      source: 'Dates from Airservices Australia, cycle identifiers 2024, and FAA cut-off dates, by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_FLEET(A2:A4, C2:C4, D2:D4, "2024-11-20", "2024-11-27")',
    },
  ],
  compute: (given) => {
    const { day: firstDay, wallClock } = given.first_day;
    const lastDay = given.last_day === undefined ? firstDay : dayNumber(given.last_day);
    if (lastDay < firstDay)
      throw new CoreError('days-out-of-order', { earlier: 'firstDay', later: 'lastDay', earlierDay: firstDay, laterDay: lastDay });
    const cards = given.aircraft.flatMap((aircraft, index) => {
      if (!isInUse(given.series[index])) return [];
      const loaded = given.loaded_effective[index];
      return {
        aircraft: aircraft ?? { name: 'no aircraft', key: '' },
        database: undefined,
        series: given.series[index],
        loadedDay: loaded === undefined ? undefined : dayNumber(loaded),
        changesAtMinutes: given.changes_at_z[index],
        verified: 'no' as const,
        loadedOnDay: 'not asked' as const,
      };
    });
    const { series, rows } = fleetThroughDays(cards, firstDay, lastDay, wallClock);
    return [
      ['aircraft', 'all', ...series],
      ...rows.map(({ aircraft, verdict, bySeries }) => [aircraft.name, verdict, ...bySeries.map((cell) => cell ?? '')]),
    ];
  },
});
