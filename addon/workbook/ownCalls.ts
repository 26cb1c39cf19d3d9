// Calls of our functions in the cells where a template wrote them, wherever these stand now, with their arguments and answers. The keys of the
// sheet tell which cells are its own: a call that somebody put beside them is never taken for one of ours.
import type { SheetKey } from '../../sheets-templates/template';
import { areaOfCell, type Area } from './areas';
import { listed } from './callParameters';
import { readFormula, tokensOf } from './formulaReading';
import { keysIn, type Keys } from './keys';
import { placeOf, valuesIn, type Place } from './readPlace';
import type { CellPlace, CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';

/** The sheet or the call is not there, or has no answer: the message is a sentence for the user. */
export class NotThereError extends Error {}

export type ListCall = keyof typeof listed;

export interface CallInSheet<Name extends ListCall = ListCall> extends CellPlace {
  readonly sheet: SheetSnapshot;
  readonly name: Name;
  /** Text of each argument. */
  readonly args: readonly string[];
}

/** Of the set whose sheet is in sight, else of the first set that has one; a sheet of another set where that one has none. */
export function sheetOfKind({ sheets, selected }: WorkbookSnapshot, key: SheetKey): SheetSnapshot | undefined {
  const inSight = sheets.find(({ name }) => name === selected.sheet)?.mark?.set;
  const first = sheets.find(({ mark }) => mark?.key === 'ledger' || mark?.key === 'currency')?.mark?.set;
  const ofKind = sheets.filter(({ mark }) => mark?.key === key);
  return ofKind.find(({ mark }) => mark?.set === inSight) ?? ofKind.find(({ mark }) => mark?.set === first) ?? ofKind[0];
}

function keysOfSheet(sheet: SheetSnapshot): Keys {
  const keys = keysIn(sheet);
  if (keys === undefined)
    throw new NotThereError(
      `The cells of the sheet "${sheet.name}" are not found: it is of a version before sheets had keys, or has lost them. Bring the sheet up to date.`,
    );
  return keys;
}

/** The computed cell of the sheet whose formula is one call of this function. */
export function callIn<Name extends ListCall>(sheet: SheetSnapshot, name: Name): CallInSheet<Name> {
  const { answers } = keysOfSheet(sheet);
  for (const { row, column, text } of sheet.formulas) {
    if (!answers.some((own) => own?.row === row && own.column === column)) continue;
    const opening = tokensOf(text).find(({ kind }) => kind !== 'space');
    if (opening?.kind !== 'opening' || opening.name !== name) continue;
    return { sheet, row, column, name, args: readFormula(text).calls[0]?.args ?? [] };
  }
  throw new NotThereError(`The sheet "${sheet.name}" no longer has its formula with ${name}.`);
}

/** The rows that a call fills below its headings, if it has any: so many, or down to the first that is blank. */
export function answersOf({ sheet, row, column, name, args }: CallInSheet, width: number, height?: number): CellValue[][] {
  const heads = (args[listed[name].length] ?? '').trim() === '' ? 0 : 1;
  const [lastColumn, lastRow] = [column + width - 1, height === undefined ? Infinity : row + heads + height - 1];
  const [first = ''] = valuesIn({ sheet, area: areaOfCell({ row, column }) })[0] ?? [];
  const rows = valuesIn({ sheet, area: { row: row + heads, column, lastRow, lastColumn } });
  if (typeof first === 'string' && first.startsWith('#'))
    throw new NotThereError(`${name} in the sheet "${sheet.name}" has no answer; select its cell to see why.`);
  const blank = height === undefined ? rows.findIndex((cells) => cells.every((value) => value === '')) : -1;
  return blank < 0 ? rows : rows.slice(0, blank);
}

/** The cells that an argument of a call names; nothing where it names none. */
export function argumentOf<Name extends ListCall>(
  workbook: WorkbookSnapshot,
  { sheet, name, args }: CallInSheet<Name>,
  parameter: (typeof listed)[Name][number],
): Place | undefined {
  const names: readonly string[] = listed[name];
  return placeOf(workbook, sheet.name, args[names.indexOf(parameter)] ?? '');
}

/** Columns of a list side by side, in the rows of the sheet (those of the list where none are named). */
export function columnsOfList(sheet: SheetSnapshot, list: string, columns: readonly string[], rows?: Pick<Area, 'row' | 'lastRow'>): CellValue[][] {
  const { ranges } = keysOfSheet(sheet);
  const areas = columns.map((column) => {
    const area = ranges.get(`${list}.${column}`);
    if (area === undefined) throw new NotThereError(`The column "${column}" of the ${list} was taken out of the sheet "${sheet.name}".`);
    return { ...area, ...rows };
  });
  const read = areas.map((area) => valuesIn({ sheet, area }));
  return (read[0] ?? []).map((_, index) => read.map((column) => column[index]?.[0] ?? ''));
}
