// A saved workbook with a name of a sheet that the engine cannot read: the sheet gets one that it can, and what referred to it follows.
import type { IWorkbookData } from '@univerjs/core';
import { referencesOf, rewriteFormula } from '../../workbook/formulaText';
import { readableSheetName } from '../engine/sheetNaming';
import { withFormulasChanged } from './formulas';

function referredTo(data: IWorkbookData): ReadonlySet<string> {
  const found = new Set<string>();
  withFormulasChanged(data, (formula) => {
    for (const name of referencesOf(formula).sheets) found.add(name);
    return formula;
  });
  return found;
}

/** A sheet to which nothing refers keeps its name: nothing is lost by it. */
export function withReadableNames(data: IWorkbookData): IWorkbookData {
  const names = data.sheetOrder.map((id) => data.sheets[id]?.name ?? '');
  const renamed = new Map<string, string>();
  for (const name of names) {
    const others = [...names.filter((one) => one !== name), ...renamed.values()];
    const readable = readableSheetName(name, others);
    if (readable !== name) renamed.set(name, readable);
  }
  const referred = renamed.size === 0 ? new Set<string>() : referredTo(data);
  for (const name of renamed.keys()) if (!referred.has(name)) renamed.delete(name);
  if (renamed.size === 0) return data;
  const followed = withFormulasChanged(data, (formula) =>
    [...referencesOf(formula).sheets].some((name) => renamed.has(name))
      ? rewriteFormula(formula, { sheets: renamed, ranges: new Map() }, ',')
      : formula,
  );
  const sheets = Object.entries(followed.sheets).map(([id, sheet]) => [id, { ...sheet, name: renamed.get(sheet.name ?? '') ?? sheet.name ?? '' }]);
  return { ...followed, sheets: Object.fromEntries(sheets) as IWorkbookData['sheets'] };
}
