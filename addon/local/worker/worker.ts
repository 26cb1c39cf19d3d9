// Keeps the files of the program for a page without a network. Each version has a store of its own, filled whole or not at all; which
// one the pages get changes only when the user says so, never by itself.
import type { WorkerAnswer, WorkerQuestion } from './messages';

declare const self: ServiceWorkerGlobalScope;
/** Put in by the build: the version, and each file with the hash of its content. */
declare const builtVersion: string;
declare const builtFiles: readonly (readonly [path: string, sha256: string])[];

const storeStart = 'rampwright files ';
const choiceStore = 'rampwright version in use';
const choiceAddress = './version-in-use';

const storeOf = (version: string): string => `${storeStart}${version}`;

async function versionInUse(): Promise<string | undefined> {
  const found = await (await caches.open(choiceStore)).match(choiceAddress);
  return found?.text();
}

const setInUse = async (version: string): Promise<void> => (await caches.open(choiceStore)).put(choiceAddress, new Response(version));

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', bytes);
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** A host in the middle of an update gives files of two versions: those are refused. */
async function fetchFile(path: string, wanted: string): Promise<Response> {
  const answer = await fetch(path, { cache: 'no-cache' });
  const bytes = await answer.arrayBuffer();
  if (!answer.ok || (await hashOf(bytes)) !== wanted) throw new Error(`${path} is not the file of version ${builtVersion}`);
  return new Response(bytes, { headers: { 'Content-Type': answer.headers.get('Content-Type') ?? 'application/octet-stream' } });
}

async function install(): Promise<void> {
  const name = storeOf(builtVersion);
  try {
    const store = await caches.open(name);
    await Promise.all(builtFiles.map(async ([path, hash]) => store.put(path, await fetchFile(path, hash))));
  } catch (thrown) {
    await caches.delete(name);
    throw thrown;
  }
  if ((await versionInUse()) === undefined) await setInUse(builtVersion);
  // The pages go on with the version in use, whichever worker hands it out.
  await self.skipWaiting();
}

async function forgetOthers(): Promise<void> {
  const kept = [builtVersion, await versionInUse()].map((version) => storeOf(version ?? ''));
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(storeStart) && !kept.includes(name)).map((name) => caches.delete(name)));
}

async function answer(request: Request): Promise<Response> {
  const path = new URL(request.url).pathname.slice(new URL(self.registration.scope).pathname.length);
  const store = storeOf((await versionInUse()) ?? builtVersion);
  const kept = (await caches.has(store))
    ? await (await caches.open(store)).match(path === '' ? 'index.html' : path, { ignoreSearch: true })
    : undefined;
  return kept ?? fetch(request);
}

/** Frames in a page of ours do not count, nor other pages of the same host. */
async function othersThan(asker: Client): Promise<number> {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  return windows.filter(({ id, frameType, url }) => url.startsWith(self.registration.scope) && frameType !== 'nested' && id !== asker.id).length;
}

async function reply(question: WorkerQuestion, asker: Client): Promise<WorkerAnswer> {
  const inUse = (await versionInUse()) ?? builtVersion;
  if (question === 'which versions') return { inUse, newest: builtVersion };
  const others = await othersThan(asker);
  if (others > 0) return { inUse, newest: builtVersion, others };
  await setInUse(builtVersion);
  await forgetOthers();
  return { inUse: builtVersion, newest: builtVersion };
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(forgetOthers().then(() => self.clients.claim())));
self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && url.startsWith(self.registration.scope)) event.respondWith(answer(event.request));
});
self.addEventListener('message', (event) => {
  const [port] = event.ports;
  if (port === undefined || !(event.source instanceof Client)) return;
  event.waitUntil(reply(event.data as WorkerQuestion, event.source).then((said) => port.postMessage(said)));
});
