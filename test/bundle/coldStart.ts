// How long one call takes on the platform's terms: the script compiled and run, and the first call made, in a fresh
// context each time. Medians, and the least; for the tests to print and for the bench to report.
import { createContext, Script } from 'node:vm';

export interface ColdStart {
  readonly compile: number;
  readonly run: number;
  readonly call: number;
  readonly total: number;
  /** The quickest of all rounds: what else the machine does moves it least. */
  readonly least: number;
}

const median = (values: readonly number[]): number => [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

export function coldStart(code: string, expression: string, rounds = 40): ColdStart {
  const times = Array.from({ length: rounds }, (_, round) => {
    const context = createContext({});
    const ask = new Script(expression);
    const start = performance.now();
    // Another text each time, or V8 would take the compiled code from its cache.
    const script = new Script(`${code}\n//${round} ${start}`);
    const compiled = performance.now();
    script.runInContext(context);
    const ran = performance.now();
    ask.runInContext(context);
    const called = performance.now();
    return { compile: compiled - start, run: ran - compiled, call: called - ran, total: called - start };
  });
  const of = (part: keyof (typeof times)[number]): number => median(times.map((time) => time[part]));
  return { compile: of('compile'), run: of('run'), call: of('call'), total: of('total'), least: Math.min(...times.map(({ total }) => total)) };
}
