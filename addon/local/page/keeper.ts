// Who keeps the workbook of this page: the file of the local server, or this browser. The page asks either in the same words.
import type { IWorkbookData } from '@univerjs/core';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** Why what was sent is not kept. The message is a sentence for the user. */
export class SaveError extends Error {
  constructor(
    message: string,
    /** passing: it is worth trying again. changed: what is kept is no longer what this page opened. */
    readonly kind: 'passing' | 'changed' | 'refused',
  ) {
    super(message);
  }
}

export interface KeptFile {
  /** Does nothing where this very workbook is kept already. Throws SaveError. */
  readonly send: (data: IWorkbookData) => Promise<void>;
  /** Whether what is kept is another than this page knows; not where that cannot be told. */
  readonly isChanged: () => Promise<boolean>;
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

/** Of a workbook as text; the server works out the same (workbookFile.ts). The browser's own hash is not there on pages of the local network. */
export const versionOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text))).slice(0, 32);
