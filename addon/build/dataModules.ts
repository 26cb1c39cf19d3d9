// An esbuild plugin: modules that exist only while bundling. They give the platform's code and the panel what they need of
// the registry and the templates, and no more.
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { catalogue } from './catalogue';
import { discoverDeclarations } from './discover';

/**
 * Each function by name behind a require(), which esbuild starts at its first use: a call then runs the code of its own
 * subject and of what that needs, and of no other.
 */
function functionsSource(root: string): string {
  const entries = discoverDeclarations(root).flatMap(({ file, names }) => {
    const path = JSON.stringify(join(root, 'functions', `${file}.ts`));
    return names.map((name) => `  ${name}: () => require(${path}).${name},`);
  });
  return `export default {\n${entries.join('\n')}\n};\n`;
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
      build.onLoad({ filter: /.*/, namespace: 'data' }, ({ path }) => ({ contents: modules[path]?.() ?? '', loader: 'js', resolveDir: root }));
    },
  };
}
