// The browser killed while the page saves: what the page has called saved is there afterwards, and the workbook opens. Two kills in npm test;
// KILLS=200 npx vitest run --config test/browser/vitest.config.ts test/browser/kills.test.ts takes a quarter of an hour.
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { randomFrom } from '../support/seededRandom';
import { hostPublished, type PublishedHost } from './publishedSupport';
import { browserPath, flags, openPage } from './support';

const kills = Number(process.env['KILLS'] ?? 2);

interface Running {
  readonly page: Page;
  /** The browser's own process and all of its children, without a word. */
  readonly kill: () => Promise<void>;
}

/** The port that the browser wrote down, which it does when it is ready. */
async function portIn(home: string): Promise<number> {
  for (;;) {
    const text = await readFile(join(home, 'DevToolsActivePort'), 'utf8').catch(() => '');
    if (text.includes('\n')) return Number.parseInt(text, 10);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

async function startBrowser(home: string): Promise<Running> {
  await rm(join(home, 'DevToolsActivePort'), { force: true });
  const child: ChildProcess = spawn(browserPath, [...flags, '--remote-debugging-port=0', `--user-data-dir=${home}`, 'about:blank'], {
    stdio: 'ignore',
    detached: true,
  });
  const ended = once(child, 'exit');
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portIn(home)}`);
  const [context] = browser.contexts();
  if (context === undefined) throw new Error('The browser has no window.');
  const page = context.pages()[0] ?? (await context.newPage());
  const kill = async (): Promise<void> => {
    process.kill(-(child.pid ?? 0), 'SIGKILL');
    await ended;
    await browser.close().catch(() => undefined);
  };
  return { page, kill };
}

/** Counts up in one cell without a rest, and tells each number that the page has called saved. */
const countUp = (from: number): string => `(() => {
  const cell = window.rampwright.workbook.getSheetByName('Fields').getRange('A60');
  const isSaved = () => document.getElementById('saved').textContent.startsWith('Saved in this browser, ');
  let number = ${from};
  let wasUnsaved = false;
  const next = () => { number += 1; wasUnsaved = false; cell.setValue(number); };
  next();
  setInterval(() => {
    if (!isSaved()) wasUnsaved = true;
    else if (wasUnsaved) { console.log('kept ' + number); next(); }
  }, 5);
})()`;

const standing = (page: Page): Promise<number> =>
  page.evaluate<number>("Number(window.rampwright.workbook.getSheetByName('Fields').getRange('A60').getValue() ?? 0)");

let host: PublishedHost;
let home: string;
beforeAll(async () => {
  host = await hostPublished();
  home = await mkdtemp(join(tmpdir(), 'rampwright-killed-'));
});
afterAll(async () => {
  await host.stop();
  await rm(home, { recursive: true, force: true });
});

it(
  `loses nothing that was called saved, in ${kills} kills`,
  async () => {
    const random = randomFrom(7);
    let kept = 0;
    for (let turn = 0; turn < kills; turn += 1) {
      const { page, kill } = await startBrowser(home);
      await openPage(page, host.address);
      const found = await standing(page);
      expect(found, `after kill ${turn}`).toBeGreaterThanOrEqual(kept);
      // Not taken for saved what was only sent: the number after the last one told may be there, none beyond.
      expect(found, `after kill ${turn}`).toBeLessThanOrEqual(kept + 1);
      page.on('console', (message) => {
        const [, number] = /^kept (\d+)$/.exec(message.text()) ?? [];
        if (number !== undefined) kept = Number(number);
      });
      await page.evaluate(countUp(found));
      await expect.poll(() => kept, { interval: 20 }).toBeGreaterThan(found);
      // Anywhere in the next saves.
      await page.waitForTimeout(2000 * random());
      await kill();
    }
  },
  60_000 + kills * 30_000,
);
