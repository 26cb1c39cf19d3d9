// The panel as the platform's page service hands it on, cut in either of the ways reported: every view, and what every button
// of it brings, is the same as with the script that esbuild wrote, which nobody has cut.
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import { panelBuild } from '../../addon/build/panelPage';
import type { PanelAnswer, PanelQuestion } from '../../addon/panel/host';
import { pageCutters } from '../google/double/pageCutter';
import { Double } from '../google/double/services';
import { selecting } from '../support/headlessSnapshot';
import { demoSnapshot } from './answeredDouble';
import { openPanel, showView } from './panelSupport';
import { launch, root, takePicture } from './support';

const views = ['Sheets', 'Aircraft', 'Functions', 'Picture', 'Check', 'Send'];

let panel: string;
let uncut: string;
let answers: { readonly [Question in PanelQuestion]: PanelAnswer<Question> };
let browser: Browser;

beforeAll(async () => {
  panel = (await googleFiles())['panel.html'];
  const { outputFiles } = await build({ ...panelBuild(root, 'addon/google/client/main.ts'), charset: 'utf8' });
  uncut = panel.replace(/<script>[^]*<\/script>/, () => `<script>${outputFiles?.[0]?.text ?? ''}</script>`);
  answers = {
    readWorkbook: selecting(await demoSnapshot(), 'Descent and hold card', 55),
    goTo: { cell: 'A1' },
    freezeSheet: { sheet: 'Trip sheet (values)', formulas: 214 },
    updateSheets: { updated: ['Trip sheet'], kept: ['Trip sheet (before)'] },
    insertSheets: { inserted: ['Trip sheet'], reads: ['Start'] },
    writeEntries: { cells: 48 },
    addFlight: { copies: ['Trip sheet 2'] },
    changeCells: { cells: 48 },
    putFormula: { cell: 'C4' },
  };
  browser = await launch();
});
afterAll(async () => browser.close());

/** Runs in the page: what the view in sight holds once it is drawn and nothing is being waited for; each button in its turn. */
const inPage = `(() => {
  const view = () => document.querySelector('[role=tabpanel]:not([hidden])');
  const buttons = () => [...view().querySelectorAll('button')];
  const settled = async () => {
    let before;
    let now = view().innerHTML;
    while (now !== before || now.includes('aria-disabled="true"')) {
      await new Promise((resolve) => setTimeout(resolve, 10));
      [before, now] = [now, view().innerHTML];
    }
    return now;
  };
  return async () => {
    const seen = [['as it opens', await settled()]];
    const atFirst = buttons();
    for (const [index, { textContent }] of atFirst.entries()) {
      const gone = Math.max(0, atFirst.length - buttons().length);
      // A button may go once it was pressed, and those behind it move up.
      (buttons().find((button) => button.textContent === textContent && buttons().indexOf(button) >= index - gone) ?? view()).click();
      seen.push([index + ' ' + textContent, await settled()]);
      buttons().find((button) => button.textContent.includes('Back to the list'))?.click();
      await settled();
    }
    return seen;
  };
})()()`;

/** Times of day and addresses of files are of the moment. */
const lasting = (html: string): string => html.replace(/\d\d:\d\d:\d\d/g, 'time').replace(/blob:[^"]*/g, 'file');

/** Every view, then what each of its buttons brings. */
async function everything(served: string, picture?: string): Promise<Map<string, string>> {
  const { page, troubles } = await openPanel(browser, served, (question) => ({ answer: answers[question as PanelQuestion] }));
  const seen = new Map<string, string>();
  for (const view of views) {
    await showView(page, view);
    for (const [button, html] of await page.evaluate<readonly (readonly [string, string])[]>(inPage)) seen.set(`${view}: ${button}`, lasting(html));
    if (picture !== undefined) await takePicture(page, `${picture}-${view}`);
  }
  expect(troubles).toEqual([]);
  await page.close();
  return seen;
}

it('is the same in every view, whichever way it is cut', async () => {
  const wanted = await everything(uncut);
  // The list of functions has a button each.
  expect(wanted.size).toBeGreaterThan(70);
  for (const view of views)
    expect(new Set([...wanted].filter(([name]) => name.startsWith(view)).map(([, html]) => html)).size, view).toBeGreaterThan(1);
  for (const cutter of pageCutters) {
    const { html } = new Double('Etc/UTC', { panel });
    html.cutter = cutter;
    const cut = await everything(html.createHtmlOutputFromFile('panel').getContent(), `panel-${cutter.replace(/ /g, '-')}`);
    expect([...cut.keys()], cutter).toEqual([...wanted.keys()]);
    for (const [name, text] of wanted) expect(cut.get(name) === text, `${cutter}: ${name}`).toBe(true);
  }
}, 240_000);
