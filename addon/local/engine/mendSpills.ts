// A mend of how the engine follows spills. As it comes, a formula that reads a cell into which another one spills is not
// calculated again when that spill shrinks, vanishes, or hangs on a third one: a verdict would stay OK though the brief it
// comes from is gone. Here each calculation goes on, round by round, until no spill changes any more.
import type { IRange } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';

type Runtime = EngineNamespace.FormulaRuntimeService;
type Calculated = EngineNamespace.IAllRuntimeData;
type FormulaData = ReturnType<EngineNamespace.FormulaCurrentConfigService['getFormulaData']>;
type SpillRanges = Record<string, Record<string, Record<number, Record<number, IRange>>>>;

/** The cell whose formula spills. */
interface Anchor {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

interface Spill {
  readonly anchor: Anchor;
  readonly range: IRange;
  /** The range and the values in it, as one text. */
  readonly content: string;
}

/** More rounds than any sheet needs; a spill that reads itself would never come to rest. */
const mostRounds = 50;

/** Formulas calculated in the round that is on, and every spill as the last round left it; both for each engine. */
const calculatedNow = new WeakMap<object, Map<string, Anchor>>();
const knownSpills = new WeakMap<object, Map<string, Spill>>();

const keyOf = ({ unitId, sheetId, row, column }: Anchor): string => JSON.stringify([unitId, sheetId, row, column]);

function eachCell({ startRow, endRow, startColumn, endColumn }: IRange, visit: (row: number, column: number) => void): void {
  for (let row = startRow; row <= endRow; row += 1) for (let column = startColumn; column <= endColumn; column += 1) visit(row, column);
}

/** What an earlier round of the same calculation spilled from this cell must not outlive the later answer. */
function dropEarlierRound(runtime: Runtime, { unitId, sheetId, row, column }: Anchor): void {
  const ofRow = runtime.getUnitArrayFormula()[unitId]?.[sheetId]?.[row];
  const range = ofRow?.[column];
  if (!ofRow || !range) return;
  const cells = runtime.getRuntimeArrayFormulaCellData()[unitId]?.[sheetId];
  eachCell(range, (r, c) => cells?.realDeleteValue(r, c));
  Reflect.deleteProperty(ofRow, column);
}

function spillAt({ arrayFormulaRange, arrayFormulaCellData }: Calculated, anchor: Anchor): Spill | undefined {
  const range = arrayFormulaRange[anchor.unitId]?.[anchor.sheetId]?.[anchor.row]?.[anchor.column];
  if (!range) return undefined;
  const cells = arrayFormulaCellData[anchor.unitId]?.[anchor.sheetId];
  const values: unknown[] = [];
  eachCell(range, (row, column) => values.push(cells?.getValue(row, column)?.v));
  return { anchor, range, content: JSON.stringify([range, values]) };
}

/** Spills whose formula somebody has taken away. */
const orphans = (spills: ReadonlyMap<string, Spill>, formulas: FormulaData): Anchor[] =>
  [...spills.values()].map(({ anchor }) => anchor).filter(({ unitId, sheetId, row, column }) => !formulas[unitId]?.[sheetId]?.[row]?.[column]);

/** The ranges that changed by spilling, old and new extent together; `spills` is brought up to date. */
function changedSpills(calculated: Calculated, anchors: Iterable<Anchor>, spills: Map<string, Spill>): SpillRanges {
  const changed: SpillRanges = {};
  for (const anchor of anchors) {
    const key = keyOf(anchor);
    const [before, now] = [spills.get(key), spillAt(calculated, anchor)];
    if (before?.content === now?.content) continue;
    if (now === undefined) spills.delete(key);
    else spills.set(key, now);
    const extents = [before, now].flatMap((spill) => spill?.range ?? []);
    const { unitId, sheetId, row, column } = anchor;
    (((changed[unitId] ??= {})[sheetId] ??= {})[row] ??= {})[column] = {
      startRow: row,
      startColumn: column,
      endRow: Math.max(...extents.map(({ endRow }) => endRow)),
      endColumn: Math.max(...extents.map(({ endColumn }) => endColumn)),
    };
  }
  return changed;
}

export function mendSpills(engine: EngineModule): void {
  const runtimes = engine.FormulaRuntimeService.prototype;
  const { setRuntimeData } = runtimes;
  runtimes.setRuntimeData = function noteCalculated(this: Runtime, answer): void {
    const anchor: Anchor = { unitId: this.currentUnitId, sheetId: this.currentSubUnitId, row: this.currentRow, column: this.currentColumn };
    dropEarlierRound(this, anchor);
    calculatedNow.get(this)?.set(keyOf(anchor), anchor);
    setRuntimeData.call(this, answer);
  };

  class RoundByRound extends engine.CalculateFormulaService {
    protected override async _executeStep(): Promise<true | undefined> {
      // A calculation that is stopped leaves the sheets as they were: what it spilled is not known.
      const spills = new Map(knownSpills.get(this));
      const anchors = new Map<string, Anchor>();
      calculatedNow.set(this._runtimeService, anchors);
      for (let round = 0; round < mostRounds; round += 1) {
        anchors.clear();
        const calculated = await this._apply(round > 0);
        if (calculated === undefined) return undefined;
        const first = round === 0;
        const changed = changedSpills(calculated, [...anchors.values(), ...(first ? orphans(spills, this._currentConfigService.getFormulaData()) : [])], spills);
        const { dirtyRanges } = this._getArrayFormulaDirtyRangeAndExcludedRange(changed, first ? calculated.runtimeFeatureRange : {});
        if (dirtyRanges.length === 0) break;
        engine.FORMULA_REF_TO_ARRAY_CACHE.clear();
        engine.CELL_INVERTED_INDEX_CACHE.clear();
        // The engine would leave out whatever reads the first cell of a spill, as already calculated; but that formula may also
        // read the later cells of another spill, which has changed since.
        this._currentConfigService.loadDirtyRangesAndExcludedCell(dirtyRanges, {});
      }
      knownSpills.set(this, spills);
      return true;
    }
  }
  // The engine builds its own class, so the method goes there; a subclass is how its protected parts can be named.
  Object.defineProperty(engine.CalculateFormulaService.prototype, '_executeStep', { value: RoundByRound.prototype['_executeStep'], writable: true, configurable: true });
}
