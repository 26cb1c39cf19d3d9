// The user's workbook as a file: made from the templates at first, replaced whole and atomically, kept once more as it
// was before this session, and never overwritten when somebody else has changed it since it was read.
import { createHash } from 'node:crypto';
import { copyFile, mkdir, open, readFile, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

export interface StoredWorkbook {
  readonly text: string;
  /** Changes whenever the content does. */
  readonly version: string;
}

/** The file on disk is not the one that the writer had read. */
export class ChangedMeanwhileError extends Error {}

const versionOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 32);

const isMissing = (thrown: unknown): boolean => thrown instanceof Error && 'code' in thrown && thrown.code === 'ENOENT';

async function readIfThere(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (thrown) {
    if (isMissing(thrown)) return undefined;
    throw thrown;
  }
}

const causes: Readonly<Record<string, string>> = {
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  ENOENT: 'its folder is gone',
  ENOTDIR: 'its folder is gone',
};

/** What the system says, in a sentence for the user. */
function inWords(path: string, thrown: unknown): unknown {
  if (!(thrown instanceof Error && 'code' in thrown)) return thrown;
  return new Error(`the file ${path} cannot be read or written: ${causes[String(thrown.code)] ?? thrown.message}.`, { cause: thrown });
}

/** Writes beside the file and renames, so that a crash leaves the old file or the new one, never half of one. */
async function replaceFile(path: string, text: string): Promise<void> {
  const beside = `${path}.${process.pid}.tmp`;
  try {
    const handle = await open(beside, 'w', 0o600);
    try {
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, path);
  } catch (thrown) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw thrown;
  }
}

export class WorkbookFile {
  readonly path: string;
  private readonly makeFirst: () => string;
  private queue: Promise<unknown> = Promise.resolve();
  private backedUp = false;

  constructor(path: string, makeFirst: () => string) {
    this.path = path;
    this.makeFirst = makeFirst;
  }

  get backupPath(): string {
    return `${this.path}.backup`;
  }

  /** One at a time, so that no read falls between a check and a rename. */
  private inTurn<Result>(work: () => Promise<Result>): Promise<Result> {
    const turn = this.queue.then(work).catch((thrown: unknown) => {
      throw inWords(this.path, thrown);
    });
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  read(): Promise<StoredWorkbook> {
    return this.inTurn(async () => {
      const there = await readIfThere(this.path);
      const text = there ?? this.makeFirst();
      if (there === undefined) {
        await mkdir(dirname(this.path), { recursive: true });
        await replaceFile(this.path, text);
      }
      return { text, version: versionOf(text) };
    });
  }

  /** Undefined where there is no file. */
  version(): Promise<string | undefined> {
    return this.inTurn(async () => {
      const there = await readIfThere(this.path);
      return there === undefined ? undefined : versionOf(there);
    });
  }

  /** `knownVersion` is the version that the writer read; a file changed since then is left alone. */
  write(text: string, knownVersion: string): Promise<StoredWorkbook> {
    return this.inTurn(async () => {
      const there = await readIfThere(this.path);
      if (there !== undefined && versionOf(there) !== knownVersion) {
        throw new ChangedMeanwhileError('The file was changed elsewhere (another window or program) after this page opened it. Reload the page to see it; what you typed here since then is not in it.');
      }
      // Saved every second, so the copy that helps is the one from before this session.
      if (there !== undefined && !this.backedUp) await copyFile(this.path, this.backupPath);
      this.backedUp = true;
      await mkdir(dirname(this.path), { recursive: true });
      await replaceFile(this.path, text);
      return { text, version: versionOf(text) };
    });
  }
}
