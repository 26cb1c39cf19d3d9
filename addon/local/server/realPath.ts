// Where a file really is, behind every link, also where nothing is there yet.
import { readlinkSync, realpathSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { hasCode } from './fileTrouble';

/** Links that a dangling link may lead through. */
const maxLinks = 40;

function orUndefined<Value>(read: () => Value, ...codes: readonly string[]): Value | undefined {
  try {
    return read();
  } catch (thrown) {
    if (codes.some((code) => hasCode(thrown, code))) return undefined;
    throw thrown;
  }
}

/** The folder as it really is, as far down as it is there. */
const realFolder = (folder: string): string =>
  orUndefined(() => realpathSync(folder), 'ENOENT') ?? (dirname(folder) === folder ? folder : join(realFolder(dirname(folder)), basename(folder)));

export const linkTarget = (path: string): string | undefined => orUndefined(() => readlinkSync(path), 'EINVAL', 'ENOENT', 'ENOTDIR');

export function realPathOf(path: string): string {
  let place = resolve(path);
  for (let count = 0; count < maxLinks; count += 1) {
    const found = orUndefined(() => realpathSync(place), 'ENOENT', 'ENOTDIR');
    if (found !== undefined) return found;
    const target = linkTarget(place);
    if (target === undefined)
      return dirname(place) === place ? place : join(orUndefined(() => realFolder(dirname(place)), 'ENOTDIR') ?? dirname(place), basename(place));
    place = resolve(dirname(place), target);
  }
  return place;
}
