// Mends of how the engine reads cells while it calculates; without them it gives wrong numbers that look right.
// 1. A formula that answers "" holds a text, and arithmetic on it is an error, in Google Sheets as in Excel. The engine
//    takes it for an empty cell, so that ""*2 by way of a cell would be 0.
// 2. Where a formula that spilled now answers one value or an error, the engine goes on reading the cells of the old spill,
//    so that a verdict would stay OK though the brief it comes from is gone.
import type { CellValueType, ICellData, IRange, Nullable } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';
import { patchBranches } from './patchBranches';
import { patchDependencies } from './patchDependencies';
import { patchIndex } from './patchIndex';
import { patchNames } from './patchNames';
import { patchRepeats } from './patchRepeats';
import { patchSpills } from './patchSpills';
import { patchTexts } from './patchTexts';
import { patchWildcards } from './patchWildcards';

type Reference = EngineNamespace.BaseReferenceObject;
type Spills = ReturnType<Reference['getArrayFormulaRange']>;

const text: CellValueType.STRING = 1;
const patched = new WeakSet<object>();

/** Whether the cell belongs to an old spill whose own formula has been calculated anew. */
function isOfOldSpill(reference: Reference, spills: Spills | undefined, row: number, column: number): boolean {
  const calculated = reference.getCurrentRuntimeSheetData();
  const ofSheet = spills?.[reference.getUnitId()]?.[reference.getSheetId()] ?? {};
  return Object.entries(ofSheet).some(([anchorRow, ofRow]) =>
    Object.entries(ofRow as Record<string, IRange>).some(([anchorColumn, { startRow, endRow, startColumn, endColumn }]) => {
      const covers = row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
      return covers && Boolean(calculated?.getValue(Number(anchorRow), Number(anchorColumn)));
    }),
  );
}

/** Must be called once for each loaded engine, before it calculates. */
export function patchEngine(engine: EngineModule): void {
  const references = engine.BaseReferenceObject.prototype;
  if (patched.has(references)) return;
  patched.add(references);
  const { getCellData: readCell, setArrayFormulaRange: setSpills } = references;
  /** Ranges that the engine derives from others lose the spills, but keep the cells that belong to them. */
  const spillsOf = new WeakMap<object, Spills>();

  references.setArrayFormulaRange = function setArrayFormulaRange(spills: Spills): void {
    const cells = this.getArrayFormulaCellData();
    if (cells) spillsOf.set(cells, spills);
    setSpills.call(this, spills);
  };
  patchNames(engine);
  patchSpills(engine);
  patchIndex(engine);
  patchBranches(engine);
  patchDependencies(engine);
  patchRepeats(engine);
  patchTexts(engine);
  patchWildcards(engine);
  references.getCellData = function getCellData(row: number, column: number): Nullable<ICellData> {
    const cell = readCell.call(this, row, column);
    if (!cell) return cell;
    const typed = this.getCurrentActiveSheetData()?.cellData.getValue(row, column);
    const spilledBefore = this.getCurrentActiveArrayFormulaCellData()?.getValue(row, column);
    if (cell === spilledBefore && isOfOldSpill(this, spillsOf.get(this.getArrayFormulaCellData()), row, column)) return typed;
    if (cell.v !== '' || cell.f || cell.si || cell === typed) return cell;
    // Typed cells are left alone; an answer is told from nothing by its having a formula.
    return { ...cell, t: text, f: '=""' };
  };
}
