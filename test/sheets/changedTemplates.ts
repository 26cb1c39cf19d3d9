// Templates with some cells typed over, so that an edited workbook can be compared with one that was opened so.
import { rangeFromA1 } from '../../addon/local/engine/a1';
import type { CellResult, HeadlessWorkbook } from '../../addon/local/engine/headless';
import { area } from '../../sheets-templates/build';
import type { SheetTemplate, TemplateCell, TemplateValue } from '../../sheets-templates/template';

export type Changes = Readonly<Record<string, TemplateValue>>;

function typedOver(cell: TemplateCell, value: TemplateValue): TemplateCell {
  const { row, column, style, format } = cell;
  const bare = { row, column, style, ...(format !== undefined && { format }) };
  if (value === '') return bare;
  return typeof value === 'string' && value.startsWith('=') ? { ...bare, formula: value } : { ...bare, value };
}

export function changedTemplates(templates: readonly SheetTemplate[], sheet: string, changes: Changes): SheetTemplate[] {
  return templates.map((template) => {
    if (template.name !== sheet) return template;
    const cells = new Map(template.cells.map((cell) => [`${cell.row} ${cell.column}`, cell]));
    for (const [reference, value] of Object.entries(changes)) {
      const { startRow, startColumn } = rangeFromA1(reference);
      const key = `${startRow + 1} ${startColumn + 1}`;
      cells.set(key, typedOver(cells.get(key) ?? { row: startRow + 1, column: startColumn + 1, style: 'computed' }, value));
    }
    return { ...template, cells: [...cells.values()] };
  });
}

/** Every cell of every sheet, row by row. */
export const everything = (templates: readonly SheetTemplate[], workbook: HeadlessWorkbook): Record<string, CellResult[][]> =>
  Object.fromEntries(templates.map(({ name, rows, columns }) => [name, workbook.values(name, area(1, 1, rows, columns))]));
