// Writes single entries into a saved workbook, or empties them. Pure. A cell keeps its look.
import type { ICellData, IWorkbookData } from '@univerjs/core';
import type { EntryWritten } from '../../workbook/tripEntries';
import { cellContent } from '../engine/workbookData';

/** A text stays a text, whatever it begins with, unless it is said to be a formula. */
export function entryContent({ content, formula, numberFormat }: Pick<EntryWritten, 'content' | 'formula' | 'numberFormat'>): ICellData {
  const cell: ICellData =
    formula === true
      ? { f: String(content), v: null, t: null, si: null, p: null }
      : typeof content === 'string' && content !== ''
        ? { v: content, t: 1, f: null, si: null, p: null }
        : cellContent(content);
  return numberFormat === undefined ? cell : { ...cell, s: { n: { pattern: numberFormat } } };
}

export function withEntries(data: IWorkbookData, entries: readonly EntryWritten[]): IWorkbookData {
  const sheets = structuredClone(data.sheets);
  for (const { sheet: name, row, column, ...entry } of entries) {
    const sheet = Object.values(sheets).find((one) => one.name === name);
    if (sheet === undefined) throw new Error(`There is no sheet "${name}" in this workbook any more. Nothing was changed.`);
    const cells = (sheet.cellData ??= {}) as Record<number, Record<number, ICellData>>;
    const line = (cells[row - 1] ??= {});
    // A look that is there stays: ours in the lists has the format already.
    const { s: look } = line[column - 1] ?? {};
    line[column - 1] = { ...line[column - 1], ...entryContent(entry), ...(look !== undefined && { s: look }) };
  }
  return { ...data, sheets };
}
