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

/** Where a template has entries, by column, and labels, by row: looked up for each of thousands of entries. */
interface Layout {
  readonly entries: ReadonlyMap<number, ReadonlySet<number>>;
  readonly labels: ReadonlyMap<number, ReadonlySet<number>>;
}
const layouts = new WeakMap<SheetTemplate, Layout>();

function grouped(cells: readonly CellPlace[], by: 'row' | 'column', of: 'row' | 'column'): Map<number, Set<number>> {
  const groups = new Map<number, Set<number>>();
  for (const cell of cells) groups.set(cell[by], (groups.get(cell[by]) ?? new Set()).add(cell[of]));
  return groups;
}

function layoutOf(template: SheetTemplate): Layout {
  const known = layouts.get(template);
  if (known !== undefined) return known;
  const layout = {
    entries: grouped(template.cells.filter(isEntry), 'column', 'row'),
    labels: grouped(
      template.cells.filter(({ style }) => style === 'label'),
      'row',
      'column',
    ),
  };
  layouts.set(template, layout);
  return layout;
}

export const isSingle = (template: SheetTemplate, { row, column }: CellPlace): boolean => {
  const { entries, labels } = layoutOf(template);
  const rows = entries.get(column);
  const labelled = [1, 2, 3].some((before) => labels.get(row)?.has(column - before) === true);
  return labelled || !(rows?.has(row - 1) === true || rows?.has(row + 1) === true);
};

interface UniqueBook {
  readonly book: WorkbookSnapshot;
  readonly filled: ReadonlyMap<string, CellValue>;
}
const made = new WeakMap<readonly SheetTemplate[], UniqueBook>();

/** The sheets as written, each entry with a number of its own; of every list the upper half, so that rows may be inserted. */
export function uniqueBook(templates: readonly SheetTemplate[] = sheetTemplates): UniqueBook {
  const unique = made.get(templates) ?? makeUnique(templates);
  made.set(templates, unique);
  return unique;
}

function makeUnique(templates: readonly SheetTemplate[]): UniqueBook {
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
function templateHalf(template: SheetTemplate, { row, column }: CellPlace): boolean {
  const rows = layoutOf(template).entries.get(column);
  let [first, last] = [row, row];
  while (rows?.has(first - 1) === true) first -= 1;
  while (rows?.has(last + 1) === true) last += 1;
  return last > first && row > (first + last) / 2;
}

export const carried = ({ entries }: MigratedEntries): Map<string, CellValue> =>
  new Map(entries.flatMap(({ key, cells }) => cells.map(({ row, column, content }) => [`${key} ${address(row, column)}`, content] as const)));
