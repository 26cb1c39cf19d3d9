// The page: loads the user's workbook into the grid, keeps it saved, shows why a cell is an error.
import './page.css';
import './pocket/pocket.css';
import './tracing/tracing.css';
import { ICommandService } from '@univerjs/core';
import { CellErrors } from '../engine/cellErrors';
import { keepNamesReadable, sheetNamesBut } from '../engine/sheetNaming';
import { isLater, laterSentence } from '../saved/fileFormat';
import { withReadableNames } from '../saved/readableNames';
import { withTintsByWord } from '../saved/tintsByWord';
import { watchCalculation } from './calculation';
import { copyTabs } from './copyTabs';
import { drawPictures } from './drawPictures';
import { elementNamed } from './elements';
import { offerFindAndSort } from './findAndSort';
import { offerFiles } from './filesStrip';
import { offerStatements } from './allStatements';
import { loadWorkbook, startGrid } from './grid';
import type { Keeper, KeptFile } from './keeper';
import { markLastValues } from './lastValues';
import { liveWorkbook, type LiveWorkbook } from './liveWorkbook';
import { offerPocket } from './pocket/pocketView';
import { pageBook } from './pageBook';
import { panelAnswers } from './panelAnswers';
import { printSheets } from './printSheet';
import { noAutosave, startAutosave, type Autosave } from './autosave';
import { keepFormulaBarWidth } from './formulaBarWidth';
import { readAsWritten } from './readAsWritten';
import { showSentences } from './sentenceStrip';
import { followLinks } from './sheetLinks';
import { showPanel } from './sidePanel';
import { keepRowsTall } from './tallRows';
import { tellAfterLoading } from './tellAfterLoading';
import { markTimes } from './times';
import { notify } from './notices';
import { scrollByTouch } from './touchGrid';

export interface StartedPage {
  readonly live: LiveWorkbook;
  readonly autosave: Autosave;
  readonly file: KeptFile;
}

async function start(keeper: Keeper): Promise<StartedPage> {
  const book = new CellErrors();
  const { data, file, said } = await keeper.open();
  const { api, injector, keepFormulasOf, keepListsOf } = startGrid('grid', book);
  api.getFormula().calculationStart(() => book.beginCalculation());
  scrollByTouch(elementNamed('grid'));
  drawPictures(api);
  markTimes(api);
  const calculated = watchCalculation(api);
  markLastValues(api, data);
  const workbook = loadWorkbook(api, withTintsByWord(withReadableNames(data)));
  const tellName = (wanted: string, given: string): void =>
    notify(`A sheet cannot be called "${wanted}" here, since formulas could not refer to it. It is called "${given}".`);
  keepNamesReadable(injector.get(ICommandService), (sheetId) => sheetNamesBut(workbook, sheetId), tellName);
  keepFormulasOf(workbook);
  keepListsOf(workbook);
  readAsWritten(injector);
  keepFormulaBarWidth(injector);
  keepRowsTall(api, workbook);
  followLinks(api, workbook);
  showSentences(api, injector, workbook, book);
  const later = isLater(data);
  const autosave = later ? noAutosave() : startAutosave(api, workbook, keeper, file, pageBook(api, injector, workbook), data);
  const live = liveWorkbook(workbook, injector, calculated);
  copyTabs(injector, live, autosave);
  offerFiles(live);
  offerStatements(live);
  offerFindAndSort(injector, live);
  printSheets(api, live);
  showPanel(panelAnswers(injector, live, autosave));
  offerPocket(api, injector, live);
  tellAfterLoading(workbook, said);
  if (later) notify(laterSentence);
  // For the browser's console and the tests of the page.
  Object.assign(window, { rampwright: { api, workbook } });
  return { live, autosave, file };
}

/** Undefined where the workbook could not be opened, which the page says. */
export const startPage = (keeper: Keeper): Promise<StartedPage | undefined> =>
  start(keeper).catch((thrown: unknown) => {
    elementNamed('sentence').textContent = `The workbook could not be opened: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
    return undefined;
  });
