// A patch of how the engine follows spills. As it comes, a formula that reads a cell into which another one spills is not
// calculated again when that spill shrinks, vanishes, or hangs on a third one: a verdict would stay OK though the brief it
// comes from is gone. Here each calculation goes on, round by round, until no spill changes any more.
import type { IRange } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import { answerAt, blockedSpills, dropCopies, patchRoom } from './blockedSpills';
import { beginProgress, eachCell, keyOf, patchRounds, progressOf, sameAnswer, type Anchor } from './calculationProgress';
import type { EngineModule } from './engineValues';

type Runtime = EngineNamespace.FormulaRuntimeService;
type Calculated = EngineNamespace.IAllRuntimeData;
type FormulaData = ReturnType<EngineNamespace.FormulaCurrentConfigService['getFormulaData']>;
type SpillRanges = Record<string, Record<string, Record<number, Record<number, IRange>>>>;

interface Spill {
  readonly anchor: Anchor;
  readonly range: IRange;
  /** The range and the values in it, as one text. */
  readonly content: string;
}

/** More rounds than any sheet needs; a spill that reads itself would never come to rest. */
const maxRounds = 50;

/** Spills as the engine keeps them from one calculation to the next; it takes away those of cells that are written. */
interface Kept {
  readonly arrayFormulaRange: object;
  readonly arrayFormulaCellData: object;
}

/** What the whole workbook had spilled before everything is calculated anew, for each engine. */
const outlived = new WeakMap<object, Kept>();

/** Every spill as it was left, and the ranges of those that changed in the round that is on, old and new extent together; both for each engine. */
interface Watched {
  readonly spills: Map<string, Spill>;
  changed: SpillRanges;
}
const watchedNow = new WeakMap<object, Watched>();
const knownSpills = new WeakMap<object, Map<string, Spill>>();

/** What an earlier round of the same calculation spilled from this cell must not outlive the later answer. */
function dropEarlierRound(runtime: Runtime, { unitId, sheetId, row, column }: Anchor): void {
  const ofRow = runtime.getUnitArrayFormula()[unitId]?.[sheetId]?.[row];
  const range = ofRow?.[column];
  if (!ofRow || !range) return;
  const cells = runtime.getRuntimeArrayFormulaCellData()[unitId]?.[sheetId];
  eachCell(range, (r, c) => cells?.realDeleteValue(r, c));
  dropCopies(runtime, { unitId, sheetId, row, column }, range);
  Reflect.deleteProperty(ofRow, column);
}

const rangeOf = ({ unitId, sheetId, row, column }: Anchor) => ({
  unitId,
  sheetId,
  range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
});

function spillAt(runtime: Runtime, anchor: Anchor): Spill | undefined {
  const range = runtime.getUnitArrayFormula()[anchor.unitId]?.[anchor.sheetId]?.[anchor.row]?.[anchor.column];
  if (!range) return undefined;
  const cells = runtime.getRuntimeArrayFormulaCellData()[anchor.unitId]?.[anchor.sheetId];
  const values: unknown[] = [];
  eachCell(range, (row, column) => values.push(cells?.getValue(row, column)?.v));
  return { anchor, range, content: JSON.stringify([range, values]) };
}

/** Spills whose formula somebody has taken away. */
const orphans = (spills: ReadonlyMap<string, Spill>, formulas: FormulaData): Anchor[] =>
  [...spills.values()].map(({ anchor }) => anchor).filter(({ unitId, sheetId, row, column }) => !formulas[unitId]?.[sheetId]?.[row]?.[column]);

/** What an answer, or the end of a formula, has changed: noted for the formulas that read it, in this round and in the next. */
function noteChanged(runtime: Runtime, engine: EngineModule, anchor: Anchor, isCellSame: boolean): void {
  const [watched, progress, key] = [watchedNow.get(runtime), progressOf(runtime), keyOf(anchor)];
  if (watched === undefined || progress === undefined) return;
  const [before, now] = [watched.spills.get(key), spillAt(runtime, anchor)];
  if (before?.content === now?.content) {
    if (!isCellSame) progress.noteChange(anchor, rangeOf(anchor).range);
    return;
  }
  if (now === undefined) watched.spills.delete(key);
  else watched.spills.set(key, now);
  const extents = [before, now].flatMap((spill) => spill?.range ?? []);
  const { unitId, sheetId, row, column } = anchor;
  const range = {
    startRow: row,
    startColumn: column,
    endRow: Math.max(...extents.map(({ endRow }) => endRow)),
    endColumn: Math.max(...extents.map(({ endColumn }) => endColumn)),
  };
  (((watched.changed[unitId] ??= {})[sheetId] ??= {})[row] ??= {})[column] = range;
  progress.noteChange(anchor, range);
  // The engine keeps ranges that formulas have read, for the next one that reads them.
  engine.FORMULA_REF_TO_ARRAY_CACHE.clear();
  engine.CELL_INVERTED_INDEX_CACHE.clear();
}

