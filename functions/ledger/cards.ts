// Sheet functions of the cards in the aircraft: current or not, on a day and on a trip; who must go there, and when;
// and whether two cards agree.
import { dayMonthsLater } from '../../core/basics/calendarMonths';
import { cardAgreement, cardCovers, cardStatus, visits } from '../../core/ledger/cards';
import { civilDateFromDayNumber, dayNumber, type CivilDate } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { laying, mapping, result } from '../registry/declaration';
import { headingsOfRows } from '../registry/headings';
import { blankMeansUndefined, column, optional, unreadableMeansUndefined } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { cycleSeries, monthsAhead } from './readSeries';
import { plainWords, text } from '../registry/readText';

const subject = 'Data cycles';
const sources = ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'] as const;

const loaded = blankMeansUndefined(date('Effective date of the data on the card (not the day somebody loaded it). Blank where nothing is recorded.'));
const series = cycleSeries('How often this data changes, and on which days.');
const dayOrUndefined = (date: CivilDate | undefined): number | undefined => (date === undefined ? undefined : dayNumber(date));
const cellOfDay = (day: number | undefined): CivilDate | '' => (day === undefined ? '' : civilDateFromDayNumber(day));

const cardNotes =
  'Common practice, no source. Nothing recorded is UNKNOWN. So is a loaded date on which the series does not change, since it is probably mistyped: look at the card. On the effective day of the next cycle the old data is out of date.';

export const CYCLE_STATUS = mapping({
  name: 'CYCLE_STATUS',
  subject,
  summary: 'Whether the data on a card is current on a day, and how many days it has left.',
  parameters: {
    loaded_effective: loaded,
    series,
    as_of: date('The day in question.'),
    warn_days: optional(
      number({ unit: 'days', whole: true, minimum: 0, maximum: 366, help: 'CHECK when no more than this many days are left.' }),
      5,
      '5 days',
    ),
  },
  results: {
    verdict: result('', 'OK, CHECK when it lapses within warn_days, NO when out of date, UNKNOWN.'),
    next_effective: result('date', 'First effective date after the loaded one: the first day on which the card is out of date.'),
    days_left: result('days', 'Days from as_of to next_effective; zero or less when out of date.'),
  },
  sources,
  notes: `${cardNotes} A card loaded ahead of its effective date is UNKNOWN until that day, since nothing tells what serves until then.`,
  examples: [
    { arguments: ['2020-12-03', '28-day', '2020-12-10'], gives: [['OK', '2020-12-31', 21]], source: 'Polish AIS, AIRAC dates 2020; days by hand' },
    { arguments: ['2020-12-03', '28-day', '2020-12-30'], gives: [['CHECK', '2020-12-31', 1]], source: 'Polish AIS, AIRAC dates 2020; days by hand' },
    { arguments: ['2020-12-03', '28-day', '2020-12-31'], gives: [['NO', '2020-12-31', 0]], source: 'Polish AIS, AIRAC dates 2020; days by hand' },
    { arguments: ['', '28-day', '2020-12-31'], gives: [['UNKNOWN', '', '']], source: 'Rule of this function: nothing recorded is never OK' },
  ],
  compute: (given) => {
    const asOfDay = dayNumber(given.as_of);
    const { verdict, lapsesOnDay } = cardStatus(dayOrUndefined(given.loaded_effective), given.series, asOfDay, given.warn_days);
    return { verdict, next_effective: cellOfDay(lapsesOnDay), days_left: lapsesOnDay === undefined ? '' : lapsesOnDay - asOfDay };
  },
});

export const CYCLE_COVERS = mapping({
  name: 'CYCLE_COVERS',
  subject,
  summary: 'Whether the data on a card is current on every day of a trip.',
  parameters: {
    loaded_effective: loaded,
    series,
    first_day: date('First day of the trip.'),
    last_day: date('Last day of the trip, itself included; not before the first.'),
    headings: headingsOfRows,
  },
  results: {
    verdict: result('', 'OK when current from first_day through last_day, else NO; UNKNOWN where nothing is known of the card.'),
    lapses_on: result('date', 'First day on which the card is out of date.'),
  },
  sources,
  notes: `${cardNotes} A card that becomes effective only after first_day does not cover the trip: NO.`,
  examples: [
    { arguments: ['2020-12-03', '28-day', '2020-12-28', '2020-12-30'], gives: [['OK', '2020-12-31']], source: 'Polish AIS, AIRAC dates 2020' },
    { arguments: ['2020-12-03', '28-day', '2020-12-28', '2020-12-31'], gives: [['NO', '2020-12-31']], source: 'Polish AIS, AIRAC dates 2020' },
  ],
  compute: (given) => {
    const { verdict, lapsesOnDay } = cardCovers(
      dayOrUndefined(given.loaded_effective),
      given.series,
      dayNumber(given.first_day),
      dayNumber(given.last_day),
    );
    return { verdict, lapses_on: cellOfDay(lapsesOnDay) };
  },
});

