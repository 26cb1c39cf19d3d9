// The user's file as the server keeps it: this page's workbook sent to it, and whether somebody else has changed it.
import type { IWorkbookData } from '@univerjs/core';

const address = 'workbook';
const changedElsewhere = 412;
const firstOfServer = 500;

/** Why the file does not have what was sent. The message is a sentence for the user. */
export class NotKept extends Error {
  constructor(
    message: string,
    /** passing: it is worth trying again. changed: the file is no longer the one that this page opened. */
    readonly kind: 'passing' | 'changed' | 'refused',
  ) {
    super(message);
  }
}

const silence = 'the program that keeps the file does not answer. Start it again with npm start, and leave this page open: it tries again every few seconds.';

async function ask(options: RequestInit): Promise<Response> {
  try {
    return await fetch(address, { cache: 'no-store', ...options });
  } catch {
    throw new NotKept(silence, 'passing');
  }
}

async function refusalOf(answer: Response): Promise<NotKept> {
  const kind = answer.status === changedElsewhere ? 'changed' : answer.status >= firstOfServer ? 'passing' : 'refused';
  return new NotKept(await answer.text(), kind);
}

export interface KeptFile {
  /** Does nothing where the file has this workbook already. Throws NotKept. */
  readonly send: (data: IWorkbookData) => Promise<void>;
  /** Whether the file is another than this page knows; not where that cannot be told. */
  readonly isChanged: () => Promise<boolean>;
}

/** `firstVersion` is that of the file as this page read it. */
export function keptFile(firstVersion: string): KeptFile {
  let version = firstVersion;
  let stored = '';
  return {
    send: async (data) => {
      const body = JSON.stringify(data);
      if (body === stored) return;
      const answer = await ask({ method: 'PUT', headers: { 'Content-Type': 'application/json', 'If-Match': version }, body });
      if (!answer.ok) throw await refusalOf(answer);
      version = answer.headers.get('ETag') ?? version;
      stored = body;
    },
    isChanged: async () => {
      const known = version;
      const answer = await ask({ method: 'HEAD' }).catch(() => undefined);
      const there = answer?.ok === true ? answer.headers.get('ETag') : null;
      // What this page itself has sent meanwhile is no change of somebody else's.
      return there !== null && there !== known && version === known;
    },
  };
}
