// The headless workbook as the plain data that the panel reads, sheets of a user's own beside ours, and rows inserted into it.
import type { HeadlessWorkbook } from '../../addon/local/engine/headless';
import { readArea } from '../../addon/workbook/areas';
import type { CellPlace, CellValue, SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { area } from '../../sheets-templates/build';
import type { SheetTemplate, TemplateCell, TemplateValue } from '../../sheets-templates/template';
import { markOf } from './writtenSheet';

/** A sheet of a user's own: cells by their address, text that starts with = is a formula. */
export function ownSheet(name: string, contents: Readonly<Record<string, TemplateValue>>): SheetTemplate {
  const cells = Object.entries(contents).map(([place, content]): TemplateCell => {
    const { row, column } = readArea(place);
    const at = { row, column, style: 'plain' } as const;
    return typeof content === 'string' && content.startsWith('=') ? { ...at, formula: content } : { ...at, value: content };
  });
  const [rows, columns] = [Math.max(...cells.map(({ row }) => row)) + 30, Math.max(...cells.map(({ column }) => column)) + 12];
  return {
    // No template has this name, so the snapshot carries no mark; the engine wants some key that no sheet beside it has.
    key: `own ${name}` as SheetTemplate['key'], name, version: 1, rows, columns, columnWidths: Array<number>(columns).fill(80), rowHeights: {}, frozenRows: 0,
    cells, merges: [], validations: [], verdictRanges: [], names: [], charts: [], print: { landscape: false },
  };
}

function sheetOf(template: SheetTemplate, workbook: HeadlessWorkbook): SheetSnapshot {
  const { name, rows, columns } = template;
  const values: CellValue[][] = workbook.values(name, area(1, 1, rows, columns));
  while (values.length > 0 && values[values.length - 1]?.every((value) => value === '')) values.pop();
  const formulas = template.cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [{ row, column, text: formula }]));
  const isOurs = sheetTemplates.some((one) => one.name === name);
  return { name, ...(isOurs && { mark: markOf(template) }), values, formulas };
}

/** `templates` are those that the workbook was opened with; typing over a formula later does not show in `formulas`. */
export const headlessSnapshot = (templates: readonly SheetTemplate[], workbook: HeadlessWorkbook, selected: WorkbookSnapshot['selected']): WorkbookSnapshot => ({
  sheets: templates.map((template) => sheetOf(template, workbook)),
  names: templates.flatMap(({ name: sheet, names }) => names.map(({ name, range }) => ({ name, sheet, range: range.replace(/\$/g, '') }))),
  selected,
});

export const selecting = (workbook: WorkbookSnapshot, sheet: string, row: number, column = 1): WorkbookSnapshot => ({ ...workbook, selected: { sheet, row, column } });

const reference = /"(?:[^"]|"")*"|(?:'((?:[^']|'')+)'!|\b(\w+)!)?\$?\b[A-Z]{1,3}\$?\d+\b(?::\$?[A-Z]{1,3}\$?\d+\b)?(?!\()/g;
const moved = (range: string, before: number, count: number): string => range.replace(/([A-Z]\$?)(\d+)/g, (_, letters: string, row: string) => `${letters}${Number(row) >= before ? Number(row) + count : row}`);

/** The workbook after a user has inserted empty rows before a row of a sheet: cells, formulas and names move as spreadsheets move them. */
export function withRowsInserted(workbook: WorkbookSnapshot, sheetName: string, before: number, count: number): WorkbookSnapshot {
  const movedIn = (home: string, formula: string): string =>
    formula.replace(reference, (whole: string, quoted?: string, plain?: string) => {
      const named = (quoted ?? plain)?.replace(/''/g, "'");
      if (whole.startsWith('"') || (named ?? home) !== sheetName) return whole;
      const cells = whole.slice(whole.lastIndexOf('!') + 1);
      return whole.slice(0, whole.length - cells.length) + moved(cells, before, count);
    });
  const place = <Cell extends CellPlace>(cell: Cell): Cell => (cell.row >= before ? { ...cell, row: cell.row + count } : cell);
  const sheets = workbook.sheets.map((sheet) => {
    const formulas = sheet.formulas.map((cell) => ({ ...cell, text: movedIn(sheet.name, cell.text) }));
    if (sheet.name !== sheetName) return { ...sheet, formulas };
    const blank = Array.from({ length: count }, () => sheet.values[0]?.map(() => '' as CellValue) ?? []);
    return { ...sheet, values: [...sheet.values.slice(0, before - 1), ...blank, ...sheet.values.slice(before - 1)], formulas: formulas.map(place) };
  });
  const names = workbook.names.map((name) => (name.sheet === sheetName ? { ...name, range: moved(name.range, before, count) } : name));
  return { ...workbook, sheets, names };
}
