// What a user has typed into sheets of an older version, laid into the cells of the templates of today.
import type { SheetKey } from '../../sheets-templates/template';
import type { CellPlace, CellValue } from './snapshot';

/** One entry of the user's in its new place. Text that starts with = is a formula. */
export interface CarriedCell extends CellPlace {
  readonly content: CellValue;
}

/** The entries of one sheet. Entry cells of the template that are not named become blank. */
export interface CarriedSheet {
  readonly key: SheetKey;
  readonly cells: readonly CarriedCell[];
}
