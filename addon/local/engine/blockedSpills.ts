// What blocks a spill, for patchSpills.ts. As the engine comes, a spill is blocked by the room that another one took at the calculation before,
// though it has shrunk since or was blocked itself, and it stays #SPILL! when that room is free again: sections of a trip stayed blank
// after a field was chosen. Here a spill takes the room it has now, and what was blocked is tried again once another spill has changed.
import type { ICellData, IRange, Nullable } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import { eachCell, keyOf, progressOf, type Anchor } from './calculationProgress';
import type { EngineModule } from './engineValues';

type Runtime = EngineNamespace.FormulaRuntimeService;
type ByPlace<Item> = Record<string, Nullable<Record<string, Nullable<Record<number, Nullable<Record<number, Item>>>>>>>;

interface Matrix {
  getValue(row: number, column: number): Nullable<ICellData>;
  realDeleteValue(row: number, column: number): void;
}

/** What the engine's own class has, as far as it is used here. */
interface RuntimeParts {
  readonly _currentConfigService: {
    getUnitData(): Record<string, Nullable<Record<string, Nullable<{ readonly cellData: Matrix }>>>>;
    getArrayFormulaRange(): ByPlace<IRange>;
  };
  readonly _runtimeData: Record<string, Nullable<Record<string, Nullable<Matrix>>>>;
  getUnitArrayFormula(): ByPlace<IRange>;
}
const partsOf = (runtime: Runtime): RuntimeParts => runtime as unknown as RuntimeParts;

const blocked = '#SPILL!';
const isAnswered = (runtime: object, anchor: Anchor): boolean => progressOf(runtime)?.isAnswered(anchor) === true;

/** What the formula of this cell has answered: in this calculation, or else before it. */
export function answerAt(runtime: Runtime, anchor: Anchor): Nullable<ICellData> {
  const { _runtimeData, _currentConfigService } = partsOf(runtime);
  const { unitId, sheetId, row, column } = anchor;
  const cells = isAnswered(runtime, anchor) ? _runtimeData[unitId]?.[sheetId] : _currentConfigService.getUnitData()[unitId]?.[sheetId]?.cellData;
  return cells?.getValue(row, column);
}
const isBlocked = (runtime: Runtime, anchor: Anchor): boolean => answerAt(runtime, anchor)?.v === blocked;

/** Every cell of this sheet whose formula spills, or did at the calculation before, with the range that it has now. */
function* spillsOf(runtime: Runtime, unitId: string, sheetId: string): Generator<readonly [Anchor, IRange]> {
  const { _currentConfigService, getUnitArrayFormula } = partsOf(runtime);
  const now = getUnitArrayFormula.call(runtime)[unitId]?.[sheetId];
  const before = _currentConfigService.getArrayFormulaRange()[unitId]?.[sheetId];
  for (const [ranges, ofNow] of [[now, true] as const, [before, false] as const])
    for (const [row, ofRow] of Object.entries(ranges ?? {}))
      for (const [column, range] of Object.entries(ofRow ?? {})) {
        const anchor = { unitId, sheetId, row: Number(row), column: Number(column) };
        if (isAnswered(runtime, anchor) === ofNow) yield [anchor, range];
      }
}

/** Spills of all sheets that found no room, as the sheets stand after this round. */
export function blockedSpills(runtime: Runtime): Anchor[] {
  const units = Object.entries(partsOf(runtime)._currentConfigService.getUnitData());
  return units.flatMap(([unitId, sheets]) =>
    Object.keys(sheets ?? {}).flatMap((sheetId) =>
      [...spillsOf(runtime, unitId, sheetId)].map(([anchor]) => anchor).filter((anchor) => isBlocked(runtime, anchor)),
    ),
  );
}

/** A blocked spill writes what stands in its room once more as its own: that must not block it when it is tried again. */
export function dropCopies(runtime: Runtime, anchor: Anchor, range: IRange): void {
  const { unitId, sheetId } = anchor;
  const cells = partsOf(runtime)._runtimeData[unitId]?.[sheetId];
  eachCell(range, (row, column) => {
    if (!isAnswered(runtime, { unitId, sheetId, row, column })) cells?.realDeleteValue(row, column);
  });
}

/** Room taken on the sheet of this spill by others. */
const roomTaken = (runtime: Runtime, { unitId, sheetId, row, column }: Anchor): IRange[] =>
  [...spillsOf(runtime, unitId, sheetId)]
    .filter(([other]) => (other.row !== row || other.column !== column) && !isBlocked(runtime, other))
    .map(([, range]) => range);

export function patchRoom(engine: EngineModule): void {
  const runtimes = engine.FormulaRuntimeService.prototype as unknown as {
    _isInOtherArrayFormulaRange(unit: string, sheet: string, row: number, column: number, r: number, c: number): boolean;
  };
  /** The engine asks for one cell of a spill after the other, with no answer in between. */
  const lastAsked = new WeakMap<object, { readonly answers: number; readonly key: string; readonly taken: readonly IRange[] }>();
  runtimes._isInOtherArrayFormulaRange = function isTaken(this: Runtime, unitId, sheetId, row, column, r, c): boolean {
    const anchor = { unitId, sheetId, row, column };
    const [key, answers] = [keyOf(anchor), progressOf(this)?.answers ?? 0];
    let last = lastAsked.get(this);
    if (last?.answers !== answers || last.key !== key) {
      last = { answers, key, taken: roomTaken(this, anchor) };
      lastAsked.set(this, last);
    }
    return last.taken.some(({ startRow, endRow, startColumn, endColumn }) => r >= startRow && r <= endRow && c >= startColumn && c <= endColumn);
  };
}
