// The user's workbook as a file: made from the templates at first, replaced whole and atomically, copied as it was before this
// session, and never overwritten when somebody else has changed it since it was read.
import { createHash } from 'node:crypto';
import { constants } from 'node:fs';
import { access, mkdir, readFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { laterSentence } from '../saved/fileFormat';
import { backupsOf, makeBackup } from './backups';
import { inWords } from './fileTrouble';
import { realPathOf } from './realPath';
import { readIfThere, replaceFile, statIfThere } from './replaceFile';
import { standingOf, type Standing } from '../saved/workbookText';

export interface StoredWorkbook {
  readonly text: string;
  /** Changes whenever the content does. */
  readonly version: string;
}

/** The file on disk is not the one that the writer had read. */
export class ChangedMeanwhileError extends Error {}

/** What is on disk may not be written by this program; the message says why. */
export class NotOursToWriteError extends Error {}

/** keeper.ts in the page works out the same. */
export const versionOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 32);

const day = 24 * 60 * 60 * 1000;
const anyMayWrite = 0o222;

/** One of the dated copies beside the file. */
export interface CopyListed {
  /** Milliseconds of UTC. */
  readonly made: number;
  readonly standing: Standing;
}

export class WorkbookFile {
  /** Behind every link. */
  readonly path: string;
  private readonly makeFirst: () => string;
  private readonly now: () => number;
  private queue: Promise<unknown> = Promise.resolve();
  private backedUp = -Infinity;
  /** A file that was there once in this session is not begun anew when it is gone. */
  private seen = false;

  constructor(path: string, makeFirst: () => string, now: () => number = Date.now) {
    this.path = realPathOf(path);
    this.makeFirst = makeFirst;
    this.now = now;
  }

  /** One at a time, so that no read falls between a check and a rename. */
  private inTurn<Result>(work: () => Promise<Result>): Promise<Result> {
    const turn = this.queue.then(work).catch((thrown: unknown) => {
      throw inWords(this.path, thrown);
    });
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  private async begin(): Promise<string> {
    if (this.seen || (await backupsOf(this.path)).length > 0)
      throw new Error(`the file ${this.path} is gone. Nothing was put in its place. End the program and start it again: it will ask what to do.`);
    const text = this.makeFirst();
    await mkdir(dirname(this.path), { recursive: true });
    await replaceFile(this.path, text);
    return text;
  }

  read(): Promise<StoredWorkbook> {
    return this.inTurn(async () => {
      const text = (await readIfThere(this.path)) ?? (await this.begin());
      this.seen = true;
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

  /** The dated copies beside the file, the newest first. */
  copies(): Promise<CopyListed[]> {
    return this.inTurn(async () => {
      const found = await backupsOf(this.path);
      return Promise.all(found.map(async ({ path, made }) => ({ made, standing: standingOf(await readFile(path, 'utf8')) })));
    });
  }

  /** The text of one of them; undefined where there is none of that moment. */
  copyOf(made: number): Promise<string | undefined> {
    return this.inTurn(async () => {
      const found = (await backupsOf(this.path)).find((one) => one.made === made);
      return found === undefined ? undefined : readFile(found.path, 'utf8');
    });
  }

  /** A rename would go over a file that nobody may write. */
  private async checkMayWrite(there: string): Promise<void> {
    const mode = Number((await statIfThere(this.path))?.mode ?? anyMayWrite);
    const may =
      (mode & anyMayWrite) !== 0 &&
      (await access(this.path, constants.W_OK).then(
        () => true,
        () => false,
      ));
    if (!may)
      throw new NotOursToWriteError(`the file ${this.path} may only be read, so nothing was written. Allow writing to it, or save a copy elsewhere.`);
    if (standingOf(there) === 'later') throw new NotOursToWriteError(laterSentence);
  }

  /** Saved every second, so the copies that help are those from before this session, and from before each day of a long one. */
  private async backUp(atOnce: boolean): Promise<void> {
    const now = this.now();
    if (!atOnce && now - this.backedUp < day) return;
    await makeBackup(this.path, now);
    this.backedUp = now;
  }

  /**
   * `knownVersions` are the one that the writer read, and those of its own saves that were never answered. A file changed since
   * then is left alone, unless it holds this very text already. `copyFirst`: what is there becomes a dated copy, however new the last one is.
   */
  write(text: string, knownVersions: readonly string[], copyFirst = false): Promise<StoredWorkbook> {
    return this.inTurn(async () => {
      const [there, version] = [await readIfThere(this.path), versionOf(text)];
      if (there !== undefined) {
        const found = versionOf(there);
        if (found === version) return { text, version };
        if (!knownVersions.includes(found))
          throw new ChangedMeanwhileError(
            'The file was changed elsewhere (another window or program) after this page opened it. Reload the page to see it; what you typed here since then is not in it.',
          );
        await this.checkMayWrite(there);
        await this.backUp(copyFirst);
      }
      await mkdir(dirname(this.path), { recursive: true });
      await replaceFile(this.path, text);
      this.seen = true;
      return { text, version };
    });
  }
}
