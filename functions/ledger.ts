// Sheet functions of the data ledger: how every card stands on a day, and the fleet on some days as a matrix.
import { civilDateFromDayNumber, dayNumber, isoDate } from '../core/civilDate';
import { CoreError } from '../core/errors';
import { cardStandings, fleetThroughDays, type CardStanding, type Finding, type LedgerCard, type WallClock } from '../core/ledger';
import { laying, result, type ResultCell } from './registry/declaration';
import { column, optional, unreadableMeansUndefined } from './registry/modifiers';
import { date } from './registry/readDate';
import { cardAircraft, cardChangesAt, cardDatabase, cardLoaded, cardSeries, licenceRows } from './registry/readLedger';
import { number } from './registry/readNumber';
import { sheetDay } from './registry/readSheetDay';
import { yesNo } from './registry/readText';

const subject = 'Data ledger';
const sources = ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'] as const;
const zoneNotes =
  'Data changes at a moment of UTC: 0000Z by the ICAO annex, 0901Z for US products (from memory). Days and times here are those of the spreadsheet\'s own time zone, so west of Greenwich the change may fall on the day before the effective date.';

const clockText = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
const dayText = (day: number): string => isoDate(civilDateFromDayNumber(day));
const momentText = ({ day, minutes }: WallClock): string => `${dayText(day)} ${clockText(minutes)}`;

function findingText(finding: Finding): string {
  switch (finding.kind) {
    case 'no-series': return 'series missing or not one that can be read';
    case 'no-date': return 'effective date missing or not a date';
    case 'no-time': return 'time of the change cannot be read';
    case 'off-series': return 'no date of this series: look at the card';
    case 'ahead': return `loaded ahead, in force from ${momentText(finding.at)}`;
    case 'begins-today': return `in force only from ${clockText(finding.at.minutes)} on this day`;
    case 'out-of-date': return 'out of date';
    case 'ends-today': return `out of date from ${clockText(finding.at.minutes)} on this day`;
    case 'lapses-soon': return 'lapses soon';
    case 'disagrees': return 'differs from another card of this database';
    case 'not-comparable': return 'cannot be compared: aircraft, database or another date missing';
    case 'not-verified': return 'not verified';
    case 'licence-ended': return `licence ended ${dayText(finding.day)}`;
    case 'licence-ends': return `licence ends ${dayText(finding.day)}`;
    case 'licence-end-unknown': return 'licence end not written down';
  }
}

const standingRow = ({ verdict, daysLeft, lapses, findings }: CardStanding): ResultCell[] => [
  verdict,
  daysLeft ?? '',
  lapses ?? '',
  findings.length === 0 ? 'in force' : findings.map(findingText).join('; '),
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
    verified: column(unreadableMeansUndefined(yesNo('Whether somebody looked at the card after loading. Blank is no.'))),
    as_of: sheetDay('The day in question.'),
    licences: optional(licenceRows('Rows of aircraft (or "all"), database, last day of the licence; further columns may follow. A card without a row here is judged without a licence.'), [], 'no licences'),
    warn_days: optional(number({ unit: 'days', whole: true, minimum: 0, maximum: 366, help: 'CHECK when no more than this many days are left.' }), 5, '5 days'),
    changes_at_z: cardChangesAt,
  },
  results: {
    verdict: result('', 'OK, CHECK, NO, UNKNOWN: the worst of what is said in the reason. A blank row stays blank.'),
    days_left: result('days', 'Days from as_of to the day on which the card goes out of date; zero or less when it has.'),
    out_of_date_from: result('date and time', 'The moment at which the loaded data is out of date, in the time zone of the spreadsheet.'),
    reason: result('', 'Everything there is to say of the card.'),
  },
  sources,
  notes: `${zoneNotes} NO: out of date, or another card of the same database in the same aircraft holds another date. UNKNOWN: something is missing, the date is none of its series, or the card is loaded ahead, since nothing then tells what serves until that moment. CHECK: in force for a part of the day only, about to lapse, not verified, or its licence has ended, ends within 30 days or has no end written down. A cell that cannot be read spoils only its own card. What counts for which word is common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['North'], ['South'], ['']],
        [['navigation'], ['obstacles'], ['navigation'], ['']],
        [['28-day'], ['56-day'], ['28-day'], ['']],
        [['2024-10-31'], ['2024-10-31'], ['2024-10-03'], ['']],
        [['yes'], ['no'], ['yes'], ['']],
        '2024-11-11',
        [['all', 'navigation', '2025-06-30']],
        5,
        '0000Z',
      ],
      gives: [
        ['OK', 17, '2024-11-28', 'in force'],
        ['CHECK', 45, '2024-12-26', 'not verified'],
        ['NO', -11, '2024-10-31', 'out of date'],
        ['', '', '', ''],
      ],
      source: 'Dates from Airservices Australia, cycle identifiers 2024, and FAA cut-off dates; days by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_STATUS(A2:A5, B2:B5, C2:C5, D2:D5, E2:E5, "2024-11-11", G2:I2)',
    },
  ],
  compute: (given, { rows, height }) => {
    const { day, wallClock } = given.as_of;
    const cards = given.aircraft.map((aircraft, index): LedgerCard => {
      const loaded = given.loaded_effective[index];
      return {
        aircraft,
        database: given.database[index],
        series: given.series[index],
        loadedDay: loaded === undefined ? undefined : dayNumber(loaded),
        changesAtMinutes: given.changes_at_z[index],
        verified: given.verified[index],
      };
    });
    const cells = Array.from({ length: height }, (): ResultCell[] => ['', '', '', '']);
    cardStandings(cards, given.licences, day, given.warn_days, wallClock).forEach((standing, index) => (cells[(rows[index] ?? 1) - 1] = standingRow(standing)));
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
    all: result('', 'The worst of the aircraft\'s cards.'),
    series: result('', 'One column for each series, shortest first: the worst of the cards of that series, blank where there is none.'),
  },
  sources,
  notes: `${zoneNotes} OK when in force through every day, CHECK when only for a part of the first or of the last day, else NO; UNKNOWN where nothing is known of a card. A card without a readable aircraft stands under "no aircraft". Verification, licences and disagreements are not looked at here: see LEDGER_STATUS. Common practice, no source.`,
  examples: [
    {
      arguments: [[['North'], ['North'], ['South']], [['28-day'], ['56-day'], ['28-day']], [['2024-10-31'], ['2024-10-31'], ['2024-10-03']], '2024-11-20', '2024-11-27'],
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
    if (lastDay < firstDay) throw new CoreError('days-out-of-order', { earlier: 'firstDay', later: 'lastDay', earlierDay: firstDay, laterDay: lastDay });
    const cards = given.aircraft.map((aircraft, index) => {
      const loaded = given.loaded_effective[index];
      return {
        aircraft: aircraft ?? { name: 'no aircraft', key: '' },
        database: undefined,
        series: given.series[index],
        loadedDay: loaded === undefined ? undefined : dayNumber(loaded),
        changesAtMinutes: given.changes_at_z[index],
        verified: undefined,
      };
    });
    const { series, rows } = fleetThroughDays(cards, firstDay, lastDay, wallClock);
    return [['aircraft', 'all', ...series], ...rows.map(({ aircraft, verdict, bySeries }) => [aircraft.name, verdict, ...bySeries.map((cell) => cell ?? '')])];
  },
});
