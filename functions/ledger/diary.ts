// Sheet function of the ledger's diary: what must be loaded in which aircraft by when, and which licence ends, with its cost.
import { dayMonthsLater } from '../../core/basics/calendarMonths';
import { civilDateFromDayNumber, dayNumber } from '../../core/basics/civilDate';
import { isInUse } from '../../core/ledger/series';
import { diary, type DiaryCard, type DiaryLoad, type DiaryRenewal } from '../../core/ledger/diary';
import type { DiaryDoing } from '../facts';
import { laying, result, type ResultCell } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { headingsAbove } from '../registry/headings';
import { cardAircraft, cardChangesAt, cardDatabase, cardSeries } from './readCards';
import { licenceRows, readable, type LicenceRow } from './readLicences';
import { monthsAhead } from './readSeries';
import { visitText } from './visitWords';
import { zuluText } from '../registry/zuluText';

type DiaryRow = [DiaryDoing, ...ResultCell[]];

const loadRow = (load: DiaryLoad): DiaryRow => [
  'load',
  load.instant,
  civilDateFromDayNumber(load.day),
  zuluText(load.changesAtMinutes),
  '',
  '',
  visitText(load),
];

function renewalRow({ day, licence }: DiaryRenewal, fromDay: number): DiaryRow {
  const { aircraft, database, cost, currency } = licence;
  const ended = day < fromDay ? ', licence has ended' : '';
  const unknownCost = cost === undefined || currency === undefined ? ', cost not written down' : '';
  return [
    'renew',
    '',
    civilDateFromDayNumber(day),
    '',
    cost === undefined || currency === undefined ? '' : cost,
    currency ?? '',
    `${database.name} (${aircraft.name})${ended}${unknownCost}`,
  ];
}

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** Named by its place in the list, by which the sheet finds the sentence again and shows it in the row of the licence. */
const licenceInRow = (row: number): string => `licence in row ${row} of the list`;

/** What this list cannot hold is said, never dropped. */
function lookRows(rows: readonly number[], licences: readonly LicenceRow[]): DiaryRow[] {
  const cards =
    rows.length === 0
      ? []
      : [
          `${plural(rows.length, 'card')} without a readable aircraft, database, series or time not in this list (${rows.length === 1 ? 'row' : 'rows'} ${rows.join(', ')} of the list)`,
        ];
  const unread = licences.flatMap(({ row, slips }) => (slips.length === 0 ? [] : [`${licenceInRow(row)}: ${slips.join('; ')}`]));
  const withoutEnd = readable(licences).filter(({ endDay }) => endDay === undefined).length;
  const ends = withoutEnd === 0 ? [] : [`${plural(withoutEnd, 'licence')} without an end not in this list`];
  return [...cards, ...unread, ...ends].map((text): DiaryRow => ['look', '', '', '', '', '', text]);
}

export const LEDGER_DIARY = laying({
  name: 'LEDGER_DIARY',
  subject: 'Data ledger',
  summary:
    'What comes up in the ledger, in the order of its days: which data must be loaded in which aircraft, and which licence ends, with its cost.',
  parameters: {
    aircraft: cardAircraft,
    database: cardDatabase,
    series: cardSeries,
    from_date: date('The first day to look at; a change on that day is listed, and a licence that ended before it too.'),
    months: monthsAhead,
    licences: optional(
      licenceRows(
        'Rows of aircraft (or "all"), database, last day of the licence, renewed every so many months, cost, currency; further columns may follow.',
      ),
      [],
      'no licences',
    ),
    changes_at_z: cardChangesAt,
    headings: headingsAbove,
  },
  results: {
    do: result('', 'load, renew; look for what is not in this list.'),
    in_force_from: result(
      'date and time',
      'The moment at which the new data comes into force, in the time zone of the spreadsheet: load before the first flight after it, not before it.',
    ),
    date: result('date', 'Effective date of the data (a date of UTC), or the last day of the licence.'),
    at_z: result('UTC', 'Time of the change on that date.'),
    cost: result('currency', 'Cost of the renewal.'),
    currency: result('', 'Its currency.'),
    what: result('', 'The series with its cycle, and which database in which aircraft.'),
  },
  sources: ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'],
  notes:
    'Many boxes hold two cycles and change over by themselves; then the next one may be loaded ahead, as its manual says. A licence renewed every so many months is listed again at each term, at the cost of today. A cell of a licence that cannot be read is said in a row to look at, and spoils nothing else. Common practice, no source.',
  examples: [
    {
      arguments: [
        [['North'], ['South']],
        [['navigation'], ['navigation']],
        [['28-day'], ['28-day']],
        '2024-11-11',
        2,
        [['North', 'navigation', '2024-12-01', 12, 300, 'EUR']],
        '0901Z',
      ],
      gives: [
        ['load', '2024-11-28', '2024-11-28', '0901Z', '', '', '28-day, cycle 2412: navigation (North, South)'],
        ['renew', '', '2024-12-01', '', 300, 'EUR', 'navigation (North)'],
        ['load', '2024-12-26', '2024-12-26', '0901Z', '', '', '28-day, cycle 2413: navigation (North, South)'],
      ],
      source: 'Airservices Australia, cycle identifiers 2024, and FAA cut-off dates, by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_DIARY(A2:A3, B2:B3, C2:C3, "2024-11-11", 2, G2:L2, "0901Z")',
    },
  ],
  compute: ({ aircraft, database, series, from_date, months, licences, changes_at_z }, { rows }) => {
    const fromDay = dayNumber(from_date);
    const cards: DiaryCard[] = [];
    const unreadable: number[] = [];
    aircraft.forEach((name, index) => {
      const [data, cycle, minutes] = [database[index], series[index], changes_at_z[index]];
      if (!isInUse(cycle)) return;
      if (name === undefined || data === undefined || cycle === undefined || minutes === undefined) unreadable.push(rows[index] ?? index + 1);
      else cards.push({ aircraft: name, database: data, series: cycle, changesAtMinutes: minutes });
    });
    const entries = diary(cards, readable(licences), fromDay, dayMonthsLater(fromDay, months));
    const list = [
      ...lookRows(unreadable, licences),
      ...entries.map((entry) => (entry.kind === 'load' ? loadRow(entry) : renewalRow(entry, fromDay))),
    ];
    return list.length === 0 ? [['', '', '', '', '', '', 'nothing comes up in these months']] : list;
  },
});
