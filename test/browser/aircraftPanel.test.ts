// The panel's view of an aircraft, at its 300 pixels, before the built Code.js and the double: a table pasted, asked about, drawn, written and
// taken back; nothing is written over what somebody changed.
import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { bareContext } from '../bundle/bareContext';
import { contentOf } from '../google/smallDocument';
import { runOnServer } from '../google/double/scriptRun';
import { Double } from '../google/double/services';
import { demoSnapshot, showAnswers } from './answeredDouble';
import { openPanel, scrolledWidth, showView } from './panelSupport';
import { launch, takePicture } from './support';

let files: Awaited<ReturnType<typeof googleFiles>>;
let demo: WorkbookSnapshot;
let browser: Browser;
let page: Page;
let double: Double;
let troubles: string[];

beforeAll(async () => {
  files = await googleFiles();
  demo = await demoSnapshot();
  browser = await launch();
});
afterAll(async () => browser.close());

async function open(dark: boolean): Promise<void> {
  double = new Double('Europe/Paris', { panel: files['panel.html'] });
  const script = bareContext(files['Code.js'], double.globals());
  const topLevel = { answerPanel: script.run('answerPanel') };
  ({ page, troubles } = await openPanel(
    browser,
    double.html.createHtmlOutputFromFile('panel').getContent(),
    (...given) => runOnServer(topLevel, 'answerPanel', given),
    { dark },
  ));
  await page.getByRole('button', { name: 'Insert every sheet', exact: true }).click();
  await said('done');
  showAnswers(double, demo);
  await showView(page, 'Aircraft');
}

const said = async (kind: 'done' | 'refused'): Promise<string> => {
  const line = page.locator(`[role=tabpanel]:not([hidden]) .outcome.${kind}`);
  await line.waitFor({ state: 'attached' });
  return (await line.textContent()) ?? '';
};
const press = (name: string | RegExp): Promise<void> => page.getByRole('button', { name }).click();
const answer = async (label: string | RegExp, choice: string): Promise<void> => void (await page.getByLabel(label).selectOption(choice));
const openMarks = (): Promise<number> => page.locator('.openMark').count();
const tables = () => double.sheet('Manual tables');

/** As a document prints it, invented: a weight above each block, "S.L.", a mark, thousands with commas. */
const printed = `Weight 1000 kg
Pressure altitude   0 \u00b0C   10 \u00b0C   20 \u00b0C   30 \u00b0C
S.L.   860   925   995   1,067
1000   940   1,010   1,090   1,170
2000   1,030   1,110   1,190   1,280
3000   1,130   1,220   1,310   1,405*
Weight 900 kg
Pressure altitude   0 \u00b0C   10 \u00b0C   20 \u00b0C   30 \u00b0C
S.L.   760   825   895   967
1000   840   910   990   1,070
2000   930   1,010   1,900   1,180
3000   1,030   1,120   1,210   1,305`;

async function putIn(): Promise<void> {
  await press('Begin');
  await said('done');
  await page.getByLabel(/^The table, pasted/).fill(printed);
}

async function answerEverything(): Promise<void> {
  await answer(/^1,067 \(\d+ cells\) is/, '1067');
  await answer(/^The figures from line 3/, 'over 50 ft');
  await answer(/^The figures from line 9/, 'over 50 ft');
  await answer('The unit of the altitude open', 'ft');
  await answer('The unit of the figures open', 'm');
}

