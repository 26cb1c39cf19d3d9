// What is known of a sheet whose entries are to be carried over: where they stand, and what else is the sheet's own. Its keys
// tell; those of a sheet from before there were keys are found by their words (withoutKeys/).
import { drawn, headMark } from '../../../sheets-templates/keys';
import { isEntry, type SheetTemplate } from '../../../sheets-templates/template';
import type { Area } from '../areas';
import { readFormula } from '../formulaReading';
import { formulaShape } from '../formulaSense';
import { cornerOf, type Keys } from '../keys';
import type { CellPlace, CellValue, SheetSnapshot } from '../snapshot';
import { fixedTexts, textAt } from '../templateLabels';

/** A list as it stands in a sheet: the row of its heads where it has one, and the rows that belong to it. */
export interface OldList {
  readonly headRow: number | undefined;
  readonly first: number;
  readonly last: number;
  /** The column is one of the list, or may be one that the user has added to it. */
  readonly hasColumn: (column: number) => boolean;
}

export interface OldEntries {
  /** By key: single entries, and the cells of lists as "list.column.3", counted from 1. */
  readonly cells: ReadonlyMap<string, CellPlace>;
  readonly lists: readonly OldList[];
  /** A fixed text of the sheet's own stands there. */
  readonly isLabel: (place: CellPlace) => boolean;
  /** A text there could be an entry of the user's. */
  readonly mayBeEntry: (place: CellPlace) => boolean;
  readonly own: OwnContents;
}

/** What the sheet itself may show. */
export interface OwnContents {
  readonly texts: ReadonlySet<string>;
  /** Numbers that are no entries, each behind the words to its left. */
  readonly constants: ReadonlySet<string>;
  /** Columns that the answer of a call fills, by the name of its function. */
  readonly widths: ReadonlyMap<string, number>;
  /** Rows that are kept free for it, where they are known. */
  readonly heights: ReadonlyMap<string, number>;
  readonly isFormula: (text: string) => boolean;
}

const placeKey = ({ row, column }: CellPlace): string => `${row} ${column}`;

/** Cells with a look and no content beside and below a call are for its answer. */
function spillRoom({ cells }: SheetTemplate): Pick<OwnContents, 'widths' | 'heights'> {
  const empty = new Set(cells.filter((cell) => cell.value === undefined && cell.formula === undefined && !isEntry(cell)).map(placeKey));
  const [widths, heights] = [new Map<string, number>(), new Map<string, number>()];
  for (const { row, column, formula } of cells) {
    const name = formula === undefined ? undefined : readFormula(formula).calls[0]?.name;
    if (name === undefined) continue;
    let [width, height] = [1, 1];
    while (empty.has(placeKey({ row, column: column + width }))) width += 1;
    while (empty.has(placeKey({ row: row + height, column }))) height += 1;
    widths.set(name, Math.max(widths.get(name) ?? 1, width));
    // The least of several: what lies beyond it may be another's.
    heights.set(name, Math.min(heights.get(name) ?? height, height));
  }
  return { widths, heights };
}

export const constantKey = (label: string, value: CellValue): string => `${label} ${value}`;

const constantsOf = (template: SheetTemplate): string[] => {
  const texts = fixedTexts(template);
  return template.cells.flatMap((cell) => {
    const { row, column, value } = cell;
    if (typeof value !== 'number' || isEntry(cell)) return [];
    return [constantKey(texts.find((text) => text.row === row && text.column === column - 1)?.text ?? '', value)];
  });
};

/** Texts of the sheet, and those of the chart's data that a host may lay beside it. */
export function ownContents(template: SheetTemplate): OwnContents {
  const { charts, cells } = template;
  const shapes = new Set(cells.flatMap(({ formula }) => (formula === undefined ? [] : [formulaShape(formula)])));
  return {
    texts: new Set([
      ...fixedTexts(template).map(({ text }) => text),
      ...charts.flatMap(({ title, xTitle, series }) => [`Data of the chart "${title}"`, xTitle, ...series.map((one) => one.title)]),
    ]),
    constants: new Set(constantsOf(template)),
    ...spillRoom(template),
    isFormula: (text) => shapes.has(formulaShape(text)),
  };
}

