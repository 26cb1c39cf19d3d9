// Days and decimals as people of many countries type them (26.11.2026, 480,50), in the form that a spreadsheet reads; and what to say where an entry can
// be two things, or none.
import { isoOf } from './writtenDays';

export type Wanted = 'date' | 'number';

/** `text` is the same as a spreadsheet reads it; `said` is why it is not taken. Undefined where it is left as it stands. */
export type ReadEntry = { readonly text: string } | { readonly said: string } | undefined;

const nothingChanged = 'Nothing was changed.';
const isFormula = (text: string): boolean => text.startsWith('=');

/** 3/4/2026 is the third of April, or the fourth of March; with points the day comes first (common practice, no source). */
function twoDays(text: string): readonly [string, string] | undefined {
  if (!/^\d{1,2}[/-]\d{1,2}[/-]\d{4}$/.test(text)) return undefined;
  const [dayFirst, monthFirst] = [isoOf(text, 'day first'), isoOf(text, 'month first')];
  return dayFirst === undefined || monthFirst === undefined || dayFirst === monthFirst ? undefined : [dayFirst, monthFirst];
}

function readDay(text: string): ReadEntry {
  const two = twoDays(text);
  if (two !== undefined) return { said: `"${text}" can be two days. Type it as ${two[0]} or as ${two[1]}. ${nothingChanged}` };
  const day = isoOf(text, 'day first') ?? isoOf(text, 'month first');
  if (day !== undefined) return { text: day };
  if (/^\d{1,2}([./-])\d{1,2}\1\d{2}$/.test(text))
    return { said: `"${text}" has no century. Type the year with four figures, as in 2026-11-26. ${nothingChanged}` };
  // A day may be worked out, and counted as spreadsheets count them.
  return Number.isFinite(Number(text))
    ? undefined
    : { said: `"${text}" is no day. Days are read as 2026-11-26, 26.11.2026 or 26 Nov 2026. ${nothingChanged}` };
}

/** One comma with three figures behind it can part thousands, unless nothing but a nought stands before it. */
const commaDecimal = /^([-+]?)(\d+),(\d{1,2}|\d{4,})$|^([-+]?)(0),(\d{3})$/;
const pointsAndComma = /^([-+]?)(\d{1,3}(?:[. ]\d{3})+),(\d+)$/;
const twoNumbers = /^([-+]?\d+),(\d{3})$/;

function readNumber(text: string): ReadEntry {
  const decimal = commaDecimal.exec(text) ?? pointsAndComma.exec(text);
  if (decimal !== null) {
    const [sign = '', whole = '', decimals = ''] = decimal.slice(1).filter((part) => part !== undefined);
    return { text: `${sign}${whole.replace(/[. ]/g, '')}.${decimals}` };
  }
  const [, before, after] = twoNumbers.exec(text) ?? [];
  if (before === undefined || after === undefined) return undefined;
  return { said: `"${text}" can be two numbers. Type it without a comma: ${before}${after} or ${before}.${after}. ${nothingChanged}` };
}

/** What is typed into a cell that wants a day or a number. */
export function readEntry(typed: string, wanted: Wanted): ReadEntry {
  const text = typed.trim();
  if (text === '' || isFormula(text)) return undefined;
  return wanted === 'date' ? readDay(text) : readNumber(text);
}
