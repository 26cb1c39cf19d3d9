// Says in the page that a list is full, and offers the rows that it lacks.
import type { ICommandService } from '@univerjs/core';
import { guardLists, type FullList } from '../engine/fullLists';
import type { Workbook } from './grid';
import { notify } from './notices';

function say({ sheet, above, rows, isRefused }: FullList): void {
  const name = sheet.getSheetName();
  const said = isRefused
    ? `Nothing was taken: the list on "${name}" ends in row ${above + 1}, and the rest would stand in the section below it. Put rows in, then enter it once more.`
    : `Row ${above + 1} is the last one of its list on "${name}". What stands below it is not read.`;
  const putIn = (): void => {
    sheet.insertRowsBefore(above, rows);
    notify(`${rows} rows were put in above the last row of the list.`);
  };
  notify(said, [
    { label: `Put ${rows} rows in`, chosen: putIn },
    { label: 'Not now', chosen: () => notify('') },
  ]);
}

/** To be called before any part of the grid is there; the workbook is named once it is loaded. */
export function keepLists(commands: ICommandService): (workbook: Workbook) => void {
  let workbook: Workbook | undefined;
  guardLists(commands, (id) => workbook?.getSheetBySheetId(id) ?? undefined, say);
  return (loaded) => (workbook = loaded);
}
