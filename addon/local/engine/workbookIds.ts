// What the engine's data must agree on: identifiers of the workbook, its sheets and its charts, and the usual row.
import type { SheetKey } from '../../../sheets-templates/template';

export const workbookId = 'rampwright';
const sheetPrefix = 'sheet-';
/** Identifier of the first sheet of a kind; the next ones have a number. */
export const sheetIdOf = (key: SheetKey): string => `${sheetPrefix}${key}`;
/** What the names and identifiers of a sheet's parts are made from. */
export const stemOf = (sheetId: string): string => sheetId.slice(sheetPrefix.length).replace(/-/g, '_');
/** Name under which the page draws a chart over the grid. */
export const chartComponent = 'rampwright-chart';
/** The same for a picture. */
export const pictureComponent = 'rampwright-picture';
/** Pixels; the templates name the rows that are higher. */
export const plainRowHeight = 21;
