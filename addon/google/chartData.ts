// A scatter chart of Google Sheets has one column of x for all its series, while a template's series each have their own.
// So the points of a chart are laid out again beside the sheet: all x in one column, each series' y in its own.
import { address } from '../../sheets-templates/addresses';
import type { ChartSeries, ScatterChart, SheetTemplate, TemplateCell } from '../../sheets-templates/template';
import { areaText, readArea, type Area } from '../workbook/areas';

export interface ChartBlock {
  readonly chart: ScatterChart;
  /** One-column ranges with a header each: x, then the y of each series. */
  readonly columns: readonly string[];
  readonly cells: readonly TemplateCell[];
}

interface Point {
  readonly x: string;
  readonly y: string;
}

function pointsOf({ x, y }: ChartSeries): Point[] {
  const [xs, ys] = [readArea(x), readArea(y)];
  const height = xs.lastRow - xs.row + 1;
  if (ys.lastRow - ys.row + 1 !== height) throw new Error(`the chart's ${x} and ${y} differ in length`);
  return Array.from({ length: height }, (_, index) => ({ x: address(xs.row + index, xs.column), y: address(ys.row + index, ys.column) }));
}

/** A point that lacks a number is no point; the chart passes over #N/A. */
const pointFormula = ({ x, y }: Point, wanted: string): string => `=IF(AND(ISNUMBER(${x}),ISNUMBER(${y})),${wanted},NA())`;

function block(chart: ScatterChart, firstColumn: number): ChartBlock {
  const { row } = chart;
  const points = chart.series.flatMap((series, index) => pointsOf(series).map((point) => ({ point, index })));
  const heads = [chart.xTitle, ...chart.series.map(({ title }) => title)];
  const style = 'unit';
  const headCells = heads.map((value, index) => ({ row: row + 1, column: firstColumn + index, value, style: 'columnHead' as const }));
  const pointCells = points.flatMap(({ point, index }, place) => [
    { row: row + 2 + place, column: firstColumn, formula: pointFormula(point, point.x), style } as const,
    { row: row + 2 + place, column: firstColumn + 1 + index, formula: pointFormula(point, point.y), style } as const,
  ]);
  const columnArea = (index: number): Area => ({
    row: row + 1,
    column: firstColumn + index,
    lastRow: row + 1 + points.length,
    lastColumn: firstColumn + index,
  });
  return {
    chart,
    columns: heads.map((_, index) => areaText(columnArea(index))),
    cells: [{ row, column: firstColumn, value: `Data of the chart "${chart.title}"`, style }, ...headCells, ...pointCells],
  };
}

/** The blocks of all charts of a sheet, to the right of it with one column between. */
export function chartBlocks({ charts, columns }: Pick<SheetTemplate, 'charts' | 'columns'>): ChartBlock[] {
  let next = columns + 2;
  return charts.map((chart) => {
    const made = block(chart, next);
    next += made.columns.length + 1;
    return made;
  });
}
