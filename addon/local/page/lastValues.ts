// A workbook that is opened shows what was worked out when it was last open, on another day perhaps. Until everything has been
// worked out again that is dimmed, and said: an OK of yesterday is no OK.
import type { ICellData, IWorkbookData } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { elementNamed } from './elements';

const oldAnswers = 'The answers are those of last time. They are being worked out again.';
const noAnswers = 'The answers are being worked out.';

const isOldAnswer = ({ f, si, v }: ICellData): boolean => (f ?? si ?? '') !== '' && (v ?? '') !== '';

/** A new workbook has formulas, and no answers yet. */
function hasAnswers({ sheets }: IWorkbookData): boolean {
  const rows = Object.values(sheets).flatMap(({ cellData }) => Object.values(cellData ?? {}) as Record<string, ICellData>[]);
  return rows.some((row) => Object.values(row).some(isOldAnswer));
}

/** To be called before the workbook is loaded. */
export function markLastValues(api: FUniver, data: IWorkbookData): void {
  const told = elementNamed('last-values');
  told.textContent = hasAnswers(data) ? oldAnswers : noAnswers;
  const ended = api.getFormula().calculationEnd(() => {
    ended.dispose();
    told.remove();
  });
}
