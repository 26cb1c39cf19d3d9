// Lists judged for one flight, to the last day of its trip: the word of each row, and the whole of them.
import { CoreError } from './errors';
import { verdicts, worstVerdict, type Verdict } from './verdict';

export interface FlightRow {
  /** Undefined where this flight does not need the item. */
  readonly verdict: Verdict | undefined;
  readonly goodThroughDay: number | undefined;
}

export interface TripDays {
  readonly firstDay: number;
  readonly lastDay: number;
  /** The day of the list: nothing later is known to have been done. */
  readonly asOfDay: number;
}

export function tripDays(firstDay: number, lastDay: number, asOfDay: number): TripDays {
  if (lastDay < firstDay)
    throw new CoreError('days-out-of-order', { earlier: 'firstDay', later: 'lastDay', earlierDay: firstDay, laterDay: lastDay });
  return { firstDay, lastDay, asOfDay };
}

/** What is done after the trip serves none of its days, also where the list is of a later day. */
export const knownTo = ({ lastDay, asOfDay }: TripDays): number => Math.min(lastDay, asOfDay);

export interface Whole<Row> {
  readonly verdict: Verdict;
  /** Last day on which all of them are good; unknown where one of them is not good and has no day. */
  readonly goodThroughDay: number | undefined;
  readonly judged: readonly Row[];
  readonly passedOver: readonly Row[];
  /** What is not OK, the worst first. */
  readonly faults: readonly Row[];
  readonly firstToLapse: Row | undefined;
}

const isBad = (verdict: Verdict | undefined): boolean => verdict === 'NO' || verdict === 'UNKNOWN';

export function wholeOf<Row extends FlightRow>(rows: readonly Row[]): Whole<Row> {
  const judged = rows.filter(({ verdict }) => verdict !== undefined);
  const dated = judged.filter(({ goodThroughDay }) => goodThroughDay !== undefined);
  const firstToLapse = [...dated].sort((one, other) => (one.goodThroughDay ?? 0) - (other.goodThroughDay ?? 0))[0];
  const withoutDay = judged.some(({ verdict, goodThroughDay }) => isBad(verdict) && goodThroughDay === undefined);
  return {
    verdict: worstVerdict(judged.flatMap(({ verdict }) => (verdict === undefined ? [] : [verdict]))),
    goodThroughDay: withoutDay ? undefined : firstToLapse?.goodThroughDay,
    judged,
    passedOver: rows.filter(({ verdict }) => verdict === undefined),
    faults: verdicts.flatMap((word) => (word === 'OK' ? [] : judged.filter(({ verdict }) => verdict === word))),
    firstToLapse,
  };
}
