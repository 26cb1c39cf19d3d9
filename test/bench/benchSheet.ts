// A sheet to measure: typed columns, single cells, and formulas filled down, as the engine loads a saved workbook.
import type { ICellData, IWorkbookData, LocaleType } from '@univerjs/core';
import { rangeFromA1 } from '../../addon/local/engine/a1';
import { cellContent } from '../../addon/local/engine/workbookData';
import type { TemplateValue } from '../../sheets-templates/template';

/** Row 1 holds heads, so the first row of a column is row 2. */
export interface BenchSheet {
  /** What is typed down a column, by its letter; '' is an empty cell. */
  readonly typed: Readonly<Record<string, readonly TemplateValue[]>>;
  /** Single cells: values, and formulas as texts that start with =. */
  readonly cells: Readonly<Record<string, TemplateValue>>;
  /** The formula of row 2, by the letter of its column, filled down all rows. */
  readonly filled: Readonly<Record<string, string>>;
}

export const sheetName = 'Bench';
export const firstRow = 2;
const columns = 26;

/** Filled-down formulas share one text, as after filling down by hand; a text of its own in each cell would cost more. */
const filledCell = (column: string, formula: string, index: number): ICellData =>
  index === 0 ? { f: formula, si: `filled-${column}` } : { si: `filled-${column}` };

export function benchWorkbook({ typed, cells, filled }: BenchSheet, rows: number): IWorkbookData {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const put = (address: string, data: ICellData): void => {
    const { startRow, startColumn } = rangeFromA1(address);
    (cellData[startRow] ??= {})[startColumn] = data;
  };
  for (const [column, values] of Object.entries(typed)) {
    values.forEach((value, index) => {
      if (value !== '') put(`${column}${firstRow + index}`, cellContent(value));
    });
  }
  for (const [address, value] of Object.entries(cells)) put(address, cellContent(value));
  for (const [column, formula] of Object.entries(filled)) {
    for (let index = 0; index < rows; index += 1) put(`${column}${firstRow + index}`, filledCell(column, formula, index));
  }
  const id = 'bench-sheet';
  const sheet = { id, name: sheetName, rowCount: rows + 100, columnCount: columns, cellData };
  return {
    id: 'bench',
    name: 'Bench',
    appVersion: '0.25.1',
    locale: 'enUS' as LocaleType,
    styles: {},
    sheetOrder: [id],
    sheets: { [id]: sheet },
    resources: [],
  };
}
