// What the formulas of a sheet say about where its rows and columns went: a spreadsheet rewrites the ranges in a formula
// when lines are inserted or removed, so a range of the template and the same range in the formula of today are a pair.
import type { SheetTemplate } from '../../sheets-templates/template';
import { readFormula } from './formulaReading';
import { formulaSense } from './formulaSense';
import { sameName } from './readPlace';
import type { FormulaCell, SheetSnapshot } from './snapshot';

/** Line of today to how many formulas say so. */
export type Votes = ReadonlyMap<number, number>;

export interface FormulaVotes {
  readonly row: ReadonlyMap<number, Votes>;
  readonly column: ReadonlyMap<number, Votes>;
}

/** Formulas by what they say when their ranges are left open, in reading order. */
function byShape(formulas: readonly FormulaCell[], word: (text: string) => string): Map<string, FormulaCell[]> {
  const shapes = new Map<string, FormulaCell[]>();
  for (const cell of [...formulas].sort((one, other) => one.row - other.row || one.column - other.column)) {
    const shape = formulaSense(cell.text, { word, reference: () => '@' });
    shapes.set(shape, [...(shapes.get(shape) ?? []), cell]);
  }
  return shapes;
}

/** Corners of the ranges on the formula's own sheet, and the formula's own cell; undefined for what lies elsewhere. */
function placesIn({ row, column, text }: FormulaCell, sheetName: string): readonly (readonly [row: number, column: number] | undefined)[] {
  const corners = readFormula(text).references.flatMap(({ sheet, area }) => {
    if (area === undefined || (sheet !== undefined && !sameName(sheet, sheetName))) return [undefined, undefined];
    return [[area.row, area.column] as const, [area.lastRow, area.lastColumn] as const];
  });
  return [[row, column], ...corners];
}

function vote(votes: Map<number, Map<number, number>>, before: number, now: number): void {
  const of = votes.get(before) ?? new Map<number, number>();
  of.set(now, (of.get(now) ?? 0) + 1);
  votes.set(before, of);
}

export function formulaVotes({ name, cells }: SheetTemplate, sheet: SheetSnapshot): FormulaVotes {
  const written = cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [{ row, column, text: formula }]));
  const calledNow = new Map(Object.entries(sheet.mark?.names ?? {}));
  const before = byShape(written, (word) => calledNow.get(word) ?? word);
  const now = byShape(sheet.formulas, (word) => word);
  const [row, column] = [new Map<number, Map<number, number>>(), new Map<number, Map<number, number>>()];
  for (const [shape, cellsBefore] of before) {
    const cellsNow = now.get(shape) ?? [];
    if (cellsNow.length !== cellsBefore.length) continue;
    cellsBefore.forEach((cell, index) => {
      const other = cellsNow[index];
      if (other === undefined) return;
      const placesNow = placesIn(other, sheet.name);
      placesIn(cell, name).forEach((place, at) => {
        const placeNow = placesNow[at];
        if (place === undefined || placeNow === undefined) return;
        vote(row, place[0], placeNow[0]);
        vote(column, place[1], placeNow[1]);
      });
    });
  }
  return { row, column };
}

/** What most formulas say, where no other answer has as many votes. */
export function mostVoted(votes: Votes | undefined): { readonly line: number; readonly votes: number } | undefined {
  const [first, second] = [...(votes ?? [])].sort(([, one], [, other]) => other - one);
  return first === undefined || first[1] === second?.[1] ? undefined : { line: first[0], votes: first[1] };
}
