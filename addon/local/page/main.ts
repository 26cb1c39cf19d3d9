// The page of the local workbook: loads the user's file into the grid, keeps it saved, shows why a cell is an error.
import './page.css';
import type { IWorkbookData } from '@univerjs/core';
import { SentenceBook } from '../engine/sentenceBook';
import { watchCalculation } from './calculation';
import { drawPictures } from './drawPictures';
import { elementNamed } from './elements';
import { offerFiles } from './filesStrip';
import { loadWorkbook, startGrid } from './grid';
import { liveWorkbook } from './liveWorkbook';
import { panelAnswers } from './panelAnswers';
import { printSheets } from './printSheet';
import { keepSaved } from './saving';
import { showSentences } from './sentenceStrip';
import { followLinks } from './sheetLinks';
import { showPanel } from './sidePanel';
import { tellAfterLoading } from './tellAfterLoading';
import { markTimes } from './times';

async function start(): Promise<void> {
  const book = new SentenceBook();
  const answer = await fetch('workbook');
  if (!answer.ok) throw new Error(await answer.text());
  const data = (await answer.json()) as IWorkbookData;
  const { api, injector } = startGrid('grid', book);
  api.getFormula().calculationStart(() => book.beginCalculation());
  drawPictures(api);
  markTimes(api);
  const calculated = watchCalculation(api);
  const workbook = loadWorkbook(api, data);
  followLinks(api, workbook);
  showSentences(api, workbook, book);
  const keeper = keepSaved(api, workbook, answer.headers.get('ETag') ?? '');
  const live = liveWorkbook(workbook, injector, calculated);
  offerFiles(live);
  printSheets(api, live);
  showPanel(panelAnswers(live, keeper));
  tellAfterLoading(workbook);
  // For the browser's console and the tests of the page.
  Object.assign(window, { rampwright: { api, workbook } });
}

start().catch((thrown: unknown) => {
  elementNamed('sentence').textContent = `The workbook could not be opened: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
});
