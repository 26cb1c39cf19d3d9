// A saved workbook of an earlier version, in which the rule of a tint was a formula that looked at a cell by its place: after rows were put
// in, each verdict was coloured by another one. Its rules get the word itself, and rows that were put in lose the tint they took along. Pure.
import type { ICellData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { verdictTints } from '../../../sheets-templates/look';
import type { CellRange } from '../engine/a1';
import { isHighlight, tintedWord, tintResource, wordRule, type TintRule } from '../engine/tintRules';
import { resourceIn, withResource } from '../engine/workbookData';

/** The word in a rule of an earlier version, which looks at a cell by its place: =J11="NO". */
function wordOfOldRule(one: TintRule): string | undefined {
  const word = isHighlight(one, 'formula') ? /^=\$?[A-Z]+\$?\d+="([A-Z]+)"$/.exec(String(one.rule.value))?.[1] : undefined;
  return word !== undefined && word in verdictTints ? word : undefined;
}

/** The rule with the word of its own cells, where it is one of an earlier version: whatever rows were put in, its ranges are right. */
function ofItsOwnCells(one: TintRule): TintRule {
  const word = wordOfOldRule(one);
  return word === undefined ? one : { ...one, rule: wordRule(word, one.rule.style) };
}

type Cells = Record<number, Record<number, ICellData>>;

/** The cells without a tint of their own: in an earlier version, rows put in took that of the verdict beside them. */
function withoutLeftTints(sheet: Partial<IWorksheetData>, styles: IWorkbookData['styles'], ranges: readonly CellRange[]): Partial<IWorksheetData> {
  const tints: readonly string[] = Object.values(verdictTints);
  const cells = structuredClone(sheet.cellData ?? {}) as Cells;
  for (const { startRow, endRow, startColumn, endColumn } of ranges) {
    for (let row = startRow; row <= endRow; row += 1) {
      for (let column = startColumn; column <= endColumn; column += 1) {
        const cell = cells[row]?.[column];
        const style = typeof cell?.s === 'string' ? styles[cell.s] : cell?.s;
        if (cell === undefined || !style?.bg || !tints.includes(style.bg.rgb ?? '')) continue;
        cell.s = { ...style, bg: null };
      }
    }
  }
  return { ...sheet, cellData: cells };
}

function withRulesByWord(data: IWorkbookData): IWorkbookData {
  const rules = Object.entries(resourceIn<readonly TintRule[]>(data, tintResource));
  return withResource(data, tintResource, Object.fromEntries(rules.map(([sheetId, ofSheet]) => [sheetId, ofSheet.map(ofItsOwnCells)])));
}

/** A saved workbook whose tints follow the words, also where an earlier version wrote it. */
export function withTintsByWord(data: IWorkbookData): IWorkbookData {
  const byWord = withRulesByWord(data);
  const rules = Object.entries(resourceIn<readonly TintRule[]>(byWord, tintResource));
  const sheets = rules.flatMap(([sheetId, ofSheet]) => {
    const [sheet, ranges] = [data.sheets[sheetId], ofSheet.filter((one) => tintedWord(one) !== undefined).flatMap((one) => one.ranges)];
    return sheet === undefined ? [] : [[sheetId, withoutLeftTints(sheet, data.styles, ranges)]];
  });
  return { ...byWord, sheets: { ...data.sheets, ...(Object.fromEntries(sheets) as IWorkbookData['sheets']) } };
}
