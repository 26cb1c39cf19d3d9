// A template with a user's own entries in the place of the invented ones.
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';
import { areaText } from './areas';
import type { CarriedCell } from './carriedInputs';
import type { CellValue } from './snapshot';

const isEntry = ({ style }: TemplateCell): boolean => style === 'input' || style === 'inputText';

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

/**
 * Every entry cell holds what was carried to it, or nothing; all else is as in the template. Throws where something was
 * carried to a cell that is no entry cell, or two things to one cell: nothing of the user's may be dropped unseen.
 */
export function withEntries(template: SheetTemplate, carried: readonly CarriedCell[]): SheetTemplate {
  const contents = new Map(carried.map((cell) => [keyOf(cell), cell.content]));
  if (contents.size < carried.length) throw new Error(`Two entries were to go into one cell of "${template.name}".`);
  const cells = template.cells.map((cell) => {
    if (!isEntry(cell)) return cell;
    const content = contents.get(keyOf(cell)) ?? '';
    contents.delete(keyOf(cell));
    return { ...blank(cell), ...filledWith(content) };
  });
  const left = carried.find((cell) => contents.has(keyOf(cell)));
  if (left !== undefined) throw new Error(`"${template.name}" has no entry cell ${areaText({ ...left, lastRow: left.row, lastColumn: left.column })}, where an entry was to go.`);
  return { ...template, cells };
}
