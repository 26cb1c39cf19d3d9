// The sheets as packed data. They are needed only when a sheet is inserted, while Code.js is read anew at every call of a
// sheet function; so they travel in panel.html, which the script can read as text, and not in Code.js.
import type { SheetTemplate, TemplateCell, TemplateValue } from '../../sheets-templates/template';

/** What many cells have in common. */
type Kind = Pick<TemplateCell, 'style' | 'format' | 'note' | 'goesTo'>;
type PackedCell = readonly [row: number, column: number, kind: number, value?: TemplateValue | null, formula?: string];

export interface PackedTemplates {
  readonly kinds: readonly Kind[];
  readonly sheets: readonly (Omit<SheetTemplate, 'cells'> & { readonly cells: readonly PackedCell[] })[];
}

/** The script element of panel.html that holds the data. */
const opening = '<script type="application/json" id="sheets">';
const closing = '</script>';

export function packTemplates(templates: readonly SheetTemplate[]): PackedTemplates {
  const places = new Map<string, number>();
  const pack = ({ row, column, value, formula, ...kind }: TemplateCell): PackedCell => {
    const text = JSON.stringify(kind);
    const place = places.get(text) ?? places.size;
    places.set(text, place);
    if (formula !== undefined) return [row, column, place, value ?? null, formula];
    return value === undefined ? [row, column, place] : [row, column, place, value];
  };
  const sheets = templates.map((template) => ({ ...template, cells: template.cells.map(pack) }));
  return { kinds: [...places.keys()].map((text) => JSON.parse(text) as Kind), sheets };
}

export function unpackTemplates({ kinds, sheets }: PackedTemplates): SheetTemplate[] {
  const unpack = ([row, column, place, value, formula]: PackedCell): TemplateCell => {
    const kind = kinds[place];
    if (kind === undefined) throw new Error('the sheets of the add-on are damaged');
    return { row, column, ...kind, ...(value === undefined || value === null ? {} : { value }), ...(formula === undefined ? {} : { formula }) };
  };
  return sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(unpack) }));
}

/** What would end the element early, and what Google's page service may cut or change: text alone holds it, and JSON has escapes. */
const escaped = (found: string): string => `\\u${found.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** The element for the page. */
export const packedElement = (packed: PackedTemplates): string =>
  `${opening}${JSON.stringify(packed).replace(/[^\p{ASCII}]|[<`]|\/(?=[/*])/gu, (found) => found.replace(/[^]/g, escaped))}${closing}`;

/** The data out of the page's text. */
export function templatesInPage(page: string): SheetTemplate[] {
  const start = page.indexOf(opening);
  const end = page.indexOf(closing, start);
  if (start < 0 || end < 0) throw new Error('the sheets of the add-on are missing from its panel page');
  return unpackTemplates(JSON.parse(page.slice(start + opening.length, end)) as PackedTemplates);
}
