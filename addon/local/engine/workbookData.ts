// Makes the engine's workbook data from the templates: values, formulas, formats, widths, merges, frozen rows. What the
// engine keeps for its plugins (names, tints, choices, notes, charts) is in workbookResources.ts.
import type { BooleanNumber, ICellData, IWorkbookData, IWorksheetData, LocaleType, CellValueType } from '@univerjs/core';
import type { SheetTemplate, TemplateCell, TemplateValue } from '../../../sheets-templates/template';
import { rangeFromA1 } from './a1';
import { plainStyle, styleKey, usedStyles } from './cellStyles';
import { serialFromIso } from '../../workbook/serialDates';
import { firstPlaced, type PlacedTemplate } from './placedTemplate';
import { carrying } from './sheetMark';
import { plainRowHeight, workbookId } from './workbookIds';
import { workbookResources } from './workbookResources';

const text: CellValueType.STRING = 1;
const number: CellValueType.NUMBER = 2;
const boolean: CellValueType.BOOLEAN = 3;
const hidden: BooleanNumber.TRUE = 1;

/** A value as a cell holds it. Without the type, number formats and tints would not take. */
export function cellContent(value: TemplateValue): ICellData {
  if (value === '') return { v: null, f: null, si: null, p: null, t: null };
  if (typeof value === 'string') return value.startsWith('=') ? { f: value } : { v: value, t: text };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: boolean };
  return typeof value === 'number' ? { v: value, t: number } : { v: serialFromIso(value.date), t: number };
}

function cellData(cell: TemplateCell, linkTo: PlacedTemplate['linkTo']): ICellData {
  const style = styleKey(cell);
  const goesTo = cell.goesTo === undefined ? undefined : linkTo(cell.goesTo);
  if (goesTo !== undefined) return { ...(cell.value !== undefined && cellContent(cell.value)), s: style, custom: { goesTo } };
  if (cell.formula !== undefined) return { f: cell.formula, s: style };
  return cell.value === undefined ? { s: style } : { ...cellContent(cell.value), s: style };
}

function allCells({ template, linkTo }: PlacedTemplate): Record<number, Record<number, ICellData>> {
  const matrix: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, column: number, data: ICellData): void => {
    matrix[row] = { ...matrix[row], [column]: data };
  };
  for (const cell of template.cells) put(cell.row - 1, cell.column - 1, cellData(cell, linkTo));
  for (const reference of template.merges) {
    const { startRow, startColumn, endRow, endColumn } = rangeFromA1(reference);
    // A border goes round the merged cell only if each cell under it has the style.
    const style = matrix[startRow]?.[startColumn]?.s;
    for (let row = startRow; row <= endRow; row += 1) {
      for (let column = startColumn; column <= endColumn; column += 1) {
        if (style !== undefined && (row !== startRow || column !== startColumn)) put(row, column, { s: style });
      }
    }
  }
  return matrix;
}

/** A row grows with the reason that wraps in it, if not in a merged cell (page/tallRows.ts). */
function grows({ cells, merges }: SheetTemplate, row: number): BooleanNumber {
  const merged = merges.map(rangeFromA1).some(({ startRow, endRow }) => row > startRow && row <= endRow + 1);
  return !merged && cells.some((cell) => cell.row === row && cell.style === 'reason') ? 1 : 0;
}

export function worksheetData(placed: PlacedTemplate): Partial<IWorksheetData> {
  const { template, sheetId, mark } = placed;
  const { frozenRows } = template;
  return {
    id: sheetId,
    name: template.name,
    rowCount: template.rows,
    columnCount: template.columns,
    cellData: allCells(placed),
    columnData: Object.fromEntries(
      template.columnWidths.map((w, column) => [column, { w, ...(template.hiddenColumns?.includes(column + 1) === true && { hd: hidden }) }]),
    ),
    defaultRowHeight: plainRowHeight,
    rowData: Object.fromEntries(Object.entries(template.rowHeights).map(([row, h]) => [Number(row) - 1, { h, ia: grows(template, Number(row)) }])),
    mergeData: template.merges.map((reference) => rangeFromA1(reference)),
    freeze:
      frozenRows === 0
        ? { xSplit: 0, ySplit: 0, startRow: -1, startColumn: -1 }
        : { xSplit: 0, ySplit: frozenRows, startRow: frozenRows, startColumn: -1 },
    showGridlines: 0,
    defaultStyle: plainStyle,
    custom: carrying(mark, sheetId),
  };
}

/** The whole workbook as the engine loads it, nothing calculated yet. Workbooks open at the same time need ids of their own. */
export function workbookData(templates: readonly SheetTemplate[], id: string = workbookId): IWorkbookData {
  const placed = firstPlaced(templates);
  return {
    id,
    name: 'Rampwright',
    appVersion: '0.25.1',
    locale: 'enUS' as LocaleType,
    styles: usedStyles(templates),
    sheetOrder: placed.map(({ sheetId }) => sheetId),
    sheets: Object.fromEntries(placed.map((one) => [one.sheetId, worksheetData(one)])),
    resources: workbookResources(placed, id),
  };
}

/** What a plugin keeps in the workbook, by identifier. */
export function resourceIn<Kept>(data: IWorkbookData, name: string): Record<string, Kept> {
  const text = data.resources?.find((one) => one.name === name)?.data;
  return text === undefined || text === '' ? {} : (JSON.parse(text) as Record<string, Kept>);
}

/** The workbook with something else kept for a plugin. */
export function withResource(data: IWorkbookData, name: string, content: object): IWorkbookData {
  const others = (data.resources ?? []).filter((one) => one.name !== name);
  return { ...data, resources: [...others, { name, data: JSON.stringify(content) }] };
}
