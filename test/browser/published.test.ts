// The page from any web host: nothing leaves it, it works with the host gone, keeps what was typed, and says what it cannot keep.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostPublished, untilKept, type PublishedHost } from './publishedSupport';
import {
  clickCell,
  launch,
  onDemoDay,
  openPage,
  showSheet,
  shown,
  takePicture,
  textOf,
  typeInto,
  until,
  untilCalculated,
  valueNamed,
  watch,
  type Watched,
} from './support';

const viewport = { width: 1280, height: 800 };
const untilOffline = (page: Page): Promise<void> => until(page, "document.documentElement.dataset.offline === 'ready'");

describe('the page from any web host', () => {
  let host: PublishedHost;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let watched: Watched;

  const newPage = async (): Promise<Page> => {
    const opened = await context.newPage();
    await opened.addInitScript(onDemoDay);
    return opened;
  };
  const type = async (cell: string, text: string): Promise<void> => {
    await showSheet(page, 'Trip sheet');
    await typeInto(page, cell, text);
    await untilKept(page);
  };

  beforeAll(async () => {
    host = await hostPublished();
    browser = await launch();
    context = await browser.newContext({ viewport, acceptDownloads: true });
    page = await newPage();
    watched = watch(page);
    await openPage(page, host.address);
    await untilOffline(page);
  });
  afterAll(async () => {
    await browser.close();
    await host.stop();
  });

  it('begins with the invented demo, judged', async () => {
    expect(await valueNamed(page, 'trip_verdict')).toBe('OK');
    expect(await textOf(page, 'saved')).toMatch(/^Saved in this browser, \d/);
    await takePicture(page, 'published-page');
  });

  it('can send nothing, to nobody, not even to its own host', async () => {
    const tried = await page.evaluate<string[]>(`(async () => {
      const blocked = [];
      document.addEventListener('securitypolicyviolation', (event) => blocked.push(event.effectiveDirective));
      await fetch(location.href).catch(() => undefined);
      await fetch('https://example.com/').catch(() => undefined);
      navigator.sendBeacon(location.href, 'x');
      try { new WebSocket('ws://127.0.0.1:1/'); } catch {}
      const picture = new Image();
      picture.src = 'https://example.com/a.png';
      const form = document.createElement('form');
      form.action = location.href; form.method = 'post'; document.body.append(form); form.submit();
      await new Promise((resolve) => setTimeout(resolve, 500));
      return blocked;
    })()`);
    expect(tried.filter((one) => one === 'connect-src').length).toBeGreaterThanOrEqual(4);
    expect(tried).toContain('img-src');
    expect(tried).toContain('form-action');
    // What was tried here on purpose is the browser's own line in the console.
    watched.errors.length = 0;
    watched.foreign.length = 0;
  });

  it('keeps what was typed, with the host gone, over a reload and a closed tab', async () => {
    await type('B8', 'Pilot of the test');
    await host.pause();
    host.asked.length = 0;
    await page.reload();
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('Pilot of the test');
    await type('B8', 'Typed without a host');
    await page.close();
    page = await newPage();
    watched = watch(page);
    await openPage(page, host.address);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('Typed without a host');
    await takePicture(page, 'published-offline');
    expect(host.asked).toEqual([]);
  });

  it('does all its work without a host: panel, calendar, Excel file', async () => {
    await page.click('#panel-button');
    await page.frameLocator('#panel').getByRole('tab', { name: 'Functions' }).waitFor();
    for (const [button, name] of [
      ['#excel-button', 'rampwright.xlsx'],
      ['#calendar-button', 'rampwright.ics'],
    ] as const) {
      const [file] = await Promise.all([page.waitForEvent('download'), page.click(button)]);
      expect(file.suggestedFilename()).toBe(name);
    }
    await page.click('#panel-button');
    await host.resume();
  });

  it('saves to a file that the server could open, and opens a file as a workbook of its own', async () => {
    await page.evaluate('delete window.showSaveFilePicker; window.showSaveFilePicker = undefined');
    const [file] = await Promise.all([page.waitForEvent('download'), page.click('#save-file-button')]);
    expect(file.suggestedFilename()).toBe('Workbook.json');
    const text = await readFile(await file.path(), 'utf8');
    expect(JSON.parse(text)).toMatchObject({ custom: { rampwright: { format: 1 } } });
    const copy = join(host.folder, '..', `From home ${process.pid}.json`);
    await writeFile(copy, text.replace('Typed without a host', 'Typed at home'));
    const before = page.url();
    await page.setInputFiles('#workbook-file', copy);
    await expect.poll(() => page.url()).not.toBe(before);
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('Typed at home');
    await page.click('#workbooks-button');
    await page.getByText('(open here)').waitFor();
    expect(await page.textContent('dialog')).toContain('Workbook');
    await takePicture(page, 'published-workbooks');
    await page.locator('dialog').getByRole('button', { name: 'Open', exact: true }).click();
    await expect.poll(() => page.url()).toBe(before);
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('Typed without a host');
  });

  it('refuses a file that is no workbook, and changes nothing', async () => {
    await page.setInputFiles('#workbook-file', { name: 'other.json', mimeType: 'application/json', buffer: Buffer.from('{"half": ') });
    await expect.poll(() => textOf(page, 'files-said')).toBe('Not done: "other.json" is not a whole workbook of this program. Nothing was changed.');
  });

  it('goes back to how it was, and from there again', async () => {
    await type('B8', 'Before going back');
    const back = async (): Promise<void> => {
      await page.click('#workbooks-button');
      await page.getByText('Older copies of').click();
      await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Go back to this copy' }).first().click()]);
      await untilCalculated(page);
      expect(await textOf(page, 'files-said')).toContain('The workbook is as it was in the copy of');
      await showSheet(page, 'Trip sheet');
    };
    await back();
    expect(await shown(page, 'B8')).not.toBe('Before going back');
    await back();
    expect(await shown(page, 'B8')).toBe('Before going back');
  });

  it('opens how it was as a workbook of its own', async () => {
    await type('B8', 'Typed too much');
    const before = page.url();
    await page.click('#workbooks-button');
    await page.getByText('Older copies of').click();
    await page.getByRole('button', { name: 'Open it beside this one' }).first().click();
    await expect.poll(() => page.url()).not.toBe(before);
    await page.waitForLoadState();
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).not.toBe('Typed too much');
    await page.goto(host.address);
    await untilCalculated(page);
  });

  it('says that a workbook is open twice, shows in one tab what is entered in the other, and asks where both change a cell', async () => {
    const address = page.url();
    await page.reload();
    await untilCalculated(page);
    const other = await newPage();
    await openPage(other, address);
    await expect.poll(() => textOf(other, 'files-said')).toContain('open in another tab or window too');
    await showSheet(other, 'Trip sheet');
    await showSheet(page, 'Trip sheet');
    await typeInto(other, 'B8', 'From the second tab');
    await untilKept(other);
    await expect.poll(() => shown(page, 'B8')).toBe('From the second tab');
    await page.bringToFront();
    await clickCell(page, 'B8');
    await page.keyboard.type('Being typed in the first');
    await other.bringToFront();
    await typeInto(other, 'B8', 'Meanwhile in the second');
    await untilKept(other);
    await page.bringToFront();
    await page.keyboard.press('Enter');
    await expect.poll(() => textOf(page, 'files-said')).toContain('here "Being typed in the first", there "Meanwhile in the second"');
    await takePicture(page, 'published-two-tabs');
    await page.getByRole('button', { name: 'Those from there' }).click();
    await expect.poll(() => shown(page, 'B8')).toBe('Meanwhile in the second');
    await untilKept(page);
    await other.close();
  }, 180_000);

  it('says that there is no room, and saves when there is some again', async () => {
    const devTools = await context.newCDPSession(page);
    const origin = new URL(host.address).origin;
    await devTools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1000 });
    // The browser remembers for a while how much room there was.
    await page.waitForTimeout(31_000);
    await showSheet(page, 'Trip sheet');
    await clickCell(page, 'B8');
    await page.keyboard.type('No room for this');
    await page.keyboard.press('Enter');
    await expect.poll(() => textOf(page, 'saved')).toContain('NOT SAVED: this browser has no room left. Press "Save to a file" now');
    await takePicture(page, 'published-no-room');
    await devTools.send('Storage.overrideQuotaForOrigin', { origin });
    await untilKept(page);
    await page.reload();
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('No room for this');
  });

  it('says so where the browser keeps nothing, and lets the work be saved to a file', async () => {
    const alone = await browser.newContext({ viewport, acceptDownloads: true });
    const hidden = await alone.newPage();
    await hidden.addInitScript(onDemoDay);
    await hidden.addInitScript(
      "Object.defineProperty(window, 'indexedDB', { get: () => { throw new DOMException('not here', 'SecurityError'); } });",
    );
    await openPage(hidden, host.address);
    expect(await textOf(hidden, 'files-said')).toMatch(/^Nothing that you type here is saved: this browser keeps nothing for this page/);
    await showSheet(hidden, 'Trip sheet');
    await typeInto(hidden, 'B8', 'Kept nowhere');
    await expect.poll(() => textOf(hidden, 'saved')).toMatch(/^NOT SAVED: this browser keeps nothing for this page/);
    await hidden.evaluate('window.showSaveFilePicker = undefined');
    const [file] = await Promise.all([hidden.waitForEvent('download'), hidden.click('#save-file-button')]);
    expect(await readFile(await file.path(), 'utf8')).toContain('Kept nowhere');
    await alone.close();
  });

  it('asked its own host for its own files only, and reported no error', () => {
    expect(watched.foreign).toEqual([]);
    expect(watched.errors).toEqual([]);
    expect(host.asked.filter((one) => !one.startsWith('GET /club/'))).toEqual([]);
  });

  it('says so where the browser has thrown its workbooks away', async () => {
    const other = await newPage();
    await other.goto(`${host.address}manifest.webmanifest`);
    await page.close();
    await other.evaluate(
      "new Promise((resolve, reject) => { const gone = indexedDB.deleteDatabase('rampwright'); gone.onsuccess = resolve; gone.onerror = reject; })",
    );
    await openPage(other, host.address);
    expect(await textOf(other, 'files-said')).toMatch(/^This browser keeps no workbook any more: it was removed.*Press "Open a file"/);
    await takePicture(other, 'published-evicted');
    await other.close();
  });
});
