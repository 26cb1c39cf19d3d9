// What the user typed into a set of sheets, laid into the entry cells of the sheets of today. There is no copy of the older
// template: entries are known by the words around them. Whatever has no place is told, and stops the update if it is data.
import { address } from '../../sheets-templates/build';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import type { Area } from './areas';
import type { CarriedSheet } from './carriedInputs';
import { contentOf, type OldDocument } from './carry/entryContent';
import { cellText, leftOver } from './carry/leftOver';
import { oldEntries } from './carry/oldEntries';
import { entriesOf, rangesRead } from './carry/templateEntries';
import { readFormula, tokensOf } from './formulaReading';
import { sameName } from './readPlace';
import type { SheetMark, SheetSnapshot, WorkbookSnapshot } from './snapshot';

export interface SheetSet {
  readonly set: string;
  readonly sheets: readonly { readonly name: string; readonly key: SheetKey; readonly version: number; /** Today's version. */ readonly current: number }[];
  readonly outOfDate: boolean;
}

export interface CarriedInputs {
  /** One for each sheet of the set; none where anything is refused. */
  readonly entries: readonly CarriedSheet[];
  /** Told before the update, which may go on. */
  readonly notes: readonly string[];
  /** Reasons for which nothing can be brought up to date yet. */
  readonly refusals: readonly string[];
}

type MarkedSheet = SheetSnapshot & { readonly mark: SheetMark };
const isMarked = (sheet: SheetSnapshot): sheet is MarkedSheet => sheet.mark !== undefined;

/** The sets of the workbook, in the order in which their first sheets stand. */
export function setsOf({ sheets }: WorkbookSnapshot, templates: readonly SheetTemplate[]): SheetSet[] {
  const sets = new Map<string, SheetSet['sheets'][number][]>();
  for (const { name, mark: { key, version, set } } of sheets.filter(isMarked)) {
    const current = templates.find((template) => template.key === key)?.version ?? version;
    sets.set(set, [...(sets.get(set) ?? []), { name, key, version, current }]);
  }
  return [...sets].map(([set, ofSet]) => ({ set, sheets: ofSet, outOfDate: ofSet.some(({ version, current }) => version < current) }));
}

const mostNamed = 12;
const some = (texts: readonly string[]): string => `${texts.slice(0, mostNamed).join(', ')}${texts.length > mostNamed ? ` and ${texts.length - mostNamed} more` : ''}`;

interface Carrying {
  readonly workbook: WorkbookSnapshot;
  readonly document: OldDocument;
  readonly ofSet: readonly MarkedSheet[];
  /** By the name of a template: ranges of its sheet that the formulas of all templates read. */
  readonly read: ReadonlyMap<string, readonly Area[]>;
}

interface Part {
  readonly carried: CarriedSheet;
  readonly notes: readonly string[];
  readonly refusals: readonly string[];
}

/** Ranges of one sheet that the formulas of the workbook read. */
const readOf = ({ sheets }: WorkbookSnapshot, name: string): Area[] =>
  sheets.flatMap((home) => home.formulas.flatMap(({ text }) => readFormula(text).references.flatMap(({ sheet = home.name, area }) => (area !== undefined && sameName(sheet, name) ? [area] : []))));

function carrySheet({ workbook, read, document }: Carrying, sheet: MarkedSheet, template: SheetTemplate): Part {
  const entries = entriesOf(template, read.get(template.name) ?? []);
  const old = oldEntries(workbook, sheet, entries, readOf(workbook, sheet.name));
  const targets = new Map(template.cells.map((cell) => [address(cell.row, cell.column), cell]));
  const contents = [...old.singles, ...old.listed].map(({ to, from }) => ({ to, ...contentOf(sheet, from, targets.get(address(to.row, to.column)), document) }));
  const { data, texts, formulas } = leftOver(sheet, template, old);
  const notes = [
    ...contents.flatMap(({ note }) => note ?? []),
    ...(texts.length === 0 ? [] : [`These texts of "${sheet.name}" have no place in today's sheet and stay in the older one: ${some(texts.map((place) => cellText(sheet, place)))}.`]),
    ...(formulas.length === 0 ? [] : [`These formulas of "${sheet.name}" are not in today's sheet and stay in the older one: ${some(formulas.map(({ row, column, text }) => `${address(row, column)} ${text}`))}.`]),
  ];
  const refusals = [
    ...contents.flatMap(({ refusal }) => refusal ?? []),
    ...old.tooLong.map(({ section, rows, room }) => `"${sheet.name}": the list under "${section}" has ${rows} rows, and today's sheet has room for ${room}. Shorten it, then ask again.`),
    ...(data.length === 0 ? [] : [`"${sheet.name}" holds what has no place in today's sheet: ${some(data.map((place) => cellText(sheet, place)))}. Note it down and empty the ${data.length === 1 ? 'cell' : 'cells'}, then ask again.`]),
  ];
  const cells = contents.flatMap(({ to, content }) => (content === '' ? [] : [{ ...to, content }]));
  return { carried: { key: template.key, cells }, notes, refusals };
}

