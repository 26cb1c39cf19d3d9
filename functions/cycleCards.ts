// Sheet functions of the cards in the aircraft: current or not, on a day and on a trip.
import { cardCovers, cardStatus } from '../core/cycleCards';
import { civilDateFromDayNumber, dayNumber, type CivilDate } from '../core/civilDate';
import { mapping, result } from './registry/declaration';
import { blankMeansUndefined, optional } from './registry/modifiers';
import { date } from './registry/readDate';
import { number } from './registry/readNumber';
import { cycleSeries } from './registry/readSeries';

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
    warn_days: optional(number({ unit: 'days', whole: true, minimum: 0, maximum: 366, help: 'CHECK when no more than this many days are left.' }), 5, '5 days'),
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
    const { verdict, lapsesOnDay } = cardCovers(dayOrUndefined(given.loaded_effective), given.series, dayNumber(given.first_day), dayNumber(given.last_day));
    return { verdict, lapses_on: cellOfDay(lapsesOnDay) };
  },
});
