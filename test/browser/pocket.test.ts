// The pocket view on a phone, with a thumb: the same cells and answers as the grid, large and labelled; what is refused there is refused here.
import AxeBuilder from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { tripRows } from '../../sheets-templates/trip/rows';
import { hostPublished, untilKept, type PublishedHost } from './publishedSupport';
import { inPage, launch, onDemoDay, takePicture, textOf, until, valueNamed, watch, type Watched } from './support';

describe('the pocket view', () => {
  let host: PublishedHost;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let watched: Watched;

  const word = (): Promise<string> => page.locator('#pocket header .verdict .word').first().innerText();
  const choose = async (sheet: string): Promise<void> => {
    await page.selectOption('#pocket header select', { label: sheet });
    await until(page, `window.rampwright.workbook.getActiveSheet().getSheetName() === ${JSON.stringify(sheet)}`);
    await page.waitForTimeout(500);
  };
  const entry = (label: string) => page.getByLabel(label, { exact: true });
  const settled = (): Promise<void> => until(page, "document.querySelector('#pocket .verdict').getAttribute('aria-busy') === 'false'");
  const type = async (label: string, text: string): Promise<void> => {
    await entry(label).tap();
    await entry(label).fill(text);
    await entry(label).press('Enter');
    await page.waitForTimeout(50);
    await settled();
  };
  const cell = (place: string): Promise<unknown> => inPage(page, `return workbook.getActiveSheet().getRange(${JSON.stringify(place)}).getValue();`);

  beforeAll(async () => {
    host = await hostPublished();
    browser = await launch();
    context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    page = await context.newPage();
    await page.addInitScript(onDemoDay);
    watched = watch(page);
    await page.goto(host.address);
    await until(page, "document.querySelector('#pocket .section') !== null && document.documentElement.dataset.offline === 'ready'");
    await until(page, "document.querySelector('#pocket .verdict .word').textContent === 'OK'");
    await choose('Trip sheet');
  });
  afterAll(async () => {
    await browser.close();
    await host.stop();
  });

  it('comes by itself on a phone, with the verdict always in sight, and nothing to scroll sideways', async () => {
    expect(await word()).toBe('OK');
    await page.evaluate('window.scrollTo(0, 3000)');
    const box = await page.locator('#pocket header .verdict').boundingBox();
    expect(box?.y ?? 999).toBeLessThan(100);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(390);
    expect(await page.locator('#pocket main').innerText()).toContain('Invented aircraft, fields and people, for demonstration.');
    await page.evaluate('window.scrollTo(0, 0)');
    await takePicture(page, 'pocket-trip');
  });

  it('has targets of 44 pixels, labels everywhere, and nothing that axe finds', async () => {
    const small = await page.evaluate<
      string[]
    >(`[...document.querySelectorAll('#pocket button, #pocket input, #pocket select, #pocket textarea, #pocket summary')]
      .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44).map((one) => one.outerHTML.slice(0, 80))`);
    expect(small).toEqual([]);
    const devTools = await context.newCDPSession(page);
    await devTools.send('Page.setBypassCSP', { enabled: true });
    await page.evaluate(AxeBuilder.source);
    const { violations } = await page.evaluate<{ violations: { id: string; nodes: { html: string }[] }[] }>(
      "axe.run('#pocket', { runOnly: ['wcag2a', 'wcag2aa'] })",
    );
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html.slice(0, 160))])).toEqual([]);
  });

  it('takes a number with the number pad, and the same engine answers', async () => {
    expect(await entry('reserve required, minutes').getAttribute('inputmode')).toBe('decimal');
    await type('reserve required, minutes', '400');
    expect(await word()).toBe('NO');
    expect(await page.locator('#pocket .verdict .reason').innerText()).toMatch(/^Fuel: /);
    expect(await valueNamed(page, 'trip_verdict')).toBe('NO');
    await takePicture(page, 'pocket-no');
    await page.locator('#pocket .verdict summary').tap();
    await takePicture(page, 'pocket-reasons');
    await page.locator('#pocket .verdict summary').tap();
    await page.getByRole('button', { name: 'Undo' }).tap();
    await expect.poll(word).toBe('OK');
    expect(await entry('reserve required, minutes').inputValue()).toBe('45');
  });

  it('refuses what the rule of the cell refuses, with its words, and keeps the old value', async () => {
    await type('reserve required, minutes', '9999');
    expect(await textOf(page, 'files-said')).toBe('"9999" is not taken here. Minutes.');
    expect(await entry('reserve required, minutes').inputValue()).toBe('45');
    expect(await cell('B31')).toBe('45');
    await takePicture(page, 'pocket-refused');
  });

  it('reads a comma as a point, except where it could mean thousands', async () => {
    await type('contingency, % of trip fuel', '7,5');
    expect(await cell('B29')).toBe('8');
    expect(await entry('contingency, % of trip fuel').inputValue()).toBe('7.5');
    await type('contingency, % of trip fuel', '5,000');
    expect(await textOf(page, 'files-said')).toContain('"5,000" can be two numbers.');
    await type('contingency, % of trip fuel', '5');
  });

  it('has pickers for days and choices, times as they are read, and signs without a minus key', async () => {
    expect(await entry('first day, date').getAttribute('type')).toBe('date');
    await entry('first day, date').fill('2026-11-26');
    await entry('first day, date').blur();
    await settled();
    await entry('last day, date').fill('2026-11-26');
    await entry('last day, date').blur();
    await settled();
    expect(await cell('B9')).toBe('2026-11-26');
    await entry('night, yes or no').selectOption('yes');
    await settled();
    expect(await cell('B13')).toBe('yes');
    expect(await entry('field, departure').locator('option').allInnerTexts()).toContain('Tansy Ridge');
    await type('take-off, UTC, Z, as 1430', '0630');
    expect(await cell('B11')).toBe('0630');
    expect(await entry('take-off, UTC, Z, as 1430').inputValue()).toBe('0630');
    await type('temperature, departure, degrees C', '4');
    await page.getByLabel('temperature, departure, degrees C: change its sign').tap();
    await settled();
    expect(Number(await cell('B37'))).toBe(-4);
    for (let times = 0; times < 6; times += 1) {
      await page.getByRole('button', { name: 'Undo' }).tap();
      await page.waitForTimeout(400);
    }
    await expect.poll(word).toBe('OK');
  });

  it('takes a report of several lines as one, and judges it', async () => {
    await entry('METAR, departure').tap();
    await entry('METAR, departure').fill('METAR ZZXA 251350Z 22045KT\n  9999 FEW040\n  18/09 Q1009');
    await entry('METAR, departure').blur();
    await settled();
    await expect.poll(word).toBe('NO');
    expect(await cell(`A${tripRows.metars.first}`)).toBe('METAR ZZXA 251350Z 22045KT 9999 FEW040 18/09 Q1009');
    await page.getByRole('button', { name: 'Undo' }).tap();
    await expect.poll(word).toBe('OK');
  });

  it('shows a list as cards, adds one and empties it', async () => {
    await choose('Fields');
    const cards = page.locator('#pocket .section', { hasText: '1 Fields' }).first().locator('.card');
    expect(await cards.count()).toBe(3);
    await takePicture(page, 'pocket-fields');
    await page.getByRole('button', { name: 'Add', exact: true }).first().tap();
    await cards.nth(3).locator('summary').tap();
    await type('field, row 4', 'Invented Meadow');
    expect(await cell('A11')).toBe('Invented Meadow');
    await takePicture(page, 'pocket-card');
    await page.getByRole('button', { name: 'Empty this row' }).tap();
    await settled();
    await expect.poll(() => cell('A11')).not.toBe('Invented Meadow');
  });

  it('goes to the grid and back, with what was typed, and keeps it without a host', async () => {
    await choose('Trip sheet');
    await type('pilot', 'A. Thumb');
    await untilKept(page);
    await page.getByRole('button', { name: 'Grid' }).tap();
    expect(await page.locator('#pocket').isVisible()).toBe(false);
    await page.locator('#pocket-button').tap();
    expect(await entry('pilot').inputValue()).toBe('A. Thumb');
    await host.pause();
    await page.reload();
    await until(page, "document.querySelector('#pocket .verdict .word')?.textContent === 'OK'");
    await choose('Trip sheet');
    expect(await entry('pilot').inputValue()).toBe('A. Thumb');
  });

  it('shows every sheet in its width, by day and by night', async () => {
    await page.getByLabel('Colours').selectOption('night');
    const sheets = await page.locator('#pocket header select option').allInnerTexts();
    expect(sheets).toHaveLength(sheetTemplates.length);
    for (const sheet of sheets) {
      await choose(sheet);
      expect([sheet, await page.evaluate('document.documentElement.scrollWidth')]).toEqual([sheet, 390]);
      expect([sheet, await page.locator('#pocket main .section').count()]).not.toEqual([sheet, 0]);
      await page.screenshot({ path: `build/screenshots/pocket-night-${sheet.replace(/\W+/g, '-')}.png`, fullPage: true });
    }
    await page.getByLabel('Colours').selectOption('day');
  });

  it('asked for nothing beyond its own host, and reported no error', () => {
    expect(watched.foreign).toEqual([]);
    expect(watched.errors).toEqual([]);
  });
});
