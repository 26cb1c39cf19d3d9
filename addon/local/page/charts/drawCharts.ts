// Draws the charts of the workbook over the grid, as SVG.
import type { FUniver } from '@univerjs/core/facade';
import { h, render } from 'preact';
import { chartComponent } from '../../engine/workbookIds';
import type { ChartRecord } from '../../engine/workbookResources';
import { numbersNamed } from '../cells';
import { registerDrawing } from '../drawnBox';
import { runsOf } from './chartModel';
import { ScatterChart } from './ScatterChart';

export function drawCharts(api: FUniver): void {
  registerDrawing<ChartRecord>(api, {
    component: chartComponent,
    className: 'chart',
    draw: (box, workbook, { series, ...texts }) => {
      const drawn = series.map(({ title, drawn: how, x, y }) => ({ title, drawn: how, runs: runsOf(numbersNamed(workbook, x), numbersNamed(workbook, y)) }));
      render(h(ScatterChart, { ...texts, series: drawn }), box);
    },
    clear: (box) => render(null, box),
  });
}
