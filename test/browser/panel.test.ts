// The panel of the Google host in Chromium, at its 300 pixels, with a google.script.run that answers as the script does:
// the built Code.js in a bare context, before the double.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import { registry } from '../../functions/registry/index.generated';
import { sheetTemplates } from '../../sheets-templates';
import { bareContext } from '../bundle/bareContext';
import { FakeRange } from '../google/double/range';
import { runOnServer } from '../google/double/scriptRun';
import { Double } from '../google/double/services';
import { launch } from './support';

let files: Awaited<ReturnType<typeof googleFiles>>;
let browser: Browser;
let page: Page;
let double: Double;
let troubles: string[];

/** What the platform puts into the page: each request runs on the server, plain data both ways. */
const scriptRun = `window.google = { script: { run: (() => {
  const runner = (ok, failed) => ({
    withSuccessHandler: (handler) => runner(handler, failed),
    withFailureHandler: (handler) => runner(ok, handler),
    answerPanel: (...given) => void window.onServer(JSON.stringify(given)).then((text) => ok(JSON.parse(text)), (error) => failed(error)),
  });
  return runner();
})() } };`;

beforeAll(async () => {
  files = await googleFiles();
  browser = await launch();
});
afterAll(async () => browser.close());

beforeEach(async () => {
  double = new Double('Europe/Paris', { panel: files['panel.html'] });
  const script = bareContext(files['Code.js'], double.globals());
  page = await browser.newPage({ viewport: { width: 300, height: 700 } });
  troubles = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
  page.on('request', (request) => troubles.push(`asked the network for ${request.url()}`));
  await page.exposeFunction('onServer', async (given: string) => JSON.stringify(await runOnServer({ answerPanel: script.run('answerPanel') }, 'answerPanel', JSON.parse(given) as unknown[])));
  await page.setContent(files['panel.html'].replace('<head>', () => `<head><script>${scriptRun}</script>`));
});

const status = (): Promise<string> => page.locator('.outcome').innerText();

describe('the panel', () => {
  it('shows the caution first, fits 300 pixels in each view, and asks the network for nothing', async () => {
    expect(await page.locator('.caution').innerText()).toBe('Planning aid only: the approved manual, official data, local rules and the pilot in command decide.');
    const wide = (): Promise<number> => page.evaluate('document.documentElement.scrollWidth');
    expect(await wide()).toBeLessThanOrEqual(300);
    await page.getByRole('tab', { name: 'Functions' }).click();
    expect(await wide()).toBeLessThanOrEqual(300);
    for (const { name } of registry) {
      await page.locator(`#function-${name}`).click();
      expect(await wide(), name).toBeLessThanOrEqual(300);
      await page.getByRole('button', { name: 'Back to the list' }).click();
    }
    expect(troubles).toEqual([]);
  });

  it('inserts every sheet, and says which', async () => {
    await page.getByRole('button', { name: 'Insert every sheet' }).click();
    await page.locator('.outcome.done').waitFor();
    expect(await status()).toBe(`Inserted: ${sheetTemplates.map(({ name }) => name).join(', ')}.`);
    expect(double.document.sheets).toHaveLength(1 + sheetTemplates.length);
  });

  it('tells a refusal in words', async () => {
    double.recorder.failAt = 20;
    await page.getByRole('button', { name: 'Insert every sheet' }).click();
    await page.locator('.outcome.refused').waitFor();
    expect(await status()).toMatch(/^Not done\. No sheet was inserted, .*Service Spreadsheets failed/);
  });

  it('is worked by the keyboard alone: finds a function and puts its example into the selected cell', async () => {
    double.app.selected = new FakeRange(double.sheet('Sheet1'), { row: 4, column: 2, lastRow: 4, lastColumn: 2 });
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Tab');
    await page.keyboard.type('pressure altitude');
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.id')).toBe('function-PRESSURE_ALTITUDE');
    await page.keyboard.press('Enter');
    await page.waitForFunction("document.activeElement.textContent === 'PRESSURE_ALTITUDE'");
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.locator('.outcome.done').waitFor();
    expect(await status()).toBe('The example is in B4.');
    expect(double.sheet('Sheet1').cell(4, 2).formula).toMatch(/^=PRESSURE_ALTITUDE\(.*;.*\)$/);
    await page.keyboard.press('Escape');
    await page.waitForFunction("document.activeElement.id === 'function-PRESSURE_ALTITUDE'");
  });

  it('says what helps when the platform itself fails', async () => {
    await page.evaluate('window.onServer = () => Promise.reject(new Error("PERMISSION_DENIED"))');
    await page.getByRole('button', { name: 'Insert every sheet' }).click();
    await page.locator('.outcome.refused').waitFor();
    expect(await status()).toContain('It said: PERMISSION_DENIED.');
    expect(await status()).toContain('several Google accounts');
  });
});
