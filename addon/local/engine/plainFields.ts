// The engine's packages set every field of an object through a helper that looks the name up first: a quarter of the time of a
// calculation, since each value in it is an object of ten fields. Here the text of the package sets them plainly. The helper makes
// a difference only for a name that some class has as a getter or setter: those stay as they are.
//
// It can go when the package is built for browsers that know class fields.

/** _defineProperty(this, "name", value) becomes void (this.name = value); the last parenthesis serves both. */
const setting = /_defineProperty\(this, "([A-Za-z_$][\w$]*)", /g;
const accessor = /^\s*(?:static )?(?:get|set) ([\w$]+)\(/gm;

/** Names that are read or written through a function in some class of these sources. */
export const accessorsIn = (sources: readonly string[]): ReadonlySet<string> =>
  new Set(sources.flatMap((source) => [...source.matchAll(accessor)].map(([, name = '']) => name)));

export const withPlainFields = (source: string, accessors: ReadonlySet<string>): string =>
  source.replace(setting, (found, name: string) => (accessors.has(name) ? found : `void (this.${name} = `));
