// An esbuild plugin: chosen modules start at their first use, not when the bundle loads. On the platform every call of a
// sheet function loads the whole bundle anew, and must pay only for what it uses.
//
// An import of such a module resolves to a small CommonJS module of getters, each of which require()s the real one.
// esbuild wraps whatever is required lazily, so the importing code stays plain ES imports. It must not touch an imported
// value while it loads itself (`const { WGS84 } = Geodesic` at the top of a file would undo this).
import { createRequire } from 'node:module';
import { join, resolve, sep } from 'node:path';
import { transform, type OnResolveArgs, type Plugin, type PluginBuild } from 'esbuild';
import { readFile } from 'node:fs/promises';

const namespace = 'lazy-module';
/** Marks the plugin's own questions, so that they get the real module. */
const asReal = 'the real module';

/** Packages too heavy to start on every call. */
export const lazyPackages: readonly string[] = ['geographiclib-geodesic', 'metar-taf-parser'];

/** Our own modules that most calls never use: the magnetic model, the menu and the commands behind it. */
export const lazyFiles: readonly string[] = ['core/magneticModel.ts', 'addon/google/menu.ts', 'addon/google/commands.ts'];

/** Names under which a module can be imported: its ES exports, or the properties of what it exports in CommonJS. */
async function exportedNames(path: string, source: string): Promise<string[]> {
  const { code } = await transform(source, { loader: path.endsWith('ts') ? 'ts' : 'js', format: 'esm' });
  const list = [...code.matchAll(/^export \{([\s\S]*?)\}/gm)].flatMap(([, names = '']) => names.split(','));
  const named = list.map((entry) => entry.trim().split(/\s+as\s+/).pop() ?? '').filter((name) => name !== '');
  const declared = [...code.matchAll(/^export (?:const|let|var|function|class|async function) (\w+)/gm)].map(([, name = '']) => name);
  if (named.length + declared.length > 0) return [...named, ...declared];
  return Object.keys(createRequire(import.meta.url)(path) as object);
}

const getter = (name: string, path: string): string =>
  `Object.defineProperty(exports, ${JSON.stringify(name)}, { enumerable: true, get: () => require(${JSON.stringify(path)})[${JSON.stringify(name)}] });`;

async function realPath(build: PluginBuild, given: OnResolveArgs): Promise<string> {
  const { path, errors } = await build.resolve(given.path, { importer: given.importer, resolveDir: given.resolveDir, kind: given.kind, pluginData: asReal });
  if (errors.length > 0) throw new Error(`cannot find ${given.path}`);
  return path;
}

export function lazyModules(root: string, packages = lazyPackages, files = lazyFiles): Plugin {
  const own = new Set(files.map((file) => resolve(root, file)));
  const inPackage = (path: string): boolean => packages.some((name) => path.startsWith(join(root, 'node_modules', name) + sep));
  return {
    name: 'lazy-modules',
    setup(build) {
      build.onResolve({ filter: /.*/ }, async (given) => {
        const asked = given.kind === 'import-statement' && given.pluginData !== asReal && (packages.includes(given.path) || given.path.startsWith('.'));
        if (!asked) return undefined;
        const path = await realPath(build, given);
        const lazy = own.has(path) || (packages.includes(given.path) && inPackage(path));
        return lazy ? { path, namespace } : undefined;
      });
      build.onLoad({ filter: /.*/, namespace }, async ({ path }) => {
        const names = await exportedNames(path, await readFile(path, 'utf8'));
        return { contents: names.map((name) => getter(name, path)).join('\n'), resolveDir: root, loader: 'js' };
      });
    },
  };
}
