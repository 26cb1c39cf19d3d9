// What stands in an older sheet and is neither an entry that found its place, nor text or answer of the sheet's own. A
// number of the user's that has no place today stops the update; a text is told.
import { address } from '../../../sheets-templates/build';
import type { SheetTemplate } from '../../../sheets-templates/template';
import { maySpill, readFormula } from '../formulaReading';
import { formulaShape } from '../formulaSense';
import type { CellPlace, CellValue, FormulaCell, SheetSnapshot } from '../snapshot';
import { isEntry, textAt, valueAt } from '../templateLabels';
import { sectionOf } from './sections';
import type { OldEntries } from './oldEntries';

export interface LeftOver {
  /** Cells with data of the user's. */
  readonly data: readonly CellPlace[];
  readonly texts: readonly CellPlace[];
  readonly formulas: readonly FormulaCell[];
}

const keyOf = ({ row, column }: CellPlace): string => `${row} ${column}`;

/** Every text that the sheet itself may show: its own, and those of the chart's data that a host may lay beside it. */
function ownTexts({ cells, charts }: SheetTemplate): Set<string> {
  const written = cells.filter((cell) => !isEntry(cell)).flatMap(({ value }) => (typeof value === 'string' ? [value.trim()] : []));
  return new Set([...written, ...charts.flatMap(({ title, xTitle, series }) => [`Data of the chart "${title}"`, xTitle, ...series.map((one) => one.title)])]);
}

/** Columns that the answer of a call fills, by the name of its function: cells with a look and no content beside the call. */
function spillWidths({ cells }: SheetTemplate): Map<string, number> {
  const empty = new Set(cells.filter((cell) => cell.value === undefined && cell.formula === undefined && !isEntry(cell)).map(keyOf));
  const widths = new Map<string, number>();
  for (const { row, column, formula } of cells) {
    const name = formula === undefined ? undefined : readFormula(formula).calls[0]?.name;
    if (name === undefined) continue;
    let width = 1;
    while (empty.has(keyOf({ row, column: column + width }))) width += 1;
    widths.set(name, Math.max(widths.get(name) ?? 1, width));
  }
  return widths;
}

/** The cells into which the answer of a formula spills: as wide as the template has it, as high as what it reads, or as it is filled. */
function spilledFrom(sheet: SheetSnapshot, cell: FormulaCell, widths: ReadonlyMap<string, number>, isFree: (place: CellPlace) => boolean, endsAt: (place: CellPlace) => boolean): CellPlace[] {
  const reading = readFormula(cell.text);
  if (!maySpill(reading)) return [];
  const { calls, references } = reading;
  const free = (row: number, column: number): boolean => isFree({ row, column }) && valueAt(sheet, row, column) !== '';
  let width = widths.get(calls[0]?.name ?? '') ?? 0;
  if (width === 0) for (width = 1; free(cell.row, cell.column + width); ) width += 1;
  const columns = Array.from({ length: width }, (_, index) => cell.column + index);
  const read = Math.max(1, ...references.map(({ area }) => (area === undefined || area.lastRow === Infinity ? 1 : area.lastRow - area.row + 1)));
  const places: CellPlace[] = [];
  for (let row = cell.row; row <= sheet.values.length; row += 1) {
    if (row > cell.row && columns.some((column) => endsAt({ row, column }))) break;
    if (row >= cell.row + read && !columns.some((column) => free(row, column))) break;
    places.push(...columns.map((column) => ({ row, column })));
  }
  return places;
}

/** A link of ours, and a point of a chart's data. */
const isHosts = (formula: string): boolean => /^=HYPERLINK\("#/i.test(formula) || /,NA\(\)\)$/i.test(formulaShape(formula));

/** Numbers, dates and times, as text too. */
const isData = (value: CellValue): boolean => typeof value !== 'string' || /^[\d\s.,:+\-/%]*\d[\d\s.,:+\-/%]*Z?$/.test(value.trim());

/**
 * A text is data where entries stand: in a column of single entries, in a row and a headed column of a list; and in a section
 * with an entry that was not found, unless something stands to its right, as it does beside a label.
 */
function standsForData(sheet: SheetSnapshot, { singles, lists, incomplete, headings }: OldEntries): (place: CellPlace) => boolean {
  const columns = new Set(singles.map(({ from }) => `${sectionOf(headings, from)} ${from.column}`));
  const inList = ({ row, column }: CellPlace): boolean => lists.some(({ headRow, first, last }) => row >= first && row <= last && textAt(sheet, headRow, column) !== '');
  const isAlone = ({ row, column }: CellPlace): boolean => [1, 2, 3].every((step) => valueAt(sheet, row, column + step) === '');
  return (place) => {
    const section = sectionOf(headings, place);
    return isData(valueAt(sheet, place.row, place.column)) || columns.has(`${section} ${place.column}`) || inList(place) || (incomplete.has(section) && isAlone(place));
  };
}

export function leftOver(sheet: SheetSnapshot, template: SheetTemplate, old: OldEntries): LeftOver {
  const claimed = new Set([...old.singles, ...old.listed].map(({ from }) => keyOf(from)));
  const own = ownTexts(template);
  const headings = new Set(old.headings.map(keyOf));
  const formulas = new Set(sheet.formulas.map(keyOf));
  const isFree = (place: CellPlace): boolean =>
    !claimed.has(keyOf(place)) && !formulas.has(keyOf(place)) && !headings.has(keyOf(place)) && !own.has(textAt(sheet, place.row, place.column) || ' ');
  /** An entry, another answer or another text of the sheet begins. */
  const endsAt = (place: CellPlace): boolean => claimed.has(keyOf(place)) || formulas.has(keyOf(place)) || old.isLabel(place);
  const widths = spillWidths(template);
  const spilled = new Set(sheet.formulas.filter((cell) => !claimed.has(keyOf(cell))).flatMap((cell) => spilledFrom(sheet, cell, widths, isFree, endsAt).map(keyOf)));
  const filled = sheet.values.flatMap((line, row) => line.flatMap((value, column) => (value === '' ? [] : [{ row: row + 1, column: column + 1 }])));
  const rest = filled.filter((place) => isFree(place) && !spilled.has(keyOf(place)));
  const isUsers = standsForData(sheet, old);
  const shapes = new Set(template.cells.flatMap(({ formula }) => (formula === undefined ? [] : [formulaShape(formula)])));
  return {
    data: rest.filter(isUsers),
    texts: rest.filter((place) => !isUsers(place)),
    formulas: sheet.formulas.filter((cell) => !claimed.has(keyOf(cell)) && !isHosts(cell.text) && !shapes.has(formulaShape(cell.text))),
  };
}

export const cellText = (sheet: SheetSnapshot, { row, column }: CellPlace): string => `${address(row, column)} ${JSON.stringify(valueAt(sheet, row, column))}`;
