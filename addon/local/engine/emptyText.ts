// A formula that answers "" holds a text, and arithmetic on it is an error, in Google Sheets as in Excel. This engine
// takes it for an empty cell, so that ""*2 by way of a cell would be 0: a wrong number that looks right. Mended here.
import type { CellValueType, ICellData, Nullable } from '@univerjs/core';
import type { EngineModule } from './engineValues';

const text: CellValueType.STRING = 1;
const mended = new WeakSet<EngineModule>();

/** Must be called once for each loaded engine; only cells that a calculation wrote are touched, never typed ones. */
export function keepEmptyText(engine: EngineModule): void {
  if (mended.has(engine)) return;
  mended.add(engine);
  const references = engine.BaseReferenceObject.prototype;
  const readCell = references.getCellData;
  references.getCellData = function getCellData(row: number, column: number): Nullable<ICellData> {
    const cell = readCell.call(this, row, column);
    if (!cell || cell.v !== '' || cell.f || cell.si) return cell;
    const typed = this.getCurrentActiveSheetData()?.cellData.getValue(row, column);
    // The engine asks a cell for a formula to tell an answer from nothing.
    return cell === typed ? cell : { ...cell, t: text, f: '=""' };
  };
}
