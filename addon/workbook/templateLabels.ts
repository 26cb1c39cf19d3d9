// The fixed texts of a template by which its sheet is known again: titles, heads and labels, in their places.
import { isEntry, type SheetTemplate, type TemplateCell } from '../../sheets-templates/template';
import type { CellPlace, CellValue, SheetSnapshot } from './snapshot';

export interface Label extends CellPlace {
  readonly text: string;
}

/** Left out: units, which people put right for themselves, and links, which are named after sheets. */
const isLabel = (cell: TemplateCell): boolean => !isEntry(cell) && cell.style !== 'unit' && cell.goesTo === undefined;

const asText = (value: CellValue | undefined): string => (typeof value === 'string' ? value.trim() : '');

const textsOf = ({ cells }: SheetTemplate, wanted: (cell: TemplateCell) => boolean): Label[] =>
  cells.flatMap((cell) => {
    const { row, column, value, formula, shows } = cell;
    const text = shows ?? (formula === undefined && typeof value === 'string' ? value.trim() : '');
    return text !== '' && wanted(cell) ? [{ row, column, text }] : [];
  });

export const labelsOf = (template: SheetTemplate): Label[] => textsOf(template, isLabel);

/** Those that are written, not put there by an answer that may be an error today. */
export const writtenLabels = (template: SheetTemplate): Label[] => textsOf(template, (cell) => isLabel(cell) && cell.shows === undefined);

/** Every text that is no entry, row by row. */
export const fixedTexts = (template: SheetTemplate): Label[] =>
  textsOf(template, (cell) => !isEntry(cell)).sort((one, other) => one.row - other.row || one.column - other.column);

/** The text that says what a cell is: the nearest to its left in its row, else the nearest above it. */
export function labelOf(labels: readonly Label[], row: number, column: number): Label | undefined {
  let left: Label | undefined;
  let above: Label | undefined;
  for (const label of labels) {
    if (label.row === row && label.column <= column && (left === undefined || label.column > left.column)) left = label;
    if (label.column === column && label.row < row && (above === undefined || label.row > above.row)) above = label;
  }
  return left ?? above;
}

export const valueAt = ({ values }: Pick<SheetSnapshot, 'values'>, row: number, column: number): CellValue => values[row - 1]?.[column - 1] ?? '';

export const textAt = (sheet: Pick<SheetSnapshot, 'values'>, row: number, column: number): string => asText(valueAt(sheet, row, column));
