// The headless workbook as the plain data that the panel reads, sheets of a user's own beside ours, and rows inserted into it.
import type { HeadlessWorkbook } from '../../addon/local/engine/headless';
import { readArea } from '../../addon/workbook/areas';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { area } from '../../sheets-templates/build';
import type { SheetTemplate, TemplateCell, TemplateValue } from '../../sheets-templates/template';
import { edited } from './editedWorkbook';
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
    key: `own ${name}` as SheetTemplate['key'],
    name,
    version: 1,
    rows,
    columns,
    columnWidths: Array<number>(columns).fill(80),
    rowHeights: {},
    frozenRows: 0,
    cells,
    merges: [],
    validations: [],
    verdictRanges: [],
    names: [],
    charts: [],
    print: { landscape: false },
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
export const headlessSnapshot = (
  templates: readonly SheetTemplate[],
  workbook: HeadlessWorkbook,
  selected: WorkbookSnapshot['selected'],
): WorkbookSnapshot => ({
  sheets: templates.map((template) => sheetOf(template, workbook)),
  names: templates.flatMap(({ name: sheet, names }) => names.map(({ name, range }) => ({ name, sheet, range: range.replace(/\$/g, '') }))),
  selected,
});

export const selecting = (workbook: WorkbookSnapshot, sheet: string, row: number, column = 1): WorkbookSnapshot => ({
  ...workbook,
  selected: { sheet, row, column },
});

/** The workbook after a user has inserted empty rows before a row of a sheet: cells, formulas and names move as spreadsheets move them. */
export const withRowsInserted = (workbook: WorkbookSnapshot, sheet: string, before: number, count: number): WorkbookSnapshot =>
  edited(workbook, { sheet, lines: 'row', at: before, inserted: count });
