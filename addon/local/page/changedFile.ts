// What the page says when the file is no longer the one that it opened: nothing is written over, and nothing typed here need be lost.
import type { Workbook } from './grid';
import { download } from './download';
import { notify, type Choice } from './notices';

const copyName = 'rampwright-copy.json';

const loadIt: Choice = { label: 'Load the changed file', chosen: () => location.reload() };

const saveCopy = (workbook: Workbook): Choice => ({
  label: 'Save this window as a copy',
  chosen: () => download(copyName, JSON.stringify(workbook.save()), 'application/json'),
});

/** Nothing was typed here since: only what is shown is old. */
export const tellOld = (): void =>
  notify('The file was changed in another window or by another program, so what you see here may be old. Load the changed file before you go on.', [
    loadIt,
  ]);

/** `copyOpens`: how the copy is opened again. */
export const tellUnsaved = (workbook: Workbook, copyOpens: string): void =>
  notify(
    `The file was changed in another window or by another program, so what you typed here is not saved. Save this window as a copy first (${copyName}; ${copyOpens}). Then load the changed file and re-enter what is missing.`,
    [saveCopy(workbook), loadIt],
  );
