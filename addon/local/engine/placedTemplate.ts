// A template on its way into a workbook: what its sheet and its ranges are called there.
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import { rewriteFormula, type NewNames } from '../../workbook/formulaText';
import { markFor } from '../../workbook/insertionPlan';
import type { SheetMark } from '../../workbook/snapshot';
import { firstSet } from './sheetMark';
import { sheetIdOf } from './workbookIds';

export interface PlacedTemplate {
  /** Its name, its formulas and its range names as they are in the workbook. */
  readonly template: SheetTemplate;
  readonly sheetId: string;
  readonly mark: SheetMark;
  /** Identifier of the sheet that a cell goes to; undefined where the workbook has none. */
  readonly linkTo: (key: SheetKey) => string | undefined;
}

/** The only set of a new workbook: everything keeps its name. */
export const firstPlaced = (templates: readonly SheetTemplate[]): PlacedTemplate[] =>
  templates.map((template) => {
    const mark = markFor(template, firstSet, { sheets: new Map(), ranges: new Map() });
    return { template, sheetId: sheetIdOf(template.key), mark, linkTo: sheetIdOf };
  });

/** The template under a sheet name and range names of the workbook it goes to. */
export function underNames(template: SheetTemplate, sheetName: string, names: NewNames): SheetTemplate {
  const rewritten = (formula: string): string => rewriteFormula(formula, names, ',');
  return {
    ...template,
    name: sheetName,
    cells: template.cells.map((cell) => (cell.formula === undefined ? cell : { ...cell, formula: rewritten(cell.formula) })),
    validations: template.validations.map((one) => (one.kind === 'listFrom' ? { ...one, source: rewritten(one.source) } : one)),
    names: template.names.map(({ name, range }) => ({ name: names.ranges.get(name) ?? name, range })),
  };
}