/** Formulas outside the set that read its sheets by their names; after the update they go on reading the older ones. */
function readersOutside({ workbook, ofSet }: Carrying): string[] {
  const readers = workbook.sheets.filter((sheet) => !ofSet.some(({ name }) => name === sheet.name)).flatMap((sheet) =>
    sheet.formulas.flatMap(({ row, column, text }) => (readFormula(text).references.some(({ sheet: read }) => read !== undefined && ofSet.some(({ name }) => sameName(name, read))) ? [`${address(row, column)} of "${sheet.name}"`] : [])),
  );
  return readers.length === 0 ? [] : [`These formulas of yours read the sheets as they were, and will go on reading the older ones: ${some(readers)}. Set them to the new sheets afterwards.`];
}

/** What stands against an update before any cell is looked at. */
function refusedSheets(ofSet: readonly MarkedSheet[], templates: readonly SheetTemplate[]): string[] {
  if (ofSet.length === 0) return ['These sheets are not in this document any more.'];
  return ofSet.flatMap(({ name, mark: { key, version } }, index) => {
    const template = templates.find((one) => one.key === key);
    const twin = ofSet.slice(0, index).find(({ mark }) => mark.key === key);
    if (twin !== undefined) return [`"${twin.name}" and "${name}" are two of one kind, and it cannot be told which of them is in use. Delete one of them, then ask again.`];
    if (template === undefined) return [`This version has no sheet of the kind of "${name}". Delete that sheet, then ask again.`];
    return version > template.version ? [`"${name}" is of version ${version}, newer than this add-on, which has version ${template.version}. Reload the document, then ask again.`] : [];
  });
}

/** What sheets and names are called in the document, and what separates arguments there. */
function oldDocument({ sheets }: WorkbookSnapshot, ofSet: readonly MarkedSheet[], templates: readonly SheetTemplate[]): OldDocument {
  const named = templates.flatMap(({ key, name }) => {
    const found = ofSet.find(({ mark }) => mark.key === key) ?? sheets.find(({ mark }) => mark?.key === key);
    return found === undefined ? [] : [{ template: name, sheet: found }];
  });
  const separators = sheets.flatMap(({ formulas }) => formulas.flatMap(({ text }) => tokensOf(text).filter(({ kind }) => kind === 'separator')));
  return {
    names: { sheets: new Map(named.map(({ template, sheet }) => [template, sheet.name])), ranges: new Map(named.flatMap(({ sheet }) => Object.entries(sheet.mark?.names ?? {}))) },
    separator: separators.some(({ text }) => text === ';') ? ';' : ',',
  };
}

export function carryInputs(workbook: WorkbookSnapshot, set: string, templates: readonly SheetTemplate[]): CarriedInputs {
  const ofSet = workbook.sheets.filter(isMarked).filter(({ mark }) => mark.set === set);
  const refused = refusedSheets(ofSet, templates);
  if (refused.length > 0) return { entries: [], notes: [], refusals: refused };
  const carrying: Carrying = { workbook, ofSet, read: rangesRead(templates), document: oldDocument(workbook, ofSet, templates) };
  const parts = templates.flatMap((template) => {
    const sheet = ofSet.find(({ mark }) => mark.key === template.key);
    return sheet === undefined ? [] : [carrySheet(carrying, sheet, template)];
  });
  const refusals = parts.flatMap((part) => part.refusals);
  return { entries: refusals.length > 0 ? [] : parts.map(({ carried }) => carried), notes: [...parts.flatMap(({ notes }) => notes), ...readersOutside(carrying)], refusals };
}
