// Small helpers with which the sheets are written down: rows of cells, addresses, and formulas that many sheets share.
import type { FormatName, StyleName } from './look';
import type { TemplateCell, TemplateValue } from './template';

export type Content = TemplateValue | undefined;

/** A column's letter, counted from 1. */
export function columnLetter(column: number): string {
  const rest = Math.floor((column - 1) / 26);
  return (rest > 0 ? columnLetter(rest) : '') + String.fromCharCode(65 + ((column - 1) % 26));
}

export const address = (row: number, column: number): string => `${columnLetter(column)}${row}`;

export const area = (row: number, column: number, lastRow: number, lastColumn: number): string =>
  `${address(row, column)}:${address(lastRow, lastColumn)}`;

/** The same cell or range with fixed rows and columns, as seen from another sheet. */
export const on = (sheetName: string, place: string): string => `'${sheetName}'!${place.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2')}`;

type Extra = Pick<TemplateCell, 'format' | 'note' | 'goesTo'>;

/** One cell; text that starts with = is a formula, undefined is an empty cell with a look. */
export function cell(row: number, column: number, content: Content, style: StyleName, extra: Extra = {}): TemplateCell {
  const place = { row, column, style, ...extra };
  if (content === undefined) return place;
  return typeof content === 'string' && content.startsWith('=') ? { ...place, formula: content } : { ...place, value: content };
}

export type Field = readonly [content: Content, style: StyleName, extra?: Extra];

/** Cells side by side. */
export const line = (row: number, column: number, ...fields: readonly Field[]): TemplateCell[] =>
  fields.map(([content, style, extra], index) => cell(row, column + index, content, style, extra));

/** A label, an input and its unit. */
export const entry = (row: number, label: string, value: Content, unit: string, extra: Extra = {}): TemplateCell[] =>
  line(row, 1, [label, 'label'], [value, typeof value === 'string' ? 'inputText' : 'input', extra], [unit, 'unit']);

/** A label, a computed value and its unit. */
export const computed = (row: number, label: string, formula: string, unit: string, format: FormatName, note: string): TemplateCell[] =>
  line(row, 1, [label, 'label'], [formula, 'computed', { format, note }], [unit, 'unit']);

/** A table of entries, numbers and texts. A blank cell is for a text where its column holds one, so that a name such as 09 stays as typed. */
export function inputRows(row: number, column: number, rows: readonly (readonly Content[])[], formatOf: (index: number) => FormatName): TemplateCell[] {
  const holdsText = (across: number): boolean => rows.some((contents) => typeof contents[across] === 'string');
  return rows.flatMap((contents, down) =>
    contents.map((content, across) =>
      typeof content === 'number' || (content === undefined && !holdsText(across))
        ? cell(row + down, column + across, content, 'input', { format: formatOf(across) })
        : cell(row + down, column + across, content, 'inputText'),
    ),
  );
}

/** A verdict as it is, or UNKNOWN for anything that is not one: a blank, an error, a sentence. */
export const verdictOf = (expression: string): string =>
  `=IFERROR(IF(OR(${expression}="OK",${expression}="CHECK",${expression}="NO"),${expression},"UNKNOWN"),"UNKNOWN")`;

/**
 * The worst word of a range of verdicts. Of `expected` rows each must hold OK or CHECK; a cell with any other content
 * (a blank, an error, a sentence) leaves one short, which is UNKNOWN.
 */
export const worstOf = (range: string, expected = `ROWS(${range})`): string =>
  `=IF(COUNTIF(${range},"NO")>0,"NO",IF(OR(${expected}=0,COUNTIF(${range},"OK")+COUNTIF(${range},"CHECK")<${expected}),"UNKNOWN",IF(COUNTIF(${range},"CHECK")>0,"CHECK","OK")))`;

/** Formula text: "NO: one; another. " where any row of the verdicts holds this word, else nothing. */
export const namedFor = (word: string, verdicts: string, what: string): string =>
  `IF(COUNTIF(${verdicts},"${word}")=0,"","${word}: "&TEXTJOIN("; ",TRUE,FILTER(${what},${verdicts}="${word}"))&". ")`;

/** Formula text: no more than so many characters, so that a long list keeps its beginning in sight and says that it goes on. */
export const capped = (text: string, most: number): string => `IF(LEN(${text})>${most},LEFT(${text},${most})&" ... more below",${text})`;

/**
 * Formula text: how many cells are filled between a list and the rows that stood next to it. A range does not grow by a row that is put in
 * above its first or below its last, so what is typed there would be read by nobody. Rows that are taken away do no harm.
 */
export function filledOutside({ first, last }: { readonly first: number; readonly last: number }, from: string, to: string, next: { readonly above?: number; readonly below?: number }): string {
  const { above = first, below = last } = next;
  const cells = (top: number, bottom: number): string => `COUNTA($${from}$${top}:$${to}$${bottom})`;
  const apart = [...(above < first ? [above] : []), ...(below > last ? [below] : [])];
  return `(${[cells(above, below), cells(first, last), ...apart.map((row) => cells(row, row))].join('-')})`;
}

export const caution =
  "Planning aid only. The aircraft's approved manual, current official data, local rules and the pilot in command decide. Nothing here is certified or approved.";
