// Decides, before anything is changed, how a set of our sheets is brought up to date: what is added under which names,
// which names of ranges move to it, and what comes later. Throws a sentence where it cannot be done.
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import type { PanelGiven } from '../panel/host';
import type { NewNames } from '../workbook/formulaText';
import { planInsertion, refuseOlderOutside, type InsertionPlan } from '../workbook/insertionPlan';
import { googleDateHost } from './dateHost';
import { existingSheets, markedSheets, rangeOfName, type MarkedSheet } from './documentState';
import { fillTemplate, type FilledTemplate } from './fillTemplate';
import { laterEntries, type LaterEntries } from './laterEntries';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;

export interface UpdatePlan {
  /** The new sheets under names that are free now; range names under those they will have. */
  readonly insertion: InsertionPlan;
  readonly old: ReadonlyMap<SheetKey, MarkedSheet>;
  /** By the template's name of a range: the name of the old set that is to mean the new range. */
  readonly moved: ReadonlyMap<string, NamedRange>;
  readonly later: ReadonlyMap<SheetKey, LaterEntries>;
  /** Names of all sheets, in their order. */
  readonly sheetNames: readonly string[];
}

interface Named {
  readonly one: NamedRange;
  readonly name: string;
}

const again = 'Close the panel, open it again and try once more.';

/** The sheets of the set by key. */
function sheetsOfSet(
  marked: readonly MarkedSheet[],
  { set, entries }: PanelGiven<'updateSheets'>,
  templates: readonly SheetTemplate[],
): Map<SheetKey, MarkedSheet> {
  const old = new Map<SheetKey, MarkedSheet>();
  for (const one of marked.filter(({ mark }) => mark.set === set)) {
    const { name, mark } = one;
    const twin = old.get(mark.key);
    if (twin !== undefined)
      throw new Error(
        `"${twin.name}" and "${name}" are two of one kind, so it cannot be told which of them is in use. Delete one of them, or copy it with its formulas turned into values first, then ask again.`,
      );
    if (!templates.some(({ key }) => key === mark.key))
      throw new Error(`This version has no sheet of the kind of "${name}". Delete that sheet, then ask again.`);
    if (!entries.some(({ key }) => key === mark.key))
      throw new Error(`The entries of "${name}" did not come along, so nothing was changed. ${again}`);
    old.set(mark.key, one);
  }
  if (old.size === 0) throw new Error(`The sheets to be brought up to date are not in this document any more. ${again}`);
  return old;
}

/** Those names of ranges that were the set's own and still mean cells on its sheets; another one may be the user's. */
function ownNames(named: readonly Named[], old: ReadonlyMap<SheetKey, MarkedSheet>): Map<string, Named> {
  const sheets = new Set([...old.values()].map(({ name }) => name));
  const given = [...old.values()].flatMap(({ mark }) => Object.entries(mark.names));
  return new Map(
    given.flatMap(([ofTemplate, ofDocument]) => {
      const found = named.find(({ name, one }) => name === ofDocument && sheets.has(rangeOfName(one)?.getSheet().getName() ?? ''));
      return found === undefined ? [] : [[ofTemplate, found] as const];
    }),
  );
}

/** What the sheets and the ranges of the templates are called in the older set. */
function oldNames(old: ReadonlyMap<SheetKey, MarkedSheet>, templates: readonly SheetTemplate[]): NewNames {
  const sheets = templates.flatMap(({ key, name }): [string, string][] => {
    const sheet = old.get(key);
    return sheet === undefined ? [] : [[name, sheet.name]];
  });
  return { sheets: new Map(sheets), ranges: new Map([...old.values()].flatMap(({ mark }) => Object.entries(mark.names))) };
}

/** Today's templates with the entries; a sheet that was not there comes blank, for no invented number may stand among the user's. */
function filledTemplates(
  { entries }: PanelGiven<'updateSheets'>,
  old: ReadonlyMap<SheetKey, MarkedSheet>,
  templates: readonly SheetTemplate[],
): Map<SheetKey, FilledTemplate> {
  const names = oldNames(old, templates);
  return new Map(
    templates.map((template) => [template.key, fillTemplate(template, entries.find(({ key }) => key === template.key)?.cells ?? [], names)]),
  );
}

function laterOf(old: ReadonlyMap<SheetKey, MarkedSheet>, filled: ReadonlyMap<SheetKey, FilledTemplate>): Map<SheetKey, LaterEntries> {
  const dates = googleDateHost();
  return new Map(
    [...old].flatMap(([key, before]) => {
      const one = filled.get(key);
      return one === undefined ? [] : [[key, laterEntries(one, before, dates)] as const];
    }),
  );
}

export function planUpdate(document: Document, given: PanelGiven<'updateSheets'>, templates: readonly SheetTemplate[]): UpdatePlan {
  const marked = markedSheets(document);
  const old = sheetsOfSet(marked, given, templates);
  const filled = filledTemplates(given, old, templates);
  const sheetNames = document.getSheets().map((sheet) => sheet.getName());
  const named = document.getNamedRanges().map((one) => ({ one, name: one.getName() }));
  const ranges = named.map(({ name }) => name);
  const wanted = [...old.keys()];
  const everything = templates.every(({ key }) => wanted.includes(key));
  const outside = everything ? [] : existingSheets(document, templates, new Set(ranges)).filter(({ set }) => set !== given.set);
  const plan = planInsertion(
    wanted,
    [...filled.values()].map(({ template }) => template),
    { sheets: sheetNames, ranges },
    outside,
  );
  refuseOlderOutside(plan, wanted, marked);
  const own = ownNames(named, old);
  const kept = [...own].map(([ofTemplate, { name }]) => [ofTemplate, name] as const);
  const moved = new Map([...own].map(([ofTemplate, { one }]) => [ofTemplate, one] as const));
  return {
    insertion: { ...plan, names: { ...plan.names, ranges: new Map([...plan.names.ranges, ...kept]) } },
    old,
    moved,
    later: laterOf(old, filled),
    sheetNames,
  };
}
