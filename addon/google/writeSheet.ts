// Writes one template into a fresh sheet: look, rules, chart, then the cells, so that no formula is computed before the
// formats are there. Few calls, each over a whole rectangle.
import type { StyleName } from '../../sheets-templates/look';
import type { SheetTemplate } from '../../sheets-templates/template';
import { chartBlocks, type ChartBlock } from './chartData';
import type { NewNames } from '../workbook/formulaText';
import { sheetGrid, type LinkTo } from './sheetGrid';
import { writeLook } from './writeLook';
import { writeProtection, writeValidations, writeVerdictTints } from './writeRules';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/** What one insertion knows for all its sheets. */
export interface WritingContext {
  readonly names: NewNames;
  readonly linkTo: LinkTo;
  readonly styleOf: (style: StyleName) => GoogleAppsScript.Spreadsheet.TextStyle;
  /** Size of a fresh sheet. */
  readonly fresh: GridSize;
}

function makeRoom(sheet: Sheet, fresh: GridSize, needed: GridSize): GridSize {
  if (needed.rows > fresh.rows) sheet.insertRowsAfter(fresh.rows, needed.rows - fresh.rows);
  if (needed.columns > fresh.columns) sheet.insertColumnsAfter(fresh.columns, needed.columns - fresh.columns);
  return { rows: Math.max(fresh.rows, needed.rows), columns: Math.max(fresh.columns, needed.columns) };
}

/** Colours of Okabe and Ito (2008): blue and vermilion, told apart by any eye and in grey. */
const seriesColors: readonly string[] = ['#0072b2', '#d55e00', '#009e73', '#cc79a7'];

function writeChart(sheet: Sheet, { chart, columns }: ChartBlock): void {
  const options = chart.series.map(({ drawn }) => (drawn === 'line' ? { lineWidth: 2, pointSize: 0 } : { lineWidth: 1, pointSize: 7 }));
  // What only scatter charts have comes first: every other setter gives back a builder of no kind.
  const scatter = sheet.newChart().asScatterChart().setTitle(chart.title).setXAxisTitle(chart.xTitle).setYAxisTitle(chart.yTitle);
  const [first = '', ...others] = columns;
  const start = scatter.setColors(seriesColors.slice(0, chart.series.length)).addRange(sheet.getRange(first));
  const filled = others.reduce((builder, column) => builder.addRange(sheet.getRange(column)), start);
  const made = filled
    .setNumHeaders(1)
    .setOption('series', Object.fromEntries(options.map((option, index) => [index, option])))
    .setOption('width', chart.width)
    .setOption('height', chart.height)
    .setPosition(chart.row, chart.column, 0, 0)
    .build();
  sheet.insertChart(made);
}

export function writeSheet(sheet: Sheet, template: SheetTemplate, { names, linkTo, styleOf, fresh }: WritingContext): void {
  const blocks = chartBlocks(template);
  const grid = sheetGrid(template, blocks.flatMap(({ cells }) => cells), names, linkTo);
  const size = makeRoom(sheet, fresh, grid);
  const whole = sheet.getRange(1, 1, grid.rows, grid.columns);
  writeLook(sheet, template, grid, styleOf);
  // Formats before values: text such as 09 stays text only in a cell that already has the text format.
  whole.setNumberFormats(grid.numberFormats.map((line) => [...line]));
  whole.setValues(grid.values.map((line) => [...line]));
  if (grid.notes.some((line) => line.some((note) => note !== ''))) whole.setNotes(grid.notes.map((line) => [...line]));
  writeValidations(sheet, template, grid, names);
  writeVerdictTints(sheet, template);
  writeProtection(sheet, grid, size.rows, size.columns);
  for (const block of blocks) writeChart(sheet, block);
}
