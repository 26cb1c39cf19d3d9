// Gives sheets what is promised to be copied from one to another (looks, formats, merges), written once for all of them on
// one of them. Without values and formulas, so that nothing shifts in the copying.
import type { StyleName } from '../../sheets-templates/look';
import { onCarrier, stackLayer, type Stack, type StackPiece } from './stack';
import { writeBorders, writeCellLooks, writeMerges } from './writeLook';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type TextStyle = GoogleAppsScript.Spreadsheet.TextStyle;

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The reference of CopyPasteType promises values, formulas, formats and merges of a paste, and neither notes nor conditional
 * formats: those are written on each sheet. The last row goes over all rows below.
 */
function copyPiece({ row, column, height, grid }: StackPiece, carrier: Sheet, sheet: Sheet): void {
  carrier.getRange(row, column, height, grid.columns).copyTo(sheet.getRange(1, 1, height, grid.columns));
  if (height === grid.rows) return;
  carrier.getRange(row + height - 1, column, 1, grid.columns).copyTo(sheet.getRange(height + 1, 1, grid.rows - height, grid.columns));
}

/** `sheets` are fresh ones, one for each piece, and big enough: the carrier for the whole stack. */
export function writeStack(stack: Stack, sheets: readonly Sheet[], styleOf: (style: StyleName) => TextStyle): void {
  const { pieces } = stack;
  const carrier = sheets[stack.carrier];
  const own = pieces[stack.carrier];
  if (carrier === undefined || own === undefined) return;
  const whole = carrier.getRange(1, 1, stack.rows, stack.columns);
  const looks = stackLayer<StyleName>(stack, 'plain', (grid) => grid.looks);
  writeCellLooks(whole, looks, styleOf);
  whole.setNumberFormats(stackLayer(stack, 'General', (grid) => grid.numberFormats));
  writeBorders(carrier, looks);
  writeMerges(
    carrier,
    pieces.flatMap((piece) => piece.template.merges.flatMap((range) => onCarrier(piece, range))),
  );
  pieces.forEach((piece, index) => {
    const sheet = sheets[index];
    if (sheet !== undefined && index !== stack.carrier) copyPiece(piece, carrier, sheet);
  });
  if (stack.rows > own.grid.rows) carrier.deleteRows(own.grid.rows + 1, stack.rows - own.grid.rows);
}
