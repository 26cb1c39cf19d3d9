// A change of cells that says what stood there before: it is made only where that still stands, and turned round it takes itself back.
import type { CellPlace, CellValue, FormulaCell, SheetSnapshot } from './snapshot';

/** A text stays a text, whatever it begins with. */
export type CellContent = CellValue | { readonly formula: string };

/** A rectangle of cells. */
export interface CellsChanged {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: readonly (readonly CellContent[])[];
  readonly after: readonly (readonly CellContent[])[];
}

/** Whole rows that are put in, or taken out, in the step that changes cells. */
export interface RowsMoved {
  readonly sheet: string;
  /** The first of them. */
  readonly row: number;
  readonly count: number;
  /** The formula with the keys of the sheet as it was seen: while it holds the same, every list stands where it stood. */
  readonly keys: FormulaCell;
}

/** Cells to be changed, after rows were put in for them, or before rows are taken out; the changes tell places between the two. */
export interface CellsStep {
  readonly changes: readonly CellsChanged[];
  readonly rowsIn?: RowsMoved;
  readonly rowsOut?: RowsMoved;
}

/** What a change sees before the rows are in: the cells above them, and those below, where these stand until then. */
export function seenBefore(change: CellsChanged, rowsIn: RowsMoved | undefined): CellsChanged[] {
  if (rowsIn?.sheet !== change.sheet) return [change];
  const part = (from: number, to: number, row: number): CellsChanged => ({
    ...change,
    row,
    before: change.before.slice(from, to),
    after: change.after.slice(from, to),
  });
  const above = Math.max(0, rowsIn.row - change.row);
  const below = Math.max(0, above + rowsIn.count - Math.max(0, change.row - rowsIn.row));
  return [part(0, above, change.row), part(below, Infinity, change.row + below - rowsIn.count)].filter(({ before }) => before.length > 0);
}

export const turnedRound = (changes: readonly CellsChanged[]): CellsChanged[] =>
  [...changes].reverse().map(({ before, after, ...place }) => ({ ...place, before: after, after: before }));

const same = (one: CellContent | undefined, other: CellContent | undefined): boolean =>
  typeof one === 'object' && typeof other === 'object' ? one.formula === other.formula : one === other;

/** Whether cells hold what a change was made for. */
export const standsStill = ({ before }: Pick<CellsChanged, 'before'>, now: readonly (readonly CellContent[])[]): boolean =>
  before.every((line, row) => line.every((content, column) => same(content, now[row]?.[column])));

/** The sentence of a host that finds something else. */
export const changedMeanwhile = (sheet: string): string => `Cells of "${sheet}" were changed since you looked, so nothing was written. Look again.`;

/** Whether rows that are to go hold more than what the changes empty; `contents` are whole rows, from the first column on. */
export function holdMore({ sheet, row }: RowsMoved, contents: readonly (readonly CellContent[])[], changes: readonly CellsChanged[]): boolean {
  const emptied = (down: number, across: number): boolean =>
    changes.some((one) => one.sheet === sheet && one.after[down - one.row]?.[across - one.column] === '');
  return contents.some((line, down) => line.some((content, across) => content !== '' && !emptied(row + down, 1 + across)));
}

export const rowsFilled = (sheet: string): string =>
  `Something stands by now in the rows of "${sheet}" that were put in, so they were not taken out and nothing was changed. Empty them, or undo by hand.`;

/** What a sheet holds in a row from one column to another; formulas as such. */
export function contentsOf({ values, formulas }: SheetSnapshot, row: number, column: number, count: number): CellContent[] {
  return Array.from({ length: count }, (_, index): CellContent => {
    const formula = formulas.find((one) => one.row === row && one.column === column + index);
    return formula === undefined ? (values[row - 1]?.[column - 1 + index] ?? '') : { formula: formula.text };
  });
}

/** The sheet with something else in one cell. Answers stay as they were until the sheet is read again. */
export function withContent(sheet: SheetSnapshot, { row, column }: CellPlace, content: CellContent): SheetSnapshot {
  const isFormula = typeof content === 'object';
  const others = sheet.formulas.filter((one) => one.row !== row || one.column !== column);
  const width = Math.max(column, sheet.values[0]?.length ?? 0);
  const values = Array.from({ length: Math.max(row, sheet.values.length) }, (_, down) =>
    Array.from({ length: width }, (__, across) => sheet.values[down]?.[across] ?? ''),
  );
  const line = values[row - 1];
  if (line !== undefined) line[column - 1] = isFormula ? '' : content;
  return { ...sheet, values, formulas: isFormula ? [...others, { row, column, text: content.formula }] : others };
}

export const cellsIn = (changes: readonly CellsChanged[]): number =>
  changes.reduce(
    (sum, { before, after }) => sum + before.flatMap((line, row) => line.filter((content, column) => !same(content, after[row]?.[column]))).length,
    0,
  );
