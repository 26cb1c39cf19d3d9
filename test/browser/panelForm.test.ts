// The trip as a form in the panel of the Google host, at its 300 pixels, before the built Code.js and the double: entries are written where they stand,
// refused by the rules of their cells, and no verdict of before is shown while answers are waited for.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { tripRows } from '../../sheets-templates/trip/rows';
import { bareContext } from '../bundle/bareContext';
import { runOnServer } from '../google/double/scriptRun';
import { Double } from '../google/double/services';
import { demoSnapshot, select, showAnswers } from './answeredDouble';
import { openPanel, scrolledWidth } from './panelSupport';
import { launch, takePicture } from './support';

let files: Awaited<ReturnType<typeof googleFiles>>;
let axe: string;
let demo: WorkbookSnapshot;
let browser: Browser;
let page: Page;
let double: Double;
let troubles: string[];
/** Questions that were asked, by name. */
let asked: string[];
/** Done before a question is answered. */
let before: (question: string) => void;

beforeAll(async () => {
  files = await googleFiles();
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  demo = await demoSnapshot();
  browser = await launch();
});
afterAll(async () => browser.close());

async function open(dark: boolean): Promise<void> {
  double = new Double('Europe/Paris', { panel: files['panel.html'] });
  const script = bareContext(files['Code.js'], double.globals());
  const topLevel = { answerPanel: script.run('answerPanel') };
  asked = [];
  before = () => undefined;
  const answer = (...given: readonly unknown[]): unknown => {
    asked.push(String(given[0]));
    before(String(given[0]));
    return runOnServer(topLevel, 'answerPanel', given);
  };
  ({ page, troubles } = await openPanel(browser, double.html.createHtmlOutputFromFile('panel').getContent(), answer, { dark }));
  await page.getByRole('button', { name: 'Insert every sheet', exact: true }).click();
  await page.locator('.outcome.done').waitFor({ state: 'attached' });
  showAnswers(double, demo);
  select(double, 'Sheet1', 1);
  asked = [];
  await page.getByRole('button', { name: 'Fill in the trip as a form' }).click();
  await answered();
}
const trip = (row: number, column = 2) => double.sheet('Trip sheet').cell(row, column);
const busy = () => page.locator('.verdict').getAttribute('aria-busy');
const answered = (): Promise<void> => expect.poll(busy).toBe('false');
const word = (): Promise<string> => page.locator('.verdict .word').first().innerText();
const entry = (label: string) => page.getByLabel(label, { exact: true });
const type = async (label: string, text: string): Promise<void> => {
  await entry(label).fill(text);
  await entry(label).press('Enter');
};
const refused = async (): Promise<string> => (await page.locator('.outcome.refused').textContent()) ?? '';

afterEach(async () => {
  expect(troubles).toEqual([]);
  await page.close();
});

describe.each([
  ['light', false],
  ['dark', true],
])('the form in the panel, %s', (name, dark) => {
  beforeEach(() => open(dark));

  it('shows the trip first of all, in the width of the panel, with nothing that axe finds', async () => {
    expect(await page.getByRole('heading', { level: 2 }).first().textContent()).toBe('Trip sheet as a form');
    expect([await word(), await entry('Sheet').inputValue()]).toEqual(['OK', 'Trip sheet']);
    expect(await entry('reserve required, minutes').inputValue()).toBe('45');
    await takePicture(page, `panel-form-${name}`);
    await page.screenshot({ path: `build/screenshots/panel-form-whole-${name}.png`, fullPage: true });
    await page.evaluate(axe);
    const { violations } = await page.evaluate<AxeResults>('window.axe.run({ resultTypes: ["violations"] })');
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html.slice(0, 160))])).toEqual([]);
    for (const width of [150, 283, 300]) {
      await page.setViewportSize({ width, height: 700 });
      expect([width, await scrolledWidth(page)]).toEqual([width, width]);
    }
    // Scrolled down, the verdict stays in sight below the tabs.
    await page.evaluate('window.scrollTo(0, 2500)');
    const [tabs, verdict] = [await page.getByRole('tablist').boundingBox(), await page.locator('.verdict').boundingBox()];
    expect((verdict?.y ?? 0) + 1).toBeGreaterThanOrEqual((tabs?.y ?? 0) + (tabs?.height ?? 0));
    expect(verdict?.y ?? 999).toBeLessThan(110);
  });

  it('refuses what the rule of the cell refuses, with its words, and writes nothing', async () => {
    const questions = asked.length;
    for (const [label, text, sentence] of [
      ['reserve required, minutes', '9999', 'Not done. "9999" is not taken here. Minutes.'],
      ['contingency, % of trip fuel', '5,000', 'Not done. "5,000" can be two numbers. Type it without a comma: 5000 or 5.000. Nothing was changed.'],
      ['temperature, departure, degrees C', 'warm', 'Not done. "warm" is not taken here. Temperature in degrees Celsius.'],
      ['pilot', '=B5', 'Not done. "=B5" begins as a formula. Type formulas into the sheet itself. Nothing was changed.'],
    ] as const) {
      const old = await entry(label).inputValue();
      await type(label, text);
      await expect.poll(refused).toBe(sentence);
      expect(await entry(label).inputValue()).toBe(old);
    }
    expect(asked.length).toBe(questions);
    await takePicture(page, `panel-form-refused-${name}`);
  });
});

