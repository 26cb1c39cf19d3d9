// Feet upwards and miles across, for the pictures seen from the side.
import type { Scales } from './descentMarks';
import { area, thousands } from './descentProfile';
import { colours, element, label, type Sheet } from './svg';

export function axes({ x, y }: Scales, { width, height }: Pick<Sheet, 'width' | 'height'>, top: number, milesTitle: string): string {
  const [xTicks, yTicks] = [x.ticks(Math.max(3, Math.floor(width / 80))), y.ticks(Math.max(3, Math.floor((height - area.bottom - top) / 32)))];
  const bottom = height - area.bottom;
  const across = yTicks.map(
    (feet) =>
      element('path', { d: `M${area.left},${y(feet).toFixed(1)}H${width - area.right}`, stroke: colours.grid }) +
      label(thousands(feet), { x: area.left - 6, y: y(feet) + 4 }, { anchor: 'end', color: colours.faint }),
  );
  const up = xTicks.map(
    (miles) =>
      element('path', { d: `M${x(miles).toFixed(1)},${top}V${bottom}`, stroke: colours.grid }) +
      label(String(miles), { x: x(miles), y: bottom + 16 }, { anchor: 'middle', color: colours.faint }),
  );
  const titles =
    label('feet', { x: area.left - 6, y: top - 6 }, { anchor: 'end', color: colours.faint }) +
    label(milesTitle, { x: (area.left + width - area.right) / 2, y: bottom + 33 }, { anchor: 'middle', color: colours.faint });
  return [...across, ...up, titles].join('');
}
