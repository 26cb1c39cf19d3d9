// Enters what is typed in the pocket view into a cell, as the grid's own editor does: read by its number format, refused by the rule of the
// cell, kept out of computed cells, and taken back by an undo.
import { generateRandomId, ICommandService, IUndoRedoService, type ICellData, type Injector } from '@univerjs/core';
import {
  DataValidatorRegistryService,
  SheetDataValidationModel,
  SheetsDataValidationValidatorService,
} from '@univerjs/preset-sheets-data-validation';
import { SetRangeValuesCommand, SheetInterceptorService } from '@univerjs/sheets';
import { notTaken, type EntryRule } from '../../../workbook/pocket/typedEntry';
import { isoDay, serialFromIso } from '../../../workbook/serialDates';
import { readEntry } from '../../../workbook/typed/readEntry';
import { valuesStep } from '../../engine/valuesStep';
import { entryContent } from '../../saved/withEntries';
import type { Worksheet } from '../cells';
import type { Workbook } from '../grid';

export interface CellOf {
  readonly sheet: Worksheet;
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
}

export interface Editing {
  readonly injector: Injector;
  readonly workbook: Workbook;
}

interface ListValidator {
  getList(rule: unknown, unitId: string, subUnitId: string): readonly string[];
}

const ruleAt = ({ injector, workbook }: Editing, { sheet, row, column }: CellOf) =>
  injector.get(SheetDataValidationModel).getRuleByLocation(workbook.getId(), sheet.getSheetId(), row, column);

/** What may be entered, by the rule that stands on the cell now. */
export function ruleOf(editing: Editing, cell: CellOf): EntryRule {
  const rule = ruleAt(editing, cell);
  if (rule === undefined || rule === null) return undefined;
  const type = String(rule.type);
  if (type === 'date') return { kind: 'date' };
  if (type === 'decimal' || type === 'whole') return { kind: 'number', minimum: Number(rule.formula1), maximum: Number(rule.formula2) };
  if (type !== 'list') return undefined;
  const validator = editing.injector.get(DataValidatorRegistryService).getValidatorItem(type) as unknown as ListValidator;
  return { kind: 'choices', choices: validator.getList(rule, editing.workbook.getId(), cell.sheet.getSheetId()) };
}

/** What the rule says where it refuses. */
export const helpOf = (editing: Editing, cell: CellOf): string => ruleAt(editing, cell)?.error ?? '';

export function patternOf({ workbook }: Editing, { sheet, row, column }: CellOf): string {
  const raw = sheet.getSheet().getCellRaw(row, column);
  return workbook.getWorkbook().getStyles().getStyleByCell(raw)?.n?.pattern ?? '';
}

function contentOf({ injector, workbook }: Editing, cell: CellOf, text: string, pattern: string): ICellData {
  if (text === '' || pattern === '@') return entryContent({ content: text });
  if (isoDay.test(text)) return entryContent({ content: serialFromIso(text) });
  const sheet = cell.sheet.getSheet();
  const before = sheet.getCellRaw(cell.row, cell.column) ?? {};
  const typed: ICellData = { ...before, v: text, f: null, si: null, p: null };
  delete typed.t;
  // Reads numbers, times and per cent as the grid does when they are typed there.
  return injector.get(SheetInterceptorService).onWriteCell(workbook.getWorkbook(), sheet, cell.row, cell.column, typed) ?? typed;
}

/** Undefined where it was taken, else why not, in a sentence; then nothing was changed. */
export async function enter(editing: Editing, cell: CellOf, given: string): Promise<string | undefined> {
  const pattern = patternOf(editing, cell);
  const read = (pattern === '@' ? undefined : readEntry(given, ruleOf(editing, cell)?.kind === 'date' ? 'date' : 'number')) ?? { text: given };
  if ('said' in read) return read.said;
  const { text } = read;
  const { injector, workbook } = editing;
  const [unitId, sheetId, redoUndoId] = [workbook.getId(), cell.sheet.getSheetId(), generateRandomId(6)];
  const content = contentOf(editing, cell, text, pattern);
  const step = { ...valuesStep(unitId, sheetId, [{ row: cell.row, column: cell.column, content }]), redoUndoId };
  injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, step);
  const rule = ruleAt(editing, cell);
  if (rule === undefined || rule === null) return undefined;
  const standing = await injector.get(SheetsDataValidationValidatorService).validatorCell(unitId, sheetId, cell.row, cell.column);
  if (String(standing) === 'valid') return undefined;
  injector.get(IUndoRedoService).rollback(redoUndoId, unitId);
  return notTaken(given, helpOf(editing, cell));
}

/** Empties cells in one step. */
export function emptyCells({ injector, workbook }: Editing, cells: readonly CellOf[]): void {
  const [first] = cells;
  if (first === undefined) return;
  const step = valuesStep(
    workbook.getId(),
    first.sheet.getSheetId(),
    cells.map(({ row, column }) => ({ row, column, content: entryContent({ content: '' }) })),
  );
  injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, step);
}
