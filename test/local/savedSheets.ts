// Saved workbooks for the tests of what is done to them: the demo with a user's own sheets, and templates of a later version.
import type { IWorkbookData } from '@univerjs/core';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { workbookData } from '../../addon/local/engine/workbookData';
import type { CarriedSheet } from '../../addon/workbook/carriedInputs';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { area, cell } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { ownSheet } from '../support/headlessSnapshot';

export const everyKey = sheetTemplates.map(({ key }) => key);

export const templateOf = (key: string): SheetTemplate => {
  const found = sheetTemplates.find((template) => template.key === key);
  if (found === undefined) throw new Error(key);
  return found;
};

export const sheetIn = (snapshot: WorkbookSnapshot, name: string): SheetSnapshot => {
  const found = snapshot.sheets.find((sheet) => sheet.name === name);
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
};

export const at = (sheet: SheetSnapshot, row: number, column: number): CellValue => sheet.values[row - 1]?.[column - 1] ?? '';

/** Opens the templates, lets `act` do what a user would, and hands over what the page would save. */
export async function savedAfter(
  templates: readonly SheetTemplate[],
  act: (workbook: HeadlessWorkbook) => Promise<void> = async () => undefined,
): Promise<IWorkbookData> {
  const workbook = await openHeadless(templates);
  await act(workbook);
  const data = workbook.saved();
  workbook.dispose();
  // The headless engine keeps nothing for the plugins of the screen; the page does.
  const kept = new Set((data.resources ?? []).map(({ name }) => name));
  return { ...data, resources: [...(data.resources ?? []), ...(workbookData(templates).resources ?? []).filter(({ name }) => !kept.has(name))] };
}

/** The same sheet as a later version may have it: a column with a label and a name that are new. */
export function laterVersion({ cells, ...template }: SheetTemplate): SheetTemplate {
  const columns = template.columns + 1;
  const added = cell(1, columns, 'new in this version', 'label');
  const names = [...template.names, { name: `added_${template.key}`, range: area(1, columns, 1, columns) }];
  return { ...template, version: template.version + 1, columns, columnWidths: [...template.columnWidths, 160], cells: [...cells, added], names };
}

/** As the grid leaves a workbook whose sheet was deleted, save that formulas and names still say where they pointed. */
export const withoutSheet = (data: IWorkbookData, gone: string): IWorkbookData => ({
  ...data,
  sheets: Object.fromEntries(Object.entries(data.sheets).filter(([id]) => id !== gone)),
  sheetOrder: data.sheetOrder.filter((id) => id !== gone),
});

/** What stands in the entry cells of the templates' sheets, to be carried over; `names` are those of the sheets by key. */
export function entriesOf(snapshot: WorkbookSnapshot, names: Readonly<Record<string, string>> = {}): CarriedSheet[] {
  return sheetTemplates.map(({ key, name, cells }) => {
    const sheet = sheetIn(snapshot, names[key] ?? name);
    const contentAt = (row: number, column: number): CellValue =>
      sheet.formulas.find((one) => one.row === row && one.column === column)?.text ?? at(sheet, row, column);
    const entries = cells.filter(({ style }) => style === 'input' || style === 'inputText');
    return {
      key,
      cells: entries.map(({ row, column }) => ({ row, column, content: contentAt(row, column) })).filter(({ content }) => content !== ''),
    };
  });
}

export { ownSheet };
