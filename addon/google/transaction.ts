// All or nothing: what is done to the document is written down with how to take it back, and where a step fails
// everything is taken back, the last first.
import { StoppedByUser } from './followedRun';
import { reasonOf } from './reason';

/** To be called right after something was done; `what` names it to the user, should it not be possible to take it back. */
export type Did = (what: string, rollback: () => void) => void;

export interface FailureWords {
  /** "No sheet was inserted" */
  readonly refused: string;
  /** "everything added was removed again" */
  readonly restored: string;
  /** "remove by hand", before what could not be taken back. */
  readonly byHand: string;
}

/** What could not be taken back. */
function rollbackAll(done: readonly { readonly what: string; readonly rollback: () => void }[]): string[] {
  return [...done].reverse().flatMap(({ what, rollback }) => {
    try {
      rollback();
      return [];
    } catch {
      return [what];
    }
  });
}

/** Throws one sentence: what was refused, in what state the document is, and what Google Sheets said. */
export function transaction<Result>({ refused, restored, byHand }: FailureWords, work: (did: Did) => Result): Result {
  const done: { what: string; rollback: () => void }[] = [];
  try {
    const result = work((what, rollback) => done.push({ what, rollback }));
    // Writes are kept back by the platform; only now is it known that all of them went through.
    SpreadsheetApp.flush();
    return result;
  } catch (thrown) {
    const left = rollbackAll(done);
    const state = left.length === 0 ? restored : `${byHand}: ${left.join(', ')}`;
    if (thrown instanceof StoppedByUser) throw new Error(`Stopped. ${refused}; ${state}.`);
    throw new Error(`${refused}, because Google Sheets refused a step; ${state}. It said: ${reasonOf(thrown).replace(/\.?\s*$/, '.')}`);
  }
}
