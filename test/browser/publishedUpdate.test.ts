// A new version of the program on the host: it waits until it is asked for, comes whole or not at all, and never under open work.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeWorker } from '../../addon/local/publishPage';
import { hostPublished, untilKept, type PublishedHost } from './publishedSupport';
import { launch, openPage, root, showSheet, shown, takePicture, textOf, typeInto, until, untilCalculated } from './support';

describe('a new version on the host', () => {
  let host: PublishedHost;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;

  const title = (): Promise<string> => page.title();
  const calls = async (one: string): Promise<void> => {
    const path = join(host.folder, 'index.html');
    await writeFile(path, (await readFile(path, 'utf8')).replace(/<title>.*<\/title>/, `<title>${one}</title>`));
  };
  const reload = async (): Promise<void> => {
    await page.reload();
    await untilCalculated(page);
  };

  beforeAll(async () => {
    host = await hostPublished();
    browser = await launch();
    context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    page = await context.newPage();
    await openPage(page, host.address);
    await until(page, "document.documentElement.dataset.offline === 'ready'");
    await showSheet(page, 'Trip sheet');
    await typeInto(page, 'B8', 'Before the update');
    await page.waitForTimeout(1000);
    await untilKept(page);
  });
  afterAll(async () => {
    await browser.close();
    await host.stop();
  });

  it('is not taken when only half of it is there', async () => {
    await calls('Half');
    // The worker of a version whose other files have not come yet: it names another page.
    const whole = await readFile(join(host.folder, 'index.html'), 'utf8');
    await writeFile(join(host.folder, 'index.html'), `${whole}<!-- not there yet -->`);
    await writeWorker(root, host.folder);
    await writeFile(join(host.folder, 'index.html'), whole);
    await reload();
    await page.waitForTimeout(2000);
    await reload();
    expect(await title()).toBe('Rampwright');
    expect(await textOf(page, 'files-said')).toBe('');
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('Before the update');
  });

  it('waits until the button is pressed, also over a new start', async () => {
    await calls('Newer');
    await writeWorker(root, host.folder);
    // The browser looks for a new version at each visit, unless it is still busy with the half of one from before.
    const visited = async (): Promise<string> => {
      await reload();
      await page.waitForTimeout(4000);
      return textOf(page, 'files-said');
    };
    await expect.poll(visited, { timeout: 60_000 }).toContain('A new version of Rampwright is here. This one stays until you press the button');
    await takePicture(page, 'published-new-version');
    const address = page.url();
    await page.close();
    page = await context.newPage();
    await openPage(page, address);
    expect(await title()).toBe('Rampwright');
    await expect.poll(() => textOf(page, 'files-said')).toContain('A new version of Rampwright is here.');
  });

  it('does not come while another window is open', async () => {
    const other = await context.newPage();
    await openPage(other, host.address);
    await page.bringToFront();
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect.poll(() => textOf(page, 'files-said')).toContain('The program is open in another tab or window. Close it first');
    expect(await title()).toBe('Rampwright');
    await other.close();
  });

  it('comes when it is asked for, with what was typed last', async () => {
    await showSheet(page, 'Trip sheet');
    await typeInto(page, 'B8', 'Just before');
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect.poll(() => title().catch(() => '')).toBe('Newer');
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
    expect(await shown(page, 'B8')).toBe('Just before');
    const kept = await page.evaluate<string[]>("caches.keys().then((names) => names.filter((name) => name.startsWith('rampwright files')))");
    expect(kept.length).toBe(1);
    await host.pause();
    await reload();
    expect(await title()).toBe('Newer');
  });
});
