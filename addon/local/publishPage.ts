// Builds the page for any web host: a folder of plain files whose page keeps its workbooks in the browser and works without a network.
import { build } from 'esbuild';
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { notices } from '../build/notices';
import { bundlePage, indexOf, panelOf } from './buildPage';

/** Packages of the grid that bring only the name of their licence. */
const withoutText = ['@univerjs/protocol', 'ot-json1', 'ot-text-unicode', 'react-remove-scroll-bar', 'unicount'];

/** For people who ask the host for it; the page does not. */
const licences = 'licences.txt';
const worker = 'worker.js';
const icons = ['icon.svg', 'icon-192.png', 'icon-512.png'];

/** Nothing may be sent: the page connects to nothing, not even its own host, and loads from its own host only. */
const policyOf = (script: string, frames: string): string =>
  `default-src 'none'; script-src ${script}; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; frame-src ${frames}; connect-src 'none'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; object-src 'none'`;

const policyTag = (policy: string): string => `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;

const sha256 = (content: string | Uint8Array, encoding: 'hex' | 'base64'): string => createHash('sha256').update(content).digest(encoding);

/** Puts a text behind the first place of another, which must be there. */
function withBehind(page: string, place: string, text: string): string {
  const at = page.indexOf(place);
  if (at < 0) throw new Error(`the page has no ${place}`);
  return page.slice(0, at + place.length) + text + page.slice(at + place.length);
}

const indexPage = (root: string): string => {
  const head = [
    policyTag(policyOf("'self'", "'self'")),
    '<link rel="manifest" href="manifest.webmanifest" />',
    '<link rel="apple-touch-icon" href="icon-192.png" />',
    '<meta name="theme-color" content="#1f4e79" />',
  ];
  const index = indexOf(root).replace('<link rel="icon" href="data:," />', '<link rel="icon" href="icon.svg" />');
  return withBehind(index, '<meta charset="utf-8" />', `\n    ${head.join('\n    ')}`);
};

/** The panel is one file with its script inside it, which the policy knows by its hash. */
async function panelFile(root: string): Promise<string> {
  const page = await panelOf(root);
  const script = /<script>([\s\S]*)<\/script>/.exec(page)?.[1] ?? '';
  return withBehind(page, '<meta charset="utf-8">', policyTag(policyOf(`'sha256-${sha256(script, 'base64')}'`, "'none'")));
}

const manifest = {
  id: './',
  name: 'Rampwright',
  short_name: 'Rampwright',
  description: 'The arithmetic of getting a light aircraft ready to fly. Planning aid only.',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: '#ffffff',
  theme_color: '#1f4e79',
  icons: [
    { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: 'icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
  ],
};

/** Last of all, since it names every file by its hash. */
export async function writeWorker(root: string, folder: string): Promise<void> {
  const files = readdirSync(folder)
    .filter((name) => name !== licences && name !== worker)
    .sort()
    .map((name) => [name, sha256(readFileSync(join(folder, name)), 'hex')] as const);
  await build({
    absWorkingDir: root,
    entryPoints: ['addon/local/worker/worker.ts'],
    outfile: join(folder, worker),
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    define: { builtVersion: JSON.stringify(sha256(JSON.stringify(files), 'hex').slice(0, 12)), builtFiles: JSON.stringify(files) },
    logLevel: 'warning',
  });
}

export interface PublishedPage {
  readonly files: number;
  readonly bytes: number;
}

/** Fills the folder, emptied first. */
export async function publishPage(root: string, folder: string): Promise<PublishedPage> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const metafile = await bundlePage(root, folder, 'addon/local/page/browser/main.ts');
  writeFileSync(join(folder, 'index.html'), indexPage(root));
  writeFileSync(join(folder, 'panel.html'), await panelFile(root));
  writeFileSync(join(folder, 'manifest.webmanifest'), JSON.stringify(manifest, undefined, 2));
  writeFileSync(join(folder, licences), `${notices(root, metafile, withoutText)}\n`);
  for (const name of icons) copyFileSync(join(root, 'addon/local/page/browser', name), join(folder, name));
  await writeWorker(root, folder);
  const sizes = readdirSync(folder).map((name) => statSync(join(folder, name)).size);
  return { files: sizes.length, bytes: sizes.reduce((sum, size) => sum + size, 0) };
}
