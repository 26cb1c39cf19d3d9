// Names of the top-level functions that the menu calls. Each is callable by name as a formula too, so there are few, in
// plain words; the build writes them under these names and the menu refers to them by these names.
import type { SheetKey } from '../../sheets-templates/template';

export const panelCommand = 'openPanel';
export const everySheetCommand = 'insertEverySheet';

/** insertTripSheet for the sheet with the key trip. */
export const sheetCommand = (key: SheetKey): string => `insert${key.charAt(0).toUpperCase()}${key.slice(1)}Sheet`;
