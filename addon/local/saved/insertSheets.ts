// Inserts sheets into a saved workbook. Pure: the workbook as it would be saved in, and out again. Nothing of the user's is
// touched: names that are taken get a number.
import type { IWorkbookData } from '@univerjs/core';
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import { planInsertion, type InsertionPlan } from '../../workbook/insertionPlan';
import { underNames, type PlacedTemplate } from '../engine/placedTemplate';
import { rangeNamesIn } from '../engine/workbookSnapshot';
import { withSheetsAdded } from './addedSheets';
import { existingSheets, freeSheetId, setFor, sheetNamesIn } from './documentState';

export interface Inserted {
  readonly data: IWorkbookData;
  /** Names of the sheets added. */
  readonly inserted: readonly string[];
  /** Names of sheets that were there already and that the new ones read. */
  readonly reads: readonly string[];
}

/** The sheets of a plan under their names, ready to be put into the workbook. */
export function placedSheets(data: IWorkbookData, { added, reused, names }: InsertionPlan, set: string): PlacedTemplate[] {
  const ids = new Map<SheetKey, string>([...reused.map(({ key, sheetId }) => [key, sheetId] as const), ...added.map(({ template: { key } }) => [key, freeSheetId(data, key)] as const)]);
  return added.map(({ template, sheetName }) => {
    const { key, version } = template;
    const given = template.names.map(({ name }) => [name, names.ranges.get(name) ?? name]);
    const mark = { key, version, set, names: Object.fromEntries(given) as Record<string, string> };
    return { template: underNames(template, sheetName, names), sheetId: ids.get(key) ?? '', mark, linkTo: (wanted) => ids.get(wanted) };
  });
}

/** Keys come from the panel, so unknown ones are refused. */
function knownKeys(templates: readonly SheetTemplate[], keys: readonly string[]): SheetKey[] {
  return keys.map((key) => {
    const found = templates.find((template) => template.key === key);
    if (found === undefined) throw new Error(`There is no sheet "${key}".`);
    return found.key;
  });
}

export function withSheetsInserted(data: IWorkbookData, templates: readonly SheetTemplate[], keys: readonly string[]): Inserted {
  const wanted = knownKeys(templates, keys);
  const names = { sheets: sheetNamesIn(data), ranges: [...rangeNamesIn(data)] };
  const plan = planInsertion(wanted, templates, names, wanted.length === templates.length ? [] : existingSheets(data, templates));
  const placed = placedSheets(data, plan, setFor(data, plan));
  return { data: withSheetsAdded(data, placed), inserted: plan.added.map(({ sheetName }) => sheetName), reads: plan.reused.map(({ sheetName }) => sheetName) };
}
