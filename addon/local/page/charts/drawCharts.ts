// Draws the charts of the workbook over the grid. The grid places a box for each and calls a React component by name;
// all that component does is to hand its box to the SVG chart, drawn anew after each calculation.
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-drawing-ui/facade';
import type {} from '@univerjs/ui/facade';
import { h, render } from 'preact';
import { createElement, useEffect, useRef, type ReactElement } from 'react';
import { chartComponent } from '../../engine/workbookIds';
import type { ChartRecord } from '../../engine/workbookResources';
import { numbersNamed } from '../cells';
import { runsOf } from './chartModel';
import { ScatterChart } from './ScatterChart';

function drawInto(box: HTMLElement, api: FUniver, { series, ...texts }: ChartRecord): void {
  const workbook = api.getActiveWorkbook();
  if (workbook === null) return;
  const drawn = series.map(({ title, drawn: how, x, y }) => ({ title, drawn: how, runs: runsOf(numbersNamed(workbook, x), numbersNamed(workbook, y)) }));
  render(h(ScatterChart, { ...texts, series: drawn }), box);
}

export function drawCharts(api: FUniver): void {
  const formula = api.getFormula();
  const ChartBox = ({ data }: { readonly data: ChartRecord }): ReactElement => {
    const box = useRef<HTMLDivElement>(null);
    useEffect(() => {
      const element = box.current;
      if (element === null) return undefined;
      const draw = (): void => drawInto(element, api, data);
      draw();
      const calculated = formula.calculationEnd(draw);
      return () => {
        calculated.dispose();
        render(null, element);
      };
    }, [data]);
    return createElement('div', { ref: box, className: 'chart' });
  };
  api.registerComponent(chartComponent, ChartBox);
}
