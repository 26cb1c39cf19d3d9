// Reads an Excel file by another way than the one that wrote it: unzipped by fflate, parsed by xmldom, followed from part to part
// by its relationships, as ECMA-376 (part 1, chapters 12 and 18) lays them out.
import { DOMParser, type Document, type Element } from '@xmldom/xmldom';
import { strFromU8, unzipSync } from 'fflate';

export interface ReadCell {
  readonly value: string | number | boolean;
  /** As the file has it: s shared text, inlineStr, n, b, e. */
  readonly type: string;
  readonly numberFormat: string;
  /** Six digits, in capitals. */
  readonly fill: string | undefined;
  readonly bold: boolean;
  readonly size: number;
  readonly wrap: boolean;
  readonly across: string | undefined;
  readonly borders: readonly string[];
}

export interface ReadSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** By address, such as B4; cells with a look only have the value "". */
  readonly cells: ReadonlyMap<string, ReadCell>;
  readonly formulas: number;
  readonly merges: readonly string[];
  /** Attributes of cols, rows, the frozen pane and the print set-up, as they stand. */
  readonly columns: readonly Attributes[];
  readonly rows: readonly Attributes[];
  readonly pane: Attributes | undefined;
  readonly print: Attributes;
  readonly foot: string;
  readonly notes: Readonly<Record<string, string>>;
  readonly links: Readonly<Record<string, string>>;
  /** The text of each chart part. */
  readonly charts: readonly string[];
}

type Attributes = Readonly<Record<string, string>>;

