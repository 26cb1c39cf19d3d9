// "Duplicate" in the menu of a tab. The grid's own copy of a Trip sheet goes on reading the loading of the first one; here a trip is copied whole.
import { ICommandService, type IAccessor, type Injector } from '@univerjs/core';
import { CopySheetCommand } from '@univerjs/sheets';
import { sheetsOfTrip, withTripCopied } from '../saved/copyTrip';
import type { LiveWorkbook } from './liveWorkbook';
import { changeAndReload } from './reloading';
import type { Autosave } from './autosave';
import { notifyFailure } from './notices';

export function copyTabs(injector: Injector, live: LiveWorkbook, autosave: Autosave): void {
  const { workbook } = live;
  const copyTrip = (sheetId: string): Promise<never> =>
    changeAndReload(live, autosave, (saved) => {
      const { data, copies } = withTripCopied(saved, sheetId);
      const listed = copies.map((name) => `"${name}"`).join(', ');
      return { data, said: `Copied together, so that they read one another and not the first trip: ${listed}.`, sheet: copies[0] };
    });
  const commands = injector.get(ICommandService);
  commands.unregisterCommand(CopySheetCommand.id);
  commands.registerCommand({
    ...CopySheetCommand,
    handler: (accessor: IAccessor, params?: { readonly subUnitId?: string }) => {
      const sheetId = params?.subUnitId ?? workbook.getActiveSheet().getSheetId();
      if (sheetsOfTrip(workbook.save(), sheetId).length === 0) return CopySheetCommand.handler(accessor, params);
      void copyTrip(sheetId).catch(notifyFailure);
      return true;
    },
  });
}
