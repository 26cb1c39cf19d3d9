// Where the entries of a template stand in a sheet of the user's, of the same version or an older one: found by the words
// around them, as they stand there now.
import type { Area } from '../areas';
import { laidOut } from '../laidOut';
import type { CellPlace, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { fixedTexts, textAt, valueAt, type Label } from '../templateLabels';
import { placeOf } from '../readPlace';
import { headingsIn, sectionOf, type Heading } from './sections';
import type { EntryList, SingleEntry, TemplateEntries } from './templateEntries';

/** A cell of the template, and the cell of the user's sheet whose content belongs there. */
export interface EntryPair {
  readonly to: CellPlace;
  readonly from: CellPlace;
}

/** Rows of a list that the template has no room for: from the first row of the list to its last filled one. */
export interface TooLong {
  readonly section: string;
  readonly rows: number;
  readonly room: number;
}

/** A list as it stands in the sheet: the row of its heads, and the rows that belong to it. */
export interface OldList {
  readonly headRow: number;
  readonly first: number;
  readonly last: number;
}

export interface OldEntries {
  readonly singles: readonly EntryPair[];
  readonly listed: readonly EntryPair[];
  readonly lists: readonly OldList[];
  /** Sections of which some entry of the template was not found. */
  readonly incomplete: ReadonlySet<string>;
  readonly tooLong: readonly TooLong[];
  readonly headings: readonly Heading[];
  /** A fixed text of the template stands there, for certain. */
  readonly isLabel: (place: CellPlace) => boolean;
}

/** Column of the template to column of the sheet, where it can be known. */
type ColumnNow = (column: number) => number | undefined;

interface Finder {
  readonly sheet: SheetSnapshot;
  readonly headings: readonly Heading[];
  readonly columnNow: ColumnNow;
  /** Where a fixed text of the template stands now. */
  readonly label: (label: Label) => CellPlace | undefined;
  readonly isLabel: (place: CellPlace) => boolean;
}

const keyOf = ({ row, column }: CellPlace): string => `${row} ${column}`;

/** Places of texts in the sheet, by the text, row by row. */
function placesOfTexts(sheet: SheetSnapshot, texts: ReadonlySet<string>): Map<string, CellPlace[]> {
  const places = new Map<string, CellPlace[]>();
  sheet.values.forEach((line, row) => line.forEach((_, column) => {
    const text = textAt(sheet, row + 1, column + 1);
    if (texts.has(text)) places.set(text, [...(places.get(text) ?? []), { row: row + 1, column: column + 1 }]);
  }));
  return places;
}

/**
 * A text is found where its section has as many of it as the template has there; else where its column has; else where it
 * is the only one in template and sheet. Answers and entries may read like a label, so the counts must agree.
 */
function finderFor(sheet: SheetSnapshot, { template, headings: wanted, labels }: TemplateEntries): Finder {
  const headings = headingsIn(sheet, wanted);
  const { column: columnNow } = laidOut(template, sheet);
  const fixed = fixedTexts(template);
  const places = placesOfTexts(sheet, new Set(labels.map(({ text }) => text)));
  const find = (one: Label): CellPlace | undefined => {
    const section = sectionOf(wanted, one);
    const column = columnNow(one.column);
    const alike = fixed.filter(({ text }) => text === one.text);
    const all = places.get(one.text) ?? [];
    const alikeHere = alike.filter((other) => sectionOf(wanted, other) === section);
    const here = all.filter((place) => sectionOf(headings, place) === section);
    const narrowed: readonly (readonly [readonly Label[], readonly CellPlace[]])[] = [
      [alikeHere, here],
      [alikeHere.filter((other) => other.column === one.column), here.filter((place) => place.column === column)],
      alike.length === 1 ? [alike, all] : [[], []],
    ];
    const [before, now] = narrowed.find(([some, others]) => some.length > 0 && some.length === others.length) ?? [[], []];
    return now[before.findIndex((other) => other.row === one.row && other.column === one.column)];
  };
  const found = new Map(labels.flatMap((label) => {
    const place = find(label);
    return place === undefined ? [] : [[label, place] as const];
  }));
  const standing = new Set([...found.values()].map(keyOf));
  return { sheet, headings, columnNow, label: (label) => found.get(label), isLabel: (place) => standing.has(keyOf(place)) };
}

function singlePlace(workbook: WorkbookSnapshot, { sheet, columnNow, label: find }: Finder, { cell, label, head, name }: SingleEntry): CellPlace | undefined {
  const named = name === undefined ? undefined : placeOf(workbook, sheet.name, sheet.mark?.names[name] ?? name);
  if (named !== undefined && named.sheet === sheet) return { row: named.area.row, column: named.area.column };
  const beside = find(label);
  if (beside === undefined) return undefined;
  const above = head === undefined ? undefined : find(head);
  const sameSide = (column: number): boolean => column > beside.column === cell.column > label.column && column !== beside.column;
  if (above !== undefined && above.row < beside.row && sameSide(above.column)) return { row: beside.row, column: above.column };
  const moved = columnNow(label.column) === beside.column ? columnNow(cell.column) : undefined;
  return { row: beside.row, column: moved ?? beside.column + cell.column - label.column };
}

interface OldColumn {
  readonly to: number;
  readonly head: CellPlace;
}

interface OldRows {
  readonly first: number;
  readonly last: number;
}

/** From below the heads to where the section, or another text of the sheet, begins; less where formulas read less. */
function oldRows({ sheet, headings, isLabel }: Finder, read: readonly Area[], columns: readonly OldColumn[], headRow: number, gap: number): OldRows {
  const goesOn = (row: number): boolean => columns.every(({ head }) => {
    const place = { row, column: head.column };
    return sectionOf(headings, place) === sectionOf(headings, head) && !isLabel(place);
  });
  let end = headRow + 1;
  while (end <= sheet.values.length && goesOn(end)) end += 1;
  const within = read.filter((area) => area.lastRow > area.row && area.lastRow > headRow && area.row < end && columns.some(({ head }) => area.column <= head.column && area.lastColumn >= head.column));
  const starts = within.map(({ row }) => row);
  const ends = within.map(({ lastRow }) => lastRow);
  return { first: Math.max(headRow + gap, within.length === 0 ? 0 : Math.min(...starts)), last: Math.min(end - 1, within.length === 0 ? end : Math.max(...ends)) };
}

interface FoundList {
  readonly pairs: readonly EntryPair[];
  readonly list?: OldList;
  readonly tooLong?: TooLong;
  readonly complete: boolean;
}

function findList(finder: Finder, read: readonly Area[], { section, first, last, columns }: EntryList): FoundList {
  const found = columns.flatMap(({ column, head }): OldColumn[] => {
    const place = head === undefined ? undefined : finder.label(head);
    return place === undefined ? [] : [{ to: column, head: place }];
  });
  const headRow = found[0]?.head.row;
  if (headRow === undefined || found.some(({ head }) => head.row !== headRow)) return { pairs: [], complete: false };
  const rows = oldRows(finder, read, found, headRow, first - (columns[0]?.head?.row ?? first - 1));
  const filled = (row: number): boolean => found.some(({ head }) => valueAt(finder.sheet, row, head.column) !== '');
  let lastFilled = rows.last;
  while (lastFilled >= rows.first && !filled(lastFilled)) lastFilled -= 1;
  const needed = lastFilled - rows.first + 1;
  const pairs = Array.from({ length: Math.max(0, needed) }, (_, index) => index).flatMap((index) => found.map(({ to, head }): EntryPair => ({ to: { row: first + index, column: to }, from: { row: rows.first + index, column: head.column } })));
  const room = last - first + 1;
  return { pairs, list: { headRow, ...rows }, complete: found.length === columns.length, ...(needed > room && { tooLong: { section, rows: needed, room } }) };
}

/** `read`: ranges of this sheet that formulas of the workbook read. */
export function oldEntries(workbook: WorkbookSnapshot, sheet: SheetSnapshot, entries: TemplateEntries, read: readonly Area[]): OldEntries {
  const finder = finderFor(sheet, entries);
  const incomplete = new Set<string>();
  const singles = entries.singles.flatMap((single): EntryPair[] => {
    const from = singlePlace(workbook, finder, single);
    if (from === undefined) incomplete.add(single.section);
    return from === undefined ? [] : [{ to: { row: single.cell.row, column: single.cell.column }, from }];
  });
  const found = entries.lists.map((list) => {
    const one = findList(finder, read, list);
    if (!one.complete) incomplete.add(list.section);
    return one;
  });
  return {
    singles,
    listed: found.flatMap(({ pairs }) => pairs),
    lists: found.flatMap(({ list }) => list ?? []),
    incomplete,
    tooLong: found.flatMap(({ tooLong }) => tooLong ?? []),
    headings: finder.headings,
    isLabel: finder.isLabel,
  };
}
