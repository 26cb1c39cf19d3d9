// Whether the grid is still working something out. After a change, and after a calculation during which something changed, it
// first waits a little, so that a moment's rest does not mean that it is done.
import type { FUniver } from '@univerjs/core/facade';
import { waitMilliseconds } from '../engine/patchWait';
import { isUsersChange } from './usersChange';

/** Longer than the grid waits before it begins. */
const quietMilliseconds = 5 * waitMilliseconds;
const pauseMilliseconds = 20;
const maxMilliseconds = 30_000;

/** Resolves when every formula has its answer; rejects with a sentence where that takes too long. */
export type Settled = () => Promise<void>;

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, pauseMilliseconds));

/** To be called before the workbook is loaded. */
export function watchCalculation(api: FUniver): Settled {
  const formula = api.getFormula();
  let running = false;
  let lastStir = performance.now();
  formula.calculationStart(() => {
    running = true;
  });
  formula.calculationEnd(() => {
    running = false;
    lastStir = performance.now();
  });
  api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
    if (isUsersChange(id, type, options)) lastStir = performance.now();
  });
  return async () => {
    const asked = performance.now();
    // Timers come in the order in which they are due, also late ones: where ours was due after the grid's, that one has run.
    let due: number;
    do {
      if (performance.now() - asked > maxMilliseconds) throw new Error('The formulas are still being worked out. Wait a little, then ask again.');
      due = performance.now() + pauseMilliseconds;
      await pause();
    } while (running || due - lastStir < quietMilliseconds);
  };
}
