// From the words of a formula to the cells that they mean: a range, a range on another sheet, or a name of the workbook.
import type { Area } from './areas';
import { areaOf, tokensOf, type FormulaReading } from './formulaReading';
import type { CellPlace, CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';

export interface Place {
  readonly sheet: SheetSnapshot;
  readonly area: Area;
}

/** Spreadsheets take names for equal whatever their case. */
export const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

export const sheetNamed = ({ sheets }: WorkbookSnapshot, name: string): SheetSnapshot | undefined =>
  sheets.find((sheet) => sameName(sheet.name, name));

function placeNamed(workbook: WorkbookSnapshot, word: string): Place | undefined {
  const name = workbook.names.find((one) => sameName(one.name, word));
  const [sheet, area] = name === undefined ? [] : [sheetNamed(workbook, name.sheet), areaOf(name.range)];
  return sheet === undefined || area === undefined ? undefined : { sheet, area };
}

/** Everything that a formula on the sheet `home` reads and that is there: its ranges, and what its names mean. */
export const placesRead = (
  workbook: WorkbookSnapshot,
  home: SheetSnapshot,
  { references, words }: Pick<FormulaReading, 'references' | 'words'>,
): Place[] => [
  ...references.flatMap(({ sheet: named, area }) => {
    const sheet = named === undefined ? home : sheetNamed(workbook, named);
    return sheet === undefined || area === undefined ? [] : [{ sheet, area }];
  }),
  ...words.flatMap((word) => placeNamed(workbook, word) ?? []),
];

export const holds = ({ row, column, lastRow, lastColumn }: Area, place: CellPlace): boolean =>
  place.row >= row && place.row <= lastRow && place.column >= column && place.column <= lastColumn;

/** The cells that a range or a name means in a formula on the sheet `home`; undefined for anything else, and for what is not there. */
export function placeOf(workbook: WorkbookSnapshot, home: string, text: string): Place | undefined {
  const tokens = tokensOf(text).filter(({ kind }) => kind !== 'space');
  const [token] = tokens;
  if (token === undefined || tokens.length > 1) return undefined;
  if (token.kind === 'reference') {
    const { sheet: named, area } = token.reference;
    const sheet = sheetNamed(workbook, named ?? home);
    return sheet === undefined || area === undefined ? undefined : { sheet, area };
  }
  return token.kind === 'word' ? placeNamed(workbook, token.text) : undefined;
}

/** The values of a place as far as the sheet is filled; below and beside that, blanks up to the end of a closed range. */
export function valuesIn({ sheet: { values }, area: { row, column, lastRow, lastColumn } }: Place): CellValue[][] {
  const bottom = lastRow === Infinity ? values.length : lastRow;
  const right = lastColumn === Infinity ? Math.max(0, ...values.map((line) => line.length)) : lastColumn;
  return Array.from({ length: Math.max(0, bottom - row + 1) }, (_, down) =>
    Array.from({ length: Math.max(0, right - column + 1) }, (__, across) => values[row - 1 + down]?.[column - 1 + across] ?? ''),
  );
}
