// Keeps the user's file saved as they type: a change is sent half a second after the last one, and says so on the page.
import type { IWorkbookData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { elementNamed } from './elements';
import type { Workbook } from './grid';
import { isUsersChange } from './usersChange';

const quietMilliseconds = 500;

const reasonOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

/** Sends a workbook, unless it is as the file already has it. `version` is the file as this page knows it. */
function fileKeeper(firstVersion: string) {
  let version = firstVersion;
  let stored = '';
  return async (data: IWorkbookData): Promise<void> => {
    const text = JSON.stringify(data);
    if (text === stored) return;
    const answer = await fetch('workbook', { method: 'PUT', headers: { 'Content-Type': 'application/json', 'If-Match': version }, body: text });
    if (!answer.ok) throw new Error(await answer.text());
    version = answer.headers.get('ETag') ?? version;
    stored = text;
  };
}

export interface Keeper {
  /** Saves another workbook in the place of this one; from then on this page saves nothing, and must be loaded anew. Throws a sentence, with nothing changed. */
  readonly replaceBy: (data: IWorkbookData) => Promise<void>;
}

export function keepSaved(api: FUniver, workbook: Workbook, version: string): Keeper {
  const status = elementNamed('saved');
  const send = fileKeeper(version);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let sending = Promise.resolve();
  let unsaved = false;
  let replaced = false;

  const save = (): void => {
    timer = undefined;
    // One after the other, so that the second knows the version that the first made.
    sending = sending
      .then(() => send(workbook.save()))
      .then(() => {
        unsaved = timer !== undefined;
        if (!unsaved) status.textContent = 'Saved';
        status.classList.remove('failed');
      })
      .catch((thrown: unknown) => {
        status.textContent = `NOT SAVED: ${reasonOf(thrown)}`;
        status.classList.add('failed');
      });
  };
  const replaceBy = async (data: IWorkbookData): Promise<void> => {
    clearTimeout(timer);
    await sending;
    try {
      await send(data);
    } catch (thrown) {
      // What was typed before waits to be saved as it did.
      if (unsaved) save();
      throw new Error(`Nothing was changed, because the workbook could not be saved: ${reasonOf(thrown)}`);
    }
    [replaced, unsaved] = [true, false];
  };
  status.textContent = 'Saved';
  api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
    if (replaced || !isUsersChange(id, type, options)) return;
    unsaved = true;
    status.textContent = 'Saving...';
    clearTimeout(timer);
    timer = setTimeout(save, quietMilliseconds);
  });
  // A page that closes may not send so much any more; the browser asks the user instead.
  window.addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });
  return { replaceBy };
}
