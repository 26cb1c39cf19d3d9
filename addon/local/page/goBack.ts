// Goes back to the workbook as it was before. What is there now becomes a copy of its own first, so that this can be taken back in the same way.
import type { IWorkbookData } from '@univerjs/core';
import { laterSentence } from '../saved/fileFormat';
import { standingOf } from '../saved/workbookText';
import { changeAndReload } from './reloading';
import type { StartedPage } from './startPage';

/** A moment as people read it, in the time of this computer; of milliseconds of UTC. */
export const momentWords = (time: number): string => new Date(time).toLocaleString('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** Resolves never, since the page is loaded anew; rejects with a sentence, with nothing changed. `where`: how the way back is found. */
export async function goBackTo({ live, autosave, file }: StartedPage, made: number, where: string): Promise<never> {
  const text = await file.copyOf(made);
  const standing = standingOf(text);
  if (standing === 'damaged') throw new Error('that copy is not a whole workbook. Nothing was changed.');
  if (standing === 'later') throw new Error(laterSentence);
  await live.settled();
  // What was typed in the last second is in the copy that is made of what is there.
  await autosave.saveNow();
  return changeAndReload(
    live,
    autosave,
    () => ({
      data: JSON.parse(text) as IWorkbookData,
      said: `The workbook is as it was in the copy of ${momentWords(made)}. What stood here before is a copy too: ${where} goes back to it.`,
      sheet: undefined,
    }),
    true,
  );
}
