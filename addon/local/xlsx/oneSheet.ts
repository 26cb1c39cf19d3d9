// One sheet of a workbook alone, to be handed on: nothing of the others, and nothing of what is hidden on it.
import type { ICellData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import type { SheetSnapshot, WorkbookSnapshot } from '../../workbook/snapshot';
import { resourceIn, withResource } from '../engine/workbookData';
import { resourceNames } from '../engine/workbookResources';

export interface OneSheet {
  readonly data: IWorkbookData;
  readonly snapshot: WorkbookSnapshot;
  /** How many rows and columns that are hidden held something, which is left out. */
  readonly hidden: number;
}

type Hidden = (row: number, column: number) => boolean;
type Lines = Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>;

const isHidden = (one: Nullable<{ readonly hd?: Nullable<number> }>): boolean => one?.hd === 1;

function hiddenIn({ rowData, columnData }: Partial<IWorksheetData>): Hidden {
  return (row, column) => isHidden(rowData?.[row]) || isHidden(columnData?.[column]);
}

/** A cell that is not handed on keeps neither content nor look. */
function visibleCells(cells: Lines, hidden: Hidden): Lines {
  const lines = Object.entries(cells).map(([row, line]) => [
    row,
    Object.fromEntries(Object.entries(line).filter(([column]) => !hidden(Number(row), Number(column)))),
  ]);
  return Object.fromEntries(lines) as Lines;
}

function emptied({ values, formulas, ...sheet }: SheetSnapshot, hidden: Hidden): { readonly sheet: SheetSnapshot; readonly lines: number } {
  const lines = new Set<string>();
  const kept = values.map((line, row) =>
    line.map((value, column) => {
      if (value === '' || !hidden(row, column)) return value;
      lines.add(line.every((_, at) => hidden(row, at)) ? `row ${row}` : `column ${column}`);
      return '';
    }),
  );
  return { sheet: { ...sheet, values: kept, formulas: formulas.filter(({ row, column }) => !hidden(row - 1, column - 1)) }, lines: lines.size };
}

type Notes = Readonly<Record<string, Readonly<Record<number, Readonly<Record<number, unknown>>>>>>;

/** `sheetId` is one of the workbook. */
export function oneSheet(data: IWorkbookData, snapshot: WorkbookSnapshot, sheetId: string): OneSheet {
  const sheet = data.sheets[sheetId];
  const shown = snapshot.sheets.find(({ name }) => name === sheet?.name);
  if (sheet === undefined || shown === undefined) throw new Error('That sheet is no longer in this workbook.');
  const hidden = hiddenIn(sheet);
  const { sheet: kept, lines } = emptied(shown, hidden);
  const notes = (resourceIn<Notes[string]>(data, resourceNames.notes) as Notes)[sheetId] ?? {};
  const alone = {
    ...data,
    sheetOrder: [sheetId],
    sheets: { [sheetId]: { ...sheet, cellData: visibleCells((sheet.cellData ?? {}) as Lines, hidden) as IWorksheetData['cellData'] } },
  };
  return {
    data: withResource(alone, resourceNames.notes, { [sheetId]: visibleCells(notes as Lines, hidden) }),
    snapshot: { ...snapshot, sheets: [kept] },
    hidden: lines,
  };
}
