// The identity of what stands in a sheet. Each sheet of ours has a hidden last column, and in its first row one formula that
// shows "Rampwright keys" and names, without ever reading them, the cells of the sheet: every entry and every column of a list
// under a key of its own, what pictures are drawn from, the computed cells, and the rows and columns. The spreadsheet itself
// rewrites the ranges of a formula when rows, columns or cells are put in, taken out or moved, and copies them with the sheet;
// so the formula tells at any time where each of them stands, whatever words are beside it.
// A key is never reworded: keys.generated.txt lists them all, and a key that goes there is an entry that an update drops.
import { address, area } from './addresses';
import type { Block } from './layout';
import { isEntry, type DeclaredSheet, type SheetTemplate, type TemplateCell } from './template';

export interface KeyedList {
  readonly head: number;
  /** Room for entries, tinted or not. */
  readonly first: number;
  readonly last: number;
  /** Rows that formulas read, where these are more: heads above, a blank row below. */
  readonly read?: Block;
  /** Columns by key. */
  readonly columns: Readonly<Record<string, number>>;
}

export interface TemplateKeys {
  /** Single entries: cells by key. */
  readonly entries: Readonly<Record<string, string>>;
  readonly lists: Readonly<Record<string, KeyedList>>;
}

/** What the formula shows. */
export const keysShown = 'Rampwright keys';
/** What the formula names beside keys: in the order of the template, so that sheet and template of one version are pairs. */
export const unnamed = { rows: '@rows', columns: '@columns', answers: '@answers' } as const;
/** Behind the name of a list: its heads. Its columns are "list.column". */
export const headMark = '.@head';

/** The entries in rows that have a name: that is their key; of several in one row each has the name of its column too. */
export function entriesIn(
  cells: readonly TemplateCell[],
  rows: Readonly<Record<string, number | Block>>,
  columns: Readonly<Record<number, string>> = {},
): Record<string, string> {
  const entries = cells.filter(isEntry);
  return Object.fromEntries(
    Object.entries(rows).flatMap(([name, row]) => {
      const here = entries.filter((cell) => cell.row === row);
      return here.map((cell) => [here.length === 1 ? name : `${name}.${columns[cell.column] ?? ''}`, address(cell.row, cell.column)] as const);
    }),
  );
}

/** Keys of columns side by side. */
export const columnsFrom = (first: number, ...keys: readonly string[]): Record<string, number> =>
  Object.fromEntries(keys.map((key, index) => [key, first + index]));

type Named = readonly [key: string, ranges: readonly string[]];

function listed({ keys }: DeclaredSheet): Named[] {
  return Object.entries(keys.lists).flatMap(([list, { head, first, last, read = { first, last }, columns }]) => {
    const of = Object.entries(columns);
    return [
      [`${list}${headMark}`, [address(head, of[0]?.[1] ?? 1)]] as const,
      ...of.map(([key, column]) => [`${list}.${key}`, [area(read.first, column, read.last, column)]] as const),
    ];
  });
}

/** Before the keys of what is drawn, so that none is taken for an entry. */
export const drawn = 'drawn.';

/** Ranges of the sheet's charts and pictures, in their order. */
const drawnKeys = ({ charts, pictures = [] }: Pick<SheetTemplate, 'charts' | 'pictures'>): Map<string, string> =>
  new Map([
    ...charts.flatMap(({ series }, chart) =>
      series.flatMap(({ x, y }, index) => [
        [`${drawn}chart${chart + 1}.x${index + 1}`, x] as const,
        [`${drawn}chart${chart + 1}.y${index + 1}`, y] as const,
      ]),
    ),
    ...pictures.flatMap(({ drawn: { kind, from } }) => Object.entries(from).map(([part, range]) => [`${drawn}${kind}.${part}`, range] as const)),
  ]);

/** A range in a formula, and the sheet before it. */
const ranges = /"(?:[^"]|"")*"|(?:'([^']*)'!)?(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)(?![\w(])/g;

/** Rows of each sheet at which a range of some formula begins or ends. */
function rowsRead(sheets: readonly DeclaredSheet[]): Map<string, Set<number>> {
  const rows = new Map(sheets.map(({ name }) => [name, new Set<number>()]));
  const read = (home: string, formula: string): void => {
    formula.replace(ranges, (whole: string, named?: string, range = '') => {
      for (const corner of range.split(':')) if (corner !== '') rows.get(named ?? home)?.add(Number(corner.replace(/\D/g, '')));
      return whole;
    });
  };
  for (const { name, cells } of sheets) for (const { formula } of cells) if (formula !== undefined) read(name, formula);
  return rows;
}

/** The rows whose place must be known: those with words or formulas in them, and the ends of what is read. */
function rowsOf({ cells, rows }: DeclaredSheet, read: ReadonlySet<number>): number[] {
  const written = cells.filter((cell) => cell.formula !== undefined || (cell.value !== undefined && !isEntry(cell))).map(({ row }) => row);
  return [...new Set([...written, ...read])].filter((row) => row <= rows).sort((one, other) => one - other);
}

/** Excel takes no more arguments of one call, if the document is ever saved for it. */
const maxArguments = 200;

function keyFormula(sheet: DeclaredSheet, column: number, read: ReadonlySet<number>): string {
  const named: readonly Named[] = [
    // Its own row and column, the first and the last, it tells by where it stands.
    [
      unnamed.rows,
      rowsOf(sheet, read)
        .filter((row) => row > 1)
        .map((row) => address(row, column)),
    ],
    [unnamed.columns, Array.from({ length: column - 1 }, (_, index) => address(1, index + 1))],
    [unnamed.answers, sheet.cells.filter((cell) => cell.formula !== undefined && !isEntry(cell)).map((cell) => address(cell.row, cell.column))],
    ...Object.entries(sheet.keys.entries).map(([key, cell]) => [key, [cell]] as const),
    ...listed(sheet),
    ...[...drawnKeys(sheet)].map(([key, range]) => [key, [range]] as const),
  ];
  const given = named.flatMap(([key, ranges]) => [`"${key}"`, ...ranges]);
  const calls = Array.from({ length: Math.ceil(given.length / maxArguments) }, (_, index) =>
    given.slice(index * maxArguments, (index + 1) * maxArguments).join(','),
  );
  return `=IF(TRUE,"${keysShown}",${calls.map((some) => `COUNTA(${some})`).join('+')})`;
}

/** The sheets with their keys written down. */
export function withKeys(sheets: readonly DeclaredSheet[]): SheetTemplate[] {
  const read = rowsRead(sheets);
  return sheets.map((sheet) => {
    const column = sheet.columns + 1;
    const formula = keyFormula(sheet, column, read.get(sheet.name) ?? new Set());
    const template: SheetTemplate & Partial<DeclaredSheet> = {
      ...sheet,
      columns: column,
      columnWidths: [...sheet.columnWidths, 100],
      hiddenColumns: [column],
      cells: [...sheet.cells, { row: 1, column, formula, style: 'plain' }],
    };
    delete template.keys;
    return template;
  });
}
