// What becomes of the content of an entry on its way: values as they are; a formula stays one if it reads no cell, for the
// cells that it reads stand elsewhere in the new sheet, or mean something else there.
import { address } from '../../../sheets-templates/build';
import type { TemplateCell } from '../../../sheets-templates/template';
import { readFormula } from '../formulaReading';
import { formulaShape } from '../formulaSense';
import { rewriteFormula, type ArgumentSeparator, type NewNames } from '../formulaText';
import type { CellPlace, CellValue, SheetSnapshot } from '../snapshot';
import { valueAt } from '../templateLabels';

export interface Content {
  readonly content: CellValue;
  /** For the user, where the content is not what it was. */
  readonly note?: string;
  /** For the user, where it cannot be carried. */
  readonly refusal?: string;
}

export interface OldDocument {
  readonly names: NewNames;
  readonly separator: ArgumentSeparator;
}

const readsCells = (formula: string): boolean => {
  const { references, words } = readFormula(formula);
  return references.length > 0 || words.some((word) => !/^(true|false)$/i.test(word));
};

const isError = (value: CellValue): boolean => typeof value === 'string' && /^#[A-Z/0]+[!?A]$/.test(value);

function ofFormula(formula: string, value: CellValue, where: string, target: TemplateCell | undefined, document: OldDocument): Content {
  if (!readsCells(formula)) return { content: formula };
  if (target?.formula !== undefined) {
    const content = rewriteFormula(target.formula, document.names, document.separator);
    return formulaShape(formula) === formulaShape(target.formula)
      ? { content }
      : { content, note: `${where} held the formula ${formula}; the sheet's own formula of today is in its place.` };
  }
  if (isError(value))
    return { content: '', note: `${where} held the formula ${formula}, which shows ${String(value)}; it is blank in today's sheet.` };
  return {
    content: value,
    note: `${where} held the formula ${formula}, which reads other cells; its value ${JSON.stringify(value)} is in today's sheet, without the formula.`,
  };
}

/** `leavesFormula`: what a formula there reads cells for is read elsewhere now. */
export function contentOf(
  sheet: SheetSnapshot,
  from: CellPlace,
  target: TemplateCell | undefined,
  document: OldDocument,
  leavesFormula: boolean,
): Content {
  const where = `${address(from.row, from.column)} of "${sheet.name}"`;
  const formula = sheet.formulas.find(({ row, column }) => row === from.row && column === from.column)?.text;
  const value = valueAt(sheet, from.row, from.column);
  if (formula !== undefined && leavesFormula && readsCells(formula))
    return { content: '', note: `${where} held the formula ${formula}; today's sheet reads the report itself, and that entry is blank.` };
  if (formula !== undefined) return ofFormula(formula, value, where, target, document);
  if (typeof value === 'string' && value.startsWith('='))
    return { content: '', refusal: `${where} holds the text ${value}, which would become a formula. Put a word before the = sign, then ask again.` };
  return isError(value) ? { content: '', note: `${where} shows ${String(value)}; it is blank in today's sheet.` } : { content: value };
}
