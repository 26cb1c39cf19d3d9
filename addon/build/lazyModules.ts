// An esbuild plugin: chosen modules start at their first use, not when the bundle loads. On the platform every call of a
// sheet function loads the whole bundle anew, and must pay only for what it uses.
//
// An import of such a module resolves to a small CommonJS module of getters, each of which require()s the real one.
// esbuild wraps whatever is required lazily, so the importing code stays plain ES imports. It must not touch an imported
// value while it loads itself (`const { WGS84 } = Geodesic` at the top of a file would undo this).
import { realpathSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join, resolve, sep } from 'node:path';
import { transform, type OnResolveArgs, type Plugin, type PluginBuild } from 'esbuild';

const namespace = 'lazy-module';
/** What is used of a module that has ES exports: the rest of it is left out of the bundle. */
const slimNamespace = 'slim-module';
/** Marks the plugin's own questions, so that they get the real module. */
const asReal = 'the real module';

/** Packages too heavy to start on every call. */
export const lazyPackages: readonly string[] = ['geographiclib-geodesic'];

/** Our own modules that most calls never use: the magnetic model, the words of what core cannot answer, the menu and the commands behind it. */
export const lazyFiles: readonly string[] = ['core/navigation/magneticModel.ts', 'functions/registry/wordCoreError.ts', 'addon/google/menu.ts', 'addon/google/commands.ts'];

/** Names that a list in braces takes from a module; types take nothing. */
const namesInList = (list: string, side: 'first' | 'last'): string[] =>
  list
    .split(',')
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '' && !entry.startsWith('type '))
    .map((entry) => entry.split(/\s+as\s+/))
    .map((parts) => (side === 'first' ? parts[0] : parts[parts.length - 1]) ?? '');

/** What the importing file takes by name, or undefined where it takes the whole module. */
function namesTaken(importer: string, specifier: string): string[] | undefined {
  const quoted = specifier.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const [, list] = new RegExp(`(?:import|export)\\s*\\{([^}]*)\\}\\s*from\\s*['"]${quoted}['"]`).exec(importer) ?? [];
  return list === undefined ? undefined : namesInList(list, 'first');
}

/** ES exports of a module; empty for CommonJS. */
async function moduleExports(path: string): Promise<string[]> {
  const { code } = await transform(await readFile(path, 'utf8'), { loader: path.endsWith('ts') ? 'ts' : 'js', format: 'esm' });
  const listed = [...code.matchAll(/^export \{([\s\S]*?)\}/gm)].flatMap(([, list = '']) => namesInList(list, 'last'));
  const declared = [...code.matchAll(/^export (?:async )?(?:const|let|var|function|class) (\w+)/gm)].map(([, name = '']) => name);
  return [...listed, ...declared];
}

const getter = (name: string, real: string): string => `get ${name}() { return require(${JSON.stringify(real)}).${name}; }`;

async function realPath(build: PluginBuild, given: OnResolveArgs): Promise<string> {
  const { path, errors } = await build.resolve(given.path, { importer: given.importer, resolveDir: given.resolveDir, kind: given.kind, pluginData: asReal });
  if (errors.length > 0) throw new Error(`cannot find ${given.path}`);
  return path;
}

export function lazyModules(root: string, packages = lazyPackages, files = lazyFiles): Plugin {
  const own = new Set(files.map((file) => resolve(root, file)));
  // esbuild follows links, and a work tree may share the packages of another.
  const installed = realpathSync(join(root, 'node_modules'));
  const inPackage = (path: string): boolean => packages.some((name) => path.startsWith(join(installed, name) + sep));
  return {
    name: 'lazy-modules',
    setup(build) {
      build.onResolve({ filter: /.*/ }, async (given) => {
        const asked = given.kind === 'import-statement' && given.pluginData !== asReal && (packages.includes(given.path) || given.path.startsWith('.'));
        if (!asked) return undefined;
        const path = await realPath(build, given);
        if (!own.has(path) && !(packages.includes(given.path) && inPackage(path))) return undefined;
        // Source that is no file (the build's own, or a test's) takes the whole module.
        const taken = namesTaken(await readFile(given.importer, 'utf8').catch(() => ''), given.path);
        return { path, namespace, suffix: taken === undefined ? '' : `?${taken.join(',')}` };
      });
      build.onLoad({ filter: /.*/, namespace }, async ({ path, suffix }) => {
        const exported = await moduleExports(path);
        const isModule = exported.length > 0;
        const names = suffix === '' ? (isModule ? exported : Object.keys(createRequire(import.meta.url)(path) as object)) : suffix.slice(1).split(',');
        const real = isModule ? `${slimNamespace}:${path}?${names.join(',')}` : path;
        return { contents: `module.exports = { ${names.map((name) => getter(name, real)).join(', ')} };`, resolveDir: root, loader: 'js' };
      });
      build.onResolve({ filter: new RegExp(`^${slimNamespace}:`) }, ({ path }) => ({ path: path.slice(slimNamespace.length + 1), namespace: slimNamespace }));
      build.onLoad({ filter: /.*/, namespace: slimNamespace }, ({ path }) => {
        const [file = '', names = ''] = path.split('?');
        return { contents: `export { ${names} } from ${JSON.stringify(file)};`, resolveDir: root, loader: 'js' };
      });
    },
  };
}
