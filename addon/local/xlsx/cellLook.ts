// The look of a cell of the grid in the terms of an Excel file. Colours that the file cannot name are left out.
import type { IBorderData, IBorderStyleData, IStyleData, IWorkbookData, Nullable } from '@univerjs/core';
import type { AlignmentStyle, BorderLineStyle, BorderSide, CellStyle, Color, FontStyle } from 'hucre';
import { fontFamily } from '../../../sheets-templates/look';

type Colour = Nullable<{ rgb?: Nullable<string> }>;
type Style = Nullable<IStyleData | string>;

/** By the engine's numbers; 0 is no line. */
const lines: readonly (BorderLineStyle | undefined)[] = [
  undefined,
  'thin',
  'hair',
  'dotted',
  'dashed',
  'dashDot',
  'dashDotDot',
  'double',
  'medium',
  'mediumDashed',
  'mediumDashDot',
  'mediumDashDotDot',
  'slantDashDot',
  'thick',
];
const across: readonly AlignmentStyle['horizontal'][] = [undefined, 'left', 'center', 'right', 'justify', 'justify', 'distributed'];
const down: readonly AlignmentStyle['vertical'][] = [undefined, 'top', 'center', 'bottom'];
const wrapped = 3;

const twoDigits = (part: string): string => Number(part).toString(16).padStart(2, '0');

/** "#b6bcc4", "#ABC" or "rgb(182, 188, 196)" as six digits. */
export function colour(given: Colour): Color | undefined {
  const text = given?.rgb ?? '';
  const hex = /^#?([0-9a-f]{6})$/i.exec(text)?.[1] ?? /^#?([0-9a-f]{3})$/i.exec(text)?.[1]?.replace(/./g, '$&$&');
  if (hex !== undefined) return { rgb: hex.toUpperCase() };
  const parts = /^rgb\((\d+), *(\d+), *(\d+)\)$/i.exec(text)?.slice(1);
  return parts === undefined ? undefined : { rgb: parts.map(twoDigits).join('').toUpperCase() };
}

/** Drops what is undefined, so that the file's own default holds there. */
function only<Fields extends object>(fields: { [Key in keyof Fields]: Fields[Key] | undefined }): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Fields;
}

function font({ ff, fs, bl, it, ul, st, cl, va }: IStyleData): FontStyle {
  return only<FontStyle>({
    // Without a name some programs fall back to a font with serifs.
    name: ff ?? fontFamily,
    size: fs,
    bold: bl === 1 || undefined,
    italic: it === 1 || undefined,
    underline: ul?.s === 1 || undefined,
    strikethrough: st?.s === 1 || undefined,
    color: colour(cl),
    vertAlign: va === 2 ? 'subscript' : va === 3 ? 'superscript' : undefined,
  });
}

function side(given: Nullable<IBorderStyleData>): BorderSide | undefined {
  const style = lines[given?.s ?? 0];
  return style === undefined ? undefined : only<BorderSide>({ style, color: colour(given?.cl) });
}

const borders = ({ t, r, b, l }: IBorderData): CellStyle['border'] =>
  only<NonNullable<CellStyle['border']>>({ top: side(t), right: side(r), bottom: side(b), left: side(l) });

/** The grid sets what has no vertical place of its own at the bottom, as Excel does. */
const alignment = ({ ht, vt, tb }: IStyleData): AlignmentStyle =>
  only<AlignmentStyle>({ horizontal: across[ht ?? 0], vertical: down[vt ?? 0], wrapText: tb === wrapped || undefined });

export const fillOf = (color: Color): NonNullable<CellStyle['fill']> => ({ type: 'pattern', pattern: 'solid', fgColor: color });

/** In a file the stroke of yyyy/mm/dd follows the reader's country: LibreOffice shows 03/04/2026, which is a day in March or in April. */
const clearDate = (pattern: string): string => pattern.replace(/y+\/m+\/d+/gi, (date) => date.replaceAll('/', '-'));

export function cellLook(style: IStyleData): CellStyle {
  const background = colour(style.bg);
  const pattern = style.n?.pattern;
  return only<CellStyle>({
    font: font(style),
    alignment: alignment(style),
    border: style.bd ? borders(style.bd) : undefined,
    fill: background === undefined ? undefined : fillOf(background),
    numFmt: pattern && pattern !== 'General' ? clearDate(pattern) : undefined,
  });
}

const withoutNothing = (style: IStyleData): IStyleData =>
  Object.fromEntries(Object.entries(style).filter(([, value]) => value !== null && value !== undefined)) as IStyleData;

/** The styles that bear on a cell, the nearest last, as one. A text is a name in the workbook's table of styles. */
export function composed(table: IWorkbookData['styles'], styles: readonly Style[]): IStyleData {
  const parts = styles.map((style) => withoutNothing((typeof style === 'string' ? table[style] : style) ?? {}));
  return parts.reduce<IStyleData>((all, part) => ({ ...all, ...part }), {});
}
