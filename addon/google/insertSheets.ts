// Inserts sheets into the document. Nothing of the user's is touched: names that are taken get a number, and where a step
// fails, everything added so far is removed and the reason said.
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { joinedSet, planInsertion, type InsertionPlan } from '../workbook/insertionPlan';
import { withSeparator } from './argumentSeparator';
import { existingSheets, markedSheets } from './documentState';
import { toldTo, unfollowed, type Follow } from './followedRun';
import { withDocumentLock } from './withDocumentLock';
import { transaction, type Did } from './transaction';
import { writeValidations } from './writeRules';
import { writeSheets } from './writeSheets';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface InsertReport {
  /** Names of the sheets added. */
  readonly inserted: readonly string[];
  /** Names of sheets that were there already and that the new ones read. */
  readonly reads: readonly string[];
}

const words = { refused: 'No sheet was inserted', restored: 'everything added was removed again', byHand: 'remove by hand' };

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
function makeSheets(document: Document, { added, names, sheetsBefore }: InsertionPlan, did: Did): Sheet[] {
  const lastFirst = [...added].reverse().map(({ sheetName }) => {
    const sheet = document.insertSheet(sheetName, sheetsBefore);
    did(`the sheet ${sheetName}`, () => document.deleteSheet(sheet));
    return sheet;
  });
  const sheets = lastFirst.reverse();
  added.forEach(({ template }, index) => {
    for (const { name, range } of template.names) {
      const given = names.ranges.get(name) ?? name;
      const area = sheets[index]?.getRange(range);
      if (area === undefined) continue;
      document.setNamedRange(given, area);
      did(`the name ${given}`, () => document.removeNamedRange(given));
    }
  });
  return sheets;
}

function insert(wanted: readonly SheetKey[], templates: readonly SheetTemplate[], follow: Follow): InsertReport {
  const document = SpreadsheetApp.getActive();
  const plan = makePlan(document, wanted, templates);
  const marks = plan.reused.length === 0 ? [] : markedSheets(document).map(({ mark }) => mark);
  return transaction(words, (did) => {
    const told = toldTo(follow, plan);
    told.making();
    const sheets = makeSheets(document, plan, did);
    const asked = withSeparator(plan, sheets);
    writeSheets(asked, sheets, told.writing, joinedSet(plan, marks));
    told.rules();
    writeValidations(asked, sheets);
    return { inserted: plan.added.map(({ sheetName }) => sheetName), reads: plan.reused.map(({ sheetName }) => sheetName) };
  });
}

export const insertSheets = (wanted: readonly SheetKey[], templates: readonly SheetTemplate[], follow = unfollowed): InsertReport =>
  withDocumentLock(() => insert(wanted, templates, follow));
