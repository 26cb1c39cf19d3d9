// Brings a set of our sheets up to date: sheets of today with the user's entries take over the names, and the older ones
// stay beside them under another name. The older ones keep their names until the new ones are written, so that a run cut
// off by the platform leaves them as they were.
import type { SheetTemplate } from '../../sheets-templates/template';
import type { PanelAnswer, PanelGiven } from '../panel/host';
import { withSeparator } from './argumentSeparator';
import { writeMark, type MarkedSheet } from './documentState';
import { toldTo, unfollowed, type Follow } from './followedRun';
import { freeSheetName } from './freeSheetName';
import { withDocumentLock } from './withDocumentLock';
import { writeLater } from './laterEntries';
import { transaction, type Did } from './transaction';
import { planUpdate, type UpdatePlan } from './updatePlan';
import { writeValidations } from './writeRules';
import { writeSheets } from './writeSheets';

type Document = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const words = { refused: 'The sheets were not brought up to date', restored: 'everything is as it was', byHand: 'put right by hand' };

/** Each new sheet where its older one stands, which moves one place to the right; a sheet of a new kind comes last. */
function makeSheets(document: Document, { insertion, old, sheetNames }: UpdatePlan, did: Did): Sheet[] {
  const order = [...sheetNames];
  return insertion.added.map(({ template, sheetName }) => {
    const place = order.indexOf(old.get(template.key)?.name ?? '');
    const index = place < 0 ? order.length : place;
    order.splice(index, 0, sheetName);
    const sheet = document.insertSheet(sheetName, index);
    did(`the sheet ${sheetName}`, () => document.deleteSheet(sheet));
    return sheet;
  });
}

/** Names that the older sheets did not have. */
function makeNames(document: Document, { insertion: { added, names }, moved }: UpdatePlan, sheets: readonly Sheet[], did: Did): void {
  added.forEach(({ template }, index) => {
    for (const { name, range } of template.names) {
      const [sheet, given] = [sheets[index], names.ranges.get(name) ?? name];
      if (sheet === undefined || moved.has(name)) continue;
      document.setNamedRange(given, sheet.getRange(range));
      did(`the name ${given}`, () => document.removeNamedRange(given));
    }
  });
}

function rename(sheet: Sheet, before: string, now: string, did: Did): void {
  sheet.setName(now);
  did(`the name of the sheet ${before}`, () => sheet.setName(before));
}

/** The new sheets take over what the older ones are called; formulas that name a sheet follow it. Gives the older ones' new names. */
function takeOverNames({ insertion, old, sheetNames }: UpdatePlan, sheets: readonly Sheet[], did: Did): string[] {
  const taken = [...sheetNames, ...insertion.added.map(({ sheetName }) => sheetName)];
  return insertion.added.flatMap(({ template, sheetName }, index) => {
    const [sheet, before] = [sheets[index], old.get(template.key)];
    if (sheet === undefined || before === undefined) return [];
    const kept = freeSheetName(before.name, ' (before)', taken);
    taken.push(kept);
    rename(before.sheet, before.name, kept, did);
    rename(sheet, sheetName, before.name, did);
    return [kept];
  });
}

function moveRanges({ insertion, moved }: UpdatePlan, sheets: readonly Sheet[], did: Did): void {
  insertion.added.forEach(({ template }, index) => {
    for (const { name, range } of template.names) {
      const [sheet, named] = [sheets[index], moved.get(name)];
      if (sheet === undefined || named === undefined) continue;
      const before = named.getRange();
      named.setRange(sheet.getRange(range));
      did(`the name ${insertion.names.ranges.get(name) ?? name}`, () => named.setRange(before));
    }
  });
}

function removeMark({ sheet, name, mark, metadata }: MarkedSheet, did: Did): void {
  metadata.remove();
  did(`the mark of ${name}`, () => writeMark(sheet, mark));
}

function update(document: Document, plan: UpdatePlan, follow: Follow, did: Did): PanelAnswer<'updateSheets'> {
  const { old, later } = plan;
  const inSight = document.getActiveSheet();
  const nameInSight = inSight.getName();
  did('the sheet in sight', () => document.setActiveSheet(inSight));
  const told = toldTo(follow, plan.insertion);
  told.making();
  const sheets = makeSheets(document, plan, did);
  const insertion = withSeparator(plan.insertion, sheets);
  makeNames(document, plan, sheets, did);
  writeSheets(insertion, sheets, told.writing);
  told.rules();
  const kept = takeOverNames(plan, sheets, did);
  moveRanges(plan, sheets, did);
  const updated = insertion.added.map(({ template, sheetName }, index) => {
    const [sheet, entries] = [sheets[index], later.get(template.key)];
    if (sheet !== undefined && entries !== undefined) writeLater(sheet, entries);
    return old.get(template.key)?.name ?? sheetName;
  });
  writeValidations(insertion, sheets);
  for (const one of old.values()) removeMark(one, did);
  document.setActiveSheet(sheets[updated.indexOf(nameInSight)] ?? inSight);
  return { updated, kept };
}

export function updateSheets(
  given: PanelGiven<'updateSheets'>,
  templates: readonly SheetTemplate[],
  follow = unfollowed,
): PanelAnswer<'updateSheets'> {
  return withDocumentLock(() => {
    const document = SpreadsheetApp.getActive();
    const plan = planUpdate(document, given, templates);
    return transaction(words, (did) => update(document, plan, follow, did));
  });
}
