// Says so where one workbook is open in two tabs or windows of this browser.
import { notify } from '../notices';
import { currentInfo } from './browserKeeper';

/** A page that was loaded anew finds the lock of the one before it for a moment. */
const momentMilliseconds = 1500;
const forEver = (): Promise<never> => new Promise(() => undefined);

/** The first tab holds the lock as long as it lives; the others wait for it. */
export function tellSecondTab(): void {
  const id = currentInfo()?.id;
  if (id === undefined || navigator.locks === undefined) return;
  let held = false;
  void navigator.locks.request(`rampwright ${id}`, () => {
    held = true;
    return forEver();
  });
  setTimeout(() => {
    if (!held)
      notify(
        'This workbook is open in another tab or window too. What is entered in one appears in the other; where both change the same cell, you are asked which entry holds.',
      );
  }, momentMilliseconds);
}
