// A template with the user's entries, as far as they can be written with it. Formulas of the user's own are left out: they
// are written as they were read, once every sheet has its name, for which separator and decimal mark they have depends on
// the locale of the spreadsheet.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { CarriedCell } from '../workbook/carriedInputs';
import { rewriteFormula, type NewNames } from '../workbook/formulaText';
import { withEntries } from '../workbook/withEntries';

export interface FilledTemplate {
  /** The cells of formulas of the user's own are there, and blank. */
  readonly template: SheetTemplate;
  readonly entries: readonly CarriedCell[];
  readonly formulas: readonly CarriedCell[];
}

const placeOf = ({ row, column }: { readonly row: number; readonly column: number }): string => `${row}-${column}`;

/** `names`: what the sheets and ranges of the templates are called in the document so far. */
export function fillTemplate(template: SheetTemplate, entries: readonly CarriedCell[], names: NewNames): FilledTemplate {
  const own = new Map(template.cells.map((cell) => [placeOf(cell), cell.formula]));
  /** The template's formula, where the entry is still that; it is written under the new names. */
  const ownFormula = (cell: CarriedCell): string | undefined => {
    const formula = own.get(placeOf(cell));
    return formula !== undefined && ([';', ','] as const).some((separator) => rewriteFormula(formula, names, separator) === cell.content)
      ? formula
      : undefined;
  };
  const isFormula = (cell: CarriedCell): boolean =>
    typeof cell.content === 'string' && cell.content.startsWith('=') && ownFormula(cell) === undefined;
  const written = entries.map((cell) => ({ ...cell, content: isFormula(cell) ? '' : (ownFormula(cell) ?? cell.content) }));
  return { template: withEntries(template, written), entries, formulas: entries.filter(isFormula) };
}
