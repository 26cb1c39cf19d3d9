// What is said of a card of the data ledger, by every function that shows cards.
import { civilDateFromDayNumber, isoDate } from '../../core/basics/civilDate';
import type { Finding, LicenceFinding, WallClock } from '../../core/ledger/ledgerCard';

export const zoneNotes =
  "Data changes at a moment of UTC: 0000Z by the ICAO annex, 0901Z for US products (from memory). Days and times here are those of the spreadsheet's own time zone, so west of Greenwich the change may fall on the day before the effective date.";

export const clockText = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
type DayText = (day: number) => string;
export const isoText: DayText = (day) => isoDate(civilDateFromDayNumber(day));
export const momentText = ({ day, minutes }: WallClock, dayText: DayText): string => `${dayText(day)} ${clockText(minutes)}`;

function licenceText(finding: LicenceFinding, dayText: DayText): string {
  switch (finding.kind) {
    case 'licence-ended':
      return `licence ended ${dayText(finding.day)}`;
    case 'licence-ends':
      return `licence ends ${dayText(finding.day)}`;
    case 'licence-not-begun':
      return `licence begins only on ${dayText(finding.day)}`;
    case 'licence-not-for-cycle':
      return `no licence holds on ${dayText(finding.day)}, the day of this cycle`;
    case 'licence-none':
      return 'no licence that can be read covers it';
    case 'licence-unclear':
      return 'nothing tells whether its licence covers it: look at what that licence is for';
    case 'licence-end-unknown':
      return 'licence end not written down, or not a date';
  }
}

/** One thing to say of a card, its days as `dayText` writes them. */
export function findingText(finding: Finding, dayText: DayText): string {
  switch (finding.kind) {
    case 'no-series':
      return 'series missing or not one that can be read';
    case 'no-date':
      return 'effective date missing or not a date';
    case 'no-time':
      return 'time of the change cannot be read';
    case 'off-series':
      return 'no date of this series: look at the card';
    case 'ahead':
      return `loaded ahead, in force from ${momentText(finding.at, dayText)}`;
    case 'begins-today':
      return `in force only from ${clockText(finding.at.minutes)} on this day`;
    case 'out-of-date':
      return 'out of date';
    case 'ends-today':
      return `out of date from ${clockText(finding.at.minutes)} on this day`;
    case 'lapses-soon':
      return 'lapses soon';
    case 'disagrees':
      return 'differs from another card of this database';
    case 'not-comparable':
      return 'cannot be compared: aircraft, database or another date missing';
    case 'not-verified':
      return 'not verified';
    case 'verified-without-day':
      return 'verified, but the day is not written down';
    case 'load-day-missing':
      return 'day of loading missing or not a date, so nothing shows that this load was verified';
    case 'list-ends':
      return 'the dates of its series end with this one: type the next';
    case 'no-load':
      return 'no load written down';
    case 'named-twice':
      return 'another card has the same aircraft, box and database, so no load can be told to be its own';
    case 'load-unplaced':
      return `load in row ${finding.row} of the history without a date or a day that can be read`;
    case 'load-refused':
      return `load of ${dayText(finding.day)}, a day still to come, not counted`;
    case 'load-failed':
      return `load of ${dayText(finding.day)} failed, the card is as it was and nobody has looked at it since`;
    case 'load-ahead':
      return `loaded on ${dayText(finding.day)}, a day still to come`;
    case 'load-too-early':
      return `loaded on ${dayText(finding.day)}, before this data can have been given out: the day of another load`;
    case 'verified-ahead':
      return `verified on ${dayText(finding.day)}, a day still to come`;
    case 'verified-before-load':
      return `verified on ${dayText(finding.day)}, before this load`;
    default:
      return licenceText(finding, dayText);
  }
}
