// The Route in the browser, on the screen and on paper: its legs with the figures used, both pictures, and every line of the flight.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { answer, legList } from '../../sheets-templates/route/rows';
import { clickCell, openWorkbook, shown, showSheet, takePicture, type OpenWorkbook } from './support';

describe('the route', () => {
  let workbook: OpenWorkbook;
  let page: Page;

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await showSheet(page, 'Route');
  });
  afterAll(() => workbook.stop());

  it('shows each leg with what is used for it, and both pictures', async () => {
    expect(await shown(page, 'B2')).toBe('OK');
    expect(String(await shown(page, `O${legList.first}`))).toContain('speed and flow of the cruise table at power 65');
    await takePicture(page, 'route legs');
    await clickCell(page, `A${legList.last + 30}`).catch(() => undefined);
    await page.mouse.move(500, 500);
    await page.mouse.wheel(0, 620);
    await page.waitForTimeout(800);
    await takePicture(page, 'route below the legs');
    await page.mouse.wheel(500, 0);
    await page.waitForTimeout(800);
    await takePicture(page, 'route pictures');
    await page.mouse.wheel(-500, 760);
    await page.waitForTimeout(800);
    await takePicture(page, 'route flight');
  });

  it('prints every line of the flight and the pictures', async () => {
    const words = await page.evaluate<readonly string[]>(
      "(() => { window.dispatchEvent(new Event('beforeprint')); return [...document.getElementById('paper').querySelectorAll('td')].map((cell) => cell.textContent.trim()); })()",
    );
    for (const cell of [`B${legList.first}`, `O${legList.first}`, `K${answer.first}`, `P${answer.first}`])
      expect(words, cell).toContain(String(await shown(page, cell)));
    await page.emulateMedia({ media: 'print' });
    await page.screenshot({ path: 'build/screenshots/route on paper.png', fullPage: true });
    await page.pdf({ path: 'build/screenshots/route.pdf', preferCSSPageSize: true });
    await page.emulateMedia({ media: 'screen' });
  });
});