const all = (within: Document | Element, tag: string): Element[] => Array.from(within.getElementsByTagNameNS('*', tag));
const attributes = (element: Element): Attributes => Object.fromEntries(Array.from(element.attributes).map(({ name, value }) => [name, value]));
const attribute = (element: Element | undefined, name: string): string | undefined => element?.getAttribute(name) ?? undefined;
const unescaped = (text: string): string => text.replace(/_x([0-9A-F]{4})_/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
const textIn = (element: Element): string =>
  unescaped(
    all(element, 't')
      .map(({ textContent }) => textContent ?? '')
      .join(''),
  );

type Look = Omit<ReadCell, 'value' | 'type'>;

function looksIn(styles: Document): Look[] {
  const children = (tag: string): Element[] =>
    Array.from(all(styles, tag)[0]?.childNodes ?? []).filter((node): node is Element => node.nodeType === 1);
  const formats = new Map(all(styles, 'numFmt').map((one) => [attribute(one, 'numFmtId'), attribute(one, 'formatCode')]));
  // Formats that every program knows by number (18.8.30), of which ours are these.
  const known: Readonly<Record<string, string>> = { 0: 'General', 1: '0', 2: '0.00', 3: '#,##0', 4: '#,##0.00', 49: '@' };
  const [fonts, fills, borders] = [children('fonts'), children('fills'), children('borders')];
  return children('cellXfs').map((xf) => {
    const at = (list: Element[], name: string): Element | undefined => list[Number(attribute(xf, name) ?? 0)];
    const [font, fill, border] = [at(fonts, 'fontId'), at(fills, 'fillId'), at(borders, 'borderId')];
    const pattern = fill && all(fill, 'patternFill')[0];
    const alignment = all(xf, 'alignment')[0];
    const id = attribute(xf, 'numFmtId') ?? '0';
    return {
      numberFormat: formats.get(id) ?? known[id] ?? `number format ${id}`,
      fill: attribute(pattern, 'patternType') === 'solid' && pattern ? attribute(all(pattern, 'fgColor')[0], 'rgb')?.slice(-6) : undefined,
      bold: font !== undefined && all(font, 'b').length > 0,
      size: Number(attribute(font && all(font, 'sz')[0], 'val')),
      wrap: ['1', 'true'].includes(attribute(alignment, 'wrapText') ?? ''),
      across: attribute(alignment, 'horizontal'),
      borders: ['top', 'right', 'bottom', 'left'].filter(
        (side) => border !== undefined && all(border, side).some((one) => attribute(one, 'style') !== undefined),
      ),
    };
  });
}

function valueOf(cell: Element, type: string, texts: readonly string[]): ReadCell['value'] {
  if (type === 'inlineStr') return textIn(cell);
  const raw = all(cell, 'v')[0]?.textContent ?? '';
  if (type === 's') return texts[Number(raw)] ?? '';
  if (type === 'b') return raw === '1';
  return type === 'e' || raw === '' ? raw : Number(raw);
}

export function readXlsx(bytes: Uint8Array): ReadSheet[] {
  const parts = unzipSync(bytes);
  const textOf = (path: string): string => {
    const part = parts[path];
    if (part === undefined) throw new Error(`the file has no part ${path}`);
    return strFromU8(part);
  };
  const parse = (path: string): Document => {
    const onError = (level: string, message: string): void => {
      // A character that could not be kept is replaced on purpose.
      if (!message.startsWith('Unicode replacement character')) throw new Error(`${path}: ${level}: ${message}`);
    };
    return new DOMParser({ onError }).parseFromString(textOf(path), 'text/xml');
  };
  const related = (path: string): { id: string; kind: string; path: string }[] => {
    const [folder = '', file = ''] = [path.slice(0, path.lastIndexOf('/')), path.slice(path.lastIndexOf('/') + 1)];
    const relations = `${folder}/_rels/${file}.rels`;
    if (parts[relations] === undefined) return [];
    return all(parse(relations), 'Relationship').map((one) => {
      const target = attribute(one, 'Target') ?? '';
      const { pathname } = new URL(target, `file:///${folder}/`);
      return { id: attribute(one, 'Id') ?? '', kind: (attribute(one, 'Type') ?? '').split('/').pop() ?? '', path: pathname.slice(1) };
    });
  };
  const workbook = 'xl/workbook.xml';
  const ofWorkbook = related(workbook);
  const pathOf = (kind: string): string => ofWorkbook.find((one) => one.kind === kind)?.path ?? '';
  const looks = looksIn(parse(pathOf('styles')));
  const texts = all(parse(pathOf('sharedStrings')), 'si').map(textIn);
  return all(parse(workbook), 'sheet').map((sheet): ReadSheet => {
    const path = ofWorkbook.find(({ id }) => id === attribute(sheet, 'r:id'))?.path ?? '';
    const page = parse(path);
    const relations = related(path);
    const cells = all(page, 'c').map((cell): [string, ReadCell] => {
      const type = attribute(cell, 't') ?? 'n';
      const look = looks[Number(attribute(cell, 's') ?? 0)];
      if (look === undefined) throw new Error(`${path}: a style that is not there`);
      return [attribute(cell, 'r') ?? '', { ...look, type, value: valueOf(cell, type, texts) }];
    });
    const notes = relations
      .filter(({ kind }) => kind === 'comments')
      .flatMap((one) => all(parse(one.path), 'comment'))
      .map((one) => [attribute(one, 'ref') ?? '', textIn(one)]);
    const charts = relations
      .filter(({ kind }) => kind === 'drawing')
      .flatMap((one) => related(one.path))
      .filter(({ kind }) => kind === 'chart')
      .map((one) => textOf(one.path));
    const [setUp] = all(page, 'pageSetup');
    const [pane] = all(page, 'pane');
    return {
      name: attribute(sheet, 'name') ?? '',
      hidden: attribute(sheet, 'state') === 'hidden',
      cells: new Map(cells),
      formulas: all(page, 'f').length,
      merges: all(page, 'mergeCell').map((one) => attribute(one, 'ref') ?? ''),
      columns: all(page, 'col').map(attributes),
      rows: all(page, 'row').map(attributes),
      pane: pane && attributes(pane),
      print: setUp === undefined ? {} : attributes(setUp),
      foot: all(page, 'oddFooter')[0]?.textContent ?? '',
      notes: Object.fromEntries(notes) as Record<string, string>,
      links: Object.fromEntries(all(page, 'hyperlink').map((one) => [attribute(one, 'ref') ?? '', attribute(one, 'location') ?? ''])),
      charts,
    };
  });
}
