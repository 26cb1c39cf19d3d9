// How the cells of the whole workbook hang together: how many of our calls there are, and how many lie one behind the
// other on the way to a cell. On the platform each of them is a round trip to a server.
import { rangeFromA1 } from '../../addon/local/engine/a1';
import type { HeadlessWorkbook } from '../../addon/local/engine/headless';
import { address } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { isOurs, readFormula, type FormulaText } from './formulaText';

export interface FormulaCell {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly text: FormulaText;
}

export const formulaCells = (templates: readonly SheetTemplate[]): FormulaCell[] =>
  templates.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column, formula }) =>
      formula === undefined ? [] : [{ sheet: name, cell: address(row, column), formula, text: readFormula(formula) }],
    ),
  );

export const ourCalls = (cells: readonly FormulaCell[]): string[] =>
  cells.flatMap(({ sheet, cell, text }) => text.calls.filter(isOurs).map((name) => `${sheet} ${cell} ${name}`));

const placesIn = (sheet: string, range: string): string[] => {
  const { startRow, startColumn, endRow, endColumn } = rangeFromA1(range);
  return Array.from({ length: endRow - startRow + 1 }, (_, row) =>
    Array.from({ length: endColumn - startColumn + 1 }, (__, column) => `${sheet}!${address(startRow + row + 1, startColumn + column + 1)}`),
  ).flat();
};

/** The most of our calls that lie one behind the other up to the cells of a name (to any cell where none is given), and the cells on that way. */
export function longestChain(
  templates: readonly SheetTemplate[],
  workbook: HeadlessWorkbook,
  target?: string,
): { readonly calls: number; readonly way: readonly string[] } {
  const cells = formulaCells(templates);
  const rangesByName = new Map(templates.flatMap(({ name: sheet, names }) => names.map(({ name, range }) => [name, { sheet, range }] as const)));
  const makers = new Map<string, FormulaCell>();
  for (const cell of cells) for (const place of placesIn(cell.sheet, workbook.filled(cell.sheet, cell.cell))) makers.set(place, cell);
  const known = new Map<FormulaCell, { readonly calls: number; readonly way: readonly string[] }>();

  const reads = ({ sheet, text }: FormulaCell): FormulaCell[] => {
    const named = text.words.flatMap((word) => rangesByName.get(word) ?? []);
    const places = [...text.ranges, ...named].flatMap((one) => placesIn(one.sheet ?? sheet, one.range));
    return [...new Set(places.flatMap((place) => makers.get(place) ?? []))];
  };
  const chainTo = (cell: FormulaCell): { readonly calls: number; readonly way: readonly string[] } => {
    const found = known.get(cell);
    if (found !== undefined) return found;
    known.set(cell, { calls: 0, way: [] });
    const before = reads(cell)
      .map(chainTo)
      .reduce((longest, one) => (one.calls > longest.calls ? one : longest), { calls: 0, way: [] as readonly string[] });
    const here = cell.text.depthOfOurs === 0 ? [] : [`${cell.sheet} ${cell.cell} ${cell.text.calls.filter(isOurs).join(' ')}`];
    const answer = { calls: before.calls + cell.text.depthOfOurs, way: [...before.way, ...here] };
    known.set(cell, answer);
    return answer;
  };
  const cellsOf = (name: string): FormulaCell[] => {
    const wanted = rangesByName.get(name);
    if (wanted === undefined) throw new Error(`no sheet has the name ${name}`);
    return placesIn(wanted.sheet, wanted.range).flatMap((place) => makers.get(place) ?? []);
  };
  const ends = target === undefined ? cells : cellsOf(target);
  return ends.map(chainTo).reduce((longest, one) => (one.calls > longest.calls ? one : longest), { calls: 0, way: [] as readonly string[] });
}
