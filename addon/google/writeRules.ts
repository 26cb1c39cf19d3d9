// Writes what watches over the cells of a sheet: validation with help, the tints of verdicts, the warning before a
// computed cell is typed over.
import { verdictTints } from '../../sheets-templates/look';
import type { SheetTemplate, Validation } from '../../sheets-templates/template';
import { areasOf, areaText, eachCell, readArea } from '../workbook/areas';
import { rewriteFormula, type NewNames } from '../workbook/formulaText';
import type { SheetGrid } from './sheetGrid';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Rule = GoogleAppsScript.Spreadsheet.DataValidation;

function validationRule(sheet: Sheet, validation: Validation, names: NewNames): Rule {
  const rule = SpreadsheetApp.newDataValidation().setAllowInvalid(false).setHelpText(validation.help);
  switch (validation.kind) {
    case 'list':
      return rule.requireValueInList([...validation.choices], true).build();
    case 'listFrom':
      return rule.requireValueInRange(sourceRange(sheet, validation.source, names), true).build();
    case 'number':
      return rule.requireNumberBetween(validation.minimum, validation.maximum).build();
    case 'date':
      return rule.requireDate().build();
  }
}

/** A range on another sheet is a range of the document. */
function sourceRange(sheet: Sheet, source: string, names: NewNames): GoogleAppsScript.Spreadsheet.Range {
  return source.includes('!') ? sheet.getParent().getRange(rewriteFormula(source, names)) : sheet.getRange(source);
}

export function writeValidations(sheet: Sheet, { validations }: SheetTemplate, grid: SheetGrid, names: NewNames): void {
  if (validations.length === 0) return;
  const rules = Array.from({ length: grid.rows }, () => Array<Rule | null>(grid.columns).fill(null));
  for (const validation of validations) {
    const rule = validationRule(sheet, validation, names);
    eachCell(readArea(validation.range), (row, column) => {
      const line = rules[row - 1];
      if (line !== undefined) line[column - 1] = rule;
    });
  }
  sheet.getRange(1, 1, grid.rows, grid.columns).setDataValidations(rules);
}

export function writeVerdictTints(sheet: Sheet, { verdictRanges }: SheetTemplate): void {
  if (verdictRanges.length === 0) return;
  const ranges = sheet.getRangeList([...verdictRanges]).getRanges();
  const rules = Object.entries(verdictTints).map(([word, tint]) =>
    SpreadsheetApp.newConditionalFormatRule().whenTextEqualTo(word).setBackground(tint).setRanges(ranges).build(),
  );
  sheet.setConditionalFormatRules(rules);
}

/** A warning, not a lock: the user may still mend a formula. `rows` and `columns` are the size of the whole sheet. */
export function writeProtection(sheet: Sheet, grid: SheetGrid, rows: number, columns: number): void {
  if (!grid.computed.some((line) => line.includes(true))) return;
  const free = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => grid.computed[row]?.[column] !== true));
  const protection = sheet.protect();
  protection.setUnprotectedRanges(sheet.getRangeList(areasOf(free).map(areaText)).getRanges());
  protection.setWarningOnly(true);
}
