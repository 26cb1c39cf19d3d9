// The grid on a tablet: a swipe scrolls and selects nothing, a tap selects, a finger that rests and then moves selects a range.
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostPublished, type PublishedHost } from './publishedSupport';
import { centreOf, inPage, launch, onDemoDay, showSheet, takePicture, until, untilCalculated, type Point } from './support';

describe('the grid under a finger', () => {
  let host: PublishedHost;
  let browser: Browser;
  let page: Page;
  let fingers: CDPSession;

  const selected = (): Promise<string> => inPage(page, 'return workbook.getActiveRange().getA1Notation();');
  const topRow = (): Promise<number> => inPage(page, 'return workbook.getActiveSheet().getScrollState().sheetViewStartRow;');
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]): Promise<unknown> =>
    fingers.send('Input.dispatchTouchEvent', { type, touchPoints: [...points] });
  const drag = async (from: Point, to: Point, restMilliseconds: number): Promise<void> => {
    await send('touchStart', [from]);
    await page.waitForTimeout(restMilliseconds);
    for (let step = 1; step <= 10; step += 1) {
      await send('touchMove', [{ x: from.x + ((to.x - from.x) * step) / 10, y: from.y + ((to.y - from.y) * step) / 10 }]);
      await page.waitForTimeout(16);
    }
    await send('touchEnd', []);
    await page.waitForTimeout(300);
  };

  beforeAll(async () => {
    host = await hostPublished();
    browser = await launch();
    const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, hasTouch: true });
    page = await context.newPage();
    fingers = await context.newCDPSession(page);
    await page.addInitScript(onDemoDay);
    await page.goto(host.address);
    await untilCalculated(page);
    await showSheet(page, 'Trip sheet');
  });
  afterAll(async () => {
    await browser.close();
    await host.stop();
  });

  it('is tapped, and the cell is selected', async () => {
    const { x, y } = await centreOf(page, 'B8');
    await page.touchscreen.tap(x, y);
    await expect.poll(selected).toBe('B8');
  });

  it('is swiped, and scrolls as far as the finger went, with the selection where it was', async () => {
    const before = await topRow();
    await drag({ x: 300, y: 600 }, { x: 300, y: 350 }, 0);
    expect(await topRow()).toBeGreaterThan(before + 4);
    expect(await selected()).toBe('B8');
    await drag({ x: 300, y: 350 }, { x: 300, y: 640 }, 0);
    await expect.poll(topRow).toBe(before);
    expect(await selected()).toBe('B8');
  });

  it('is pressed for a moment, and a move then selects a range without scrolling', async () => {
    const before = await topRow();
    await drag(await centreOf(page, 'B9'), await centreOf(page, 'B13'), 700);
    await expect.poll(selected).toBe('B9:B13');
    expect(await topRow()).toBe(before);
    await takePicture(page, 'touch-range');
  });

  it('is tapped twice, and takes what is typed', async () => {
    const { x, y } = await centreOf(page, 'B8');
    await page.touchscreen.tap(x, y);
    await page.touchscreen.tap(x, y);
    await page.waitForTimeout(400);
    await page.keyboard.type('2');
    await page.keyboard.press('Enter');
    await until(page, "window.rampwright.workbook.getActiveSheet().getRange('B8').getValue() === 'A. Invented2'");
  });
});
