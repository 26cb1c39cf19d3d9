// What a cell shows, from what it holds and the number format of its template: for the side panel, which is given values and no looks.
import { formats, type FormatName } from '../../../sheets-templates/look';
import { dateFromSerial } from '../serialDates';
import type { CellValue } from '../snapshot';

/** Digits that a cell without a format shows at most: what binary arithmetic leaves behind them is no number of anybody's. */
const generalDigits = 10;

function dateText(serial: number, pattern: string): string {
  const iso = dateFromSerial(serial).toISOString();
  if (pattern === formats.month) return iso.slice(0, 7);
  return pattern === formats.dateTime ? iso.slice(0, 16).replace('T', ' ') : iso.slice(0, 10);
}

function numberText(value: number, pattern: string): string {
  if (/y/.test(pattern)) return dateText(value, pattern);
  const parts = /^(#,##)?(0+)(?:\.(0*)(#*))?$/.exec(pattern);
  if (parts === null) return String(Number(value.toPrecision(generalDigits)));
  const [, grouped, whole = '', fixed = '', open = ''] = parts;
  const text = new Intl.NumberFormat('en-US', {
    useGrouping: grouped !== undefined,
    minimumIntegerDigits: whole.length,
    minimumFractionDigits: fixed.length,
    maximumFractionDigits: fixed.length + open.length,
  }).format(value);
  return /^-[0.,]*$/.test(text) ? text.slice(1) : text;
}

export function shownText(value: CellValue, format: FormatName = 'general'): string {
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? numberText(value, formats[format]) : value.trim();
}
