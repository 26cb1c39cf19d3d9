// The sheet in sight as the pocket view shows it: its cells as the grid shows them, and the rules that stand on them now.
import type { ICellData } from '@univerjs/core';
import { sheetTemplates } from '../../../../sheets-templates';
import { styles } from '../../../../sheets-templates/look';
import { placedSheet } from '../../../workbook/pocket/placedSheet';
import { pocketSheet } from '../../../workbook/pocket/sections';
import type { FormCell, FormCells } from '../../../workbook/pocket/snapshotForm';
import type { EntryRule } from '../../../workbook/pocket/typedEntry';
import type { CellPlace, CellValue } from '../../../workbook/snapshot';
import { valueOf } from '../../engine/workbookSnapshot';
import { contentAt, type Worksheet } from '../cells';
import type { LiveWorkbook } from '../liveWorkbook';
import { shownAt } from '../printLayout';
import { helpOf, patternOf, ruleOf, type CellOf, type Editing } from './enter';

export interface PocketModel extends FormCells {
  readonly sheet: Worksheet;
  /** Of a place counted from 1. */
  readonly inGrid: (place: CellPlace) => CellOf;
}

/** Asked anew each time, since the grid goes on below. */
class GridCell implements FormCell {
  readonly row: number;
  readonly column: number;

  constructor(
    private readonly editing: Editing,
    private readonly cell: CellOf,
  ) {
    [this.row, this.column] = [cell.row + 1, cell.column + 1];
  }

  private get data(): ICellData {
    return contentAt(this.cell.sheet, this.cell.row, this.cell.column);
  }

  get shown(): string {
    return shownAt(this.cell.sheet.getSheet(), this.cell.row, this.cell.column).trim();
  }

  get content(): CellValue {
    return valueOf(this.data);
  }

  get hasFormula(): boolean {
    return Boolean(this.data.f);
  }

  /** Of the tint of entries, as whoever looks at the grid sees it too. */
  get isEntry(): boolean {
    return this.cell.sheet.getSheet().getComposedCellStyle(this.cell.row, this.cell.column).bg?.rgb === styles.input.background;
  }

  get pattern(): string {
    return patternOf(this.editing, this.cell);
  }

  get rule(): EntryRule {
    return ruleOf(this.editing, this.cell);
  }

  get help(): string {
    return helpOf(this.editing, this.cell);
  }

  get goesTo(): string | undefined {
    const goesTo: unknown = this.data.custom?.['goesTo'];
    return typeof goesTo === 'string' ? goesTo : undefined;
  }
}

/** Undefined for a sheet that is not one of this version's: it has the grid only. */
export function pocketModel(editing: Editing, { workbook, shown }: LiveWorkbook): PocketModel | undefined {
  const sheet = workbook.getActiveSheet();
  const placed = placedSheet(sheetTemplates, shown().snapshot);
  if (placed === undefined) return undefined;
  const inGrid = ({ row, column }: CellPlace): CellOf => ({ sheet, row: row - 1, column: column - 1 });
  const cellAt = (place: CellPlace): FormCell => new GridCell(editing, inGrid(place));
  return {
    sheet,
    inGrid,
    pocket: pocketSheet(placed.template),
    cellOf: (cell) => {
      const now = placed.cellNow(cell);
      return now === undefined ? undefined : cellAt(now);
    },
    rowsOf: (first, last, { column }) => placed.columnNow(first, last, column).map(cellAt),
  };
}
