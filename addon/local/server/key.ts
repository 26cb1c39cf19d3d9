// The key to the workbook. Every user of a computer reaches its loopback addresses, so the address that is printed carries a random
// key, and nothing is answered without it. It is kept for this user alone, so that an open page goes on after a new start.
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { chmod, link, mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { readIfThere } from './replaceFile';

const wellFormed = /^[0-9a-f]{32}$/;

export const newKey = (): string => randomBytes(16).toString('hex');

/** A folder that cannot be written gives a key for this start only. */
export async function keptKey(path: string): Promise<string> {
  try {
    const there = (await readIfThere(path))?.trim() ?? '';
    if (wellFormed.test(there)) {
      await chmod(path, 0o600);
      return there;
    }
    const [key, beside] = [newKey(), `${path}.${process.pid}.tmp`];
    await mkdir(dirname(path), { recursive: true });
    await rm(path, { force: true });
    await writeFile(beside, `${key}\n`, { mode: 0o600 });
    // Of two first starts at once one makes the key.
    await link(beside, path).catch(() => undefined);
    await rm(beside, { force: true });
    const kept = (await readIfThere(path))?.trim() ?? '';
    return wellFormed.test(kept) ? kept : key;
  } catch {
    return newKey();
  }
}

export function isSame(one: string, other: string): boolean {
  const [first, second] = [one, other].map((text) => createHash('sha256').update(text).digest());
  return first !== undefined && second !== undefined && timingSafeEqual(first, second);
}

/** Lets the page's own scripts and pictures through. Browsers send cookies to every port of a computer, so it is not the key itself. */
export const passOf = (key: string): string => createHash('sha256').update(`pass of the page ${key}`).digest('hex').slice(0, 32);
