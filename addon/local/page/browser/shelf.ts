// The workbooks that this browser keeps, in its own data base, each by a name, with dated copies of how it was before.
import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import { spareBackups } from '../../saved/spareBackups';
import { SaveError, versionOf } from '../keeper';
import { newId } from '../newId';

/** Times in milliseconds of UTC. */
export interface KeptInfo {
  readonly id: string;
  readonly name: string;
  /** Changes whenever the content does. */
  readonly version: string;
  readonly begun: number;
  readonly saved: number;
  /** When it was last saved to a file of the user's, and which version that was. */
  readonly filed?: { readonly at: number; readonly version: string };
}

interface Backup {
  readonly id: string;
  readonly made: number;
  readonly text: string;
}

interface Stores extends DBSchema {
  /** Apart from the texts, so that a list need not read those. */
  infos: { key: string; value: KeptInfo };
  texts: { key: string; value: string };
  backups: { key: number; value: Backup; indexes: { of: string } };
}

const storeNames = ['infos', 'texts', 'backups'] as const;
type Change = IDBPTransaction<Stores, typeof storeNames, 'readwrite'>;

let opening: Promise<IDBPDatabase<Stores>> | undefined;

/** Opened again where the browser has closed it. */
function dataBase(): Promise<IDBPDatabase<Stores>> {
  const forget = (): void => (opening = undefined);
  opening ??= openDB<Stores>('rampwright', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('infos', { keyPath: 'id' });
      fresh.createObjectStore('texts');
      fresh.createObjectStore('backups', { autoIncrement: true }).createIndex('of', 'id');
    },
    blocking: (_from, _to, { target }) => {
      (target as IDBDatabase).close();
      forget();
    },
    terminated: forget,
  });
  opening.catch(forget);
  return opening;
}

/** All of it, or nothing; done when it is on the disk. */
async function change<Result>(work: (stores: Change) => Promise<Result>): Promise<Result> {
  const stores = (await dataBase()).transaction(storeNames, 'readwrite', { durability: 'strict' });
  try {
    const result = await work(stores);
    await stores.done;
    return result;
  } catch (thrown) {
    // A request that failed has ended it already.
    stores.done.catch(() => undefined);
    try {
      stores.abort();
    } catch {
      return Promise.reject(thrown as Error);
    }
    throw thrown;
  }
}

/** The one saved last comes first. */
export async function keptWorkbooks(): Promise<KeptInfo[]> {
  const infos = await (await dataBase()).getAll('infos');
  return infos.sort((one, other) => other.saved - one.saved);
}

/** The name, or the first free one with a number behind it. */
function freeName(wanted: string, infos: readonly KeptInfo[]): string {
  const taken = new Set(infos.map(({ name }) => name));
  const trimmed = wanted.trim().slice(0, 80) || 'Workbook';
  for (let number = 2, name = trimmed; ; number += 1) {
    if (!taken.has(name)) return name;
    name = `${trimmed} ${number}`;
  }
}

/** Puts another workbook beside those that are there; none is ever written over by it. */
export const addWorkbook = (name: string, text: string): Promise<KeptInfo> =>
  change(async (stores) => {
    const [infos, texts, now] = [stores.objectStore('infos'), stores.objectStore('texts'), Date.now()];
    const info = { id: newId(), name: freeName(name, await infos.getAll()), version: versionOf(text), begun: now, saved: now };
    await Promise.all([infos.put(info), texts.put(text, info.id)]);
    return info;
  });

export const infoOf = async (id: string): Promise<KeptInfo | undefined> => (await dataBase()).get('infos', id);

export async function textOf(id: string): Promise<string | undefined> {
  return (await dataBase()).get('texts', id);
}

async function copyBefore(stores: Change, id: string): Promise<void> {
  const [texts, backups] = [stores.objectStore('texts'), stores.objectStore('backups')];
  const before = await texts.get(id);
  const keys = await backups.index('of').getAllKeys(id);
  const made = (await backups.index('of').getAll(id)).map((backup, index) => ({ ...backup, key: keys[index] ?? -1 }));
  // By the order in which they were made: clocks jump.
  made.reverse();
  if (before === undefined || made[0]?.text === before) return;
  const key = await backups.add({ id, made: Date.now(), text: before });
  for (const old of spareBackups([{ key, made: Date.now() }, ...made])) await backups.delete(old.key);
}

const changedElsewhere =
  'This workbook was changed elsewhere (another tab or window of this browser) after this page opened it. Reload the page to see it; what you typed here since then is not in it.';

/**
 * Keeps the text in the place of what was kept, unless that is none of `knownVersions` (nor this very text). What the browser has thrown away is
 * written anew. Throws SaveError.
 */
export const keepText = (known: KeptInfo, text: string, backUp: boolean): Promise<KeptInfo> =>
  change(async (stores) => {
    const infos = stores.objectStore('infos');
    const [there, version] = [await infos.get(known.id), versionOf(text)];
    if (there !== undefined && there.version !== known.version && there.version !== version) throw new SaveError(changedElsewhere, 'changed');
    if (backUp) await copyBefore(stores, known.id);
    const info = { ...(there ?? known), version, saved: Date.now() };
    await Promise.all([infos.put(info), stores.objectStore('texts').put(text, known.id)]);
    return info;
  });

async function changeInfo(id: string, by: (info: KeptInfo, all: readonly KeptInfo[]) => KeptInfo): Promise<void> {
  await change(async (stores) => {
    const infos = stores.objectStore('infos');
    const there = await infos.get(id);
    if (there !== undefined) await infos.put(by(there, await infos.getAll()));
  });
}

export const renameWorkbook = (id: string, name: string): Promise<void> =>
  changeInfo(id, (info, all) => ({
    ...info,
    name: freeName(
      name,
      all.filter((one) => one.id !== id),
    ),
  }));

export const markFiled = (id: string, version: string): Promise<void> => changeInfo(id, (info) => ({ ...info, filed: { at: Date.now(), version } }));

/** With all copies of it. */
export const removeWorkbook = (id: string): Promise<void> =>
  change(async (stores) => {
    const backups = stores.objectStore('backups');
    for (const key of await backups.index('of').getAllKeys(id)) await backups.delete(key);
    await Promise.all([stores.objectStore('infos').delete(id), stores.objectStore('texts').delete(id)]);
  });

export interface KeptBackup {
  readonly made: number;
  readonly text: string;
}

/** The newest first. */
export async function backupsOf(id: string): Promise<KeptBackup[]> {
  return (await (await dataBase()).getAllFromIndex('backups', 'of', id)).reverse();
}
