// Which sheets of a workbook the calendar is read from, and the calls of our functions in them, with their answers.
import type { FunctionName } from '../../functions/registry/names.generated';
import type { SheetKey } from '../../sheets-templates/template';
import { readFormula, tokensOf } from '../workbook/formulaReading';
import { placeOf, valuesIn, type Place } from '../workbook/readPlace';
import type { CellPlace, CellValue, SheetSnapshot, WorkbookSnapshot } from '../workbook/snapshot';

/** The sheet or the call is not there, or has no answer: the message is a sentence for the user. */
export class NotThereError extends Error {}

export interface CallInSheet extends CellPlace {
  readonly sheet: SheetSnapshot;
  readonly name: FunctionName;
  /** Text of each argument. */
  readonly given: readonly string[];
}

/** Of the set whose sheet is in sight, else of the first set that has one; a sheet of another set where that one has none. */
export function sheetOfKind({ sheets, selected }: WorkbookSnapshot, key: SheetKey): SheetSnapshot | undefined {
  const inSight = sheets.find(({ name }) => name === selected.sheet)?.mark?.set;
  const first = sheets.find(({ mark }) => mark?.key === 'ledger' || mark?.key === 'currency')?.mark?.set;
  const ofKind = sheets.filter(({ mark }) => mark?.key === key);
  return ofKind.find(({ mark }) => mark?.set === inSight) ?? ofKind.find(({ mark }) => mark?.set === first) ?? ofKind[0];
}

/** The first cell of the sheet whose formula is one call of this function. */
export function callIn(sheet: SheetSnapshot, name: FunctionName): CallInSheet {
  for (const { row, column, text } of sheet.formulas) {
    const opening = tokensOf(text).find(({ kind }) => kind !== 'space');
    if (opening?.kind !== 'opening' || opening.name !== name) continue;
    return { sheet, row, column, name, given: readFormula(text).calls[0]?.given ?? [] };
  }
  throw new NotThereError(`The sheet "${sheet.name}" no longer has its formula with ${name}.`);
}

/** The rows that a call fills: so many, or down to the first that is blank. */
export function answersOf({ sheet, row, column, name }: CallInSheet, width: number, height?: number): CellValue[][] {
  const rows = valuesIn({ sheet, area: { row, column, lastRow: height === undefined ? Infinity : row + height - 1, lastColumn: column + width - 1 } });
  const first = rows[0]?.[0] ?? '';
  if (typeof first === 'string' && first.startsWith('#')) throw new NotThereError(`${name} in the sheet "${sheet.name}" has no answer; select its cell to see why.`);
  const blank = height === undefined ? rows.findIndex((cells) => cells.every((value) => value === '')) : -1;
  return blank < 0 ? rows : rows.slice(0, blank);
}

/** The cells that an argument of a call names; nothing where it names none. */
export function argumentOf(workbook: WorkbookSnapshot, { sheet, given }: CallInSheet, index: number): Place | undefined {
  return placeOf(workbook, sheet.name, given[index] ?? '');
}
