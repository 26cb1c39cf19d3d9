// Draws the charts and the pictures of the workbook over the grid: each is SVG text made from cells.
import type { FUniver } from '@univerjs/core/facade';
import { drawPicture } from '../../pictures/drawPicture';
import { runsOf, scatterPicture } from '../../pictures/scatterPicture';
import { chartComponent, pictureComponent } from '../engine/workbookIds';
import type { ChartRecord, PictureRecord } from '../engine/workbookResources';
import { numbersNamed, valuesNamed } from './cells';
import { registerDrawing } from './drawnBox';
import type { Workbook } from './grid';

function chart(workbook: Workbook, { series, width, height, ...texts }: ChartRecord): string {
  const drawn = series.map(({ title, drawn: how, x, y }) => ({
    title,
    drawn: how,
    runs: runsOf(numbersNamed(workbook, x), numbersNamed(workbook, y)),
  }));
  return scatterPicture({ ...texts, series: drawn }, { width, height });
}

const picture = (workbook: Workbook, { drawn, width, height }: PictureRecord): string =>
  drawPicture(drawn, (name) => valuesNamed(workbook, name), { width, height });

/** What is drawn escapes every text it is given. */
export function drawPictures(api: FUniver): void {
  registerDrawing<ChartRecord>(api, { component: chartComponent, className: 'chart', draw: chart, nameOf: ({ series }) => series[0]?.x });
  registerDrawing<PictureRecord>(api, {
    component: pictureComponent,
    className: 'picture',
    draw: picture,
    nameOf: ({ drawn }) => Object.values(drawn.from)[0],
  });
}
