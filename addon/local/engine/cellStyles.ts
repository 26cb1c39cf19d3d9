// The look of the sheets as the engine's style table: one entry for each pair of style and number format in use.
import type { BorderStyleTypes, HorizontalAlign, IBorderData, IStyleData, VerticalAlign, WrapStrategy } from '@univerjs/core';
import { fontFamily, formats, styles, type CellLook } from '../../../sheets-templates/look';
import type { SheetTemplate, TemplateCell } from '../../../sheets-templates/template';

const lineColour = '#b6bcc4';
const thin: BorderStyleTypes.THIN = 1;
const middle: VerticalAlign.MIDDLE = 2;
const wrap: WrapStrategy.WRAP = 3;
const aligned = { left: 1, center: 2, right: 3 } as const satisfies Record<string, HorizontalAlign>;

export const styleKey = ({ style, format }: TemplateCell): string => (format === undefined ? style : `${style} ${format}`);

function borders(border: CellLook['border']): IBorderData | undefined {
  const line = { s: thin, cl: { rgb: lineColour } };
  if (border === undefined) return undefined;
  return border === 'bottom' ? { b: line } : { t: line, r: line, b: line, l: line };
}

const engineFont = ({ size, color }: CellLook): IStyleData => ({ ff: fontFamily, fs: size, cl: { rgb: color }, vt: middle });

/** What cells without a look of their own have, such as those that somebody adds. */
export const plainStyle: IStyleData = engineFont(styles.plain);

function engineStyle({ style, format }: TemplateCell): IStyleData {
  const look: CellLook = styles[style];
  const border = borders(look.border);
  return {
    ...engineFont(look),
    ...(look.bold === true && { bl: 1 }),
    ...(look.italic === true && { it: 1 }),
    ...(look.background !== undefined && { bg: { rgb: look.background } }),
    ...(look.align !== undefined && { ht: aligned[look.align] }),
    ...(look.wrap === true && { tb: wrap }),
    ...(border !== undefined && { bd: border }),
    ...(format !== undefined && { n: { pattern: formats[format] } }),
  };
}

export function usedStyles(templates: readonly SheetTemplate[]): Record<string, IStyleData> {
  const cells = templates.flatMap((template) => template.cells);
  return Object.fromEntries(cells.map((cell) => [styleKey(cell), engineStyle(cell)]));
}
