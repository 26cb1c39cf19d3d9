// A treasurer finds a member's rows and sorts the payments, and takes it back.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { duesPlaces } from '../../sheets-templates/dues/places';
import { clickCell, openWorkbook, shown, showSheet, takePicture, textOf, activeSheet, type OpenWorkbook } from './support';

describe('find and sort', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  const { first } = duesPlaces.payments;
  const amounts = (): Promise<unknown[]> => Promise.all([0, 1, 2, 3].map((index) => shown(page, `C${first + index}`)));
  const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await showSheet(page, 'Dues');
  });
  afterAll(() => workbook.stop());

  it('finds rows of the sheet, and of every sheet, and goes there', async () => {
    await press('Find and sort');
    const dialog = page.getByRole('dialog', { name: 'Find and sort' });
    await dialog.getByLabel('Text to find').fill('quillon');
    expect(await dialog.getByRole('status').first().textContent()).toMatch(/^\d+ rows?$/);
    await dialog.getByLabel('on every sheet').check();
    await takePicture(page, 'find-and-sort');
    await page.setViewportSize({ width: 390, height: 800 });
    await takePicture(page, 'find-and-sort-390');
    await page.setViewportSize({ width: 1280, height: 800 });
    await dialog
      .getByRole('button', { name: /^Data ledger A/ })
      .first()
      .click();
    await expect.poll(() => activeSheet(page)).toBe('Data ledger');
    await showSheet(page, 'Dues');
  });

  it('sorts the payments in one step that an undo takes back, and the members owe what they owed', async () => {
    const before = await amounts();
    const summary = await shown(page, 'A3');
    await press('Find and sort');
    await page.getByLabel('Sort the list "Payments" by').selectOption({ label: 'amount' });
    await press('Z to A, newest first');
    await expect
      .poll(() => textOf(page, 'files-said'))
      .toMatch(/^The list "Payments" is sorted by "amount": \d+ rows, in one step that Ctrl\+Z takes back\./);
    const sorted = await amounts();
    const numbers = (cells: unknown[]): number[] => cells.map((cell) => Number(String(cell ?? '').replace(/,/g, '')));
    expect(numbers(sorted)).toEqual([...numbers(sorted)].sort((one, other) => other - one));
    expect(await shown(page, 'A3')).toBe(summary);
    await takePicture(page, 'sorted');
    await clickCell(page, 'D2');
    await page.keyboard.press('Control+z');
    await expect.poll(amounts).toEqual(before);
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });
});
