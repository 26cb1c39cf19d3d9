// Draws the pictures of the workbook over the grid, the way its charts are drawn: the grid places a box, the picture is SVG text.
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-drawing-ui/facade';
import type {} from '@univerjs/ui/facade';
import { createElement, useEffect, useRef, type ReactElement } from 'react';
import { drawPicture } from '../../pictures/drawPicture';
import { pictureComponent } from '../engine/workbookIds';
import type { PictureRecord } from '../engine/workbookResources';
import { valuesNamed } from './cells';

function drawInto(box: HTMLElement, api: FUniver, { drawn, width, height }: PictureRecord): void {
  const workbook = api.getActiveWorkbook();
  // The pictures escape every text they are given.
  if (workbook !== null) box.innerHTML = drawPicture(drawn, (name) => valuesNamed(workbook, name), { width, height });
}

export function drawPictures(api: FUniver): void {
  const formula = api.getFormula();
  const PictureBox = ({ data }: { readonly data: PictureRecord }): ReactElement => {
    const box = useRef<HTMLDivElement>(null);
    useEffect(() => {
      const element = box.current;
      if (element === null) return undefined;
      const draw = (): void => drawInto(element, api, data);
      draw();
      const calculated = formula.calculationEnd(draw);
      return () => calculated.dispose();
    }, [data]);
    return createElement('div', { ref: box, className: 'picture' });
  };
  api.registerComponent(pictureComponent, PictureBox);
}
