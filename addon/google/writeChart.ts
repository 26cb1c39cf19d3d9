// Draws a chart of a template from its block of points.
import { chartColours } from '../../sheets-templates/look';
import type { ChartBlock } from './chartData';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export function writeChart(sheet: Sheet, { chart, columns }: ChartBlock): void {
  const options = chart.series.map(({ drawn }) => (drawn === 'line' ? { lineWidth: 2, pointSize: 0 } : { lineWidth: 1, pointSize: 7 }));
  // What only scatter charts have comes first: every other setter gives back a builder of no kind.
  const scatter = sheet.newChart().asScatterChart().setTitle(chart.title).setXAxisTitle(chart.xTitle).setYAxisTitle(chart.yTitle);
  const [first = '', ...others] = columns;
  const start = scatter.setColors(chartColours.slice(0, chart.series.length)).addRange(sheet.getRange(first));
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
