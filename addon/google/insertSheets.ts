// Inserts sheets into the document. Nothing of the user's is touched: names that are taken get a number, and where a step
// fails, everything added so far is removed and the reason said.
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { existingSheets } from './documentState';
import { planInsertion, type InsertionPlan } from '../workbook/insertionPlan';
import { reasonOf } from './reason';
import { writeSheets } from './writeSheets';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface InsertReport {
  /** Names of the sheets added. */
  readonly inserted: readonly string[];
  /** Names of sheets that were there already and that the new ones read. */
  readonly reads: readonly string[];
}

/** What this insertion has added so far, so that it can be taken away again. */
interface Added {
  readonly sheets: Sheet[];
  readonly ranges: string[];
}

function makePlan(document: Document, wanted: readonly SheetKey[], templates: readonly SheetTemplate[]): InsertionPlan {
  const names = {
    sheets: document.getSheets().map((sheet) => sheet.getName()),
    ranges: document.getNamedRanges().map((range) => range.getName()),
  };
  // Where every sheet is wanted, none of an earlier insertion is read, so none is looked for.
  const everything = templates.every(({ key }) => wanted.includes(key));
  const existing = everything ? [] : existingSheets(document, templates, new Set(names.ranges));
  return planInsertion(wanted, templates, names, existing);
}

/** All sheets first, then their names: a formula must find what it refers to when it is written. The last sheet inserted stays in sight, so the first comes last. */
function makeSheets(document: Document, { added, names, sheetsBefore }: InsertionPlan, made: Added): Sheet[] {
  const lastFirst = [...added].reverse().map(({ sheetName }) => {
    const sheet = document.insertSheet(sheetName, sheetsBefore);
    made.sheets.push(sheet);
    return sheet;
  });
  const sheets = lastFirst.reverse();
  added.forEach(({ template }, index) => {
    for (const { name, range } of template.names) {
      const given = names.ranges.get(name) ?? name;
      const area = sheets[index]?.getRange(range);
      if (area === undefined) continue;
      document.setNamedRange(given, area);
      made.ranges.push(given);
    }
  });
  return sheets;
}

function writeAll(document: Document, plan: InsertionPlan, made: Added): void {
  writeSheets(plan, makeSheets(document, plan, made), plan.reused[0]?.set);
  // Writes are kept back by the platform; only now is it known that all of them went through.
  SpreadsheetApp.flush();
}

/** Names of what could not be removed. */
function removeAll(document: Document, { sheets, ranges }: Added): string[] {
  const left: string[] = [];
  const attempt = (name: string, remove: () => void): void => {
    try {
      remove();
    } catch {
      left.push(name);
    }
  };
  for (const name of ranges) attempt(`the name ${name}`, () => document.removeNamedRange(name));
  for (const sheet of sheets) attempt(`a sheet just added`, () => document.deleteSheet(sheet));
  return left;
}

export function insertSheets(wanted: readonly SheetKey[], templates: readonly SheetTemplate[]): InsertReport {
  const document = SpreadsheetApp.getActive();
  const plan = makePlan(document, wanted, templates);
  const made: Added = { sheets: [], ranges: [] };
  try {
    writeAll(document, plan, made);
  } catch (thrown) {
    const left = removeAll(document, made);
    const state = left.length === 0 ? 'everything added was removed again' : `remove by hand: ${left.join(', ')}`;
    throw new Error(`No sheet was inserted, because Google Sheets refused a step; ${state}. It said: ${reasonOf(thrown).replace(/\.?\s*$/, '.')}`);
  }
  return { inserted: plan.added.map(({ sheetName }) => sheetName), reads: plan.reused.map(({ sheetName }) => sheetName) };
}
