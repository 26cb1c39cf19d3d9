// What the menu and the panel ask for. Runs with the user's authorisation (menu items and panel calls always do).
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import type { PanelAnswer, PanelGiven, PanelQuestion } from '../panel/host';
import { demoOn } from '../workbook/demoOn';
import { rewriteFormula } from '../workbook/formulaText';
import { knownKeys } from '../workbook/insertionPlan';
import { templatesInPage } from '../workbook/packedTemplates';
import { addFlight } from './addFlight';
import { changeCells } from './changeCells';
import { followed, unfollowed, type Follow } from './followedRun';
import { freezeSheet } from './freezeSheet';
import { goTo } from './goTo';
import { insertSheets, type InsertReport } from './insertSheets';
import type { PanelApi } from './panelApi';
import { readWorkbook } from './readWorkbook';
import { reasonOf } from './reason';
import { updateSheets } from './updateSheets';
import { writeEntries } from './writeEntries';

const title = 'Rampwright';

const panelPage = (): GoogleAppsScript.HTML.HtmlOutput => HtmlService.createHtmlOutputFromFile('panel');

export function openPanel(): void {
  SpreadsheetApp.getUi().showSidebar(panelPage().setTitle(title));
}

const everySheet = (): SheetTemplate[] => templatesInPage(panelPage().getContent());

/** The day of today as the spreadsheet's own clock has it, which TODAY() in its cells means too. */
function spreadsheetToday(): string {
  return Utilities.formatDate(new Date(), SpreadsheetApp.getActive().getSpreadsheetTimeZone(), 'yyyy-MM-dd');
}

const freshSheets = (): SheetTemplate[] => demoOn(everySheet(), spreadsheetToday());

function insertedInWords({ inserted, reads }: InsertReport): string {
  const read = reads.length === 0 ? '' : ` They read what was there already: ${reads.join(', ')}.`;
  return `Inserted: ${inserted.join(', ')}.${read}`;
}

/** From the menu: the outcome is told in the document, a refusal in a dialog that waits to be read. */
function insertFromMenu(wanted: (templates: readonly SheetTemplate[]) => readonly SheetKey[]): void {
  try {
    const templates = freshSheets();
    SpreadsheetApp.getActive().toast(insertedInWords(insertSheets(wanted(templates), templates)), title, 10);
  } catch (thrown) {
    const ui = SpreadsheetApp.getUi();
    ui.alert(title, reasonOf(thrown), ui.ButtonSet.OK);
  }
}

export const insertEverySheet = (): void => insertFromMenu((templates) => templates.map(({ key }) => key));

export const insertOneSheet = (key: SheetKey): void => insertFromMenu(() => [key]);

/** Puts a formula into the selected cell, if that is empty. */
function putFormula(formula: string): PanelAnswer<'putFormula'> {
  if (!formula.startsWith('=')) throw new Error('A formula starts with an equals sign.');
  const cell = SpreadsheetApp.getCurrentCell();
  if (cell === null) throw new Error('Select a cell in the sheet first.');
  const place = cell.getA1Notation();
  if (cell.getFormula() !== '' || cell.getDisplayValue() !== '')
    throw new Error(`Cell ${place} is not empty, and nothing is overwritten. Select an empty cell.`);
  cell.setFormula(rewriteFormula(formula, { sheets: new Map(), ranges: new Map() }));
  return { cell: place };
}

function insertForPanel(keys: readonly string[], follow: Follow): InsertReport {
  const templates = freshSheets();
  return insertSheets(knownKeys(templates, keys), templates, follow);
}

const answers: { readonly [Question in PanelQuestion]: (given: PanelGiven<Question>, follow: Follow) => PanelAnswer<Question> } = {
  insertSheets: ({ keys }, follow) => insertForPanel(keys, follow),
  putFormula: ({ formula }) => putFormula(formula),
  readWorkbook,
  goTo,
  freezeSheet,
  updateSheets: (given, follow) => updateSheets(given, everySheet(), follow),
  writeEntries,
  addFlight,
  changeCells,
};

/** The panel's one door: plain data in, plain data out, and a refusal as a sentence rather than as an exception. */
export const answerPanel: PanelApi = (question, given, run) => {
  const answer = Object.prototype.hasOwnProperty.call(answers, question) ? answers[question] : undefined;
  if (answer === undefined)
    return { refusal: `The panel asked for "${String(question)}", which this version cannot do. Close the panel and open it again.` };
  try {
    return { answer: answer(given, typeof run === 'string' ? followed(run) : unfollowed) };
  } catch (thrown) {
    return { refusal: reasonOf(thrown) };
  }
};
