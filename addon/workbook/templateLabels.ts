// The fixed texts of a template by which its sheet is known again: titles, heads and labels, in their places.
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';
import type { CellPlace, CellValue, SheetSnapshot } from './snapshot';

export interface Label extends CellPlace {
  readonly text: string;
}

export const isEntry = ({ style, formula }: TemplateCell): boolean => style.startsWith('input') && formula === undefined;

/** Left out: units, which people put right for themselves, and links, which are named after sheets. */
const isLabel = ({ style, goesTo }: TemplateCell): boolean => !style.startsWith('input') && style !== 'unit' && goesTo === undefined;

export const asText = (value: CellValue | undefined): string => (typeof value === 'string' ? value.trim() : '');

export const labelsOf = ({ cells }: SheetTemplate): Label[] =>
  cells.flatMap((cell) => {
    const { row, column, value, formula } = cell;
    return formula === undefined && typeof value === 'string' && value.trim() !== '' && isLabel(cell) ? [{ row, column, text: value.trim() }] : [];
  });

export const valueAt = ({ values }: SheetSnapshot, row: number, column: number): CellValue => values[row - 1]?.[column - 1] ?? '';

export const textAt = (sheet: SheetSnapshot, row: number, column: number): string => asText(valueAt(sheet, row, column));
