// The user's file as the server keeps it: this page's workbook sent to it, and whether somebody else has changed it.
import type { IWorkbookData } from '@univerjs/core';
import { withFormat } from '../saved/fileFormat';
import { readKept, SaveError, versionOf, type Keeper, type KeptCopy, type KeptFile } from './keeper';

const address = 'workbook';
const copiesAddress = `${address}/copies`;
const changedElsewhere = 412;
const firstOfServer = 500;
/** A server that is stopped, or hangs, takes what is sent and never answers. */
const maxSeconds = 15;

/** What a header can carry; older ones have been written over by then, if they landed at all. */
const maxUnanswered = 200;

const silence = 'Rampwright is not running. Start it again with npm start, and leave this page open: it tries again every few seconds.';
const hanging = `Rampwright has not answered for ${maxSeconds} seconds. Leave this page open: it tries again every few seconds. If that goes on, end the program and start it again with npm start.`;

const isTimeUp = (thrown: unknown): boolean => thrown instanceof DOMException && thrown.name === 'TimeoutError';

/** The key stands in the page's own address. */
const key = (): string => new URLSearchParams(location.search).get('key') ?? '';

async function ask(options: Pick<RequestInit, 'method' | 'headers' | 'body'>, at = address): Promise<Response> {
  try {
    const headers = { ...options.headers, 'X-Rampwright-Key': key() };
    return await fetch(at, { cache: 'no-store', signal: AbortSignal.timeout(maxSeconds * 1000), ...options, headers });
  } catch (thrown) {
    throw new SaveError(isTimeUp(thrown) ? hanging : silence, 'passing');
  }
}

async function refusalOf(answer: Response): Promise<SaveError> {
  const kind = answer.status === changedElsewhere ? 'changed' : answer.status >= firstOfServer ? 'passing' : 'refused';
  return new SaveError(await answer.text(), kind);
}

/** Throws a sentence. */
async function asked(at: string): Promise<Response> {
  const answer = await ask({ method: 'GET' }, at);
  if (!answer.ok) throw new Error(await answer.text());
  return answer;
}

/** `firstVersion` is that of the file as this page read it. */
function keptFile(firstVersion: string): KeptFile {
  let version = firstVersion;
  let stored = '';
  /** Sent and never answered: the file may hold any of them, and then it is this page that has changed it. */
  let unanswered: readonly string[] = [];
  return {
    send: async (data, copyFirst = false) => {
      const body = JSON.stringify(withFormat(data));
      if (body === stored) return;
      const [known, sent] = [[version, ...unanswered].join(', '), versionOf(body)];
      unanswered = [...unanswered.filter((one) => one !== sent), sent].slice(-maxUnanswered);
      const headers = { 'Content-Type': 'application/json', 'If-Match': known, ...(copyFirst && { 'X-Rampwright-Copy-First': 'yes' }) };
      const answer = await ask({ method: 'PUT', headers, body });
      if (!answer.ok) throw await refusalOf(answer);
      version = answer.headers.get('ETag') ?? version;
      stored = body;
      unanswered = [];
    },
    isChanged: async () => {
      const known = version;
      const answer = await ask({ method: 'HEAD' }).catch(() => undefined);
      const there = answer?.ok === true ? answer.headers.get('ETag') : null;
      // What this page itself has sent meanwhile is no change of somebody else's.
      return there !== null && there !== known && version === known && !unanswered.includes(there);
    },
    read: async () => {
      const answer = await ask({ method: 'GET' });
      if (!answer.ok) throw await refusalOf(answer);
      const data = readKept(await answer.text());
      [version, stored] = [answer.headers.get('ETag') ?? '', ''];
      return data;
    },
    copies: async () => (await (await asked(copiesAddress)).json()) as KeptCopy[],
    copyOf: async (made) => (await asked(`${copiesAddress}/${made}`)).text(),
  };
}

/** Throws a sentence. */
async function open(): ReturnType<Keeper['open']> {
  const answer = await asked(address);
  return { data: (await answer.json()) as IWorkbookData, file: keptFile(answer.headers.get('ETag') ?? '') };
}

export const serverKeeper: Keeper = {
  open,
  watch: (look) => window.addEventListener('focus', look),
  savedWords: () => 'Saved',
  copyOpens: 'npm start -- --file, then its path, opens it',
};
