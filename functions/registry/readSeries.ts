// Reader of a series of data cycles: one of the known ones, or a number of days with a date it falls on.
import { dayNumber, isoDate } from '../../core/civilDate';
import { knownSeries, type CycleSeries } from '../../core/cycles';
import { ArgumentError } from './argumentError';
import { inWords, type CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter } from './declaration';
import { civilDateFromCell } from './readDate';

const longestDays = 366;
const mustBe = `28-day, 56-day, 14-day, or a number of days (1 to ${longestDays}) from an effective date, such as "28 from 2026-01-22"`;

/** "28-day", "28 days", "28d" or plain 28; then, for a series of one's own, "from" and a date. */
const seriesText = /^(\d{1,3})(?:[\s\u2010-\u2013-]*(?:d|days?))?(?:\s+from\s+(\d{4}-\d{2}-\d{2}))?$/i;

function seriesFromCell(raw: CellValue, dates: DateHost): CycleSeries | undefined {
  const parts = typeof raw === 'string' || typeof raw === 'number' ? seriesText.exec(String(raw).trim()) : null;
  if (parts === null) return undefined;
  const days = Number(parts[1]);
  if (parts[2] === undefined) return knownSeries.find((series) => series.days === days);
  const phase = civilDateFromCell(parts[2], dates);
  if (phase === undefined || days < 1 || days > longestDays) return undefined;
  return { name: `${days} from ${isoDate(phase)}`, days, phaseDay: dayNumber(phase), identified: false };
}

export function cycleSeries(help: string): Parameter<CycleSeries> & { readonly shape: 'cell' } {
  const read = (raw: CellValue, dates: DateHost): CycleSeries => {
    const series = seriesFromCell(raw, dates);
    if (series === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return series;
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}