describe.each([
  ['light', false],
  ['dark', true],
] as const)('a table put in, %s', (scheme, dark) => {
  beforeEach(async () => open(dark));
  afterEach(async () => {
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('asks only what is open, draws every curve, marks what stands out in words, and writes after it was seen', async () => {
    await putIn();
    expect(await openMarks()).toBe(1);
    await page.screenshot({ path: `build/screenshots/aircraft-open-${scheme}.png`, fullPage: true });
    await answerEverything();
    expect(await page.getByRole('button', { name: 'Write into Manual tables' }).count()).toBe(0);
    await answer(/has \d+ rows there/, 'replace them');
    expect(await openMarks()).toBe(0);
    await page.getByText(/"over 50 ft" is 1,900 at weight 900, pressure altitude 2,000, temperature 20 \(sheet row \d+\)/).waitFor();
    expect(await page.locator('.picture.small svg').count()).toBe(2);
    expect(await page.locator('.picture.small desc').last().textContent()).toContain('stands out at pressure altitude, ft 2000, over 50 ft, m 1900');
    for (const width of [283, 300]) {
      await page.setViewportSize({ width, height: 700 });
      expect(await scrolledWidth(page)).toBe(width);
    }
    await page.screenshot({ path: `build/screenshots/aircraft-table-${scheme}.png`, fullPage: true });
    await takePicture(page, `aircraft-panel-${scheme}`);
    const before = contentOf(tables());
    await press('Write into Manual tables');
    expect(await said('done')).toMatch(/^Written: Take-off distance of Quillon Four, 33 rows, in A22:L54 of "Manual tables"/);
    expect([1, 2, 3, 4, 6, 12].map((column) => tables().cell(22, column).value)).toEqual(['Quillon Four', 'kg', 'ft', '\u00b0C', 'm', '']);
    expect([2, 3, 4, 5, 6, 12].map((column) => tables().cell(38, column).value)).toEqual([1000, 3000, 30, '', 1405, 'see the mark * in the manual']);
    await press(/^Undo: Take-off distance of Quillon Four, 33 rows$/);
    await page.getByText('Every cell holds what it held before.').waitFor();
    expect(contentOf(tables())).toEqual(before);
    expect(await page.getByRole('button', { name: /^Undo/ }).count()).toBe(0);
  });

  it('writes nothing where somebody changed the sheet since it was seen, nor takes back over a change', async () => {
    await putIn();
    await answerEverything();
    await answer(/has \d+ rows there/, 'replace them');
    await page.getByText('33 rows go into').waitFor();
    tables().cell(101, 1).value = 'Quillon Four';
    await press('Write into Manual tables');
    expect(await said('refused')).toBe('Not done. The sheet was changed since you looked. Read again what would be written, then press once more.');
    expect(tables().cell(23, 2).value).toBe(2050);
    await press('Write into Manual tables');
    expect(await said('done')).toContain('in A22:L54 of "Manual tables"');
    expect([tables().cell(23, 2).value, tables().cell(101, 1).value]).toEqual([1000, '']);
    tables().cell(23, 2).value = 1001;
    await press(/^Undo/);
    expect(await said('refused')).toBe('Not done. Cells of "Manual tables" were changed since you looked, so nothing was written. Look again.');
    expect(tables().cell(24, 2).value).toBe(1000);
  });

  it('a table is saved as CSV and comes back from the file to the same cells; a file that is none says why', async () => {
    await press('Look at the aircraft');
    await said('done');
    await answer('Task', 'Save an aircraft to a file');
    expect(await page.getByText(/^Save quillon-four\./).count()).toBe(4);
    expect(await page.getByRole('region', { name: 'Every value: weighing record' }).innerText()).toMatch(/\d{4}-\d\d-\d\d\s+weighing\s+1698/);
    await page.screenshot({ path: `build/screenshots/aircraft-save-${scheme}.png`, fullPage: true });
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByText('Save quillon-four.take-off-distance.csv').click()]);
    const saved = await readFile(await download.path());
    const before = contentOf(tables());
    await press('Begin');
    await said('done');
    const choose = (buffer: Buffer) =>
      page.getByLabel('Or a CSV file of a table, from here or from another program').setInputFiles({ name: 'x.csv', mimeType: 'text/csv', buffer });
    await choose(Buffer.from(''));
    await page.getByText('The file is empty.').waitFor();
    await choose(saved);
    await answer(/has \d+ rows there/, 'replace them');
    await page.getByText('64 rows go into').waitFor();
    await page.screenshot({ path: `build/screenshots/aircraft-csv-${scheme}.png`, fullPage: true });
    await press('Write into Manual tables');
    expect(await said('done')).toContain('Written: Take-off distance of Quillon Four, 64 rows');
    expect(contentOf(tables())).toEqual(before);
  });

  it('an aircraft is looked over, saved, taken in under another name, copied and removed, each value shown first', async () => {
    await press('Look at the aircraft');
    await said('done');
    const view = page.getByRole('tabpanel', { name: 'Aircraft' });
    expect(await view.locator('ul.parts li').allInnerTexts()).toContain(
      'OK take-off table: grid whole: 4 weight x 4 pressure altitude x 4 temperature.',
    );
    await page.screenshot({ path: `build/screenshots/aircraft-whole-${scheme}.png`, fullPage: true });
    await answer('Task', 'Save an aircraft to a file');
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByText('Save quillon-four.aircraft.json').click()]);
    const saved = await readFile(await download.path(), 'utf8');
    await answer('Task', 'Take one from a file');
    const choose = (text: string) =>
      page.getByLabel('A file that Rampwright saved').setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await choose(saved.slice(0, 300));
    await page.getByText('This is no file of an aircraft that can be taken in: it is not whole, or no JSON. Nothing was changed.').waitFor();
    await choose(saved);
    await page.getByText('has an aircraft "Quillon Four" already').waitFor();
    const before = contentOf(tables());
    await page.getByLabel('Its name here').fill('Taken One');
    await page.getByRole('region', { name: 'Every value: stations' }).waitFor();
    await page.screenshot({ path: `build/screenshots/aircraft-take-${scheme}.png`, fullPage: true });
    await press('Put in Taken One');
    expect(await said('done')).toBe('Done: Taken One put in.');
    expect([tables().cell(8, 1).value, double.sheet('Weight and balance').cell(8, 1).value]).toEqual(['Taken One', 'Quillon Four']);
    await answer('Task', 'Remove an aircraft');
    await page.getByText('Quillon Four is the aircraft in use. Choose another one on Start first, then ask again.').waitFor();
    await answer('Which aircraft', 'Taken One');
    await page.screenshot({ path: `build/screenshots/aircraft-remove-${scheme}.png`, fullPage: true });
    await press('Remove Taken One');
    await page.getByText(/^Done: Taken One removed, \d+ rows\.$/).waitFor();
    expect(contentOf(tables())).toEqual(before);
    await press(/^Undo: Taken One removed/);
    await page.getByText('Every cell holds what it held before.').waitFor();
    expect(tables().cell(8, 1).value).toBe('Taken One');
    await answer('Task', 'New aircraft');
    await page.getByLabel('Name').fill('Fresh One');
    await answer('Begin as', 'an aircraft of its own');
    for (const [label, choice] of [
      ['Weights are in', 'kg'],
      ['Arms are in', 'mm'],
      ['Distances are in', 'm'],
      ['Fuel is in', 'L'],
    ] as const)
      await answer(label, choice);
    for (const [label, text] of [
      ['Weight of one unit of fuel', '0.72'],
      ['Usable fuel, all tanks', '100'],
      ['Maximum take-off weight', '1,000'],
      ['Maximum landing weight', '1000'],
    ] as const)
      await page.getByLabel(label).fill(text);
    await page.getByText('Maximum take-off weight: "1,000" can be 1000 or 1. Type figures only').waitFor();
    await page.screenshot({ path: `build/screenshots/aircraft-new-${scheme}.png`, fullPage: true });
    await page.getByLabel('Maximum take-off weight').fill('1000');
    await press('Put in Fresh One');
    await page.getByText('Done: Fresh One put in.').waitFor();
    expect([1, 2, 6, 10].map((column) => tables().cell(9, column).value)).toEqual(['Fresh One', 'kg', 0.72, 1000]);
    await answer('Task', 'See what it has and what is missing');
    await answer('Which aircraft', 'Fresh One');
    expect(await view.locator('ul.parts li').allInnerTexts()).toContain('UNKNOWN stations: none yet.');
  });

  it('by the keyboard alone', async () => {
    const key = (name: string): Promise<void> => page.keyboard.press(name);
    const focused = (): Promise<string> =>
      page.evaluate(`(document.activeElement.labels?.[0] ?? document.activeElement).textContent.replace(/\\s+/g, ' ').trim()`);
    await page.getByRole('tab', { name: 'Aircraft' }).focus();
    await key('Tab');
    expect(await focused()).toBe('Begin');
    await key('Enter');
    await said('done');
    // The button is gone with the press; the next Tab goes into the form.
    for (let step = 0; step < 12 && !(await focused()).startsWith('The table, pasted'); step += 1) await key('Tab');
    await page.keyboard.insertText(
      'Weight 1000 kg\naltitude, ft;0 \u00b0C;10 \u00b0C;20 \u00b0C\n0;300;320;340\n1000;330;350;370\n2000;370;390;410\n3000;420;440;460',
    );
    const wanted: Readonly<Record<string, string>> = {
      'The figures open': 'o',
      'The unit of the figures open': 'm',
      'Quillon Four has 64 rows there open': 'r',
    };
    for (let step = 0; step < 60 && (await focused()) !== 'Write into Manual tables'; step += 1) {
      await key('Tab');
      const choice = wanted[await focused()];
      if (choice !== undefined) await key(choice);
    }
    expect(await focused()).toBe('Write into Manual tables');
    await key('Enter');
    expect(await said('done')).toContain('Written: Take-off distance of Quillon Four, 13 rows');
    expect(await focused()).toBe('Put in a table');
    await key('Tab');
    expect(await focused()).toBe('Undo: Take-off distance of Quillon Four, 13 rows');
    await key('Enter');
    await page.getByText('Every cell holds what it held before.').waitFor();
  });
});
