// npm run release: one file for people without Node, dist/rampwright-VERSION.zip. It holds what is pasted into Google's script editor, the page
// that needs no server, how to do it, what it may do, the licences, and the checksum of each file.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { strToU8, zipSync } from 'fflate';
import { buildAll, googleFiles } from './build';
import { projectVersion } from './projectVersion';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** By path in the release. */
export type ReleaseFiles = Readonly<Record<string, Uint8Array>>;

const documents = [
  ...['install.md', 'google.md', 'local-workbook.md', 'web-page.md', 'sheets.md', 'trace-a-chart.md', 'rules-as-a-table.md', 'rules.md', 'functions.md'],
  ...['privacy.md', 'terms.md', 'live-checks.md', 'live-form.md'],
];
const beside = ['LICENSE', 'SECURITY.md', 'CHANGELOG.md'];

/** The oldest day that a zip can name, so that the same files make the same zip. */
const timeless = new Date(1980, 0, 1);

const read = (path: string): Uint8Array => new Uint8Array(readFileSync(join(root, path)));

const firstWords = (version: string): string => `Rampwright ${version}

Planning aid only: the approved manual, official data, local rules and the pilot in command decide.

google/       four files for a spreadsheet of Google Sheets. How: docs/install.md, way b
page/         the same workbook as a page, for any web host; it then works without a network too. How: docs/local-workbook.md
docs/         install, privacy, terms, what each sheet is for
SHA256SUMS.txt  the checksum of each file: sha256sum -c SHA256SUMS.txt

Nothing here was seen on a live Google account. docs/live-checks.md says what to look at once, docs/live-form.md is to be sent back.
`;

const pathsUnder = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll('\\', '/'));

const checksums = (files: ReleaseFiles): string =>
  Object.entries(files)
    .map(([path, content]) => `${createHash('sha256').update(content).digest('hex')}  ${path}\n`)
    .join('');

/** `page` is the folder of the built page, in the project. */
export async function releaseFiles(page: string): Promise<ReleaseFiles> {
  const google = Object.entries(await googleFiles()).map(([name, content]) => [`google/${name}`, strToU8(content)] as const);
  const files = Object.fromEntries([
    ['README.txt', strToU8(firstWords(projectVersion(root)))],
    ...beside.map((name) => [name, read(name)] as const),
    ...google,
    ...pathsUnder(page).map((path) => [`page${path.slice(page.length)}`, read(path)] as const),
    ...documents.map((name) => [`docs/${name}`, read(`docs/${name}`)] as const),
    ...pathsUnder('docs/pictures').map((path) => [path, read(path)] as const),
  ]);
  return { ...files, 'SHA256SUMS.txt': strToU8(checksums(files)) };
}

export const releaseZip = (files: ReleaseFiles): Uint8Array => zipSync({ ...files }, { mtime: timeless, level: 9 });

async function writeRelease(): Promise<void> {
  await buildAll();
  const zip = releaseZip(await releaseFiles('dist/page'));
  const path = `dist/rampwright-${projectVersion(root)}.zip`;
  writeFileSync(join(root, path), zip);
  console.log(`${path}: ${(zip.length / 1024 / 1024).toFixed(1)} MB`);
}

if (process.argv[1] !== undefined && pathToFileURL(process.argv[1]).href === import.meta.url) await writeRelease();
