// npm run bench: how long each mapping function takes over 10,000 rows at its own door, and what the bundle costs cold.
// Figures only: no test fails on a time.
import { performance } from 'node:perf_hooks';
import { evaluate } from '../../functions/registry/evaluate';
import type { FunctionDeclaration } from '../../functions/registry/declaration';
import { registry } from '../../functions/registry/index.generated';
import { utcDateHost } from '../../functions/registry/utcDateHost';

const rows = 10_000;
const runs = 5;

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** The first example, its first cell argument as a column of so many equal rows. */
function columnOf({ parameters, examples }: FunctionDeclaration): unknown[] | undefined {
  const given = [...(examples[0]?.arguments ?? [])];
  const place = Object.values(parameters).findIndex(({ shape }) => shape === 'cell');
  if (place < 0 || Array.isArray(given[place])) return undefined;
  const cell = given[place];
  given[place] = Array.from({ length: rows }, () => [cell]);
  return given;
}

function time(declaration: FunctionDeclaration, given: readonly unknown[]): { readonly first: number; readonly warm: number } {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    evaluate(declaration, given, utcDateHost);
    return performance.now() - start;
  });
  return { first: times[0] ?? 0, warm: median(times.slice(1)) };
}

console.log(`${rows.toLocaleString('en')} rows in one call, milliseconds`);
console.log('function'.padEnd(30), 'first'.padStart(8), 'warm'.padStart(8));
for (const declaration of registry.filter(({ form }) => form === 'map')) {
  const given = columnOf(declaration);
  if (given === undefined) continue;
  const { first, warm } = time(declaration, given);
  console.log(declaration.name.padEnd(30), first.toFixed(1).padStart(8), warm.toFixed(1).padStart(8), warm > 100 ? ' over 100' : '');
}
