// Inserts sheets into a saved workbook. Pure: the workbook as it would be saved in, and out again. Nothing of the user's is
// touched: names that are taken get a number.
import type { IWorkbookData } from '@univerjs/core';
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import { knownKeys, markFor, planInsertion, type InsertionPlan } from '../../workbook/insertionPlan';
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
  const ids = new Map<SheetKey, string>([
    ...reused.map(({ key, sheetId }) => [key, sheetId] as const),
    ...added.map(({ template: { key } }) => [key, freeSheetId(data, key)] as const),
  ]);
  return added.map(({ template, sheetName }) => {
    const sheetId = ids.get(template.key) ?? '';
    return { template: underNames(template, sheetName, names), sheetId, mark: markFor(template, set, names), linkTo: (wanted) => ids.get(wanted) };
  });
}

export function withSheetsInserted(data: IWorkbookData, templates: readonly SheetTemplate[], keys: readonly string[]): Inserted {
  const wanted = knownKeys(templates, keys);
  const names = { sheets: sheetNamesIn(data), ranges: [...rangeNamesIn(data)] };
  const plan = planInsertion(wanted, templates, names, wanted.length === templates.length ? [] : existingSheets(data, templates));
  const placed = placedSheets(data, plan, setFor(data, plan));
  return {
    data: withSheetsAdded(data, placed),
    inserted: plan.added.map(({ sheetName }) => sheetName),
    reads: plan.reused.map(({ sheetName }) => sheetName),
  };
}
