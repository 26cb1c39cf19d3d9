// Each mapping function of Code.js over many rows in one call, at its own door: 2-D arrays in and out.
import { performance } from 'node:perf_hooks';
import { Script } from 'node:vm';
import { registry } from '../../functions/registry/index.generated';
import { median } from './numbers';
import { met, milliseconds, type Section } from './table';
import { variedArguments } from './variedRows';

const rows = 10_000;
const runs = 5;
const target = 100;

type Door = (...given: readonly unknown[]) => unknown[][];

/** In this context, since each use of a global in one made by node:vm takes a detour that the platform does not have. */
function doors(code: string): (name: string) => Door {
  new Script(code).runInThisContext();
  return (name) => Reflect.get(globalThis, name) as Door;
}

interface Timed {
  readonly name: string;
  readonly first: number;
  readonly warm: number;
  /** Rows that answer with a sentence. */
  readonly refused: number;
}

function timeOf(name: string, door: Door, given: readonly unknown[]): Timed {
  let answer: unknown[][] = [];
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    answer = door(...given);
    return performance.now() - start;
  });
  if (answer.length !== rows) throw new Error(`${name} gave ${answer.length} rows for ${rows}`);
  const refused = answer.filter(([cell]) => typeof cell === 'string' && cell.startsWith(`${name}: `)).length;
  return { name, first: times[0] ?? Number.NaN, warm: median(times.slice(1)), refused };
}

export function manyRows(code: string): Section {
  const door = doors(code);
  const measured = registry
    .filter(({ form }) => form === 'map')
    .map((declaration) => timeOf(declaration.name, door(declaration.name), variedArguments(declaration, rows)))
    .sort((one, other) => other.warm - one.warm);
  return {
    title: `Every mapping function of Code.js over ${rows.toLocaleString('en')} different rows in one call, milliseconds`,
    heads: ['function', 'first', 'warm', 'target', 'warm / target', '', 'rows refused'],
    rows: measured.map(({ name, first, warm, refused }) => [
      name,
      milliseconds(first),
      milliseconds(warm),
      String(target),
      (warm / target).toFixed(2),
      met(warm <= target),
      refused === 0 ? '' : String(refused),
    ]),
    notes: [
      `The first example with its numbers and dates varied, each argument a column, dates as ISO texts. warm: median of ${runs - 1} further calls; the target is for this.`,
    ],
  };
}