export interface KeyedRows {
  readonly headRow: number | undefined;
  readonly first: number;
  readonly last: number;
  /** Columns by key, as they stand. */
  readonly columns: ReadonlyMap<string, number>;
}

/** The lists that the keys name; a list all of whose columns are gone is not there. */
export function listsOf({ ranges }: Keys): Map<string, KeyedRows> {
  const lists = new Map<string, KeyedRows>();
  for (const [key, head] of ranges) {
    if (!key.endsWith(headMark)) continue;
    const list = key.slice(0, -headMark.length);
    const columns = [...ranges].flatMap(([name, area]): [string, Area][] =>
      name.startsWith(`${list}.`) && name !== key && area !== undefined ? [[name.slice(list.length + 1), area]] : [],
    );
    if (columns.length === 0) continue;
    lists.set(list, {
      headRow: head?.row,
      // Some lists are read with their heads.
      first: Math.max(Math.min(...columns.map(([, { row }]) => row)), (head?.row ?? 0) + 1),
      last: Math.max(...columns.map(([, { lastRow }]) => lastRow)),
      columns: new Map(columns.map(([name, { column }]) => [name, column])),
    });
  }
  return lists;
}

/** Single entries that are still there. */
export function singlesOf({ ranges }: Keys): Map<string, CellPlace> {
  const lists = [...ranges.keys()].filter((key) => key.endsWith(headMark)).map((key) => key.slice(0, -headMark.length + 1));
  const isSingle = (key: string): boolean => !key.startsWith(drawn) && !lists.some((list) => key.startsWith(list));
  return new Map([...ranges].flatMap(([key, area]) => (area !== undefined && isSingle(key) ? [[key, cornerOf(area)] as const] : [])));
}

/** Cells of a list down to the last row in which something stands. */
function listCells(filled: ReadonlySet<string>, [list, { first, last, columns }]: readonly [string, KeyedRows]): [key: string, place: CellPlace][] {
  const isFilled = (row: number): boolean => [...columns.values()].some((column) => filled.has(placeKey({ row, column })));
  let end = last;
  while (end >= first && !isFilled(end)) end -= 1;
  return Array.from({ length: Math.max(0, end - first + 1) }, (_, index) => index).flatMap((index) =>
    [...columns].map(([name, column]): [string, CellPlace] => [`${list}.${name}.${index + 1}`, { row: first + index, column }]),
  );
}

/** Cells with a value, or a formula that may show nothing. */
const filledIn = ({ values, formulas }: SheetSnapshot): Set<string> =>
  new Set([
    ...values.flatMap((line, row) => line.flatMap((value, column) => (value === '' ? [] : [placeKey({ row: row + 1, column: column + 1 })]))),
    ...formulas.map(placeKey),
  ]);

/** `template` is that of today. */
export function keyedEntries(sheet: SheetSnapshot, keys: Keys, template: SheetTemplate): OldEntries {
  const lists = listsOf(keys);
  const singles = singlesOf(keys);
  const filled = filledIn(sheet);
  const columnThen = new Map(keys.columns.flatMap((column, index) => (column === undefined ? [] : [[column, index + 1] as const])));
  const fixed = new Set(fixedTexts(template).map(({ column, text }) => `${column} ${text}`));
  const ownRows = new Set(keys.rows);
  const entryColumns = new Set([...singles.values()].map(({ column }) => column));
  return {
    cells: new Map([...singles, ...[...lists].flatMap((list) => listCells(filled, list))]),
    lists: [...lists.values()].map(({ columns, ...rows }) => {
      const [least, most] = [Math.min(...columns.values()), Math.max(...columns.values())];
      return { ...rows, hasColumn: (column) => (column >= least && column <= most) || !columnThen.has(column) };
    }),
    isLabel: ({ row, column }) => ownRows.has(row) && fixed.has(`${columnThen.get(column) ?? 0} ${textAt(sheet, row, column)}`),
    // Below or above an entry, in a row that the user has put in.
    mayBeEntry: ({ row, column }) => entryColumns.has(column) && !ownRows.has(row),
    own: ownContents(template),
  };
}
