// A sheet as a form, for the pocket view of the local page and for the side panel of both hosts: what they show alike, and how each of them writes.
import type { CellPlace } from '../workbook/snapshot';
import type { FormCell, FormCells } from '../workbook/pocket/snapshotForm';

export type { FormCell } from '../workbook/pocket/snapshotForm';

export interface Form extends FormCells {
  /** Enters what was typed; the host of the form tells where it is refused. */
  readonly submit: (cell: FormCell, text: string) => void;
  /** Empties cells in one step. */
  readonly empty: (cells: readonly CellPlace[]) => void;
  /** Shows the sheet to which a cell leads. */
  readonly goTo: (sheet: string) => void;
}
