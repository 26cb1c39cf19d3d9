// The sheets with an entry of its own in every cell, so that nothing can arrive in the wrong place unseen.
import type { MigratedEntries } from '../../addon/workbook/migrateEntries';
import type { CellPlace, CellValue, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { typedOver } from './editedWorkbook';
import { writtenSheet } from './writtenSheet';

export const selected = { sheet: 'Start', row: 1, column: 1 };
export const templateOf = (key: SheetKey, templates: readonly SheetTemplate[] = sheetTemplates): SheetTemplate => {
  const found = templates.find((one) => one.key === key);
  if (found === undefined) throw new Error(key);
  return found;
};
export const nameOf = (key: SheetKey): string => templateOf(key).name;

export const isEntry = ({ style }: { readonly style: string }): boolean => style.startsWith('input');
export const isSingle = (template: SheetTemplate, { row, column }: CellPlace): boolean => {
  const entryAt = (at: number): boolean => template.cells.some((cell) => cell.row === at && cell.column === column && isEntry(cell));
  const labelled = template.cells.some((cell) => cell.row === row && cell.column < column && cell.column >= column - 3 && cell.style === 'label');
  return labelled || !(entryAt(row - 1) || entryAt(row + 1));
};

/** The sheets as written, each entry with a number of its own; of every list the upper half, so that rows may be inserted. */
export function uniqueBook(templates: readonly SheetTemplate[] = sheetTemplates): {
  readonly book: WorkbookSnapshot;
  readonly filled: ReadonlyMap<string, CellValue>;
} {
  const filled = new Map<string, CellValue>();
  let book: WorkbookSnapshot = {
    sheets: templates.map(writtenSheet),
    names: templates.flatMap(({ name: sheet, names }) => names.map(({ name, range }) => ({ name, sheet, range }))),
    selected,
  };
  for (const template of templates) {
    const entries = template.cells.filter(isEntry);
    const contents = entries.map((cell, index) => {
      const lower = !isSingle(template, cell) && templateHalf(template, cell);
      const content: CellValue = lower ? '' : 1_000_000 + templates.indexOf(template) * 10_000 + index;
      if (content !== '') filled.set(`${template.key} ${address(cell.row, cell.column)}`, content);
      return { row: cell.row, column: cell.column, content };
    });
    book = typedOver(book, template.name, contents);
  }
  return { book, filled };
}

/** The cell lies in the lower half of the entries below one another that it is one of. */
function templateHalf({ cells }: SheetTemplate, { row, column }: CellPlace): boolean {
  const rows = new Set(cells.filter((cell) => cell.column === column && isEntry(cell)).map((cell) => cell.row));
  let [first, last] = [row, row];
  while (rows.has(first - 1)) first -= 1;
  while (rows.has(last + 1)) last += 1;
  return last > first && row > (first + last) / 2;
}

export const carried = ({ entries }: MigratedEntries): Map<string, CellValue> =>
  new Map(entries.flatMap(({ key, cells }) => cells.map(({ row, column, content }) => [`${key} ${address(row, column)}`, content] as const)));
