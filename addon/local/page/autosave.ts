// Keeps the user's file saved as they type: a change is sent half a second after the last one, and says so on the page. What could
// not be saved is tried again until it is.
import type { IWorkbookData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-ui/facade';
import { laterSentence } from '../saved/fileFormat';
import { tellOld, tellUnsaved } from './changedFile';
import { elementNamed } from './elements';
import type { Workbook } from './grid';
import { SaveError, type Keeper, type KeptFile } from './keeper';
import { isUsersChange } from './usersChange';

const quietMilliseconds = 500;
const againMilliseconds = 3000;

const reasonOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

export interface Autosave {
  /** Saves another workbook in the place of this one; from then on this page saves nothing, and must be loaded anew. Throws a sentence, with nothing changed. */
  readonly replaceBy: (data: IWorkbookData) => Promise<void>;
  /** Saves at once what is not saved yet. Throws a sentence where that cannot be done. */
  readonly saveNow: () => Promise<void>;
}

function showSaved(text: string, failed = false): void {
  const status = elementNamed('saved');
  if (status.textContent !== text) status.textContent = text;
  status.classList.toggle('failed', failed);
}

/** A file of a later version is shown and never written. */
export function noAutosave(): Autosave {
  showSaved('NOT SAVED: the file is of a later version of Rampwright.', true);
  return { replaceBy: () => Promise.reject(new Error(`Nothing was changed. ${laterSentence}`)), saveNow: () => Promise.resolve() };
}

/** Whether something is typed into a cell that is not entered yet. */
function watchTyping(api: FUniver): () => boolean {
  let typing = false;
  api.addEvent(api.Event.SheetEditChanging, () => (typing = true));
  api.addEvent(api.Event.SheetEditEnded, () => (typing = false));
  return () => typing;
}

/** A device that is locked, or turns to something else, may never come back to this page. */
const whenHidden = (look: () => void): void => document.addEventListener('visibilitychange', () => document.hidden && look());

export function startAutosave(api: FUniver, workbook: Workbook, keeper: Keeper, file: KeptFile): Autosave {
  const isTyping = watchTyping(api);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let sending = Promise.resolve();
  let [unsaved, replaced, told] = [false, false, false];

  const saveIn = (milliseconds: number): void => {
    clearTimeout(timer);
    timer = setTimeout(save, milliseconds);
  };
  const failed = (thrown: unknown): void => {
    showSaved(`NOT SAVED: ${reasonOf(thrown)}`, true);
    if (!(thrown instanceof SaveError)) return;
    if (thrown.kind === 'passing' && timer === undefined) saveIn(againMilliseconds);
    if (thrown.kind === 'changed' && !told) tellUnsaved(workbook, keeper.copyOpens);
    told ||= thrown.kind === 'changed';
  };
  const saveNow = (): Promise<void> => {
    clearTimeout(timer);
    timer = undefined;
    // One after the other, so that the second knows the version that the first made.
    const sent = sending
      .then(() => file.send(workbook.save()))
      .then(() => {
        unsaved = timer !== undefined;
        showSaved(unsaved ? 'Saving...' : keeper.savedWords());
      });
    sending = sent.catch(failed);
    return sent;
  };
  const save = (): void => void saveNow().catch(() => undefined);
  const replaceBy = async (data: IWorkbookData): Promise<void> => {
    clearTimeout(timer);
    await sending;
    try {
      await file.send(data);
    } catch (thrown) {
      // What was typed before waits to be saved as it did.
      if (unsaved) save();
      throw new Error(`Nothing was changed, because the workbook could not be saved: ${reasonOf(thrown)}`);
    }
    [replaced, unsaved] = [true, false];
  };
  showSaved(keeper.savedWords());
  api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
    if (replaced || !isUsersChange(id, type, options)) return;
    // What is known to fail stays shown until it is repaired.
    if (!elementNamed('saved').classList.contains('failed')) showSaved('Saving...');
    unsaved = true;
    saveIn(quietMilliseconds);
  });
  // A page that closes may not send so much any more; the browser asks the user instead.
  window.addEventListener('beforeunload', (event) => {
    if (unsaved || (isTyping() && !replaced)) event.preventDefault();
  });
  whenHidden(() => unsaved && !replaced && save());
  keeper.watch(() => {
    if (unsaved || replaced || told) return;
    void file.isChanged().then((changed) => {
      if (changed && !unsaved && !replaced) tellOld();
    });
  });
  return { replaceBy, saveNow };
}
