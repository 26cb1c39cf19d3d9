// How far a calculation has come, for patchSpills.ts: which formulas have answered, in what order, and whose answer is another one than before.
// As the engine comes, each round calculates whatever hangs on a cell or a spill that changed, and all that hangs on that, though most answers as
// before: TODAY() alone, in one cell of Start, calculated the verdicts of all sheets at every edit. Here each round leaves out what reads nothing
// that has changed since the formula last answered. Where everything is calculated anew, nothing is left out in the first round.
import type { ICellData, IRange, Nullable } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';

/** The cell of a formula. */
export interface Anchor {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

interface Change {
  readonly range: IRange;
  /** How many answers there were with the one that changed it. */
  readonly at: number;
}

/** A range that a formula reads; a bound is not a number where it takes in whole rows or columns. */
interface Read {
  readonly unitId: string;
  readonly sheetId: string;
  readonly range: IRange;
}

/** A formula as the engine lines it up to be calculated. */
interface LinedUp {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly rangeList: Iterable<Read>;
  /** Of functions that find their cells only while they are calculated, as OFFSET does. */
  readonly addressFunctionNodes: readonly unknown[];
  readonly featureId?: Nullable<string>;
  readonly formulaId?: Nullable<string>;
}

const sheetKey = ({ unitId, sheetId }: Pick<Anchor, 'unitId' | 'sheetId'>): string => `${unitId}\n${sheetId}`;
export const keyOf = (anchor: Anchor): string => `${sheetKey(anchor)}\n${anchor.row}\n${anchor.column}`;

export function eachCell({ startRow, endRow, startColumn, endColumn }: IRange, visit: (row: number, column: number) => void): void {
  for (let row = startRow; row <= endRow; row += 1) for (let column = startColumn; column <= endColumn; column += 1) visit(row, column);
}

const orElse = (bound: number, unbounded: number): number => (Number.isNaN(bound) ? unbounded : bound);
const touch = (read: IRange, changed: IRange): boolean =>
  orElse(read.startRow, 0) <= changed.endRow &&
  orElse(read.endRow, Infinity) >= changed.startRow &&
  orElse(read.startColumn, 0) <= changed.endColumn &&
  orElse(read.endColumn, Infinity) >= changed.startColumn;

export class Progress {
  /** Answers so far, over all rounds of the calculation. */
  answers = 0;
  private readonly answeredAt = new Map<string, number>();
  /** By sheet, the latest at the end. */
  private readonly changes = new Map<string, Change[]>();
  private again: ReadonlySet<string> = new Set();
  /** What formulas read, noted before the engine forgets it. */
  private readonly reads = new WeakMap<object, readonly Read[]>();
  private isFirstRound = true;

  /** Whether every formula is calculated. */
  constructor(private readonly isAnew: boolean) {}

  noteAnswer(anchor: Anchor): void {
    this.answers += 1;
    this.answeredAt.set(keyOf(anchor), this.answers);
  }

  isAnswered(anchor: Anchor): boolean {
    return this.answeredAt.has(keyOf(anchor));
  }

  noteChange(anchor: Anchor, range: IRange): void {
    const ofSheet = this.changes.get(sheetKey(anchor)) ?? [];
    this.changes.set(sheetKey(anchor), ofSheet);
    ofSheet.push({ range, at: this.answers });
  }

  /** A later round; these are calculated in it, whatever they read. */
  beginLaterRound(again: readonly Anchor[]): void {
    this.isFirstRound = false;
    this.again = new Set(again.map(keyOf));
  }

  get leavesOut(): boolean {
    return !(this.isAnew && this.isFirstRound);
  }

  noteReads(trees: Iterable<LinedUp>): void {
    for (const tree of trees) this.reads.set(tree, [...tree.rangeList]);
  }

  /** What was typed, what reads a cell that was typed, and what asks for the clock: calculated in the first round, whatever else it reads. */
  noteTouched(trees: readonly LinedUp[]): void {
    if (this.isFirstRound)
      this.again = new Set(trees.map(({ unitId, subUnitId, row, column }) => keyOf({ unitId, sheetId: subUnitId, row, column })));
  }

