// The entry of the bundle. The top-level functions that the build appends to it (addon/build) call these.
import declarations from 'rampwright:functions';
import { evaluate } from '../../functions/registry/evaluate';
import { googleDateHost } from './dateHost';
import { ownValue } from './ownValue';

export { answerPanel, insertEverySheet, insertOneSheet, openPanel } from './commands';
export { attendRun } from './followedRun';
export { onInstall, onOpen } from './menu';

/** A sheet function by name, with the arguments that the platform handed over. Throws an Error with one sentence. */
export function call(name: string, given: ArrayLike<unknown>): unknown {
  const declaration = declarations[name]?.();
  if (declaration === undefined) throw new Error(`${name}: no such function in this version of the add-on; got that name.`);
  const dates = googleDateHost();
  const answer = (): unknown => evaluate(declaration, Array.from(given, ownValue), dates);
  try {
    const result = answer();
    if (dates.failure() === undefined) return result;
  } catch (thrown) {
    if (dates.failure() === undefined) throw thrown;
  }
  throw new Error(`${name}: the spreadsheet's time zone must be readable for dates; got "${String(dates.failure())}".`);
}
