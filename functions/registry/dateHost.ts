// The one thing a sheet function needs of its host: what a Date means in the spreadsheet's own time zone.
import type { CivilDate, CivilDateTime, Instant } from '../../core/basics/civilDate';

export interface DateHost {
  /** The wall clock that the spreadsheet shows for this instant. */
  toCivil(date: Date): CivilDateTime;
  /** The instant that the spreadsheet shows as midnight at the start of this day. */
  fromCivil(date: CivilDate): Date;
  /** What the spreadsheet shows as the date and time of its own zone at this moment. */
  fromInstant(instant: Instant): Date;
}
