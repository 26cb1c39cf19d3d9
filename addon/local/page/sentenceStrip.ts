// The strip under the grid: why the selected cell is an error, in the sentence that its function threw.
import type { Injector } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { SheetsSelectionsService } from '@univerjs/sheets';
import type {} from '@univerjs/sheets-ui/facade';
import { registry } from '../../../functions/registry/index.generated';
import type { CellErrors } from '../engine/cellErrors';
import { contentAt } from './cells';
import { elementNamed } from './elements';
import type { Workbook } from './grid';

/** What the engine's own error values mean, for formulas without one of our calls. */
const meanings: Readonly<Record<string, string>> = {
  '#DIV/0!': 'The formula divides by zero or by a blank cell.',
  '#N/A': 'Something the formula looks for is not there.',
  '#NAME?': 'The formula has a name or a function that this workbook does not know.',
  '#NUM!': 'A number in the formula is out of its range.',
  '#REF!': 'The formula points at a cell that is gone.',
  '#VALUE!': 'The formula has a value of the wrong kind, such as text for a number.',
  '#SPILL!': 'The answer needs several cells, and one of them is not empty.',
  '#CYCLE!': 'The formula depends on its own cell.',
  '#ERROR!': 'A function in this formula, or in a cell that it reads, could not answer.',
};

/** A row of a mapped range says what is wrong with it in its own cell, often wider than the cell. */
function isSentence(value: string): boolean {
  const name = /^([A-Z][A-Z0-9_]+): .+\.$/.exec(value)?.[1];
  return name !== undefined && registry.some((declaration) => declaration.name === name);
}

function sentenceOfActiveCell(workbook: Workbook, book: CellErrors): string {
  const cell = workbook.getActiveCell();
  if (cell === null) return '';
  const sheet = workbook.getActiveSheet();
  const [row, column] = [cell.getRow(), cell.getColumn()];
  const { v, f } = contentAt(sheet, row, column);
  const value = typeof v === 'string' ? v : '';
  if (isSentence(value)) return value;
  const meaning = meanings[value];
  if (meaning === undefined) return '';
  const formula = typeof f === 'string' ? f : cell.getFormula();
  const thrown = book.sentencesOf({ workbook: workbook.getId(), sheet: sheet.getSheetId(), row, column }, formula);
  return thrown.length > 0 ? thrown.join(' ') : meaning;
}

/** The facade's own event of a selection is lost now and then while the grid's editors are still being made: the service behind it is asked. */
export function showSentences(api: FUniver, injector: Injector, workbook: Workbook, book: CellErrors): void {
  const strip = elementNamed('sentence');
  const refresh = (): void => {
    const sentence = sentenceOfActiveCell(workbook, book);
    strip.textContent = sentence;
    strip.title = sentence;
  };
  injector.get(SheetsSelectionsService).selectionChanged$.subscribe(refresh);
  api.addEvent(api.Event.ActiveSheetChanged, refresh);
  api.getFormula().calculationEnd(refresh);
}
