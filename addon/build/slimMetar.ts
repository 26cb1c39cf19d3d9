// An esbuild plugin: leaves out of the platform's bundle the half of metar-taf-parser that reads remarks, and its texts.
// core/metar.ts hands the parser the observation alone, cut off before RMK, and reads the one group of the remarks that it
// needs itself. What is left out fills `remarks` and `remark` of the parser's answer, and nothing else.
import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';

const replacements: readonly (readonly [found: string, put: string])[] = [
  // The texts are used by the remarks' commands only.
  ["import en from './locale/en.js';", 'const en = {};'],
  ['const remarks = new RemarkParser(locale).parse(line.slice(index + 1).join(" "));', 'const remarks = [];'],
];

/** The parser's source without the remarks; throws where another version of the package has other lines. */
export function withoutRemarks(source: string): string {
  return replacements.reduce((text, [found, put]) => {
    if (text.split(found).length !== 2) throw new Error(`metar-taf-parser no longer has the line ${found}`);
    return text.replace(found, () => put);
  }, source);
}

export const slimMetar: Plugin = {
  name: 'slim-metar',
  setup(build) {
    build.onLoad({ filter: /[\\/]metar-taf-parser[\\/]metar-taf-parser\.js$/ }, async ({ path }) => ({ contents: withoutRemarks(await readFile(path, 'utf8')), loader: 'js' }));
  },
};
