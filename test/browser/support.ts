// Serves the built page from a file of its own, and drives it in Chromium: cells by their A1 names, keys as typed.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type Page } from 'playwright-core';
import { buildPage } from '../../addon/local/buildPage';
import { workbookData } from '../../addon/local/engine/workbookData';
import { newKey } from '../../addon/local/server/key';
import { serve, type RunningServer } from '../../addon/local/server/server';
import { WorkbookFile } from '../../addon/local/server/workbookFile';
import { demoDay } from '../../sheets-templates/demo/day';
import type { SheetTemplate } from '../../sheets-templates/template';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

interface Served {
  readonly address: string;
  readonly filePath: string;
  /** Ends the server, and starts it again at the same address. */
  pause(): Promise<void>;
  resume(): Promise<void>;
  stop(): Promise<void>;
}

async function serveTemplates(templates: readonly SheetTemplate[]): Promise<Served> {
  const { folder } = await buildPage(root);
  const home = await mkdtemp(join(tmpdir(), 'rampwright-test-'));
  const file = new WorkbookFile(join(home, 'workbook.json'), () => JSON.stringify(workbookData(templates)));
  const key = newKey();
  let server: RunningServer = await serve({ folder, file, key, port: 0 });
  return {
    address: server.address,
    filePath: file.path,
    pause: () => server.close(),
    resume: async () => {
      server = await serve({ folder, file, key, port: Number(new URL(server.address).port) });
    },
    stop: async () => {
      await server.close();
      await rm(home, { recursive: true, force: true });
    },
  };
}

export const browserPath = process.env['CHROME_PATH'] ?? '/usr/bin/chromium';

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: browserPath, args: flags });

/** Requests that leave this machine, and errors of the page. */
export interface Watched {
  readonly foreign: string[];
  readonly errors: string[];
}

export function watch(page: Page): Watched {
  const watched: Watched = { foreign: [], errors: [] };
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (hostname !== '127.0.0.1' && !['data:', 'blob:', 'about:'].includes(protocol)) watched.foreign.push(request.url());
  });
  page.on('pageerror', (error) => watched.errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') watched.errors.push(message.text());
  });
  return watched;
}

export interface OpenWorkbook extends Served {
  readonly page: Page;
  readonly watched: Watched;
}

/** Runs in every page before its own scripts: its clock stands at noon of the day of the demonstration when it is opened, and goes on from there. */
export const onDemoDay = `{
  const Clock = Date;
  const ahead = new Clock('${demoDay}T12:00:00').getTime() - Clock.now();
  globalThis.Date = class extends Clock {
    constructor(...given) {
      if (given.length === 0) super(Clock.now() + ahead);
      else super(...given);
    }
    static now() {
      return Clock.now() + ahead;
    }
  };
}`;

/** The built page before a workbook of these templates, drawn and calculated, in a browser that `stop` ends with the server. */
export async function openWorkbook(templates: readonly SheetTemplate[]): Promise<OpenWorkbook> {
  const served = await serveTemplates(templates);
  const browser = await launch();
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.addInitScript(onDemoDay);
  const watched = watch(page);
  await openPage(page, served.address);
  const stop = async (): Promise<void> => {
    await browser.close();
    await served.stop();
  };
  return { ...served, page, watched, stop };
}

/** For people to look at. */
export const takePicture = (page: Page, name: string): Promise<Buffer> => page.screenshot({ path: join(root, 'build/screenshots', `${name}.png`) });

/** Milliseconds: a machine that is busy with other tests takes its time, and no test is about that. */
const patience = 60_000;

/** Asks until the page says yes. (The page's own policy forbids Playwright's way of waiting for a text of code.) */
export async function until(page: Page, expression: string): Promise<void> {
  const deadline = performance.now() + patience;
  while (!(await page.evaluate<boolean>(expression))) {
    if (performance.now() > deadline) throw new Error(`waited a minute in vain for: ${expression}`);
    await page.waitForTimeout(10);
  }
}

/** Runs a piece of code in the page, where `workbook` is the grid's own. */
export const inPage = <Result>(page: Page, code: string): Promise<Result> =>
  page.evaluate<Result>(`(() => { const { workbook } = window.rampwright; ${code} })()`);

export const calculations = (page: Page): Promise<number> => page.evaluate<number>("performance.getEntriesByName('calculated').length");

export async function openPage(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await untilCalculated(page);
}

