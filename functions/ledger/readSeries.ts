// Reader of a series of data cycles: one of the known ones, or a number of days with a date it falls on.
import { dayNumber, isoDate } from '../../core/basics/civilDate';
import { knownSeries, type CycleSeries } from '../../core/ledger/cycles';
import { openKinds, type DataSeries, type ListedSeries } from '../../core/ledger/series';
import { ArgumentError } from '../registry/argumentError';
import { inWords, shortened, type CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { plainWords } from '../registry/readText';

const maxDays = 366;
const mustBe = `28-day, 56-day, 14-day, or a number of days (1 to ${maxDays}) from an effective date, such as "28 from 2026-01-22"`;

/** "28-day", "28 days", "28d" or plain 28; then, for a series of one's own, "from" and a date. */
const seriesText = /^(\d{1,3})(?:[\s\u2010-\u2013-]*(?:d|days?))?(?:\s+from\s+(\d{4}-\d{2}-\d{2}))?$/i;

function seriesFromCell(raw: CellValue, dates: DateHost): CycleSeries | undefined {
  const parts = typeof raw === 'string' || typeof raw === 'number' ? seriesText.exec(String(raw).trim()) : null;
  if (parts === null) return undefined;
  const days = Number(parts[1]);
  if (parts[2] === undefined) return knownSeries.find((series) => series.days === days);
  const phase = civilDateFromCell(parts[2], dates);
  if (phase === undefined || days < 1 || days > maxDays) return undefined;
  return { name: `${days} from ${isoDate(phase)}`, days, phaseDay: dayNumber(phase), identified: false };
}

/** "2026-11-26, 2026-12-10", with or without words of the owner's and a colon before it. */
const listText = /^(?:([^:]*):)?\s*(\d{4}-\d{2}-\d{2}(?:\s*[,;]\s*\d{4}-\d{2}-\d{2})*)$/;

/** Dates listed by the owner, each a change; the words before them are the name of the series. */
function listedFromCell(raw: CellValue, dates: DateHost): ListedSeries | undefined {
  const parts = typeof raw === 'string' ? listText.exec(raw.trim()) : null;
  if (parts === null) return undefined;
  const days = (parts[2] ?? '').split(/\s*[,;]\s*/).map((text) => civilDateFromCell(text, dates));
  const read = days.flatMap((day) => (day === undefined ? [] : dayNumber(day)));
  if (read.length < days.length) return undefined;
  const listed = [...new Set(read)].sort((one, other) => one - other);
  const name = shortened(parts[1] ?? '');
  return { kind: 'listed', name: `dates of ${name === '' ? 'its own' : name}`, listed };
}

const cardMustBe = `${mustBe}; or dates with commas between; or as issued, no end, not in use`;

export function dataSeriesFromCell(raw: CellValue, dates: DateHost): DataSeries | undefined {
  const words = typeof raw === 'string' ? plainWords(raw) : '';
  const open = openKinds.find((kind) => kind === words);
  return open === undefined ? (seriesFromCell(raw, dates) ?? listedFromCell(raw, dates)) : { kind: open, name: open };
}

/** What the data of a card follows: a calendar of cycles, dates typed by the owner, or none. */
export function dataSeries(help: string): Parameter<DataSeries> & { readonly shape: 'cell' } {
  const read = (raw: CellValue, dates: DateHost): DataSeries => {
    const series = dataSeriesFromCell(raw, dates);
    if (series === undefined) throw new ArgumentError(cardMustBe, inWords(raw));
    return series;
  };
  return { shape: 'cell', unit: '', mustBe: cardMustBe, help, optional: undefined, read };
}

export function cycleSeries(help: string): Parameter<CycleSeries> & { readonly shape: 'cell' } {
  const read = (raw: CellValue, dates: DateHost): CycleSeries => {
    const series = seriesFromCell(raw, dates);
    if (series === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return series;
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}

export const monthsAhead = number({
  unit: 'months',
  whole: true,
  minimum: 1,
  maximum: 36,
  help: 'How many calendar months to look ahead; the same day of the last month is no longer listed.',
});
