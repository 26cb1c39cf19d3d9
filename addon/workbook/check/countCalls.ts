// How many calls of our functions a sheet holds, and where one call could do the work of many.
import { address } from '../../../sheets-templates/build';
import type { SheetSnapshot } from '../snapshot';
import { ourCalls, type CheckedBook } from './checkedBook';

export interface CallsInSheet {
  readonly sheet: string;
  readonly calls: number;
  /** Where a column has one call in each row: a sentence for the user. */
  readonly advice?: string;
}

/** Fewer calls below one another than this are no column. */
const minCells = 8;

interface Column {
  readonly name: string;
  readonly column: number;
  readonly rows: readonly number[];
}

function columnsOfCalls({ cells }: CheckedBook, sheet: SheetSnapshot): Column[] {
  const columns = new Map<string, { name: string; column: number; rows: number[] }>();
  for (const cell of cells) {
    if (cell.sheet !== sheet) continue;
    for (const name of new Set(ourCalls(cell).map((call) => call.name))) {
      const found = columns.get(`${name} ${cell.column}`) ?? { name, column: cell.column, rows: [] };
      found.rows.push(cell.row);
      columns.set(`${name} ${cell.column}`, found);
    }
  }
  return [...columns.values()].filter(({ rows }) => rows.length >= minCells);
}

function adviceFor({ name, column, rows }: Column): string {
  const [first, last] = [Math.min(...rows), Math.max(...rows)];
  return `${address(first, column)} to ${address(last, column)} hold ${rows.length} calls of ${name}, one in each row. One call over the whole range, in ${address(first, column)} with the cells below it empty, gives the same answers sooner.`;
}

/** Sheets with calls only, in the order of the workbook. */
export function countCalls(book: CheckedBook): CallsInSheet[] {
  return book.workbook.sheets.flatMap((sheet) => {
    const calls = book.cells.filter((cell) => cell.sheet === sheet).reduce((sum, cell) => sum + ourCalls(cell).length, 0);
    const advice = columnsOfCalls(book, sheet).map(adviceFor).join(' ');
    return calls === 0 ? [] : [{ sheet: sheet.name, calls, ...(advice !== '' && { advice }) }];
  });
}
