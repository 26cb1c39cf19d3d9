// Decides, before anything is written, which sheets an insertion must add, which it may read from the document as they
// are, and under what names everything goes.
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { referencesOf, type NewNames } from './formulaText';
import type { SheetMark } from './snapshot';

/** A sheet of ours that is in the document already and may be read by a new one. */
export interface ExistingSheet {
  readonly key: SheetKey;
  readonly sheetName: string;
  /** The host's own identifier of the sheet. */
  readonly sheetId: string;
  /** See SheetMark. */
  readonly set: string;
  readonly names: Readonly<Record<string, string>>;
}

export interface DocumentNames {
  readonly sheets: readonly string[];
  readonly ranges: readonly string[];
}

export interface InsertionPlan {
  /** Templates to add, in the order of the workbook, each with the name of its sheet. */
  readonly added: readonly { readonly template: SheetTemplate; readonly sheetName: string }[];
  readonly reused: readonly ExistingSheet[];
  readonly names: NewNames;
  /** Sheets in the document before the insertion; the new ones stand after them. */
  readonly sheetsBefore: number;
}

/** Keys of the sheets that each template reads, directly. */
function directReads(templates: readonly SheetTemplate[]): Map<SheetKey, Set<SheetKey>> {
  const bySheet = new Map(templates.map(({ name, key }) => [name, key]));
  const byRange = new Map(templates.flatMap(({ names, key }) => names.map(({ name }) => [name, key] as const)));
  return new Map(
    templates.map(({ key, cells, validations }) => {
      const formulas = [...cells.map(({ formula }) => formula), ...validations.map((one) => (one.kind === 'listFrom' ? one.source : undefined))];
      const reads = formulas.filter((formula) => formula !== undefined).map(referencesOf);
      const found = reads.flatMap(({ sheets, words }) => [
        ...[...sheets].map((name) => bySheet.get(name)),
        ...[...words].map((name) => byRange.get(name)),
      ]);
      return [key, new Set(found.filter((one): one is SheetKey => one !== undefined && one !== key))];
    }),
  );
}

/** Everything that a sheet reads, through other sheets too. */
function reach(key: SheetKey, reads: ReadonlyMap<SheetKey, ReadonlySet<SheetKey>>, seen = new Set<SheetKey>()): Set<SheetKey> {
  for (const next of reads.get(key) ?? []) {
    if (seen.has(next)) continue;
    seen.add(next);
    reach(next, reads, seen);
  }
  return seen;
}

/**
 * A sheet that is read must be in the document. One that is there already serves only if it is the only one of its kind
 * and reads none of the sheets now added: else it would show, say, the weights of another trip beside this one.
 */
function keysToAdd(wanted: readonly SheetKey[], templates: readonly SheetTemplate[], existing: readonly ExistingSheet[]): Set<SheetKey> {
  const reads = directReads(templates);
  const adding = new Set(wanted);
  let grown = true;
  while (grown) {
    grown = false;
    for (const key of [...adding].flatMap((one) => [...reach(one, reads)])) {
      const serves = existing.filter((one) => one.key === key).length === 1 && ![...reach(key, reads)].some((one) => adding.has(one));
      if (adding.has(key) || serves) continue;
      adding.add(key);
      grown = true;
    }
  }
  return adding;
}

/** The name itself, or the first free one of "name 2", "name 3"; Sheets takes names for equal whatever their case. */
export function freeName(name: string, separator: string, taken: Set<string>): string {
  let free = name;
  for (let next = 2; taken.has(free.toLowerCase()); next += 1) free = `${name}${separator}${next}`;
  taken.add(free.toLowerCase());
  return free;
}

export function planInsertion(
  wanted: readonly SheetKey[],
  templates: readonly SheetTemplate[],
  document: DocumentNames,
  existing: readonly ExistingSheet[],
): InsertionPlan {
  const adding = keysToAdd(wanted, templates, existing);
  const takenSheets = new Set(document.sheets.map((name) => name.toLowerCase()));
  const takenRanges = new Set(document.ranges.map((name) => name.toLowerCase()));
  const added = templates
    .filter(({ key }) => adding.has(key))
    .map((template) => ({ template, sheetName: freeName(template.name, ' ', takenSheets) }));
  const reads = directReads(templates);
  const needed = new Set([...adding].flatMap((key) => [...reach(key, reads)]).filter((key) => !adding.has(key)));
  const reused = existing.filter(({ key }) => needed.has(key));
  const nameOf = new Map(templates.map(({ key, name }) => [key, name]));
  const sheets = new Map([
    ...reused.map(({ key, sheetName }) => [nameOf.get(key) ?? sheetName, sheetName] as const),
    ...added.map(({ template, sheetName }) => [template.name, sheetName] as const),
  ]);
  const ranges = new Map([
    ...reused.flatMap(({ names }) => Object.entries(names)),
    ...added.flatMap(({ template }) => template.names.map(({ name }) => [name, freeName(name, '_', takenRanges)] as const)),
  ]);
  return { added, reused, names: { sheets, ranges }, sheetsBefore: document.sheets.length };
}

/** A sheet that an updated set reads, of another set and of another version, comes first: else a blank one would be added in its place. */
export function refuseOlderOutside(
  { added }: InsertionPlan,
  updated: readonly SheetKey[],
  marked: readonly { readonly name: string; readonly mark: SheetMark }[],
): void {
  for (const { template } of added) {
    const outside = updated.includes(template.key)
      ? undefined
      : marked.find(({ mark }) => mark.key === template.key && mark.version !== template.version);
    if (outside !== undefined)
      throw new Error(
        `These sheets read "${outside.name}", which is of another version itself. Bring that one up to date first. Nothing was changed.`,
      );
  }
}

/** Keys come from the panel, so unknown ones are refused. */
export function knownKeys(templates: readonly SheetTemplate[], keys: readonly string[]): SheetKey[] {
  return keys.map((key) => {
    const found = templates.find((template) => template.key === key);
    if (found === undefined) throw new Error(`There is no sheet "${key}".`);
    return found.key;
  });
}

/** The mark of a new sheet. */
export const markFor = ({ key, version, names }: SheetTemplate, set: string, { ranges }: NewNames): SheetMark => ({
  key,
  version,
  set,
  names: Object.fromEntries(names.map(({ name }) => [name, ranges.get(name) ?? name])),
});

/** The set that new sheets join: that of the sheets they read, where it has none of their kind; undefined for one of their own. */
export function joinedSet({ added, reused }: InsertionPlan, marks: readonly Pick<SheetMark, 'set' | 'key'>[]): string | undefined {
  const joined = reused[0]?.set;
  return marks.some(({ set, key }) => set === joined && added.some(({ template }) => template.key === key)) ? undefined : joined;
}
