// The licence notices that a bundle must carry for the packages inside it, from those packages' own files.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Metafile } from 'esbuild';

function packagesIn({ inputs }: Metafile): string[] {
  const names = Object.keys(inputs).map((path) => /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1]);
  return [...new Set(names.filter((name): name is string => name !== undefined))].sort();
}

interface Package {
  readonly version: string;
  readonly license: string;
}

const licenceFiles = ['LICENSE', 'LICENSE.txt', 'LICENSE.md', 'LICENCE', 'LICENCE.md', 'license'];

function licenceText(folder: string, name: string): string {
  const found = licenceFiles.map((file) => join(folder, file)).find((file) => existsSync(file));
  if (found === undefined) throw new Error(`${name} has no licence file, so it cannot be bundled`);
  return readFileSync(found, 'utf8').trim().replace(/\*\//g, '* /');
}

/** Lines are joined, paragraphs kept: the same words in less room. */
const compact = (text: string): string => text.split(/\n\s*\n/).map((paragraph) => paragraph.replace(/\s+/g, ' ').trim()).join('\n');

const folderOf = (root: string, name: string): string => join(root, 'node_modules', name);

function inWords(root: string, name: string): string {
  const { version, license } = JSON.parse(readFileSync(join(folderOf(root, name), 'package.json'), 'utf8')) as Package;
  return `${name} ${version} (${license})`;
}

/** The packages inside a bundle, each with its version and the name of its licence. */
export const packagesInWords = (root: string, metafile: Metafile): string => packagesIn(metafile).map((name) => inWords(root, name)).join(', ');

/** The licences as text; empty where nothing foreign is inside. `without`: packages that bring no text of their licence, whose name then stands for it. */
export function notices(root: string, metafile: Metafile, without: readonly string[] = []): string {
  return packagesIn(metafile)
    .map((name) => `Contains ${inWords(root, name)}${without.includes(name) ? '.' : `:\n${compact(licenceText(folderOf(root, name), name))}`}`)
    .join('\n\n');
}
