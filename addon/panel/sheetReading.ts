// Reads the whole workbook for a form, until every answer is there.
import type { WorkbookSnapshot } from '../workbook/snapshot';
import { stillWorking } from '../workbook/waitingFormulas';
import type { PanelHost } from './host';

/** Milliseconds between two questions, and for how long it is asked. */
const pause = 1000;
const patience = 90_000;

/**
 * Every sheet, not the one in sight alone: IFERROR shows an answer while a cell that it reads on another sheet still waits for its own, and such an
 * answer looks worked out and is none. A host refuses while any cell of a sheet that it reads waits.
 */
export async function readAnswers(host: PanelHost, rest = pause): Promise<WorkbookSnapshot> {
  for (let waited = 0; ; waited += rest) {
    try {
      return await host.ask('readWorkbook', { sheets: 'all' });
    } catch (thrown) {
      if (!(thrown instanceof Error) || thrown.message !== stillWorking || waited >= patience) throw thrown;
      await new Promise((done) => setTimeout(done, rest));
    }
  }
}
