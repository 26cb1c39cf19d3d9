// Where the entries of a set stand: on their own sheets, by their keys, or on those that they came from; and what stands against looking at all.
import type { SheetTemplate } from '../../../sheets-templates/template';
import type { Area } from '../areas';
import type { OldDocument } from './entryContent';
import { keyedEntries, ownContents, type OldEntries } from './oldEntries';
import { onlyBeside } from '../formerKeys';
import { readFormula, tokensOf } from '../formulaReading';
import { keysIn } from '../keys';
import { sameName } from '../readPlace';
import type { CellPlace, SheetMark, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { wordEntries } from '../withoutKeys/wordEntries';

export type MarkedSheet = SheetSnapshot & { readonly mark: SheetMark };

export const isMarked = (sheet: SheetSnapshot): sheet is MarkedSheet => sheet.mark !== undefined;

export interface Carrying {
  readonly workbook: WorkbookSnapshot;
  readonly document: OldDocument;
  readonly ofSet: readonly MarkedSheet[];
  readonly old: ReadonlyMap<MarkedSheet, OldEntries>;
  /** Key of today, with that of its sheet before it, to the key it had: see formerKeys.ts. */
  readonly former: Readonly<Record<string, string>>;
}

/** Ranges of one sheet that the formulas of the workbook read. */
const readOf = ({ sheets }: WorkbookSnapshot, name: string): Area[] =>
  sheets.flatMap((home) =>
    home.formulas.flatMap(({ text }) =>
      readFormula(text).references.flatMap(({ sheet = home.name, area }) => (area !== undefined && sameName(sheet, name) ? [area] : [])),
    ),
  );

/** Undefined where a sheet that should have keys has none. */
export function entriesOf(workbook: WorkbookSnapshot, sheet: MarkedSheet, template: SheetTemplate): OldEntries | undefined {
  const keys = keysIn(sheet);
  return keys === undefined ? wordEntries(workbook, sheet, readOf(workbook, sheet.name), ownContents(template)) : keyedEntries(sheet, keys, template);
}

export interface Source {
  readonly sheet: MarkedSheet;
  readonly place: CellPlace;
}

/** Where the entry stands that has this key today, on its own sheet or on the one that it came from. */
export function sourceOf({ ofSet, old, former }: Carrying, template: SheetTemplate, key: string): Source | undefined {
  const find = (sheetKey: string, ofSheet: string): Source | undefined => {
    const sheet = ofSet.find(({ mark }) => mark.key === sheetKey);
    const place = sheet === undefined ? undefined : old.get(sheet)?.cells.get(ofSheet);
    return sheet === undefined || place === undefined ? undefined : { sheet, place };
  };
  const findBefore = (whole: string): Source | undefined => {
    const [, sheet = '', ofSheet = ''] = /^([^.]+)\.(.*)$/.exec(whole) ?? [];
    return find(sheet, ofSheet);
  };
  const before = former[`${template.key}.${key}`];
  const beside = before === undefined ? undefined : onlyBeside[before];
  const isThere = before !== undefined && (beside === undefined || findBefore(beside) !== undefined);
  return find(template.key, key) ?? (isThere ? findBefore(before) : undefined);
}

/** The words of a sheet of today's kind are not enough to know its entries by. */
export const keysLost = (name: string): string =>
  `"${name}" has lost its keys, the formula in the first row of its hidden last column, or has them twice, so that its entries cannot be told from one another. Take back what was done to that column, then ask again.`;

/** What stands against an update before any cell is looked at. */
export function refusedSheets(ofSet: readonly MarkedSheet[], templates: readonly SheetTemplate[]): string[] {
  if (ofSet.length === 0) return ['These sheets are not in this document any more.'];
  return ofSet.flatMap(({ name, mark: { key, version } }, index) => {
    const template = templates.find((one) => one.key === key);
    const twin = ofSet.slice(0, index).find(({ mark }) => mark.key === key);
    if (twin !== undefined)
      return [`"${twin.name}" and "${name}" are two of one kind, and it cannot be told which of them is in use. Delete one of them, then ask again.`];
    if (template === undefined) return [`This version has no sheet of the kind of "${name}". Delete that sheet, then ask again.`];
    return version > template.version
      ? [`"${name}" is of version ${version}, newer than this add-on, which has version ${template.version}. Reload the document, then ask again.`]
      : [];
  });
}

/** What sheets and names are called in the document, and what separates arguments there. */
export function oldDocument({ sheets }: WorkbookSnapshot, ofSet: readonly MarkedSheet[], templates: readonly SheetTemplate[]): OldDocument {
  const named = templates.flatMap(({ key, name }) => {
    const found = ofSet.find(({ mark }) => mark.key === key) ?? sheets.find(({ mark }) => mark?.key === key);
    return found === undefined ? [] : [{ template: name, sheet: found }];
  });
  const separators = sheets.flatMap(({ formulas }) => formulas.flatMap(({ text }) => tokensOf(text).filter(({ kind }) => kind === 'separator')));
  return {
    names: {
      sheets: new Map(named.map(({ template, sheet }) => [template, sheet.name])),
      ranges: new Map(named.flatMap(({ sheet }) => Object.entries(sheet.mark?.names ?? {}))),
    },
    separator: separators.some(({ text }) => text === ';') ? ';' : ',',
  };
}
