// Who keeps the workbook of this page: the file of the local server, or this browser. The page asks either in the same words.
import type { IWorkbookData } from '@univerjs/core';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { laterSentence } from '../saved/fileFormat';
import { standingOf, type Standing } from '../saved/workbookText';

/** Why what was sent is not kept. The message is a sentence for the user. */
export class SaveError extends Error {
  constructor(
    message: string,
    /** passing: it is worth trying again. changed: what is kept is no longer what this page opened. clash: somebody must say what holds. */
    readonly kind: 'passing' | 'changed' | 'clash' | 'refused',
  ) {
    super(message);
  }
}

/** A dated copy of the workbook as it was before. */
export interface KeptCopy {
  /** Milliseconds of UTC. */
  readonly made: number;
  readonly standing: Standing;
}

export interface KeptFile {
  /**
   * Does nothing where this very workbook is kept already. `copyFirst`: what is kept so far becomes a dated copy, however new the last one is.
   * Throws SaveError.
   */
  readonly send: (data: IWorkbookData, copyFirst?: boolean) => Promise<void>;
  /** Whether what is kept is another than this page knows; not where that cannot be told. */
  readonly isChanged: () => Promise<boolean>;
  /** What is kept now; from then on this page knows it, and sends over it. Throws SaveError. */
  readonly read: () => Promise<IWorkbookData>;
  /** The newest first. Throws a sentence. */
  readonly copies: () => Promise<readonly KeptCopy[]>;
  /** The text of a copy. Throws a sentence where it is gone. */
  readonly copyOf: (made: number) => Promise<string>;
}

export interface OpenedWorkbook {
  readonly data: IWorkbookData;
  readonly file: KeptFile;
  /** For the user, once the workbook is in sight. */
  readonly said?: string;
}

export interface Keeper {
  /** Throws a sentence. */
  readonly open: () => Promise<OpenedWorkbook>;
  /** Calls `look` whenever somebody else may have changed what is kept. */
  readonly watch: (look: () => void) => void;
  /** What the page shows when all is kept. */
  readonly savedWords: () => string;
  /** How a copy that this page hands out as a file is opened again. */
  readonly copyOpens: string;
}

/** What others have kept meanwhile. Throws SaveError where it is nothing that this page could write over. */
export function readKept(text: string): IWorkbookData {
  const standing = standingOf(text);
  if (standing === 'later') throw new SaveError(laterSentence, 'refused');
  if (standing === 'damaged') throw new SaveError('what is kept now is not a whole workbook of this program, and is left as it is.', 'refused');
  return JSON.parse(text) as IWorkbookData;
}

/** Of a workbook as text; the server works out the same (workbookFile.ts). The browser's own hash is not there on pages of the local network. */
export const versionOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text))).slice(0, 32);