describe('an entry of the form', () => {
  beforeEach(() => open(false));

  it('is written into its cell, and no verdict stands there until the answers are in', async () => {
    const working = double.sheet('Trip working');
    const waits = working.cell(3, 2);
    const answer = waits.value;
    waits.value = 'Loading...';
    let reads = 0;
    before = (question) => {
      if (question !== 'readWorkbook') return;
      reads += 1;
      if (reads < 3) return;
      // What the trip shows only now; the double works nothing out.
      waits.value = answer;
      trip(3).value = 'NO';
      Object.assign(trip(tripRows.judged.first, 8), { value: 'NO' });
    };
    await type('reserve required, minutes', '400');
    await expect.poll(() => trip(tripRows.reserve).value).toBe(400);
    expect([await busy(), await word()]).toEqual(['true', '...']);
    expect(await page.locator('.verdict').innerText()).not.toContain('OK');
    await takePicture(page, 'panel-form-waiting');
    await answered();
    expect(reads).toBe(3);
    expect(await word()).toBe('NO');
    await page.locator('.verdict summary').click();
    await takePicture(page, 'panel-form-no');
  });

  it('is chosen from a list, picked as a day, pasted as a report, and emptied; formulas stay', async () => {
    const formulas = (): number =>
      double.document.sheets.reduce(
        (sum, sheet) =>
          sum +
          sheet
            .getDataRange()
            .getFormulas()
            .flat()
            .filter((text) => text !== '').length,
        0,
      );
    const count = formulas();
    expect(await entry('first day, date').getAttribute('type')).toBe('date');
    const [field] = await entry('field, alternate')
      .locator('option')
      .allInnerTexts()
      .then((all) => all.filter((one) => one === 'Tansy Ridge'));
    expect(field).toBe('Tansy Ridge');
    await entry('field, alternate').selectOption('Tansy Ridge');
    await entry('first day, date').fill('2026-11-26');
    await entry('first day, date').blur();
    await entry('METAR, departure').fill('METAR ZZXA 251350Z 22045KT\n  9999 FEW040');
    await entry('METAR, departure').blur();
    await type('contingency, % of trip fuel', '7,5');
    await expect.poll(() => trip(tripRows.contingency).value).toBe(7.5);
    expect(trip(tripRows.field, 4).value).toBe('Tansy Ridge');
    expect(trip(tripRows.metars.first, 1).value).toBe('METAR ZZXA 251350Z 22045KT 9999 FEW040');
    await answered();
    expect(await entry('first day, date').inputValue()).toBe('2026-11-26');
    await type('contingency, % of trip fuel', '');
    await expect.poll(() => trip(tripRows.contingency).value).toBe('');
    await answered();
    await page.getByRole('button', { name: 'Undo the last entry' }).click();
    await expect.poll(() => trip(tripRows.contingency).value).toBe(7.5);
    await answered();
    expect(formulas()).toBe(count);
  });

  it('is not written over what somebody else typed, and is shown anew', async () => {
    trip(tripRows.reserve).value = 60;
    await type('reserve required, minutes', '50');
    await expect.poll(refused).toBe('Not done. Cells of "Trip sheet" were changed since you looked, so nothing was written. Look again.');
    await answered();
    expect([trip(tripRows.reserve).value, await entry('reserve required, minutes').inputValue()]).toEqual([60, '60']);
  });

  it('shows no verdict when the workbook cannot be read, and one again when it can', async () => {
    await page.evaluate('window.kept = window.onServer; window.onServer = () => Promise.reject(new Error("PERMISSION_DENIED"))');
    await page.getByRole('button', { name: 'Read again' }).click();
    await expect.poll(refused).toContain('It said: PERMISSION_DENIED.');
    expect(await page.locator('.verdict').count()).toBe(0);
    expect(await page.getByText('The verdict is not known: the workbook could not be read.').isVisible()).toBe(true);
    await page.evaluate('window.onServer = window.kept');
    await page.getByRole('button', { name: 'Read again' }).click();
    await answered();
    expect(await word()).toBe('OK');
  });

  it('of another sheet has its list as cards, and the way back leads to the button', async () => {
    await entry('Sheet').selectOption('Fields');
    const cards = page.locator('.section', { hasText: '1 Fields' }).first().locator('.card');
    expect(await cards.count()).toBe(3);
    expect(await word()).toBe('OK');
    await page.getByRole('button', { name: 'Add', exact: true }).first().click();
    await cards.nth(3).locator('summary').click();
    await type('field, row 4', 'Invented Meadow');
    await expect.poll(() => double.sheet('Fields').cell(11, 1).value).toBe('Invented Meadow');
    await answered();
    await takePicture(page, 'panel-form-card');
    await page.getByRole('button', { name: 'Empty this row' }).click();
    await expect.poll(() => double.sheet('Fields').cell(11, 1).value).toBe('');
    await answered();
    await page.getByRole('button', { name: 'Back to the sheets' }).click();
    await expect.poll(() => page.evaluate('document.activeElement.textContent')).toBe('Fill in the trip as a form');
  });
});
