// The way from before: sheets of versions 1 and 2 carry no keys, so their entries are found by the words around them as they
// stood in version 2 (version2.json, which is never changed), once, when they are brought up to date. Goes when no such sheets are left.
import { readArea, type Area } from '../areas';
import { sectionOf, type Heading } from '../carry/sections';
import type { OldEntries, OldList, OwnContents } from '../carry/oldEntries';
import { placeOf } from '../readPlace';
import type { CellPlace, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { textAt, valueAt } from '../templateLabels';
import { columnsNow } from './columnsNow';
import { headingsIn } from './headingsIn';
import { ownOfVersion2, textsOf, version2Of, type Label, type Version2Sheet } from './version2';

interface Finder {
  readonly sheet: SheetSnapshot;
  readonly headings: readonly Heading[];
  readonly columnNow: (column: number) => number | undefined;
  /** Where a fixed text of version 2, by its cell, stands now. */
  readonly label: (cell: string) => CellPlace | undefined;
  readonly isLabel: (place: CellPlace) => boolean;
}

const keyOf = ({ row, column }: CellPlace): string => `${row} ${column}`;

/** Places of texts in the sheet, by the text, row by row. */
function placesOfTexts(sheet: SheetSnapshot, texts: ReadonlySet<string>): Map<string, CellPlace[]> {
  const places = new Map<string, CellPlace[]>();
  sheet.values.forEach((line, row) =>
    line.forEach((_, column) => {
      const text = textAt(sheet, row + 1, column + 1);
      if (texts.has(text)) places.set(text, [...(places.get(text) ?? []), { row: row + 1, column: column + 1 }]);
    }),
  );
  return places;
}

/**
 * A text is found where its section has as many of it as version 2 has there; else where its column has; else where it
 * is the only one in both. Answers and entries may read like a label, so the counts must agree.
 */
function finderFor(sheet: SheetSnapshot, version2: Version2Sheet): Finder {
  const { headings: wanted, labels, fixed } = textsOf(version2);
  const headings = headingsIn(sheet, wanted);
  const columnNow = columnsNow(labels, sheet);
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
  const found = new Map(
    labels.flatMap((label) => {
      const place = find(label);
      return place === undefined ? [] : [[keyOf(label), place] as const];
    }),
  );
  const standing = new Set([...found.values()].map(keyOf));
  return { sheet, headings, columnNow, label: (cell) => found.get(keyOf(readArea(cell))), isLabel: (place) => standing.has(keyOf(place)) };
}

function singlePlace(
  workbook: WorkbookSnapshot,
  { sheet, columnNow, label: find }: Finder,
  { cell: cellText, label: labelText, head, name }: Version2Sheet['singles'][number],
): CellPlace | undefined {
  const named = name === undefined ? undefined : placeOf(workbook, sheet.name, sheet.mark?.names[name] ?? name);
  if (named !== undefined && named.sheet === sheet) return { row: named.area.row, column: named.area.column };
  const beside = find(labelText);
  if (beside === undefined) return undefined;
  const [cell, label] = [readArea(cellText), readArea(labelText)];
  const above = head === undefined ? undefined : find(head);
  const sameSide = (column: number): boolean => column > beside.column === cell.column > label.column && column !== beside.column;
  if (above !== undefined && above.row < beside.row && sameSide(above.column)) return { row: beside.row, column: above.column };
  const moved = columnNow(label.column) === beside.column ? columnNow(cell.column) : undefined;
  return { row: beside.row, column: moved ?? beside.column + cell.column - label.column };
}

interface OldColumn {
  readonly key: string;
  readonly head: CellPlace;
}

/** From below the heads to where the section, or another text of the sheet, begins; less where formulas read less. */
function oldRows(
  { sheet, headings, isLabel }: Finder,
  read: readonly Area[],
  columns: readonly OldColumn[],
  headRow: number,
  gap: number,
): Pick<OldList, 'first' | 'last'> {
  const goesOn = (row: number): boolean =>
    columns.every(({ head }) => {
      const place = { row, column: head.column };
      return sectionOf(headings, place) === sectionOf(headings, head) && !isLabel(place);
    });
  let end = headRow + 1;
  while (end <= sheet.values.length && goesOn(end)) end += 1;
  const within = read.filter(
    (area) =>
      area.lastRow > area.row &&
      area.lastRow > headRow &&
      area.row < end &&
      columns.some(({ head }) => area.column <= head.column && area.lastColumn >= head.column),
  );
  const starts = within.map(({ row }) => row);
  const ends = within.map(({ lastRow }) => lastRow);
  return {
    first: Math.max(headRow + gap, within.length === 0 ? 0 : Math.min(...starts)),
    last: Math.min(end - 1, within.length === 0 ? end : Math.max(...ends)),
  };
}

interface FoundList {
  readonly cells: readonly (readonly [key: string, place: CellPlace])[];
  readonly list?: OldList;
  readonly complete: boolean;
}

function findList(finder: Finder, read: readonly Area[], { key: list, first, columns }: Version2Sheet['lists'][number]): FoundList {
  const found = columns.flatMap(({ key, head }): OldColumn[] => {
    const place = finder.label(head);
    return place === undefined ? [] : [{ key, head: place }];
  });
  const headRow = found[0]?.head.row;
  if (headRow === undefined || found.some(({ head }) => head.row !== headRow)) return { cells: [], complete: false };
  const rows = oldRows(finder, read, found, headRow, first - readArea(columns[0]?.head ?? `A${first - 1}`).row);
  const isFilled = (row: number): boolean => found.some(({ head: { column } }) => valueAt(finder.sheet, row, column) !== '');
  let end = rows.last;
  while (end >= rows.first && !isFilled(end)) end -= 1;
  const cells = found.flatMap(({ key, head: { column } }) =>
    Array.from(
      { length: Math.max(0, end - rows.first + 1) },
      (_, index) => [`${list}.${key}.${index + 1}`, { row: rows.first + index, column }] as const,
    ),
  );
  return { cells, list: { headRow, ...rows, hasColumn: () => true }, complete: found.length === columns.length };
}

/**
 * A text is data in a column of single entries of its section; and in a section with an entry that was not found, unless something
 * stands to its right, as it does beside a label.
 */
function mayBeEntry({ sheet, headings }: Finder, singles: readonly CellPlace[], incomplete: ReadonlySet<string>): OldEntries['mayBeEntry'] {
  const columns = new Set(singles.map((from) => `${sectionOf(headings, from)} ${from.column}`));
  const isAlone = ({ row, column }: CellPlace): boolean => [1, 2, 3].every((step) => textAt(sheet, row, column + step) === '');
  return (place) => {
    const section = sectionOf(headings, place);
    return columns.has(`${section} ${place.column}`) || (incomplete.has(section) && isAlone(place));
  };
}

/** `read`: ranges of this sheet that formulas of the workbook read; `own`: what the sheet of today may show. */
export function wordEntries(workbook: WorkbookSnapshot, sheet: SheetSnapshot, read: readonly Area[], own: OwnContents): OldEntries | undefined {
  const version2 = version2Of(sheet);
  if (version2 === undefined) return undefined;
  const finder = finderFor(sheet, version2);
  const { headings: wanted } = textsOf(version2);
  const incomplete = new Set<string>();
  const missing = (cell: string): void => void incomplete.add(sectionOf(wanted, readArea(cell)));
  const singles = version2.singles.flatMap((single) => {
    const from = singlePlace(workbook, finder, single);
    if (from === undefined) missing(single.cell);
    return from === undefined ? [] : [[single.key, from] as const];
  });
  const found = version2.lists.map((list) => {
    const one = findList(finder, read, list);
    if (!one.complete) missing(list.columns[0]?.head ?? 'A1');
    return one;
  });
  const ofVersion2 = ownOfVersion2(version2, own);
  return {
    cells: new Map([...singles, ...found.flatMap(({ cells }) => cells)]),
    lists: found.flatMap(({ list }) => list ?? []),
    isLabel: finder.isLabel,
    mayBeEntry: mayBeEntry(
      finder,
      singles.map(([, place]) => place),
      incomplete,
    ),
    own: { ...ofVersion2, texts: new Set([...ofVersion2.texts, ...finder.headings.map(({ text }) => text)]) },
  };
}
