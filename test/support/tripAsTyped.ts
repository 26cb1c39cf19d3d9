// The Trip sheet with what is typed there and no formula: enough for a sheet that is opened without the rest of the workbook.
import { address } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { tripSheet } from '../../sheets-templates/trip/sheet';

const typed = tripSheet.cells.filter(({ formula }) => formula === undefined);

export const tripAsTyped: SheetTemplate = {
  ...tripSheet,
  cells: typed,
  names: tripSheet.names.filter(({ range }) => !range.includes(':') && typed.some(({ row, column }) => address(row, column) === range)),
};
