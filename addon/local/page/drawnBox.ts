// Puts a drawing of ours over the grid. The grid places a box for each and calls a React component by name; all that the
// component does is to fill its box with the drawing, anew after each calculation.
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-drawing-ui/facade';
import type {} from '@univerjs/ui/facade';
import { createElement, useEffect, useRef, type ReactElement } from 'react';
import type { Workbook } from './grid';

export interface Drawing<Data> {
  /** Name by which the workbook's drawings ask for it. */
  readonly component: string;
  readonly className: string;
  /** Markup for the box; texts in it are escaped. */
  readonly draw: (workbook: Workbook, data: Data) => string;
}

export function registerDrawing<Data>(api: FUniver, { component, className, draw }: Drawing<Data>): void {
  const formula = api.getFormula();
  const Box = ({ data }: { readonly data: Data }): ReactElement => {
    const box = useRef<HTMLDivElement>(null);
    useEffect(() => {
      const element = box.current;
      if (element === null) return undefined;
      const drawNow = (): void => {
        const workbook = api.getActiveWorkbook();
        if (workbook !== null) element.innerHTML = draw(workbook, data);
      };
      drawNow();
      const calculated = formula.calculationEnd(drawNow);
      return () => calculated.dispose();
    }, [data]);
    return createElement('div', { ref: box, className });
  };
  api.registerComponent(component, Box);
}
