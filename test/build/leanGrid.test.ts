// What stands in for three packages of the grid: the signs of Chinese, Japanese and Korean are found as by the package itself.
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import * as cjk from 'cjk-regex';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leanGrid } from '../../addon/build/leanGrid';


const root = fileURLToPath(new URL('../..', import.meta.url));

interface GridWords {
  hasCJK(text: string): boolean;
  hasCJKText(text: string): boolean;
  hasCJKPunctuation(text: string): boolean;
}

async function bundled(folder: string): Promise<{ readonly text: string; readonly words: GridWords }> {
  const outfile = join(folder, 'words.mjs');
  await build({
    stdin: { contents: "export { hasCJK, hasCJKText, hasCJKPunctuation } from '@univerjs/engine-render';", resolveDir: root },
    bundle: true,
    outfile,
    format: 'esm',
    legalComments: 'none',
    plugins: [leanGrid],
    logLevel: 'error',
  });
  return { text: await readFile(outfile, 'utf8'), words: (await import(pathToFileURL(outfile).href)) as GridWords };
}

describe('the grid without what no cell uses', () => {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'rampwright-lean-'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it('finds the same signs in every plane of Unicode, and holds none of the three packages', async () => {
    const { text, words } = await bundled(folder);
    expect(text.includes('unicode-regex') || text.includes('opentype.js/') || text.includes('franc-min/')).toBe(false);
    const [letters, all, punctuations] = [cjk.letters().toRegExp(), cjk.all().toRegExp(), cjk.punctuations().toRegExp()];
    const differing: string[] = [];
    for (let point = 0; point <= 0x10ffff; point += 1) {
      const sign = String.fromCodePoint(point);
      const same =
        words.hasCJKText(sign) === letters.test(sign) && words.hasCJK(sign) === all.test(sign) && words.hasCJKPunctuation(sign) === punctuations.test(sign);
      if (!same) differing.push(point.toString(16));
    }
    expect(differing).toEqual([]);
    expect(words.hasCJK('ein Wort')).toBe(false);
    expect(words.hasCJK('\u6f22')).toBe(true);
  }, 60_000);
});
