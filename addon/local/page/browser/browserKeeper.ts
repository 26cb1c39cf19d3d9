// Keeps the workbook in this browser. Which one stands in the page's own address, so that each tab can have its own.
import type { IWorkbookData } from '@univerjs/core';
import { sheetTemplates } from '../../../../sheets-templates';
import { localToday } from '../../../panel/localToday';
import { demoOn } from '../../../workbook/demoOn';
import { workbookData } from '../../engine/workbookData';
import { withFormat } from '../../saved/fileFormat';
import { standingOf } from '../../saved/workbookText';
import { readKept, SaveError, versionOf, type Keeper, type KeptFile, type OpenedWorkbook } from '../keeper';
import { addWorkbook, backupsOf, infoOf, keepText, keptWorkbooks, textOf, type KeptInfo } from './shelf';

const day = 24 * 60 * 60 * 1000;
const parameter = 'workbook';
/** Stands in the browser's other store, which is mostly emptied with the data base, but not always. */
const hadMemory = 'rampwright-kept';

export const addressOf = (id: string): string => `${location.pathname}?${parameter}=${id}`;
const idInAddress = (): string | null => new URLSearchParams(location.search).get(parameter);

/** Tells the other tabs of this browser what was saved. */
const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('rampwright');

const clock = (time: number): string => new Date(time).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });

const noRoom =
  'this browser has no room left. Press "Save to a file" now, so that nothing is lost; then make room (other sites\' data, old workbooks here). It tries again every few seconds.';

function refusalOf(thrown: unknown): SaveError {
  if (thrown instanceof SaveError) return thrown;
  const name = thrown instanceof Error || thrown instanceof DOMException ? thrown.name : '';
  if (name === 'QuotaExceededError') return new SaveError(noRoom, 'passing');
  const reason = thrown instanceof Error ? thrown.message : String(thrown);
  return new SaveError(`this browser did not keep it (${reason}). Press "Save to a file" now. It tries again every few seconds.`, 'passing');
}

export const newWorkbookText = (): string => JSON.stringify(withFormat(workbookData(demoOn(sheetTemplates, localToday()))));

let current: KeptInfo | undefined;
/** The workbook of this page as it is kept; undefined where this browser keeps nothing. */
export const currentInfo = (): KeptInfo | undefined => current;

function keptFile(first: KeptInfo): KeptFile {
  let [info, stored, backedUp] = [first, '', -Infinity];
  return {
    send: async (data, copyFirst = false) => {
      const text = JSON.stringify(withFormat(data));
      if (text === stored) return;
      // A clock that jumps, either way, makes a copy more, never one less.
      const backUp = copyFirst || Math.abs(Date.now() - backedUp) >= day;
      info = await keepText(info, text, backUp).catch((thrown: unknown) => {
        throw refusalOf(thrown);
      });
      [stored, current] = [text, info];
      if (backUp) backedUp = Date.now();
      channel?.postMessage(info.id);
      askToPersist();
    },
    isChanged: async () => {
      const known = info.version;
      const there = await infoOf(info.id).catch(() => undefined);
      return there !== undefined && there.version !== known && info.version === known;
    },
    read: async () => {
      const text = await textOf(info.id);
      if (text === undefined) throw new SaveError('this browser has this workbook no longer.', 'refused');
      const data = readKept(text);
      [info, stored] = [{ ...info, version: versionOf(text) }, ''];
      return data;
    },
    copies: async () => (await backupsOf(info.id)).map(({ made, text }) => ({ made, standing: standingOf(text) })),
    copyOf: async (wanted) => {
      const found = (await backupsOf(info.id)).find(({ made }) => made === wanted);
      if (found === undefined) throw new Error('this browser has that copy no longer.');
      return found.text;
    },
  };
}

let asked = false;
/** With something of the user's own in it, since some browsers then ask the user. */
function askToPersist(): void {
  if (!asked) void navigator.storage?.persist?.().catch(() => false);
  asked = true;
}

/** The workbook that the address names, else the last one; a new one where there is none. */
async function chosen(): Promise<{ readonly info: KeptInfo; readonly said: string }> {
  const [wanted, infos] = [idInAddress(), await keptWorkbooks()];
  const [last] = infos;
  const named = infos.find(({ id }) => id === wanted);
  if (named !== undefined) return { info: named, said: '' };
  if (last !== undefined)
    return {
      info: last,
      said: wanted === null ? '' : `This browser has no longer the workbook that the address named. Here is "${last.name}", the one saved last.`,
    };
  const had = wanted !== null || localStorage.getItem(hadMemory) !== null;
  const gone =
    'This browser keeps no workbook any more: it was removed, by somebody or by the browser itself. Press "Open a file" to go on from the file that you saved last. What you see is a new workbook with the invented demo.';
  return { info: await addWorkbook('Workbook', newWorkbookText()), said: had ? gone : '' };
}

const nothingKept =
  'this browser keeps nothing for this page (a private window, or storage is switched off). Press "Save to a file" before you close it.';

const memoryOnly = (): OpenedWorkbook => ({
  data: JSON.parse(newWorkbookText()) as IWorkbookData,
  file: {
    send: () => Promise.reject(new SaveError(nothingKept, 'refused')),
    isChanged: () => Promise.resolve(false),
    read: () => Promise.reject(new SaveError(nothingKept, 'refused')),
    copies: () => Promise.resolve([]),
    copyOf: () => Promise.reject(new Error(nothingKept)),
  },
  said: `Nothing that you type here is saved: ${nothingKept}`,
});

const damaged = (name: string): string =>
  `what this browser keeps as "${name}" is not a whole workbook of this program. It was left as it is. Go on from one of its copies, or from a file that you saved.`;

async function open(): Promise<OpenedWorkbook> {
  const found = await chosen().catch(() => undefined);
  if (found === undefined) return memoryOnly();
  const { info, said } = found;
  history.replaceState(null, '', addressOf(info.id));
  localStorage.setItem(hadMemory, 'yes');
  current = info;
  const text = (await textOf(info.id)) ?? '';
  if (standingOf(text) === 'damaged') throw new Error(damaged(info.name));
  return { data: JSON.parse(text) as IWorkbookData, file: keptFile({ ...info, version: versionOf(text) }), said };
}

export const browserKeeper: Keeper = {
  open,
  watch: (look) => {
    window.addEventListener('focus', look);
    channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      if (data === current?.id) look();
    });
  },
  savedWords: () => (current === undefined ? '' : `Saved in this browser, ${clock(current.saved)}`),
  copyOpens: '"Open a file" opens it',
};
