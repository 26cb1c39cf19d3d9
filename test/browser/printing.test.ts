// The sheet in sight on paper: every cell that shows something, as it looks and with its verdict's tint, on as many pages as it says.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { clickCell, openWorkbook, shown, showSheet, takePicture, type OpenWorkbook } from './support';

describe('printing', () => {
  let workbook: OpenWorkbook;
  let page: Page;

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
  });
  afterAll(() => workbook.stop());

  const pagesOf = async (): Promise<number> => ((await page.pdf({ preferCSSPageSize: true })).toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
  /** What the page hands to the printer, left standing. */
  const onPaper = <Result>(code: string): Promise<Result> => page.evaluate<Result>(`(() => { window.dispatchEvent(new Event('beforeprint')); const paper = document.getElementById('paper'); const answer = (${code}); return answer; })()`);
  const cells = (): Promise<readonly string[]> => onPaper("[...paper.querySelectorAll('td')].map((cell) => cell.textContent.trim()).filter((text) => text !== '')");

  it('has the trip sheet on one page, with every word of it and the caution', async () => {
    await showSheet(page, 'Trip sheet');
    const words = await cells();
    for (const cell of ['A1', 'B3', 'B8', 'B11', 'G6', 'H8', 'H14']) expect(words, cell).toContain(await shown(page, cell));
    expect(await onPaper<string>("paper.querySelector('p').textContent")).toMatch(/^Trip sheet, printed on \d{4}-\d\d-\d\d\. Planning aid only: /);
    const tints = await onPaper<readonly string[]>("[...paper.querySelectorAll('td')].filter((cell) => cell.textContent === 'OK').map((cell) => cell.style.background)");
    expect(new Set(tints)).toEqual(new Set(['rgb(191, 230, 216)']));
    expect(await pagesOf()).toBe(1);
  });

  it('has the drawings of a sheet, from the numbers of now', async () => {
    await showSheet(page, 'Descent and hold card');
    await page.evaluate("window.rampwright.workbook.getActiveSheet().getRange('A13').setValue('Elsewhere')");
    const described = (): Promise<string> => onPaper<string>("[...paper.querySelectorAll('svg desc')].map((one) => one.textContent).join(' ')");
    await expect.poll(described).toContain('Elsewhere at 7,000 feet');
    expect(await described()).toContain('Holding pattern with left turns');
    await page.emulateMedia({ media: 'print' });
    await takePicture(page, 'printed');
    await page.emulateMedia({ media: 'screen' });
  });

  it('leaves nothing of it on the page, and enters what is being typed before it prints', async () => {
    await page.evaluate("window.print = () => { window.dispatchEvent(new Event('beforeprint')); window.printed = document.getElementById('paper').textContent; window.dispatchEvent(new Event('afterprint')); }");
    await clickCell(page, 'B9');
    await page.keyboard.type('171');
    await page.keyboard.press('Control+p');
    await expect.poll(() => page.evaluate('window.printed')).toContain('171');
    expect(await page.evaluate("document.getElementById('paper').innerHTML")).toBe('');
    await page.getByRole('button', { name: 'Print' }).click();
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });
});
