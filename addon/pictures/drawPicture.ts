// A picture of a sheet, of whichever kind, from the values behind its ranges.
import type { SheetPicture } from '../../sheets-templates/template';
import { routePictureOfCells } from './routeOfCells';
import { routeProfileOfCells } from './routeProfileOfCells';
import { descentPictureOfCells, holdPictureOfCells, type Cells } from './sheetPictures';

/** `read` gives the values of a range, by whatever the host calls it. */
export function drawPicture(
  drawn: SheetPicture['drawn'],
  read: (range: string) => Cells,
  size: { readonly width: number; readonly height: number },
): string {
  if (drawn.kind === 'hold') {
    const { heading, inbound, turns, windFrom, wind, brief } = drawn.from;
    return holdPictureOfCells(
      { heading: read(heading), inbound: read(inbound), turns: read(turns), windFrom: read(windFrom), wind: read(wind), brief: read(brief) },
      drawn.up,
      size,
    );
  }
  if (drawn.kind === 'route') return routePictureOfCells({ parts: read(drawn.from.parts) }, size);
  if (drawn.kind === 'routeProfile') {
    const { parts, levels, departure } = drawn.from;
    return routeProfileOfCells({ parts: read(parts), levels: read(levels), departure: read(departure) }, size);
  }
  const { plan, endsAt, crossings } = drawn.from;
  return descentPictureOfCells({ plan: read(plan), endsAt: read(endsAt), crossings: read(crossings) }, size);
}
