// The entries of a template, each with the words by which it is known: single entries by the label beside them, lists by
// the heads of their columns.
import type { SheetTemplate, TemplateCell } from '../../../sheets-templates/template';
import { readArea, type Area } from '../areas';
import { readFormula } from '../formulaReading';
import type { CellPlace } from '../snapshot';
import { isEntry, labelsOf, type Label } from '../templateLabels';
import { headingsOf, sectionOf, type Heading } from './sections';

export interface SingleEntry {
  readonly cell: TemplateCell;
  readonly section: string;
  readonly label: Label;
  /** The head above its column, in its section. */
  readonly head: Label | undefined;
  /** The range name of the template that means this cell. */
  readonly name: string | undefined;
}

export interface ListColumn {
  readonly column: number;
  readonly head: Label | undefined;
}

export interface EntryList {
  readonly section: string;
  readonly first: number;
  /** The last row that the sheet has room for: some lists are read further down than they are tinted. */
  readonly last: number;
  readonly columns: readonly ListColumn[];
}

export interface TemplateEntries {
  readonly template: SheetTemplate;
  readonly headings: readonly Heading[];
  readonly labels: readonly Label[];
  readonly singles: readonly SingleEntry[];
  readonly lists: readonly EntryList[];
}

const keyOf = ({ row, column }: CellPlace): string => `${row} ${column}`;

/** The nearest label in the row, over cells of the template without a gap: to the left, else to the right. */
function labelBeside(cell: TemplateCell, used: ReadonlySet<string>, labels: ReadonlyMap<string, Label>): Label | undefined {
  for (const step of [-1, 1]) {
    for (let column = cell.column + step; used.has(keyOf({ row: cell.row, column })); column += step) {
      const label = labels.get(keyOf({ row: cell.row, column }));
      if (label !== undefined) return label;
    }
  }
  return undefined;
}

const headAbove = (labels: readonly Label[], headings: readonly Heading[], { row, column }: CellPlace): Label | undefined => {
  const section = sectionOf(headings, { row, column });
  return labels.filter((label) => label.column === column && label.row < row && sectionOf(headings, label) === section).sort((one, other) => other.row - one.row)[0];
};

/** Cells below one another without a gap, column by column. */
function runsOf(cells: readonly TemplateCell[]): TemplateCell[][] {
  const runs: TemplateCell[][] = [];
  for (const cell of [...cells].sort((one, other) => one.column - other.column || one.row - other.row)) {
    const last = runs[runs.length - 1]?.slice(-1)[0];
    if (last !== undefined && last.column === cell.column && last.row === cell.row - 1) runs[runs.length - 1]?.push(cell);
    else runs.push([cell]);
  }
  return runs;
}

/** Ranges of a template's sheet that the formulas of all templates read. */
export function rangesRead(templates: readonly SheetTemplate[]): Map<string, Area[]> {
  const ranges = new Map<string, Area[]>();
  for (const { name, cells } of templates)
    for (const { formula } of cells)
      for (const { sheet = name, area } of formula === undefined ? [] : readFormula(formula).references)
        if (area !== undefined && area.lastRow > area.row) ranges.set(sheet, [...(ranges.get(sheet) ?? []), area]);
  return ranges;
}

/** How far down a column that holds this cell is read, where nothing else of the template stands in the way. */
function readDownTo(template: SheetTemplate, read: readonly Area[], { row, column }: CellPlace): number {
  const next = Math.min(template.rows + 1, ...template.cells.filter((cell) => cell.column === column && cell.row > row).map((cell) => cell.row));
  const down = read.filter((area) => area.row <= row && area.lastRow >= row && area.column <= column && area.lastColumn >= column).map(({ lastRow }) => lastRow);
  return Math.min(next - 1, Math.max(row, ...down));
}

function listsOf(runs: readonly (readonly TemplateCell[])[], labels: readonly Label[], headings: readonly Heading[], lastRowOf: (cell: TemplateCell) => number): EntryList[] {
  const lists = new Map<string, { section: string; first: number; last: number; columns: ListColumn[] }>();
  for (const run of runs) {
    const [first, last] = [run[0], run[run.length - 1]];
    if (first === undefined || last === undefined) continue;
    const section = sectionOf(headings, first);
    const key = `${section} ${first.row} ${last.row}`;
    const list = lists.get(key) ?? { section, first: first.row, last: last.row, columns: [] };
    list.last = Math.max(list.last, lastRowOf(last));
    list.columns.push({ column: first.column, head: headAbove(labels, headings, first) });
    lists.set(key, list);
  }
  return [...lists.values()];
}

/** `read`: see rangesRead. */
export function entriesOf(template: SheetTemplate, read: readonly Area[]): TemplateEntries {
  const labels = labelsOf(template);
  const headings = headingsOf(template);
  const byPlace = new Map(labels.filter((label) => !headings.some((heading) => keyOf(heading) === keyOf(label))).map((label) => [keyOf(label), label]));
  const used = new Set(template.cells.map(keyOf));
  const nameOf = new Map(template.names.flatMap(({ name, range }) => (range.includes(':') ? [] : [[keyOf(readArea(range)), name] as const])));
  const singles: SingleEntry[] = [];
  const listed: TemplateCell[] = [];
  for (const cell of template.cells.filter(isEntry)) {
    const label = labelBeside(cell, used, byPlace);
    if (label === undefined) listed.push(cell);
    else singles.push({ cell, section: sectionOf(headings, cell), label, head: headAbove(labels, headings, cell), name: nameOf.get(keyOf(cell)) });
  }
  return { template, headings, labels, singles, lists: listsOf(runsOf(listed), labels, headings, (cell) => readDownTo(template, read, cell)) };
}
