// Sets older sheets of ours aside: they stay, as the user's own, under the name "... (before)". Whatever named them follows, and
// they go on reading one another, also through the names of their ranges.
import type { IWorkbookData } from '@univerjs/core';
import { referencesOf, rewriteFormula, type NewNames } from '../../workbook/formulaText';
import { freeName } from '../../workbook/insertionPlan';
import { readSheetReference } from '../engine/a1';
import { noLongerOurs } from '../engine/sheetMark';
import { resourceIn, withResource } from '../engine/workbookData';
import { resourceNames, type NameRecord } from '../engine/workbookResources';
import { nameRecords, rangeNamesIn } from '../engine/workbookSnapshot';
import { sheetNamesIn, type MarkedSheet } from './documentState';
import { withFormulasChanged } from './formulas';

export interface SetAside {
  readonly data: IWorkbookData;
  /** From the names of sheets and ranges to those they have now. */
  readonly names: NewNames;
}

/** Cells of a sheet that its own name stands for; a name that the user has pointed elsewhere is the user's. */
function isOwnName(records: readonly NameRecord[], sheetName: string, name: string): boolean {
  const record = records.find((one) => one.name === name);
  return record !== undefined && readSheetReference(record.formulaOrRefString)?.sheet === sheetName;
}

/** The names of ranges that a sheet carries and still owns: template name and name in the workbook. */
export function ownNames(data: IWorkbookData, { name, mark }: MarkedSheet): [template: string, given: string][] {
  const records = nameRecords(data);
  return Object.entries(mark.names).filter(([, given]) => isOwnName(records, name, given));
}

function namesAside(data: IWorkbookData, old: readonly MarkedSheet[]): NewNames {
  const takenSheets = new Set(sheetNamesIn(data).map((name) => name.toLowerCase()));
  const takenRanges = new Set([...rangeNamesIn(data)].map((name) => name.toLowerCase()));
  const given = old.flatMap((one) => ownNames(data, one).map(([, name]) => name));
  return {
    sheets: new Map(old.map(({ name }) => [name, freeName(`${name} (before)`, ' ', takenSheets)])),
    ranges: new Map(given.map((name) => [name, freeName(`${name}_before`, '_', takenRanges)])),
  };
}

export function setAside(data: IWorkbookData, old: readonly MarkedSheet[]): SetAside {
  const names = namesAside(data, old);
  const oldIds = new Set(old.map(({ sheetId }) => sheetId));
  const followed = withFormulasChanged(data, (formula, sheetId) => {
    // Ranges keep their names elsewhere: there the new sheets take them over.
    const ranges = sheetId !== undefined && oldIds.has(sheetId) ? names.ranges : new Map<string, string>();
    const { sheets, words } = referencesOf(formula);
    const concerned = [...sheets].some((name) => names.sheets.has(name)) || [...words].some((word) => ranges.has(word));
    return concerned ? rewriteFormula(formula, { sheets: names.sheets, ranges }, ',') : formula;
  });
  const records = Object.entries(resourceIn<NameRecord>(followed, resourceNames.names)).map(([id, record]) => [
    id,
    { ...record, name: names.ranges.get(record.name) ?? record.name },
  ]);
  const sheets = old.map(({ sheetId, name }) => {
    const sheet = followed.sheets[sheetId];
    return [sheetId, { ...sheet, name: names.sheets.get(name) ?? name, custom: noLongerOurs(sheet?.custom) }];
  });
  const renamed = { ...followed, sheets: { ...followed.sheets, ...(Object.fromEntries(sheets) as IWorkbookData['sheets']) } };
  return { data: withResource(renamed, resourceNames.names, Object.fromEntries(records)), names };
}
