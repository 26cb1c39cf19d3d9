// Cell references in A1 notation, and the engine's ranges counted from 0.

export interface CellRange {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

const columnFromLetters = (letters: string): number => [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;

function lettersFromColumn(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : lettersFromColumn(Math.floor(column / 26) - 1) + last;
}

/** "B4" or "A1:C9", dollar signs allowed. */
export function rangeFromA1(reference: string): CellRange {
  const parts = /^([A-Z]{1,3})([1-9]\d*)(?::([A-Z]{1,3})([1-9]\d*))?$/.exec(reference.replace(/\$/g, '').toUpperCase());
  if (parts === null) throw new Error(`not a cell reference: ${reference}`);
  const [, left = '', top = '', right = left, bottom = top] = parts;
  return { startRow: Number(top) - 1, startColumn: columnFromLetters(left), endRow: Number(bottom) - 1, endColumn: columnFromLetters(right) };
}

export function a1FromRange({ startRow, startColumn, endRow, endColumn }: CellRange, dollar = ''): string {
  const corner = (row: number, column: number): string => `${dollar}${lettersFromColumn(column)}${dollar}${row + 1}`;
  const first = corner(startRow, startColumn);
  return startRow === endRow && startColumn === endColumn ? first : `${first}:${corner(endRow, endColumn)}`;
}

export const quoteSheetName = (name: string): string => `'${name.replace(/'/g, "''")}'`;

export interface SheetReference {
  readonly sheet: string;
  readonly range: string;
}

/** "'Trip sheet'!$B$4:$B$9", split into the sheet and the range; undefined for anything else, such as a formula or #REF!. */
export function readSheetReference(reference: string): SheetReference | undefined {
  const [whole, quoted, bare, range = ''] = /^=?(?:'((?:[^']|'')+)'|([^'!#(]+))!([^!#(]+)$/.exec(reference) ?? [];
  return whole === undefined ? undefined : { sheet: quoted?.replace(/''/g, "'") ?? bare ?? '', range };
}

export function splitSheetReference(reference: string): SheetReference {
  const found = readSheetReference(reference);
  if (found === undefined) throw new Error(`not a reference to a sheet: ${reference}`);
  return found;
}
