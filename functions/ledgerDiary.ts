// Sheet function of the ledger's diary: what must be loaded in which aircraft by when, and which licence ends, with its cost.
import { dayMonthsLater } from '../core/calendarMonths';
import { civilDateFromDayNumber, dayNumber } from '../core/civilDate';
import { diary, type DiaryCard, type DiaryLoad, type DiaryRenewal } from '../core/ledgerDiary';
import { laying, result, type ResultCell } from './registry/declaration';
import { optional } from './registry/modifiers';
import { date } from './registry/readDate';
import { cardAircraft, cardChangesAt, cardDatabase, cardSeries, licenceRows } from './registry/readLedger';
import { number } from './registry/readNumber';
import { zuluText } from './registry/zuluText';

function changesText({ changes }: DiaryLoad): string {
  return changes
    .map(({ series, identifier, databases }) => {
      const what = databases.map(({ database, aircraft }) => `${database.name} (${aircraft.map(({ name }) => name).join(', ')})`).join(', ');
      return `${series}${identifier === '' ? '' : `, cycle ${identifier}`}: ${what}`;
    })
    .join('; ');
}

const loadRow = (load: DiaryLoad): ResultCell[] => ['load', load.instant, civilDateFromDayNumber(load.day), zuluText(load.changesAtMinutes), '', '', changesText(load)];

function renewalRow({ day, licence }: DiaryRenewal, fromDay: number): ResultCell[] {
  const { aircraft, database, cost, currency } = licence;
  const ended = day < fromDay ? ', licence has ended' : '';
  const unknownCost = cost === undefined || currency === undefined ? ', cost not written down' : '';
  return ['renew', '', civilDateFromDayNumber(day), '', cost === undefined || currency === undefined ? '' : cost, currency ?? '', `${database.name} (${aircraft.name})${ended}${unknownCost}`];
}

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** What this list cannot hold is said, never dropped. */
function lookRows(rows: readonly number[], withoutEnd: number): ResultCell[][] {
  const cards = rows.length === 0 ? [] : [`${plural(rows.length, 'card')} without a readable aircraft, database, series or time not in this list (${rows.length === 1 ? 'row' : 'rows'} ${rows.join(', ')} of the list)`];
  const licences = withoutEnd === 0 ? [] : [`${plural(withoutEnd, 'licence')} without an end not in this list`];
  return [...cards, ...licences].map((text) => ['look', '', '', '', '', '', text]);
}

export const LEDGER_DIARY = laying({
  name: 'LEDGER_DIARY',
  subject: 'Data ledger',
  summary: 'What comes up in the ledger, in the order of its days: which data must be loaded in which aircraft, and which licence ends, with its cost.',
  parameters: {
    aircraft: cardAircraft,
    database: cardDatabase,
    series: cardSeries,
    from_date: date('The first day to look at; a change on that day is listed, and a licence that ended before it too.'),
    months: number({ unit: 'months', whole: true, minimum: 1, maximum: 36, help: 'How many calendar months to look ahead; the same day of the last month is no longer listed.' }),
    licences: optional(licenceRows('Rows of aircraft (or "all"), database, last day of the licence, renewed every so many months, cost, currency; further columns may follow.'), [], 'no licences'),
    changes_at_z: cardChangesAt,
  },
  results: {
    do: result('', 'load, renew; look for what is not in this list.'),
    in_force_from: result('date and time', 'The moment at which the new data comes into force, in the time zone of the spreadsheet: load before the first flight after it, not before it.'),
    date: result('date', 'Effective date of the data (a date of UTC), or the last day of the licence.'),
    at_z: result('UTC', 'Time of the change on that date.'),
    cost: result('currency', 'Cost of the renewal.'),
    currency: result('', 'Its currency.'),
    what: result('', 'The series with its cycle, and which database in which aircraft.'),
  },
  sources: ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'],
  notes: 'Many boxes hold two cycles and change over by themselves; then the next one may be loaded ahead, as its manual says. A licence renewed every so many months is listed again at each term, at the cost of today. Common practice, no source.',
  examples: [
    {
      arguments: [[['North'], ['South']], [['navigation'], ['navigation']], [['28-day'], ['28-day']], '2024-11-11', 2, [['North', 'navigation', '2024-12-01', 12, 300, 'EUR']], '0901Z'],
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
      if (name === undefined || data === undefined || cycle === undefined || minutes === undefined) unreadable.push(rows[index] ?? index + 1);
      else cards.push({ aircraft: name, database: data, series: cycle, changesAtMinutes: minutes });
    });
    const entries = diary(cards, licences, fromDay, dayMonthsLater(fromDay, months));
    const list = [...lookRows(unreadable, licences.filter(({ endDay }) => endDay === undefined).length), ...entries.map((entry) => (entry.kind === 'load' ? loadRow(entry) : renewalRow(entry, fromDay)))];
    return list.length === 0 ? [['', '', '', '', '', '', 'nothing comes up in these months']] : list;
  },
});
