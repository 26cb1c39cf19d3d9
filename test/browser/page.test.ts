// The page with a tiny sheet: typed cells recalculate, help shows, errors explain themselves, the file keeps what was typed.
import { readFile, writeFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { backupsOf } from '../../addon/local/server/backups';
import { tinyTemplate } from '../support/tinyTemplate';
import { clickCell, openPage, openWorkbook, shown, textOf, typeInto, untilSaved, type OpenWorkbook } from './support';

/** What the page says above the answers at each of its marks of time. */
const noteAtMarks = `{
  const mark = performance.mark.bind(performance);
  window.saidAt = {};
  performance.mark = (name) => {
    window.saidAt[name] ??= document.getElementById('last-values')?.textContent ?? 'nothing';
    return mark(name);
  };
}`;
const saidAt = (page: Page): Promise<Record<string, string>> => page.evaluate('window.saidAt');

describe('the page', () => {
  let workbook: OpenWorkbook;
  let page: Page;

  beforeAll(async () => {
    workbook = await openWorkbook([tinyTemplate]);
    page = workbook.page;
  });
  afterAll(() => workbook.stop());

  it('shows the caution, and a typed value changes what depends on it', async () => {
    expect(await textOf(page, 'caution')).toContain(
      'Planning aid only: the approved manual, official data, local rules and the pilot in command decide.',
    );
    expect(await shown(page, 'B5')).toBe('CHECK');
    await typeInto(page, 'B2', '0');
    expect(Number(await shown(page, 'B4'))).toBeCloseTo(0, 3);
    expect(await shown(page, 'B5')).toBe('OK');
  });

  it('shows our help while a function is typed', async () => {
    await clickCell(page, 'D15');
    await page.keyboard.type('=density_al');
    await page.getByText('Density altitude: the height in the standard atmosphere').first().waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await clickCell(page, 'D16');
    await page.keyboard.type('=DENSITY_ALTITUDE(');
    await page.getByText('pressure_altitude_ft', { exact: false }).first().waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
  });

  it('says under the grid why the selected cell is an error', async () => {
    await clickCell(page, 'B15');
    await expect.poll(() => textOf(page, 'sentence')).toBe('ISA_TEMPERATURE: pressure_altitude_ft must be -5,000 to 65,617 feet; got "warm".');
    await clickCell(page, 'B13');
    await expect.poll(() => textOf(page, 'sentence')).toContain('got "warm" (row 4).');
    await clickCell(page, 'B4');
    await expect.poll(() => textOf(page, 'sentence')).toBe('');
    await typeInto(page, 'D17', '=ISA_TEMPERATURE("cold")');
    await clickCell(page, 'D17');
    await expect.poll(() => textOf(page, 'sentence')).toContain('got "cold"');
    await typeInto(page, 'D18', '=1/0');
    await clickCell(page, 'D18');
    await expect.poll(() => textOf(page, 'sentence')).toBe('The formula divides by zero or by a blank cell.');
  });

  it('takes as plain text what documents make lists and headings of', async () => {
    for (const [index, text] of ['A. Somebody', '1. Item', '* star', '# heading', 'a) first'].entries()) {
      const cell = `E${18 + index}`;
      await clickCell(page, cell);
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
      await expect.poll(() => shown(page, cell)).toBe(text);
    }
  });

  it('refuses an entry that is out of its limits, and keeps the old one', async () => {
    await clickCell(page, 'B2');
    await page.keyboard.type('99999');
    await page.keyboard.press('Enter');
    await page.getByText('Feet.').first().waitFor();
    await page.getByRole('button', { name: 'OK' }).click();
    await page.getByText('Feet.').first().waitFor({ state: 'hidden' });
    expect(Number(await shown(page, 'B2'))).not.toBe(99999);
  });

  it('draws the chart from the cells', async () => {
    const paths = page.locator('.chart svg path');
    const before = await paths.first().getAttribute('d');
    await typeInto(page, 'A11', '20000');
    await expect.poll(() => paths.first().getAttribute('d')).not.toBe(before);
  });

  it('keeps the file as typed, with a backup, and shows it again after a reload, its answers as those of last time until they are new', async () => {
    await untilSaved(page);
    expect((await readFile(workbook.filePath, 'utf8')).includes('"v":20000')).toBe(true);
    expect((await readFile((await backupsOf(workbook.filePath))[0]?.path ?? '', 'utf8')).includes('Tiny sheet')).toBe(true);
    await page.addInitScript(noteAtMarks);
    await openPage(page, workbook.address);
    expect(await saidAt(page)).toMatchObject({ 'grid drawn': 'The answers are those of last time. They are being worked out again.' });
    await expect.poll(() => page.locator('#last-values').count()).toBe(0);
    expect(Number(String(await shown(page, 'A11')).replace(',', ''))).toBe(20000);
    expect(await shown(page, 'B5')).toBe('OK');
    await page.locator('.chart svg').waitFor();
    expect(await page.locator('.chart').count()).toBe(1);
  });

  it('puts its entries together with those of a file that was changed elsewhere, and shows them', async () => {
    await writeFile(workbook.filePath, (await readFile(workbook.filePath, 'utf8')).replace('A tiny sheet, invented', 'Changed elsewhere'));
    await typeInto(page, 'A10', '1000');
    await untilSaved(page);
    const kept = await readFile(workbook.filePath, 'utf8');
    expect([kept.includes('Changed elsewhere'), kept.includes('"v":1000')]).toEqual([true, true]);
    await expect.poll(() => shown(page, 'A1')).toBe('Changed elsewhere');
  });

  it('asked no other machine for anything, and reported no error', () => {
    expect(workbook.watched.foreign).toEqual([]);
    // The refused save is the browser's own line about its answer.
    expect(workbook.watched.errors.filter((line) => !line.includes('412'))).toEqual([]);
  });
});
