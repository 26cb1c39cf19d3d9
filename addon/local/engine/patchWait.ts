// A patch of when the engine calculates. As it comes, it waits a tenth of a second after every change, and begins a further
// calculation while one is on, which then loses what it was about. Here it waits long enough for one action of the user
// to be complete, and a change during a calculation is calculated after it; one that moves cells stops it first.
import type { ICommandInfo, ICommandService, IDisposable } from '@univerjs/core';
import type * as SheetsFormula from '@univerjs/sheets-formula';
import type { EngineModule } from './engineValues';

/** An action of the user is one or more changes within the same turn of the event loop, or the next ones. */
export const waitMilliseconds = 10;

/** What a calculation is to begin from. */
interface Dirty {
  readonly dirtyRanges: readonly unknown[];
  readonly forceCalculation: boolean;
  /** By workbook: sheets whose rows or columns were put in, taken out, moved, hidden or shown; names that mean other cells. */
  readonly clearDependencyTreeCache: Readonly<Record<string, unknown>>;
  readonly dirtyDefinedNameMap: Readonly<Record<string, unknown>>;
}

/** What the engine's controller has of its own, as far as it is used here. */
interface Trigger {
  readonly _commandService: ICommandService;
  _setTimeoutKey: ReturnType<typeof setTimeout>;
  _waitingCommandQueue: ICommandInfo[];
  _executingDirtyData: Dirty;
  _commandExecutedListener(): void;
  _generateDirty(commands: readonly ICommandInfo[]): Dirty;
  _mergeDirty(one: Dirty, other: Dirty): Dirty;
  disposeWithMe(disposable: IDisposable): unknown;
}

const patched = new WeakSet<object>();

/** Rows that went elsewhere: the engine leaves out formulas beside them, and reads spills where they were. So everything is calculated. */
const isOfStructure = ({ clearDependencyTreeCache, dirtyDefinedNameMap }: Dirty): boolean =>
  Object.keys(clearDependencyTreeCache).length > 0 || Object.keys(dirtyDefinedNameMap).length > 0;

/** Cells go elsewhere: what a calculation has found by then is of places that hold other cells now, so it is stopped and never written. */
const moving: ReadonlySet<string> = new Set(
  ['insert-row', 'insert-col', 'remove-rows', 'remove-col', 'move-rows', 'move-columns', 'move-range', 'reorder-range', 'remove-sheet'].map(
    (name) => `sheet.mutation.${name}`,
  ),
);

/** Must be called once for each loaded engine, before it starts. */
export function patchWait(formulas: Pick<typeof SheetsFormula, 'TriggerCalculationController'>, engine: EngineModule): void {
  const triggers = formulas.TriggerCalculationController.prototype as unknown as Trigger;
  if (patched.has(triggers)) return;
  patched.add(triggers);
  const { _commandExecutedListener: listen } = triggers;

  const begin = (trigger: Trigger): void => {
    const waiting = trigger._waitingCommandQueue;
    trigger._waitingCommandQueue = [];
    const dirty = trigger._mergeDirty(trigger._executingDirtyData, trigger._generateDirty(waiting));
    trigger._executingDirtyData = isOfStructure(dirty) ? { ...dirty, forceCalculation: true } : dirty;
    void trigger._commandService.executeCommand(
      engine.SetFormulaCalculationStartMutation.id,
      { ...trigger._executingDirtyData },
      { onlyLocal: true },
    );
  };

  triggers._commandExecutedListener = function listenSooner(this: Trigger): void {
    listen.call(this);
    let calculating = false;
    let timer = this._setTimeoutKey;
    /** In place of the timer that the engine has just set, under the same key, so that it stops this one as it would its own. */
    const restart = (): void => {
      clearTimeout(this._setTimeoutKey);
      timer = setTimeout(() => {
        if (!calculating) begin(this);
      }, waitMilliseconds);
      this._setTimeoutKey = timer;
    };
    this.disposeWithMe(
      this._commandService.onCommandExecuted(({ id, params }) => {
        if (id === engine.SetFormulaCalculationStartMutation.id) calculating = true;
        if (calculating && moving.has(id))
          void this._commandService.executeCommand(engine.SetFormulaCalculationStopMutation.id, {}, { onlyLocal: true });
        const ended =
          id === engine.SetFormulaCalculationNotificationMutation.id &&
          (params as { readonly functionsExecutedState?: number }).functionsExecutedState !== undefined;
        if (ended) calculating = false;
        if (this._setTimeoutKey !== timer || (ended && this._waitingCommandQueue.length > 0)) restart();
      }),
    );
  };
}
