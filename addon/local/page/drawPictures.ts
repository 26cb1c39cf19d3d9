// Draws the pictures of the workbook over the grid: each is SVG text made from cells.
import type { FUniver } from '@univerjs/core/facade';
import { drawPicture } from '../../pictures/drawPicture';
import { pictureComponent } from '../engine/workbookIds';
import type { PictureRecord } from '../engine/workbookResources';
import { valuesNamed } from './cells';
import { registerDrawing } from './drawnBox';

export function drawPictures(api: FUniver): void {
  registerDrawing<PictureRecord>(api, {
    component: pictureComponent,
    className: 'picture',
    draw: (box, workbook, { drawn, width, height }) => {
      // The pictures escape every text they are given.
      box.innerHTML = drawPicture(drawn, (name) => valuesNamed(workbook, name), { width, height });
    },
  });
}
