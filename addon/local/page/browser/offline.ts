// The page without a network: a worker keeps the files of the program. A new version of them waits until the user asks for it.
import { notify, notifyFailure } from '../notices';
import type { StartedPage } from '../startPage';
import type { WorkerAnswer, WorkerQuestion } from '../../worker/messages';

async function ask(question: WorkerQuestion): Promise<WorkerAnswer | undefined> {
  const { active } = await navigator.serviceWorker.ready;
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }: MessageEvent<WorkerAnswer>) => resolve(data);
    active?.postMessage(question, [port2]);
  });
}

/** Never under open work: what is typed is saved first, and other windows of the program are closed by hand. */
async function useNewest(started: StartedPage | undefined): Promise<void> {
  await started?.live.settled();
  await started?.autosave.saveNow();
  const answer = await ask('use the newest');
  if (answer?.others !== undefined && answer.others > 0)
    return notify(
      `The program is open in ${answer.others === 1 ? 'another tab or window' : `${answer.others} other tabs or windows`}. Close ${answer.others === 1 ? 'it' : 'them'} first: a new version does not come under open work.`,
      [offer(started)],
    );
  location.reload();
}

const offer = (started: StartedPage | undefined) => ({ label: 'Use the new version', chosen: () => void useNewest(started).catch(notifyFailure) });

async function tellNewVersion(started: StartedPage | undefined): Promise<void> {
  const answer = await ask('which versions');
  document.documentElement.dataset['offline'] = answer === undefined ? '' : 'ready';
  if (answer !== undefined && answer.newest !== answer.inUse)
    notify('A new version of Rampwright is here. This one stays until you press the button; your workbooks stay as they are.', [offer(started)]);
}

/** Browsers that cannot, or pages that are not served safely, work with a network only. */
export function workOffline(started: StartedPage | undefined): void {
  if (!('serviceWorker' in navigator)) return;
  const tell = (): void => void tellNewVersion(started).catch(() => undefined);
  navigator.serviceWorker
    .register('worker.js', { updateViaCache: 'none' })
    .then((registration) => {
      registration.addEventListener('updatefound', () =>
        registration.installing?.addEventListener('statechange', ({ target }) => {
          if (target instanceof ServiceWorker && target.state === 'activated') tell();
        }),
      );
      tell();
      // Asked for at once: browsers put it off, for minutes some of them.
      return registration.update();
    })
    .catch(() => undefined);
}
