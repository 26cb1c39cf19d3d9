// Writes what watches over cells: validation with help, the tints of verdicts, the warning before a computed cell is
// typed over.
import { verdictTints } from '../../sheets-templates/look';
import type { Validation } from '../../sheets-templates/template';
import { areasOf, areaText, eachCell, type Area } from '../workbook/areas';
import { rewriteFormula, type NewNames } from '../workbook/formulaText';
import type { SheetGrid } from './sheetGrid';
import { onCarrier, type Stack } from './stack';

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

/** A range on another sheet is a range of the document. Named with dollar signs, so that it stays where it is when the rule is copied. */
function sourceRange(sheet: Sheet, source: string, names: NewNames): GoogleAppsScript.Spreadsheet.Range {
  if (source.includes('!')) return sheet.getParent().getRange(rewriteFormula(source, names));
  return sheet.getRange(source.replace(/\$/g, '').replace(/[A-Z]+|\d+/g, '$$$&'));
}

/** Rules of all pieces, on the carrier; a list from a piece's own sheet is read from that sheet. */
export function writeValidations(carrier: Sheet, { pieces, rows, columns }: Stack, sheets: readonly Sheet[], names: NewNames): void {
  const rules = Array.from({ length: rows }, () => Array<Rule | null>(columns).fill(null));
  pieces.forEach((piece, index) => {
    const sheet = sheets[index];
    if (sheet === undefined) return;
    for (const validation of piece.template.validations) {
      const rule = validationRule(sheet, validation, names);
      for (const area of onCarrier(piece, validation.range)) {
        eachCell(area, (row, column) => {
          const line = rules[row - 1];
          if (line !== undefined) line[column - 1] = rule;
        });
      }
    }
  });
  if (rules.some((line) => line.some((rule) => rule !== null))) carrier.getRange(1, 1, rows, columns).setDataValidations(rules);
}

export function writeVerdictTints(sheet: Sheet, verdictRanges: readonly Area[]): void {
  if (verdictRanges.length === 0) return;
  const ranges = sheet.getRangeList(verdictRanges.map(areaText)).getRanges();
  const rules = Object.entries(verdictTints).map(([word, tint]) =>
    SpreadsheetApp.newConditionalFormatRule().whenTextEqualTo(word).setBackground(tint).setRanges(ranges).build(),
  );
  sheet.setConditionalFormatRules(rules);
}

/** A warning, not a lock: the user may still mend a formula. `rows` and `columns` are the size of the whole sheet. */
export function writeProtection(sheet: Sheet, { computed }: SheetGrid, rows: number, columns: number): void {
  const [only, ...others] = areasOf(computed);
  if (only === undefined) return;
  if (others.length === 0) {
    sheet.getRange(areaText(only)).protect().setWarningOnly(true);
    return;
  }
  const free = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => computed[row]?.[column] !== true));
  const protection = sheet.protect();
  protection.setUnprotectedRanges(sheet.getRangeList(areasOf(free).map(areaText)).getRanges());
  protection.setWarningOnly(true);
}
