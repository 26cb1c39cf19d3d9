// Keeps the user's file saved as they type: a change is sent half a second after the last one, and says so on the page.
import type { FUniver } from '@univerjs/core/facade';
import { elementNamed } from './elements';
import type { Workbook } from './grid';

const quietMilliseconds = 500;
const mutation = 2;

/** A change of the user's: not what the grid works out by itself (local only), nor the letters of a cell still being typed. */
const changesFile = (id: string, type: number, options: { readonly onlyLocal?: boolean } | undefined): boolean =>
  type === mutation && options?.onlyLocal !== true && !id.startsWith('doc.');

/** Sends the workbook, unless it is as the file already has it. `version` is the file as this page knows it. */
function fileKeeper(workbook: Workbook, firstVersion: string) {
  let version = firstVersion;
  let stored = '';
  return async (): Promise<string> => {
    const text = JSON.stringify(workbook.save());
    if (text === stored) return 'Saved';
    const answer = await fetch('workbook', { method: 'PUT', headers: { 'Content-Type': 'application/json', 'If-Match': version }, body: text });
    if (!answer.ok) throw new Error(await answer.text());
    version = answer.headers.get('ETag') ?? version;
    stored = text;
    return 'Saved';
  };
}

export function keepSaved(api: FUniver, workbook: Workbook, version: string): void {
  const status = elementNamed('saved');
  const send = fileKeeper(workbook, version);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let sending = Promise.resolve();
  let unsaved = false;

  const save = (): void => {
    timer = undefined;
    // One after the other, so that the second knows the version that the first made.
    sending = sending
      .then(send)
      .then((words) => {
        unsaved = timer !== undefined;
        if (!unsaved) status.textContent = words;
        status.classList.remove('failed');
      })
      .catch((thrown: unknown) => {
        status.textContent = `NOT SAVED: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
        status.classList.add('failed');
      });
  };
  status.textContent = 'Saved';
  api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
    if (!changesFile(id, type, options)) return;
    unsaved = true;
    status.textContent = 'Saving...';
    clearTimeout(timer);
    timer = setTimeout(save, quietMilliseconds);
  });
  // A page that closes may not send so much any more; the browser asks the user instead.
  window.addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });
}
