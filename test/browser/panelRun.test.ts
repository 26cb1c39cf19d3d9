// A long change in the panel: each step shown, and a stop that reaches the run. The script answers as slowly as the platform may.
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import type { Progress } from '../../addon/panel/host';
import { openPanel, scrolledWidth } from './panelSupport';
import { launch } from './support';

const step: Progress = { doing: 'Writing "Trip working", sheet 5 of 13.', done: 4, of: 13 };
const stopped = 'Stopped. No sheet was inserted; everything added was removed again.';

let html: string;
let browser: Browser;
let page: Page;
let troubles: string[];
let told: { run: string; stop: boolean }[];
let settle: (reply: unknown) => void;
let runs: (string | null)[];

beforeAll(async () => {
  html = (await googleFiles())['panel.html'];
  browser = await launch();
});
afterAll(async () => browser.close());

beforeEach(async () => {
  [told, runs] = [[], []];
  const answer = (_: string, __: unknown, run: string | null): Promise<unknown> => {
    runs.push(run);
    return new Promise((resolve) => (settle = resolve));
  };
  ({ page, troubles } = await openPanel(browser, html, answer, {
    attend: (given) => {
      told.push(given as (typeof told)[number]);
      return { progress: step };
    },
  }));
  await page.getByRole('button', { name: 'Insert every sheet' }).click();
  await page.getByText(step.doing).waitFor();
});
afterEach(async () => {
  expect(troubles).toEqual([]);
  await page.close();
});

const bar = () => page.getByRole('progressbar', { name: 'Sheets written' });
const stop = () => page.getByRole('button', { name: 'Stop' });

describe('a run that lasts', () => {
  it('shows the step, how many sheets are written, and a button to stop it', async () => {
    expect([await bar().getAttribute('value'), await bar().getAttribute('max')]).toEqual(['4', '13']);
    expect(await stop().isVisible()).toBe(true);
    expect(await scrolledWidth(page)).toBe(300);
    expect(told.every((one) => one.run === runs[0] && !one.stop)).toBe(true);
    settle({ answer: { inserted: ['Start'], reads: [] } });
    await page.getByText('Inserted: Start.', { exact: true }).waitFor();
    expect([await bar().count(), await stop().count()]).toEqual([0, 0]);
  });

  it('is stopped by the keyboard too, which goes back to where the run was asked for', async () => {
    await stop().focus();
    await page.keyboard.press('Enter');
    await page.getByText('Stopping. What was added so far is being removed again.').waitFor();
    expect(await stop().count()).toBe(0);
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Insert every sheet');
    await expect.poll(() => told.some((one) => one.stop && one.run === runs[0])).toBe(true);
    settle({ refusal: stopped });
    await page.getByText(stopped).waitFor();
    expect(await page.getByRole('status').first().textContent()).toBe(`Not done. ${stopped}`);
  });

  it('says so where the stop came too late', async () => {
    await stop().click();
    settle({ answer: { inserted: ['Start'], reads: [] } });
    await page.getByText('It was done before it could be stopped. Inserted: Start.').waitFor();
  });

  it('has a name of its own at every run', async () => {
    settle({ answer: { inserted: ['Start'], reads: [] } });
    await page.getByText('Inserted: Start.', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Insert every sheet' }).click();
    await expect.poll(() => runs.length).toBe(2);
    expect(new Set(runs).size).toBe(2);
  });
});
