// One program owns a workbook file: a note beside it says which, and at what address it serves. Two programs would save over one
// another between looking and writing. The note of a program that is gone is taken over.
import { readFileSync, rmSync } from 'node:fs';
import { link, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { hasCode } from './fileTrouble';
import { inTurn } from './inTurn';
import { readIfThere } from './replaceFile';
import { isRunning } from './running';

export interface Owner {
  readonly pid: number;
  readonly computer: string;
  /** "" while it starts. */
  readonly address: string;
}

const answerMilliseconds = 2000;
/** From taking the file to serving it; what has not come so far by then will not. */
const startMilliseconds = 20_000;
const pauseMilliseconds = 100;

const noteOf = (path: string): string => `${path}.lock`;

function ownerFrom(text: string): Owner | undefined {
  try {
    const { pid, computer, address } = (JSON.parse(text) ?? {}) as Partial<Record<keyof Owner, unknown>>;
    return typeof pid === 'number' && typeof computer === 'string' && typeof address === 'string' ? { pid, computer, address } : undefined;
  } catch {
    return undefined;
  }
}

/** In every answer of the server, so that it is not taken for another one at the port that it had. */
export const processHeader = 'x-rampwright-process';

/** A program that hangs serves all the same: given up is a port that nobody listens at, or somebody else. */
async function isServing({ address, pid }: Owner): Promise<boolean> {
  try {
    const { headers } = await fetch(address, { method: 'HEAD', redirect: 'manual', signal: AbortSignal.timeout(answerMilliseconds) });
    return headers.get(processHeader) === String(pid);
  } catch (thrown) {
    return !(thrown instanceof Error && hasCode(thrown.cause, 'ECONNREFUSED'));
  }
}

/** A number is given to another program after a while, so a running one must serve too. */
async function isAlive(owner: Owner): Promise<boolean> {
  const { pid, computer, address } = owner;
  if (computer !== hostname()) return true;
  return isRunning(pid) && (address === '' ? pid !== process.pid : isServing(owner));
}

/** Waits for one that has only just begun. */
async function aliveOwner(note: string): Promise<{ readonly text: string; readonly owner: Owner | undefined } | undefined> {
  const began = performance.now();
  for (;;) {
    const text = await readIfThere(note);
    if (text === undefined) return undefined;
    const owner = ownerFrom(text);
    if (owner === undefined || !(await isAlive(owner))) return { text, owner: undefined };
    if (owner.address !== '') return { text, owner };
    if (performance.now() - began > startMilliseconds) return { text, owner: undefined };
    await pause(pauseMilliseconds);
  }
}

/** Whole at once, for nobody to read half of it, and only where there is none. */
async function putNote(note: string, owner: Owner): Promise<boolean> {
  const beside = `${note}.${process.pid}.tmp`;
  await writeFile(beside, JSON.stringify(owner), { mode: 0o600 });
  try {
    await link(beside, note);
    return true;
  } catch (thrown) {
    if (hasCode(thrown, 'EEXIST')) return false;
    // Disks without links: less sure, and better than nothing.
    await writeFile(note, JSON.stringify(owner), { mode: 0o600, flag: 'wx' });
    return true;
  } finally {
    await rm(beside, { force: true });
  }
}

/**
 * Takes a note away that was found to be of no use. Another start may have done so since, and put its own there: looking once more and
 * taking away are one act, that no two starts do at once, or two would own the file.
 */
const removeNote = (note: string, text: string): Promise<void> =>
  inTurn(note, async () => {
    if ((await readIfThere(note)) === text) await rm(note, { force: true });
  });

export interface Ownership {
  /** Tells where this program serves the file. False where it took so long that another program has taken the file. */
  readonly serveAt: (address: string) => Promise<boolean>;
  /** Gives the file up; at once, since the program may be ending. */
  readonly giveUp: () => void;
}

function ownership(note: string, own: Owner): Ownership {
  const isOurs = (): boolean => {
    try {
      const found = ownerFrom(readFileSync(note, 'utf8'));
      return found?.pid === own.pid && found.computer === own.computer;
    } catch {
      return false;
    }
  };
  return {
    serveAt: async (address) => {
      if (!isOurs()) return false;
      const beside = `${note}.${process.pid}.tmp`;
      await writeFile(beside, JSON.stringify({ ...own, address } satisfies Owner), { mode: 0o600 });
      await rename(beside, note);
      return true;
    },
    giveUp: () => {
      if (isOurs()) rmSync(note, { force: true });
    },
  };
}

/** The file as this program's own, or the program that owns it. */
export async function ownFile(path: string): Promise<Ownership | Owner> {
  const [note, own] = [noteOf(path), { pid: process.pid, computer: hostname(), address: '' }];
  await mkdir(dirname(path), { recursive: true });
  for (;;) {
    if (await putNote(note, own)) return ownership(note, own);
    const there = await aliveOwner(note);
    if (there?.owner !== undefined) return there.owner;
    if (there !== undefined) await removeNote(note, there.text);
  }
}
