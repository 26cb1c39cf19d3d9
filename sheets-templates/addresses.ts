// Addresses of cells and ranges as formulas write them. Alone in a file, so that the platform's bundle holds no rows of sheets with them.

/** A column's letter, counted from 1. */
export function columnLetter(column: number): string {
  const rest = Math.floor((column - 1) / 26);
  return (rest > 0 ? columnLetter(rest) : '') + String.fromCharCode(65 + ((column - 1) % 26));
}

export const address = (row: number, column: number): string => `${columnLetter(column)}${row}`;

export const area = (row: number, column: number, lastRow: number, lastColumn: number): string =>
  `${address(row, column)}:${address(lastRow, lastColumn)}`;

/** The same cell or range with fixed rows and columns, as seen from another sheet. */
export const on = (sheetName: string, place: string): string => `'${sheetName}'!${place.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2')}`;
