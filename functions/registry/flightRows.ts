// Lays out a list judged for one flight: the whole in the first row, then its rows.
import { civilDateFromDayNumber } from '../../core/basics/civilDate';
import { wholeOf, type FlightRow, type TripDays, type Whole } from '../../core/basics/flightRows';
import { dayInWords } from './dayWords';
import { result, type ResultCell } from './declaration';

export interface WordedRow extends FlightRow {
  readonly item: string;
  /** Why its word is what it is; never blank where that is not OK. */
  readonly why: string;
  /** The paragraph, in the row of the item only. */
  readonly rule?: string;
}

export const flightResults = {
  item: result('', 'What is judged; "all" in the first row, the whole of them.'),
  verdict: result('', 'OK, CHECK, NO, UNKNOWN; blank where this flight does not need the item. In the first row the worst of them.'),
  good_through: result('date', 'The last good day; in the first row the earliest, blank where one that is not good has none.'),
  reason: result('', 'Why; in the first row everything that is not OK, the worst first, or what is the first to lapse.'),
};

/** A trip that is over is not judged as if it lay ahead. */
export const pastRows = ({ lastDay, asOfDay }: TripDays): WordedRow[] =>
  lastDay >= asOfDay
    ? []
    : [
        {
          item: 'dates',
          verdict: 'UNKNOWN',
          goodThroughDay: undefined,
          why: `the last day of the trip, ${dayInWords(lastDay)}, is before as_of, ${dayInWords(asOfDay)}`,
        },
      ];

function inWords({ judged, passedOver, faults, firstToLapse }: Whole<WordedRow>): string {
  if (faults.length > 0) return faults.map(({ item, why }) => `${item}: ${why}`).join('; ');
  const notNeeded = passedOver.length === 0 ? '' : `; not needed for this flight: ${passedOver.map(({ item }) => item).join(', ')}`;
  if (judged.length === 0) return `nothing is judged${notNeeded}`;
  const first =
    firstToLapse?.goodThroughDay === undefined ? '' : `; the first to lapse: ${firstToLapse.item}, ${dayInWords(firstToLapse.goodThroughDay)}`;
  return `${judged.length} ${judged.length === 1 ? 'item' : 'items'} good through the last day of the trip${first}${notNeeded}`;
}

const dateCell = (day: number | undefined): ResultCell => (day === undefined ? '' : civilDateFromDayNumber(day));

export function layFlightRows(rows: readonly WordedRow[]): ResultCell[][] {
  const whole = wholeOf(rows);
  return [
    ['all', whole.verdict, dateCell(whole.goodThroughDay), inWords(whole)],
    ...rows.map(({ item, verdict, goodThroughDay, why, rule = '' }) => [
      item,
      verdict ?? '',
      dateCell(goodThroughDay),
      [why, rule].filter((part) => part !== '').join('; '),
    ]),
  ];
}
