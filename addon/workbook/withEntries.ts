// A template with a user's own entries in the place of the invented ones.
import { isEntry, type SheetTemplate, type TemplateCell } from '../../sheets-templates/template';
import { areaText } from './areas';
import type { CarriedCell } from './carriedInputs';
import type { CellValue } from './snapshot';

const keyOf = ({ row, column }: Pick<TemplateCell, 'row' | 'column'>): string => `${row}-${column}`;

function blank(cell: TemplateCell): TemplateCell {
  const emptied: { -readonly [Key in keyof TemplateCell]: TemplateCell[Key] } = { ...cell };
  delete emptied.value;
  delete emptied.formula;
  return emptied;
}

/** Text that starts with = is a formula; an empty text leaves the cell blank. */
function filledWith(content: CellValue): Pick<TemplateCell, 'value' | 'formula'> {
  if (content === '') return {};
  return typeof content === 'string' && content.startsWith('=') ? { formula: content } : { value: content };
}

/** A list has room below its tinted rows where formulas read on: such a cell looks like the last one above it. */
function belowList({ cells, rows }: SheetTemplate, { row, column }: CarriedCell): TemplateCell | undefined {
  const above = cells.filter((cell) => cell.column === column && cell.row <= row).sort((one, other) => other.row - one.row);
  const [last, before] = above;
  const isList = last !== undefined && before !== undefined && isEntry(last) && isEntry(before) && before.row === last.row - 1;
  return isList && last.row < row && row <= rows ? { ...blank(last), row } : undefined;
}

/**
 * Every entry cell holds what was carried to it, or nothing; all else is as in the template. Throws where something was
 * carried to a cell that is no place for an entry, or two things to one cell: nothing of the user's may be dropped unseen.
 */
export function withEntries(template: SheetTemplate, carried: readonly CarriedCell[]): SheetTemplate {
  const byPlace = new Map(carried.map((cell) => [keyOf(cell), cell]));
  if (byPlace.size < carried.length) throw new Error(`Two entries were to go into one cell of "${template.name}".`);
  const cells = template.cells.map((cell) => {
    if (!isEntry(cell)) return cell;
    const content = byPlace.get(keyOf(cell))?.content ?? '';
    byPlace.delete(keyOf(cell));
    return { ...blank(cell), ...filledWith(content) };
  });
  const added = [...byPlace.values()].map((entry) => {
    const cell = belowList(template, entry);
    if (cell === undefined)
      throw new Error(
        `"${template.name}" has no entry cell ${areaText({ ...entry, lastRow: entry.row, lastColumn: entry.column })}, where an entry was to go.`,
      );
    return { ...cell, ...filledWith(entry.content) };
  });
  return { ...template, cells: [...cells, ...added] };
}
