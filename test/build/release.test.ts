// The release file as a stranger meets it: every checksum holds, every link of its pages leads to something in it, and the four files for Google's
// editor are those of the build.
import { createHash } from 'node:crypto';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import { releaseFiles, releaseZip } from '../../addon/build/release';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Stands for the built page, which the browser tests build and open. */
const page = 'build/releaseTest/page';

describe('the release', () => {
  let zipped: Uint8Array;
  let files: Record<string, Uint8Array>;
  const text = (path: string): string => strFromU8(files[path] ?? new Uint8Array());
  beforeAll(async () => {
    mkdirSync(join(root, page, 'parts'), { recursive: true });
    writeFileSync(join(root, page, 'index.html'), '<!doctype html><title>page</title>');
    writeFileSync(join(root, page, 'parts/one.js'), '1;');
    zipped = releaseZip(await releaseFiles(page));
    files = unzipSync(zipped);
  });
  afterAll(() => rmSync(join(root, dirname(page)), { recursive: true }));

  it('has a true checksum for each file, and for no other', () => {
    const sums = text('SHA256SUMS.txt')
      .trim()
      .split('\n')
      .map((line) => line.split('  ') as [string, string]);
    expect(sums.map(([, path]) => path).sort()).toEqual(
      Object.keys(files)
        .filter((path) => path !== 'SHA256SUMS.txt')
        .sort(),
    );
    for (const [sum, path] of sums) expect(createHash('sha256').update(files[path] ?? '').digest('hex'), path).toBe(sum);
  });

  it('holds what the build makes for Google, the page with its folders, and the licence', async () => {
    for (const [name, content] of Object.entries(await googleFiles())) expect(text(`google/${name}`) === content, name).toBe(true);
    expect([text('page/index.html'), text('page/parts/one.js')]).toEqual(['<!doctype html><title>page</title>', '1;']);
    expect(text('LICENSE')).toContain('MIT');
    expect(text('google/Code.js')).toMatch(/^\/\*\* @OnlyCurrentDoc \*\/\n\/\/ Rampwright \d+\.\d+\.\d+\. Contains /);
  });

  it('leads nowhere but into itself and to addresses', () => {
    const pages = Object.keys(files).filter((path) => path.startsWith('docs/') && path.endsWith('.md'));
    expect(pages.length).toBeGreaterThan(5);
    for (const path of pages)
      for (const [, to = ''] of text(path).matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g))
        if (!to.startsWith('https://')) expect(Object.keys(files), `${path} leads to ${to}`).toContain(posix.join('docs', to));
  });

  it('is the same file each time it is made of the same files', async () => expect(releaseZip(await releaseFiles(page))).toEqual(zipped));
});
