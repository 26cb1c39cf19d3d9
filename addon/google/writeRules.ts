// Writes what watches over cells: validation with help, the tints of verdicts, the warning before a computed cell is
// typed over.
import { verdictTints } from '../../sheets-templates/look';
import { isEntry, type Validation } from '../../sheets-templates/template';
import { areasOf, areaText, eachCell, readArea, type Area } from '../workbook/areas';
import { rewriteFormula } from '../workbook/formulaText';
import type { InsertionPlan } from '../workbook/insertionPlan';
import type { SheetGrid } from './sheetGrid';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
type Rule = GoogleAppsScript.Spreadsheet.DataValidation;
type RangeOf = (source: string) => Range;

function validationRule(validation: Validation, rangeOf: RangeOf): Rule {
  const rule = SpreadsheetApp.newDataValidation().setAllowInvalid(false).setHelpText(validation.help);
  switch (validation.kind) {
    case 'list':
      return rule.requireValueInList([...validation.choices], true).build();
    case 'listFrom':
      return rule.requireValueInRange(rangeOf(validation.source), true).build();
    case 'number':
      return rule.requireNumberBetween(validation.minimum, validation.maximum).build();
    case 'date':
      return rule.requireDate().build();
  }
}

/** Where a list stands: on the sheet itself, on another new one, whatever that is called by now, or on one that was there already. */
function sourceRange(sheet: Sheet, { added, names }: InsertionPlan, sheets: readonly Sheet[]): RangeOf {
  return (source) => {
    const [, name, place = source] = /^'(.*)'!(.*)$/.exec(source) ?? [];
    if (name === undefined) return sheet.getRange(place);
    const other = sheets[added.findIndex(({ template }) => template.name === name)];
    return other === undefined ? sheet.getParent().getRange(rewriteFormula(source, names)) : other.getRange(place);
  };
}

/**
 * The rules of every new sheet. They come last of all: the platform refuses to write a value that a rule of its cell does
 * not allow, and the menus of lists are blank until the sheet they are on is written.
 */
export function writeValidations(plan: InsertionPlan, sheets: readonly Sheet[]): void {
  plan.added.forEach(({ template: { validations } }, index) => {
    const sheet = sheets[index];
    if (sheet === undefined || validations.length === 0) return;
    const rules = validations.map((validation) => ({
      area: readArea(validation.range),
      rule: validationRule(validation, sourceRange(sheet, plan, sheets)),
    }));
    const [rows, columns] = [Math.max(...rules.map(({ area }) => area.lastRow)), Math.max(...rules.map(({ area }) => area.lastColumn))];
    const grid = Array.from({ length: rows }, () => Array<Rule | null>(columns).fill(null));
    for (const { area, rule } of rules) {
      eachCell(area, (row, column) => {
        const line = grid[row - 1];
        if (line !== undefined) line[column - 1] = rule;
      });
    }
    sheet.getRange(1, 1, rows, columns).setDataValidations(grid);
  });
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
export function writeProtection(sheet: Sheet, { computed, looks }: SheetGrid, rows: number, columns: number): void {
  const [only, ...others] = areasOf(computed);
  if (only === undefined) return;
  // Where nothing is typed, nothing is to be left free.
  if (!looks.some((line) => line.some((style) => isEntry({ style })))) {
    sheet.protect().setWarningOnly(true);
    return;
  }
  if (others.length === 0) {
    sheet.getRange(areaText(only)).protect().setWarningOnly(true);
    return;
  }
  const free = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => computed[row]?.[column] !== true));
  const protection = sheet.protect();
  protection.setUnprotectedRanges(sheet.getRangeList(areasOf(free).map(areaText)).getRanges());
  protection.setWarningOnly(true);
}
