// Sheet functions of recent experience: counted over days, or over calendar months.
import { civilDateFromDayNumber, type CivilDate } from '../../core/basics/civilDate';
import { recencyInDays, recencyInMonths, type LogEntry, type Recency } from '../../core/currency/recency';
import { ArgumentError } from '../registry/argumentError';
import { folding, result } from '../registry/declaration';
import { blankMeansUndefined, column, optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { NamedArgumentError } from '../registry/wordError';

const subject = 'Recency and validity';

const flightDate = date('Date of each flight, one a row, in any order.');
const dates = column(blankMeansUndefined(flightDate));
const counts = column(
  blankMeansUndefined(
    number({ unit: '', minimum: 0, maximum: 1000, help: 'What was done on each flight: landings, approaches, hours. A blank counts as none.' }),
  ),
);
const asOf = date('The day of the flight to be made. Log rows after it are not counted.');
const whole = (unit: string, maximum: number, help: string) => number({ unit, whole: true, minimum: 1, maximum, help });
const needed = (usual: number) => optional(number({ unit: '', minimum: 0.1, maximum: 1000, help: 'How much is needed.' }), usual, `${usual}`);

const results = {
  count: result('', 'What was done in the window.'),
  verdict: result('', 'OK, CHECK, NO; UNKNOWN where the log is empty.'),
  good_through: result('date', 'The last good day without another flight; in the past where it has lapsed, blank where it never was enough.'),
};

/** Spare rows of a log may hold a count of zero; something done on no date is a mistake. */
function logEntries(dates: readonly (CivilDate | undefined)[], counts: readonly (number | undefined)[], rows: readonly number[]): LogEntry[] {
  return dates.flatMap((flown, index) => {
    const count = counts[index] ?? 0;
    if (flown !== undefined) return [{ date: flown, count }];
    if (count === 0) return [];
    throw new NamedArgumentError('dates', new ArgumentError(flightDate.mustBe, 'a blank', rows[index]));
  });
}

const cells = ({ count, verdict, goodThroughDay }: Recency) => ({
  count,
  verdict,
  good_through: goodThroughDay === undefined ? '' : civilDateFromDayNumber(goodThroughDay),
});

export const RECENCY_DAYS = folding({
  name: 'RECENCY_DAYS',
  subject,
  summary: 'Whether enough was done within the preceding days, such as three landings in 90 days, and how long that holds.',
  parameters: {
    dates,
    counts,
    as_of: asOf,
    days: optional(whole('days', 3660, 'Length of the window.'), 90, '90 days'),
    needed: needed(3),
  },
  results,
  sources: ['cfr-61-57', 'part-fcl'],
  notes:
    'The day of the flight counts as one of the days, the stricter of two readings: what was done on 1 January is good through 31 March in a window of 90 days. What was done on the day of the flight itself counts. The rules ask more than a count (same category, class and type; night; full stop): give only the rows that qualify.',
  examples: [
    {
      arguments: [[['2025-01-01'], ['2025-01-20']], [[1], [2]], '2025-03-31'],
      gives: [[3, 'OK', '2025-03-31']],
      source: '14 CFR 61.57(a), 90 days counted by hand with the day of the flight among them',
      formula: '=RECENCY_DAYS(A2:A3, B2:B3, "2025-03-31")',
    },
    {
      arguments: [[['2025-01-01'], ['2025-01-20']], [[1], [2]], '2025-04-01'],
      gives: [[2, 'NO', '2025-03-31']],
      source: '14 CFR 61.57(a), 90 days counted by hand with the day of the flight among them',
      formula: '=RECENCY_DAYS(A2:A3, B2:B3, "2025-04-01")',
    },
  ],
  compute: (given, { rows }) => cells(recencyInDays(logEntries(given.dates, given.counts, rows), given.as_of, given.days, given.needed)),
});

export const RECENCY_MONTHS = folding({
  name: 'RECENCY_MONTHS',
  subject,
  summary: 'Whether enough was done within the calendar months preceding the month of the flight, such as six approaches in six months.',
  parameters: {
    dates,
    counts,
    as_of: asOf,
    months: optional(whole('months', 120, 'Length of the window in calendar months.'), 6, '6 months'),
    needed: needed(6),
  },
  results: { ...results, count: result('', 'What was done in the months preceding the month of as_of.') },
  sources: ['cfr-61-57'],
  notes:
    'The rule names the months preceding the month of the flight, so count leaves that month out; practice counts it to date. Enough only with that month is CHECK, the stricter of two readings not being met, and good_through then follows practice. One call for each kind of task: approaches, holding, tracking.',
  examples: [
    {
      arguments: [[['2013-01-01'], ['2013-01-31']], [[3], [3]], '2013-07-31'],
      gives: [[6, 'OK', '2013-07-31']],
      source: '14 CFR 61.57(c)(1): done in January, current through July',
      formula: '=RECENCY_MONTHS(A2:A3, B2:B3, "2013-07-31")',
    },
    {
      arguments: [[['2013-01-01'], ['2013-01-31']], [[3], [3]], '2013-08-01'],
      gives: [[0, 'NO', '2013-07-31']],
      source: '14 CFR 61.57(c)(1): done in January, current through July',
      formula: '=RECENCY_MONTHS(A2:A3, B2:B3, "2013-08-01")',
    },
  ],
  compute: (given, { rows }) => cells(recencyInMonths(logEntries(given.dates, given.counts, rows), given.as_of, given.months, given.needed)),
});
