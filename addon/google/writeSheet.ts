// Writes what a sheet cannot get by copying: values and formulas, notes, tints of verdicts, widths, heights, frozen rows,
// protection, charts.
import { eachCell, equalRuns, fewestStrokes, readArea } from '../workbook/areas';
import type { ChartBlock } from './chartData';
import type { Laid } from './stack';
import { writeChart } from './writeChart';
import { lookLayer } from './writeLook';
import { writeProtection, writeVerdictTints } from './writeRules';
import type { GridSize } from './writeStack';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Pixels of a column that nobody has set. */
const freshWidth = 100;

/** Rows grow by themselves to hold wrapped text, but not where it wraps in a merged cell: those get their height. */
function writeHeights(sheet: Sheet, { template: { merges, rowHeights }, grid }: Laid): void {
  const wraps = lookLayer(grid.looks, ({ wrap }) => wrap === true);
  const wrapped = new Set<number>();
  for (const merge of merges.map(readArea)) eachCell(merge, (row, column) => wraps[row - 1]?.[column - 1] === true && wrapped.add(row));
  const heights = wraps.map((_, index) => (wrapped.has(index + 1) ? rowHeights[index + 1] : undefined));
  for (const { start, count, value } of equalRuns(heights)) sheet.setRowHeights(start, count, value);
}

/** The formats of the cells are there already: text such as 09 stays text only in a cell that has the text format. */
export function writeSheet(sheet: Sheet, laid: Laid, blocks: readonly ChartBlock[], { rows, columns }: GridSize): void {
  const { template, grid } = laid;
  const whole = sheet.getRange(1, 1, grid.rows, grid.columns);
  whole.setValues(grid.values.map((line) => [...line]));
  if (grid.notes.some((line) => line.some((note) => note !== ''))) whole.setNotes(grid.notes.map((line) => [...line]));
  writeVerdictTints(sheet, template.verdictRanges.map(readArea));
  for (const { start, count, value } of fewestStrokes(template.columnWidths.slice(0, grid.columns), freshWidth))
    sheet.setColumnWidths(start, count, value);
  writeHeights(sheet, laid);
  for (const column of template.hiddenColumns ?? []) sheet.hideColumns(column);
  if (template.frozenRows > 0) sheet.setFrozenRows(template.frozenRows);
  writeProtection(sheet, grid, rows, columns);
  for (const block of blocks) writeChart(sheet, block);
}
