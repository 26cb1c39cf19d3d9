// An esbuild plugin: the grid's tables of hyphenation (78 languages, 5 MB) are one empty one, since no cell of ours is hyphenated.
import { readdir } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { Plugin } from 'esbuild';

/** af-DK_CjRn6.js, de-ch-1901-hVThVHVb.js: the language, then eight signs of the grid's own build. */
const table = /^(?:\.\/)?([a-z][\w-]*)-[\w-]{8}\.js$/;
const importer = /[\\/]@univerjs[\\/]engine-render[\\/]lib[\\/]es[\\/]index\.js$/;
const namespace = 'no-hyphenation';

/** As the grid names what it takes from such a file: EnGb, DeCh1901. */
const exportedName = (language: string): string =>
  language
    .split('-')
    .map((part) => part.charAt(0).toUpperCase() + part.slice(1))
    .join('');

export const noHyphenation: Plugin = {
  name: namespace,
  setup(build) {
    build.onResolve({ filter: table }, (given) =>
      given.kind === 'dynamic-import' && importer.test(given.importer) ? { path: dirname(given.importer), namespace } : undefined,
    );
    build.onLoad({ filter: /.*/, namespace }, async ({ path }) => {
      const languages = (await readdir(path)).flatMap((file) => table.exec(basename(file))?.[1] ?? []);
      return { contents: languages.map((language) => `export const ${exportedName(language)} = ['', '{}', []];`).join('\n'), loader: 'js' };
    });
  },
};
