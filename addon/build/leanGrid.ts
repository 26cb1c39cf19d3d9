// An esbuild plugin: what the grid's drawing brings along and no cell of ours uses stays out of the page.
//
// - Its tables of hyphenation (78 languages, 5 MB) are one empty one, and no language is guessed to choose among them.
// - Fonts of the machine are read only where the person let the page have them, which it never asks for: their reader is left out.
// - The signs of Chinese, Japanese and Korean are found by the same regular expressions, written out here, when the page is
//   built, instead of on every start from tables of the whole of Unicode.
import { readdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, dirname } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'esbuild';

/** af-DK_CjRn6.js, de-ch-1901-hVThVHVb.js: the language, then eight signs of the grid's own build. */
const table = /^(?:\.\/)?([a-z][\w-]*)-[\w-]{8}\.js$/;
const importer = /[\\/]@univerjs[\\/]engine-render[\\/]lib[\\/]es[\\/]index\.js$/;
const hyphenation = 'no-hyphenation';
const unused = 'unused-by-the-page';

/** As the grid names what it takes from such a file: EnGb, DeCh1901. */
const exportedName = (language: string): string =>
  language
    .split('-')
    .map((part) => part.charAt(0).toUpperCase() + part.slice(1))
    .join('');

async function withoutTables(folder: string): Promise<string> {
  const languages = (await readdir(folder)).flatMap((file) => table.exec(basename(file))?.[1] ?? []);
  return languages.map((language) => `export const ${exportedName(language)} = ['', '{}', []];`).join('\n');
}

/** What the grid takes from cjk-regex, each with its `toRegExp`. */
type Signs = Record<'letters' | 'all' | 'punctuations', () => { toRegExp(): RegExp }>;

async function writtenOut(gridFile: string): Promise<string> {
  const path = createRequire(gridFile).resolve('cjk-regex');
  const signs = (await import(pathToFileURL(path).href)) as Signs;
  const kinds = ['letters', 'all', 'punctuations'] as const;
  return kinds.map((kind) => `export const ${kind} = () => ({ toRegExp: () => ${String(signs[kind]().toRegExp())} });`).join('\n');
}

const standIns: Readonly<Record<string, (gridFile: string) => Promise<string>>> = {
  'franc-min': () => Promise.resolve("export const franc = () => 'und';"),
  'opentype.js': () => Promise.resolve("export const parse = () => { throw new Error('the page reads no fonts of this machine'); };"),
  'cjk-regex': writtenOut,
};

export const leanGrid: Plugin = {
  name: 'lean-grid',
  setup(build) {
    build.onResolve({ filter: table }, (given) =>
      given.kind === 'dynamic-import' && importer.test(given.importer) ? { path: dirname(given.importer), namespace: hyphenation } : undefined,
    );
    build.onResolve({ filter: /^(franc-min|opentype\.js|cjk-regex)$/ }, (given) =>
      importer.test(given.importer) ? { path: given.path, namespace: unused, pluginData: given.importer } : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: hyphenation }, async ({ path }) => ({ contents: await withoutTables(path), loader: 'js' }));
    build.onLoad({ filter: /.*/, namespace: unused }, async ({ path, pluginData }) => {
      const contents = await standIns[path]?.(pluginData as string);
      if (contents === undefined) throw new Error(`nothing stands in for ${path}`);
      return { contents, loader: 'js' };
    });
  },
};