  mustCalculate(tree: LinedUp): boolean {
    const { unitId, subUnitId, row, column, addressFunctionNodes, featureId, formulaId } = tree;
    const reads = this.reads.get(tree);
    if (reads === undefined || (featureId ?? formulaId ?? undefined) !== undefined || addressFunctionNodes.length > 0) return true;
    const key = keyOf({ unitId, sheetId: subUnitId, row, column });
    if (this.again.has(key)) return true;
    const since = this.answeredAt.get(key) ?? 0;
    // A spill that came over it or left it counts too: it may have taken its room.
    const own = { unitId, sheetId: subUnitId, range: { startRow: row, endRow: row, startColumn: column, endColumn: column } };
    return this.hasChanged(own, since) || reads.some((read) => this.hasChanged(read, since));
  }

  private hasChanged(read: Read, since: number): boolean {
    const ofSheet = this.changes.get(sheetKey(read)) ?? [];
    for (let last = ofSheet.length - 1; last >= 0; last -= 1) {
      const change = ofSheet[last];
      if (change === undefined || change.at <= since) return false;
      if (touch(read.range, change.range)) return true;
    }
    return false;
  }
}

/** Of the calculation that is on, for each engine. */
const progresses = new WeakMap<object, Progress>();
export const progressOf = (runtime: object): Progress | undefined => progresses.get(runtime);
export function beginProgress(runtime: object, isAnew: boolean): Progress {
  const progress = new Progress(isAnew);
  progresses.set(runtime, progress);
  return progress;
}

/** The engine's list, from whose end it takes one formula after the other: here what need not be calculated falls off before it is asked for. */
class StillToCalculate {
  constructor(
    private readonly trees: LinedUp[],
    private readonly progress: Progress,
  ) {}

  get length(): number {
    for (let last = this.trees.at(-1); last !== undefined && !this.progress.mustCalculate(last); last = this.trees.at(-1)) this.trees.pop();
    return this.trees.length;
  }

  pop(): LinedUp | undefined {
    return this.trees.pop();
  }
}

interface Generator {
  readonly _runtimeService: EngineNamespace.IFormulaRuntimeService;
  readonly _dependencyTreeCache: ReadonlyMap<unknown, LinedUp>;
  generate(...given: unknown[]): Promise<unknown>;
  _getUpdateTreeListAndMakeDependency(): readonly LinedUp[];
}

/** Formulas in a circle are left to the engine. */
export function patchRounds(engine: EngineModule): void {
  const generators = engine.FormulaDependencyGenerator.prototype as unknown as Generator;
  const { generate, _getUpdateTreeListAndMakeDependency: lineUp } = generators;
  const leavingOut = (runtime: EngineNamespace.IFormulaRuntimeService): Progress | undefined => {
    const progress = progressOf(runtime);
    return progress?.leavesOut === true ? progress : undefined;
  };
  generators._getUpdateTreeListAndMakeDependency = function noteReadsFirst(this: Generator): readonly LinedUp[] {
    const progress = leavingOut(this._runtimeService);
    progress?.noteReads(this._dependencyTreeCache.values());
    const touched = lineUp.call(this);
    progress?.noteTouched(touched);
    return touched;
  };
  generators.generate = async function onlyWhatMust(this: Generator, ...given): Promise<unknown> {
    const trees = (await generate.apply(this, given)) as LinedUp[];
    const progress = leavingOut(this._runtimeService);
    return progress === undefined || this._runtimeService.isCycleDependency() ? trees : new StillToCalculate(trees, progress);
  };
}

/** An answer with more than a value, such as a date's pattern, counts as another one. */
export const sameAnswer = (before: Nullable<ICellData>, now: Nullable<ICellData>): boolean =>
  (before?.v ?? null) === (now?.v ?? null) &&
  (before?.t ?? null) === (now?.t ?? null) &&
  Object.keys(now ?? {}).every((part) => part === 'v' || part === 't');
