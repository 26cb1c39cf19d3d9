// Builds the page into build/local, unless it was built from the very same sources already.
import { build, type Metafile } from 'esbuild';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sheetTemplates } from '../../sheets-templates';
import { leanGrid } from '../build/leanGrid';
import { panelPage } from '../build/panelPage';
import { quickEnginePlugin } from './quickEnginePlugin';
import { packedElement, packTemplates } from '../workbook/packedTemplates';

/** addon whole: a part of it that is not named would leave an old page standing. */
const sourceFolders = ['core', 'functions', 'sheets-templates', 'addon'];

function fingerprint(root: string): string {
  const hash = createHash('sha256');
  const files = sourceFolders.flatMap((folder) =>
    existsSync(join(root, folder)) ? readdirSync(join(root, folder), { recursive: true, withFileTypes: true }) : [],
  );
  const paths = files.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  for (const path of [...paths.sort(), join(root, 'package-lock.json')]) hash.update(path).update(readFileSync(path));
  return hash.digest('hex');
}

/** `entry`: the script of the page, a path from the root. Returns the packages inside and their licences. */
export async function bundlePage(root: string, folder: string, entry: string): Promise<Metafile> {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: { main: entry },
    outdir: folder,
    bundle: true,
    minify: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    legalComments: 'none',
    define: { 'process.env.NODE_ENV': '"production"' },
    metafile: true,
    logLevel: 'warning',
    plugins: [leanGrid, quickEnginePlugin],
  });
  return metafile;
}

export const indexOf = (root: string): string => readFileSync(join(root, 'addon/local/page/index.html'), 'utf8');

export const panelOf = (root: string): Promise<string> =>
  panelPage(root, 'addon/local/page/panelFrame/main.ts', packedElement(packTemplates(sheetTemplates)));

async function bundle(root: string, folder: string): Promise<void> {
  await bundlePage(root, folder, 'addon/local/page/main.ts');
  writeFileSync(join(folder, 'index.html'), indexOf(root));
  writeFileSync(join(folder, 'panel.html'), await panelOf(root));
}

/** The folder of the built page, and whether it had to be built. */
export async function buildPage(root: string): Promise<{ readonly folder: string; readonly built: boolean }> {
  const folder = join(root, 'build/local');
  const mark = join(folder, 'sources.sha256');
  const sources = fingerprint(root);
  if (existsSync(mark) && readFileSync(mark, 'utf8') === sources) return { folder, built: false };
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  await bundle(root, folder);
  writeFileSync(mark, sources);
  return { folder, built: true };
}
