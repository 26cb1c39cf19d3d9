// What the formulas of a sheet say about where its rows and columns went: a spreadsheet rewrites the ranges in a formula
// when lines are inserted or removed, so a range of the template and the same range in the formula of today are a pair.
import { address } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { readFormula, type Reference } from './formulaReading';
import { formulaShape } from './formulaSense';
import { sameName } from './readPlace';
import type { CellPlace, FormulaCell, SheetSnapshot } from './snapshot';

/** Where something is today, to how many formulas say so. */
export type Votes<Where> = ReadonlyMap<Where, number>;

export interface FormulaVotes {
  readonly row: ReadonlyMap<number, Votes<number>>;
  readonly column: ReadonlyMap<number, Votes<number>>;
  /** Cells, as the text of their address. */
  readonly cell: ReadonlyMap<string, Votes<string>>;
}

interface ReadFormulaCell extends CellPlace {
  readonly references: readonly Reference[];
}

/** A sheet of ours with its template: formulas of the template, each with the one of today that says the same about other cells. */
export interface PairedSheet {
  readonly template: SheetTemplate;
  readonly sheet: SheetSnapshot;
  readonly formulas: readonly (readonly [before: ReadFormulaCell, now: ReadFormulaCell])[];
}

/** Formulas by what they say when their ranges and names are left open, in reading order. */
function byShape(formulas: readonly FormulaCell[]): Map<string, FormulaCell[]> {
  const shapes = new Map<string, FormulaCell[]>();
  for (const cell of [...formulas].sort((one, other) => one.row - other.row || one.column - other.column)) {
    const shape = formulaShape(cell.text);
    shapes.set(shape, [...(shapes.get(shape) ?? []), cell]);
  }
  return shapes;
}

/** Shapes of which there are more or fewer than before say nothing. */
export function pairedSheet(template: SheetTemplate, sheet: SheetSnapshot): PairedSheet {
  const before = byShape(template.cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [{ row, column, text: formula }])));
  const now = byShape(sheet.formulas);
  const read = ({ row, column, text }: FormulaCell): ReadFormulaCell => ({ row, column, references: readFormula(text).references });
  const formulas = [...before].flatMap(([shape, cells]) => {
    const cellsNow = now.get(shape) ?? [];
    return cellsNow.length !== cells.length ? [] : cells.flatMap((cell, index) => {
      const other = cellsNow[index];
      return other === undefined ? [] : [[read(cell), read(other)] as const];
    });
  });
  return { template, sheet, formulas };
}

type Corner = readonly [row: number, column: number];

/** Corners of a reference that lies on the sheet `wanted`, as seen from the sheet `home`; nothing else. */
const cornersOn = (wanted: string, home: string, { sheet = home, area }: Reference): readonly Corner[] =>
  area === undefined || !sameName(sheet, wanted) ? [] : [[area.row, area.column], [area.lastRow, area.lastColumn]];

/** What one formula says of a sheet: corners then and now, and its own cell where it stands on that sheet. */
function cornerPairs({ template, sheet }: PairedSheet, home: PairedSheet, [before, now]: PairedSheet['formulas'][number]): (readonly [Corner, Corner])[] {
  const own: (readonly [Corner, Corner])[] = home.sheet === sheet ? [[[before.row, before.column], [now.row, now.column]]] : [];
  const read = before.references.flatMap((reference, index) => {
    const other = now.references[index];
    const cornersNow = other === undefined ? [] : cornersOn(sheet.name, home.sheet.name, other);
    return cornersOn(template.name, home.template.name, reference).flatMap((corner, at) => {
      const cornerNow = cornersNow[at];
      return cornerNow === undefined ? [] : [[corner, cornerNow] as const];
    });
  });
  return [...own, ...read];
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

/** `readers`: the sheets whose formulas are heard, the sheet itself among them. */
export function formulaVotes(of: PairedSheet, readers: readonly PairedSheet[]): FormulaVotes {
  const [row, column, cell]: [Ballot<number>, Ballot<number>, Ballot<string>] = [new Map(), new Map(), new Map()];
  for (const home of readers) {
    for (const formulas of home.formulas) {
      const pairs = cornerPairs(of, home, formulas);
      vote(row, pairs.map(([[from], [to]]) => [from, to]));
      vote(column, pairs.map(([[, from], [, to]]) => [from, to]));
      vote(cell, pairs.map(([from, to]) => [address(...from), address(...to)]));
    }
  }
  return { row, column, cell };
}

/** What most formulas say, where no other answer has as many votes. */
export function mostVoted<Where>(votes: Votes<Where> | undefined): { readonly where: Where; readonly votes: number } | undefined {
  const [first, second] = [...(votes ?? [])].sort(([, one], [, other]) => other - one);
  return first === undefined || first[1] === second?.[1] ? undefined : { where: first[0], votes: first[1] };
}
