// What was typed is never lost without a word: a server that is gone and comes back, a page closed at once, two windows, a damaged file.
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tinyTemplate } from '../support/tinyTemplate';
import {
  clickCell,
  openPage,
  openWorkbook,
  shown,
  takePicture,
  textOf,
  typeInto,
  untilCalculated,
  untilSaved,
  valueNamed,
  type OpenWorkbook,
} from './support';

describe('keeping the file', () => {
  let workbook: OpenWorkbook;
  let page: Page;

  const stored = (): Promise<string> => readFile(workbook.filePath, 'utf8');
  const type = async (cell: string, text: string): Promise<void> => {
    await clickCell(page, cell);
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };
  /** Whether the browser asks before it closes a page. */
  async function asksBeforeClosing(one: Page): Promise<boolean> {
    const asked = new Promise<boolean>((resolve) => {
      one.once('dialog', (dialog) => void dialog.dismiss().then(() => resolve(true)));
      one.once('close', () => resolve(false));
    });
    await one.close({ runBeforeUnload: true });
    return asked;
  }
  const another = async (): Promise<Page> => {
    const context = await page
      .context()
      .browser()
      ?.newContext({ viewport: { width: 1280, height: 800 } });
    if (context === undefined) throw new Error('no browser');
    const opened = await context.newPage();
    await openPage(opened, workbook.address);
    return opened;
  };

  beforeAll(async () => {
    workbook = await openWorkbook([tinyTemplate]);
    page = workbook.page;
  });
  afterAll(() => workbook.stop());

  it('says that the server is gone, and saves by itself when it is back', async () => {
    await workbook.pause();
    await type('D15', 'while away');
    await expect
      .poll(() => textOf(page, 'saved'))
      .toBe('NOT SAVED: Rampwright is not running. Start it again with npm start, and leave this page open: it tries again every few seconds.');
    await type('D16', 'and more');
    await workbook.resume();
    await untilSaved(page);
    expect(await stored()).toContain('while away');
    expect(await stored()).toContain('and more');
  });

  it('takes a save whose answer was lost for its own, also where more was typed since, and goes on', async () => {
    let lost = 0;
    await page.route('**/workbook', async (route) => {
      if (route.request().method() !== 'PUT' || lost > 0) return route.continue();
      lost += 1;
      await route.fetch();
      return route.abort();
    });
    await type('C15', 'landed unanswered');
    await expect.poll(() => textOf(page, 'saved')).toContain('NOT SAVED: Rampwright is not running.');
    expect(await stored()).toContain('landed unanswered');
    await type('C16', 'and typed since');
    await untilSaved(page);
    expect(lost).toBe(1);
    expect(await stored()).toContain('and typed since');
    expect(await textOf(page, 'files-said')).not.toContain('changed in another window');
    await page.unroute('**/workbook');
  });

  it('does not wait for ever for a program that hangs, and saves when it goes on', async () => {
    let hanging = true;
    await page.route('**/workbook', (route) => (hanging && route.request().method() === 'PUT' ? undefined : route.continue()));
    await type('C17', 'while it hung');
    await expect.poll(() => textOf(page, 'saved')).toBe('Saving...');
    await expect.poll(() => textOf(page, 'saved'), { timeout: 30_000 }).toMatch(/^NOT SAVED: Rampwright has not answered for 15 seconds\./);
    hanging = false;
    await untilSaved(page);
    expect(await stored()).toContain('while it hung');
    await page.unroute('**/workbook');
  });

  it('shows a file of a later version and never writes it', async () => {
    const [mine, other] = [await stored(), await another()];
    const later = JSON.stringify({ ...(JSON.parse(mine) as object), custom: { rampwright: { format: 99 } }, unknown: 'to this version' });
    await writeFile(workbook.filePath, later);
    await openPage(other, workbook.address);
    expect(await textOf(other, 'files-said')).toMatch(/^This workbook was written by a later version of Rampwright\./);
    await typeInto(other, 'B3', '33');
    await other.waitForTimeout(1500);
    expect(await textOf(other, 'saved')).toBe('NOT SAVED: the file is of a later version of Rampwright.');
    expect(await stored()).toBe(later);
    await takePicture(other, 'later-version');
    await writeFile(workbook.filePath, mine);
    await other.close();
  });

  it('changes the name of a sheet that formulas could not read, and says so', async () => {
    await page.evaluate('window.rampwright.workbook.getActiveSheet().setName("Go! [home]")');
    await expect
      .poll(() => textOf(page, 'files-said'))
      .toBe('A sheet cannot be called "Go! [home]" here, since formulas could not refer to it. It is called "Go- (home)".');
    await untilSaved(page);
    expect(await stored()).toContain('"name":"Go- (home)"');
    expect(await valueNamed(page, 'level')).toBe('5,000');
    await takePicture(page, 'renamed-sheet');
    await page.evaluate('window.rampwright.workbook.getActiveSheet().setName("Tiny sheet")');
    await page.locator('#files-choices').getByRole('button', { name: 'Close' }).click();
    await untilSaved(page);
  });

  it('opens by the whole address only', async () => {
    const other = await another();
    await other.goto(new URL('/', workbook.address).href);
    expect(await other.textContent('body')).toContain('opens only by the whole address that the program prints');
    await other.close();
  });

  it('asks before it closes with something typed and not entered, and not otherwise', async () => {
    const other = await another();
    await clickCell(other, 'D17');
    await other.keyboard.type('half typed');
    await untilSaved(other);
    expect(await asksBeforeClosing(other)).toBe(true);
    await other.keyboard.press('Escape');
    expect(await asksBeforeClosing(other)).toBe(false);
  });

  it('enters what is typed into a cell with choices, and goes on', async () => {
    await typeInto(page, 'D19', 'at or below');
    expect(await shown(page, 'D19')).toBe('at or below');
    await untilSaved(page);
  });

  it('takes decimals and days as people write them, and asks where they can be two', async () => {
    await typeInto(page, 'B2', '1234,5');
    await expect.poll(() => shown(page, 'B2')).toBe('1,235');
    expect(
      await page.evaluate(
        "window.rampwright.workbook.getActiveSheet().getRange('B2').getRawValue?.() ?? window.rampwright.workbook.getActiveSheet().getSheet().getCellRaw(1, 1).v",
      ),
    ).toBe(1234.5);
    await type('B2', '1,250');
    await expect
      .poll(() => textOf(page, 'files-said'))
      .toBe('"1,250" can be two numbers. Type it without a comma: 1250 or 1.250. Nothing was changed.');
    await takePicture(page, 'two-numbers');
    expect(await page.evaluate('window.rampwright.workbook.getActiveSheet().getSheet().getCellRaw(1, 1).v')).toBe(1234.5);
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await typeInto(page, 'B2', '5000');
    await untilSaved(page);
  });

  it('goes back to an older copy, and back again to what was there', async () => {
    await typeInto(page, 'B3', '17');
    await untilSaved(page);
    const goBack = async (expected: number): Promise<void> => {
      await page.getByRole('button', { name: 'Older copies' }).click();
      await page.getByRole('button', { name: 'Go back to this copy' }).first().waitFor();
      await takePicture(page, 'older-copies');
      await page.getByRole('button', { name: 'Go back to this copy' }).first().click();
      await expect.poll(() => shown(page, 'B3').catch(() => ''), { timeout: 20_000 }).toBe(expected);
      expect(await textOf(page, 'files-said')).toMatch(/^The workbook is as it was in the copy of /);
      await untilCalculated(page);
    };
    await goBack(15);
    await goBack(17);
    await typeInto(page, 'B3', '15');
    await untilSaved(page);
  });

  it('shows what another window entered as soon as somebody looks, and works it out', async () => {
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    const before = await shown(page, 'B4');
    const other = await another();
    await typeInto(other, 'B3', '21');
    await untilSaved(other);
    const saved = await stored();
    await page.evaluate("window.dispatchEvent(new Event('focus'))");
    await expect.poll(() => shown(page, 'B3')).toBe(21);
    await expect.poll(() => shown(page, 'B4')).not.toBe(before);
    expect(await textOf(page, 'files-said')).toBe('');
    await page.waitForTimeout(1000);
    // What others entered is nothing to be saved.
    expect(await stored()).toBe(saved);
    await other.close();
  });

  it('puts together what two windows enter in different cells', async () => {
    const other = await another();
    await typeInto(other, 'C18', 'from there');
    await untilSaved(other);
    await typeInto(page, 'D18', 'from here');
    await untilSaved(page);
    expect(await stored()).toContain('from there');
    expect(await stored()).toContain('from here');
    expect([await shown(page, 'C18'), await shown(page, 'D18')]).toEqual(['from there', 'from here']);
    await other.evaluate("window.dispatchEvent(new Event('focus'))");
    await expect.poll(() => shown(other, 'D18')).toBe('from here');
    await other.close();
  });

  it('asks which holds where both changed the same cell, and saves nothing before', async () => {
    const other = await another();
    await typeInto(other, 'D20', 'of there');
    await untilSaved(other);
    await typeInto(page, 'D20', 'of here');
    await expect.poll(() => textOf(page, 'files-said')).toContain('D20 on "Tiny sheet": here "of here", there "of there". Which entries hold?');
    expect(await textOf(page, 'saved')).toContain('NOT SAVED: the same cells were changed here and in another window.');
    expect(await stored()).not.toContain('of here');
    await takePicture(page, 'two-windows');
    await page.setViewportSize({ width: 390, height: 800 });
    await page.waitForTimeout(500);
    await takePicture(page, 'two-windows-390');
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.getByRole('button', { name: 'Those from there' }).click();
    await untilSaved(page);
    expect(await shown(page, 'D20')).toBe('of there');
    expect(await stored()).not.toContain('of here');
    await typeInto(other, 'D20', 'later there');
    await untilSaved(other);
    await typeInto(page, 'D20', 'later here');
    await page.getByRole('button', { name: 'Those from here' }).click();
    await untilSaved(page);
    expect(await stored()).toContain('later here');
    expect(await stored()).not.toContain('later there');
    await other.close();
  });

  it('keeps what cannot be put together as a copy that opens as a workbook', async () => {
    const other = await another();
    await other.evaluate('window.rampwright.workbook.getActiveSheet().insertRows(40, 1)');
    await typeInto(other, 'C19', 'rows put in');
    await untilSaved(other);
    const elsewhere = await stored();
    await type('D18', 'only here');
    await expect.poll(() => textOf(page, 'files-said')).toMatch(/what you typed here is not saved\. Save this window as a copy first/);
    await takePicture(page, 'two-windows-moved');
    const [copy] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save this window as a copy' }).click()]);
    expect(copy.suggestedFilename()).toBe('rampwright-copy.json');
    const text = await readFile(await copy.path(), 'utf8');
    expect(text).toContain('only here');
    expect(await stored()).toBe(elsewhere);
    await other.close();
    await writeFile(workbook.filePath, text);
    page.once('dialog', (dialog) => void dialog.accept());
    await openPage(page, workbook.address);
    expect(await shown(page, 'D18')).toBe('only here');
  });

  it('does not open a damaged file, says where the older ones are, and leaves all', async () => {
    const folder = async (): Promise<string[]> => (await readdir(dirname(workbook.filePath))).sort();
    const [damaged, before] = ['{"half": ', await folder()];
    await writeFile(workbook.filePath, damaged);
    await page.goto(workbook.address);
    await expect.poll(() => textOf(page, 'sentence')).toContain(`The workbook could not be opened: the file ${workbook.filePath} is not a workbook`);
    expect(await textOf(page, 'sentence')).toContain('workbook.json.backup-');
    expect([await stored(), await folder()]).toEqual([damaged, before]);
    expect(before.some((name) => name.startsWith('workbook.json.backup-'))).toBe(true);
    await rm(workbook.filePath);
  });

  it('does not begin a demo where the file is gone', async () => {
    await page.goto(workbook.address);
    await expect.poll(() => textOf(page, 'sentence')).toContain(`the file ${workbook.filePath} is gone. Nothing was put in its place.`);
    await expect(stored()).rejects.toThrow('ENOENT');
  });
});
