// The sheet in sight as the pocket view shows it: the sections of its description, and where their cells stand in this workbook now.
import type { ICellData } from '@univerjs/core';
import { address, columnLetter } from '../../../../sheets-templates/addresses';
import { sheetTemplates } from '../../../../sheets-templates';
import { styles } from '../../../../sheets-templates/look';
import type { TemplateCell } from '../../../../sheets-templates/template';
import { readArea, type Area } from '../../../workbook/areas';
import { placesNow } from '../../../workbook/placesNow';
import { pocketSheet, type PocketSheet } from '../../../workbook/pocket/sections';
import { contentAt, type Worksheet } from '../cells';
import type { LiveWorkbook } from '../liveWorkbook';
import { shownAt } from '../printLayout';
import type { CellOf } from './enter';

export interface PocketModel {
  readonly sheet: Worksheet;
  readonly pocket: PocketSheet;
  /** Undefined where it cannot be known any more. */
  readonly cellOf: (cell: Pick<TemplateCell, 'row' | 'column'>) => CellOf | undefined;
  /** Rows of a list now, counted from 0, and the cells of one of them. */
  readonly rowsOf: (first: number, last: number, column: number) => readonly CellOf[];
}

/** As the grid shows it. */
export const shownIn = ({ sheet, row, column }: CellOf): string => shownAt(sheet.getSheet(), row, column).trim();
/** Of the tint of entries, as whoever looks at the grid sees it too. */
export const isTinted = ({ sheet, row, column }: CellOf): boolean =>
  sheet.getSheet().getComposedCellStyle(row, column).bg?.rgb === styles.input.background;
export const contentIn = ({ sheet, row, column }: CellOf): ICellData => contentAt(sheet, row, column);

/** Undefined for a sheet that is not one of this version's: it has the grid only. */
export function pocketModel({ workbook, shown }: LiveWorkbook): PocketModel | undefined {
  const sheet = workbook.getActiveSheet();
  const { snapshot } = shown();
  const template = sheetTemplates.find(({ key, version }) => key === snapshot.mark?.key && version === snapshot.mark.version);
  const places = template === undefined ? undefined : placesNow(template, snapshot);
  if (template === undefined || places === undefined) return undefined;
  const known = new Map<string, Area | undefined>();
  const areaNow = (range: string): Area | undefined => {
    if (!known.has(range)) {
      const now = places.range(range);
      known.set(range, now === undefined ? undefined : readArea(now));
    }
    return known.get(range);
  };
  return {
    sheet,
    pocket: pocketSheet(template),
    cellOf: ({ row, column }) => {
      const now = areaNow(address(row, column));
      return now === undefined ? undefined : { sheet, row: now.row - 1, column: now.column - 1 };
    },
    rowsOf: (first, last, column) => {
      const letter = columnLetter(column);
      const now = areaNow(`${letter}${first}:${letter}${last}`);
      if (now === undefined || now.lastRow < now.row) return [];
      return Array.from({ length: now.lastRow - now.row + 1 }, (_, index) => ({ sheet, row: now.row - 1 + index, column: now.column - 1 }));
    },
  };
}
