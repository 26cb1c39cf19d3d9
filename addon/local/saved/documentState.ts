// What of ours a saved workbook has already, and what is free in it.
import type { IWorkbookData, IWorksheetData } from '@univerjs/core';
import { joinedSet, type ExistingSheet, type InsertionPlan } from '../../workbook/insertionPlan';
import type { SheetMark } from '../../workbook/snapshot';
import { isUnmoved } from '../../workbook/keys';
import type { SheetKey, SheetTemplate } from '../../../sheets-templates/template';
import { firstSet, markOf } from '../engine/sheetMark';
import { sheetIdOf } from '../engine/workbookIds';
import { isDrawnName, nameIds } from '../engine/workbookResources';
import { nameRecords, rangeNamesIn, sheetSnapshot } from '../engine/workbookSnapshot';

export interface MarkedSheet {
  readonly sheetId: string;
  readonly name: string;
  readonly sheet: Partial<IWorksheetData>;
  readonly mark: SheetMark;
}

/** Every sheet of ours, in their order. */
export function markedSheets(data: IWorkbookData): MarkedSheet[] {
  const rangeNames = rangeNamesIn(data);
  return data.sheetOrder.flatMap((sheetId) => {
    const sheet = data.sheets[sheetId];
    const mark = sheet === undefined ? undefined : markOf(sheet, rangeNames);
    return sheet === undefined || mark === undefined ? [] : [{ sheetId, name: sheet.name ?? '', sheet, mark }];
  });
}

/** Of sheets as they are saved only the keys are asked for, so that nothing of the engine is needed. */
const noEngine = { spilled: {}, moveFormula: (formula: string): string => formula };

/** Sheets of ours that a new sheet may refer to: of this version, laid out as written, their names still there. */
export function existingSheets(data: IWorkbookData, templates: readonly SheetTemplate[]): ExistingSheet[] {
  const rangeNames = rangeNamesIn(data);
  return markedSheets(data).flatMap(({ sheetId, name, sheet, mark: { key, version, set, names } }) => {
    const template = templates.find((one) => one.key === key && one.version === version);
    const named = Object.values(names).every((one) => rangeNames.has(one));
    if (template === undefined || !named || !isUnmoved(template, sheetSnapshot(sheet, rangeNames, noEngine))) return [];
    return [{ key, sheetName: name, sheetId, set, names }];
  });
}

export const sheetNamesIn = (data: IWorkbookData): string[] => data.sheetOrder.map((id) => data.sheets[id]?.name ?? '');

/** An identifier that no sheet has, nor anything left behind by a sheet that was deleted. */
export function freeSheetId(data: IWorkbookData, key: SheetKey): string {
  const records = nameRecords(data);
  const taken = (id: string): boolean =>
    data.sheets[id] !== undefined || records.some((one) => one.id.startsWith(nameIds(id)) || isDrawnName(id, one.name));
  let free = sheetIdOf(key);
  for (let next = 2; taken(free); next += 1) free = `${sheetIdOf(key)}-${next}`;
  return free;
}

export function freshSet(marks: readonly SheetMark[]): string {
  let free = firstSet;
  for (let next = 2; marks.some(({ set }) => set === free); next += 1) free = `${firstSet}-${next}`;
  return free;
}

/** The set that new sheets join, or a fresh one of their own. */
export function setFor(data: IWorkbookData, plan: InsertionPlan): string {
  const marks = markedSheets(data).map(({ mark }) => mark);
  return joinedSet(plan, marks) ?? freshSet(marks);
}
