// The cells of a sheet of the double, and how Sheets takes what is written into them.
import type { FakeDataValidation, FakeTextStyle } from './builders';

export interface Cell {
  value: unknown;
  formula: string;
  numberFormat: string;
  note: string;
  background: string | null;
  textStyle: FakeTextStyle | null;
  alignment: string | null;
  wrap: 'wrap' | 'overflow' | 'clip';
  validation: FakeDataValidation | null;
  border: string;
}

export const freshCell = (): Cell => ({
  value: '',
  formula: '',
  numberFormat: 'General',
  note: '',
  background: null,
  textStyle: null,
  alignment: null,
  wrap: 'overflow',
  validation: null,
  border: '',
});

/** Formula text without its strings and quoted sheet names. */
const bare = (formula: string): string => formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'!/g, '!');

/** The quoted sheet names of a formula. */
export const sheetsIn = (formula: string): string[] =>
  [...formula.replace(/"(?:[^"]|"")*"/g, '""').matchAll(/'((?:[^']|'')*)'!/g)].map(([, name = '']) => name.replace(/''/g, "'"));

/** The bare words of a formula that are neither functions nor cells: names of ranges. */
export const namesIn = (formula: string): string[] =>
  [...bare(formula).matchAll(/[A-Za-z_][\w.]*(?![\w.]*\s*[(!])/g)]
    .map(([word]) => word)
    .filter((word) => !/^(\$?[A-Z]{1,3}\$?\d*|TRUE|FALSE)$/i.test(word));

/** What formulas take between arguments. A document in a locale with decimal commas takes semicolons only; so does the double, unless a test says otherwise. */
export const locale: { separator: ';' | ',' | undefined } = { separator: ';' };

/** The one formula that the double works out: by it the document is asked what it takes. */
const asks = /^=IF\(TRUE([;,])1[;,]0\)$/;

function checkFormula(formula: string): void {
  if (bare(formula).includes(locale.separator === ';' ? ',' : ';')) throw new Error(`Formula parse error: ${formula}`);
  if (/[{}]/.test(bare(formula))) throw new Error(`array literals differ by locale: ${formula}`);
}

/** Text that Sheets reads as something else when it is written into a cell of no text format. */
function taken(text: string): unknown {
  if (/^\s*[-+]?[\d.,]+\s*%?\s*$/.test(text) && /\d/.test(text)) return Number(text.replace(/[^\d.eE+-]/g, ''));
  if (/^(true|false)$/i.test(text)) return text.toLowerCase() === 'true';
  const date = /^(\d{4})-(\d\d?)-(\d\d?)$/.exec(text);
  return date === null ? text : new Date(Date.UTC(Number(date[1]), Number(date[2]) - 1, Number(date[3])));
}

/** One value of setValues into one cell. */
export function writeValue(cell: Cell, value: unknown): void {
  if (!['string', 'number', 'boolean'].includes(typeof value)) throw new Error(`setValues does not take ${Object.prototype.toString.call(value)}`);
  if (typeof value === 'string' && value.length > 50_000)
    throw new Error('Your input contains more than the maximum of 50000 characters in a single cell.');
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error('setValues does not take a number that is not finite');
  const isText = cell.numberFormat === '@';
  cell.formula = '';
  cell.value = '';
  const [, asked] = typeof value === 'string' ? (asks.exec(value) ?? []) : [];
  if (asked !== undefined) {
    cell.formula = String(value);
    cell.value = asked === locale.separator ? 1 : '#ERROR!';
  } else if (typeof value === 'string' && value.startsWith('=') && !isText) {
    checkFormula(value);
    cell.formula = value;
  } else {
    cell.value = typeof value === 'string' && !isText ? taken(value) : value;
  }
}
