// Small helpers with which the sheets are written down: rows of cells, addresses, and formulas that many sheets share.
import { address, on } from './addresses';
import type { FormatName, StyleName } from './look';
import { sheetNames, startCells, tripCells, tripEntryRanges } from './places';
import type { TemplateCell, TemplateValue } from './template';

export { address, area, columnLetter, on } from './addresses';

export type Content = TemplateValue | undefined;

type Extra = Pick<TemplateCell, 'format' | 'note' | 'goesTo' | 'shows' | 'reportOf'>;

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
export function inputRows(
  row: number,
  column: number,
  rows: readonly (readonly Content[])[],
  formatOf: (index: number) => FormatName,
): TemplateCell[] {
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
 * (a blank, an error, a sentence) leaves one short, which is UNKNOWN. Each condition of `doubted`, as formula text, makes of OK a CHECK.
 */
export const worstOf = (range: string, expected = `ROWS(${range})`, doubted: readonly string[] = []): string =>
  `=IF(COUNTIF(${range},"NO")>0,"NO",IF(OR(${expected}=0,COUNTIF(${range},"OK")+COUNTIF(${range},"CHECK")<${expected}),"UNKNOWN",IF(${[`COUNTIF(${range},"CHECK")`, ...doubted.map((condition) => `(${condition})`)].join('+')}>0,"CHECK","OK")))`;

/** Formula text: the worst of several words, each a formula text that gives one of the four. */
export function worstOfWords(words: readonly string[]): string {
  const any = (word: string): string => `OR(${words.map((text) => `${text}="${word}"`).join(',')})`;
  return `IF(${any('NO')},"NO",IF(${any('UNKNOWN')},"UNKNOWN",IF(${any('CHECK')},"CHECK","OK")))`;
}

/** Formula text: a day in the years of flying. A date typed without its hyphens, 20261231, is a number too, of the year 57370. */
export const isDay = (place: string): string => `AND(ISNUMBER(${place}),${place}>=DATE(1950,1,1),${place}<DATE(2101,1,1))`;

/** Cells that hold a result, or a call in the row of its heads, which nobody is asked to type over; other formulas are entries that begin with a proposal, or words. */
const resultStyles: ReadonlySet<StyleName> = new Set<StyleName>(['computed', 'computedText', 'verdict', 'bigVerdict', 'columnHead']);

/** What a cell is called: the label near its left, else the head of its column or the heading above it. */
function calledBy(cells: readonly TemplateCell[], { row, column }: TemplateCell): string {
  const worded = (styles: readonly StyleName[]): TemplateCell[] =>
    cells.filter(({ style, value }) => styles.includes(style) && typeof value === 'string' && value !== '');
  const beside = worded(['label']).filter((one) => one.row === row && one.column < column && one.column >= column - 3);
  const above = worded(['columnHead', 'heading']).filter((one) => one.column === column && one.row < row);
  const nearest = [...beside.sort((one, other) => other.column - one.column), ...above.sort((one, other) => other.row - one.row)][0];
  return String(nearest?.value ?? '');
}

/** Formula text: that a cell was typed over, by its words and its place, where it holds no formula any more. */
export const unlessFormula = (place: string, words: string): string =>
  `IF(ISFORMULA(${place}),"","typed over: ${words} ("&ADDRESS(ROW(${place}),COLUMN(${place}),4)&")")`;

/**
 * Formula text: the results among these cells that hold no formula any more, each by its words and its place; nothing where all do. A value
 * typed over one of them is read by some formulas while others go on reading what it was worked out from, so that two answers stand side by
 * side. `more` are formula texts of the same kind.
 */
export function typedOver(cells: readonly TemplateCell[], ...more: readonly string[]): string {
  const results = cells.filter(({ formula, style }) => formula !== undefined && resultStyles.has(style));
  const all = results.map((one) => address(one.row, one.column));
  // Asked first and at once: the sentences are put together only where one of them has to be said.
  const whole = [...all.map((place) => `ISFORMULA(${place})`), ...(more.length === 0 ? [] : [`${more.join('&')}=""`])];
  const said = [...results.map((one) => unlessFormula(address(one.row, one.column), calledBy(cells, one))), ...more];
  return `IF(AND(${whole.join(',')}),"",TEXTJOIN("; ",TRUE,${said.join(',')}))`;
}

/** Formula texts of Start's line on the day: whether it is another one than today, and that with "CHECK" before it, or nothing. */
export const otherThanToday = `${on(sheetNames.start, startCells.dayVerdict)}<>"OK"`;
export const judgedOn = on(sheetNames.start, startCells.judgedOn);
/** The same for the top of a sheet, short. */
export const judgedOnTop = `=IF(ISNUMBER(as_of),"judged on "&TEXT(as_of,"d mmmm yyyy")&IF(${otherThanToday},", not today",""),"as_of on Start is no day")`;
export const otherDaySaid = `IF(${otherThanToday},"CHECK: "&${judgedOn}&". ","")`;

/** Formula text: the trip of a Trip sheet in words; `at` gives its cells as they are seen from the formula. A sheet that reads another Trip sheet than its own says so by these. */
export const tripInWords = (at: (place: string) => string): string =>
  `"for "&${at(tripCells.departure)}&" to "&${at(tripCells.destination)}&", "&IF(ISNUMBER(${at(tripCells.firstDay)}),TEXT(${at(tripCells.firstDay)},"yyyy-mm-dd"),"no day")`;
export const readTripInWords = `=${tripInWords((place) => on(sheetNames.trip, place))}`;

/** Formula text: all that is typed on a Trip sheet as one text, so that a sheet that reads another Trip sheet than its own can be told. */
export const tripEntriesText = (at: (range: string) => string): string =>
  `IFERROR(TEXTJOIN("|",FALSE,${at(tripEntryRanges.entries)},${at(tripEntryRanges.reports)}),"?")`;

/** Formula text: "NO: one; another. " where any row of the verdicts holds this word, else nothing. */
export const namedFor = (word: string, verdicts: string, what: string): string =>
  `IF(COUNTIF(${verdicts},"${word}")=0,"","${word}: "&TEXTJOIN("; ",TRUE,FILTER(${what},${verdicts}="${word}"))&". ")`;

/** Formula text: no more than so many characters, so that a long list keeps its beginning in sight and says that it goes on. */
export const capped = (text: string, most: number): string => `IF(LEN(${text})>${most},LEFT(${text},${most})&" ... more below",${text})`;

/**
 * Formula text: how many cells are filled between a list and the rows that stood next to it. A range does not grow by a row that is put in
 * above its first or below its last, so what is typed there would be read by nobody. Rows that are taken away do no harm.
 */
export function filledOutside(
  { first, last }: { readonly first: number; readonly last: number },
  from: string,
  to: string,
  next: { readonly above?: number; readonly below?: number },
): string {
  const { above = first, below = last } = next;
  const cells = (top: number, bottom: number): string => `COUNTA($${from}$${top}:$${to}$${bottom})`;
  const apart = [...(above < first ? [above] : []), ...(below > last ? [below] : [])];
  return `(${[cells(above, below), cells(first, last), ...apart.map((row) => cells(row, row))].join('-')})`;
}

export const caution =
  "Planning aid only. The aircraft's approved manual, current official data, local rules and the pilot in command decide. Nothing here is certified or approved.";
