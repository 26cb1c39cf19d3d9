// How long work takes as felt, and how much of that the grid only waits: after an edit it sets a timer, and calculates when that
// fires. The wait is measured from the timer itself, whatever it is set to.
import { performance } from 'node:perf_hooks';

export interface Timing {
  /** Milliseconds from the start of the work to its end. */
  readonly felt: number;
  /** The same without the wait. */
  readonly withoutWait: number;
}

export async function timed(work: () => Promise<unknown>): Promise<Timing> {
  const { setTimeout: usual } = globalThis;
  let waited: number | undefined;
  const watched = (callback: (...given: unknown[]) => void, delay = 0, ...given: unknown[]): NodeJS.Timeout => {
    let idleSince: number | undefined;
    // What is still being done when the timer is set is work, and only from its end on is there a wait.
    usual(() => (idleSince = performance.now()), 0);
    return usual(() => {
      // Only the first timer that fires begins the calculation; later ones fall into it.
      if (delay > 0) waited ??= idleSince === undefined ? 0 : performance.now() - idleSince;
      callback(...given);
    }, delay);
  };
  globalThis.setTimeout = watched as typeof setTimeout;
  const start = performance.now();
  try {
    await work();
  } finally {
    globalThis.setTimeout = usual;
  }
  const felt = performance.now() - start;
  return { felt, withoutWait: felt - (waited ?? 0) };
}
