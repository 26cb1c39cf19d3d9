// A template laid out as whole rectangles, ready for one call each: values and formulas, formats, looks, notes.
import { dayNumber, serialDayZero } from '../../core/basics/civilDate';
import { formats, type StyleName } from '../../sheets-templates/look';
import type { SheetKey, SheetTemplate, TemplateCell, TemplateValue, Validation } from '../../sheets-templates/template';
import { readArea, type Area } from '../workbook/areas';
import { rewriteFormula, type NewNames } from '../workbook/formulaText';

export type GridValue = string | number | boolean;

export interface SheetGrid {
  readonly rows: number;
  readonly columns: number;
  readonly values: readonly GridValue[][];
  readonly numberFormats: readonly string[][];
  readonly looks: readonly StyleName[][];
  readonly notes: readonly string[][];
  /** Formula cells, and cells into which a formula spills: people should not type there by accident. */
  readonly computed: readonly boolean[][];
}

/** What a cell's text links to: #gid=..., or undefined where that sheet is not in the document. */
export type LinkTo = (key: SheetKey) => string | undefined;

const automatic = 'General';
/** A serial number under a date format is a date, without any time zone in between. */
function serialOf(iso: string): number {
  const [year = 0, month = 0, day = 0] = iso.split('-').map(Number);
  return dayNumber({ year, month, day }) - serialDayZero;
}

/** Text that Sheets would turn into a number, a date, a boolean or a formula, as if typed; it needs the text format. */
export const wouldBeRead = (text: string): boolean =>
  /^\s*['=+\-.,$%(]|^\s*\d|^(true|false)$|^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i.test(text);

const textInFormula = (text: string): string => `"${text.replace(/"/g, '""')}"`;

const cellValue = (value: TemplateValue): GridValue => (typeof value === 'object' ? serialOf(value.date) : value);

function content(cell: TemplateCell, names: NewNames, linkTo: LinkTo): GridValue {
  if (cell.formula !== undefined) return rewriteFormula(cell.formula, names);
  if (cell.value === undefined) return '';
  const link = cell.goesTo === undefined ? undefined : linkTo(cell.goesTo);
  return link === undefined
    ? cellValue(cell.value)
    : rewriteFormula(`=HYPERLINK(${textInFormula(link)},${textInFormula(String(cell.value))})`, names);
}

const isNumber = (text: string): boolean => text.trim() !== '' && Number.isFinite(Number(text));

/** Takes text only: under any other rule the entry may be a number or a date. */
const takesText = (validation: Validation): boolean =>
  validation.kind === 'listFrom' || (validation.kind === 'list' && !validation.choices.some(isNumber));

/** An entry meant for text, blank or filled: what is typed there, 09 say, is to stay as typed. All of a column alike, for text 09 is not equal to 9. */
function isTextEntry(
  { row, column, style, value, formula, format }: TemplateCell,
  rules: readonly (Validation & { readonly area: Area })[],
): boolean {
  if (style !== 'inputText' || formula !== undefined || format !== undefined || (value !== undefined && typeof value !== 'string')) return false;
  const over = ({ area }: { readonly area: Area }): boolean =>
    row >= area.row && row <= area.lastRow && column >= area.column && column <= area.lastColumn;
  return rules.filter(over).every(takesText);
}

function numberFormat({ format, formula, value, goesTo }: TemplateCell): string {
  const isText = typeof value === 'string' && goesTo === undefined;
  if (isText && wouldBeRead(value)) return formats.text;
  // A formula in a cell of format text would be shown, not computed.
  return format === undefined || (format === 'text' && formula !== undefined) ? automatic : formats[format];
}

const spillStyles: ReadonlySet<StyleName> = new Set<StyleName>(['computed', 'computedText', 'reason', 'verdict', 'bigVerdict']);

const isComputed = ({ formula, value, style }: TemplateCell): boolean => formula !== undefined || (value === undefined && spillStyles.has(style));

/** The rectangle from A1 that holds every cell and every range that the sheet names. */
function sizeOf(template: SheetTemplate, cells: readonly TemplateCell[]): { readonly rows: number; readonly columns: number } {
  const ranges = [...template.merges, ...template.validations.map(({ range }) => range), ...template.verdictRanges].map(readArea);
  const last = (numbers: readonly number[]): number => numbers.reduce((most, one) => Math.max(most, one), 1);
  return {
    rows: last([...cells.map(({ row }) => row), ...ranges.map(({ lastRow }) => lastRow)]),
    columns: last([...cells.map(({ column }) => column), ...ranges.map(({ lastColumn }) => lastColumn)]),
  };
}

/** `extra` are cells that the writer adds, such as the data of charts. */
export function sheetGrid(template: SheetTemplate, extra: readonly TemplateCell[], names: NewNames, linkTo: LinkTo): SheetGrid {
  const cells = [...template.cells, ...extra];
  const { rows, columns } = sizeOf(template, cells);
  const filled = <Value>(value: Value): Value[][] => Array.from({ length: rows }, () => Array<Value>(columns).fill(value));
  const grid = {
    rows,
    columns,
    values: filled<GridValue>(''),
    numberFormats: filled<string>(automatic),
    looks: filled<StyleName>('plain'),
    notes: filled(''),
    computed: filled(false),
  };
  const put = <Value>(layer: Value[][], { row, column }: TemplateCell, value: Value): void => {
    const line = layer[row - 1];
    if (line !== undefined) line[column - 1] = value;
  };
  const rules = template.validations.map((validation) => ({ ...validation, area: readArea(validation.range) }));
  for (const cell of cells) {
    put(grid.values, cell, content(cell, names, linkTo));
    put(grid.numberFormats, cell, isTextEntry(cell, rules) ? formats.text : numberFormat(cell));
    put(grid.looks, cell, cell.style);
    put(grid.notes, cell, cell.note ?? '');
    put(grid.computed, cell, isComputed(cell));
  }
  return grid;
}
