// The verdict of the trip to which the sheet in sight belongs, with its reasons, for the top of every sheet.
import { asOfName } from '../../../../sheets-templates/asOf';
import { localToday } from '../../../panel/localToday';
import { isoFromSerial } from '../../../workbook/serialDates';
import { markedSheets } from '../../saved/documentState';
import { valuesNamed } from '../cells';
import type { LiveWorkbook } from '../liveWorkbook';

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

/** Of the set of the sheet in sight, else of the first trip; undefined where there is none. */
export function tripNames({ workbook }: LiveWorkbook): TripNames | undefined {
  const marked = markedSheets(workbook.save());
  const set = marked.find(({ sheetId }) => sheetId === workbook.getActiveSheet().getSheetId())?.mark.set;
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

const worstFirst = ['NO', 'UNKNOWN', 'CHECK'];

export function tripFigures({ workbook }: LiveWorkbook, { verdict, reasons, day }: TripNames): TripFigures {
  const [word] = valuesNamed(workbook, verdict)[0] ?? [];
  const rows = valuesNamed(workbook, reasons).map(([item, one, reason]) => ({ item: String(item), word: String(one), reason: String(reason) }));
  const known = new Set([...worstFirst, 'OK']);
  const [asOf] = valuesNamed(workbook, day)[0] ?? [];
  const iso = typeof asOf === 'number' ? isoFromSerial(asOf) : '';
  return {
    // What is no word of a verdict, an error above all, is UNKNOWN here too.
    verdict: typeof word === 'string' && known.has(word) ? word : 'UNKNOWN',
    items: [...worstFirst.flatMap((one) => rows.filter((row) => row.word === one)), ...rows.filter((row) => !known.has(row.word))],
    judgedOn: iso === '' ? 'the day (as_of on Start) is not known' : `judged on ${iso}${iso === localToday() ? '' : ', not today'}`,
  };
}
