// Puts a set of sheets of today's version in the place of an older set in a saved workbook. Pure. The new sheets take over
// names and places, with the user's entries in them; the older ones stay beside them.
import type { IWorkbookData } from '@univerjs/core';
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import type { CarriedSheet } from '../../workbook/carriedInputs';
import { planInsertion, refuseOlderOutside, type InsertionPlan } from '../../workbook/insertionPlan';
import { withEntries } from '../../workbook/withEntries';
import type { PlacedTemplate } from '../engine/placedTemplate';
import { rangeNamesIn } from '../engine/workbookSnapshot';
import { withSheetsAdded } from './addedSheets';
import { existingSheets, markedSheets, sheetNamesIn, type MarkedSheet } from './documentState';
import { placedSheets } from './insertSheets';
import { withTimesKept } from './keptTimes';
import { ownNames, setAside } from './setAside';

export interface Updated {
  readonly data: IWorkbookData;
  /** Names of the sheets of today's version. */
  readonly updated: readonly string[];
  /** Names that the older sheets have now. */
  readonly kept: readonly string[];
}

/** The older sheets of a set, or why they cannot be brought up to date. */
function olderSheets(data: IWorkbookData, templates: readonly SheetTemplate[], set: string, entries: readonly CarriedSheet[]): MarkedSheet[] {
  const versions = new Map(templates.map(({ key, version }) => [key, version]));
  const old = markedSheets(data).filter(({ mark }) => mark.set === set && versions.has(mark.key));
  if (old.length === 0) throw new Error('The older sheets are no longer in this workbook. Nothing was changed.');
  if (old.every(({ mark }) => mark.version >= (versions.get(mark.key) ?? 0)))
    throw new Error("These sheets are of today's version already. Nothing was changed.");
  for (const { name, mark } of old) {
    const twin = old.find((other) => other.name !== name && other.mark.key === mark.key);
    if (twin !== undefined)
      throw new Error(`"${name}" and "${twin.name}" are two sheets of one kind in one set. Delete one of them first. Nothing was changed.`);
    if (!entries.some(({ key }) => key === mark.key)) throw new Error(`What was typed into "${name}" was not read. Ask again. Nothing was changed.`);
  }
  return old;
}

/**
 * Entries go in last, since formulas among them name sheets and ranges as this workbook does, not as the templates do. An
 * added sheet that the old set did not have comes blank: invented entries would count among the user's.
 */
const filled = (placed: readonly PlacedTemplate[], entries: readonly CarriedSheet[]): PlacedTemplate[] =>
  placed.map((one) => ({ ...one, template: withEntries(one.template, entries.find(({ key }) => key === one.mark.key)?.cells ?? []) }));

/** The plan of an insertion, with the names that the old sheets had. */
function planOf(data: IWorkbookData, aside: IWorkbookData, templates: readonly SheetTemplate[], old: readonly MarkedSheet[]): InsertionPlan {
  const taken = { sheets: [...sheetNamesIn(data), ...sheetNamesIn(aside)], ranges: [...rangeNamesIn(data), ...rangeNamesIn(aside)] };
  const plan = planInsertion(
    old.map(({ mark }) => mark.key),
    templates,
    taken,
    existingSheets(aside, templates),
  );
  const nameOf = new Map<SheetKey, string>(old.map(({ mark, name }) => [mark.key, name]));
  const added = plan.added.map((one) => ({ ...one, sheetName: nameOf.get(one.template.key) ?? one.sheetName }));
  const sheets = new Map([...plan.names.sheets, ...added.map(({ template, sheetName }) => [template.name, sheetName] as const)]);
  const ranges = new Map([...plan.names.ranges, ...old.flatMap((one) => ownNames(data, one))]);
  return { ...plan, added, names: { sheets, ranges } };
}

/** Each new sheet where its older one was, which moves one place to the right; one that is new to the set comes last. */
function orderOf(order: readonly string[], old: readonly MarkedSheet[], placed: ReadonlyMap<SheetKey, string>): string[] {
  const inPlace = order.flatMap((id) => {
    const mark = old.find(({ sheetId }) => sheetId === id)?.mark;
    return mark === undefined ? [id] : [placed.get(mark.key) ?? '', id];
  });
  return [...inPlace, ...[...placed.values()].filter((id) => !inPlace.includes(id))];
}

export function withSheetsUpdated(data: IWorkbookData, templates: readonly SheetTemplate[], set: string, entries: readonly CarriedSheet[]): Updated {
  const old = olderSheets(data, templates, set, entries);
  const { data: aside, names } = setAside(data, old);
  const plan = planOf(data, aside, templates, old);
  refuseOlderOutside(
    plan,
    old.map(({ mark }) => mark.key),
    markedSheets(aside),
  );
  const placed = filled(placedSheets(aside, plan, set), entries);
  const grown = placed.reduce(
    (kept, { sheetId, mark }) => {
      const before = old.find((one) => one.mark.key === mark.key);
      const cells = entries.find(({ key }) => key === mark.key)?.cells ?? [];
      return before === undefined ? kept : withTimesKept(kept, sheetId, cells, before.sheet, before.name);
    },
    withSheetsAdded(aside, placed),
  );
  const sheetOrder = orderOf(data.sheetOrder, old, new Map(placed.map(({ mark, sheetId }) => [mark.key, sheetId])));
  return {
    data: { ...grown, sheetOrder },
    updated: plan.added.map(({ sheetName }) => sheetName),
    kept: old.map(({ name }) => names.sheets.get(name) ?? name),
  };
}
