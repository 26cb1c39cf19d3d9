// A cell that names another sheet goes there on a click.
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-ui/facade';
import { contentAt } from './cells';
import type { Workbook } from './grid';

export function followLinks(api: FUniver, workbook: Workbook): void {
  api.addEvent(api.Event.CellClicked, ({ row, column }) => {
    const { custom } = contentAt(workbook.getActiveSheet(), row, column);
    const goesTo: unknown = custom?.['goesTo'];
    if (typeof goesTo === 'string' && workbook.getSheetBySheetId(goesTo) !== null) workbook.setActiveSheet(goesTo);
  });
}
