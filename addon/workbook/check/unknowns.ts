// Verdicts that read UNKNOWN, each with what it is about and why.
import type { SheetTemplate } from '../../../sheets-templates/template';
import { readArea } from '../areas';
import { address } from '../../../sheets-templates/build';
import type { PlacesNow } from '../placesNow';
import type { CellPlace, SheetSnapshot } from '../snapshot';
import { textAt, valueAt } from '../templateLabels';
import { findingAt, type Finding } from './finding';

const verdictWord = /^(OK|CHECK|NO|UNKNOWN)$/;
/** Times, and answers of a list, say nothing about what a row is. */
const saysNothing = /^(\d{4}Z?|yes|no)$/i;
const maxWords = 3;

/** Columns side by side that belong to one table: those of the template's row, or filled cells on a user's own sheet. */
function startOfTable(sheet: SheetSnapshot, { row, column }: CellPlace, isOfTable: (column: number) => boolean): number {
  let start = column;
  while (start > 1 && isOfTable(start - 1)) start -= 1;
  return start === column ? (sheet.values[row - 1]?.findIndex((value) => value !== '') ?? 0) : start - 1;
}

/** The first texts of the row, up to the verdict. */
function itemBeside(sheet: SheetSnapshot, place: CellPlace, isOfTable: (column: number) => boolean): string {
  const from = startOfTable(sheet, place, isOfTable);
  const texts = (sheet.values[place.row - 1] ?? []).slice(from, place.column - 1).map((_, index) => textAt(sheet, place.row, from + index + 1));
  return [...new Set(texts.filter((text) => text !== '' && !verdictWord.test(text) && !saysNothing.test(text)))].slice(0, maxWords).join(', ');
}

/** The first text behind the verdict in the same table; what stands beyond is of something else. */
function reasonBeside(sheet: SheetSnapshot, { row, column }: CellPlace, isOfTable: (column: number) => boolean): string {
  for (let at = column + 1; isOfTable(at); at += 1) {
    const text = textAt(sheet, row, at).trim();
    if (text !== '' && !verdictWord.test(text)) return text;
  }
  return '';
}

/** A row of several verdicts has no reason beside it; the head of the column tells which one it is. */
function isOneOfSeveral(sheet: SheetSnapshot, { row, column }: CellPlace, isOfTable: (column: number) => boolean): boolean {
  const isVerdict = (step: number): boolean => {
    for (let at = column + step; at > 0 && isOfTable(at); at += step) if (verdictWord.test(textAt(sheet, row, at))) return true;
    return false;
  };
  return isVerdict(-1) || isVerdict(1);
}

function headAbove(sheet: SheetSnapshot, { row, column }: CellPlace): string {
  for (let above = row - 1; above > 0; above -= 1) {
    const text = textAt(sheet, above, column);
    if (text !== '' && !verdictWord.test(text)) return text;
  }
  return '';
}

function unknownsOf(sheet: SheetSnapshot): CellPlace[] {
  return sheet.values.flatMap((line, row) => line.flatMap((value, column) => (value === 'UNKNOWN' ? [{ row: row + 1, column: column + 1 }] : [])));
}

function finding(sheet: SheetSnapshot, place: CellPlace, isOfTable: (column: number) => boolean): Finding {
  const several = isOneOfSeveral(sheet, place, isOfTable);
  const item = [itemBeside(sheet, place, isOfTable), several ? headAbove(sheet, place) : ''].filter((text) => text !== '').join(', ');
  const reason = several ? '' : reasonBeside(sheet, place, isOfTable);
  return findingAt(
    'unknown',
    sheet,
    place,
    `${item === '' ? '' : `${item}: `}UNKNOWN${reason === '' ? '' : `, ${reason}`}${/[.!?]$/.test(reason) ? '' : '.'}`,
  );
}

const filledIn =
  (sheet: SheetSnapshot, row: number) =>
  (column: number): boolean =>
    valueAt(sheet, row, column) !== '';

const ownUnknowns = (sheet: SheetSnapshot): Finding[] => unknownsOf(sheet).map((place) => finding(sheet, place, filledIn(sheet, place.row)));

/** Columns of the template's cells in rows of the sheet as it stands now, for these rows. */
function tableColumns({ cells }: SheetTemplate, places: PlacesNow, wanted: ReadonlySet<number>): Map<number, Set<number>> {
  const byRow = new Map<number, CellPlace[]>();
  for (const cell of cells) byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
  const columns = new Map<number, Set<number>>();
  const placeNow = ({ row, column }: CellPlace): CellPlace | undefined => {
    const now = places.range(address(row, column));
    return now === undefined ? undefined : readArea(now);
  };
  for (const inRow of byRow.values()) {
    const known = inRow.find((cell) => placeNow(cell) !== undefined);
    const rowNow = known === undefined ? undefined : placeNow(known)?.row;
    if (rowNow !== undefined && wanted.has(rowNow)) columns.set(rowNow, new Set(inRow.flatMap((cell) => placeNow(cell)?.column ?? [])));
  }
  return columns;
}

/** The words on top of a sheet sum its rows up: told only where no row says UNKNOWN. The legend is no verdict. */
export function findUnknowns(sheet: SheetSnapshot, template: SheetTemplate | undefined, known: PlacesNow | undefined): Finding[] {
  if (template === undefined || known === undefined) return ownUnknowns(sheet);
  const places = unknownsOf(sheet);
  if (places.length === 0) return [];
  const placesOf = (wanted: (cell: SheetTemplate['cells'][number]) => boolean): Set<string> =>
    new Set(template.cells.filter(wanted).flatMap(({ row, column }) => known.range(address(row, column)) ?? []));
  const legend = placesOf(({ value, style }) => style === 'verdict' && value !== undefined);
  const summaries = placesOf(({ style }) => style === 'bigVerdict');
  const all = places.filter(({ row, column }) => !legend.has(address(row, column)));
  const rows = all.filter(({ row, column }) => !summaries.has(address(row, column)));
  const columnsOf = tableColumns(template, known, new Set(all.map(({ row }) => row)));
  return (rows.length === 0 ? all : rows).map((place) => {
    const columns = columnsOf.get(place.row);
    return finding(sheet, place, columns === undefined ? filledIn(sheet, place.row) : (column) => columns.has(column));
  });
}
