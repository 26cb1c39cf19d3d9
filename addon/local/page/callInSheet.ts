// Finds the call of one of our functions in a sheet, so that its answers and the range that it reads are found again after
// rows were inserted or the sheet was renamed.
import type { FunctionName } from '../../../functions/registry/names.generated';
import { sheetNames } from '../../../sheets-templates/places';
import type { SheetKey } from '../../../sheets-templates/template';
import { rangeFromA1, type CellRange } from '../engine/a1';
import { sheetIdOf } from '../engine/workbookIds';
import { contentAt, type Worksheet } from './cells';
import type { Workbook } from './grid';

export type AnswerCell = string | number | boolean;

export interface CallInSheet {
  readonly sheet: Worksheet;
  readonly row: number;
  readonly column: number;
  /** The range of its first argument. */
  readonly reads: CellRange;
}

/** The sheet or the call is not there, or has no answer: the message is a sentence for the user. */
export class NotThereError extends Error {}

export function callNamed(workbook: Workbook, key: SheetKey, name: FunctionName): CallInSheet {
  const sheet = workbook.getSheetBySheetId(sheetIdOf(key));
  if (sheet === null) throw new NotThereError(`The sheet "${sheetNames[key]}" is no longer in this workbook.`);
  const pattern = new RegExp(`^=\\s*${name}\\(\\s*(\\$?[A-Z]+\\$?\\d+:\\$?[A-Z]+\\$?\\d+)`, 'i');
  const found: CallInSheet[] = [];
  sheet.getSheet().getCellMatrix().forValue((row, column, content) => {
    const reads = pattern.exec(content?.f ?? '')?.[1];
    if (reads !== undefined) found.push({ sheet, row, column, reads: rangeFromA1(reads) });
  });
  const [call] = found;
  if (call === undefined) throw new NotThereError(`The sheet "${sheet.getSheetName()}" no longer has its formula with ${name}.`);
  return call;
}

export const valueAt = (sheet: Worksheet, row: number, column: number): AnswerCell => contentAt(sheet, row, column).v ?? '';

export const rowAt = (sheet: Worksheet, row: number, column: number, width: number): AnswerCell[] => Array.from({ length: width }, (_, across) => valueAt(sheet, row, column + across));

/** The rows that a call fills: so many, or down to the first that is blank. */
export function answersOf({ sheet, row, column }: CallInSheet, name: FunctionName, width: number, height?: number): AnswerCell[][] {
  const first = valueAt(sheet, row, column);
  if (typeof first === 'string' && first.startsWith('#')) throw new NotThereError(`${name} in the sheet "${sheet.getSheetName()}" has no answer; select its cell to see why.`);
  const rows: AnswerCell[][] = [];
  for (let at = row; at < (height === undefined ? sheet.getMaxRows() : row + height); at += 1) {
    const cells = rowAt(sheet, at, column, width);
    if (height === undefined && cells.every((value) => value === '')) break;
    rows.push(cells);
  }
  return rows;
}
