// What stands in an older sheet and is neither an entry that found its place, nor text or answer of the sheet's own. A
// number of the user's that has no place today stops the update; a text is told.
import { address } from '../../../sheets-templates/build';
import { maySpill, readFormula } from '../formulaReading';
import { formulaShape } from '../formulaSense';
import type { CellPlace, CellValue, FormulaCell, SheetSnapshot } from '../snapshot';
import { textAt, valueAt } from '../templateLabels';
import { constantKey, type OldEntries } from './oldEntries';

export interface LeftOver {
  /** Cells with data of the user's. */
  readonly data: readonly CellPlace[];
  readonly texts: readonly CellPlace[];
  readonly formulas: readonly FormulaCell[];
}

const keyOf = ({ row, column }: CellPlace): string => `${row} ${column}`;

/** The cells into which the answer of a formula spills: as wide as the template has it, as high as what it reads, or as it is filled. */
function spilledFrom(
  sheet: SheetSnapshot,
  cell: FormulaCell,
  { widths, heights }: OldEntries['own'],
  isFree: (place: CellPlace) => boolean,
  endsAt: (place: CellPlace, isKept: boolean) => boolean,
): CellPlace[] {
  const reading = readFormula(cell.text);
  if (!maySpill(reading)) return [];
  const { calls, references } = reading;
  const free = (row: number, column: number): boolean => isFree({ row, column }) && valueAt(sheet, row, column) !== '';
  let width = widths.get(calls[0]?.name ?? '') ?? 0;
  if (width === 0) for (width = 1; free(cell.row, cell.column + width);) width += 1;
  const columns = Array.from({ length: width }, (_, index) => cell.column + index);
  const read = Math.max(1, ...references.map(({ area }) => (area === undefined || area.lastRow === Infinity ? 1 : area.lastRow - area.row + 1)));
  const kept = heights.get(calls[0]?.name ?? '') ?? 1;
  const places: CellPlace[] = [];
  for (let row = cell.row; row <= sheet.values.length; row += 1) {
    if (row > cell.row && columns.some((column) => endsAt({ row, column }, row < cell.row + kept))) break;
    if (row >= cell.row + read && !columns.some((column) => free(row, column))) break;
    places.push(...columns.map((column) => ({ row, column })));
  }
  return places;
}

/** A link of ours, and a point of a chart's data. */
const isHosts = (formula: string): boolean => /^=HYPERLINK\("#/i.test(formula) || /,NA\(\)\)$/i.test(formulaShape(formula));

/** Numbers, dates and times, as text too. */
const isData = (value: CellValue): boolean => typeof value !== 'string' || /^[\d\s.,:+\-/%]*\d[\d\s.,:+\-/%]*Z?$/.test(value.trim());

/** A text is data where entries stand: in a row and a headed column of a list, and where single entries may have stood. */
const isIn = (sheet: SheetSnapshot, { lists }: OldEntries, { row, column }: CellPlace): boolean =>
  lists.some(
    ({ headRow, first, last, hasColumn }) =>
      headRow !== undefined && row >= first && row <= last && hasColumn(column) && textAt(sheet, headRow, column) !== '',
  );

/** `placed` are the entries that found their place, `keyFormula` the cell of the keys. */
export function leftOver(sheet: SheetSnapshot, old: OldEntries, placed: readonly CellPlace[], keyFormula: CellPlace | undefined): LeftOver {
  const { own, isLabel, mayBeEntry } = old;
  const gone = new Set(placed.map(keyOf));
  const entries = new Set([...old.cells.values()].map(keyOf));
  const formulas = new Set(sheet.formulas.map(keyOf));
  const isOwn = ({ row, column }: CellPlace): boolean =>
    own.texts.has(textAt(sheet, row, column) || ' ') || own.constants.has(constantKey(textAt(sheet, row, column - 1), valueAt(sheet, row, column)));
  const isFree = (place: CellPlace): boolean => !entries.has(keyOf(place)) && !formulas.has(keyOf(place)) && !isOwn(place);
  /** An entry, another answer or another text of the sheet begins. In rows kept for the answer a word of it may read like a text of the sheet. */
  const endsAt = (place: CellPlace, isKept: boolean): boolean =>
    entries.has(keyOf(place)) || formulas.has(keyOf(place)) || (!isKept && isLabel(place));
  const spilled = new Set(
    sheet.formulas.filter((cell) => !entries.has(keyOf(cell))).flatMap((cell) => spilledFrom(sheet, cell, own, isFree, endsAt).map(keyOf)),
  );
  const filled = sheet.values.flatMap((line, row) => line.flatMap((value, column) => (value === '' ? [] : [{ row: row + 1, column: column + 1 }])));
  const hasNoPlace = (place: CellPlace): boolean => entries.has(keyOf(place)) && !gone.has(keyOf(place));
  const rest = filled.filter((place) => hasNoPlace(place) || (isFree(place) && !spilled.has(keyOf(place))));
  const isUsers = (place: CellPlace): boolean =>
    hasNoPlace(place) || isData(valueAt(sheet, place.row, place.column)) || isIn(sheet, old, place) || mayBeEntry(place);
  const isOwnFormula = ({ row, column, text }: FormulaCell): boolean =>
    isHosts(text) || own.isFormula(text) || (row === keyFormula?.row && column === keyFormula.column);
  return {
    data: rest.filter(isUsers),
    texts: rest.filter((place) => !isUsers(place)),
    formulas: sheet.formulas.filter((cell) => !entries.has(keyOf(cell)) && !isOwnFormula(cell)),
  };
}

export const cellText = (sheet: SheetSnapshot, { row, column }: CellPlace): string =>
  `${address(row, column)} ${JSON.stringify(valueAt(sheet, row, column))}`;
