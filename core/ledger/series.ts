// The series that the data of a card can follow: a calendar of cycles, days listed by the owner, or no calendar at all.
// Nothing is carried on beyond the last day of a list: when the data changes next is then not known.
import { effectiveAfter, effectiveOnOrAfter, effectiveOnOrBefore, identifierInSeries, isEffectiveDate, type CycleSeries } from './cycles';

/** Effective dates as the owner has typed them, in their order. */
export interface ListedSeries {
  readonly kind: 'listed';
  readonly name: string;
  readonly listed: readonly number[];
}

/** as issued: a newer issue may come on any day. no end: it never goes out of date. not in use: nobody loads or judges the card. */
export interface OpenSeries {
  readonly kind: 'as issued' | 'no end' | 'not in use';
  readonly name: string;
}

export type DataSeries = CycleSeries | ListedSeries | OpenSeries;

export const openKinds = ['as issued', 'no end', 'not in use'] as const;

const isListed = (series: DataSeries): series is ListedSeries => 'kind' in series && series.kind === 'listed';
const isOpen = (series: DataSeries): series is OpenSeries => 'kind' in series && series.kind !== 'listed';

export const isInUse = (series: DataSeries | undefined): boolean => series === undefined || !isOpen(series) || series.kind !== 'not in use';

/** Whether the data goes out of date on days that are known ahead, as far as anybody has written them down. */
export const hasCalendar = (series: DataSeries): series is CycleSeries | ListedSeries => !isOpen(series);

/** A newer issue can come on any day, so somebody has to look for it. */
export const isAsIssued = (series: DataSeries): boolean => isOpen(series) && series.kind === 'as issued';

/** The first change after a day; undefined where there is none, or none is known. */
export function changeAfter(day: number, series: DataSeries): number | undefined {
  if (isOpen(series)) return undefined;
  return isListed(series) ? series.listed.find((one) => one > day) : effectiveAfter(day, series);
}

/** The change from which the data in force on a day has been in force. */
export function changeOnOrBefore(day: number, series: DataSeries): number | undefined {
  if (isOpen(series)) return undefined;
  return isListed(series) ? [...series.listed].reverse().find((one) => one <= day) : effectiveOnOrBefore(day, series);
}

/** Whether data of the series can have come into force on a day. */
export function canBegin(day: number, series: DataSeries): boolean {
  if (isOpen(series)) return true;
  return isListed(series) ? series.listed.includes(day) : isEffectiveDate(day, series);
}

/** The changes from one day up to, not including, another. */
export function changesWithin(series: DataSeries, fromDay: number, endDay: number): number[] {
  if (isOpen(series)) return [];
  if (isListed(series)) return series.listed.filter((day) => day >= fromDay && day < endDay);
  const first = effectiveOnOrAfter(fromDay, series);
  return Array.from({ length: Math.max(0, Math.ceil((endDay - first) / series.days)) }, (_, index) => first + index * series.days);
}

/**
 * The day before which data that comes into force on `day` was not given out: the change ahead of it. Common practice, no source. Undefined
 * where nothing tells.
 */
export function givenOutFrom(day: number, series: DataSeries): number | undefined {
  if (isOpen(series)) return undefined;
  return isListed(series) ? changeOnOrBefore(day - 1, series) : day - series.days;
}

/** AIRAC identifier of a change; blank where it has none. */
export const identifierOf = (day: number, series: DataSeries): string => ('kind' in series ? '' : identifierInSeries(day, series));

/** Shortest cycle first, then lists, then what has no calendar; each once, by its name. */
export function inOrder<Series extends DataSeries>(series: readonly Series[]): Series[] {
  const weight = (one: DataSeries): number => (isOpen(one) ? 10_000 : isListed(one) ? 1_000 : one.days);
  return [...new Map(series.map((one) => [one.name, one])).values()].sort((one, other) => weight(one) - weight(other));
}
