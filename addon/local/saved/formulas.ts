// Every formula of a saved workbook, wherever it stands, changed by one function: in cells, in names of the workbook, in tints
// and in limits of inputs. A formula that the function leaves as it is stays the same text.
import type { ICellData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import { resourceIn, withResource } from '../engine/workbookData';
import { resourceNames, type NameRecord } from '../engine/workbookResources';

/** The sheet on which the formula stands; undefined for a name of the workbook. */
export type FormulaChange = (formula: string, sheetId: string | undefined) => string;

function inCells(cells: IWorksheetData['cellData'], change: (formula: string) => string): IWorksheetData['cellData'] {
  const changed = (cell: Nullable<ICellData>): Nullable<ICellData> => (cell && typeof cell.f === 'string' ? { ...cell, f: change(cell.f) } : cell);
  const rows = Object.entries(cells).map(([row, ofRow]) => [
    row,
    Object.fromEntries(Object.entries(ofRow as Record<string, ICellData>).map(([column, cell]) => [column, changed(cell)])),
  ]);
  return Object.fromEntries(rows) as IWorksheetData['cellData'];
}

/** Texts that start with = anywhere in what a plugin keeps. */
function inKept(kept: unknown, change: (formula: string) => string): unknown {
  if (typeof kept === 'string') return kept.startsWith('=') ? change(kept) : kept;
  if (Array.isArray(kept)) return kept.map((one) => inKept(one, change));
  if (typeof kept !== 'object' || kept === null) return kept;
  return Object.fromEntries(Object.entries(kept).map(([name, part]) => [name, inKept(part, change)]));
}

function withKeptChanged(data: IWorkbookData, resource: string, change: FormulaChange): IWorkbookData {
  const kept = Object.entries(resourceIn<unknown>(data, resource));
  return kept.length === 0
    ? data
    : withResource(
        data,
        resource,
        Object.fromEntries(kept.map(([sheetId, ofSheet]) => [sheetId, inKept(ofSheet, (formula) => change(formula, sheetId))])),
      );
}

export function withFormulasChanged(data: IWorkbookData, change: FormulaChange): IWorkbookData {
  const sheets = Object.entries(data.sheets).map(([sheetId, sheet]) => [
    sheetId,
    sheet.cellData === undefined ? sheet : { ...sheet, cellData: inCells(sheet.cellData, (formula) => change(formula, sheetId)) },
  ]);
  const names = Object.entries(resourceIn<NameRecord>(data, resourceNames.names));
  const inNames = names.map(([id, record]) => [id, { ...record, formulaOrRefString: change(record.formulaOrRefString, undefined) }]);
  const inCellsAndNames = withResource(
    { ...data, sheets: Object.fromEntries(sheets) as IWorkbookData['sheets'] },
    resourceNames.names,
    Object.fromEntries(inNames),
  );
  return [resourceNames.tints, resourceNames.validations].reduce((changed, resource) => withKeptChanged(changed, resource, change), inCellsAndNames);
}
