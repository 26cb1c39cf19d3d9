// Keeps the user's file saved as they type: a change is sent half a second after the last one, and says so on the page. What could
// not be saved is tried again until it is. What other windows entered is put together with it (together.ts).
import type { IWorkbookData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-ui/facade';
import { laterSentence } from '../saved/fileFormat';
import { shiftsCells } from '../saved/layout';
import type { Clash, Side } from '../saved/mergeWorkbooks';
import { askWhichHolds, tellLooks, tellOld, tellOnce, tellUnsaved } from './changedFile';
import { elementNamed } from './elements';
import type { Workbook } from './grid';
import { SaveError, type Keeper, type KeptFile } from './keeper';
import { ClashError, keepTogether, type PageBook } from './together';
import { isUsersChange } from './usersChange';

const quietMilliseconds = 500;
const againMilliseconds = 3000;
const askAgainMilliseconds = 5000;

const reasonOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

export interface Autosave {
  /**
   * Saves another workbook in the place of this one; from then on this page saves nothing, and must be loaded anew. `copyFirst`: what is kept so
   * far becomes a dated copy. Throws a sentence, with nothing changed.
   */
  readonly replaceBy: (data: IWorkbookData, copyFirst?: boolean) => Promise<void>;
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

/** A device that is locked, or turns to something else, may never come back to this page. */
const whenHidden = (look: () => void): void => document.addEventListener('visibilitychange', () => document.hidden && look());

/** A page that closes may not send so much any more; the browser asks the user instead. */
function watchLeaving(isUnsaved: () => boolean, isTyping: () => boolean, save: () => void): void {
  window.addEventListener('beforeunload', (event) => {
    if (isUnsaved() || isTyping()) event.preventDefault();
  });
  whenHidden(() => isUnsaved() && save());
}

/** Of this window's user, by the grid's own word for it. */
const onChange = (api: FUniver, isHeeded: () => boolean, changed: (id: string) => void): void =>
  void api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
    if (isHeeded() && isUsersChange(id, type, options) && options?.['fromCollab'] !== true) changed(id);
  });

interface Timer {
  readonly start: (milliseconds: number) => void;
  readonly stop: () => void;
  readonly isRunning: () => boolean;
}

function timerFor(work: () => void): Timer {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => {
    clearTimeout(timer);
    timer = undefined;
  };
  return {
    start: (milliseconds) => {
      clearTimeout(timer);
      timer = setTimeout(work, milliseconds);
    },
    stop,
    isRunning: () => timer !== undefined,
  };
}

interface Failures {
  readonly tell: (thrown: unknown) => void;
  /** Nothing that is entered here can be saved any more. */
  readonly areFinal: () => boolean;
}

/** Says why something is not saved, asks what can be asked, and tries again what is worth it. */
function tellFailures(timer: Timer, tellFinal: () => void, answer: (clashes: readonly Clash[], side: Side) => void): Failures {
  let isFinal = false;
  const tell = (thrown: unknown): void => {
    showSaved(`NOT SAVED: ${reasonOf(thrown)}`, true);
    if (!(thrown instanceof SaveError)) return;
    if (thrown instanceof ClashError) askWhichHolds(thrown.clashes, (side) => answer(thrown.clashes, side));
    if (thrown.kind === 'clash') timer.start(askAgainMilliseconds);
    if (thrown.kind === 'passing' && !timer.isRunning()) timer.start(againMilliseconds);
    if (thrown.kind === 'changed' && !isFinal) tellFinal();
    isFinal ||= thrown.kind === 'changed';
  };
  return { tell, areFinal: () => isFinal };
}

export function startAutosave(api: FUniver, workbook: Workbook, keeper: Keeper, file: KeptFile, page: PageBook, opened: IWorkbookData): Autosave {
  const together = keepTogether(page, file, opened);
  const save = (): void => void saveNow().catch(() => undefined);
  const timer = timerFor(save);
  let sending: Promise<unknown> = Promise.resolve();
  let [unsaved, replaced] = [false, false];
  const tellBehind = tellOnce(tellLooks);
  const failures = tellFailures(
    timer,
    () => tellUnsaved(workbook, keeper.copyOpens),
    (clashes, side) => {
      together.answer(clashes, side);
      save();
    },
  );
  const saveNow = (): Promise<void> => {
    timer.stop();
    if (!unsaved) return sending.then(() => undefined);
    // One after the other, so that the second knows the version that the first made.
    const sent = sending.then(together.save).then(() => {
      unsaved = timer.isRunning();
      showSaved(unsaved ? 'Saving...' : keeper.savedWords());
      tellBehind(together.isBehind() && !page.isTyping());
    });
    sending = sent.catch(failures.tell);
    return sent;
  };
  const replaceBy = async (data: IWorkbookData, copyFirst = false): Promise<void> => {
    timer.stop();
    await sending;
    try {
      await together.replaceBy(data, copyFirst);
    } catch (thrown) {
      // What was typed before waits to be saved as it did.
      if (unsaved) save();
      throw new Error(`Nothing was changed, because the workbook could not be saved: ${reasonOf(thrown)}`);
    }
    [replaced, unsaved] = [true, false];
  };
  const look = (): void => {
    if (unsaved || replaced || failures.areFinal()) return;
    const looked = sending.then(together.look).then((whole) => !whole && !unsaved && !replaced && !page.isTyping() && tellOld());
    sending = looked.catch(() => undefined);
  };
  showSaved(keeper.savedWords());
  onChange(
    api,
    () => !replaced,
    (id) => {
      if (shiftsCells(id)) together.moved();
      // What is known to fail stays shown until it is repaired.
      if (!elementNamed('saved').classList.contains('failed')) showSaved('Saving...');
      unsaved = true;
      timer.start(quietMilliseconds);
    },
  );
  // What others entered waits until nothing is being typed.
  api.addEvent(api.Event.SheetEditEnded, () => together.isBehind() && look());
  const isTyping = (): boolean => page.isTyping() && !replaced;
  watchLeaving(() => unsaved, isTyping, save);
  keeper.watch(look);
  return { replaceBy, saveNow };
}
