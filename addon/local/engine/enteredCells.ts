// Which changes of cells a person enters, as against what the grid rewrites by itself: formulas, where rows are put in or taken out, where sheets are
// renamed, and where something is taken back.
import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from '@univerjs/core';
import type { SetRangeValuesCommand } from '@univerjs/sheets';

/** Contents by row and column, counted from 0. */
export type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

const valuesCommand: typeof SetRangeValuesCommand.id = 'sheet.command.set-range-values';

/** `trigger`: the command that a change of cells comes from. */
export const isEntered = (trigger: string): boolean => trigger === valuesCommand || /paste|fill|copy-(down|right)/.test(trigger);
