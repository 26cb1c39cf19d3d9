// Asks before a computed cell of our sheets is overwritten, however that comes about: typed, pasted, filled or cleared. Until somebody
// answers, the formula stays; the rest of what was entered goes in.
import type { ICommandService, ICellData, Nullable } from '@univerjs/core';
import { RedoCommandId, UndoCommandId } from '@univerjs/core';
import { SetRangeValuesCommand, SetRangeValuesMutation, type ISetRangeValuesMutationParams } from '@univerjs/sheets';
import { styles } from '../../../sheets-templates/look';
import { a1FromRange } from '../engine/a1';
import { isEntered, type Cells } from '../engine/enteredCells';
import { markOf } from '../engine/sheetMark';
import { valuesStep } from '../engine/valuesStep';
import type { Workbook } from './grid';
import type { Worksheet } from './cells';
import { notify } from './notices';

/** What a cell was to hold in the place of its formula. */
interface Refused {
  readonly row: number;
  readonly column: number;
  readonly content: Nullable<ICellData>;
}

const undoing: ReadonlySet<string> = new Set([UndoCommandId, RedoCommandId]);

const formulaIn = (cell: Nullable<ICellData>): string => cell?.f ?? cell?.si ?? '';

/** Whether a cell that holds a formula would hold it no longer. A mere look is no content. */
function takesFormula(before: Nullable<ICellData>, content: Nullable<ICellData>, trigger: string): boolean {
  if (formulaIn(before) === '') return false;
  if (content === null || content === undefined) return true;
  const formula = formulaIn(content);
  if (formula !== '') return isEntered(trigger) && formula !== formulaIn(before);
  return content.f === null || (content.v ?? undefined) !== undefined || (content.p ?? undefined) !== undefined;
}

/** Sheets of ours, and there not the tinted cells: a proposal that stands there is meant to be typed over. */
function isComputed(workbook: Workbook, sheet: Worksheet, before: Nullable<ICellData>): boolean {
  if (markOf(sheet.getSheet().getConfig(), new Set()) === undefined) return false;
  const look = workbook.getWorkbook().getStyles().getStyleByCell(before);
  return look?.bg?.rgb !== styles.input.background;
}

/** Takes out of a change what would take a formula away, and gives that. */
function takeOut(workbook: Workbook, sheet: Worksheet, cells: Cells, trigger: string): Refused[] {
  const refused: Refused[] = [];
  for (const [rowText, ofRow] of Object.entries(cells))
    for (const [columnText, content] of Object.entries(ofRow as Record<string, Nullable<ICellData>>)) {
      const [row, column] = [Number(rowText), Number(columnText)];
      const before = sheet.getSheet().getCellRaw(row, column);
      if (!takesFormula(before, content, trigger) || !isComputed(workbook, sheet, before)) continue;
      refused.push({ row, column, content });
      Reflect.deleteProperty(ofRow as object, columnText);
    }
  return refused;
}

/** The words at the left of a cell, by which people know it. */
function wordsBeside(sheet: Worksheet, { row, column }: Refused): string {
  for (let left = column - 1; left >= Math.max(0, column - 3); left -= 1) {
    const { v, f } = sheet.getSheet().getCellRaw(row, left) ?? {};
    if (typeof v === 'string' && v !== '' && !f) return ` (${v})`;
  }
  return '';
}

const maxListed = 5;
function sentence(sheet: Worksheet, refused: readonly Refused[]): string {
  const named = refused.slice(0, maxListed).map((one) => {
    const { row, column } = one;
    return `${a1FromRange({ startRow: row, endRow: row, startColumn: column, endColumn: column })}${wordsBeside(sheet, one)}`;
  });
  const more = refused.length > maxListed ? ` and ${refused.length - maxListed} more` : '';
  const [are, their] = refused.length === 1 ? ['is worked out by a formula, which', 'it'] : ['are worked out by formulas, which', 'them'];
  return `${named.join(', ')}${more} on "${sheet.getSheetName()}" ${are} stays. What you entered there was not taken: typed over ${their}, other cells would go on with the old numbers, and the verdict would be CHECK.`;
}

/**
 * Looks at every change before the grid does, which forgets a formula as soon as it hears of the change: so this must be called before any part
 * of the grid is there. The workbook is named once it is loaded.
 */
export function keepFormulas(commands: ICommandService): (workbook: Workbook) => void {
  let workbook: Workbook | undefined;
  let overwriting = false;

  const overwrite = (sheet: Worksheet, refused: readonly Refused[]): void => {
    const cells = refused.map(({ row, column, content }) => ({ row, column, content: content ?? { v: null, f: null, si: null, p: null } }));
    overwriting = true;
    try {
      commands.syncExecuteCommand(SetRangeValuesCommand.id, valuesStep(sheet.getSheet().getUnitId(), sheet.getSheetId(), cells));
    } finally {
      overwriting = false;
    }
    notify('');
  };
  const ask = (sheet: Worksheet, refused: readonly Refused[]): void => {
    const one = refused.length === 1;
    notify(sentence(sheet, refused), [
      { label: one ? 'Keep the formula' : 'Keep the formulas', chosen: () => notify('') },
      { label: one ? 'Overwrite it' : 'Overwrite them', chosen: () => overwrite(sheet, refused) },
    ]);
  };

  commands.beforeCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || overwriting || options?.onlyLocal === true || options?.fromCollab === true) return;
    const { subUnitId, cellValue, trigger = '' } = params as ISetRangeValuesMutationParams;
    const sheet = workbook?.getSheetBySheetId(subUnitId) ?? undefined;
    if (workbook === undefined || sheet === undefined || cellValue === undefined || undoing.has(trigger)) return;
    const refused = takeOut(workbook, sheet, cellValue as Cells, trigger);
    if (refused.length > 0) ask(sheet, refused);
  });
  return (loaded) => (workbook = loaded);
}
