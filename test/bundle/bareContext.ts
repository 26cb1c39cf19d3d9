// A V8 context with only what Apps Script offers, with the built Code.js in it: no URL, timers, TextEncoder, fetch, process.
import { createContext, Script, type Context } from 'node:vm';

/** Globals of Node that a fresh V8 context has and Apps Script lacks; WebAssembly and Intl it has. */
const absent = [
  'URL',
  'URLSearchParams',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'clearTimeout',
  'queueMicrotask',
  'structuredClone',
  'TextEncoder',
  'TextDecoder',
  'fetch',
  'process',
  'Buffer',
  'require',
  'module',
  'window',
  'document',
  'performance',
  'crypto',
  'atob',
  'btoa',
  'Temporal',
];

const made = { Date: 'Date', Error: 'Error' } as const;

export interface BareContext {
  readonly context: Context;
  /** Names of the functions that the script left at the top level. */
  readonly functions: readonly string[];
  /** A top-level function; what it throws comes out as it is. */
  call(name: string, ...given: readonly unknown[]): unknown;
  /** A value of the context's own realm, from source text. */
  run(source: string): unknown;
  /** A Date of the context's own realm, as the platform hands them over. */
  date(instant: number): unknown;
  /** Whether this is an Error of the context. */
  isError(thrown: unknown): boolean;
}

export function bareContext(code: string, globals: Readonly<Record<string, unknown>> = {}): BareContext {
  const context = createContext({ ...globals });
  const run = (source: string): unknown => new Script(source).runInContext(context);
  for (const name of absent) run(`delete globalThis[${JSON.stringify(name)}]`);
  const before = new Set(run('Object.getOwnPropertyNames(globalThis)') as string[]);
  run(code);
  const after = (run('Object.getOwnPropertyNames(globalThis)') as string[]).filter((name) => !before.has(name));
  const classOf = (name: keyof typeof made): new (...given: unknown[]) => unknown => run(made[name]) as never;
  return {
    context,
    functions: after.filter((name) => run(`typeof globalThis[${JSON.stringify(name)}]`) === 'function'),
    call: (name, ...given) => (run(name) as (...all: unknown[]) => unknown)(...given),
    run,
    date: (instant) => new (classOf('Date'))(instant),
    isError: (thrown) => thrown instanceof classOf('Error'),
  };
}
