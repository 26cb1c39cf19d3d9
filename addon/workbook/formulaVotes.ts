// What the formulas of a sheet say about where its rows and columns went: a spreadsheet rewrites the ranges in a formula
// when lines are inserted or removed, so a range of the template and the same range in the formula of today are a pair.
import { address } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { readFormula } from './formulaReading';
import { formulaSense } from './formulaSense';
import { sameName } from './readPlace';
import type { FormulaCell, SheetSnapshot } from './snapshot';

/** Where something is today, to how many formulas say so. */
export type Votes<Where> = ReadonlyMap<Where, number>;

export interface FormulaVotes {
  readonly row: ReadonlyMap<number, Votes<number>>;
  readonly column: ReadonlyMap<number, Votes<number>>;
  /** Cells, as the text of their address. */
  readonly cell: ReadonlyMap<string, Votes<string>>;
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

type Ballot<Where> = Map<Where, Map<Where, number>>;

function vote<Where>(ballot: Ballot<Where>, pairs: readonly (readonly [before: Where, now: Where])[]): void {
  const cast = new Set<string>();
  for (const [before, now] of pairs) {
    const key = `${String(before)} ${String(now)}`;
    // A formula has one voice, however often it reads a cell.
    if (cast.has(key)) continue;
    cast.add(key);
    const votes = ballot.get(before) ?? new Map<Where, number>();
    votes.set(now, (votes.get(now) ?? 0) + 1);
    ballot.set(before, votes);
  }
}

export function formulaVotes({ name, cells }: SheetTemplate, sheet: SheetSnapshot): FormulaVotes {
  const written = cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [{ row, column, text: formula }]));
  const calledNow = new Map(Object.entries(sheet.mark?.names ?? {}));
  const before = byShape(written, (word) => calledNow.get(word) ?? word);
  const now = byShape(sheet.formulas, (word) => word);
  const [row, column, cell]: [Ballot<number>, Ballot<number>, Ballot<string>] = [new Map(), new Map(), new Map()];
  for (const [shape, cellsBefore] of before) {
    const cellsNow = now.get(shape) ?? [];
    if (cellsNow.length !== cellsBefore.length) continue;
    cellsBefore.forEach((one, index) => {
      const other = cellsNow[index];
      const placesNow = other === undefined ? [] : placesIn(other, sheet.name);
      const pairs = placesIn(one, name).flatMap((place, at) => {
        const placeNow = placesNow[at];
        return place === undefined || placeNow === undefined ? [] : [[place, placeNow] as const];
      });
      vote(row, pairs.map(([[from], [to]]) => [from, to]));
      vote(column, pairs.map(([[, from], [, to]]) => [from, to]));
      vote(cell, pairs.map(([from, to]) => [address(...from), address(...to)]));
    });
  }
  return { row, column, cell };
}

/** What most formulas say, where no other answer has as many votes. */
export function mostVoted<Where>(votes: Votes<Where> | undefined): { readonly where: Where; readonly votes: number } | undefined {
  const [first, second] = [...(votes ?? [])].sort(([, one], [, other]) => other - one);
  return first === undefined || first[1] === second?.[1] ? undefined : { where: first[0], votes: first[1] };
}
