// What a document takes between the arguments of a formula. Nobody promises it for formulas written by a script in a language with decimal commas,
// so the document is asked, once, in a cell that is written over afterwards.
import type { ArgumentSeparator } from '../workbook/formulaText';
import type { InsertionPlan } from '../workbook/insertionPlan';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Throws a sentence where it takes neither, rather than leave sheets full of errors. */
function argumentSeparator(fresh: Sheet): ArgumentSeparator {
  const cell = fresh.getRange(1, 1);
  const taken = ([';', ','] as const).find((separator) => {
    cell.setValues([[`=IF(TRUE${separator}1${separator}0)`]]);
    return (cell.getValues()[0] as unknown[])[0] === 1;
  });
  if (taken === undefined) throw new Error('it works out no formula that is put in by a script.');
  return taken;
}

/** The plan with what the document of these fresh sheets takes. */
export function withSeparator(plan: InsertionPlan, [fresh]: readonly Sheet[]): InsertionPlan {
  return fresh === undefined ? plan : { ...plan, names: { ...plan.names, separator: argumentSeparator(fresh) } };
}
