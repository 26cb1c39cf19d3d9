// A template as a sheet stands right after it was written, before anything is computed; and what a user may do to its rows.
import type { CellValue, FormulaCell, SheetMark, SheetSnapshot } from '../../addon/workbook/snapshot';
import { serialFromIso } from '../../addon/workbook/serialDates';
import type { SheetTemplate, TemplateValue } from '../../sheets-templates/template';

export const asCellValue = (value: TemplateValue): CellValue => (typeof value === 'object' ? serialFromIso(value.date) : value);

export const markOf = ({ key, version, names }: SheetTemplate, set = 'one'): SheetMark => ({
  key,
  version,
  set,
  names: Object.fromEntries(names.map(({ name }) => [name, name])),
});

/** Formula cells show nothing, but for the heads that an answer always has. */
export function writtenSheet(template: SheetTemplate): SheetSnapshot {
  const values = Array.from({ length: template.rows }, () => Array<CellValue>(template.columns).fill(''));
  const formulas: FormulaCell[] = [];
  for (const { row, column, value, formula, shows } of template.cells) {
    const line = values[row - 1];
    if (line !== undefined && value !== undefined) line[column - 1] = asCellValue(value);
    if (line !== undefined && shows !== undefined) line[column - 1] = shows;
    if (formula !== undefined) formulas.push({ row, column, text: formula });
  }
  return { name: template.name, mark: markOf(template), values, formulas };
}
