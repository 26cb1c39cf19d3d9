// Writes the sheets of a plan into fresh sheets, with their marks: first what is copied, then what each has of its own,
// so that no formula is computed before the formats are there. The rules of entries are not among it: they come last.
import type { SheetKey } from '../../sheets-templates/template';
import { markFor, type InsertionPlan } from '../workbook/insertionPlan';
import { chartBlocks } from './chartData';
import { writeMark } from './documentState';
import { sheetGrid } from './sheetGrid';
import { stackOf } from './stack';
import { textStyles } from './writeLook';
import { writeSheet } from './writeSheet';
import { writeStack, type GridSize } from './writeStack';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The identifier of a sheet of the plan, asked for only where it is wanted, and once. */
function identifiers({ added, reused }: InsertionPlan, sheets: readonly Sheet[]): (key: SheetKey) => string | undefined {
  const known = new Map<SheetKey, string | undefined>();
  return (key) => {
    if (!known.has(key)) {
      const inserted = sheets[added.findIndex(({ template }) => template.key === key)]?.getSheetId();
      known.set(key, inserted === undefined ? reused.find((one) => one.key === key)?.sheetId : String(inserted));
    }
    return known.get(key);
  };
}

/** Size of the sheet afterwards. */
function makeRoom(sheet: Sheet, fresh: GridSize, needed: GridSize): GridSize {
  if (needed.rows > fresh.rows) sheet.insertRowsAfter(fresh.rows, needed.rows - fresh.rows);
  if (needed.columns > fresh.columns) sheet.insertColumnsAfter(fresh.columns, needed.columns - fresh.columns);
  return { rows: Math.max(fresh.rows, needed.rows), columns: Math.max(fresh.columns, needed.columns) };
}

/** `sheets` are fresh ones, one for each sheet that the plan adds; `writing` hears of each before it is written; `set` is that of sheets already there, with which these belong together. */
export function writeSheets(plan: InsertionPlan, sheets: readonly Sheet[], writing: (index: number) => void, set?: string): void {
  const [first] = sheets;
  const last = plan.added[plan.added.length - 1];
  if (first === undefined || last === undefined) return;
  const { names } = plan;
  const identifierOf = identifiers(plan, sheets);
  const linkTo = (key: SheetKey): string | undefined => (identifierOf(key) === undefined ? undefined : `#gid=${identifierOf(key)}`);
  const all = plan.added.map(({ template }) => {
    const blocks = chartBlocks(template);
    return {
      template,
      blocks,
      grid: sheetGrid(
        template,
        blocks.flatMap(({ cells }) => cells),
        names,
        linkTo,
      ),
    };
  });
  const fresh = { rows: first.getMaxRows(), columns: first.getMaxColumns() };
  const stack = stackOf(all, fresh.columns);
  const sizes = sheets.map((sheet, index) => makeRoom(sheet, fresh, index === stack.carrier ? stack : (all[index]?.grid ?? fresh)));
  writeStack(stack, sheets, textStyles());
  // The last of them is asked for its identifier anyway, by a link.
  const ownSet = set ?? identifierOf(last.template.key) ?? '';
  all.forEach(({ template, blocks, grid }, index) => {
    const [sheet, size] = [sheets[index], sizes[index]];
    if (sheet === undefined || size === undefined) return;
    writing(index);
    const gone = index === stack.carrier ? stack.rows - grid.rows : 0;
    writeSheet(sheet, { template, grid }, blocks, { rows: size.rows - gone, columns: size.columns });
    writeMark(sheet, markFor(template, ownSet, names), identifierOf(template.key));
  });
}
