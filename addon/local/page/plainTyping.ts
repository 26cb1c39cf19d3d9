// What is typed into a cell stays as it is typed. The grid's editor of cells is one for documents: "A. ", "1. " or "# " at the beginning of a line
// became a list or a heading, and the cell then held no value at all, so that the pilot "A. Somebody" was nobody.
import { CanceledError, type ICommandService } from '@univerjs/core';

/** Sent after every space typed; its package is no dependency of ours. */
const afterSpace = 'doc.command.after-space';

export function keepTypingPlain(commands: ICommandService): void {
  commands.beforeCommandExecuted(({ id }) => {
    if (id === afterSpace) throw new CanceledError();
  });
}
