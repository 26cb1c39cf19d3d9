// The same sheets in a second, independent engine (IronCalc, in Rust). It cannot call our functions, so their answers are
// typed in as values; every formula of built-ins alone is its own to work out.
import { Model } from '@ironcalc/wasm';
import type { CellResult, HeadlessWorkbook } from '../../addon/local/engine/headless';
import { rangeFromA1 } from '../../addon/local/engine/a1';
import { serialFromIso } from '../../addon/workbook/serialDates';
import { address, on } from '../../sheets-templates/build';
import type { SheetTemplate, TemplateValue } from '../../sheets-templates/template';
import { formulaCells, type FormulaCell } from './callGraph';
import { isOurs } from './formulaText';

/** A value as a user of that engine would type it; the apostrophe keeps text text. */
function typed(value: CellResult): string {
  if (value === '') return '=""';
  return typeof value === 'string' ? `'${value}` : String(value).toUpperCase();
}

/** What the second engine gets wrong itself (0.8.4), so that it cannot judge; each with a formula that it answers otherwise than `right`, over 1, "x", 3. */
export const faults: readonly { readonly what: string; readonly of: RegExp; readonly formula?: string; readonly right?: CellResult }[] = [
  { what: 'TEXTJOIN keeps empty texts that it was told to leave out', of: /\bTEXTJOIN\(/, formula: '=TEXTJOIN(";",TRUE,"a","","b")', right: 'a;b' },
  {
    what: 'ISNUMBER of a range inside an array formula answers once for the whole range',
    of: /\bISNUMBER\(\$?[A-Z]+\$?\d+:/,
    formula: '=SUMPRODUCT(ISNUMBER(A1:A3)*1)',
    right: 2,
  },
  {
    what: 'ROW of a range as a factor is the number of its first row alone',
    of: /\*ROW\(/,
    formula: '=SUMPRODUCT((A1:A3<>"x")*ROW(A1:A3))',
    right: 4,
  },
  { what: 'ARRAYFORMULA it does not know', of: /\bARRAYFORMULA\(/, formula: '=ARRAYFORMULA(A1)', right: 1 },
  { what: "its clock is the machine's, not the test's", of: /\bTODAY\(/ },
];
const beyondIt = (formula: string): boolean => faults.some(({ of }) => of.test(formula));

/** What it answers to a formula over these entries of column A. */
export function answerOf(formula: string, entries: readonly CellResult[]): CellResult {
  const model = new Model('faults', 'en', 'UTC', 'en');
  entries.forEach((entry, index) => model.setUserInput(0, index + 1, 1, typed(entry)));
  model.setUserInput(0, 1, 3, formula);
  model.evaluate();
  return read(model, 0, 1, 3);
}

/** Whether the second engine works a formula out by itself. */
const judges = ({ text, formula }: FormulaCell): boolean => !text.calls.some(isOurs) && !beyondIt(formula);

const plain = (value: TemplateValue): CellResult => (typeof value === 'object' ? serialFromIso(value.date) : value);

/** What it answered, as a number where it reads as one. */
function read(model: Model, sheet: number, row: number, column: number): CellResult {
  const text = model.getFormattedCellValue(sheet, row, column);
  const textType = 2;
  if (model.getCellType(sheet, row, column) === textType || text === '') return text;
  if (text === 'TRUE' || text === 'FALSE') return text === 'TRUE';
  // A cell whose formula makes a day gets the format of one there.
  const day = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(text);
  if (day !== null) return serialFromIso(`${day[3]}-${String(day[1]).padStart(2, '0')}-${String(day[2]).padStart(2, '0')}`);
  return Number.isNaN(Number(text)) ? text : Number(text);
}

function fill(model: Model, templates: readonly SheetTemplate[], workbook: HeadlessWorkbook, changed: Readonly<Record<string, TemplateValue>>): void {
  templates.forEach((template, sheet) => {
    for (const { row, column, value } of template.cells) {
      const now = changed[`${template.name}!${address(row, column)}`] ?? value;
      if (now !== undefined && now !== '') model.setUserInput(sheet, row, column, typed(plain(now)));
    }
  });
  const sheets = templates.map(({ name }) => name);
  for (const one of formulaCells(templates)) {
    const { sheet, cell, formula } = one;
    const index = sheets.indexOf(sheet);
    const { startRow, startColumn } = rangeFromA1(cell);
    if (judges(one)) model.setUserInput(index, startRow + 1, startColumn + 1, formula);
    else
      workbook
        .values(sheet, workbook.filled(sheet, cell))
        .forEach((values, r) => values.forEach((value, c) => model.setUserInput(index, startRow + 1 + r, startColumn + 1 + c, typed(value))));
  }
}

export interface Disagreement {
  readonly place: string;
  readonly formula: string;
  readonly ours: CellResult;
  readonly theirs: CellResult;
}

/** General format shows nine decimals, so no more can be compared. */
const shownDecimals = 1e-9;
const agree = (ours: CellResult, theirs: CellResult): boolean =>
  typeof ours === 'number' && typeof theirs === 'number' ? Math.abs(ours - theirs) <= shownDecimals * Math.max(1, Math.abs(ours)) : ours === theirs;

/** Cells of built-in formulas on which the engines disagree, and how many were compared. `changed` is what `workbook` was told. */
export function compareEngines(
  templates: readonly SheetTemplate[],
  workbook: HeadlessWorkbook,
  changed: Readonly<Record<string, TemplateValue>> = {},
): { readonly compared: number; readonly apart: readonly Disagreement[] } {
  const model = new Model('rampwright', 'en', 'UTC', 'en');
  model.pauseEvaluation();
  templates.forEach(({ name }, sheet) => {
    if (sheet > 0) model.newSheet();
    model.renameSheet(sheet, name);
  });
  for (const { name: sheet, names } of templates) for (const { name, range } of names) model.newDefinedName(name, undefined, on(sheet, range));
  fill(model, templates, workbook, changed);
  model.resumeEvaluation();
  model.evaluate();
  const sheets = templates.map(({ name }) => name);
  const all = formulaCells(templates)
    .filter(judges)
    .flatMap(({ sheet, cell, formula }) => {
      const filled = workbook.filled(sheet, cell);
      const { startRow, startColumn } = rangeFromA1(filled);
      return workbook.values(sheet, filled).flatMap((values, r) =>
        values.map((ours, c) => ({
          place: `${sheet} ${address(startRow + r + 1, startColumn + c + 1)}`,
          formula,
          ours,
          theirs: read(model, sheets.indexOf(sheet), startRow + r + 1, startColumn + c + 1),
        })),
      );
    });
  return { compared: all.length, apart: all.filter(({ ours, theirs }) => !agree(ours, theirs)) };
}
