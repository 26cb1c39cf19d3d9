// Changes that the grid cannot make while it is open: the workbook is changed as it is saved, and the page loads it anew. What
// came of it is told after that.
import type { IWorkbookData } from '@univerjs/core';
import { elementNamed } from './elements';
import type { LiveWorkbook } from './liveWorkbook';
import type { Autosave } from './autosave';

export interface Outcome {
  /** For the user, in a sentence. */
  readonly said: string;
  /** Name of the sheet to be shown. */
  readonly sheet: string | undefined;
}

const memory = 'rampwright-outcome';

/** What could change the workbook between its reading and the new loading. */
const changing = ['grid', 'files', 'foot'];

const setInert = (held: boolean): void => {
  for (const id of changing) elementNamed(id).inert = held;
};

/** `copyFirst`: what is kept so far becomes a dated copy. Resolves never, since the page goes; rejects with a sentence, with nothing changed. */
export async function changeAndReload(
  { workbook, settled }: LiveWorkbook,
  autosave: Autosave,
  change: (data: IWorkbookData) => Outcome & { readonly data: IWorkbookData },
  copyFirst = false,
): Promise<never> {
  await settled();
  setInert(true);
  try {
    const { data, ...outcome } = change(workbook.save());
    await autosave.replaceBy(data, copyFirst);
    sessionStorage.setItem(memory, JSON.stringify(outcome satisfies Outcome));
  } catch (thrown) {
    setInert(false);
    throw thrown;
  }
  location.reload();
  return new Promise(() => undefined);
}

/** What the page before this one left to be told, once. */
export function pendingNotice(): Outcome | undefined {
  const text = sessionStorage.getItem(memory);
  sessionStorage.removeItem(memory);
  return text === null ? undefined : (JSON.parse(text) as Outcome);
}
