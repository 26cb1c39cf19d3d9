// The days on which the sheets of a workbook are judged.
import { asOfName } from '../../sheets-templates/asOf';
import { placeOf, valuesIn } from './readPlace';
import { isoFromSerial } from './serialDates';
import type { WorkbookSnapshot } from './snapshot';

export interface JudgedDay {
  /** Name of the sheet that has the day. */
  readonly sheet: string;
  /** In ISO form. */
  readonly day: string;
}

/** One for each sheet of ours with a day of its own, as far as a date stands there. */
export function judgedDays(workbook: WorkbookSnapshot): JudgedDay[] {
  return workbook.sheets.flatMap(({ name: sheet, mark }) => {
    const name = mark?.names[asOfName];
    const place = name === undefined ? undefined : placeOf(workbook, sheet, name);
    const day = place === undefined ? undefined : valuesIn(place)[0]?.[0];
    return typeof day === 'number' && day > 0 ? [{ sheet, day: isoFromSerial(Math.floor(day)) }] : [];
  });
}
