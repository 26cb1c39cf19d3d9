// google.script.run of the double: calls a top-level function of the script and lets only plain data through, as the
// platform does. A Date, a function or an object of a class makes the request fail.

export type TopLevel = Readonly<Record<string, unknown>>;

const plainPrototypes = new Set(['Object', 'Array']);

/** What arrives on the other side. */
export function carried(value: unknown, path = 'argument'): unknown {
  if (value === null || ['string', 'boolean', 'undefined'].includes(typeof value)) return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : null;
  const tag = Object.prototype.toString.call(value).slice(8, -1);
  const made = (Object.getPrototypeOf(value) as { constructor?: { name?: string } } | null)?.constructor?.name;
  if (typeof value !== 'object' || !plainPrototypes.has(tag) || (made !== undefined && !plainPrototypes.has(made)))
    throw new Error(`google.script.run cannot carry a ${made ?? tag} (${path})`);
  if (Array.isArray(value)) return (value as unknown[]).map((one, index) => carried(one, `${path}[${index}]`) ?? null);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, carried(one, `${path}.${key}`)]));
}

/** One request, as the platform runs it for the panel. */
export async function runOnServer(script: TopLevel, name: string, given: readonly unknown[]): Promise<unknown> {
  const target = script[name];
  if (name.endsWith('_') || typeof target !== 'function') throw new Error(`Script function not found: ${name}`);
  const answer: unknown = await (target as (...given: unknown[]) => unknown)(...given.map((one) => carried(one)));
  return carried(answer, 'answer');
}
