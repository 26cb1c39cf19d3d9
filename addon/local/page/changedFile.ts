// What the page says when the file is no longer the one that it opened: nothing is written over, and nothing typed here need be lost.
import { firstFew } from '../../../functions/registry/sharedWords';
import type { Clash, Side } from '../saved/mergeWorkbooks';
import type { Workbook } from './grid';
import { download } from './download';
import { elementNamed } from './elements';
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

/** What both typed is saved; what else the other one changed is not in sight. */
export const tellLooks = (): void =>
  notify(
    'Another window has changed how this workbook looks (widths, notes, colours, choices or names). It is saved together with what you enter here, and shown once the page is loaded.',
    [{ ...loadIt, label: 'Load it' }],
  );

const mostNamed = 6;

/** Nothing is saved until this is answered; asked again where something else has taken its place. */
export const askWhichHolds = (clashes: readonly Clash[], answer: (side: Side) => void): void => {
  const cells = firstFew(
    clashes.map(({ words }) => words),
    mostNamed,
    { separator: '. ', before: ', ' },
  );
  const choose = (side: Side) => (): void => {
    notify('');
    answer(side);
  };
  const question = `The same cells were changed in this window (here) and in another one (there), so nothing is saved yet. ${cells}. Which entries hold?`;
  if (elementNamed('files-said').textContent === question) return;
  notify(question, [
    { label: 'Those from here', chosen: choose('here') },
    { label: 'Those from there', chosen: choose('there') },
  ]);
};

/** `copyOpens`: how the copy is opened again. */
export const tellUnsaved = (workbook: Workbook, copyOpens: string): void =>
  notify(
    `The file was changed in another window or by another program, and rows, columns or sheets were put in, taken out or moved, so that both cannot be put together: what you typed here is not saved. Save this window as a copy first (${copyName}; ${copyOpens}). Then load the changed file and re-enter what is missing.`,
    [saveCopy(workbook), loadIt],
  );

/** Tells something when it becomes so, not again and again while it is. */
export function tellOnce(tell: () => void): (isSo: boolean) => void {
  let was = false;
  return (isSo) => {
    if (isSo && !was) tell();
    was = isSo;
  };
}