export const CYCLE_VISITS = laying({
  name: 'CYCLE_VISITS',
  subject,
  summary: 'The coming days on which somebody must go to the aircraft, and which data changes on each.',
  parameters: {
    series_list: column(cycleSeries('The series of every card, one a row; the same one may stand in many rows.')),
    from_date: date('The first day to look at; a change on that day is listed.'),
    months: monthsAhead,
  },
  results: { date: result('date', 'Effective date.'), series: result('', 'The series that change on that day.') },
  sources,
  notes:
    'Common practice, no source. The 14-day series changes on every date of the 28-day one, which changes on every date of the 56-day one. Where nothing changes in these months, a row says so.',
  examples: [
    {
      arguments: [[['28-day'], ['56-day'], ['28-day']], '2024-10-31', 2],
      gives: [
        ['2024-10-31', '28-day, 56-day'],
        ['2024-11-28', '28-day'],
        ['2024-12-26', '28-day, 56-day'],
      ],
      source: 'FAA cut-off dates and Airservices Australia cycle list of 2024',
      formula: '=CYCLE_VISITS(A2:A4, "2024-10-31", 2)',
    },
  ],
  compute: ({ series_list, from_date, months }) => {
    if (series_list.length === 0) throw new CoreError('nothing-given', { what: 'series_list' });
    const fromDay = dayNumber(from_date);
    const found = visits(series_list, fromDay, dayMonthsLater(fromDay, months));
    if (found.length === 0) return [['', 'nothing changes in these months']];
    return found.map(({ day, series: changing }) => [civilDateFromDayNumber(day), changing.map(({ name }) => name).join(', ')]);
  },
});

const words = (help: string, mustBe: string) => column(unreadableMeansUndefined(text({ help, mustBe })));
const sameWords = (given: string | undefined): string | undefined => (given === undefined ? undefined : plainWords(given));

export const CYCLE_MISMATCH = laying({
  name: 'CYCLE_MISMATCH',
  subject,
  summary: 'For every card, whether all cards of the same database in the same aircraft hold the same cycle.',
  parameters: {
    aircraft: words('The aircraft of each card, one a row.', 'the name of the aircraft'),
    database: words(
      'The database of each card, such as navigation or obstacles; only cards of the same one are compared.',
      'the name of the database',
    ),
    loaded_effective: column(unreadableMeansUndefined(date('Effective date of the data on each card.'))),
  },
  results: { verdict: result('', 'OK where they agree, NO where two dates differ, UNKNOWN where that cannot be told.') },
  sources: ['common-practice'],
  notes:
    'Common practice, no source. Every card of a group that disagrees is NO. A date that is missing or cannot be read makes its group UNKNOWN, unless two others differ. Capitals, spaces and hyphens do not tell names apart. A blank row stays blank, so the verdicts stand beside their rows.',
  examples: [
    {
      arguments: [
        [['A'], ['A'], [''], ['B']],
        [['navigation'], ['Navigation'], [''], ['navigation']],
        [['2020-12-03'], ['2020-12-31'], [''], ['2020-12-31']],
      ],
      gives: [['NO'], ['NO'], [''], ['OK']],
      source: 'Rule of this function, by hand',
      formula: '=CYCLE_MISMATCH(A2:A5, B2:B5, C2:C5)',
    },
  ],
  compute: ({ aircraft, database, loaded_effective }, { rows, height }) => {
    const cards = loaded_effective.map((loadedDate, index) => ({
      aircraft: sameWords(aircraft[index]),
      database: sameWords(database[index]),
      loadedDay: dayOrUndefined(loadedDate),
    }));
    const column = Array.from({ length: height }, () => ['']);
    cardAgreement(cards).forEach((verdict, index) => (column[(rows[index] ?? 1) - 1] = [verdict]));
    return column;
  },
});
