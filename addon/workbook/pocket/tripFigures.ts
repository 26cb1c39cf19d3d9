// The verdict of the trip to which the sheet in sight belongs, with its reasons, for the top of every sheet.
import { asOfName } from '../../../sheets-templates/asOf';
import { isoFromSerial } from '../serialDates';
import type { SheetMark } from '../snapshot';
import { isVerdict, worstFirst } from './verdictWords';

/** Names in this workbook: a copied trip has its own. */
export interface TripNames {
  readonly verdict: string;
  readonly reasons: string;
  readonly day: string;
  readonly sheet: string;
}

export interface TripItem {
  readonly item: string;
  readonly word: string;
  readonly reason: string;
}

export interface TripFigures {
  readonly verdict: string;
  /** Those that are not OK, the worst first, then those that are not judged. */
  readonly items: readonly TripItem[];
  readonly judgedOn: string;
}

interface Marked {
  readonly name: string;
  readonly mark: SheetMark;
}

/** Of the set of the sheet in sight, else of the first trip; undefined where there is none. */
export function tripNames(marked: readonly Marked[], inSight: string): TripNames | undefined {
  const set = marked.find(({ name }) => name === inSight)?.mark.set;
  const trips = marked.filter(({ mark }) => mark.key === 'trip');
  const trip = trips.find(({ mark }) => mark.set === set) ?? trips[0];
  if (trip === undefined) return undefined;
  const { names } = trip.mark;
  const day = marked.find(({ mark }) => mark.set === trip.mark.set && mark.names[asOfName] !== undefined)?.mark.names[asOfName];
  return {
    verdict: names['trip_verdict'] ?? 'trip_verdict',
    reasons: names['trip_reasons'] ?? 'trip_reasons',
    day: day ?? asOfName,
    sheet: trip.name,
  };
}

/** `valuesNamed` tells what stands in the cells behind a name, nothing where the name is gone; `today` in ISO form. */
export function tripFigures(
  { verdict, reasons, day }: TripNames,
  valuesNamed: (name: string) => readonly (readonly unknown[])[],
  today: string,
): TripFigures {
  const [word] = valuesNamed(verdict)[0] ?? [];
  const rows = valuesNamed(reasons).map(([item, one, reason]) => ({ item: String(item), word: String(one), reason: String(reason) }));
  const [asOf] = valuesNamed(day)[0] ?? [];
  const iso = typeof asOf === 'number' ? isoFromSerial(asOf) : '';
  return {
    // What is no word of a verdict, an error above all, is UNKNOWN here too.
    verdict: typeof word === 'string' && isVerdict(word) ? word : 'UNKNOWN',
    items: [
      ...worstFirst.filter((one) => one !== 'OK').flatMap((one) => rows.filter((row) => row.word === one)),
      ...rows.filter((row) => !isVerdict(row.word)),
    ],
    judgedOn: iso === '' ? 'the day (as_of on Start) is not known' : `judged on ${iso}${iso === today ? '' : ', not today'}`,
  };
}
