// An esbuild plugin: modules that exist only while bundling. They give the platform's code and the panel what they need of
// the registry and the templates, and no more.
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { catalogue } from './catalogue';
import { discoverDeclarations } from './discover';

const fileNamespace = 'functions-of-a-file';

/**
 * Each function by name behind a require(), which esbuild starts at its first use: a call then runs the code of its own
 * subject and of what that needs, and of no other.
 */
function functionsSource(root: string): string {
  const entries = discoverDeclarations(root).flatMap(({ file, names }) => names.map((name) => `  ${name}: () => require('${fileNamespace}:${file}').${name},`));
  return `export default {\n${entries.join('\n')}\n};\n`;
}

/** A module without exports of its own kind: for those of a required file esbuild would write, and start, a getter each. */
function functionsOfFile(root: string, wanted: string): string {
  const { names } = discoverDeclarations(root).find(({ file }) => file === wanted) ?? { names: [] };
  return `import { ${names.join(', ')} } from ${JSON.stringify(join(root, 'functions', `${wanted}.ts`))};\nmodule.exports = { ${names.join(', ')} };\n`;
}

export function dataModules(root: string): Plugin {
  const json = (value: unknown): string => `export default ${JSON.stringify(value)};\n`;
  const modules: Readonly<Record<string, () => string>> = {
    'rampwright:catalogue': () => json(catalogue),
    'rampwright:sheet-names': () => json(catalogue.sheets),
    'rampwright:functions': () => functionsSource(root),
  };
  return {
    name: 'data-modules',
    setup(build) {
      build.onResolve({ filter: /^rampwright:/ }, ({ path }) => (path in modules ? { path, namespace: 'data' } : undefined));
      build.onResolve({ filter: new RegExp(`^${fileNamespace}:`) }, ({ path }) => ({ path: path.slice(fileNamespace.length + 1), namespace: fileNamespace }));
      build.onLoad({ filter: /.*/, namespace: fileNamespace }, ({ path }) => ({ contents: functionsOfFile(root, path), loader: 'js', resolveDir: root }));
      build.onLoad({ filter: /.*/, namespace: 'data' }, ({ path }) => ({ contents: modules[path]?.() ?? '', loader: 'js', resolveDir: root }));
    },
  };
}
