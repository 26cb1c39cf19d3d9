// A name as its owner wrote it, and the key by which two spellings of it are taken for one.

export interface Named {
  readonly name: string;
  readonly key: string;
}

/** Things gathered under the name they carry, in the order in which the names first come. */
export function byName<Thing>(
  things: readonly Thing[],
  nameOf: (thing: Thing) => Named,
): { readonly named: Named; readonly things: readonly Thing[] }[] {
  const groups = new Map<string, { readonly named: Named; readonly things: Thing[] }>();
  for (const thing of things) {
    const named = nameOf(thing);
    const group = groups.get(named.key) ?? { named, things: [] };
    group.things.push(thing);
    groups.set(named.key, group);
  }
  return [...groups.values()];
}