/** After a page began to load. */
export async function untilCalculated(page: Page): Promise<void> {
  await until(page, "performance.getEntriesByName('calculated').length > 0 && performance.getEntriesByName('grid drawn').length > 0");
  // The grid takes no keys until its lazy parts are in.
  await page.waitForTimeout(500);
}

export const showSheet = async (page: Page, name: string): Promise<void> => {
  await inPage(page, `workbook.setActiveSheet(workbook.getSheetByName(${JSON.stringify(name)}));`);
  await page.waitForTimeout(300);
};

export const activeSheet = (page: Page): Promise<string> => inPage(page, 'return workbook.getActiveSheet().getSheetName();');

/** The cell as the grid shows it. */
export const shown = (page: Page, cell: string): Promise<unknown> =>
  inPage(page, `return workbook.getActiveSheet().getRange(${JSON.stringify(cell)}).getValue();`);

/** The first cell behind a name of the workbook, as the grid shows it. */
export const valueNamed = (page: Page, name: string): Promise<unknown> =>
  inPage(
    page,
    `const [sheet, range] = workbook.getDefinedName(${JSON.stringify(name)}).getFormulaOrRefString().split('!');
     return workbook.getSheetByName(sheet.replace(/^'|'$/g, '')).getRange(range).getValue();`,
  );

export interface Point {
  readonly x: number;
  readonly y: number;
}

const middleOf = (cell: string): string =>
  `const box = workbook.getActiveSheet().getRange(${JSON.stringify(cell)}).getCellRect();
   const canvases = [...document.querySelectorAll('canvas')].sort((a, b) => b.width * b.height - a.width * a.height);
   const grid = canvases[0].getBoundingClientRect();
   const middle = { x: grid.left + box.x + box.width / 2, y: grid.top + box.y + box.height / 2 };`;

/** Where the middle of a cell is drawn. */
export const centreOf = (page: Page, cell: string): Promise<Point> => inPage(page, `${middleOf(cell)} return middle;`);

/**
 * Selects a cell that is out of sight: a click beyond the grid would fall on a tab, and the typing into another sheet. The click gives the
 * keyboard to the grid. False where the cell is in sight.
 */
async function selectOutOfSight(page: Page, cell: string): Promise<boolean> {
  const { isInSight, x, y } = await inPage<Point & { readonly isInSight: boolean }>(
    page,
    `${middleOf(cell)}
     const isHidden = grid.width < 100;
     const isInSight = isHidden || (middle.x > grid.left && middle.y > grid.top && middle.x < grid.right - 20 && middle.y < grid.bottom - 20);
     return { isInSight, x: (grid.left + grid.right) / 2, y: (grid.top + grid.bottom) / 2 };`,
  );
  if (isInSight) return false;
  await page.mouse.click(x, y);
  await page.waitForTimeout(150);
  await inPage(page, `workbook.getActiveSheet().getRange(${JSON.stringify(cell)}).activate();`);
  return true;
}

/**
 * Until the cell is the selected one, for a moment at most: a grid that was hidden for the printer lays itself out anew, and a click meanwhile
 * goes elsewhere.
 */
export async function clickCell(page: Page, cell: string): Promise<void> {
  if (await selectOutOfSight(page, cell)) return;
  const range = `workbook.getActiveSheet().getRange(${JSON.stringify(cell)})`;
  const isSelected = `const [cell, one] = [${range}, workbook.getActiveCell()]; return one?.getRow() === cell.getRow() && one.getColumn() === cell.getColumn();`;
  for (let attempt = 0; attempt < 4; attempt += 1) {
    // Long enough that two clicks are no double click, which would open the cell.
    if (attempt > 0) await page.waitForTimeout(700);
    const { x, y } = await centreOf(page, cell);
    await page.mouse.click(x, y);
    await page.waitForTimeout(150);
    if (await inPage<boolean>(page, isSelected)) return;
  }
}

/** Types into a cell as a person does, and waits for the answers. */
export async function typeInto(page: Page, cell: string, text: string): Promise<void> {
  await clickCell(page, cell);
  await page.keyboard.type(text);
  const before = await calculations(page);
  await page.keyboard.press('Enter');
  await until(page, `performance.getEntriesByName('calculated').length > ${before}`);
}

export const textOf = async (page: Page, id: string): Promise<string> => (await page.textContent(`#${id}`)) ?? '';

export const untilSaved = (page: Page): Promise<void> => until(page, "document.getElementById('saved').textContent === 'Saved'");
