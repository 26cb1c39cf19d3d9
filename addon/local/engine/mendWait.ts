// A mend of when the engine calculates. As it comes, it waits a tenth of a second after every change, and begins a further
// calculation while one is on, which then loses what it was about. Here it waits long enough for one action of the user
// to be complete, and a change during a calculation is calculated after it.
import type { ICommandInfo, ICommandService, IDisposable } from '@univerjs/core';
import type * as SheetsFormula from '@univerjs/sheets-formula';
import type { EngineModule } from './engineValues';

/** An action of the user is one or more changes within the same turn of the event loop, or the next ones. */
export const waitMilliseconds = 10;

/** What a calculation is to begin from. */
interface Dirty {
  readonly dirtyRanges: readonly unknown[];
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

const mended = new WeakSet<object>();

/** Must be called once for each loaded engine, before it starts. */
export function mendWait(formulas: Pick<typeof SheetsFormula, 'TriggerCalculationController'>, engine: EngineModule): void {
  const triggers = formulas.TriggerCalculationController.prototype as unknown as Trigger;
  if (mended.has(triggers)) return;
  mended.add(triggers);
  const { _commandExecutedListener: listen } = triggers;

  const begin = (trigger: Trigger): void => {
    const waiting = trigger._waitingCommandQueue;
    trigger._waitingCommandQueue = [];
    trigger._executingDirtyData = trigger._mergeDirty(trigger._executingDirtyData, trigger._generateDirty(waiting));
    void trigger._commandService.executeCommand(engine.SetFormulaCalculationStartMutation.id, { ...trigger._executingDirtyData }, { onlyLocal: true });
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
        const ended = id === engine.SetFormulaCalculationNotificationMutation.id && (params as { readonly functionsExecutedState?: number }).functionsExecutedState !== undefined;
        if (ended) calculating = false;
        if (this._setTimeoutKey !== timer || (ended && this._waitingCommandQueue.length > 0)) restart();
      }),
    );
  };
}
