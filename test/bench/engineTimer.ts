// How long work takes as felt, and how much of that is the grid engine's fixed wait: after an edit it sets a timer of 100 ms
// and calculates when that fires. The wait is measured from the timer itself, not assumed.
import { performance } from 'node:perf_hooks';

export interface Timing {
  /** Milliseconds from the start of the work to its end. */
  readonly felt: number;
  /** The same without the wait. */
  readonly withoutTimer: number;
}

const engineDelay = 100;

export async function timed(work: () => Promise<unknown>): Promise<Timing> {
  const { setTimeout: usual } = globalThis;
  let waited = 0;
  const watched = (callback: (...given: unknown[]) => void, delay?: number, ...given: unknown[]): NodeJS.Timeout => {
    const set = performance.now();
    const fire = (): void => {
      if (delay === engineDelay) waited += performance.now() - set;
      callback(...given);
    };
    return usual(fire, delay);
  };
  globalThis.setTimeout = watched as typeof setTimeout;
  const start = performance.now();
  try {
    await work();
  } finally {
    globalThis.setTimeout = usual;
  }
  const felt = performance.now() - start;
  return { felt, withoutTimer: felt - waited };
}
