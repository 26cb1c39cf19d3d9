// Plain facts about what a spreadsheet hands to a function: blanks, ranges, and how to name a value in a sentence.

/** One cell: number, text, boolean, Date, or a blank in any of the ways hosts send one. */
export type CellValue = unknown;
export type RangeValue = readonly (readonly CellValue[])[];

/** Google sends "" for an empty cell and undefined for an argument left out; a skipped middle argument may be either. */
export function isBlank(value: CellValue): boolean {
  return value === '' || value === undefined || value === null || (typeof value === 'string' && value.trim() === '');
}

export function isRange(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

/** A blank cell, or a range of nothing but blank cells. */
export function isWhollyBlank(value: CellValue): boolean {
  return isRange(value) ? value.every(isWhollyBlank) : isBlank(value);
}

/** What stands for a cell that holds none of the values a cell can have (a picture, say): read by nobody, like any other error. */
export const notACellValue = '#VALUE!';

export function isCellValue(value: unknown): boolean {
  return typeof value === 'object' ? value === null || value instanceof Date : typeof value !== 'function' && typeof value !== 'symbol';
}

const errorText = /^#(N\/A|REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|ERROR!|SPILL!|CALC!|CYCLE!)$/i;

/** Inside a range, a cell that holds an error arrives as its text. */
export function isErrorText(value: CellValue): boolean {
  return typeof value === 'string' && errorText.test(value.trim());
}

export function sizeInWords(rows: number, columns: number): string {
  return `${rows} ${rows === 1 ? 'row' : 'rows'} x ${columns} ${columns === 1 ? 'column' : 'columns'}`;
}

const maxQuoteLength = 60;
/** Line breaks, tabs and the other signs that no sentence survives, with the blanks about them. */
const broken = /\s*[\u0000-\u001f\u007f-\u009f\u2028\u2029]\s*/g;
const breaks = /[\u0000-\u001f\u007f-\u009f\u2028\u2029]/;

/** A text of a person's on one line. */
export const oneLine = (text: string): string => (breaks.test(text) ? text.replace(broken, ' ').trim() : text);

/** A text of a person's as a sentence may hold it: on one line, and no longer than it takes to know it again. */
export function shortened(text: string): string {
  const line = oneLine(text).trim();
  return line.length > maxQuoteLength ? `${line.slice(0, maxQuoteLength)}...` : line;
}

export const quoted = (text: string): string => `"${shortened(text)}"`;

/** The value as the end of a sentence: what the function got. */
export function inWords(value: unknown): string {
  if (isBlank(value)) return 'a blank';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : 'a number that is not finite';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? 'a date that does not exist' : 'a date or time';
  if (isRange(value)) return 'a range of cells';
  return typeof value === 'string' ? quoted(value) : 'something that is not a cell value';
}
