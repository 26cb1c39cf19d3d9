// The line above the grid keeps its width while the page is printed. The grid takes the line's room as it finds it, which is none while paper is
// made, sets the text to a width of nothing, and reports an error that has no cause in the workbook. Until the line is in sight again its last room stands.
import type { Injector } from '@univerjs/core';
import { IFormulaEditorManagerService } from '@univerjs/preset-sheets-core';

export function keepFormulaBarWidth(injector: Injector): void {
  const bar = injector.get(IFormulaEditorManagerService);
  const setPosition = bar.setPosition.bind(bar);
  bar.setPosition = (room) => {
    if (room.width > 0) setPosition(room);
  };
}
