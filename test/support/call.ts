// Calls a sheet function by name as a host does, with UTC dates.
import { evaluate } from '../../functions/registry/evaluate';
import { registry } from '../../functions/registry/index.generated';
import type { FunctionDeclaration } from '../../functions/registry/declaration';
import type { FunctionName } from '../../functions/registry/names.generated';
import { utcDateHost } from '../../functions/registry/utcDateHost';

export function declarationOf(name: string): FunctionDeclaration {
  const found = registry.find((declaration) => declaration.name === name);
  if (found === undefined) throw new Error(`no sheet function ${name}`);
  return found;
}

export const call = (name: FunctionName, ...given: readonly unknown[]): unknown => evaluate(declarationOf(name), given, utcDateHost);

/** The sentence that a call throws; fails where it throws nothing. */
export function sentenceOf(name: FunctionName, ...given: readonly unknown[]): string {
  try {
    call(name, ...given);
  } catch (thrown) {
    return thrown instanceof Error ? thrown.message : String(thrown);
  }
  throw new Error(`${name} threw nothing`);
}

/** The answer of one row of a function, by result name; dates as ISO text. */
export function answer(name: FunctionName, ...given: readonly unknown[]): Readonly<Record<string, unknown>> {
  const got = call(name, ...given);
  const row: unknown[] = Array.isArray(got) ? (got[0] as unknown[]) : [got];
  return Object.fromEntries(Object.keys(declarationOf(name).results).map((key, index) => [key, plain(row[index])]));
}

/** Dates as ISO text, everything else as it is. */
export const plain = (cell: unknown): unknown => (cell instanceof Date ? cell.toISOString().slice(0, 10) : cell);

/** Civil dates as the hosts of these tests send them. */
export const day = (iso: string): Date => new Date(`${iso}T00:00:00Z`);
