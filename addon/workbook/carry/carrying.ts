// Lays the entries found into the entry cells of one sheet of today.
import { address } from '../../../sheets-templates/addresses';
import type { SheetTemplate } from '../../../sheets-templates/template';
import type { CarriedSheet } from '../carriedInputs';
import { contentOf } from './entryContent';
import { listsOf, singlesOf, type KeyedRows } from './oldEntries';
import { headingsOf, sectionOf } from './sections';
import { readFromReport } from '../formerKeys';
import { keysOf } from '../keys';
import type { CellPlace } from '../snapshot';
import { type Carrying, type Source, sourceOf } from './finding';

export interface Part {
  readonly carried: CarriedSheet;
  /** Where its entries came from. */
  readonly from: readonly Source[];
  readonly notes: readonly string[];
  readonly refusals: readonly string[];
}

interface Carried extends Source {
  readonly to: CellPlace;
  /** A formula is not carried, nor its value. */
  readonly leavesFormula?: boolean;
}

/** The rows of a list, one after the other; a column that is new, or comes from elsewhere, may lack some. */
function carryList(carrying: Carrying, template: SheetTemplate, list: string, { first, columns }: KeyedRows): Carried[] {
  const inRow = (row: number): Carried[] =>
    [...columns].flatMap(([name, column]) => {
      const source = sourceOf(carrying, template, `${list}.${name}.${row}`);
      return source === undefined ? [] : [{ ...source, to: { row: first + row - 1, column } }];
    });
  const cells: Carried[] = [];
  for (let row = 1, found = inRow(1); found.length > 0; row += 1, found = inRow(row)) cells.push(...found);
  return cells;
}

/** What a list is called in its sheet. */
const titleOf = (template: SheetTemplate, { headRow, first, columns }: KeyedRows): string =>
  sectionOf(headingsOf(template), { row: headRow ?? first, column: Math.min(...columns.values()) });

/** `name` is what the sheet is called in the document. */
export function carrySheet(carrying: Carrying, template: SheetTemplate, name: string): Part {
  const keys = keysOf(template);
  if (keys === undefined) throw new Error(`"${template.name}" has no keys.`);
  const singles = [...singlesOf(keys)].flatMap(([key, to]): Carried[] => {
    const source = sourceOf(carrying, template, key);
    return source === undefined ? [] : [{ ...source, to, leavesFormula: readFromReport.includes(`${template.key}.${key}`) }];
  });
  const lists = [...listsOf(keys)].map(([key, rows]) => {
    const cells = carryList(carrying, template, key, rows);
    return { rows, cells, needed: Math.max(0, ...cells.map(({ to }) => to.row - rows.first + 1)) };
  });
  const tooLong = lists.filter(({ rows, needed }) => needed > rows.last - rows.first + 1);
  const targets = new Map(template.cells.map((cell) => [address(cell.row, cell.column), cell]));
  const all = [...singles, ...lists.flatMap(({ cells }) => cells)];
  const contents = all.map(({ sheet, place, to, leavesFormula = false }) => ({
    to,
    ...contentOf(sheet, place, targets.get(address(to.row, to.column)), carrying.document, leavesFormula),
  }));
  return {
    carried: { key: template.key, cells: contents.flatMap(({ to, content }) => (content === '' ? [] : [{ ...to, content }])) },
    from: all,
    notes: contents.flatMap(({ note }) => note ?? []),
    refusals: [
      ...contents.flatMap(({ refusal }) => refusal ?? []),
      ...tooLong.map(
        ({ rows, needed }) =>
          `"${name}": the list under "${titleOf(template, rows)}" has ${needed} rows, and today's sheet has room for ${rows.last - rows.first + 1}. Shorten it, then ask again.`,
      ),
    ],
  };
}
