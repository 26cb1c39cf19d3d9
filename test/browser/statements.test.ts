// A treasurer hands every member a statement at one press: a print job with a page each, or a zip with a file each.
import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { openWorkbook, showSheet, takePicture, textOf, type OpenWorkbook } from './support';

const members = ['Ada', 'Bo', 'Cleo', 'Dag', 'Eve', 'Finn'];
const others = (member: string): RegExp => new RegExp(`\\b(${members.filter((one) => one !== member).join('|')})\\b`);

describe('the statements of all members', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await showSheet(page, 'Dues');
  });
  afterAll(() => workbook.stop());

  it('go to the printer, a page each, and the sheet after them', async () => {
    await page.evaluate('window.print = () => window.dispatchEvent(new Event("beforeprint"))');
    await press('Statements');
    await takePicture(page, 'statements');
    await press('Print all, a page each');
    const pages = await page.locator('#paper .statement').allTextContents();
    expect(pages.map((text) => members.find((name) => text.startsWith(`Statement: ${name}`)))).toEqual(members);
    pages.forEach((text, index) => expect(text).not.toMatch(others(members[index] ?? '')));
    await page.emulateMedia({ media: 'print' });
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(members.length);
    await takePicture(page, 'statements-paper');
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate('window.dispatchEvent(new Event("afterprint"))');
    await page.evaluate('window.dispatchEvent(new Event("beforeprint"))');
    expect(await page.locator('#paper .statement').count()).toBe(0);
    expect(await page.locator('#paper').textContent()).toMatch(/^.*Dues, printed on /s);
    await page.evaluate('window.dispatchEvent(new Event("afterprint"))');
  });

  it('are saved as a file each', async () => {
    await press('Statements');
    const [download] = await Promise.all([page.waitForEvent('download'), press('Save all, a file each (zip)')]);
    expect(download.suggestedFilename()).toMatch(/^Statements \d{4}-\d\d-\d\d\.zip$/);
    const files = Object.entries(unzipSync(await readFile(await download.path())));
    expect(files.map(([name]) => name.split(' ')[1])).toEqual(members);
    for (const [name, bytes] of files) expect(strFromU8(bytes)).not.toMatch(others(name.split(' ')[1] ?? ''));
    await expect.poll(() => textOf(page, 'files-said')).toMatch(/^6 statements are in the zip/);
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });
});
