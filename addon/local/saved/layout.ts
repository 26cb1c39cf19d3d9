// Whether cells of a workbook still stand where they stood: a word in the file that is renewed whenever rows, columns or sheets are put in, taken
// out or moved. Two windows can put their entries together cell by cell only while it is the same in both.
import type { IWorkbookData } from '@univerjs/core';
import { field, partOf } from './fileFormat';

const shifting =
  /^sheet\.mutation\.(?:insert-|remove-(?:rows|col|sheet|worksheet-merge)|move-|reorder-range|add-worksheet-merge|set-worksheet-(?:name|order|row-count|column-count))/;

/** Of a change in the grid, by the grid's own word for it. */
export const shiftsCells = (id: string): boolean => shifting.test(id);

export function layoutOf(data: Pick<IWorkbookData, 'custom'>): string {
  const layout = partOf(partOf(data.custom, field), 'layout');
  return typeof layout === 'string' ? layout : '';
}

export const withLayout = (data: IWorkbookData, layout: string): IWorkbookData => ({
  ...data,
  custom: { ...data.custom, [field]: { ...(partOf(data.custom, field) as object | undefined), layout } },
});
