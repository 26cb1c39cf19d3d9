// Builds the Google host into dist/google (Code.js, panel.html, licences.html, appsscript.json, and nothing else) and the page for any web
// host into dist/page.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { sheetTemplates } from '../../sheets-templates';
import { packedElement, packTemplates } from '../workbook/packedTemplates';
import { publishPage } from '../local/publishPage';
import { googleCode } from './googleBundle';
import { panelPage } from './panelPage';

const root = fileURLToPath(new URL('../..', import.meta.url));

export type GoogleFiles = Readonly<Record<'Code.js' | 'panel.html' | 'licences.html' | 'appsscript.json', string>>;

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

/** Apps Script takes no plain text, and no call of a function reads this. */
const licencePage = (licences: string): string => `<!DOCTYPE html>\n<title>Licences</title>\n<pre>\n${escaped(licences)}\n</pre>\n`;

export async function googleFiles(): Promise<GoogleFiles> {
  const [{ code, licences }, panel] = await Promise.all([googleCode({ root }), panelPage(root, 'addon/google/client/main.ts', packedElement(packTemplates(sheetTemplates)))]);
  return {
    'Code.js': code,
    'panel.html': panel,
    'licences.html': licencePage(licences),
    'appsscript.json': readFileSync(join(root, 'appsscript.json'), 'utf8'),
  };
}

export async function buildGoogle(): Promise<void> {
  const files = Object.entries(await googleFiles());
  const folder = join(root, 'dist/google');
  // Emptied first: clasp would push whatever an older build left there.
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const [name, content] of files) writeFileSync(join(folder, name), content);
  const sizes = files.map(([name, content]) => `${name} ${(Buffer.byteLength(content) / 1024).toFixed(1)} KB`);
  console.log(`dist/google: ${sizes.join(', ')}`);
}

/** dist/google, and the page for any web host in dist/page. */
export async function buildAll(): Promise<void> {
  await buildGoogle();
  const folder = join(root, 'dist/page');
  const { files, bytes } = await publishPage(root, folder);
  console.log(`dist/page: ${files} files, ${(bytes / 1024 / 1024).toFixed(1)} MB`);
}

if (process.argv[1] !== undefined && pathToFileURL(process.argv[1]).href === import.meta.url) await buildAll();
