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

const errorText = /^#(N\/A|REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|ERROR!|SPILL!|CALC!|CYCLE!)$/i;

/** Inside a range, a cell that holds an error arrives as its text. */
export function isErrorText(value: CellValue): boolean {
  return typeof value === 'string' && errorText.test(value.trim());
}

export function sizeInWords(rows: number, columns: number): string {
  return `${rows} ${rows === 1 ? 'row' : 'rows'} x ${columns} ${columns === 1 ? 'column' : 'columns'}`;
}

const longestQuote = 60;

/** The value as the end of a sentence: what the function got. */
export function inWords(value: unknown): string {
  if (isBlank(value)) return 'a blank';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : 'a number that is not finite';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? 'a date that does not exist' : 'a date or time';
  if (isRange(value)) return 'a range of cells';
  if (typeof value !== 'string') return 'something that is not a cell value';
  const oneLine = value.replace(/\s+/g, ' ').trim();
  return `"${oneLine.length > longestQuote ? `${oneLine.slice(0, longestQuote)}...` : oneLine}"`;
}