/**
 * A formula that is calculated before the one whose spill it reads finds nothing where the engine has taken that spill away. So the spill
 * counts as changed even when it comes back as it was.
 */
function knownNow(known: ReadonlyMap<string, Spill> | undefined, kept: SpillRanges): Map<string, Spill> {
  const isKept = ({ unitId, sheetId, row, column }: Anchor): boolean => kept[unitId]?.[sheetId]?.[row]?.[column] !== undefined;
  return new Map([...(known ?? [])].map(([key, spill]) => [key, isKept(spill.anchor) ? spill : { ...spill, content: '' }]));
}

function empty(one: object): void {
  for (const key of Object.keys(one)) Reflect.deleteProperty(one, key);
}

/** As the engine ends a calculation that it finds stopped; it does not look after the last formula of a round. */
function stopped(runtime: EngineNamespace.IFormulaRuntimeService, ended: { next(data: Calculated): void }): undefined {
  runtime.setFormulaExecuteStage(0);
  runtime.markedAsStopFunctionsExecuted();
  ended.next(runtime.getAllRuntimeData());
}

export function patchSpills(engine: EngineModule): void {
  patchRoom(engine);
  patchRounds(engine);
  const runtimes = engine.FormulaRuntimeService.prototype;
  const { setRuntimeData } = runtimes;
  runtimes.setRuntimeData = function noteCalculated(this: Runtime, answer): void {
    const anchor: Anchor = { unitId: this.currentUnitId, sheetId: this.currentSubUnitId, row: this.currentRow, column: this.currentColumn };
    const before = answerAt(this, anchor);
    dropEarlierRound(this, anchor);
    progressOf(this)?.noteAnswer(anchor);
    setRuntimeData.call(this, answer);
    noteChanged(this, engine, anchor, sameAnswer(before, answerAt(this, anchor)));
  };

  const { execute } = engine.CalculateFormulaService.prototype;
  class RoundByRound extends engine.CalculateFormulaService {
    /** Where everything is calculated, nothing that was spilled before is read: after rows were put in it would be that of other rows. */
    override async execute(given: Parameters<EngineNamespace.CalculateFormulaService['execute']>[0]): Promise<void> {
      if (given.forceCalculate) outlived.set(this, given);
      else outlived.delete(this);
      await execute.call(this, given.forceCalculate ? { ...given, arrayFormulaRange: {}, arrayFormulaCellData: {} } : given);
    }

    protected override async _executeStep(): Promise<true | undefined> {
      const before = outlived.get(this);
      // A calculation that is stopped leaves the sheets as they were: what it spilled is not known.
      const spills =
        before === undefined
          ? knownNow(knownSpills.get(this), this._currentConfigService.getArrayFormulaRange() as SpillRanges)
          : new Map<string, Spill>();
      const runtime = this._runtimeService as Runtime;
      const watched: Watched = { spills, changed: {} };
      watchedNow.set(runtime, watched);
      const progress = beginProgress(runtime, before !== undefined);
      for (let round = 0; round < maxRounds; round += 1) {
        const first = round === 0;
        watched.changed = {};
        const calculated = await this._apply(!first);
        if (calculated === undefined) return undefined;
        if (runtime.isStopExecution()) return stopped(runtime, this._executionCompleteListener$);
        if (first) orphans(spills, this._currentConfigService.getFormulaData()).forEach((orphan) => noteChanged(runtime, engine, orphan, true));
        const { dirtyRanges } = this._getArrayFormulaDirtyRangeAndExcludedRange(watched.changed, first ? calculated.runtimeFeatureRange : {});
        if (dirtyRanges.length === 0) break;
        const again = blockedSpills(runtime);
        progress.beginLaterRound(again);
        engine.FORMULA_REF_TO_ARRAY_CACHE.clear();
        engine.CELL_INVERTED_INDEX_CACHE.clear();
        // The engine would leave out whatever reads the first cell of a spill, as already calculated; but that formula may also
        // read the later cells of another spill, which has changed since.
        this._currentConfigService.loadDirtyRangesAndExcludedCell([...dirtyRanges, ...again.map(rangeOf)], {});
      }
      knownSpills.set(this, spills);
      if (before !== undefined) [before.arrayFormulaRange, before.arrayFormulaCellData].forEach(empty);
      return true;
    }
  }
  // The engine builds its own class, so the method goes there; a subclass is how its protected parts can be named.
  for (const method of ['execute', '_executeStep'] as const)
    Object.defineProperty(engine.CalculateFormulaService.prototype, method, {
      value: RoundByRound.prototype[method],
      writable: true,
      configurable: true,
    });
}
